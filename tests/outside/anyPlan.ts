import fc from 'fast-check';

const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((value) => value / 10);

/** Names as people give them, most of them far too long. */
const anyName = fc.constantFrom(
  'Buttons',
  'B',
  'Thread, ribbon, lace and bias binding in every colour of the rainbow',
  'Ersatzteilkästchen für Nähmaschinennadeln und Unterfadenspulen',
  'Žluťoučký kůň úpěl ďábelské ódy',
  'Κουμπιά, κλωστές και κορδέλες',
  'W'.repeat(60),
  'Cloth (left) & patches <right> 1/2"',
);

const corner = fc.record(
  {
    slope: tenths(5, 9).map((run) => `1:${run}`),
    pin: tenths(2, 8),
    halfPin: tenths(3, 9),
    chisel: tenths(2, 6),
    proud: tenths(0, 0.5),
  },
  { requiredKeys: [] },
);

const drawer = fc.record({
  opening: fc.record({ width: tenths(70, 700), height: tenths(40, 300), depth: tenths(120, 600) }),
  // More of them are the same boards over again.
  count: fc.integer({ min: 1, max: 3 }),
});

const joint = fc.record({
  kind: fc.constantFrom('through' as const, 'lapped' as const),
  width: tenths(20, 900),
  tailBoard: tenths(6, 25),
  pinBoard: tenths(10, 30),
});

/** The names of several things are not to be the same. */
const named = <T extends object>(things: readonly T[], names: readonly string[]) =>
  things.map((thing, i) => ({ name: `${names[i % names.length]}${i === 0 ? '' : ` ${i + 1}`}`, ...thing }));

/** A plan as a program would write it, in JSON. Many cannot be made, and are refused. */
export const anyPlan: fc.Arbitrary<string> = fc
  .record({
    title: anyName,
    names: fc.array(anyName, { minLength: 1, maxLength: 5 }),
    stock: fc.record({ front: tenths(12, 26), side: tenths(6, 16) }),
    joint: corner,
    groove: fc.record({ offset: tenths(4, 14), width: tenths(3, 6) }),
    drawers: fc.array(drawer, { maxLength: 2 }),
    joints: fc.array(joint, { maxLength: 2 }),
    lip: fc.option(tenths(3, 10), { nil: undefined }),
  })
  .filter(({ drawers, joints }) => drawers.length + joints.length > 0)
  .map(({ title, names, stock, joint: every, groove, drawers, joints, lip }) =>
    JSON.stringify({
      name: title,
      stock: { front: { thickness: stock.front }, side: { thickness: stock.side } },
      joint: every,
      groove: { ...groove, depth: Number((stock.side / 2.5).toFixed(1)) },
      ...(drawers.length > 0 && { drawers: named(drawers, names) }),
      ...(joints.length > 0 && { joints: named(joints, names.toReversed()) }),
      ...(lip !== undefined && drawers.length > 0 && { front: { lip } }),
    }),
  );
