import type { Drawer } from '../../drawer/drawer.ts';
import { turned } from '../../drawer/drawerSizes.ts';
import { boxOfMarks } from '../../drawing/boxOfMarks.ts';
import type { Drawing, Mark, Path, Point, StrokeMark } from '../../drawing/drawing.ts';
import * as shapes from '../../drawing/shapes.ts';
import { stroke, textMark } from '../../drawing/shapes.ts';
import { formatNumber } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import type { TypeSizes } from '../typeset/typeSizes.ts';
import { figure } from '../typeset/typeSizes.ts';
import { dimension, OVERSHOOT, roomFor } from './dimension.ts';
import { insideDiagonal, insideMarks } from './insideMarks.ts';
import { type SketchAxes, viewName } from './sketchAxes.ts';

/** A drawer from above, its front at the bottom, the corners lettered; the outer corner of its front's left end is the origin. */
export const viewFromAbove = (drawer: Drawer, axes: SketchAxes, unit: Notation, type: TypeSizes): Drawing => {
  const { across, back } = axes;
  const { sizes, boards, spec } = drawer;
  const { width, depth, wall, rebate } = sizes;
  const front = spec.stock.front.thickness;
  const rear = depth - spec.stock.back.thickness;
  const sidesTo = spec.box === undefined ? depth : rear;
  const rectangle = (x0: number, y0: number, x1: number, y1: number): Path =>
    shapes.rectangle(across(x0), back(y0), across(x1), back(y1));
  const slip = boards.slip?.thickness ?? 0;
  const ends = [-rebate.sides, width + rebate.sides] as const;
  const left = across(ends[0]);
  const number = (value: number) => figure(formatNumber(value, unit), type);
  const inside = insideMarks(
    {
      x0: across(wall.left + slip),
      y0: back(front),
      x1: across(width - wall.right - slip),
      y1: back(rear),
    },
    formatNumber(insideDiagonal(drawer), unit),
    type,
  );
  const below = roomFor('level', type.figure);
  const marks: Mark[] = [
    stroke('outline', 'medium', [
      ...frontPaths(drawer, axes),
      ...(drawer.front.shoulder.upper === 0
        ? [rectangle(0, front, wall.left, sidesTo), rectangle(width - wall.right, front, width, sidesTo)]
        : mitredSides(drawer, axes)),
      ...(spec.box === undefined
        ? [rectangle(wall.left, rear, width - wall.right, depth)]
        : backPaths(drawer, axes)),
      ...(boards.slip?.boxes.map(({ from, to }) => rectangle(from[0], from[1], to[0], to[1])) ?? []),
    ]),
    grooveMark(drawer, across, back),
    ...inside.marks,
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
          // Each dimension's text may be longer than the dimension: clear of the text and the extension lines above.
          edge: -below,
          line: -2 * below - OVERSHOOT,
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
    ...[...inside.without, viewName('from above', axes)].map((text, i) =>
      textMark(text, [across(width / 2), back(depth) + 2 + 1.25 * i * type.text], type.text, {
        anchor: 'middle',
      }),
    ),
  ];
  return { box: boxOfMarks(marks), marks };
};

/** Both sides from above where they are mitred, so that they reach the outside corners of the front, and of a box's back. */
const mitredSides = ({ spec, sizes: { width, wall, depth } }: Drawer, { across, back }: SketchAxes): Path[] =>
  (
    [
      [wall.left, (x: number) => x],
      [wall.right, (x: number) => width - x],
    ] as const
  ).map(([side, place]) =>
    shapes.polygon(
      (
        [
          [0, 0],
          [side, spec.stock.front.thickness],
          [side, depth - (spec.box === undefined ? 0 : spec.stock.back.thickness)],
          [0, depth],
        ] as const
      ).map(([x, y]) => [across(place(x)), back(y)]),
    ),
  );

/**
 * A front from above; at the upper edge a half pin covers each corner, so the whole front is visible. A lip above hides
 * the step of its rebate; one at the sides alone has a T-shaped upper edge.
 */
const frontPaths = (
  { front: { shoulder }, spec, sizes: { width, wall, lap, rebate } }: Drawer,
  { across, back }: SketchAxes,
): Path[] => {
  const front = spec.stock.front.thickness;
  const [left, right] = [-rebate.sides, width + rebate.sides];
  const shape = (points: readonly Point[]) => shapes.polygon(points.map(([x, y]) => [across(x), back(y)]));
  if (shoulder.upper > 0)
    return [
      shape([
        [0, 0],
        [width, 0],
        [width - wall.right, front],
        [wall.left, front],
      ]),
    ];
  if (rebate.top > 0)
    return [
      shapes.rectangle(across(left), 0, across(right), back(lap)),
      shapes.rectangle(0, back(lap), across(width), back(front)),
    ];
  return rebate.sides > 0
    ? [
        shape([
          [left, 0],
          [right, 0],
          [right, lap],
          [width, lap],
          [width, front],
          [0, front],
          [0, lap],
          [left, lap],
        ]),
      ]
    : [shapes.rectangle(0, 0, across(width), back(front))];
};

/** A box's back, which is joined as its front is. */
const backPaths = (drawer: Drawer, { back, ...axes }: SketchAxes): Path[] =>
  frontPaths(
    { ...drawer, spec: turned(drawer.spec), front: drawer.back },
    { ...axes, back: (y) => back(drawer.sizes.depth - y) },
  );

/** The bottom's groove in the sides, or in the slips, and in the front. */
const grooveMark = (
  { sizes: { width, depth, wall }, spec }: Drawer,
  across: (x: number) => number,
  back: (y: number) => number,
): StrokeMark => {
  const { bottom, groove, stock, box } = spec;
  const within = (bottom.hold.kind === 'slips' ? bottom.hold.width : 0) - groove.depth;
  const [left, right] = [wall.left + within, width - wall.right - within];
  const y = stock.front.thickness - groove.depth;
  if (box !== undefined) {
    const rear = depth - stock.back.thickness + groove.depth;
    return stroke('groove', 'groove', [shapes.rectangle(across(left), back(y), across(right), back(rear))]);
  }
  return stroke('groove', 'groove', [
    {
      points: [
        [across(left), back(depth)],
        [across(left), back(y)],
        [across(right), back(y)],
        [across(right), back(depth)],
      ],
    },
  ]);
};
