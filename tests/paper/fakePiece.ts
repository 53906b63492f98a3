import type { Mark, Path, TextMark } from '../../src/drawing/drawing.ts';
import type { Piece, Splits } from '../../src/paper/piece.ts';

export interface FakeSizes {
  readonly name?: string;
  readonly width: number;
  readonly height: number;
  /** Tail and pin together. */
  readonly pitch?: number;
  readonly overhang?: number;
  /** Where upright splits may run. */
  readonly folds?: readonly number[];
  /** How many are made; one unless given. */
  readonly count?: number;
}

const line = (x0: number, y0: number, x1: number, y1: number): Path => ({
  points: [
    [x0, y0],
    [x1, y1],
  ],
});

/** The band beside the outline that holds the words. */
const GRIP = 12;

/**
 * Something like a template: an outline, two upright lines, and sloped lines at every pitch between which it may be
 * split; hatched in every second gap; its title in the grip band of every part.
 */
export const fakePiece = ({
  name = 'piece',
  width,
  height,
  pitch = 30,
  overhang = 3.2,
  folds = [],
  count = 1,
}: FakeSizes): Piece => {
  const tails = Math.floor(height / pitch);
  const starts = Array.from({ length: tails }, (_, i) => i * pitch);
  const [x0, x1] = [GRIP, Math.max(GRIP, width - GRIP)];
  const draw = (splits: Splits) => {
    const title = (y: number): TextMark => ({
      kind: 'text',
      role: 'label',
      text: name,
      at: [GRIP - 3, y],
      size: 3.3,
      turn: 90,
      anchor: 'start',
      weight: 'bold',
    });
    const marks: Mark[] = [
      {
        kind: 'stroke',
        role: 'outline',
        pen: 'cut',
        paths: [
          {
            closed: true,
            points: [
              [0, 0],
              [width, 0],
              [width, height],
              [0, height],
            ],
          },
        ],
      },
      {
        kind: 'stroke',
        role: 'baseline',
        pen: 'baseline',
        paths: [line(x0, 0, x0, height), line(x1, 0, x1, height)],
      },
      {
        kind: 'stroke',
        role: 'fold',
        pen: 'fold',
        paths: folds.map((x) => line(x, 0.1 - overhang, x, height + overhang - 0.1)),
      },
      {
        kind: 'stroke',
        role: 'slope',
        pen: 'saw',
        paths: starts.flatMap((y) => [line(x0, y + 2, x1, y + 4), line(x0, y + 10, x1, y + 8)]),
      },
      {
        kind: 'stroke',
        role: 'waste',
        pen: 'hatch',
        paths: starts.flatMap((y) => [3, 5, 7].map((off) => line(x0, y + off, x0 + 2, y + off + 2))),
      },
      ...[0, ...splits.y].map((y) => title(y + 7)),
    ];
    return { box: { x0: -overhang, y0: -overhang, x1: width + overhang, y1: height + overhang }, marks };
  };
  return {
    name,
    title: `Fake ${name}`,
    count,
    width,
    height,
    overhang,
    splittable: { x: folds, y: starts.map((y): readonly [number, number] => [y + 10, y + pitch + 2]) },
    taped: {
      x: { length: width, between: ['side to side'] },
      y: { length: height, between: ['reference edge to upper edge', 'edge to edge'] },
    },
    draw,
  };
};
