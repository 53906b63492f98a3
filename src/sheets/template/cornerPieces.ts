import type { Joint, JointBoard } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import type { Notation } from '../../units/notation.ts';
import type { GrooveMark } from './grooveMark.ts';
import { rod } from './rod.ts';
import { REFERENCE_EDGE, type Titles } from './titles.ts';
import { flat, type TemplatePiece, type WrapSpec, wrap } from './wrap.ts';

/** What one board of a corner is called on its template. */
export interface BoardEnd {
  readonly part: string;
  readonly end: string;
  /** The groove on the board's inside face, where it has one. */
  readonly groove?: GrooveMark;
  /** What the template's lower edge is laid against; the reference edge unless given. */
  readonly edge?: Titles['edge'];
  /** Whether a pin board's end is rebated by its lap, which stands out beyond the template as a lip. */
  readonly rebated?: boolean;
}

/** One corner of a box, and how often it is made. */
export interface Corner {
  readonly joint: Joint;
  readonly item: string;
  readonly letter: string;
  /** Seen from outside, in front of the tail board's end: on which side of it the tail board's outside face lies. */
  readonly hand: 'left' | 'right';
  readonly count: number;
  readonly tailBoard: BoardEnd;
  readonly pinBoard: BoardEnd;
  readonly units: Notation;
  /** What its pieces' file names begin with. */
  readonly stem: string;
}

/** Which pieces are made of each corner. */
export interface PieceChoice {
  readonly boards: readonly JointBoard[];
  /** The bands as separate strips, instead of one piece to fold. */
  readonly flat: boolean;
  /** A rod of each corner as well. */
  readonly rods: boolean;
}

/**
 * Both boards of each corner, each a piece to fold, without rods.
 * @example
 * ```ts
 * const pieces = piecesOf(project, { ...BOTH_BOARDS, rods: true });
 * ```
 */
export const BOTH_BOARDS: PieceChoice = { boards: ['tail', 'pin'], flat: false, rods: false };

/** The templates of one corner. Left and right corners mirror each other. */
export const cornerPieces = (
  corner: Corner,
  { boards, flat: asStrips, rods }: PieceChoice,
): TemplatePiece[] => [
  ...boards.flatMap((board) => {
    const spec = wrapSpec(corner, board);
    return asStrips ? flat(spec) : [wrap(spec)];
  }),
  ...(rods ? [cornerRod(corner)] : []),
];

/** A rod serves both boards of its corner. */
const cornerRod = (corner: Corner): TemplatePiece => {
  const { name, joint, titles } = wrapSpec(corner, 'tail');
  return rod(`${name}-rod`, joint, { ...titles, part: `rod, ${titles.part}` });
};

const wrapSpec = (corner: Corner, board: JointBoard): WrapSpec => {
  const { joint, item, letter, hand, count, units, stem } = corner;
  const {
    part,
    end,
    groove,
    edge = REFERENCE_EDGE,
    rebated = false,
  } = board === 'tail' ? corner.tailBoard : corner.pinBoard;
  // A rebate takes the lap from the end that is marked.
  const lengths = rebated ? [] : kindOf(joint).lengths.filter(({ on }) => on === board);
  const partStem = part.replaceAll(' ', '-');
  return {
    name: `${stem}-${partStem}-${letter.toLowerCase()}`,
    joint,
    board,
    rebated,
    // Before the end of a left side its outside lies to the left; before the left end of a front, its inside does.
    insideOn: (hand === 'left') === (board === 'pin') ? 'left' : 'right',
    titles: {
      item,
      part,
      end,
      corner: letter,
      count,
      slope: joint.slope,
      edge,
      units,
      lengths: lengths.map(({ word, of }) => [word, of(joint)]),
    },
    ...(groove && { groove }),
  };
};
