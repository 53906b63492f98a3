import { describe, expect, it } from 'vitest';
import { readPlan } from '../../src/plan/readPlan.ts';
import { readProject } from '../../src/project/readProject.ts';
import { complaintsOf } from './complaintsOf.ts';

const SIZE = 'size: {width: 200, height: 80, depth: 140}';
const FRONT = 'stock: {front: {thickness: 9}}';

const boxOf = (text: string) => {
  const reading = readPlan(text);
  if (!reading.ok) throw new Error(complaintsOf(text).join('\n'));
  const [box] = reading.plan.boxes;
  if (box === undefined) throw new Error('no box');
  return box;
};

describe('a plan of a box alone', () => {
  it('has every default where nothing is given', () => {
    expect(boxOf(`boxes: [{name: A, ${SIZE}, ${FRONT}}]`)).toEqual({
      name: 'A',
      count: 1,
      space: { kind: 'size', size: { width: 200, height: 80, depth: 140 } },
      stock: {
        front: { thickness: 9 },
        side: { thickness: 9 },
        back: { thickness: 9 },
        bottom: { thickness: 5 },
      },
      joint: { notation: 'mm', kind: 'through', spacing: { kind: 'even' } },
      backJoint: { notation: 'mm', spacing: { kind: 'even' } },
      // Half of 9 deep; the bottom begins where what is left of the front ends.
      groove: { offset: 10, width: 5, depth: 4.5, stopped: 4.5 },
      backDrop: 0,
      bottom: { kind: 'panel', slack: 0.5, hold: { kind: 'groove' } },
      box: {},
    });
  });

  it('takes half of its thinnest board for the groove, or what the laps of closed corners leave', () => {
    const depthOf = (stock: string, kind: string) =>
      boxOf(`boxes: [{name: A, ${SIZE}, kind: ${kind}, stock: ${stock}}]`).groove.depth;
    const boards = '{front: {thickness: 14}, side: {thickness: 12}, back: {thickness: 10}}';
    expect(depthOf(boards, 'lapped')).toBe(5);
    // A quarter of 10 is less than 3, the least lap: 10 - 3 - 1 = 6 is more than half of 10.
    expect(depthOf(boards, 'double-lapped')).toBe(5);
    // Lap 5 of 8: 8 - 5 - 1 = 2 is left.
    const thin = boxOf(
      `boxes: [{name: A, ${SIZE}, kind: secret-mitred, joint: {lap: 5}, stock: {front: {thickness: 8}}}]`,
    );
    expect(thin.groove.depth).toBe(2);
  });

  it.each([
    ['through', '', 4.5],
    ['through', 'joint: {shoulder: lower}', undefined],
    ['lapped', '', undefined],
    ['double-lapped', '', undefined],
    ['secret-mitred', '', undefined],
  ])('has stopped grooves only where they would show: %s %s', (kind, joint, stopped) => {
    const { groove } = boxOf(`boxes: [{name: A, ${SIZE}, ${FRONT}, kind: ${kind}${joint && `, ${joint}`}}]`);
    expect(groove.stopped).toBe(stopped);
  });
});

describe('a box beside drawers', () => {
  const PLAN = `stock: {front: {thickness: 20, species: Oak}, side: {thickness: 11}, back: {thickness: 10}, bottom: {thickness: 4}}
joint: {kind: lapped, slope: "1:7", pin: 6, lap: 5, tails: 3}
groove: {offset: 12, depth: 5, stopped: 3}
back: {drop: 6, joint: {pin: 9}}
bottom: {kind: solid, slack: 0.7, slips: {width: 10, height: 18}}
climate: {making: 9%, driest: 6%, dampest: 12%}
`;

  it('takes what it does not give from the plan, as far as boxes have it', () => {
    expect(boxOf(`${PLAN}boxes: [{name: A, ${SIZE}, kind: lapped}]`)).toEqual({
      name: 'A',
      count: 1,
      space: { kind: 'size', size: { width: 200, height: 80, depth: 140 } },
      stock: {
        front: { thickness: 20, species: 'Oak' },
        side: { thickness: 11 },
        back: { thickness: 20, species: 'Oak' },
        bottom: { thickness: 4 },
      },
      joint: { notation: 'mm', kind: 'lapped', slope: { run: 7 }, pin: 6, lap: 5, spacing: { kind: 'even' } },
      backJoint: { notation: 'mm', slope: { run: 7 }, pin: 6, spacing: { kind: 'even' } },
      groove: { offset: 12, width: 4, depth: 5 },
      backDrop: 0,
      bottom: { kind: 'solid', slack: 0.7, hold: { kind: 'groove' } },
      box: {},
    });
  });

  it('has its own in the place of that', () => {
    const box = boxOf(
      `${PLAN}boxes: [{name: A, count: 4, ${SIZE}, stock: {front: {thickness: 9}, side: {thickness: 8}, back: {thickness: 7}}, joint: {pin: 4, tails: 2}, groove: {offset: 6, width: 4, depth: 3, stopped: 2}, bottom: {kind: panel, slack: 0.2}}]`,
    );
    expect(box).toMatchObject({
      count: 4,
      stock: { front: { thickness: 9, species: 'Oak' }, side: { thickness: 8 }, back: { thickness: 7 } },
      joint: { kind: 'through', slope: { run: 7 }, pin: 4, spacing: { kind: 'even', tails: 2 } },
      groove: { offset: 6, width: 4, depth: 3, stopped: 2 },
      bottom: { kind: 'panel', slack: 0.2 },
    });
    expect(box.joint).not.toHaveProperty('lap');
  });
});

describe('the lid of a box', () => {
  const boxesOf = (lid: string, joint = '') => {
    const reading = readPlan(
      `boxes:\n  - {name: B, ${SIZE}, ${FRONT}}\n  - {name: A, ${SIZE}, ${FRONT}${joint}, lid: ${lid}}`,
    );
    if (!reading.ok) throw new Error('no plan');
    return reading.plan.boxes;
  };

  it('is sawn off unless it is made apart, by a cut of 1.5 mm', () => {
    expect(boxesOf('{height: 25}').map(({ box }) => box)).toEqual([{}, { lid: { height: 25, kerf: 1.5 } }]);
    expect(boxesOf('{height: 25, kerf: 2, made: sawn}')[1]?.box).toEqual({ lid: { height: 25, kerf: 2 } });
  });

  it('that is made apart is a box of its own, with the rest of the height and the same joints, its tails by themselves', () => {
    const boxes = boxesOf('{height: 25, made: apart}', ', joint: {pin: 4, tails: 3}');
    expect(boxes.map(({ name, space, joint, box }) => [name, space, joint.pin, joint.spacing, box])).toEqual([
      ['B', { kind: 'size', size: { width: 200, height: 80, depth: 140 } }, undefined, { kind: 'even' }, {}],
      [
        'A',
        { kind: 'size', size: { width: 200, height: 55, depth: 140 } },
        4,
        { kind: 'even', tails: 3 },
        {},
      ],
      [
        'A lid',
        { kind: 'size', size: { width: 200, height: 25, depth: 140 } },
        4,
        { kind: 'even' },
        { isLid: true },
      ],
    ]);
  });
});

describe('a bottom of a box in a rebate', () => {
  it('has one as high as it is thick and as deep as a groove, stopped where it would show', () => {
    const groove = (keys: string) =>
      boxOf(
        `boxes: [{name: A, ${SIZE}, stock: {front: {thickness: 9}, bottom: {thickness: 3}}, bottom: {hold: rebate}${keys}}]`,
      ).groove;
    expect(groove('')).toEqual({ offset: 0, width: 3, depth: 4.5, rebate: true, stopped: 4.5 });
    expect(groove(', kind: secret-mitred, groove: {depth: 3}')).toEqual({
      offset: 0,
      width: 3,
      depth: 3,
      rebate: true,
    });
  });
});

describe('a fault of a box', () => {
  it.each([
    [
      SIZE,
      'boxes[0].stock.front.thickness: the thickness of the front is missing; without it no box can be sized; try stock: {front: {thickness: 9mm}}',
    ],
    [FRONT, 'boxes[0].size: "A" has no size; it must be written {width: 280, height: 76, depth: 420}'],
    [
      `${SIZE}, ${FRONT}, joint: {lap: 3}`,
      'boxes[0].joint.lap: a through joint has no lap; try kind: lapped, or remove the lap',
    ],
    [
      `${SIZE}, ${FRONT}, joint: {tails: [20, 20], graded: {ratio: 0.9}}`,
      'boxes[0].joint.graded: the tails are listed width by width, so they cannot be graded too; give the number of tails, or remove the grade',
    ],
    [
      `${SIZE}, ${FRONT}, bottom: {hold: rebate}, groove: {offset: 4}`,
      'boxes[0].groove.offset: a rebate lies along the lower edge, and is as high as the bottom is thick; remove it, or let a groove hold the bottom (bottom.hold)',
    ],
    [
      `${SIZE}, ${FRONT}, lid: {height: 25, kerf: -1}`,
      'boxes[0].lid.kerf: -1 mm is out of range; it must be 0 mm to 20 mm',
    ],
    [
      `${SIZE}, ${FRONT}, lid: {height: 25, kerf: 1, made: apart}`,
      'boxes[0].lid.kerf: a lid that is made apart is not sawn off, so no saw takes anything; remove it, or let the lid be sawn off (made: sawn)',
    ],
    [
      `${SIZE}, ${FRONT}, lid: {height: 90, made: apart}`,
      'boxes[0].lid.height: a lid of 90 mm leaves nothing of a box 80 mm high, lid and all',
    ],
  ])('is told at its own key: %s', (keys, complaint) => {
    expect(complaintsOf(`boxes:\n  - {name: A, ${keys}}`).map((line) => line.replace(/^\S+ /u, ''))).toEqual([
      complaint,
    ]);
  });

  it('is that of the lid made apart, at the entry of its box', () => {
    // A lid too low for its groove, of the second box.
    const text = `boxes:
  - {name: B, ${SIZE}, ${FRONT}}
  - {name: A, ${SIZE}, ${FRONT}, lid: {height: 16, made: apart}}`;
    const project = readProject(text);
    expect(
      project.ok ? [] : project.complaints.map(({ line, complaint: { at } }) => [line, at.slice(0, 2)]),
    ).toEqual([[3, ['boxes', 1]]]);
  });

  it('is a name that its lid made apart would share', () => {
    expect(
      complaintsOf(`boxes:
  - {name: A lid, ${SIZE}, ${FRONT}}
  - {name: A, ${SIZE}, ${FRONT}, lid: {height: 25, made: apart}}`),
    ).toEqual([
      'plan.yaml:3:6 boxes[1].name: "A lid" is the name of boxes[0] too; every name must be different; give it another name, or give the first a count',
    ]);
  });
});
