import type { Point } from '../../drawing/drawing.ts';
import {
  type Interval,
  jointSpan,
  pinLength,
  type SmallPin,
  shoulderZones,
  tailParts,
} from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { smallOutline, tailOutline, tailOutlines } from '../../joint/tailOutline.ts';
import type { EditedCorner } from '../model/editedCorner.ts';
import { linesOf, widthsOf } from '../model/widths.ts';

/** One of the four faces of a corner as they lie side by side: x in px from the left, u in mm from the reference edge. */
export interface Face {
  readonly x0: number;
  readonly x1: number;
}

/** A polygon, x in px and u in mm. */
export type FaceOutline = readonly Point[];

/**
 * Both boards of a corner laid flat, ends facing each other: the tail board's outside face, or its inside one where
 * nothing is marked outside, and its end, the pin board's
 * end and its inside face. All four share one height, so that a line runs level through them all.
 */
export interface CornerSheet {
  /** px to the mm. */
  readonly scale: number;
  /** How large its letters are, to those of a user who has asked for none. */
  readonly letters: number;
  readonly width: number;
  readonly height: number;
  /** In px: where the boards' upper edge lies. */
  readonly top: number;
  /** Where a distance from the reference edge lies, in px from above. */
  readonly y: (u: number) => number;
  /** In mm. */
  readonly boardWidth: number;
  readonly tailFace: Face;
  readonly tailEnd: Face;
  readonly pinEnd: Face;
  readonly pinFace: Face;
  /** Which of the tail board's faces is shown. */
  readonly tailFaceIs: 'inside' | 'outside';
  /** x of the uprights: the tail board's baseline and its lap's line, the pin board's lap's line and its baseline. */
  readonly tailBaseline: number;
  readonly tailLapLine: number;
  readonly lapLine: number;
  readonly pinBaseline: number;
  /** x of the tails' tips on the tail board's face: its end, unless they are cut back from it. */
  readonly tailTip: number;
  /** From where to where uprights run that do not show beyond shoulders, in mm from the reference edge. */
  readonly between: Interval;
  readonly tails: readonly FaceOutline[];
  /** Tails' tips on the tail board's end. */
  readonly tips: readonly FaceOutline[];
  /** The lines of small pins, on every surface that bears them. */
  readonly smallLines: readonly FaceOutline[];
  /** The waste between the tails. */
  readonly tailWaste: readonly FaceOutline[];
  /** Where the boards' shoulders begin, in mm from the reference edge. */
  readonly shoulders: readonly number[];
  /** x where they begin on the pin board's end. */
  readonly mitredFrom: number;
  /** What they take of both boards. */
  readonly mitred: readonly FaceOutline[];
  /** Sockets, on the pin board's end and on its inside face. */
  readonly sockets: readonly FaceOutline[];
  readonly faceSockets: readonly FaceOutline[];
  /** The path of each line between two widths across all four faces. */
  readonly lines: readonly FaceOutline[];
  readonly groove?: {
    readonly from: number;
    readonly to: number;
    /** Its depth in px. */
    readonly depth: number;
    /** x at which it stops short of the tail board's end, or undefined where it runs out there. */
    readonly stop: number | undefined;
  };
}

/** Space round the drawing and between its boards, in px. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly gap: number;
  readonly letters: number;
}

/** How much of the boards is seen beyond the joint, in mm; where there is no room, at least some. */
const SOME_GRIP = 4;
const LEAST_GRIP = 12;
const MOST_GRIP = 70;
/** Of both boards together, in px. */
const LEAST_ROOM = 120;
/** px to the mm. */
const LARGEST_SCALE = 12;
/** The least scale of a wide board, so that its pins can be grabbed, if there is room beside it. */
const LEAST_SCALE = 3.2;

/**
 * Lays both boards out: as large as there is room for, in the middle.
 * @param still as they were laid out before something is moved: the gap between them and their far ends stay there, so that
 * what is moved follows the hand
 */
export const cornerSheet = (
  { joint, groove }: EditedCorner,
  frame: Frame,
  still?: Pick<CornerSheet, 'scale' | 'tailFace' | 'tailEnd' | 'pinFace'>,
): CornerSheet => {
  const { depth, width, tails, tailBoard, pinBoard, smallPins = [] } = joint;
  const pins = pinLength(joint);
  const tailMarks = kindOf(joint).marks(joint).tail;
  const isOutside = tailMarks.some(({ surface }) => surface === 'outside');
  const reach = tailMarks[0]?.reach ?? depth;
  const fixed = reach + tailBoard.thickness + pinBoard.thickness + pins;
  const room = Math.max(LEAST_ROOM, frame.width - frame.left - frame.right - frame.gap);
  const byWidth = room / (fixed + 2 * LEAST_GRIP);
  const byHeight = Math.max((frame.height - frame.top - frame.bottom) / width, LEAST_SCALE);
  const scale = still?.scale ?? Math.min(byWidth, byHeight, LARGEST_SCALE);
  const grip = Math.max(SOME_GRIP, Math.min(MOST_GRIP, (room / scale - fixed) / 2));
  const left = frame.left + Math.max(0, (room - (fixed + 2 * grip) * scale) / 2);

  const tailArris = still?.tailEnd.x1 ?? left + (grip + reach + tailBoard.thickness) * scale;
  const tailEnd = { x0: tailArris - tailBoard.thickness * scale, x1: tailArris };
  const tailBaseline = tailEnd.x0 - reach * scale;
  const leastX0 = tailBaseline - SOME_GRIP * scale;
  const tailFace = { x0: Math.min(still?.tailFace.x0 ?? left, leastX0), x1: tailEnd.x0 };
  const pinEnd = { x0: tailArris + frame.gap, x1: tailArris + frame.gap + pinBoard.thickness * scale };
  const pinBaseline = pinEnd.x1 + pins * scale;
  const leastX1 = pinBaseline + SOME_GRIP * scale;
  const pinFace = { x0: pinEnd.x1, x1: Math.max(still?.pinFace.x1 ?? pinBaseline + grip * scale, leastX1) };
  const tailTip = tailBaseline + depth * scale;
  const isCutBack = reach > depth;
  const tailLapLine = tailEnd.x1 - tailBoard.lap * scale;
  const lapLine = pinEnd.x0 + pinBoard.lap * scale;

  const outlines = tails.map((tail) => tailOutline(tail, joint));
  const cut = tailOutlines(joint);
  // A tail's base lies on the tail board's baseline and, in its socket, at the inside arris.
  const onTailFace = ([u, y]: Point): Point => [tailBaseline + y * scale, u];
  const onPinEnd = ([u, y]: Point): Point => [pinEnd.x1 - y * scale, u];
  const rectangle = (x0: number, x1: number, [from, to]: readonly [number, number]): FaceOutline => [
    [x0, from],
    [x1, from],
    [x1, to],
    [x0, to],
  ];
  const sides = outlines.flatMap(([base0, tip0, tip1, base1]) => [
    [base0, tip0],
    [base1, tip1],
  ]);
  /** Over the tail board's face and its end, from one arris of the end to the other. */
  const socketOf = (small: SmallPin): FaceOutline => [
    [tailLapLine, small.narrow[0]],
    ...smallOutline(small, joint).map(onTailFace),
    [tailLapLine, small.narrow[1]],
  ];
  const [from, to] = jointSpan(joint);
  // An outside face stays whole at a shoulder; there the mitre takes all of the pin board's end, its lap too.
  const [mitredTail, mitredFrom] = isOutside ? [tailFace.x1, pinEnd.x0] : [tailBaseline, lapLine];
  return {
    scale,
    letters: frame.letters,
    width: Math.max(frame.width, pinFace.x1 + frame.right),
    height: frame.top + width * scale + frame.bottom,
    top: frame.top,
    y: (u) => frame.top + (width - u) * scale,
    boardWidth: width,
    tailFace,
    tailEnd,
    pinEnd,
    pinFace,
    tailFaceIs: isOutside ? 'outside' : 'inside',
    tailBaseline,
    tailLapLine,
    lapLine,
    pinBaseline,
    tailTip,
    between: isOutside ? [from, to] : [0, width],
    tails: cut.map((outline) => outline.map(onTailFace)),
    tips: isCutBack ? [] : tailParts(joint, 'tip').map((part) => rectangle(tailEnd.x0, tailLapLine, part)),
    smallLines: smallPins.flatMap((small) => [socketOf(small), smallOutline(small, joint).map(onPinEnd)]),
    tailWaste: [
      ...joint.pins.map(
        ({ narrow, wide }): FaceOutline => [
          [tailBaseline, wide[0]],
          [tailTip, narrow[0]],
          [isCutBack ? tailTip : tailLapLine, narrow[0]],
          [isCutBack ? tailTip : tailLapLine, narrow[1]],
          [tailTip, narrow[1]],
          [tailBaseline, wide[1]],
        ],
      ),
      ...smallPins.map(socketOf),
      ...(isCutBack ? [rectangle(tailTip, tailLapLine, [from, to])] : []),
    ],
    shoulders: [from, to].filter((u) => u > 0 && u < width),
    mitredFrom,
    mitred: shoulderZones(joint).flatMap((across) => [
      rectangle(mitredTail, tailLapLine, across),
      rectangle(mitredFrom, pinBaseline, across),
    ]),
    sockets: cut.map((outline) => outline.map(onPinEnd)),
    faceSockets: tails.map(({ base }) => rectangle(pinFace.x0, pinBaseline, base)),
    lines: linesOf(widthsOf(joint), joint.shoulder.lower).map((tip, i): FaceOutline => {
      const [base = [tip, 0], end = [tip, depth]] = sides[i] ?? [];
      return [
        onTailFace(base),
        onTailFace(end),
        [isCutBack ? tailTip : tailLapLine, tip],
        [lapLine, tip],
        onPinEnd(base),
        [pinBaseline, base[0]],
      ];
    }),
    ...(groove && {
      groove: {
        from: groove.offset,
        to: groove.offset + groove.width,
        depth: groove.depth * scale,
        stop: groove.stopped === undefined ? undefined : tailFace.x1 - groove.stopped * scale,
      },
    }),
  };
};
