import type { Point } from '../../drawing/drawing.ts';
import type { Complaint } from '../../units/complaint.ts';
import type { Notation } from '../../units/notation.ts';
import type { Phrase } from '../../units/phrase.ts';
import type { Range } from '../../units/range.ts';
import type { Interval, Joint, JointBoard } from '../joint.ts';
import type { CornerWish } from '../jointSpec.ts';

/** The thicknesses of a corner's two boards, in mm, and in what they are written; `mm` unless given. */
export interface Thicknesses {
  readonly tailBoard: number;
  readonly pinBoard: number;
  readonly notation?: Notation;
}

/** The boards of a corner, and the pin board's lap where one is given: what another length may follow from. */
export interface GivenBoards extends Thicknesses {
  readonly lap?: number;
}

/** A length that corners of a kind have beside those of every corner. Lengths in mm. */
export interface OwnLength<Key extends string = string> {
  /** Its key in a wish and in a plan; in kebab case, its option. */
  readonly key: Key;
  /** What it is called in a sentence: `the lap`. */
  readonly word: string;
  /** What it is, for the program's help. */
  readonly about: string;
  /** The board that it is a part of. */
  readonly on: JointBoard;
  /** Which lines across the boards it places: the tails' baseline, or a line of its own on that board's end. */
  readonly places: readonly ('baseline' | 'own')[];
  /** Its default. */
  usual(given: GivenBoards): number;
  /** Its range, on boards of this width. */
  range(boards: Thicknesses & { readonly width: number }): Range;
  /** Its value in a joint of its kind. */
  of(joint: Joint): number;
}

/** Depth of a joint and the measures of both its boards, in mm. */
export type JointShape = Pick<Joint, 'depth' | 'tailBoard' | 'pinBoard' | 'shoulder' | 'setBack' | 'mitre'>;

/** A surface of a board's end: one of its faces, or the end grain between them. */
export type Surface = 'inside' | 'end' | 'outside';

export type MarkRole = 'baseline' | 'slope' | 'square' | 'lap';

/** What is marked on one surface of a board: mm from the arris where the mark begins, then mm from the reference edge. */
export interface SurfaceMarks {
  readonly surface: Surface;
  /** How far the joint reaches over it from the arris that it shares with the inside face, or on a face with the end. */
  readonly reach: number;
  readonly lines: readonly { readonly role: MarkRole; readonly paths: readonly (readonly Point[])[] }[];
  /** Closed outlines of what is cut away. */
  readonly waste: readonly (readonly Point[])[];
  /** Whether the end is rebated before it is marked, so that this surface ends where the joint does. */
  readonly rebated?: true;
}

/** One setting of the marking gauge. */
export interface GaugeSetting {
  readonly name: string;
  readonly board: JointBoard;
  /** Where it is run: `all round` is both faces and both edges. */
  readonly on: 'all round' | 'both faces' | 'inside face' | 'inside face and edges' | 'end';
  /**
   * Which line it is, where it is none of the tails and pins themselves: that of a rebate, which is cut before the joint is
   * marked, that to which the end is sawn back between shoulders, before it too, or that where small pins end.
   */
  readonly line?: 'rebate' | 'cut back' | 'small pins';
  /** What the gauge's fence bears on. */
  readonly from: 'end' | 'inside face';
  /** In mm. */
  readonly length: number;
}

/** The closed corner as it is seen on the tail board's outside face: mm from the pin board's outside face, then mm from the reference edge. */
export interface SideView {
  /** How far the joint reaches. */
  readonly reach: number;
  readonly tails: readonly (readonly Point[])[];
  /** Where lines run across the boards, in mm from the pin board's outside face. */
  readonly uprights: readonly number[];
  /** From where to where they run: from edge to edge, or between shoulders, whose lines end them there. */
  readonly span: Interval;
}

/** What a corner's boards are called in a sentence, each a singular: `side` and `front`, or `tail board` and `pin board`. */
export interface BoardNames {
  readonly tail: string;
  readonly pin: string;
  /** Whether a router has cut the sockets, and between tails what it can, so that only the rest is told. */
  readonly routed?: boolean;
}

/**
 * What differs between kinds of corner, and everything that does. A kind is one file beside this, and one entry in the
 * table of them; who sets out, checks, marks, cuts or shows a corner asks its kind.
 * @typeParam Name what the kind is called: `lapped` is a lapped joint
 * @typeParam Own the keys of its own lengths
 */
export interface Kind<Name extends string, Own extends string> {
  readonly lengths: readonly OwnLength<Own>[];
  /** The thinnest boards, in mm. */
  readonly leastBoard: Readonly<Record<JointBoard, number>>;
  /**
   * Whether the sockets run out at the pin board's outside face, where the tails' ends show, or stop behind its lap; or
   * whether laps on both boards close the joint, so that neither tails nor pins show, and no groove in them either.
   */
  readonly sockets: 'open' | 'stopped' | 'closed';
  /** Whether its edges are mitred right through: at those that are wished, always at both, or never. */
  readonly shoulders: 'wished' | 'always' | 'never';
  /** A wish for a corner of this kind; lengths that it does not have are left out. */
  wish(given: OwnGiven<Own>): Wish<Name, Own>;
  /** What is wrong with a wish for it beyond ranges; places name the joint's options. */
  check(given: Given<Own>): Complaint[];
  /** Its measures; lengths that are not given are as usual. */
  shape(given: Given<Own>): JointShape;
  /** The change that makes a deeper joint no deeper than `depth`, to a tenth of a mm, and the same in words. */
  noDeeper(
    given: Given<Own>,
    depth: number,
  ): { readonly wish: Wish<Name, Own> & { readonly pinBoard: number }; readonly words: Phrase };
  /** Advice on such boards for it, and on what it makes of them. */
  advise(boards: Thicknesses, shape: JointShape): Complaint[];
  /** What is marked on either board, from its inside face over the end to its outside face. */
  marks(joint: Joint): Readonly<Record<JointBoard, readonly SurfaceMarks[]>>;
  /** The marking gauge's settings, in the order of work. */
  gauges(joint: Joint): readonly GaugeSetting[];
  sideView(joint: Joint): SideView;
  /** How it is made by hand, in the order of work, where that is not to cut the tails and scribe the pins from them; else nothing. */
  work(joint: Joint, names: BoardNames): readonly Phrase[];
  /** Which faces of a carcase show the joint, its sides' or its top's, as either carries the tails; absent where both do. */
  readonly inCarcase?: Phrase;
}

/** Its boards, its own lengths, and what any corner may be wished that changes its boards' measures. */
export type Given<Own extends string> = Thicknesses &
  OwnGiven<Own> &
  Pick<CornerWish, 'proud' | 'mitre' | 'shoulder' | 'shoulderWidth' | 'lowerShoulder'>;

export type OwnGiven<Own extends string> = { readonly [Key in Own]?: number };

export type Wish<Name extends string, Own extends string> = { readonly kind: Name } & OwnGiven<Own>;
