import type { Complaint } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import { atLeast, mm, say } from '../units/phrase.ts';
import { formatSlope } from '../units/slope.ts';
import { adviseCloser } from './closerSpacing.ts';
import type { ResolvedSpec } from './defaults.ts';
import { adviseGroups } from './groupedSpacing.ts';
import { adviseSmallPins } from './houndsTooth.ts';
import { GENTLE_RUN, STEEP_RUN, WIDE_TAIL_IN_PINS } from './jointLimits.ts';
import { KINDS } from './kinds/kinds.ts';

/**
 * Advice on a layout that can be cut; places name the joint's options.
 * @param tips tail widths, in mm
 * @param pins narrow widths of all pins, half pins included, in mm
 */
export const adviseJoint = (
  spec: ResolvedSpec,
  tips: readonly number[],
  pins: readonly number[],
): Complaint[] => {
  const { kind, slope, chisel, pin, spacing, smallPin } = spec;
  const advice: Complaint[] = [];
  if (slope.run < STEEP_RUN - EPSILON)
    advice.push({
      at: ['slope'],
      says: say`${formatSlope(slope)} is steeper than 1:5: the short grain at the tails' corners may break off`,
      hint: say`1:7`,
    });
  if (slope.run > GENTLE_RUN + EPSILON)
    advice.push({
      at: ['slope'],
      says: say`${formatSlope(slope)} is gentler than 1:9: the joint has little hold`,
      hint: say`1:7`,
    });
  const narrowest = Math.min(...pins);
  if (narrowest < chisel - EPSILON)
    advice.push({
      at: ['pin'],
      says: say`the narrowest pin is ${mm(narrowest)}, less than the narrowest chisel (${mm(chisel)})`,
      hint: say`${atLeast(chisel)}`,
      remedy: say`use a narrower chisel`,
    });
  const widest = Math.max(...tips);
  if (widest > WIDE_TAIL_IN_PINS * pin + EPSILON)
    advice.push({
      at: ['tails'],
      says: say`the widest tail is ${mm(widest)}, more than ${WIDE_TAIL_IN_PINS} pins of ${mm(pin)}: few pins hold a wide board`,
      remedy: say`use more tails, or wider pins`,
    });
  return [
    ...advice,
    ...(spacing.kind === 'grouped' ? adviseGroups(spacing, pin) : []),
    ...(spacing.kind === 'closer-edges' ? adviseCloser(spacing, tips.length) : []),
    ...(smallPin === undefined ? [] : adviseSmallPins(smallPin, pin)),
    ...KINDS[kind].advise(spec, spec.shape),
  ];
};
