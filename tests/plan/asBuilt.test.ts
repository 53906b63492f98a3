import { describe, expect, it } from 'vitest';
import { madeOf } from '../../src/drawer/drawer.ts';
import { formatPlanComplaint } from '../../src/plan/read/planComplaint.ts';
import { readProject } from '../../src/project/readProject.ts';
import { complaintsOf } from './complaintsOf.ts';

const plan = (asBuilt: string, more = ''): string => `
stock: {front: {thickness: 20}, side: {thickness: 11}}
drawers:
  - name: Buttons
    opening: {width: 280, height: 76, depth: 420}
    ${more}
    asBuilt: ${asBuilt}
`;

/** Without the place in the text. */
const told = (asBuilt: string, more = ''): string[] =>
  complaintsOf(plan(asBuilt, more)).map((each) => each.replace(/^plan\.yaml:\d+:\d+ /u, ''));

describe('boards as they came out', () => {
  it("are read in the plan's unit", () => {
    const reading = readProject(`
units: in
stock: {front: {thickness: 3/4}, side: {thickness: 7/16}}
drawers:
  - {name: Thread, opening: {width: 11, height: 3, depth: 16}, asBuilt: [{part: side, hand: right, thickness: 13/32}]}
`);
    if (!reading.ok) throw new Error('the plan is good');
    const [made] = madeOf(reading.value.set);
    // 13/32 of 25.4 mm.
    expect(made?.right?.front.tailBoard.thickness).toBeCloseTo(10.31875, 9);
    expect(made?.front.tailBoard.thickness).toBeCloseTo(11.1125, 9);
  });

  it.each([
    [
      '[{part: side, thickness: 10.6}]',
      '',
      ['drawers[0].asBuilt[0]: the hand is missing; it says which side came out so; try hand: left'],
    ],
    [
      '[{part: front, hand: left, thickness: 19}]',
      '',
      ['drawers[0].asBuilt[0].hand: a hand is for sides only; a drawer has one front; remove it'],
    ],
    [
      '[{part: front, index: 1, thickness: 19}]',
      '',
      ['drawers[0].asBuilt[0].index: there is one such drawer, so its boards have no index; remove it'],
    ],
    [
      '[{part: front, thickness: 19}]',
      'count: 3',
      [
        'drawers[0].asBuilt[0]: the index is missing; there are 3 such drawers, and it says which of them this board is of; try index: 1',
      ],
    ],
    [
      '[{part: front, index: 4, thickness: 19}]',
      'count: 3',
      ['drawers[0].asBuilt[0].index: the index is 4, and there are 3 such drawers; it must be 1 to 3; try 3'],
    ],
    [
      '[{part: back}]',
      '',
      [
        'drawers[0].asBuilt[0]: no measure is given; this says nothing of the board; try thickness: 10.6mm, or give its thickness, width or length, whichever is not as planned',
      ],
    ],
    [
      '[{part: back, width: 54}, {part: back, thickness: 10}]',
      '',
      [
        'drawers[0].asBuilt[1]: this board is given already, as entry 1; give its measures together, in one entry',
      ],
    ],
  ])('are refused as %s with %s', (asBuilt, more, says) => {
    expect(told(asBuilt, more)).toEqual(says);
  });

  it('are of parts that a drawer has, and of sizes that can be', () => {
    expect(told('[{part: lid, thickness: 5}]')[0]).toContain('front, side, back, bottom');
    expect(told('[{part: back, thickness: 0.5}]')[0]).toContain('it must be 1 mm to');
    expect(told('[{part: back, width: 6000}]')[0]).toContain('it must be 10 mm to 5000 mm');
  });

  it('are told where they are written when what they make cannot be', () => {
    const reading = readProject(plan('[{part: front, length: 290}]'));
    const says = reading.ok
      ? []
      : reading.complaints.map((each) => formatPlanComplaint('plan.yaml', each, 'mm'));
    expect(says).toEqual([
      'plan.yaml:7:29 drawers[0].asBuilt[0].length: "Buttons": the length of the front came out 290 mm; the opening is 280 mm wide, so it may be at most 280 mm; try 280mm',
    ]);
  });
});
