import { clipArea, clipMarks } from '../../drawing/clip.ts';
import type { Box, Drawing, FillMark, Mark, Path, Point, StrokeMark } from '../../drawing/drawing.ts';
import { line, polygon, rectangle, stroke } from '../../drawing/shapes.ts';
import { textBox } from '../../drawing/textBox.ts';
import type { Blank } from '../../stock/breakout.ts';
import { extentsOf } from '../../stock/polygon.ts';
import { replay } from '../../stock/replay.ts';
import { endWords, placeLabels, type Shown } from './boardLabels.ts';
import { type BoardView, blankEnds } from './boardView.ts';
import { outsideBoxes, withinPolygon } from './cutAway.ts';
import { defectHatch } from './defectHatch.ts';
import { labelRoom, roomy } from './labelRoom.ts';

/** How a board, or a stretch of it, is drawn. */
export interface BoardScale {
  /** mm on the paper for each mm of the board. */
  readonly scale: number;
  /** From and to, in mm along the board from its left end; all of it unless given. */
  readonly stretch?: readonly [from: number, to: number];
}

/** A board's picture, and what found room for a label in it. */
export interface BoardDrawing {
  readonly drawing: Drawing;
  readonly shown: Shown;
}

/** Height kept above and below a board for numbers of cuts, and below that for the names of its ends, mm. */
const MARGIN = { above: 5.6, below: 5.6, ends: 4.6 };
/** Least width of a saw cut on the paper, mm. */
const LEAST_KERF = 0.25;
/** Grey of a saw cut: 0 black to 1 paper. */
const KERF_TONE = 0.2;

/**
 * A board to scale as it lies, show face up: its outline, defects, blanks, saw cuts and offcuts. Letters stand for blanks and
 * defects, numbers in boxes for cuts, each where it has room.
 */
export const drawBoard = (view: BoardView, { scale, stretch }: BoardScale): BoardDrawing => {
  const extents = extentsOf(view.plank.outline);
  const length = extents.x1 - extents.x0;
  const [from, to] = stretch ?? [0, length];
  const place = ([x, y]: Point): Point => [(x - extents.x0 - from) * scale, (y - extents.y0) * scale];
  const placeBox = ({ x0, y0, x1, y1 }: Box): Box => {
    const [[left, low], [right, high]] = [place([x0, y0]), place([x1, y1])];
    return { x0: left, y0: low, x1: right, y1: high };
  };
  const [width, height] = [(to - from) * scale, (extents.y1 - extents.y0) * scale];
  const window: Box = { x0: 0, y0: -MARGIN.below, x1: width, y1: height + MARGIN.above };
  const outline = view.plank.outline.map(place);
  const blanks = view.layout.blanks.map((blank) => ({ blank, box: placeBox(boxOf(blank)) }));
  const kerfs = kerfBoxes(view).map((kerf) => kerf && atLeast(placeBox(kerf), LEAST_KERF));
  const defects = view.plank.defects.map(({ kind, outline }) => ({ kind, outline: outline.map(place) }));
  const clipped = clipMarks(
    window,
    [
      stroke('outline', 'medium', [polygon(outline)]),
      ...defects.map((defect) => stroke('label', 'thin', withinPolygon(outline, [polygon(defect.outline)]))),
      ...view.layout.offcuts.map((offcut) => stroke('label', 'fold', [inset(placeBox(boxOf(offcut)), 0.6)])),
      ...blanks.flatMap(({ blank, box }) => blankMarks(view, blank, box, scale)),
      ...kerfs.flatMap((kerf) => kerf && kerfMark(kerf, outline)),
    ].filter((mark) => mark !== undefined),
  );
  const marks: Mark[] = [...clipped, ...breaks(from > 0, to < length, width, height)];
  const room = labelRoom({ ...window, x0: -SIDE, x1: width + SIDE }, marks);
  const shown = placeLabels(view, { blanks, kerfs, defects, window, outline }, room);
  const words = marks.flatMap((mark) => (mark.kind === 'text' ? [roomy(textBox(mark))] : []));
  const hatched = defects.map((defect) =>
    stroke(
      'waste',
      'hatch',
      outsideBoxes(words, withinPolygon(outline, defectHatch(defect.kind, defect.outline))),
    ),
  );
  marks.push(...clipMarks(window, hatched));
  marks.push(...endWords(from <= 0, to >= length, width, -MARGIN.below - MARGIN.ends));
  return {
    drawing: {
      box: { x0: -SIDE, y0: -MARGIN.below - MARGIN.ends, x1: width + SIDE, y1: height + MARGIN.above },
      marks,
    },
    shown,
  };
};

/** Width beside a board for the widths of lines, mm. */
export const SIDE = 0.5;
/** Height of a picture beyond that of its board, mm. */
export const BEYOND_BOARD = MARGIN.above + MARGIN.below + MARGIN.ends;

const boxOf = ({ x, y, length, width }: Pick<Blank, 'x' | 'y' | 'length' | 'width'>): Box => ({
  x0: x,
  y0: y,
  x1: x + length,
  y1: y + width,
});

/** What each cut takes, over the whole of what it cuts; nothing where that is not there. */
const kerfBoxes = ({ plank: { outline }, layout: { cuts }, kerf }: BoardView): (Box | undefined)[] =>
  cuts.map(({ kind, piece, at }, k) => {
    const before = replay(outline, cuts.slice(0, k), kerf);
    const box = before.ok ? before.left.get(piece) : undefined;
    if (box === undefined) return undefined;
    return kind === 'crosscut' ? { ...box, x0: at, x1: at + kerf } : { ...box, y0: at, y1: at + kerf };
  });

/** A box widened about its middle to a least size each way. */
const atLeast = ({ x0, y0, x1, y1 }: Box, least: number): Box => {
  const [dx, dy] = [Math.max(0, least - (x1 - x0)) / 2, Math.max(0, least - (y1 - y0)) / 2];
  return { x0: x0 - dx, y0: y0 - dy, x1: x1 + dx, y1: y1 + dy };
};

const inset = ({ x0, y0, x1, y1 }: Box, by: number): Path =>
  rectangle(x0 + by, y0 + by, Math.max(x0 + by, x1 - by), Math.max(y0 + by, y1 - by));

const kerfMark = (kerf: Box, outline: readonly Point[]): FillMark | undefined => {
  const wood = clipArea(kerf, polygon(outline));
  return wood && { kind: 'fill', role: 'waste', tone: KERF_TONE, paths: [wood] };
};

/** The lines across which a board that is drawn in stretches is continued. */
const breaks = (left: boolean, right: boolean, width: number, height: number): StrokeMark[] => [
  ...(left ? [stroke('fold', 'fold', [line(0, 0, 0, height)])] : []),
  ...(right ? [stroke('fold', 'fold', [line(width, 0, width, height)])] : []),
];

/** Distance of a reference edge's bold line from the blank's, and the size of its arrow, mm. */
const EDGE = { inset: 0.5, arrow: 1.8, room: 7 };
const FRONT_MARK = 1.4;

/** A blank's reference edge with the face-edge mark of the trade, the reach of its joints, and of a side the front end. */
const blankMarks = (view: BoardView, blank: Blank, box: Box, scale: number): Mark[] => {
  const part = view.blanks[blank.wanted];
  if (part === undefined) return [];
  const { left, right, front } = blankEnds(part);
  const { x0, y0, x1, y1 } = box;
  // As it lies not turned, in mm on the paper; turned is half a turn about its middle.
  const turn = ([x, y]: Point): Point => (blank.turned ? [x0 + x1 - x, y0 + y1 - y] : [x, y]);
  const turned = (points: readonly Point[]): Path => ({ points: points.map(turn) });
  const low = y0 + EDGE.inset;
  const arrowAt = x0 + Math.min((x1 - x0) / 3, Math.max(left * scale, 0) + 4);
  const joints = [
    ...(left > 0 ? [x0 + left * scale] : []),
    ...(right > 0 ? [x1 - right * scale] : []),
  ].filter((x) => x > x0 && x < x1);
  const triangle = frontTriangle(front, box);
  return [
    stroke('label', 'edge', [
      turned([
        [x0 + EDGE.inset, low],
        [x1 - EDGE.inset, low],
      ]),
    ]),
    ...(y1 - y0 < EDGE.room
      ? []
      : [
          stroke('label', 'medium', [
            turned([
              [arrowAt - EDGE.arrow / 2, low + EDGE.arrow],
              [arrowAt, low],
              [arrowAt + EDGE.arrow / 2, low + EDGE.arrow],
            ]),
          ]),
        ]),
    stroke(
      'lap',
      'groove',
      joints.map((x) =>
        turned([
          [x, y0],
          [x, y1],
        ]),
      ),
    ),
    ...(triangle === undefined
      ? []
      : [{ kind: 'fill', role: 'label', tone: 0, paths: [{ ...turned(triangle), closed: true }] } as const]),
  ];
};

/** A small triangle that points to a side's front end; none where there is no room for it. */
const frontTriangle = (front: 'left' | 'right' | undefined, { x0, y0, x1, y1 }: Box): Point[] | undefined => {
  if (front === undefined || y1 - y0 < 2 * FRONT_MARK + 2 || x1 - x0 < 4 * FRONT_MARK) return undefined;
  const [tip, base] =
    front === 'left' ? [x0 + 0.5, x0 + 0.5 + FRONT_MARK] : [x1 - 0.5, x1 - 0.5 - FRONT_MARK];
  const middle = (y0 + y1) / 2;
  return [
    [tip, middle],
    [base, middle - FRONT_MARK / 2],
    [base, middle + FRONT_MARK / 2],
  ];
};
