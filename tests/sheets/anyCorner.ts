import fc from 'fast-check';
import type { Interval, Joint } from '../../src/joint/joint.ts';
import type { JointSpec, Spacing } from '../../src/joint/jointSpec.ts';
import { layOut } from '../../src/joint/layOut.ts';
import { value } from '../value.ts';

/** A corner that can be cut, put together from its tails and pins, so that its lines are known without laying it out. */
export interface KnownJoint {
  readonly joint: Joint;
  readonly kind: 'through' | 'lapped';
  readonly width: number;
  readonly tailBoard: number;
  readonly pinBoard: number;
  readonly depth: number;
  readonly proud: number;
  /** From and to of each tail in mm from the reference edge. */
  readonly tails: readonly { readonly tip: Interval; readonly base: Interval }[];
}

/** Sizes with a liking for the least. */
const size = (min: number, max: number) =>
  fc.oneof(
    { weight: 3, arbitrary: fc.double({ min, max, noNaN: true }) },
    { weight: 1, arbitrary: fc.constant(min) },
  );

interface Spaced {
  readonly tips: readonly number[];
  readonly pins: readonly number[];
  readonly spacing: Spacing;
}

/** Tip widths and the pins between them, given the narrowest tip that can be cut and the pins' width. */
type Space = (least: number, pin: number) => Spaced;

const spaced: fc.Arbitrary<Space> = fc.oneof(
  fc.record({ tails: fc.integer({ min: 1, max: 10 }), more: size(0, 40) }).map(
    ({ tails, more }): Space =>
      (least, pin) => ({
        tips: Array.from({ length: tails }, () => least + more),
        pins: Array.from({ length: tails - 1 }, () => pin),
        spacing: { kind: 'even', tails },
      }),
  ),
  fc
    .record({
      tails: fc.integer({ min: 1, max: 6 }),
      ratio: fc.double({ min: 0.5, max: 2, noNaN: true }),
      from: fc.constantFrom('edge' as const, 'middle' as const),
      more: size(0, 20),
    })
    .map(
      ({ tails, ratio, from, more }): Space =>
        (least, pin) => {
          const weights = Array.from(
            { length: tails },
            (_, i) => ratio ** (from === 'edge' ? i : Math.ceil(tails / 2) - 1 - Math.min(i, tails - 1 - i)),
          );
          const unit = (least + more) / Math.min(...weights);
          return {
            tips: weights.map((weight) => weight * unit),
            pins: Array.from({ length: tails - 1 }, () => pin),
            spacing: { kind: 'graded', tails, ratio, from },
          };
        },
    ),
  fc.array(fc.record({ more: size(0, 50), pin: size(1, 12) }), { minLength: 1, maxLength: 8 }).map(
    (widths): Space =>
      (least) => {
        const tips = widths.map(({ more }) => least + more);
        const pins = widths.slice(1).map(({ pin }) => pin);
        return { tips, pins, spacing: { kind: 'listed', tails: tips, pins } };
      },
  ),
);

export const knownJoint: fc.Arbitrary<KnownJoint> = fc
  .record({
    kind: fc.constantFrom('through' as const, 'lapped' as const),
    run: fc.double({ min: 2.5, max: 20, noNaN: true }),
    tailBoard: size(2, 40),
    thick: size(2, 30),
    lap: size(1, 12),
    pin: size(1, 15),
    lower: size(1, 20),
    upper: size(1, 20),
    proudPart: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 0.25, noNaN: true })),
    spaced,
  })
  .map(({ kind, run, tailBoard, thick, lap, pin, lower, upper, proudPart, spaced: space }) => {
    const depth = kind === 'lapped' ? Math.max(3, thick) : thick;
    const loss = depth / run;
    const { tips, pins, spacing } = space(3 + 2 * loss, pin);
    const pinBoard = kind === 'lapped' ? depth + lap : depth;
    const proud = proudPart * tailBoard;
    const tails = tips.map((width, i) => {
      const from = lower + [...tips.slice(0, i), ...pins.slice(0, i)].reduce((a, b) => a + b, 0);
      const tip: Interval = [from, from + width];
      const base: Interval = [from + loss, from + width - loss];
      return { tip, base };
    });
    const width = (tails.at(-1)?.tip[1] ?? 0) + upper;
    const common = {
      width,
      tailBoard,
      pinBoard,
      slope: { run },
      halfPin: { lower, upper },
      proud,
      spacing,
      ...(pins.length > 0 && spacing.kind !== 'listed' && { pin }),
    };
    const spec: JointSpec = kind === 'lapped' ? { kind, lap, ...common } : { kind, ...common };
    return { spec, known: { kind, width, tailBoard, pinBoard, depth, proud, tails } };
  })
  // The narrowest boards that are allowed at all.
  .filter(({ known }) => known.width >= 5)
  .map(({ spec, known }) => {
    const laid = value(layOut(spec));
    return { ...known, joint: laid };
  });

/** Names that people give, short and long, in many scripts. */
export const anyName: fc.Arbitrary<string> = fc.oneof(
  fc.constantFrom(
    'A',
    'Buttons',
    'Haberdashery chest, upper left, ribbons and thread',
    'W'.repeat(80),
    'Écharpes, Žluťoučký kůň, Ệ Ǻ Ç ģ',
    'Кружева и ленты',
    'Κουμπιά',
    '漢字'.repeat(20),
    '﷽ ꙳ 🧵🪡',
    'line\nend',
  ),
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 80 }),
);
