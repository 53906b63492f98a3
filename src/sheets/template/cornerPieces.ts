import type { Interval, Joint, JointBoard } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import type { Notation } from '../../units/notation.ts';
import type { ShortName } from '../../units/shortNames.ts';
import { surfacesOf } from './band.ts';
import { type GrooveMark, grooveName } from './grooveMark.ts';
import { rod } from './rod.ts';
import {
  flatName,
  flatTemplates,
  foldedTemplate,
  type TemplatePiece,
  type TemplateSpec,
} from './templatePiece.ts';
import { REFERENCE_EDGE, type Titles } from './titles.ts';

/** Names of one board of a corner on its template. */
export interface BoardEnd {
  readonly part: string;
  readonly end: string;
  /** The groove on the board's inside face, where it has one. */
  readonly groove?: GrooveMark;
  /** Height of the joint's lower edge above the board's own reference edge, mm; 0 by default. */
  readonly jointFrom?: number;
  /** The edge that the template's lower edge is aligned with; the reference edge by default. */
  readonly edge?: Titles['edge'];
  /** The edge at the joint's other end; the upper edge by default. */
  readonly upper?: string;
  /** Whether a pin board's end is rebated by its lap, which projects beyond the template as a lip. */
  readonly rebated?: boolean;
  /** What came out other than planned, mm; nothing by default. */
  readonly built?: Titles['built'];
}

/** One corner, how many equal ones to make, and the name of its drawer, or its own. */
export interface Corner extends ShortName {
  readonly joint: Joint;
  readonly letter: string;
  /** Side of the tail board's outside face, seen from outside in front of the tail board's end. */
  readonly hand: 'left' | 'right';
  readonly count: number;
  readonly tailBoard: BoardEnd;
  readonly pinBoard: BoardEnd;
  readonly units: Notation;
  /** Beginning of its pieces' file names. */
  readonly stem: string;
}

/** The kinds of piece to make for each corner. */
export interface PieceChoice {
  readonly boards: readonly JointBoard[];
  /** Flat templates, one a band, instead of one piece to fold. */
  readonly flat: boolean;
  /** A rod of each corner too. */
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
  { boards, flat: asFlat, rods }: PieceChoice,
): TemplatePiece[] => [
  ...boards.flatMap((board) => {
    const specOf = () => templateSpec(corner, board);
    return asFlat ? flatTemplates(specOf) : [foldedTemplate(specOf)];
  }),
  ...(rods ? [cornerRod(corner)] : []),
];

/** The names of the templates that `cornerPieces` makes, without making them. */
export const pieceNames = (corner: CornerEnds, { boards, flat: asFlat, rods }: PieceChoice): string[] => [
  ...boards.flatMap((board) => {
    const name = pieceName(corner, board);
    return asFlat ? surfacesOf({ ...corner, board }).map((face) => flatName(name, face)) : [name];
  }),
  ...(rods ? [rodName(corner)] : []),
];

/** What the names of a corner's pieces depend on. */
type CornerEnds = Pick<Corner, 'stem' | 'letter' | 'joint' | 'tailBoard' | 'pinBoard'>;

const pieceName = (corner: CornerEnds, board: JointBoard): string =>
  `${corner.stem}-${corner[`${board}Board`].part.replaceAll(' ', '-')}-${corner.letter.toLowerCase()}`;

const rodName = (corner: CornerEnds): string => `${pieceName(corner, 'tail')}-rod`;

/** A rod serves both boards of its corner. */
const cornerRod = (corner: Corner): TemplatePiece => {
  const { joint, titles } = templateSpec(corner, 'tail');
  return rod(rodName(corner), joint, titles, corner.pinBoard);
};

const templateSpec = (corner: Corner, board: JointBoard): TemplateSpec => {
  const { joint, names, item, shorter, letter, hand, count, units } = corner;
  const {
    part,
    end,
    groove,
    jointFrom = 0,
    edge = REFERENCE_EDGE,
    upper = 'upper edge',
    rebated = false,
    built,
  } = corner[`${board}Board`];
  // A rebate removes the lap from the marked end.
  const lengths = rebated ? [] : kindOf(joint).lengths.filter(({ on }) => on === board);
  return {
    name: pieceName(corner, board),
    joint: raised(joint, jointFrom),
    board,
    jointFrom,
    rebated,
    // In front of the end of a left side, its outside face is on the left; in front of the left end of a front, its inside face.
    insideOn: (hand === 'left') === (board === 'pin') ? 'left' : 'right',
    itemName: corner,
    titles: {
      names,
      item,
      shorter,
      ...(corner.number !== undefined && { number: corner.number }),
      part,
      end,
      corner: letter,
      count,
      slope: joint.slope,
      edge,
      jointFrom,
      upper,
      units,
      lengths: [
        ...lengths.map(({ word, of }) => [word, of(joint)] as const),
        ...shouldersOf(joint),
        ...(joint.sawCut === undefined ? [] : [['lid sawn off at', joint.sawCut[0]] as const]),
      ],
      ...(built && { built }),
      ...(groove?.stopped !== undefined && { grooveStops: [grooveName(groove), groove.stopped] as const }),
    },
    ...(groove && { groove }),
  };
};

/** What its shoulders are called, and how wide they are: by one name where both are alike. */
const shouldersOf = ({ shoulder: { lower, upper } }: Joint): (readonly [string, number])[] =>
  lower === 0 || upper === 0 || lower === upper
    ? [['shoulder', lower || upper] as const].filter(([, width]) => width > 0)
    : [
        ['lower shoulder', lower],
        ['upper shoulder', upper],
      ];

/** A joint measured from an edge `by` mm below its lower edge. */
const raised = (joint: Joint, by: number): Joint => {
  if (by === 0) return joint;
  const up = ([from, to]: Interval): Interval => [from + by, to + by];
  return {
    ...joint,
    width: joint.width + by,
    shoulder: { ...joint.shoulder, lower: joint.shoulder.lower > 0 ? joint.shoulder.lower + by : 0 },
    tails: joint.tails.map(({ tip, base }) => ({ tip: up(tip), base: up(base) })),
    pins: joint.pins.map(({ narrow, wide, half }) => ({ narrow: up(narrow), wide: up(wide), half })),
    ...(joint.smallPins && {
      smallPins: joint.smallPins.map(({ narrow, wide, depth }) => ({
        narrow: up(narrow),
        wide: up(wide),
        depth,
      })),
    }),
  };
};
