import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/plan/plan.ts';
import { readPlan } from '../../src/plan/readPlan.ts';
import { complaintsOf } from './complaintsOf.ts';

const STOCK = 'stock: {front: {thickness: 20}, side: {thickness: 11}}\n';
const OPENING = 'opening: {width: 280, height: 76, depth: 420}';

const planOf = (text: string): Plan => {
  const reading = readPlan(text);
  if (!reading.ok) throw new Error(complaintsOf(text).join('\n'));
  return reading.plan;
};

/** The place of a word in a text, as editors show it. */
const placeOf = (word: string, text: string): string => {
  const lines = text.slice(0, text.indexOf(word)).split('\n');
  return `${lines.length}:${(lines.at(-1) ?? '').length + 1}`;
};

/** What is told of one drawer with the given keys, in line 3. */
const drawer = (keys: string): string[] =>
  complaintsOf(`${STOCK}drawers:\n  - {name: A, ${OPENING}, ${keys}}`).map((line) =>
    line.replace(/^plan.yaml:3:\d+ drawers\[0\]\.?/u, ''),
  );

describe('a plan', () => {
  it('has every default where nothing is given', () => {
    expect(planOf(`${STOCK}drawers:\n  - {name: A, ${OPENING}}`)).toEqual({
      name: 'Untitled',
      units: 'mm',
      drawers: [
        {
          name: 'A',
          count: 1,
          space: {
            kind: 'opening',
            opening: { width: 280, height: 76, depth: 420 },
            fit: { side: 0.5, top: 1, behind: 10 },
          },
          stock: {
            front: { thickness: 20 },
            side: { thickness: 11 },
            back: { thickness: 11 },
            bottom: { thickness: 5 },
          },
          joint: { notation: 'mm', kind: 'lapped', spacing: { kind: 'even' } },
          backJoint: { notation: 'mm', spacing: { kind: 'even' } },
          groove: { offset: 10, width: 5, depth: 5.5 },
          backDrop: 4,
          bottom: { kind: 'panel', slack: 0.5, hold: { kind: 'groove' } },
        },
      ],
      boxes: [],
      joints: [],
      sawing: { kerf: 3, edge: 3, ends: 25, face: 1, keep: { length: 300, width: 50 } },
    });
  });

  it("stops the sides' groove where the bottom begins, or at a length, or not at all", () => {
    const stops = (joint: string, own = '') =>
      planOf(
        `${STOCK}joint: ${joint}\ngroove: {depth: 4, stopped: auto}\ndrawers: [{name: A, opening: {width: 280, height: 76, depth: 420}${own}}]`,
      ).drawers[0]?.groove.stopped;
    // A front of 20 whose groove is 4 deep, the sides' ends at its face or 6 behind it.
    expect(stops('{kind: through}')).toBe(16);
    expect(stops('{lap: 6}')).toBe(10);
    expect(stops('{lap: 6}', ', groove: {stopped: 8}')).toBe(8);
    expect(stops('{lap: 6}', ', groove: {stopped: none}')).toBeUndefined();
  });

  it('takes round inches where a plan in inches gives nothing', () => {
    const inches = (mm: number) => Number((mm / 25.4).toFixed(9));
    const [drawer] = planOf(
      'units: in\nstock: {front: {thickness: 13/16}, side: {thickness: 7/16}}\ndrawers: [{name: A, opening: {width: 11, height: 3, depth: 16}}]',
    ).drawers;
    if (drawer?.space.kind !== 'opening') throw new Error('no opening');
    const { fit } = drawer.space;
    const { groove, backDrop, bottom } = drawer;
    expect([fit.side, fit.top, fit.behind].map(inches)).toEqual([1 / 64, 1 / 32, 3 / 8]);
    // Half of 7/16 is 7/32.
    expect([groove.offset, groove.width, groove.depth].map(inches)).toEqual([3 / 8, 1 / 4, 7 / 32]);
    expect([backDrop, bottom.slack].map(inches)).toEqual([5 / 32, 1 / 64]);
    expect(drawer.stock.bottom.thickness).toBe(6.35);
    expect([drawer.joint.notation, drawer.backJoint.notation]).toEqual(['in', 'in']);
  });

  it('loses round inches between boards and parts where a plan in inches gives nothing', () => {
    const { sawing } = planOf(
      'units: in\nsaw: {kerf: 3/32, keep: [18, 3]}\njoints: [{name: A, kind: through, width: 4, tailBoard: 1/2, pinBoard: 1/2}]',
    );
    const { kerf, edge, ends, face, keep } = sawing;
    const sizes = [kerf, edge, ends, face, keep.length, keep.width];
    expect(sizes.map((mm) => Number((mm / 25.4).toFixed(9)))).toEqual([3 / 32, 1 / 8, 1, 1 / 32, 18, 3]);
  });

  it.each([
    ['', 'in'],
    ['fractions: 64', 'in'],
    ['fractions: 32', 'in/32'],
    ['fractions: 16', 'in/16'],
    ['fractions: decimal', 'in/1000'],
  ])('in inches with %j is told in %s', (line, notation) => {
    const plan = planOf(
      `units: in\n${line}\njoints: [{name: A, kind: through, width: 4, tailBoard: 1/2, pinBoard: 1/2}]`,
    );
    expect(plan.units).toBe(notation);
    expect(plan.joints[0]?.spec.notation).toBe(notation);
  });

  it('gives each drawer what the plan says, and each its own before that', () => {
    const { drawers } = planOf(`
stock: {front: {thickness: 20, species: Cherry, grain: flatsawn}, side: {thickness: 12, species: Ash}, bottom: {thickness: 6, species: Lime}}
joint: {kind: lapped, slope: "1:7", pin: 5, halfPin: [6, 7], lap: 4, tails: 3, proud: 0.5, chisel: 4}
groove: {offset: 11, depth: 4}
fit: {side: 1}
back: {drop: 3, joint: {pin: 6}}
bottom: {kind: solid, slips: {width: 10, height: 18}}
front: {lip: 6}
drawers:
  - {name: A, ${OPENING}}
  - name: B
    count: 3
    size: {width: 280, height: 76, depth: 420}
    stock: {front: {species: Walnut}, back: {thickness: 9}, bottom: {thickness: 7}}
    joint: {tails: 4, halfPin: 8}
    groove: {offset: 14}
    back: {drop: 5, joint: {tails: 2, slope: "1:6"}}
    bottom: {slack: 1, slips: none}
    front: {lip: {top: 2}}
`);
    expect(drawers[0]).toEqual({
      name: 'A',
      count: 1,
      space: {
        kind: 'opening',
        opening: { width: 280, height: 76, depth: 420 },
        fit: { side: 1, top: 1, behind: 10 },
      },
      lip: { sides: 6, top: 6, bottom: 6 },
      stock: {
        front: { thickness: 20, species: 'Cherry', grain: 'flatsawn' },
        side: { thickness: 12, species: 'Ash' },
        back: { thickness: 12, species: 'Ash' },
        bottom: { thickness: 6, species: 'Lime' },
      },
      joint: {
        notation: 'mm',
        kind: 'lapped',
        slope: { run: 7 },
        pin: 5,
        halfPin: { lower: 6, upper: 7 },
        lap: 4,
        spacing: { kind: 'even', tails: 3 },
        proud: 0.5,
        chisel: 4,
      },
      backJoint: {
        notation: 'mm',
        slope: { run: 7 },
        pin: 6,
        halfPin: { lower: 6, upper: 7 },
        spacing: { kind: 'even' },
        proud: 0.5,
        chisel: 4,
      },
      groove: { offset: 11, width: 5, depth: 4 },
      backDrop: 3,
      bottom: { kind: 'solid', slack: 0.5, hold: { kind: 'slips', width: 10, height: 18 } },
    });
    expect(drawers[1]).toMatchObject({
      count: 3,
      space: { kind: 'size', size: { width: 280, height: 76, depth: 420 } },
      lip: { sides: 0, top: 2, bottom: 0 },
      stock: {
        front: { thickness: 20, species: 'Walnut', grain: 'flatsawn' },
        back: { thickness: 9, species: 'Ash' },
        bottom: { thickness: 7, species: 'Lime' },
      },
      joint: { halfPin: { lower: 8, upper: 8 }, spacing: { kind: 'even', tails: 4 } },
      backJoint: {
        slope: { run: 6 },
        pin: 6,
        halfPin: { lower: 8, upper: 8 },
        spacing: { kind: 'even', tails: 2 },
      },
      groove: { offset: 14, width: 5, depth: 4 },
      backDrop: 5,
      bottom: { kind: 'solid', slack: 1, hold: { kind: 'groove' } },
    });
  });

  it('cuts grooves half as deep as the sides are thick, down to the half millimetre', () => {
    const depth = (side: number) =>
      planOf(`stock: {front: {thickness: 20}, side: {thickness: ${side}}}\ndrawers: [{name: A, ${OPENING}}]`)
        .drawers[0]?.groove.depth;
    expect([10, 10.9, 11, 11.9, 12].map(depth)).toEqual([5, 5, 5.5, 5.5, 6]);
  });

  it('accepts the least and the most of every range', () => {
    expect(drawer('count: 1, joint: {pin: 1, lap: 1}, fit: {side: 0, top: 1000}')).toEqual([]);
    expect(drawer('count: 1000, joint: {pin: 5000, lap: 200, graded: {ratio: 2}}')).toEqual([]);
  });

  it('is inset again where a drawer sets the lip to nothing', () => {
    const [a] = planOf(`${STOCK}front: {lip: 6}\ndrawers: [{name: A, ${OPENING}, front: {lip: 0}}]`).drawers;
    expect(a?.lip).toBeUndefined();
  });

  it('is in mm once read, whatever it was written in', () => {
    const { units, joints } = planOf(`
units: in
family: {target: 3/4}
joints:
  - {name: A, kind: through, width: 5 11/16, tailBoard: 0.5, pinBoard: 13mm, halfPin: [1/4, "3/8\\""]}
`);
    expect(units).toBe('in');
    expect(joints).toHaveLength(1);
    const spec = joints[0]?.spec;
    // The international inch is 25.4 mm.
    expect(spec?.width).toBeCloseTo(5.6875 * 25.4, 9);
    expect(spec?.tailBoard).toBe(12.7);
    expect(spec?.pinBoard).toBe(13);
    expect(spec?.halfPin?.lower).toBeCloseTo(6.35, 9);
    expect(spec?.halfPin?.upper).toBeCloseTo(9.525, 9);
  });

  it('spaces tails evenly, by a grade, or as they are listed', () => {
    const { joints } = planOf(`
joints:
  - {name: A, kind: through, width: 90, tailBoard: 12, pinBoard: 12, tails: 4}
  - {name: B, kind: lapped, width: 90, tailBoard: 12, pinBoard: 20, lap: 5, graded: {ratio: 0.9}}
  - {name: C, kind: through, width: 90, tailBoard: 12, pinBoard: 12, tails: 3, graded: {ratio: 1.1, from: middle}}
  - {name: D, kind: through, width: 90, tailBoard: 12, pinBoard: 12, tails: [30, 40], pins: [6]}
  - {name: E, kind: through, width: 90, tailBoard: 12, pinBoard: 12, tails: [78]}
`);
    expect(joints.map(({ spec }) => spec.spacing)).toEqual([
      { kind: 'even', tails: 4 },
      { kind: 'graded', ratio: 0.9, from: 'edge' },
      { kind: 'graded', tails: 3, ratio: 1.1, from: 'middle' },
      { kind: 'listed', tails: [30, 40], pins: [6] },
      { kind: 'listed', tails: [78] },
    ]);
    expect(joints[1]?.spec).toMatchObject({ kind: 'lapped', lap: 5 });
  });

  it('lays the keys of its joint over corners that belong to none, where their kind has them and their spacing is left', () => {
    const { joints } = planOf(
      `${STOCK}joint: {kind: lapped, slope: "1:7", pin: 5, lap: 4, tails: 3}
joints:
  - {name: A, kind: through, width: 90, tailBoard: 12, pinBoard: 12}
  - {name: B, kind: lapped, width: 90, tailBoard: 12, pinBoard: 12, pin: 6}`,
    );
    const common = { notation: 'mm', width: 90, tailBoard: 12, pinBoard: 12, slope: { run: 7 } };
    expect(joints.map(({ spec }) => spec)).toEqual([
      { ...common, kind: 'through', pin: 5, spacing: { kind: 'even' } },
      { ...common, kind: 'lapped', pin: 6, lap: 4, spacing: { kind: 'even' } },
    ]);
  });

  it('checks single corners only by a joint that is right', () => {
    expect(
      complaintsOf(
        'joint: {pin: wide}\njoints: [{name: A, kind: through, width: 90, tailBoard: 12, pinBoard: 12, tails: 40}]',
      ),
    ).toEqual([expect.stringMatching(/^plan\.yaml:1:\d+ joint\.pin: "wide"/u)]);
  });

  it('trims names, and accepts them in any language', () => {
    expect(
      planOf(
        'name: "  Швейный 針箱 "\njoints: [{name: ½" 😀, kind: through, width: 90, tailBoard: 12, pinBoard: 12}]',
      ),
    ).toMatchObject({ name: 'Швейный 針箱', joints: [{ name: '½" 😀' }] });
  });
});

describe("a drawer's own tails", () => {
  const spacing = (plan: string, own: string) =>
    planOf(`${STOCK}joint: {${plan}}\ndrawers: [{name: A, ${OPENING}, joint: {${own}}}]`).drawers[0]?.joint
      .spacing;

  it('replace a list', () => {
    expect(spacing('tails: [20, 30], pins: [5]', 'tails: 6')).toEqual({ kind: 'even', tails: 6 });
    expect(spacing('tails: [20, 30], pins: [5]', 'tails: [50]')).toEqual({ kind: 'listed', tails: [50] });
    expect(spacing('tails: [20, 30], pins: [5]', 'graded: {ratio: 0.8}')).toEqual({
      kind: 'graded',
      ratio: 0.8,
      from: 'edge',
    });
  });

  it('stay listed where only the pins between them differ', () => {
    expect(spacing('tails: [20, 30], pins: [5]', 'pins: [7]')).toEqual({
      kind: 'listed',
      tails: [20, 30],
      pins: [7],
    });
  });

  it('keep the grade where they are a number, and lose it where they are listed', () => {
    expect(spacing('graded: {ratio: 0.8}', 'tails: 6')).toEqual({
      kind: 'graded',
      tails: 6,
      ratio: 0.8,
      from: 'edge',
    });
    expect(spacing('graded: {ratio: 0.8}', 'tails: [50]')).toEqual({ kind: 'listed', tails: [50] });
    expect(spacing('tails: 6', 'graded: {ratio: 0.8}')).toEqual({
      kind: 'graded',
      tails: 6,
      ratio: 0.8,
      from: 'edge',
    });
  });
});

describe('a contradiction', () => {
  it('is complained of where it is written', () => {
    expect(drawer('joint: {tails: [20, 30], graded: {ratio: 0.9}}')).toEqual([
      'joint.graded: the tails are listed width by width, so they cannot be graded too; give the number of tails, or remove the grade',
    ]);
    expect(drawer('joint: {pins: [4]}')).toEqual([
      'joint.pins: pins are listed, but the tails between them are not; list the tails too, or give one width for all pins (pin)',
    ]);
    expect(drawer('joint: {kind: through, lap: 4}')).toEqual([
      'joint.lap: a through joint has no lap; try kind: lapped, or remove the lap',
    ]);
    expect(drawer('back: {joint: {tails: 3, pins: [4]}}')).toEqual([
      'back.joint.pins: pins are listed, but the tails between them are not; list the tails too, or give one width for all pins (pin)',
    ]);
    expect(drawer('size: {width: 280, height: 76, depth: 420}')).toEqual([
      'size: the opening is given too, and the size follows from it; remove one of them',
    ]);
  });

  it("is complained of once where it is in the plan's keys for all drawers", () => {
    expect(
      complaintsOf(
        `${STOCK}joint: {kind: through, lap: 5}\ndrawers:\n  - {name: A, ${OPENING}}\n  - {name: B, ${OPENING}}`,
      ),
    ).toEqual(['plan.yaml:2:24 joint.lap: a through joint has no lap; try kind: lapped, or remove the lap']);
  });

  it("is none where a through drawer only inherits its plan's lap", () => {
    const [a] = planOf(
      `${STOCK}joint: {lap: 5}\ndrawers: [{name: A, ${OPENING}, joint: {kind: through}}]`,
    ).drawers;
    expect(a?.joint).toEqual({ notation: 'mm', kind: 'through', spacing: { kind: 'even' } });
  });

  it('is one where a drawer gives a lap and its plan says through', () => {
    const text = `${STOCK}joint: {kind: through}\ndrawers: [{name: A, ${OPENING}, joint: {lap: 5}}]`;
    expect(complaintsOf(text)).toEqual([
      `plan.yaml:${placeOf('lap: 5', text)} drawers[0].joint.lap: a through joint has no lap; try kind: lapped, or remove the lap`,
    ]);
  });

  it('is one where a drawer of its own size is to fit an opening', () => {
    const text = `${STOCK}drawers: [{name: A, size: {width: 280, height: 76, depth: 420}, fit: {top: 1}}]`;
    expect(complaintsOf(text)).toEqual([
      `plan.yaml:${placeOf('fit:', text)} drawers[0].fit: a drawer that is given its own size has no opening to fit; give opening in place of size, or remove the fit`,
    ]);
  });
});

describe('what is missing', () => {
  it('is complained of in the plan where all drawers lack it', () => {
    expect(complaintsOf(`name: x\ndrawers:\n  - {name: A, ${OPENING}}\n  - {name: B, ${OPENING}}`)).toEqual([
      'plan.yaml:1:1 stock.front.thickness: the thickness of the fronts is missing; without it no drawer can be sized; add it under stock: front: {thickness: 20mm}',
      'plan.yaml:1:1 stock.side.thickness: the thickness of the sides is missing; without it no drawer can be sized; add it under stock: side: {thickness: 11mm}',
    ]);
  });

  it('is not asked for where there are no drawers', () => {
    expect(
      complaintsOf('joints: [{name: A, kind: through, width: 90, tailBoard: 12, pinBoard: 12}]'),
    ).toEqual([]);
  });

  it('is complained of in the drawer or the corner that lacks it', () => {
    expect(complaintsOf(`${STOCK}drawers:\n  - name: A\n  - ${OPENING}`)).toEqual([
      'plan.yaml:3:5 drawers[0].opening: this is missing; a drawer is sized to its opening, or given its own size; try opening: {width: 280mm, height: 76mm, depth: 420mm}',
      'plan.yaml:4:5 drawers[1].name: this is missing; it must be the name of a drawer, as text',
    ]);
    expect(complaintsOf('joints: [{name: A, width: 90, tailBoard: 12, pinBoard: 12}]')).toEqual([
      'plan.yaml:1:10 joints[0].kind: "A" has no kind; it must be one of through, lapped, double-lapped, secret-mitred',
    ]);
  });

  it.each(['name: x', 'drawers: []', 'drawers: []\njoints: []', '{}'])('is everything in %j', (text) =>
    expect(complaintsOf(text)).toEqual([
      'plan.yaml:1:1 the plan has no drawers, boxes or joints, so there is nothing to make; list them under drawers:, boxes: or joints:',
    ]),
  );
});

describe('a value of the wrong kind', () => {
  it.each([
    ['joint: {slope: 7}', 'joint.slope: this is 7; it must be a slope; try "1:7", in quotes'],
    [
      'joint: {slope: true}',
      'joint.slope: this is true; it must be a slope, such as "1:7", "1 in 7" or "8.13deg"',
    ],
    [
      'joint: {slope: "1:0"}',
      'joint.slope: "1:0" is outside what can be cut; a slope must be 1:2.5 to 1:20; try 1:7',
    ],
    [
      'joint: {slope: steep}',
      'joint.slope: "steep" is not a slope; a slope is written 1:7, 1 in 7 or 8.13deg; try 1:7',
    ],
    [
      'joint: {pin: }',
      'joint.pin: this is empty; it must be a length, such as 18, 18mm, 0.75in or 5-11/16in',
    ],
    ['joint: {pin: -2}', 'joint.pin: -2 mm is out of range; it must be 1 mm to 5000 mm'],
    [
      'joint: {pin: .nan}',
      'joint.pin: this is NaN; it must be a length, such as 18, 18mm, 0.75in or 5-11/16in',
    ],
    [
      'joint: {pin: .inf}',
      'joint.pin: this is Infinity; it must be a length, such as 18, 18mm, 0.75in or 5-11/16in',
    ],
    [
      'joint: {halfPin: [1, 2, 3]}',
      'joint.halfPin: this is a list of 3; it must be one width, or two: [lower, upper]',
    ],
    ['joint: {halfPin: [1, 0]}', 'joint.halfPin[1]: 0 mm is out of range; it must be 1 mm to 5000 mm'],
    ['joint: {halfPin: 0}', 'joint.halfPin: 0 mm is out of range; it must be 1 mm to 5000 mm'],
    [
      'stock: {front: {species: Cherry, black}}',
      'stock.front.black: a comma between braces ends a value that is not in quotes; try species: "Cherry, black"',
    ],
    ['joint: {tails: 0}', 'joint.tails: 0 is out of range; it must be 1 to 10000'],
    ['joint: {tails: 2.5}', 'joint.tails: 2.5 is not whole; it must be a whole number, 1 to 10000'],
    [
      'joint: {tails: "6"}',
      'joint.tails: this is "6"; it must be a whole number of tails, or a list of their widths from the reference edge up',
    ],
    ['joint: {tails: []}', 'joint.tails: this is a list of 0; it must be a list of at least one width'],
    [
      'joint: {tails: [20, wide]}',
      'joint.tails[1]: "wide" is not a length; try 18, 18mm, 0.75in, 3/4in or 5-11/16in',
    ],
    ['joint: {graded: {ratio: 3}}', 'joint.graded.ratio: 3 is out of range; it must be 0.5 to 2'],
    ['joint: {graded: 0.9}', 'joint.graded: this is 0.9; it must be written {ratio: 0.9, from: edge}'],
    [
      'joint: {kind: trough}',
      'joint.kind: this is "trough"; it must be one of through, lapped, double-lapped, secret-mitred',
    ],
    ['count: "2"', 'count: this is "2"; it must be a whole number, 1 to 1000; try 2, without quotes'],
    ['count: 1001', 'count: 1001 is out of range; it must be 1 to 1000'],
    ['fit: 1', 'fit: this is 1; it must be written {side: 0.5, top: 1, behind: 10}'],
    [
      'bottom: {slips: yes}',
      'bottom.slips: this is "yes"; it must be written {width: 10, height: 18}, or none',
    ],
    [
      'bottom: {slips: {width: 10}}',
      'bottom.slips.height: this is missing; it must be a length, such as 18, 18mm, 0.75in or 5-11/16in',
    ],
    [
      'front: {lip: [6]}',
      'front.lip: this is a list of 1; it must be one length all round, or written {sides: 6, top: 6, bottom: 0}',
    ],
    [
      'stock: [20]',
      'stock: this is a list of 1; it must be written {front: {thickness: 20}, side: {thickness: 11}}',
    ],
    [
      'stock: {front: {species: 7}}',
      'stock.front.species: this is 7; it must be the name of a wood; try "7", in quotes',
    ],
  ])('%s is explained', (keys, told) => expect(drawer(keys)).toEqual([told]));

  it.each([
    [
      'hello',
      'plan.yaml:1:1 this is "hello"; it must be written with keys such as drawers:, boxes: or joints:',
    ],
    [
      '- a',
      'plan.yaml:1:1 this is a list of 1; it must be written with keys such as drawers:, boxes: or joints:',
    ],
    [
      'drawers: 5',
      'plan.yaml:1:1 drawers: this is 5; it must be a list of drawers, each with a dash before it',
    ],
    [
      'drawers:',
      'plan.yaml:1:1 drawers: this is empty; it must be a list of drawers, each with a dash before it',
    ],
    [
      'joints: [7]',
      'plan.yaml:1:10 joints[0]: this is 7; it must be written {name: Carcase, kind: through, width: 430, tailBoard: 19, pinBoard: 19}',
    ],
  ])('%j is explained', (text, told) => expect(complaintsOf(text)).toEqual([told]));

  it('is measured in inches where the plan is, though the unit be misspelt', () => {
    const corner = 'joints: [{name: A, kind: through, width: 3, tailBoard: 1/2, pinBoard: 1/2}]';
    expect(complaintsOf(`units: inches\n${corner}`)).toEqual([
      'plan.yaml:1:1 units: this is "inches"; it must be mm or in',
    ]);
  });
});

describe('an unknown key', () => {
  it.each([
    ['joint: {halfpin: 3}', 'joint.halfpin: there is no such key here; try halfPin'],
    ['joint: {tail: 3}', 'joint.tail: there is no such key here; try tails'],
    ['slope: "1:7"', 'slope: there is no such key here; write it as joint: {slope: …}'],
    ['thickness: 20', 'thickness: there is no such key here; write it as stock: {front: {thickness: …}}'],
    ['joint: {slope:1:7}', 'joint["slope:1:7"]: there is no such key here; try slope: 1:7'],
    [
      'groove: {width: 4,5}',
      'groove["5"]: there is no such key here; write a point in place of a decimal comma, or put the number in quotes',
    ],
    ['fit: {left: 1}', 'fit.left: there is no such key here; the keys are side, top, behind'],
    [
      'back: {joint: {kind: through}}',
      'back.joint.kind: there is no such key here; the keys are slope, pin, halfPin, tails, pins, locked, graded, spacing, groups, groupPin, smallPin, closer, closerTails, shoulder, shoulderWidth, mitre, proud, chisel',
    ],
    ['front: {lip: {side: 3}}', 'front.lip.side: there is no such key here; try sides'],
  ])('in {%s} is named, with what was meant', (keys, told) => expect(drawer(keys)).toEqual([told]));

  it('is listed up to twenty times in one group', () => {
    const keys = Array.from({ length: 25 }, (_, i) => `unheard${i}: 1`).join('\n');
    const told = complaintsOf(`joints: []\n${keys}`).filter((line) => !line.includes('nothing to make'));
    expect(told).toHaveLength(21);
    expect(told).toContain('plan.yaml:1:1 there are 5 more keys here that are not known');
  });
});

describe('a name', () => {
  const named = (...names: string[]): string[] =>
    complaintsOf(
      JSON.stringify({
        joints: names.map((name) => ({ name, kind: 'through', width: 90, tailBoard: 12, pinBoard: 12 })),
      }),
    ).map((line) => line.replace(/^plan.yaml:1:\d+ /u, ''));

  it('has 1 to 80 letters, counted as people count them', () => {
    expect(named('😀'.repeat(80))).toEqual([]);
    expect(named('x'.repeat(81))).toEqual([
      `joints[0].name: "${'x'.repeat(40)}…" has 81 letters; it must have 1 to 80`,
    ]);
    expect(named('  ')).toEqual(['joints[0].name: "" has 0 letters; it must have 1 to 80']);
    expect(named('x'.repeat(10_000))).toHaveLength(1);
  });

  it.each([
    ['a\nb', 'U+000A'],
    ['a\u0007b', 'U+0007'],
    ['a\u202Eb', 'U+202E'],
    ['a\u2028b', 'U+2028'],
    ['a\uD800b', 'U+D800'],
  ])('cannot hold what cannot be printed: %j', (name, code) =>
    expect(named(name)).toEqual([
      `joints[0].name: this holds a character that cannot be printed, ${code}; try letters, figures, blanks and signs only`,
    ]),
  );

  it('may be text that other programs would run or read as a path', () => {
    expect(named('../../etc', '{{7*7}}', '$(reboot)', 'con', 'C:\\x', 'שלום')).toEqual([]);
  });

  it('belongs to one drawer or corner only, capitals and blanks aside', () => {
    expect(named('Left side', 'left  SIDE', 'Leftside', 'Right side')).toEqual([
      'joints[1].name: "left  SIDE" is the name of joints[0] too; every name must be different; give it another name',
      'joints[2].name: "Leftside" is the name of joints[0] too; every name must be different; give it another name',
    ]);
  });

  it('is the same name however its accents are encoded', () => {
    expect(named('Caf\u00E9', 'Cafe\u0301')).toHaveLength(1);
  });

  it('may not be shared by a drawer, a box and a corner', () => {
    const text = `${STOCK}drawers: [{name: A, ${OPENING}}]
boxes: [{name: a, size: {width: 200, height: 80, depth: 140}}]
joints: [{name: A, kind: through, width: 90, tailBoard: 12, pinBoard: 12}]`;
    expect(complaintsOf(text)).toEqual([
      'plan.yaml:3:10 boxes[0].name: "a" is the name of drawers[0] too; every name must be different; give it another name',
      'plan.yaml:4:11 joints[0].name: "A" is the name of drawers[0] too; every name must be different; give it another name',
    ]);
  });
});

describe('what is wrong', () => {
  const text = `${STOCK}drawers:
  - {name: A, ${OPENING}, joint: {slope: 7}}
  - {name: B, ${OPENING}, joint: {kind: through, lap: 3}}
  - {name: C, ${OPENING}}
  - {name: c, ${OPENING}}
  - {name: D, ${OPENING}}
joints:
  - {name: E, kind: through, width: nine, tailBoard: 12, pinBoard: 12}
  - {name: F, kind: through, width: 90, tailBoard: 12, pinBoard: 12, widht: 90}
  - {name: G, kind: through, width: 90, tailBoard: 12, pinBoard: 12}
`;

  it('is listed all at once, from the top down', () => {
    expect(complaintsOf(text).map((line) => line.split(': ')[0])).toEqual([
      `plan.yaml:${placeOf('slope: 7', text)} drawers[0].joint.slope`,
      `plan.yaml:${placeOf('lap: 3', text)} drawers[1].joint.lap`,
      `plan.yaml:${placeOf('name: c', text)} drawers[3].name`,
      `plan.yaml:${placeOf('width: nine', text)} joints[0].width`,
      `plan.yaml:${placeOf('widht', text)} joints[1].widht`,
    ]);
  });

  it('leaves the rest for the steps that follow, which still find the text', () => {
    const reading = readPlan(text);
    if (reading.ok) throw new Error('this plan must be refused');
    expect(reading.valid.drawers.map(({ name }) => name)).toEqual(['C', 'D']);
    expect(reading.valid.joints.map(({ name }) => name)).toEqual(['G']);
    const says = ['too narrow'];
    expect(reading.locate({ at: ['drawers', 1, 'opening', 'width'], says })).toEqual({
      line: 7,
      column: 25,
      complaint: { at: ['drawers', 4, 'opening', 'width'], says },
    });
    expect(reading.locate({ at: ['joints', 0, 'width'], says })).toMatchObject({
      line: 11,
      complaint: { at: ['joints', 2, 'width'] },
    });
  });

  it("leaves no drawer where the plan's own keys are wrong, and no corner where its unit is", () => {
    const drawers = `drawers: [{name: A, ${OPENING}}]`;
    const joints = 'joints: [{name: G, kind: through, width: 90, tailBoard: 12, pinBoard: 12}]';
    const sound = (line: string) => {
      const reading = readPlan(`${STOCK}${line}\n${drawers}\n${joints}`);
      if (reading.ok) return undefined;
      return [reading.complaints.length, reading.valid.drawers.length, reading.valid.joints.length];
    };
    expect(sound('grove: {width: 5}')).toEqual([1, 0, 1]);
    expect(sound('units: cm')).toEqual([1, 0, 0]);
    expect(sound('name: x')).toBeUndefined();
  });

  it('is one alone where there are more than 2,000 drawers, boxes and single corners', () => {
    const entries = (count: number) => Array.from({ length: count }, (_, i) => `{name: D${i}, ${OPENING}}`);
    const plan = (drawers: number, joints: number) =>
      `${STOCK}drawers: [${entries(drawers).join(', ')}]\njoints: [${'7,'.repeat(joints)}]`;
    expect(complaintsOf(plan(2000, 0))).toEqual([]);
    expect(complaintsOf(plan(1999, 3))).toEqual([
      expect.stringMatching(
        /^plan\.yaml:3:12 joints\[1\]: the plan has 2002 drawers, boxes and single corners; it may have up to 2000, as more would take too much memory; divide the plan into several/u,
      ),
    ]);
    expect(complaintsOf(plan(1, 1999))).toHaveLength(1999);
  });
});
