import type { Drawer } from '../../drawer/drawer.ts';
import { ofHand } from '../../drawer/made/drawerCorners.ts';
import { boxOfMarks } from '../../drawing/boxOfMarks.ts';
import type { Drawing, Mark, Path } from '../../drawing/drawing.ts';
import * as shapes from '../../drawing/shapes.ts';
import { stroke, textMark } from '../../drawing/shapes.ts';
import { ASCENT, DESCENT, textWidth } from '../../drawing/textWidth.ts';
import type { Joint } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { formatNumber } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import { tailMarks } from '../sideView.ts';
import { paragraph } from '../typeset/block.ts';
import type { TypeSizes } from '../typeset/typeSizes.ts';
import { figure } from '../typeset/typeSizes.ts';
import { dimension, roomFor } from './dimension.ts';
import { letterSize, type SketchAxes, viewName } from './sketchAxes.ts';

/**
 * A drawer's right side, its front at the left; the foot of the front's outer face is the origin.
 * @param brief whether the names of heights are shortened
 */
export const viewFromRight = (
  whole: Drawer,
  axes: SketchAxes,
  unit: Notation,
  type: TypeSizes,
  brief: boolean,
): Drawing => {
  const { back, up } = axes;
  const drawer = ofHand(whole, 'right');
  const { sizes, spec, front } = drawer;
  const { depth, height, lap, backLap, rebate } = sizes;
  const side = sizes.sideHeight.right;
  const rectangle = (y0: number, z0: number, y1: number, z1: number): Path =>
    shapes.rectangle(back(y0), up(z0), back(y1), up(z1));
  const line = (y0: number, z0: number, y1: number, z1: number): Path =>
    shapes.line(back(y0), up(z0), back(y1), up(z1));
  const atFront = kindOf(front).sideView(front);
  const atBack = kindOf(drawer.back).sideView(drawer.back);
  const baseline = atFront.reach;
  const rear = depth - atBack.reach;
  const { offset, width } = spec.groove;
  const stopped = spec.groove.rebate ? undefined : spec.groove.stopped;
  const ends = [lap, depth - backLap] as const;
  const boards = spec.stock;
  const groove: readonly [number, number] =
    stopped === undefined
      ? [
          boards.front.thickness - spec.groove.depth,
          spec.box === undefined ? depth : depth - boards.back.thickness + spec.groove.depth,
        ]
      : [ends[0] + stopped, spec.box === undefined ? depth : ends[1] - stopped];
  const top = up(Math.max(height + rebate.top, side));
  const foot = up(-rebate.bottom);
  const size = letterSize(type);
  const letter = top + DESCENT * size + 0.5;
  const name = viewName('from the right', axes);
  const taken = textWidth(name, type.text, 'regular') + 2 * (textWidth('B', size, 'bold') + 1);
  const levels = levelMarks(levelsOf(drawer, brief), back(depth), up, unit, type);
  const above = Math.max(letter + ASCENT * size, boxOfMarks(levels).y1) + DESCENT * type.text + 0.5;
  const marks: Mark[] = [
    ...tailMarks(atFront, ([x, u]) => [back(x), up(u)]),
    ...tailMarks(atBack, ([x, u]) => [back(depth - x), up(sizes.backFrom + u)]),
    stroke('outline', 'medium', [
      rectangle(ends[0], 0, ends[1], side),
      ...shouldersAt(front.shoulder, front.width).map((z) => line(0, z, baseline, z)),
      ...inMitre(front).map((y) => line(y, atFront.span[0], y, atFront.span[1])),
      ...(front.setBack > 0 ? [rectangle(0, -rebate.bottom, lap, height + rebate.top)] : []),
      ...inMitre(drawer.back).map((y) => line(depth - y, atBack.span[0], depth - y, atBack.span[1])),
      ...(backLap > 0 ? [rectangle(ends[1], 0, depth, height)] : []),
    ]),
    stroke('baseline', 'thin', [
      line(baseline, atFront.span[0], baseline, atFront.span[1]),
      line(rear, sizes.backFrom + atBack.span[0], rear, sizes.backFrom + atBack.span[1]),
      ...shouldersAt(drawer.back.shoulder, sizes.backHeight).map((z) =>
        line(rear, sizes.backFrom + z, depth, sizes.backFrom + z),
      ),
    ]),
    ...(front.sawCut === undefined
      ? []
      : [
          stroke(
            'baseline',
            'thin',
            front.sawCut.map((z) => line(ends[0], z, ends[1], z)),
          ),
        ]),
    stroke('groove', 'groove', [
      ...[offset, offset + width].map((z) => line(groove[0], z, groove[1], z)),
      ...(stopped === undefined ? [] : groove.filter((y) => y < depth)).map((y) =>
        line(y, offset, y, offset + width),
      ),
    ]),
    ...dimension({
      way: 'level',
      from: back(ends[0]),
      to: back(ends[1]),
      edge: foot,
      line: foot - roomFor('level', type.figure),
      text: figure(formatNumber(ends[1] - ends[0], unit), type),
    }),
    textMark('B', [0, letter], size, { weight: 'bold' }),
    textMark('C', [back(depth), letter], size, { weight: 'bold', anchor: 'end' }),
    textMark(name, [back(depth) / 2, taken <= back(depth) ? letter : above], type.text, {
      anchor: 'middle',
    }),
    ...levels,
  ];
  return { box: boxOfMarks(marks), marks };
};

/** Where lines of a joint between its shoulders are seen at the side of a corner that is mitred, in mm from its outside corner. */
const inMitre = (joint: Joint): readonly number[] => {
  if (joint.setBack > 0 || joint.mitre === undefined) return [];
  const { uprights, reach } = kindOf(joint).sideView(joint);
  return uprights.filter((y) => y < reach);
};

/** Where shoulders begin, in mm above a board's lower edge. */
const shouldersAt = ({ lower, upper }: Joint['shoulder'], width: number): number[] => [
  ...(lower > 0 ? [lower] : []),
  ...(upper > 0 ? [width - upper] : []),
];

/** Heights above the reference edge, mm, with the name of what is there; only the first name at one height. */
const levelsOf = (
  { sizes: { sideHeight, backFrom, backHeight }, spec: { groove, box }, front: { sawCut } }: Drawer,
  brief: boolean,
): [number, string][] => {
  const levels = new Map<number, string>();
  for (const [value, name] of [
    [0, brief ? 'reference' : 'reference edge'],
    [groove.offset, 'groove'],
    ...(box === undefined
      ? ([
          [backFrom, brief ? 'back, lower' : 'back’s lower edge'],
          [backFrom + backHeight, brief ? 'back, upper' : 'back’s upper edge'],
        ] as const)
      : []),
    ...(sawCut === undefined
      ? []
      : ([
          [sawCut[0], 'saw cut'],
          [sawCut[1], 'lid'],
        ] as const)),
    [
      sideHeight.right,
      box !== undefined ? 'upper edge' : sideHeight.left === sideHeight.right ? 'sides' : 'side',
    ],
  ] as const)
    if (!levels.has(value)) levels.set(value, name);
  return [...levels];
};

/** Heights as running dimensions from the reference edge, their numbers spread where heights are close together. */
const levelMarks = (
  levels: readonly [number, string][],
  edge: number,
  up: (z: number) => number,
  unit: Notation,
  type: TypeSizes,
): Mark[] => {
  const step = 1.2 * type.figure;
  const apart: number[] = [];
  for (const [value] of levels)
    apart.push(Math.max(up(value), (apart.at(-1) ?? Number.NEGATIVE_INFINITY) + step));
  const lowered = apart.reduce((sum, y, i) => sum + y - up(levels[i]?.[0] ?? 0), 0) / levels.length;
  return levels.flatMap(([value, name], i): Mark[] => {
    const y = (apart[i] ?? 0) - lowered;
    const label = paragraph(
      [...figure(formatNumber(value, unit), type), { text: name, size: type.note, weight: 'regular' }],
      Number.POSITIVE_INFINITY,
    );
    return [
      stroke('label', 'thin', [
        {
          points: [
            [edge + 1, up(value)],
            [edge + 2, up(value)],
            [edge + 4.5, y],
            [edge + 5.5, y],
          ],
        },
      ]),
      ...label.marks(edge + 6, y + label.height / 2),
    ];
  });
};
