import type { Notation } from '../units/notation.ts';
import { speak } from '../units/phrase.ts';
import { degrees } from '../units/slope.ts';
import { dividers, gauges, glueArea, groupDividers } from './gauges.ts';
import type { Joint } from './joint.ts';
import { kindOf } from './kinds/kinds.ts';

const stepping = (joint: Joint) => {
  const set = dividers(joint);
  return set === undefined ? null : { from: set.from, downFrom: set.downFrom, step: set.step };
};

const gaugesByName = (joint: Joint): Readonly<Record<string, number>> =>
  Object.fromEntries(
    kindOf(joint)
      .gauges(joint)
      .map(({ name, length }) => [name, length]),
  );

/**
 * A joint as other programs read it: lengths in mm from the reference edge, areas in mm².
 * @example
 * ```ts
 * const box = layOut({
 *   kind: 'through', width: 60, tailBoard: 12, pinBoard: 10, pin: 6, spacing: { kind: 'even', tails: 3 },
 * });
 * if (box.ok) console.log(jointRecord('Box', box.value, 'mm').tailBoard.thickness); // 12
 * ```
 */
export const jointRecord = (name: string, joint: Joint, unit: Notation) => {
  const inGroups = groupDividers(joint);
  return {
    name,
    kind: joint.kind,
    width: joint.width,
    depth: joint.depth,
    slope: { run: joint.slope.run, degrees: degrees(joint.slope) },
    tailBoard: joint.tailBoard,
    pinBoard: joint.pinBoard,
    shoulder: joint.shoulder,
    ...(joint.mitre && { mitre: joint.mitre }),
    tails: joint.tails,
    pins: joint.pins,
    ...(joint.smallPins && { smallPins: joint.smallPins }),
    ...(joint.sawCut && { sawCut: joint.sawCut }),
    gauges: { ...gauges(joint), ...gaugesByName(joint) },
    dividers: stepping(joint),
    ...(inGroups && { groupDividers: inGroups }),
    glueArea: glueArea(joint),
    alternatives: joint.alternatives,
    advice: joint.advice.map(({ says }) => speak(says, unit)),
  };
};
