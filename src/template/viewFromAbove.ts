import type { Drawer } from '../drawer/drawer.ts';
import { boxOfMarks } from '../drawing/boxOfMarks.ts';
import type { Drawing, Mark, Path, Point, StrokeMark } from '../drawing/drawing.ts';
import { CAP_HEIGHT, textWidth } from '../drawing/textWidth.ts';
import { words } from '../drawing/words.ts';
import { formatNumber, type Unit } from '../units/length.ts';
import { dimension, roomFor } from './dimension.ts';
import { figure } from './figure.ts';
import { insideDiagonal } from './insideDiagonal.ts';
import type { SketchAxes } from './sketchAxes.ts';
import type { TypeSizes } from './typeSizes.ts';

/** Between a board and a corner's letter. */
const PAD = 2;

/** A drawer from above, its front at the bottom, the corners lettered; the outer corner of its front's left end is the origin. */
export const viewFromAbove = (
  drawer: Drawer,
  { across, back }: SketchAxes,
  unit: Unit,
  type: TypeSizes,
): Drawing => {
  const { sizes, boards, spec } = drawer;
  const { width, depth, wall, lap, rebate } = sizes;
  const front = spec.stock.front.thickness;
  const rear = depth - spec.stock.back.thickness;
  const rectangle = (x0: number, y0: number, x1: number, y1: number): Path => ({
    points: [
      [across(x0), back(y0)],
      [across(x1), back(y0)],
      [across(x1), back(y1)],
      [across(x0), back(y1)],
    ],
    closed: true,
  });
  const slip = boards.slip?.thickness ?? 0;
  const ends = [-rebate.sides, width + rebate.sides] as const;
  const left = across(ends[0]);
  const number = (value: number) => figure(formatNumber(value, unit), type);
  const lip = spec.lip !== undefined;
  const below = roomFor('level', type.figure);
  const marks: Mark[] = [
    {
      kind: 'stroke',
      role: 'outline',
      pen: 'medium',
      paths: [
        // At the upper edge a half pin covers the corner, so the front is seen whole.
        rectangle(ends[0], 0, ends[1], lip ? lap : front),
        ...(lip ? [rectangle(0, lap, width, front)] : []),
        rectangle(0, front, wall, depth),
        rectangle(width - wall, front, width, depth),
        rectangle(wall, rear, width - wall, depth),
        ...(boards.slip?.boxes.map(({ from, to }) => rectangle(from[0], from[1], to[0], to[1])) ?? []),
      ],
    },
    grooveMark(drawer, across, back),
    ...inner(
      [across(wall + slip), back(front)],
      [across(width - wall - slip), back(rear)],
      formatNumber(insideDiagonal(drawer), unit),
      type,
    ),
    ...dimension({
      way: 'level',
      from: 0,
      to: across(width),
      edge: 0,
      line: -below,
      text: number(width),
    }),
    ...(rebate.sides > 0
      ? dimension({
          way: 'level',
          from: left,
          to: across(ends[1]),
          edge: 0,
          line: -2 * below,
          text: number(ends[1] - ends[0]),
        })
      : []),
    ...dimension({
      way: 'upright',
      from: 0,
      to: back(depth),
      edge: left,
      line: left - roomFor('upright', type.figure),
      text: number(depth),
    }),
    words('from above', [across(width / 2), back(depth) + PAD], type.text, { anchor: 'middle' }),
  ];
  return { box: boxOfMarks(marks), marks };
};

/** The bottom's groove in the sides, or in the slips, and in the front. */
const grooveMark = (
  { sizes: { width, depth, wall }, spec }: Drawer,
  across: (x: number) => number,
  back: (y: number) => number,
): StrokeMark => {
  const { bottom, groove, stock } = spec;
  const x = wall + (bottom.hold.kind === 'slips' ? bottom.hold.width : 0) - groove.depth;
  const y = stock.front.thickness - groove.depth;
  return {
    kind: 'stroke',
    role: 'groove',
    pen: 'groove',
    paths: [
      {
        points: [
          [across(x), back(depth)],
          [across(x), back(y)],
          [across(width - x), back(y)],
          [across(width - x), back(depth)],
        ],
      },
    ],
  };
};

/** What stands between the boards: the corners' letters, the diagonals and their length, which board is the front. */
const inner = ([x0, y0]: Point, [x1, y1]: Point, diagonal: string, type: TypeSizes): Mark[] => {
  const [dx, dy] = [x1 - x0, y1 - y0];
  const middle = (x0 + x1) / 2;
  const cap = type.title * CAP_HEIGHT;
  const upper = y1 - PAD - cap;
  const letter = Math.max(...[...'ABCD'].map((each) => textWidth(each, type.title, 'bold')));
  const low = y0 + PAD;
  const letters = (
    [
      ['A', x0 + PAD, low, 'start'],
      ['B', x1 - PAD, low, 'end'],
      ['C', x1 - PAD, upper, 'end'],
      ['D', x0 + PAD, upper, 'start'],
    ] as const
  ).map(([text, x, y, anchor]) => words(text, [x, y], type.title, { weight: 'bold', anchor }));
  const taken = { x: PAD + letter + 1, y: PAD + cap + 1 };
  const names = (
    [
      ['front', low],
      ['back', upper],
    ] as const
  ).flatMap(([text, y]) =>
    textWidth(text, type.text, 'regular') + 2 * taken.x <= dx
      ? [words(text, [middle, y], type.text, { anchor: 'middle' })]
      : [],
  );
  const equal = 'A–C = B–D';
  const half = {
    x: Math.max(textWidth(equal, type.note, 'regular'), textWidth(diagonal, type.figure, 'bold')) / 2 + 1,
    y: (1.25 * (type.note + type.figure)) / 2,
  };
  const fits = 2 * half.x <= dx && 2 * (half.y + taken.y) <= dy;
  const centre = (y0 + y1) / 2;
  const from = Math.min(taken.x / dx, taken.y / dy);
  const to = fits ? 0.5 - Math.min(half.x / dx, half.y / dy) : 0.5;
  const stretch = (start: Point, end: Point): Path[] =>
    [
      [from, to],
      [1 - to, 1 - from],
    ].map((shares) => ({
      points: shares.map(
        (share): Point => [start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1])],
      ),
    }));
  return [
    ...letters,
    ...names,
    ...(from < to
      ? [
          {
            kind: 'stroke',
            role: 'label',
            pen: 'fold',
            paths: [...stretch([x0, y0], [x1, y1]), ...stretch([x1, y0], [x0, y1])],
          } as const,
        ]
      : []),
    ...(fits
      ? [
          words(equal, [middle, centre + 0.25 * type.note], type.note, { anchor: 'middle' }),
          words(diagonal, [middle, centre - type.figure], type.figure, { anchor: 'middle', weight: 'bold' }),
        ]
      : []),
  ];
};
