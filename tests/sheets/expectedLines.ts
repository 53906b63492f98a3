import type { Point, Role } from '../../src/drawing/drawing.ts';
import type { KnownJoint as Laid } from './anyCorner.ts';
import type { Segment } from './segments.ts';

/** What is known of a joint's sizes. */
export type KnownJoint = Omit<Laid, 'joint'>;

/** The formulas of the templates, worked out again from what the sheets promise: a face's grip is 12 mm. */
const GRIP = 12;

export interface ExpectedBand {
  readonly width: number;
  readonly lines: readonly (readonly [Role, Segment])[];
  /** Corners of what is cut away. */
  readonly waste: readonly (readonly Point[])[];
}

type At = (fromArris: number) => number;

const line = (x0: number, y0: number, x1: number, y1: number): Segment => [
  [x0, y0],
  [x1, y1],
];

/** Both ways that a band can lie: its arris at the left, or at the right. */
const arrisLeft: At = (d) => d;
const arrisRight =
  (width: number): At =>
  (d) =>
    width - d;

const gapsOf = (
  edges: readonly (readonly [number, number])[],
  width: number,
): (readonly [number, number])[] => {
  const all = [0, ...edges.flat(), width];
  return edges.concat([[0, 0]]).map((_, i) => [all[2 * i] ?? 0, all[2 * i + 1] ?? 0]);
};

const tailFace = ({ depth, tails, width }: KnownJoint, at: At): Omit<ExpectedBand, 'width'> => {
  const tips = gapsOf(
    tails.map(({ tip }) => tip),
    width,
  );
  const bases = gapsOf(
    tails.map(({ base }) => base),
    width,
  );
  return {
    lines: [
      ['baseline', line(at(depth), 0, at(depth), width)],
      ...tails.flatMap(({ tip, base }): [Role, Segment][] => [
        ['slope', line(at(0), tip[0], at(depth), base[0])],
        ['slope', line(at(0), tip[1], at(depth), base[1])],
      ]),
    ],
    waste: tips.map(([a, b], i): Point[] => {
      const [c, d] = bases[i] ?? [0, 0];
      return [
        [at(0), a],
        [at(0), b],
        [at(depth), d],
        [at(depth), c],
      ];
    }),
  };
};

const tailEnd = ({ tailBoard, tails, width }: KnownJoint): ExpectedBand => ({
  width: tailBoard,
  lines: tails.flatMap(({ tip }) => tip.map((u): [Role, Segment] => ['square', line(0, u, tailBoard, u)])),
  waste: gapsOf(
    tails.map(({ tip }) => tip),
    width,
  ).map(([a, b]): Point[] => [
    [0, a],
    [tailBoard, a],
    [tailBoard, b],
    [0, b],
  ]),
});

const pinFace = (
  { tailBoard, proud, tails, width }: KnownJoint,
  level: 'tip' | 'base',
  at: At,
): Omit<ExpectedBand, 'width'> => {
  const down = tailBoard - proud;
  return {
    lines: [
      ['baseline', line(at(down), 0, at(down), width)],
      ...tails.flatMap((tail) =>
        tail[level].map((u): [Role, Segment] => ['square', line(at(0), u, at(down), u)]),
      ),
    ],
    waste: tails.map((tail): Point[] => {
      const [a, b] = tail[level];
      return [
        [at(0), a],
        [at(0), b],
        [at(down), b],
        [at(down), a],
      ];
    }),
  };
};

const pinEnd = ({ kind, pinBoard, depth, tails, width }: KnownJoint, at: At): ExpectedBand => ({
  width: pinBoard,
  lines: [
    ...(kind === 'lapped' ? ([['lap', line(at(depth), 0, at(depth), width)]] as const) : []),
    ...tails.flatMap(({ tip, base }): [Role, Segment][] => [
      ['slope', line(at(0), base[0], at(depth), tip[0])],
      ['slope', line(at(0), base[1], at(depth), tip[1])],
    ]),
  ],
  waste: tails.map(({ tip, base }): Point[] => [
    [at(0), base[0]],
    [at(0), base[1]],
    [at(depth), tip[1]],
    [at(depth), tip[0]],
  ]),
});

export type FaceName = 'inside' | 'end' | 'outside';

/**
 * The bands of a board's template from left to right, each in its own coordinates from its lower left corner.
 * Before a left side's front end its outside lies to the left; before a front's left end its inside does.
 */
export const expectedBands = (
  known: KnownJoint,
  board: 'tail' | 'pin',
  hand: 'left' | 'right',
): (ExpectedBand & { readonly name: FaceName })[] => {
  const { tailBoard, depth, pinBoard, kind } = known;
  if (board === 'tail') {
    const width = depth + GRIP;
    const names = hand === 'left' ? (['outside', 'inside'] as const) : (['inside', 'outside'] as const);
    return [
      { name: names[0], width, ...tailFace(known, arrisRight(width)) },
      { name: 'end', ...tailEnd(known) },
      { name: names[1], width, ...tailFace(known, arrisLeft) },
    ];
  }
  const width = tailBoard + GRIP;
  const left = hand === 'left';
  const [before, after] = [arrisRight(width), arrisLeft];
  const inside = { name: 'inside' as const, width, ...pinFace(known, 'base', left ? before : after) };
  const end = { name: 'end' as const, ...pinEnd(known, left ? arrisLeft : arrisRight(pinBoard)) };
  const outside = { name: 'outside' as const, width, ...pinFace(known, 'tip', left ? after : before) };
  const all = kind === 'lapped' ? [inside, end] : [inside, end, outside];
  return left ? all : all.reverse();
};
