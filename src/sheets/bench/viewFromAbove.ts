import type { Drawer } from '../../drawer/drawer.ts';
import { boxOfMarks } from '../../drawing/boxOfMarks.ts';
import type { Drawing, Mark, Path, StrokeMark } from '../../drawing/drawing.ts';
import * as shapes from '../../drawing/shapes.ts';
import { stroke, textMark } from '../../drawing/shapes.ts';
import { formatNumber } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import type { TypeSizes } from '../typeset/typeSizes.ts';
import { figure } from '../typeset/typeSizes.ts';
import { dimension, roomFor } from './dimension.ts';
import { insideDiagonal, insideMarks } from './insideMarks.ts';
import type { SketchAxes } from './sketchAxes.ts';

/** A drawer from above, its front at the bottom, the corners lettered; the outer corner of its front's left end is the origin. */
export const viewFromAbove = (
  drawer: Drawer,
  { across, back }: SketchAxes,
  unit: Notation,
  type: TypeSizes,
): Drawing => {
  const { sizes, boards, spec } = drawer;
  const { width, depth, wall, lap, rebate } = sizes;
  const front = spec.stock.front.thickness;
  const rear = depth - spec.stock.back.thickness;
  const rectangle = (x0: number, y0: number, x1: number, y1: number): Path =>
    shapes.rectangle(across(x0), back(y0), across(x1), back(y1));
  const slip = boards.slip?.thickness ?? 0;
  const ends = [-rebate.sides, width + rebate.sides] as const;
  const left = across(ends[0]);
  const number = (value: number) => figure(formatNumber(value, unit), type);
  const lip = spec.lip !== undefined;
  const below = roomFor('level', type.figure);
  const marks: Mark[] = [
    stroke('outline', 'medium', [
      // At the upper edge a half pin covers the corner, so the whole front is visible.
      rectangle(ends[0], 0, ends[1], lip ? lap : front),
      ...(lip ? [rectangle(0, lap, width, front)] : []),
      rectangle(0, front, wall, depth),
      rectangle(width - wall, front, width, depth),
      rectangle(wall, rear, width - wall, depth),
      ...(boards.slip?.boxes.map(({ from, to }) => rectangle(from[0], from[1], to[0], to[1])) ?? []),
    ]),
    grooveMark(drawer, across, back),
    ...insideMarks(
      {
        x0: across(wall + slip),
        y0: back(front),
        x1: across(width - wall - slip),
        y1: back(rear),
      },
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
          // Clear of the other dimension's text, which may be longer than the dimension.
          edge: -below,
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
    textMark('from above', [across(width / 2), back(depth) + 2], type.text, { anchor: 'middle' }),
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
  return stroke('groove', 'groove', [
    {
      points: [
        [across(x), back(depth)],
        [across(x), back(y)],
        [across(width - x), back(y)],
        [across(width - x), back(depth)],
      ],
    },
  ]);
};
