import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { JointSpec } from '../../../src/joint/jointSpec.ts';
import { layOut } from '../../../src/joint/layOut.ts';
import { NO_SPLITS, type Piece } from '../../../src/paper/piece.ts';
import type { Corner } from '../../../src/sheets/template/cornerPieces.ts';
import { groupedSpec, jointsOf, toothedSpec } from '../../joint/anySpec.ts';
import { jointOf } from '../../joint/told.ts';
import { faults } from '../faults.ts';
import { cornerOf, everyPiece, pieceOf } from '../pieces.ts';
import { type Segment, segmentsOf } from '../segments.ts';

/** 56 = 8 + 40 + 8; a small pin from 26 to 30, from 24 to 32 half way along 20. */
const spec: JointSpec = {
  kind: 'through',
  width: 56,
  tailBoard: 14,
  pinBoard: 20,
  slope: { run: 5 },
  pin: 8,
  spacing: { kind: 'even', tails: 1 },
  houndsTooth: {},
};
const joint = jointOf(spec);

/** Lines of a role that a piece has beside those of the plain corner, each from left to right, sorted. */
const added = (role: 'slope' | 'square', of: (corner: Corner) => Piece, more: Partial<Corner> = {}) => {
  const lines = (spec: JointSpec): string[] =>
    segmentsOf(of(cornerOf({ joint: jointOf(spec) }, more)).draw(NO_SPLITS), role).map((segment) =>
      JSON.stringify(leftFirst(segment)),
    );
  const { houndsTooth: _, ...plain } = spec;
  const before = lines(plain);
  return lines(spec)
    .filter((each) => !before.includes(each))
    .map((each): unknown => JSON.parse(each))
    .sort();
};

const leftFirst = ([a, b]: Segment): Segment => {
  const [from, to] = a[0] < b[0] || (a[0] === b[0] && a[1] <= b[1]) ? [a, b] : [b, a];
  return [from, to].map((point) => point.map((at) => Math.round(1e6 * at) / 1e6)) as unknown as Segment;
};

describe("the templates of a hound's tooth", () => {
  it('bear the small pin on both faces of the tail board and over its end', () => {
    // A grip of 12 and 20 of face lead to the end, 14 across, and 20 lie beyond it; the floors are 10 from the end.
    const of = (corner: Corner) => pieceOf(corner, 'tail');
    expect(added('slope', of)).toEqual([
      [
        [22, 24],
        [32, 26],
      ],
      [
        [22, 32],
        [32, 30],
      ],
      [
        [46, 26],
        [56, 24],
      ],
      [
        [46, 30],
        [56, 32],
      ],
    ]);
    expect(added('square', of)).toEqual([
      [
        [22, 24],
        [22, 32],
      ],
      [
        [32, 26],
        [46, 26],
      ],
      [
        [32, 30],
        [46, 30],
      ],
      [
        [56, 24],
        [56, 32],
      ],
    ]);
    // Left and right are alike, but for the side of the faces.
    expect(added('slope', of, { hand: 'right' })).toEqual(added('slope', of));
  });

  it.each([
    // From the left: inside face 12 + 14, the end's 20, outside face 14; the end's half next to the outside face bears it.
    ['left', 46, 36, 60],
    ['right', 26, 36, 12],
  ] as const)(
    'bear it at the %s end of the pin board, from the outside arris to half depth',
    (hand, arris, half, far) => {
      const of = (corner: Corner) => pieceOf(corner, 'pin');
      const sides = [
        leftFirst([
          [arris, 26],
          [half, 24],
        ]),
        leftFirst([
          [arris, 30],
          [half, 32],
        ]),
      ];
      expect(added('slope', of, { hand })).toEqual(sides.sort());
      expect(added('square', of, { hand })).toEqual(
        [
          leftFirst([
            [half, 24],
            [half, 32],
          ]),
          leftFirst([
            [arris, 26],
            [far, 26],
          ]),
          leftFirst([
            [arris, 30],
            [far, 30],
          ]),
        ].sort(),
      );
    },
  );

  it('may be divided beside the small pin, not across it', () => {
    for (const piece of everyPiece(cornerOf({ joint }), false))
      expect(piece.splittable.y).toEqual([
        [12, 24],
        [32, 44],
      ]);
  });

  it('may be divided inside the small pin where the tail’s base is no wider than that half way up', () => {
    // 49 = 8 + 33 + 8: 30 long at 1:2.5 a tail loses 12 on either side, and a small pin of 3 grows by 12.
    const steep = jointOf({
      ...spec,
      width: 49,
      pinBoard: 30,
      slope: { run: 2.5 },
      houndsTooth: { smallPin: 3 },
    });
    expect(steep.tails[0]?.base).toEqual([20, 29]);
    for (const piece of everyPiece(cornerOf({ joint: steep }), false))
      expect(piece.splittable.y).toEqual([[23, 26]]);
  });

  it('are divided inside tails alone, and along none of the small pins’ lines', () => {
    fc.assert(
      fc.property(jointsOf(toothedSpec), (made) => {
        const { tails, smallPins = [] } = made;
        const [piece] = everyPiece(cornerOf({ joint: made }), false);
        for (const [from, to] of piece?.splittable.y ?? []) {
          expect(to).toBeGreaterThan(from);
          const i = tails.findIndex(({ base }) => from >= base[0] - 1e-9 && to <= base[1] + 1e-9);
          expect(i).toBeGreaterThanOrEqual(0);
          // A sloped side runs from a narrow line to the wide one beside it.
          const { narrow, wide } = smallPins[i] ?? { narrow: [0, 0], wide: [0, 0] };
          for (const [low, high] of [
            [wide[0], narrow[0]],
            [narrow[1], wide[1]],
          ] as const)
            expect(to <= low + 1e-9 || from >= high - 1e-9).toBe(true);
        }
      }),
    );
  });

  it('have a rod with the small pin’s lines at the tips alone, where the tail board’s waste is hatched', () => {
    const of = (corner: Corner) => everyPiece(corner, false).at(-1) as Piece;
    expect(added('square', of)).toEqual(
      [26, 30].map((u) => [
        [0, u],
        [7, u],
      ]),
    );
    const hatched = segmentsOf(of(cornerOf({ joint })).draw(NO_SPLITS), 'waste').filter(
      ([[ax, ay], [, by]]) => ax < 8 && Math.min(ay, by) > 25 && Math.max(ay, by) < 31,
    );
    expect(hatched.length).toBeGreaterThan(0);
  });

  it('are as high above the reference edge as their joint begins', () => {
    const of = (corner: Corner) => pieceOf(corner, 'tail');
    const back = { tailBoard: { part: 'left side', end: 'back end', jointFrom: 16 } };
    expect(added('slope', of, back)[0]).toEqual([
      [22, 24 + 16],
      [32, 26 + 16],
    ]);
  });
});

describe.each([
  ["a hound's tooth", toothedSpec],
  ['grouped tails', groupedSpec],
])('the labels on templates and rods of %s', (_, specs) => {
  it('are inside the outline, off every line and off each other', () => {
    fc.assert(
      fc.property(
        specs,
        fc.boolean(),
        fc.constantFrom('left' as const, 'right' as const),
        fc.constantFrom('mm' as const, 'in' as const),
        (wish, flat, hand, units) => {
          const laid = layOut(wish);
          fc.pre(laid.ok);
          for (const piece of everyPiece(cornerOf({ joint: laid.value }, { hand, units }), flat))
            expect([piece.name, ...faults(piece)]).toEqual([piece.name]);
        },
      ),
      { numRuns: 40 },
    );
  });
});
