import type { Complaint } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import type { Slope } from '../units/slope.ts';
import type { JointKind } from './kinds/kinds.ts';

/** From and to, in mm from the reference edge. */
export type Interval = readonly [from: number, to: number];

/** A tail: widest at its tip, narrowest at its base on the baseline. */
export interface Tail {
  readonly tip: Interval;
  readonly base: Interval;
}

/** A pin: narrow where its neighbours are at their tips, wide at their bases. The outermost two are half pins. */
export interface Pin {
  readonly narrow: Interval;
  readonly wide: Interval;
  readonly half: boolean;
}

/** A hound's tooth's pin in the middle of a tail: narrow at the tail's end, wide at its floor, where the tail goes on. */
export interface SmallPin {
  readonly narrow: Interval;
  readonly wide: Interval;
  /** How far its floor is from the tail's end. */
  readonly depth: number;
}

/** Which of the two boards of a corner. */
export type JointBoard = 'tail' | 'pin';

/** A number of tails and their mean tip width. */
export interface TailCount {
  readonly tails: number;
  readonly tip: number;
}

/** One corner, set out. Everything is in mm from the reference edge; the tails are listed from it upward. */
export interface Joint {
  readonly kind: JointKind;
  readonly width: number;
  /** The tails' length. */
  readonly depth: number;
  readonly slope: Slope;
  /** `lap`: the wood that it keeps outside the pins' ends; 0 where they show at its outside face. */
  readonly tailBoard: { readonly thickness: number; readonly lap: number };
  /** `lap`: the wood that it keeps in front of the tails' ends; 0 where they show at its outside face. */
  readonly pinBoard: { readonly thickness: number; readonly lap: number };
  /** How far behind the pin board's outside face the tail board ends. */
  readonly setBack: number;
  /**
   * Where the boards meet in a mitre from the inside corner to the outside corner: its angle off the tail board's face, in
   * degrees, which is that off a square cut of the pin board; absent where they do not.
   */
  readonly mitre?: { readonly degrees: number };
  /** How far in from either edge the boards are mitred right through, so that the joint begins there; 0 where it begins at the edge. */
  readonly shoulder: { readonly lower: number; readonly upper: number };
  /** How far the tail board is proud of the pins' ends, to be planed flush. */
  readonly proud: number;
  readonly tails: readonly Tail[];
  readonly pins: readonly Pin[];
  /** One in each tail, in their order; absent where the corner is no hound's tooth. */
  readonly smallPins?: readonly SmallPin[];
  /** Where a box's lid is sawn off along the middle of a pin; absent where none is. */
  readonly sawCut?: Interval;
  /** True where every tail is as wide as the next and so is every whole pin. */
  readonly even: boolean;
  /** One tail fewer and one more, where those can be cut. */
  readonly alternatives: readonly TailCount[];
  readonly advice: readonly Complaint[];
}

/** The length of a joint's pins, from the tail board's inside face to its lap, or to where it is proud of them. */
export const pinLength = ({ tailBoard, proud }: Pick<Joint, 'tailBoard' | 'proud'>): number =>
  tailBoard.thickness - tailBoard.lap - proud;

/**
 * Whether the tail board's end is that of its tails over all its thickness, so that spaces between them run from face to
 * face; it is not where the board keeps a lap, nor where its tails end behind its shoulders.
 */
export const isPlainEnd = ({
  depth,
  setBack,
  tailBoard,
  pinBoard,
}: Pick<Joint, 'depth' | 'setBack' | 'tailBoard' | 'pinBoard'>): boolean =>
  tailBoard.lap < EPSILON && pinBoard.thickness - setBack - depth < EPSILON;

/** What of a tail is left beside its small pin, from the reference edge up; all of it where it has none. */
export const besideSmallPin = ([from, to]: Interval, smallPin: Interval | undefined): Interval[] =>
  smallPin === undefined
    ? [[from, to]]
    : [
        [from, smallPin[0]],
        [smallPin[1], to],
      ];

/** What stands of the tails at their ends, and what lies beside the small pins where those are widest, at the tails' bases. */
export const tailParts = (
  { tails, smallPins }: Pick<Joint, 'tails' | 'smallPins'>,
  at: 'tip' | 'base',
): Interval[] =>
  tails
    .flatMap((tail, i) => besideSmallPin(tail[at], smallPins?.[i]?.[at === 'tip' ? 'narrow' : 'wide']))
    // A base may be no wider than the small pin half way up.
    .filter(([from, to]) => to > from);

/** Where a joint begins and ends across the boards' width, between its shoulders. */
export const jointSpan = ({ width, shoulder }: Pick<Joint, 'width' | 'shoulder'>): Interval => [
  shoulder.lower,
  width - shoulder.upper,
];

/** What mitred shoulders take of the boards' width, from the reference edge up; nothing where the joint reaches the edges. */
export const shoulderZones = (joint: Pick<Joint, 'width' | 'shoulder'>): Interval[] => {
  const [from, to] = jointSpan(joint);
  const zones: Interval[] = [
    [0, from],
    [to, joint.width],
  ];
  return zones.filter(([low, high]) => high > low);
};

/** The width of a joint's shoulders, in mm, the lower one's where they differ; undefined where it reaches both edges. */
export const shoulderWidth = ({ shoulder }: Pick<Joint, 'shoulder'>): number | undefined =>
  shoulder.lower || shoulder.upper || undefined;

/** The mean tip width of a joint's tails. */
export const meanTail = ({ tails }: Joint): number =>
  tails.reduce((sum, { tip }) => sum + tip[1] - tip[0], 0) / tails.length;

/** The mean narrow width of its whole pins; of its half pins where one tail leaves no whole one. */
export const meanPin = ({ pins }: Joint): number => {
  const whole = pins.filter(({ half }) => !half);
  const counted = whole.length > 0 ? whole : pins;
  return counted.reduce((sum, { narrow }) => sum + narrow[1] - narrow[0], 0) / counted.length;
};
