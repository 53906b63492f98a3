import type { CornerEnd } from '../../drawer/cornerLetters.ts';
import type { Box, Drawing, Mark, Path, PenName, Point, Role, TextMark } from '../../drawing/drawing.ts';
import type { Layer } from '../../drawing/layer.ts';
import { flatten, type Outline } from '../../drawing/outline.ts';
import { line, stroke } from '../../drawing/shapes.ts';
import { CAP_HEIGHT, textWidth } from '../../drawing/textWidth.ts';
import type { Piece, Splits } from '../../paper/piece.ts';
import { type GuideBoard, STRIP } from '../../router/guide/guideBoard.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import type { ShortName } from '../../units/shortNames.ts';
import {
  type Label,
  type LabelArea,
  type Lettering,
  SMALL,
  setLettering,
  setTagLettering,
  textLabel,
} from '../template/lettering.ts';
import { scaleBar } from '../template/scaleBar.ts';
import { type Titles, tapedUp } from '../template/titles.ts';
import { lettersSeen } from './seenCorners.ts';

/** The text of a guide, with the names of its drawers and their corners, or of the single corner. */
export interface GuideTitles extends ShortName {
  /** Beginning of the piece's name, safe as a file name. */
  readonly stem: string;
  readonly units: Notation;
  /** Ends of the drawer whose corners the guide serves. */
  readonly ends: readonly CornerEnd[];
  /** The work's edge on the line across the fence, with a shorter wording. */
  readonly edge: Titles['edge'];
  /** The work's edge on the line at the other edge, in a word or two. */
  readonly upper: string;
  /** Depth of the rebate whose shoulder is the end of a pin board that lies flat, mm: the fence is in the rebate, on the lip. */
  readonly rebate?: number;
}

/** Length of centre lines beyond the outline, mm. */
const OVERHANG = 6;

/** Height of the labels' capitals, mm. */
const CAP = SMALL * CAP_HEIGHT;

/** Room for a label, mm: of an edge, from the strip of text to the first place of a slot; of the work, below its reference edge. */
const LABEL_ROOM = 26;

const fits = (text: string): boolean => textWidth(text, SMALL, 'regular') < LABEL_ROOM;

/** A guide as a full-size drawing, its closed outline alone in the role `outline`. */
export const guidePiece = (guide: GuideBoard, titles: GuideTitles): Piece => {
  const box = boxOf(guide.outline);
  const { stem } = titles;
  const shift = shiftBy(box);
  return {
    name: `${stem}-guide-${guide.board}s`,
    title: titleOf(guide, titles),
    count: 1,
    width: box.x1 - box.x0,
    height: box.y1 - box.y0,
    overhang: OVERHANG,
    splittable: { x: [], y: guide.fingers.map(([from, to]) => [from - box.y0, to - box.y0]) },
    taped: { y: tapedUp(titles, guide.width) },
    draw: (splits) => drawGuide(guide, titles, box, shift, splits),
  };
};

/** A guide's layers for a DXF file, its origin where the fence's face meets the reference edge. */
export const guideLayers = (guide: GuideBoard, titles: GuideTitles): Layer[] => {
  const { x0, y0, y1 } = boxOf(guide.outline);
  const [reference, farEdge] = workEdges(guide);
  const name = titleOf(guide, titles);
  // Along the guide's strip, as large as the whole name fits it in any usual font.
  const size = Math.min(NAME_EM, (y1 - y0 - 2 * NAME_MARGIN) / (1.5 * textWidth(name, 1, 'bold')));
  return [
    { name: 'OUTLINE', line: 'CONTINUOUS', outlines: [guide.outline] },
    { name: 'CENTRE', line: 'CENTER', paths: guide.centreLines },
    { name: 'FENCE', line: 'HIDDEN', paths: fencePaths(guide) },
    { name: 'REFERENCE', line: 'HIDDEN', paths: [reference] },
    { name: 'WORK', line: 'HIDDEN', paths: [farEdge] },
    {
      name: 'TEXT',
      line: 'CONTINUOUS',
      texts: [
        { ...guideLabel(name, [x0 + STRIP / 2, y0 + NAME_MARGIN], 90), size },
        edgeLabel(guide, titles),
      ],
    },
  ];
};

/** A guide's name on its machine's file: its em where the guide is long enough, and its distance from the guide's end, mm. */
const NAME_EM = 5;
const NAME_MARGIN = 3;

const titleOf = ({ board }: GuideBoard, { item }: GuideTitles): string => `${item}, guide for the ${board}s`;

const guideLabel = (text: string, at: Point, turn: 0 | 90): TextMark => ({
  kind: 'text',
  role: 'label',
  text,
  at,
  size: SMALL,
  turn,
  anchor: 'start',
  weight: 'regular',
});

/** The name of the work's edge on the line across the fence, below that line. */
const edgeLabel = ({ outline }: GuideBoard, { edge }: GuideTitles): TextMark =>
  guideLabel(edge.find(fits) ?? edge.at(-1) ?? '', [boxOf(outline).x0 + STRIP + 2, -1 - CAP], 0);

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

/** The fence's long edges, where the guide's own edge is not one of them. */
const fencePaths = ({ fence, outline }: GuideBoard): Path[] => {
  const { x1, y0, y1 } = boxOf(outline);
  return fence.filter((x) => x < x1).map((x) => line(x, y0, x, y1));
};

/** The edges of the work under the guide, the reference edge first. */
const workEdges = ({ work, width, outline }: GuideBoard): readonly [Path, Path] => {
  const from = boxOf(outline).x0 + STRIP + 1;
  return [line(from, 0, work[1], 0), line(from, width, work[1], width)];
};

const drawGuide = (
  guide: GuideBoard,
  titles: GuideTitles,
  box: Box,
  shift: Shift,
  splits: Splits,
): Drawing => {
  const shifted = (role: Role, pen: PenName, paths: readonly Path[]): Mark =>
    stroke(role, pen, paths.map(shift));
  const height = box.y1 - box.y0;
  const levels = [0, ...splits.y, height];
  const [reference, farEdge] = workEdges(guide);
  const placed = (text: TextMark): TextMark => ({
    ...text,
    at: [text.at[0] - box.x0, text.at[1] - box.y0],
  });
  const label = (text: string, at: Point, turn: 0 | 90): TextMark => placed(guideLabel(text, at, turn));
  const { fence, work } = guide;
  const thickness = formatLength(work[1], titles.units);
  const fenceMiddle = (fence[0] + fence[1]) / 2;
  // On the fence's side of the line.
  const besideLine = fence[0] < 0 ? -1 : 1 + CAP;
  const alongEdges = box.x0 + STRIP + 2;
  return {
    box: { x0: -OVERHANG, y0: -OVERHANG, x1: box.x1 - box.x0 + OVERHANG, y1: height + OVERHANG },
    marks: [
      shifted('outline', 'cut', [flatten(guide.outline)]),
      shifted('square', 'fold', guide.centreLines),
      shifted('baseline', 'lap', fencePaths(guide)),
      ...(guide.lies === 'upright'
        ? [shifted('square', 'thin', [line(work[1], box.y0, work[1], box.y1)])]
        : []),
      shifted('square', 'edge', [reference]),
      shifted('square', 'thin', [farEdge]),
      label('fence', [fenceMiddle, box.y0 + 3], 90),
      label('fence line', [besideLine, box.y0 + 3], 90),
      ...(guide.lies === 'upright'
        ? [
            label(
              fits(`work ${thickness}`) ? `work ${thickness}` : thickness,
              [(work[1] + CAP) / 2, box.y0 + 3],
              90,
            ),
          ]
        : []),
      placed(edgeLabel(guide, titles)),
      label(titles.upper, [alongEdges, guide.width + 1], 0),
      ...levels.slice(1).flatMap((to, i): Mark[] => {
        const strip: LabelArea = {
          box: { x0: 0, x1: STRIP - 1, y0: levels[i] ?? 0, y1: to },
          turn: 90,
          nameFirst: true,
        };
        const lettering = letteringOf(guide, titles);
        // A short part at the paper's edge need not repeat the work's position.
        return setLettering(strip, lettering) ?? setTagLettering(strip, { ...lettering, place: [] });
      }),
    ],
  };
};

const letteringOf = (guide: GuideBoard, titles: GuideTitles): Lettering => {
  const { board, bush, cutter } = guide;
  const { item, shorter, units } = titles;
  const length = (value: number): string => formatLength(value, units);
  return {
    name: [
      textLabel(
        'bold',
        `${item} · guide for the ${board}s`,
        `${item} · ${board}s`,
        ...shorter.map((wording) => `${wording} · ${board}s`),
      ),
    ],
    about: [
      textLabel('regular', `guide bush ${length(bush)}`, `bush ${length(bush)}`),
      textLabel(
        'regular',
        `${cutter.kind} cutter ${length(cutter.diameter)}`,
        `cutter ${length(cutter.diameter)}`,
      ),
      textLabel(
        'regular',
        `cutter’s depth ${length(cutter.depth)} below the guide`,
        `depth ${length(cutter.depth)} below the guide`,
      ),
      ...guide.byHand.map((which) => textLabel('regular', `${which} half space by hand`)),
      scaleBar(units),
    ],
    place: placeLabels(guide, titles),
  };
};

/**
 * The position of the work under the guide as drawn. The guide's lettered side is up, so the maker looks down on the work as
 * on the drawing. An end that points up then looks as on its corner's template, with the lower edge below: in front of the
 * corners A and C, a tail board's outside face and a pin board's inside face are on the left, beside the fence. A lapped
 * pin board with its inside face up has the end at the fence on the right: corner A, seen from outside.
 */
const placeLabels = (
  { board, lies }: GuideBoard,
  { ends, edge, rebate, units }: GuideTitles,
): readonly Label[] => {
  const [drawn, other] = [lettersSeen(ends, 'left'), lettersSeen(ends, 'right')];
  const [fullest, ...shorter] = edge;
  const onLine = textLabel(
    'regular',
    `${fullest} on its line`,
    ...shorter.map((wording) => `${wording} on its line`),
  );
  if (board === 'tail')
    return [
      textLabel('bold', `${drawn}: OUTSIDE FACE against the fence`, `${drawn}: OUTSIDE FACE to fence`),
      textLabel('bold', `${other}: INSIDE FACE against the fence`, `${other}: INSIDE FACE to fence`),
      textLabel('regular', 'END up'),
      onLine,
    ];
  return [
    ...(lies === 'flat'
      ? rebate === undefined
        ? [textLabel('bold', 'INSIDE FACE up, END against the fence', 'INSIDE FACE up, END to fence')]
        : [
            textLabel(
              'bold',
              'INSIDE FACE up, REBATE’S SHOULDER against the fence',
              'INSIDE FACE up, SHOULDER to fence',
            ),
            textLabel(
              'regular',
              `fence’s thickness less than ${formatLength(rebate, units)}, clear of the lip`,
              `fence’s thickness under ${formatLength(rebate, units)}`,
            ),
          ]
      : [
          textLabel('bold', 'INSIDE FACE against the fence', 'INSIDE FACE to fence'),
          textLabel('regular', 'END up'),
        ]),
    onLine,
    textLabel(
      'bold',
      `as drawn: ${drawn}; turned over, fence on its other face: ${other}`,
      `as drawn: ${drawn}; turned over: ${other}`,
    ),
  ];
};
