import type { Box, Drawing, Mark, Path, PenName, Point, Role, TextMark } from '../drawing/drawing.ts';
import { flatten, type Outline } from '../drawing/outline.ts';
import { CAP_HEIGHT } from '../drawing/textWidth.ts';
import type { Piece, Splits } from '../paper/piece.ts';
import type { DxfLayer } from '../render/dxf.ts';
import { type Lettering, letter, letterTag, SMALL, type Strip, words } from '../template/lettering.ts';
import { scaleBar } from '../template/scaleBar.ts';
import { formatLength } from '../units/formatLength.ts';
import type { Unit } from '../units/unit.ts';
import { type GuideBoard, STRIP } from './guideBoard.ts';

/** What stands on a guide. */
export interface GuideTitles {
  /** The drawer and its corner, or the joint that belongs to none. */
  readonly item: string;
  /** What the piece's name begins with, safe as a file name. */
  readonly stem: string;
  readonly units: Unit;
}

/** How far centre lines stand out beyond the outline, in mm. */
const OVERHANG = 6;

/** A guide as a full-size drawing, its closed outline alone in the role `outline`. */
export const guidePiece = (guide: GuideBoard, titles: GuideTitles): Piece => {
  const box = boxOf(guide.outline);
  const { item, stem } = titles;
  const shift = shiftBy(box);
  return {
    name: `${stem}-guide-${guide.board}s`,
    title: `${item}, guide for the ${guide.board}s`,
    count: 1,
    width: box.x1 - box.x0,
    height: box.y1 - box.y0,
    overhang: OVERHANG,
    splittable: { x: [], y: guide.fingers.map(([from, to]) => [from - box.y0, to - box.y0]) },
    draw: (splits) => drawGuide(guide, titles, box, shift, splits),
  };
};

/** A guide's layers for a DXF file, its origin where the fence's face meets the reference edge. */
export const guideLayers = (guide: GuideBoard): DxfLayer[] => [
  { name: 'OUTLINE', line: 'CONTINUOUS', outlines: [guide.outline] },
  { name: 'CENTRE', line: 'CENTER', paths: guide.centreLines },
  { name: 'FENCE', line: 'HIDDEN', paths: fencePaths(guide) },
  { name: 'WORK', line: 'HIDDEN', paths: workEdges(guide) },
];

const boxOf = (outline: Outline): Box => {
  const points = flatten(outline).points;
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
};

type Shift = (path: Path) => Path;

const shiftBy =
  ({ x0, y0 }: Box): Shift =>
  (path) => ({ ...path, points: path.points.map(([x, y]): Point => [x - x0, y - y0]) });

const line = (from: Point, to: Point): Path => ({ points: [from, to] });

/** The fence's long edges, where the guide's own edge is not one of them. */
const fencePaths = ({ fence, outline }: GuideBoard): Path[] => {
  const { x1, y0, y1 } = boxOf(outline);
  return fence.filter((x) => x < x1).map((x) => line([x, y0], [x, y1]));
};

/** The edges of the work under the guide, the reference edge first. */
const workEdges = ({ work, width, outline }: GuideBoard): readonly [Path, Path] => {
  const from = boxOf(outline).x0 + STRIP + 1;
  return [line([from, 0], [work[1], 0]), line([from, width], [work[1], width])];
};

const drawGuide = (
  guide: GuideBoard,
  titles: GuideTitles,
  box: Box,
  shift: Shift,
  splits: Splits,
): Drawing => {
  const stroke = (role: Role, pen: PenName, paths: readonly Path[]): Mark => ({
    kind: 'stroke',
    role,
    pen,
    paths: paths.map(shift),
  });
  const height = box.y1 - box.y0;
  const levels = [0, ...splits.y, height];
  const [reference, farEdge] = workEdges(guide);
  const label = (text: string, at: Point, turn: 0 | 90): TextMark => ({
    kind: 'text',
    role: 'label',
    text,
    at: [at[0] - box.x0, at[1] - box.y0],
    size: SMALL,
    turn,
    anchor: 'start',
    weight: 'regular',
  });
  const fenceMiddle = (guide.fence[0] + guide.fence[1]) / 2;
  return {
    box: { x0: -OVERHANG, y0: -OVERHANG, x1: box.x1 - box.x0 + OVERHANG, y1: height + OVERHANG },
    marks: [
      stroke('outline', 'cut', [flatten(guide.outline)]),
      stroke('square', 'fold', guide.centreLines),
      stroke('baseline', 'lap', fencePaths(guide)),
      stroke('square', 'edge', [reference]),
      stroke('square', 'thin', [farEdge]),
      label('fence', [fenceMiddle, box.y0 + 3], 90),
      label('ref. edge', [box.x0 + STRIP + 2, -1 - SMALL * CAP_HEIGHT], 0),
      ...levels.slice(1).flatMap((to, i): Mark[] => {
        const strip: Strip = {
          box: { x0: 0, x1: STRIP - 1, y0: levels[i] ?? 0, y1: to },
          turn: 90,
          nameFirst: true,
        };
        const lettering = letteringOf(guide, titles);
        return letter(strip, lettering) ?? letterTag(strip, lettering);
      }),
    ],
  };
};

const letteringOf = ({ board, bush, cutter }: GuideBoard, { item, units }: GuideTitles): Lettering => {
  const length = (value: number): string => formatLength(value, units);
  return {
    name: [words('bold', `${item} · guide for the ${board}s`, `${item} · ${board}s`)],
    about: [
      words('regular', `bush ${length(bush)}`),
      words(
        'regular',
        `${cutter.kind} cutter ${length(cutter.diameter)}`,
        `cutter ${length(cutter.diameter)}`,
      ),
      words('regular', `set ${length(cutter.depth)} deep`, `deep ${length(cutter.depth)}`),
      scaleBar(units),
    ],
    place: [
      words('regular', 'work against the fence, reference edge on its line', 'work against the fence'),
      ...(board === 'pin' ? [words('regular', 'turn over for the other hand', 'other hand: turn over')] : []),
    ],
  };
};
