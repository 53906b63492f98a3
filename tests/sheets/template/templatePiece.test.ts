import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point, Role } from '../../../src/drawing/drawing.ts';
import { textBox } from '../../../src/drawing/textBox.ts';
import type { JointBoard } from '../../../src/joint/joint.ts';
import { NO_SPLITS, type Piece } from '../../../src/paper/piece.ts';
import { cornerPieces } from '../../../src/sheets/template/cornerPieces.ts';
import { jointOf } from '../../joint/told.ts';
import { type KnownJoint, knownJoint } from '../anyCorner.ts';
import { type ExpectedBand, expectedBands } from '../expectedLines.ts';
import { cornerOf, everyPiece, grooved, pieceOf, textsOf, wordsOf } from '../pieces.ts';
import { differences, type Segment, segmentsOf } from '../segments.ts';

const anyHand = fc.constantFrom('left' as const, 'right' as const);
const anyBoard = fc.constantFrom<JointBoard>('tail', 'pin');

interface PlacedBand extends ExpectedBand {
  readonly name: 'inside' | 'end' | 'outside';
  readonly x0: number;
  readonly x1: number;
}

/** The bands that a piece should have, in their places on it: a tag moves them to the right, but where an end is leftmost. */
const bandsOn = (
  piece: Piece,
  known: KnownJoint,
  board: JointBoard,
  hand: 'left' | 'right',
  only?: string,
): PlacedBand[] => {
  const chosen = expectedBands(known, board, hand).filter(({ name }) => only === undefined || name === only);
  // A flap of 12 mm, without a mark, holds the end grain's flat template to the inside face.
  const flap = { name: 'inside' as const, width: 12, lines: [], waste: [] };
  const insideLeft = (hand === 'left') === (board === 'pin');
  const bands = only !== 'end' ? chosen : insideLeft ? [flap, ...chosen] : [...chosen, flap];
  const board0 = bands.reduce((sum, { width }) => sum + width, 0);
  let x = bands[0]?.name === 'end' ? 0 : piece.width - board0;
  return bands.map((band) => {
    const [x0, x1] = [x, x + band.width];
    x = x1;
    return { ...band, x0, x1 };
  });
};

const moved = (by: number, [[ax, ay], [bx, by0]]: Segment): Segment => [
  [ax + by, ay],
  [bx + by, by0],
];

const linesOf = (bands: readonly PlacedBand[], role: Role): Segment[] =>
  bands.flatMap(({ x0, lines }) =>
    lines.filter(([kind]) => kind === role).map(([, segment]) => moved(x0, segment)),
  );

const wasteOf = (bands: readonly PlacedBand[]): Point[][] =>
  bands.flatMap(({ x0, waste }) => waste.map((area) => area.map(([x, y]): Point => [x + x0, y])));

const LINES = ['slope', 'square', 'baseline', 'lap'] as const;

const expectLines = (piece: Piece, bands: readonly PlacedBand[], height: number): void => {
  const drawing = piece.draw(NO_SPLITS);
  for (const role of LINES) expect(differences(segmentsOf(drawing, role), linesOf(bands, role))).toEqual([]);
  // Folds at the arrises, 3 mm beyond the board at both of its edges.
  const folds = bands.slice(1).map(
    ({ x0 }): Segment => [
      [x0, -3],
      [x0, height + 3],
    ],
  );
  expect(differences(segmentsOf(drawing, 'fold'), folds)).toEqual([]);
  const [left, right] = [bands[0]?.x0 ?? 0, bands.at(-1)?.x1 ?? 0];
  const edge: Segment = [
    [left, 0],
    [right, 0],
  ];
  expect(differences(segmentsOf(drawing, 'outline', 'edge'), [edge])).toEqual([]);
};

/** Which side of a line a point lies on, in mm off it: positive to the left. */
const off = ([ax, ay]: Point, [bx, by]: Point, [x, y]: Point): number =>
  ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / Math.hypot(bx - ax, by - ay);

/** Whether a point lies in a convex area or on its border, to a millionth. */
const holds = (area: readonly Point[], point: Point): boolean => {
  const offs = area.map((a, i) => off(a, area[(i + 1) % area.length] ?? a, point));
  return offs.every((d) => d > -1e-6) || offs.every((d) => d < 1e-6);
};

const areaOf = (area: readonly Point[]): number =>
  Math.abs(
    area.reduce((sum, [ax, ay], i) => {
      const [bx, by] = area[(i + 1) % area.length] ?? [ax, ay];
      return sum + (ax * by - bx * ay) / 2;
    }, 0),
  );

const girth = (area: readonly Point[]): number =>
  area.reduce((sum, [ax, ay], i) => {
    const [bx, by] = area[(i + 1) % area.length] ?? [ax, ay];
    return sum + Math.hypot(bx - ax, by - ay);
  }, 0);

describe('a folded template', () => {
  it('has every line where the formulas place it, left and right mirrored', () => {
    fc.assert(
      fc.property(knownJoint, anyBoard, anyHand, (known, board, hand) => {
        const piece = pieceOf(cornerOf(known, { hand }), board);
        expectLines(piece, bandsOn(piece, known, board, hand), known.width);
      }),
    );
  });

  it('has the same lines on every flat template', () => {
    fc.assert(
      fc.property(knownJoint, anyBoard, anyHand, (known, board, hand) => {
        const strips = cornerPieces(cornerOf(known, { hand }), { boards: [board], flat: true, rods: false });
        const names = expectedBands(known, board, hand).map(({ name }) => name);
        expect(strips.map(({ name }) => name.split('-').at(-1)).sort()).toEqual([...names].sort());
        for (const strip of strips)
          expectLines(strip, bandsOn(strip, known, board, hand, strip.name.split('-').at(-1)), known.width);
      }),
    );
  });

  it('says on the end grain’s flat template which face is outside, and ends where the board ends', () => {
    fc.assert(
      fc.property(knownJoint, anyBoard, anyHand, (known, board, hand) => {
        const strips = cornerPieces(cornerOf(known, { hand }), { boards: [board], flat: true, rods: false });
        const end = strips.find(({ name }) => name.endsWith('-end'));
        if (end === undefined) throw new Error('no end');
        expect(end.height).toBeCloseTo(Math.max(known.width, 12), 9);
        const texts = textsOf(end.draw(NO_SPLITS));
        expect(texts.some(({ text }) => /^flap: INSIDE( FACE)?$/.test(text))).toBe(true);
        const [outside, ...more] = texts.filter(({ text }) => /OUTSIDE/.test(text));
        expect(more).toEqual([]);
        // The way from the flap over the end, seen from the text: upright text has its top on the left.
        const toRight = (hand === 'left') === (board === 'pin');
        const arrow = outside?.turn === 90 ? (toRight ? '↓' : '↑') : toRight ? '→' : '←';
        expect(outside?.text).toMatch(new RegExp(`^${arrow} OUTSIDE( FACE)?$`));
      }),
    );
  });

  it('is as wide as its bands: grips of 12 mm, a joint on each face, and the board', () => {
    const through = jointOf({
      kind: 'through',
      width: 200,
      tailBoard: 18,
      pinBoard: 20,
      spacing: { kind: 'even' },
    });
    const lapped = jointOf({
      kind: 'lapped',
      width: 200,
      tailBoard: 11,
      pinBoard: 20,
      lap: 5,
      spacing: { kind: 'even' },
    });
    const sizes = (joint: typeof through) =>
      (['tail', 'pin'] as const).map((board) => {
        const { width, height, overhang } = pieceOf(cornerOf({ joint }), board);
        return [width, height, overhang];
      });
    expect(sizes(through)).toEqual([
      [12 + 20 + 18 + 20 + 12, 200, 3],
      [12 + 18 + 20 + 18 + 12, 200, 3],
    ]);
    expect(sizes(lapped)).toEqual([
      [12 + 15 + 11 + 15 + 12, 200, 3],
      [12 + 11 + 20, 200, 3],
    ]);
  });

  it('hatches the waste at 45 degrees, 2.2 mm apart, and nothing else', () => {
    fc.assert(
      fc.property(knownJoint, anyBoard, anyHand, (known, board, hand) => {
        const piece = pieceOf(cornerOf(known, { hand }), board);
        const areas = wasteOf(bandsOn(piece, known, board, hand));
        const lines = segmentsOf(piece.draw(NO_SPLITS), 'waste');
        const lengths = areas.map(() => 0);
        for (const [a, b] of lines) {
          expect(b[1] - a[1]).toBeCloseTo(b[0] - a[0], 9);
          // Neighbouring lines differ in x - y by 2.2 √2.
          const step = (a[0] - a[1]) / (2.2 * Math.SQRT2);
          expect(step).toBeCloseTo(Math.round(step), 6);
          const i = areas.findIndex((area) => holds(area, a) && holds(area, b));
          expect(i).toBeGreaterThanOrEqual(0);
          lengths[i] = (lengths[i] ?? 0) + Math.hypot(b[0] - a[0], b[1] - a[1]);
        }
        // Every area is filled, but for its rim and a word.
        const word = 16 * 5;
        areas.forEach((area, i) => {
          const filled = (lengths[i] ?? 0) * 2.2;
          expect(filled).toBeLessThan(areaOf(area) + 1.1 * girth(area));
          expect(filled).toBeGreaterThan(areaOf(area) - 1.1 * girth(area) - word);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('shows the groove on the inside face only, across band and grip', () => {
    const joint = jointOf({
      kind: 'lapped',
      width: 96,
      tailBoard: 11,
      pinBoard: 20,
      lap: 5,
      spacing: { kind: 'even', tails: 3 },
    });
    const whole = grooved(cornerOf({ joint }), { offset: 11, width: 5 });
    const levels = (x0: number, x1: number): Segment[] =>
      [11, 16].map((y) => [
        [x0, y],
        [x1, y],
      ]);
    // Outside face 27 mm, end 11, inside face 27; and inside face 23 mm, end 20.
    expect(differences(segmentsOf(pieceOf(whole, 'tail').draw(NO_SPLITS), 'groove'), levels(38, 65))).toEqual(
      [],
    );
    expect(differences(segmentsOf(pieceOf(whole, 'pin').draw(NO_SPLITS), 'groove'), levels(0, 23))).toEqual(
      [],
    );
    const right = { ...whole, hand: 'right' as const };
    expect(differences(segmentsOf(pieceOf(right, 'tail').draw(NO_SPLITS), 'groove'), levels(0, 27))).toEqual(
      [],
    );
    expect(differences(segmentsOf(pieceOf(right, 'pin').draw(NO_SPLITS), 'groove'), levels(20, 43))).toEqual(
      [],
    );
  });

  it('begins the groove where it stops, says how far from the end, and closes it there', () => {
    const joint = jointOf({
      kind: 'through',
      width: 96,
      tailBoard: 11,
      pinBoard: 20,
      spacing: { kind: 'even', tails: 3 },
    });
    const corner = grooved(cornerOf({ joint }), { offset: 11, width: 5, stopped: 6 });
    const drawing = pieceOf(corner, 'tail').draw(NO_SPLITS);
    // Outside face 32 mm, end 11; the inside face 32, its groove from 6 mm beyond the arris.
    const from = 32 + 11 + 6;
    const wanted: Segment[] = [
      [
        [from, 11],
        [75, 11],
      ],
      [
        [from, 16],
        [75, 16],
      ],
      [
        [from, 11],
        [from, 16],
      ],
    ];
    expect(differences(segmentsOf(drawing, 'groove'), wanted)).toEqual([]);
    expect(wordsOf(drawing)).toContain('groove stops 6 mm from the end');
    const [inside, end, outside] = cornerPieces(corner, { boards: ['tail'], flat: true, rods: false }).map(
      (piece) => piece.draw(NO_SPLITS),
    );
    expect(wordsOf(inside ?? drawing).join()).toMatch(/groove stops 6 mm from/);
    for (const other of [end, outside])
      expect(other === undefined || wordsOf(other).join()).not.toMatch(/groove/);
  });

  it("reaches down to the side's own reference edge where its joint starts above it, and is whole below", () => {
    const from = fc.double({ min: 2, max: 40, noNaN: true });
    fc.assert(
      fc.property(knownJoint, anyHand, from, (known, hand, jointFrom) => {
        const plain = cornerOf(known, { hand });
        const piece = pieceOf({ ...plain, tailBoard: { ...plain.tailBoard, jointFrom } }, 'tail');
        const drawing = piece.draw(NO_SPLITS);
        const bands = bandsOn(piece, known, 'tail', hand);
        const raised = (lines: readonly Segment[]) =>
          lines.map(
            ([[ax, ay], [bx, by]]): Segment => [
              [ax, ay + jointFrom],
              [bx, by + jointFrom],
            ],
          );
        for (const role of ['slope', 'baseline', 'lap'] as const)
          expect(differences(segmentsOf(drawing, role), raised(linesOf(bands, role)))).toEqual([]);
        // A square line ends the lower half space: from baseline to baseline, in one piece on each surface.
        const [left = { x0: 0 }, end = { x0: 0, x1: 0 }, right = { x1: 0 }] = bands;
        const stops = [left.x0 + 12, end.x0, end.x1, right.x1 - 12];
        const lowest = stops.slice(1).map(
          (x1, i): Segment => [
            [stops[i] ?? 0, jointFrom],
            [x1, jointFrom],
          ],
        );
        expect(
          differences(segmentsOf(drawing, 'square'), [...raised(linesOf(bands, 'square')), ...lowest]),
        ).toEqual([]);
        const edge: Segment = [
          [left.x0, 0],
          [right.x1, 0],
        ];
        expect(differences(segmentsOf(drawing, 'outline', 'edge'), [edge])).toEqual([]);
        for (const line of segmentsOf(drawing, 'waste'))
          for (const [, y] of line) expect(y).toBeGreaterThan(jointFrom - 1e-9);
        // A tag is 12 mm high at least.
        expect([known.width + jointFrom, 12].some((height) => Math.abs(piece.height - height) < 1e-9)).toBe(
          true,
        );
        expect(
          textsOf(drawing).filter(({ text, at: [, y] }) => /^(END|WASTE)$/.test(text) && y < jointFrom),
        ).toEqual([]);
      }),
    );
  });

  it('says that there is no tail below a joint that starts above the reference edge, and where it starts', () => {
    const joint = jointOf({
      kind: 'through',
      width: 55,
      tailBoard: 11,
      pinBoard: 11,
      spacing: { kind: 'even' },
    });
    const plain = cornerOf({ joint });
    const groove = { offset: 11, width: 5 };
    const side = { ...plain.tailBoard, jointFrom: 16, groove };
    const piece = pieceOf({ ...plain, tailBoard: side }, 'tail');
    const texts = textsOf(piece.draw(NO_SPLITS));
    expect(piece.height).toBe(71);
    // On the outside face and on the end grain; the inside face has the groove there.
    const none = texts.filter(({ text }) => text === 'NO TAIL');
    expect(none).toHaveLength(2);
    for (const word of none) expect(textBox(word).y1).toBeLessThan(16);
    expect(texts.map(({ text }) => text)).toContain('joint starts 16 mm above');
    expect(texts.map(({ text }) => text)).toContain('groove');
    for (const words of [texts, textsOf(pieceOf(plain, 'tail').draw(NO_SPLITS))])
      expect(words.some(({ text }) => /^← reference( edge)?$/.test(text))).toBe(true);
    expect(wordsOf(pieceOf(plain, 'tail').draw(NO_SPLITS)).join()).not.toMatch(/NO TAIL|joint/);
  });

  it('may be split at its folds, and between the slopes of any tail', () => {
    fc.assert(
      fc.property(knownJoint, anyBoard, anyHand, (known, board, hand) => {
        const piece = pieceOf(cornerOf(known, { hand }), board);
        const folds = bandsOn(piece, known, board, hand)
          .slice(1)
          .map(({ x0 }) => x0);
        expect(piece.splittable.x).toHaveLength(folds.length);
        piece.splittable.x.forEach((x, i) => {
          expect(x).toBeCloseTo(folds[i] ?? Number.NaN, 6);
        });
        expect(piece.splittable.y).toHaveLength(known.tails.length);
        piece.splittable.y.forEach(([from, to], i) => {
          expect(from).toBeCloseTo(known.tails[i]?.base[0] ?? Number.NaN, 6);
          expect(to).toBeCloseTo(known.tails[i]?.base[1] ?? Number.NaN, 6);
        });
      }),
    );
  });

  it('is checked when taped between the edges of the joint and between its baselines, without any tag', () => {
    fc.assert(
      fc.property(knownJoint, fc.boolean(), (known, flat) => {
        for (const piece of everyPiece(cornerOf(known, { item: 'W'.repeat(80) }), flat)) {
          const { x, y } = piece.taped;
          expect(y).toEqual({
            length: known.width,
            between: ['reference edge to upper edge', 'edge to edge'],
          });
          const lines = piece
            .draw(NO_SPLITS)
            .marks.flatMap((mark) =>
              mark.kind === 'stroke' && mark.role === 'baseline'
                ? mark.paths.flatMap(({ points }) => points)
                : [],
            );
          const across = lines.map((point) => point[0]);
          if (x?.between[0] === 'baseline to baseline')
            expect(x.length).toBeCloseTo(Math.max(...across) - Math.min(...across), 9);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('draws the same lines however it is split', () => {
    fc.assert(
      fc.property(knownJoint, anyBoard, fc.nat(), (known, board, at) => {
        const piece = pieceOf(cornerOf(known), board);
        const [from, to] = piece.splittable.y[at % known.tails.length] ?? [0, 0];
        const split = piece.draw({ x: piece.splittable.x, y: [(from + to) / 2] });
        const whole = piece.draw(NO_SPLITS);
        for (const role of [...LINES, 'fold', 'outline'] as const)
          expect(segmentsOf(split, role)).toEqual(segmentsOf(whole, role));
      }),
      { numRuns: 30 },
    );
  });
});
