import type { Drawing, Mark, Path, Point, TextMark } from '../drawing/drawing.ts';
import { polygon, rectangle, stroke, textMark } from '../drawing/shapes.ts';
import type { DepthMove, OneCutterSetting } from '../router/trial/depthCorrection.ts';
import type { GuideMove, GuideSetting } from '../router/trial/guideCorrection.ts';
import { formatLength } from '../units/formatLength.ts';
import type { Notation } from '../units/notation.ts';
import { rise, type Slope, slopeOfDegrees } from '../units/slope.ts';
import { SMALL } from './template/lettering.ts';

/** Size of every move in the picture, mm; a real move would hardly show. */
const SHOWN = 4;

/** Size of a board's cross-section in the picture, mm. */
const BOARD = { width: 70, height: 30 } as const;

/** Half the least width of the cut or the pin in the picture, mm. */
const HALF = 9;

/** The cutter in a socket, seen from the pin board's end: its trial depth dashed, and its corrected depth. */
export const drawDepthMove = (
  { angle }: OneCutterSetting,
  { change }: DepthMove,
  unit: Notation,
): Drawing => {
  const bottom = -18;
  const lean = rise(slopeOfDegrees(angle));
  const centre = BOARD.width / 2;
  const half = HALF - bottom * lean;
  // The whole cutter moves down or up, so a deeper cut is narrower at the face.
  const cut = (shift: number): Path => {
    const mouth = HALF + shift * lean;
    return {
      points: [
        [centre - mouth, 0],
        [centre - half, bottom + shift],
        [centre + half, bottom + shift],
        [centre + mouth, 0],
      ],
    };
  };
  const direction = Math.sign(change);
  return picture({
    board: -BOARD.height,
    before: cut(0),
    after: cut(-direction * SHOWN),
    arrow: [
      [centre, bottom],
      [centre, bottom - direction * SHOWN],
    ],
    move:
      change === 0
        ? 'stays'
        : `${formatLength(Math.abs(change), unit)} ${change > 0 ? 'deeper' : 'shallower'}`,
    faces: ['inside face', 'outside face'],
  });
};

/** A pin, seen from the pin board's end: from the trial's guide position dashed, and from the corrected position. */
export const drawGuideMove = ({ slope }: GuideSetting, { move }: GuideMove, unit: Notation): Drawing => {
  const centre = BOARD.width / 2;
  const pin = (shift: number): Path => polygon(pinSides(slope, centre, shift));
  const direction = Math.sign(move);
  return picture({
    board: -BOARD.height,
    before: pin(0),
    after: pin(direction * SHOWN),
    arrow: [
      [centre, -BOARD.height / 2],
      [centre, -BOARD.height / 2 + direction * SHOWN],
    ],
    move:
      move === 0
        ? 'stays'
        : `${formatLength(Math.abs(move), unit)} towards the ${move > 0 ? 'outside' : 'inside'} face`,
    faces: ['outside face', 'inside face'],
  });
};

const pinSides = (slope: Slope, centre: number, shift: number): Point[] => {
  const at = (y: number): number => HALF + (shift - y) * rise(slope);
  const low = -BOARD.height;
  return [
    [centre - at(0), 0],
    [centre + at(0), 0],
    [centre + at(low), low],
    [centre - at(low), low],
  ];
};

interface Picture {
  readonly board: number;
  readonly before: Path;
  readonly after: Path;
  readonly arrow: readonly [Point, Point];
  readonly move: string;
  /** The upper face's name and the lower one's. */
  readonly faces: readonly [string, string];
}

const picture = ({ board, before, after, arrow, move, faces }: Picture): Drawing => {
  const { width } = BOARD;
  const line = SMALL * 1.3;
  const text = (shown: string, at: Point): TextMark => textMark(shown, at, SMALL, { anchor: 'middle' });
  const outline: Path = rectangle(0, board, width, 0);
  const marks: Mark[] = [
    stroke('outline', 'medium', [outline]),
    stroke('slope', 'lap', [before]),
    stroke('slope', 'edge', [after]),
    stroke('label', 'medium', arrowPaths(arrow)),
    text(faces[0], [width / 2, line * 0.4]),
    text(faces[1], [width / 2, board - line]),
    textMark(move, [width / 2, board - 2.2 * line], SMALL, { anchor: 'middle', weight: 'bold' }),
    text('dashed: the trial; the move is drawn larger', [width / 2, board - 3.3 * line]),
  ];
  return { box: { x0: -2, y0: board - 4 * line, x1: width + 2, y1: 2 * line }, marks };
};

/** A line with a head at its end; none where nothing moves. */
const arrowPaths = ([from, to]: readonly [Point, Point]): Path[] => {
  const direction = Math.sign(to[1] - from[1]);
  if (direction === 0) return [];
  const [x, y] = to;
  return [
    { points: [from, to] },
    {
      points: [
        [x - 1, y - direction * 1.5],
        [x, y],
        [x + 1, y - direction * 1.5],
      ],
    },
  ];
};
