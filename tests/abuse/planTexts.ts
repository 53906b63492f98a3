import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { starterPlan } from '../../src/plan/starterPlan.ts';
import { HOSTILE_NAMES } from './texts.ts';

const plans = [
  readFileSync('examples/haberdashery-chest.yaml', 'utf8'),
  readFileSync('examples/trinket-box.yaml', 'utf8'),
  readFileSync('examples/haberdashery-chest-guided.yaml', 'utf8'),
  readFileSync('examples/haberdashery-chest-boards.yaml', 'utf8'),
  starterPlan('mm'),
  starterPlan('in'),
];

/** A plan with slips of the pen in it. */
export const planWithSlips = fc
  .record({
    plan: fc.constantFrom(...plans),
    cuts: fc.array(
      fc.record({
        from: fc.double({ min: 0, max: 1, noNaN: true }),
        length: fc.integer({ min: 0, max: 12 }),
        put: fc.oneof(
          fc.constantFrom(
            '',
            ':',
            ' ',
            '\n',
            '\t',
            '{',
            '}',
            '[',
            ']',
            ',',
            '"',
            "'",
            '-',
            '#',
            '&a ',
            '*a',
            '!',
            '|',
            '?',
            '0',
            '-1',
            '1e999',
            '.nan',
            'null',
            '~',
          ),
          fc.string({ maxLength: 4 }),
        ),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  })
  .map(({ plan, cuts }) =>
    cuts.reduce((text, { from, length, put }) => {
      const start = Math.floor(from * text.length);
      return `${text.slice(0, start)}${put}${text.slice(start + length)}`;
    }, plan),
  );

/** Values of any kind under the keys of a plan. */
const value = fc.letrec((tie) => ({
  value: fc.oneof(
    { maxDepth: 3 },
    fc.oneof(
      fc.constant(null),
      fc.boolean(),
      fc.double(),
      fc.integer(),
      fc.string({ unit: 'binary', maxLength: 6 }),
    ),
    fc.constantFrom<unknown>('1:7', '3/4in', 'through', 'lapped', 'none', 5, 20, 280),
    fc.array(tie('value'), { maxLength: 3 }),
    fc.dictionary(
      fc.constantFrom(
        'name',
        'units',
        'fractions',
        'stock',
        'front',
        'side',
        'thickness',
        'joint',
        'joints',
        'drawers',
        'opening',
        'size',
        'width',
        'height',
        'depth',
        'kind',
        'tails',
        'pins',
        'graded',
        'ratio',
        'halfPin',
        'lip',
        'slips',
        'bottom',
        'back',
        'fit',
        'tailBoard',
        'pinBoard',
        'cutter',
        'diameter',
        'angle',
        'length',
        'neck',
        'straight',
        'bush',
        'saw',
        'kerf',
        'boards',
        'outline',
        'defects',
        'at',
        'from',
        'count',
        'cut',
        'breakout',
        'runThrough',
        'toString',
        '__proto__',
      ),
      tie('value'),
      { maxKeys: 6 },
    ),
  ),
})).value;

/** A plan of the right keys whose values are anything. */
export const planOfAnything = fc
  .tuple(value, value, fc.option(value, { nil: undefined }))
  .map(([drawer, joint, cutter]) => JSON.stringify({ cutter, drawers: [drawer], joints: [joint] }));

const sizes = (least: number, most: number) =>
  fc.oneof(
    { weight: 5, arbitrary: fc.integer({ min: least * 2, max: most * 2 }).map((half) => half / 2) },
    { weight: 1, arbitrary: fc.double({ min: least, max: most, noNaN: true }) },
  );

/** One thing nearly always, another now and then. */
const mainly = <A, B>(usual: fc.Arbitrary<A>, rare: fc.Arbitrary<B>) =>
  fc.oneof({ weight: 12, arbitrary: usual }, rare);
const optional = <T extends object>(model: { [K in keyof T]: fc.Arbitrary<T[K]> }) =>
  fc.record(model, { requiredKeys: [] });

const corner = {
  slope: fc.constantFrom('1:5', '1:6', '1:7', '1:8', '8.1deg', '1:2.5', '1:20'),
  pin: sizes(2, 8),
  halfPin: fc.oneof(sizes(3, 8), fc.tuple(sizes(3, 8), sizes(3, 8))),
  proud: mainly(fc.constant(undefined), sizes(0, 1)),
  chisel: sizes(1, 12),
};
/** Where a cutter sets the slope, and the least pin. */
const cutCorner = { halfPin: corner.halfPin, proud: corner.proud, pin: sizes(11, 18) };
type Corner = typeof corner | typeof cutCorner;

const cutter = fc
  .tuple(
    fc.record({
      diameter: mainly(sizes(9, 13), fc.constantFrom(0, '1/2in', 'wide')),
      angle: mainly(fc.constantFrom(7, 8, 9.5), fc.constantFrom(2, 14, 90, '8°')),
      length: mainly(sizes(20, 25), sizes(5, 20)),
    }),
    optional({
      neck: sizes(3, 8),
      straight: sizes(3, 8),
      bush: mainly(sizes(13, 15), sizes(5, 60)),
      pinBush: sizes(8, 18),
    }),
  )
  .map((parts) => Object.assign({}, ...parts));
const spaced = optional({
  tails: fc.integer({ min: 1, max: 3 }),
  graded: fc.record({
    ratio: fc.double({ min: 0.6, max: 1.6, noNaN: true }),
    from: fc.constantFrom('edge', 'middle'),
  }),
});
const conditions = mainly(
  fc.integer({ min: 40, max: 65 }).map((humidity) => `20C/${humidity}%`),
  fc.constantFrom('8%', '70F/45%', '31%', '20C', '<b>'),
);
const pair = fc.record({ radial: sizes(2, 5), tangential: sizes(5, 9) });
const wood = {
  thickness: sizes(9, 16),
  species: mainly(fc.constantFrom('Cherry, black', 'Ash, white'), fc.constant('<b>oak</b>')),
};

const drawerKeys = (corner: Corner) => ({
  joint: fc
    .tuple(
      optional({
        ...corner,
        kind: mainly(fc.constant('lapped'), fc.constant('through')),
        lap: mainly(sizes(4, 8), sizes(1, 40)),
      }),
      spaced,
    )
    .map(([keys, spacing]) => ({ ...keys, ...spacing })),
  groove: optional({ offset: sizes(9, 12), width: sizes(3, 5), depth: sizes(3, 5) }),
  fit: optional({ side: sizes(0, 2), top: sizes(0, 4), behind: sizes(0, 20) }),
  back: optional({ drop: sizes(0, 10), joint: optional(corner) }),
  bottom: optional({
    kind: fc.constantFrom('panel', 'solid'),
    slack: sizes(0, 1),
    slips: fc.oneof(
      fc.constant('none'),
      fc.record({ width: sizes(8, 14), height: mainly(sizes(14, 17), sizes(10, 30)) }),
    ),
  }),
  front: optional({
    lip: fc.oneof(sizes(0, 8), optional({ sides: sizes(0, 8), top: sizes(0, 8), bottom: sizes(0, 8) })),
  }),
});

const name = fc.oneof(
  {
    weight: 8,
    arbitrary: fc
      .tuple(fc.constantFrom('Buttons', 'Thread', 'Ribbon', 'Patches', 'Cloth'), fc.nat(99))
      .map(([what, number]) => `${what} ${number}`),
  },
  { weight: 1, arbitrary: fc.constantFrom(...HOSTILE_NAMES) },
  { weight: 1, arbitrary: fc.string({ unit: 'grapheme', minLength: 1, maxLength: 30 }) },
);
const box = fc.record({ width: sizes(120, 600), height: sizes(60, 220), depth: sizes(200, 500) });

/** What is given beside a cutter, here and there. */
const beside = optional({
  fingers: fc
    .tuple(
      fc.record({ together: mainly(sizes(8, 14), sizes(14, 60)) }),
      optional({
        bush: mainly(sizes(13, 17), sizes(5, 40)),
        pairs: fc.integer({ min: 0, max: 12 }),
        bar: mainly(sizes(150, 600), sizes(5, 100)),
        lapped: fc.record({ channel: sizes(10, 40) }),
        through: fc.record({ channel: sizes(10, 40), taper: fc.constantFrom(7, 8, 9.5) }),
      }),
    )
    .map((parts) => Object.assign({}, ...parts)),
  family: optional({
    spacers: fc.integer({ min: 0, max: 4 }),
    within: sizes(0, 1),
    halfPins: fc.tuple(sizes(2, 6), sizes(5, 12)),
  }),
});

/** Plans as people write them, of sizes that go together more often than not. */
const planOf = (
  corner: Corner,
  cutter: fc.Arbitrary<unknown>,
  tools: fc.Arbitrary<object> = fc.constant({}),
) =>
  fc
    .record({
      cutter,
      tools,
      head: optional({
        name,
        units: fc.constant('mm'),
        climate: fc.oneof(
          { weight: 3, arbitrary: fc.constant(undefined) },
          fc.record({ making: conditions, driest: fc.constant('20C/30%'), dampest: conditions }),
        ),
        woods: fc.dictionary(name, fc.record({ shrinkage: pair }), { maxKeys: 2 }),
      }),
      stock: fc.record({
        front: fc.record({ ...wood, thickness: sizes(16, 24) }),
        side: fc.record(wood),
        back: optional(wood),
        bottom: optional({ thickness: sizes(3, 8), species: wood.species }),
      }),
      keys: optional(drawerKeys(corner)),
      drawers: fc.array(
        fc
          .tuple(
            fc.record({ name, count: fc.integer({ min: 1, max: 12 }) }),
            fc.oneof(fc.record({ opening: box }), fc.record({ size: box })),
            fc.oneof({ weight: 3, arbitrary: fc.constant({}) }, optional(drawerKeys(corner))),
          )
          .map((parts) => Object.assign({}, ...parts)),
        { minLength: 1, maxLength: 4 },
      ),
      joints: fc.array(
        fc
          .tuple(
            fc.record({
              name,
              kind: fc.constantFrom('through', 'lapped'),
              width: sizes(40, 600),
              tailBoard: sizes(6, 25),
              pinBoard: sizes(8, 25),
            }),
            optional(corner),
            spaced,
          )
          .map((parts) => Object.assign({}, ...parts)),
        { maxLength: 2 },
      ),
    })
    .map(({ cutter, tools, head, stock, keys, drawers, joints }) =>
      JSON.stringify({ cutter, ...tools, ...head, stock, ...keys, drawers, joints }),
    );

/** Plans for work by hand. */
export const ordinaryPlan = planOf(corner, fc.constant(undefined));

/** Plans for work with a router. */
export const guidedPlan = planOf(cutCorner, cutter, beside);
