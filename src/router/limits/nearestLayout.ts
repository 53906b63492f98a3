import { withDefaults } from '../../joint/defaults.ts';
import { type Joint, meanPin, meanTail } from '../../joint/joint.ts';
import type { JointSpec } from '../../joint/jointSpec.ts';
import { KINDS, kindOf, withoutKind } from '../../joint/kinds/kinds.ts';
import type { Complaint } from '../../units/complaint.ts';
import { roundUp } from '../../units/epsilon.ts';
import { mm, type Phrase, say } from '../../units/phrase.ts';
import { formatSlope } from '../../units/slope.ts';
import type { Cutter } from './cutter.ts';
import { withCutter } from './fitToCutter.ts';

/** A wish with its depth reduced to the cutter's cutting length and its pins widened to its cut. */
export const clampToCutter = (wish: JointSpec, cutter: Cutter): JointSpec => {
  const within: JointSpec =
    withDefaults(wish).depth <= cutter.length
      ? wish
      : { ...withoutKind(wish), ...KINDS[wish.kind].noDeeper(wish, cutter.length).wish };
  const fitted = withCutter(within, cutter);
  return fitted.pin === undefined ? fitted : { ...fitted, pin: roundUp(fitted.pin, 100) };
};

/** The complaints, the first with the nearest layout as what to try, instead of its own ways out or after them. */
export const hintNearest = (
  complaints: readonly Complaint[],
  nearest: Joint | undefined,
  wish: JointSpec,
  ownHint: 'kept' | 'replaced',
): Complaint[] => {
  const [first, ...rest] = complaints;
  if (nearest === undefined || first === undefined) return [...complaints];
  const { hint, remedy, ...told } = first;
  const works = say`the nearest that works: ${describe(nearest, wish)}`;
  const kept =
    ownHint === 'kept'
      ? { ...(hint && { hint }), remedy: remedy ? say`${remedy}; ${works}` : works }
      : { remedy: works };
  return [{ ...told, ...kept }, ...rest];
};

const describe = (joint: Joint, wish: JointSpec): Phrase => {
  const { tails, slope, pinBoard, even } = joint;
  const count = `${tails.length} ${tails.length === 1 ? 'tail' : 'tails'} of ${even ? '' : 'on average '}`;
  const pins = `${tails.length === 1 ? 'half ' : ''}pins of `;
  const thinner = pinBoard.thickness < wish.pinBoard ? say`, pin board ${mm(pinBoard.thickness)}` : [];
  const own = kindOf(joint).lengths.flatMap(({ word, of }) => say`, ${word} ${mm(of(joint))}`);
  return say`${count}${mm(meanTail(joint))}, ${pins}${mm(meanPin(joint))}, slope ${formatSlope(slope)}${own}${thinner}`;
};
