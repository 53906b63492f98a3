import fc from 'fast-check';
import { grouped } from '../../src/joint/groupedSpacing.ts';
import type { Joint } from '../../src/joint/joint.ts';
import type { JointSpec, Spacing } from '../../src/joint/jointSpec.ts';
import { layOut } from '../../src/joint/layOut.ts';

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const optional = <T extends object>(model: { [K in keyof T]: fc.Arbitrary<T[K]> }) =>
  fc.record(model, { requiredKeys: [] });

const shared: fc.Arbitrary<Spacing> = fc.oneof(
  fc.record({ kind: fc.constant('even' as const) }),
  fc.record({ kind: fc.constant('even' as const), tails: fc.integer({ min: 1, max: 12 }) }),
  fc.record({
    kind: fc.constant('graded' as const),
    ratio: size(0.5, 2),
    from: fc.constantFrom('edge' as const, 'middle' as const),
  }),
  fc.record({
    kind: fc.constant('graded' as const),
    tails: fc.integer({ min: 1, max: 6 }),
    ratio: size(0.7, 1.4),
    from: fc.constantFrom('edge' as const, 'middle' as const),
  }),
  fc.record({
    kind: fc.constant('closer-edges' as const),
    ratio: size(0.5, 0.95),
    each: fc.integer({ min: 1, max: 4 }),
  }),
);

/** Wishes of ordinary sizes, most of which can be cut, in even, graded and closer spacing. */
export const ordinarySpec: fc.Arbitrary<JointSpec> = fc
  .tuple(
    fc.record({ width: size(40, 700), tailBoard: size(5, 30), pinBoard: size(7, 30), spacing: shared }),
    optional({
      slope: fc.record({ run: size(2.5, 20) }),
      pin: size(1, 12),
      halfPin: fc.record({ lower: size(1, 15), upper: size(1, 15) }),
      proud: size(0, 1),
      chisel: size(1, 12),
    }),
    fc.constantFrom({ kind: 'through' as const }, { kind: 'lapped' as const }),
  )
  .map(([sizes, wishes, kind]) => ({ ...sizes, ...wishes, ...kind }));

/** Ordinary sizes in listed spacing: the widths fill the board, which is as wide as they need. */
export const listedSpec: fc.Arbitrary<JointSpec> = fc
  .array(fc.record({ tail: size(14, 60), pin: size(1, 12) }), { minLength: 1, maxLength: 10 })
  .chain((widths) =>
    fc
      .record({
        halfPin: fc.record({ lower: size(1, 15), upper: size(1, 15) }),
        tailBoard: size(5, 30),
        pinBoard: size(7, 20),
        kind: fc.constantFrom('through' as const, 'lapped' as const),
      })
      .map(({ halfPin, ...sizes }): JointSpec => {
        const tails = widths.map(({ tail }) => tail);
        const pins = widths.slice(1).map(({ pin }) => pin);
        const width = [...tails, ...pins, halfPin.lower, halfPin.upper].reduce((a, b) => a + b, 0);
        return { ...sizes, halfPin, width, spacing: { kind: 'listed', tails, pins } };
      }),
  );

/** Through and lapped corners with mitred shoulders, from corner to corner where the boards differ. */
export const shoulderedSpec: fc.Arbitrary<JointSpec> = fc
  .tuple(
    fc.record({ width: size(60, 700), tailBoard: size(5, 30), pinBoard: size(7, 30), spacing: shared }),
    optional({ slope: fc.record({ run: size(4, 12) }), pin: size(3, 12), shoulderWidth: size(1, 20) }),
    fc.constantFrom('lower' as const, 'upper' as const, 'both' as const),
    fc.constantFrom({ kind: 'through' as const }, { kind: 'lapped' as const }),
  )
  .map(([sizes, wishes, shoulder, kind]) => ({ ...sizes, ...wishes, shoulder, mitre: 'corner', ...kind }));

/** A hound's tooth in through corners, some with mitred shoulders; its small pins as they are or as usual. */
export const toothedSpec: fc.Arbitrary<JointSpec> = fc
  .tuple(
    fc.record({ width: size(60, 700), tailBoard: size(5, 30), pinBoard: size(7, 30), spacing: shared }),
    optional({ slope: fc.record({ run: size(4, 12) }), pin: size(3, 12), chisel: size(1, 4) }),
    fc.option(size(4, 9), { nil: undefined }),
    fc.constantFrom(undefined, undefined, 'lower' as const, 'both' as const),
  )
  .map(([sizes, wishes, smallPin, shoulder]) => ({
    ...sizes,
    ...wishes,
    kind: 'through',
    houndsTooth: smallPin === undefined ? {} : { smallPin },
    ...(shoulder && { shoulder, mitre: 'corner' }),
  }));

/** Through, lapped and double-lapped corners whose tails are in groups. */
export const groupedSpec: fc.Arbitrary<JointSpec> = fc
  .tuple(
    fc.record({ width: size(120, 900), tailBoard: size(7, 30), pinBoard: size(7, 30) }),
    optional({ slope: fc.record({ run: size(4, 12) }), pin: size(2, 8) }),
    fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 2, maxLength: 5 }),
    fc.option(size(1, 40), { nil: undefined }),
    fc.constantFrom('through' as const, 'lapped' as const, 'double-lapped' as const),
  )
  .map(([sizes, wishes, groups, groupPin, kind]) => ({
    ...sizes,
    ...wishes,
    kind,
    spacing: grouped(groups, groupPin),
  }));

/** Corners that laps close on both boards: of boards that differ, mitred ones go from corner to corner. */
export const closedSpec: fc.Arbitrary<JointSpec> = fc
  .tuple(
    fc.record({ width: size(60, 700), tailBoard: size(7, 30), pinBoard: size(7, 30), spacing: shared }),
    optional({
      slope: fc.record({ run: size(4, 12) }),
      pin: size(3, 12),
      lap: size(1, 8),
      tailLap: size(1, 8),
    }),
    fc.oneof(
      fc.constant({ kind: 'double-lapped' as const }),
      fc.record(
        {
          kind: fc.constant('secret-mitred' as const),
          mitre: fc.constant('corner' as const),
          shoulderWidth: size(1, 12),
        },
        { requiredKeys: ['kind', 'mitre'] },
      ),
    ),
  )
  .map(([sizes, wishes, kind]) => ({ ...sizes, ...wishes, ...kind }));

/** The joints of those specs that can be cut. */
export const jointsOf = (specs: fc.Arbitrary<JointSpec>): fc.Arbitrary<Joint> =>
  specs
    .map((spec) => layOut(spec))
    .filter((result) => result.ok)
    .map((result) => {
      if (!result.ok) throw new Error('filtered');
      return result.value;
    });

/** Any number at all, small lengths often. */
export const wild = fc.oneof(
  size(-10, 100),
  fc.double(),
  fc.constantFrom(
    0,
    -0,
    1e9,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.MIN_VALUE,
  ),
);

/** A number in a range nearly always, any number at all now and then. */
export const mostly = (min: number, max: number): fc.Arbitrary<number> =>
  fc.oneof({ weight: 12, arbitrary: size(min, max) }, wild);

/** Wishes of any numbers at all. */
export const wildSpec: fc.Arbitrary<JointSpec> = fc
  .tuple(
    fc.record({
      width: wild,
      tailBoard: wild,
      pinBoard: wild,
      spacing: fc.oneof(
        fc.constant<Spacing>({ kind: 'even' }),
        fc.record({ kind: fc.constant('even' as const), tails: wild }),
        fc.record({
          kind: fc.constant('graded' as const),
          tails: wild,
          ratio: wild,
          from: fc.constantFrom('edge' as const, 'middle' as const),
        }),
        fc.record({ kind: fc.constant('listed' as const), tails: fc.array(wild), pins: fc.array(wild) }),
        fc.record({ kind: fc.constant('listed' as const), tails: fc.array(wild) }),
        fc.record({
          kind: fc.constant('grouped' as const),
          tails: wild,
          groups: fc.array(wild),
          groupPin: wild,
        }),
      ),
    }),
    optional({
      slope: fc.record({ run: wild }),
      pin: wild,
      halfPin: fc.record({ lower: wild, upper: wild }),
      proud: wild,
      chisel: wild,
      houndsTooth: fc.record({ smallPin: wild }, { requiredKeys: [] }),
    }),
    fc.oneof(
      fc.constantFrom({ kind: 'through' as const }, { kind: 'lapped' as const }),
      fc.record({ kind: fc.constant('lapped' as const), lap: wild }),
      fc.record({ kind: fc.constant('double-lapped' as const), lap: wild, tailLap: wild }),
      fc.record({
        kind: fc.constant('secret-mitred' as const),
        mitre: fc.constant('corner' as const),
        lap: wild,
        tailLap: wild,
        shoulderWidth: wild,
      }),
    ),
  )
  .map(([sizes, wishes, kind]) => ({ ...sizes, ...wishes, ...kind }));
