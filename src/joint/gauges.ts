import { EPSILON } from '../units/epsilon.ts';
import { rise } from '../units/slope.ts';
import { type Joint, pinLength, type Tail } from './joint.ts';

/** Marking-gauge settings in mm. */
export interface Gauges {
  /** From the tail board's end, round its faces and edges. */
  readonly tailBoard: number;
  /** From the pin board's end, on its inside face (on both faces of a through joint). */
  readonly pinBoardFace: number;
  /** On the pin board's end, from its inside face. */
  readonly pinBoardEnd: number;
}

/**
 * The marking-gauge settings of a joint.
 * @example
 * ```ts
 * const box = layOut({
 *   kind: 'through', width: 60, tailBoard: 12, pinBoard: 10, pin: 6, spacing: { kind: 'even', tails: 3 },
 * });
 * if (box.ok) console.log(gauges(box.value)); // { tailBoard: 10, pinBoardFace: 12, pinBoardEnd: 10 }
 * ```
 */
export const gauges = ({ depth, tailBoard, pinBoard, setBack, proud }: Joint): Gauges => ({
  tailBoard: pinBoard.thickness - setBack,
  pinBoardFace: tailBoard.thickness - proud,
  pinBoardEnd: depth,
});

/** How to step equal tails off on the tail board's end, in mm. */
export interface Dividers {
  /** Begin here, at the lower half pin's line, and step upward: each step marks one side of a tail. */
  readonly from: number;
  /** Where the last step up ends: an opening that is a little out is put right by this, before it has added up. */
  readonly upTo: number;
  /** Then begin here, at the upper half pin's line, and step down for the other sides. */
  readonly downFrom: number;
  /** The dividers' opening: a tail's tip and a pin's narrow width. */
  readonly step: number;
}

/**
 * Divider setting of an even layout; none where tails or pins differ, or where one tail leaves nothing to step.
 * @example
 * ```ts
 * const box = layOut({
 *   kind: 'through', width: 60, tailBoard: 12, pinBoard: 10, pin: 6, spacing: { kind: 'even', tails: 3 },
 * });
 * if (box.ok) console.log(dividers(box.value)); // { from: 6, upTo: 42, downFrom: 54, step: 18 }
 * ```
 */
export const dividers = ({ even, tails }: Joint): Dividers | undefined => {
  const [first, second] = tails;
  const last = tails.at(-1);
  if (!even || first === undefined || second === undefined || last === undefined) return undefined;
  return { from: first.tip[0], upTo: last.tip[0], downFrom: last.tip[1], step: second.tip[0] - first.tip[0] };
};

/** How to step the tails of groups off, in mm: one opening for all of them. */
export interface GroupDividers {
  readonly step: number;
  /** Of each group that has more than one tail, from the reference edge up: where to step up from, and down from. */
  readonly groups: readonly Pick<Dividers, 'from' | 'downFrom'>[];
}

/** Divider setting of equal tails in groups, within which they stand evenly; none where tails differ, or all are evenly spaced. */
export const groupDividers = ({ even, tails }: Joint): GroupDividers | undefined => {
  const [first] = tails;
  if (even || first === undefined) return undefined;
  const widthOf = ({ tip: [from, to] }: Tail): number => to - from;
  if (tails.some((tail) => Math.abs(widthOf(tail) - widthOf(first)) > EPSILON)) return undefined;
  const steps = tails.slice(1).map(({ tip }, i) => tip[0] - (tails[i]?.tip[0] ?? 0));
  const step = Math.min(...steps);
  const groups: Tail[][] = [];
  tails.forEach((tail, i) => {
    const last = groups.at(-1);
    if (last !== undefined && (steps[i - 1] ?? 0) < step + EPSILON) last.push(tail);
    else groups.push([tail]);
  });
  return {
    step,
    groups: groups.flatMap((group) => {
      const [low, high] = [group[0], group.at(-1)];
      return low === undefined || high === undefined || low === high
        ? []
        : [{ from: low.tip[0], downFrom: high.tip[1] }];
    }),
  };
};

/**
 * Long grain glued to long grain, in mm²: both sloped sides of every tail and of every small pin, each as long as the slope
 * makes its depth, L √(1 + s²), and as wide as the pins are long: what is proud of them meets no glue.
 */
export const glueArea = (joint: Joint): number => {
  const { tails, depth, slope, smallPins = [] } = joint;
  const deep = tails.length * depth + smallPins.reduce((sum, small) => sum + small.depth, 0);
  return 2 * deep * Math.hypot(1, rise(slope)) * pinLength(joint);
};
