import type { PlanComplaint } from '../plan/read/planComplaint.ts';
import type { LengthWord, Phrase } from '../units/phrase.ts';

/** A bound whose side is known. */
type Bound = LengthWord & Required<Pick<LengthWord, 'right'>>;

const isBound = (word: Phrase[number] | undefined): word is Bound =>
  typeof word === 'object' && word.right !== undefined;

const boundOf = (hint: Phrase | undefined): Bound | undefined => hint?.find(isBound);

/**
 * Hints for one key that several drawers complain of, each with its own bound: all are given the bound that works for
 * every drawer.
 */
export const sharedHints = (complaints: readonly PlanComplaint[]): PlanComplaint[] => {
  const strictest = new Map<string, Bound>();
  const keyOf = ({ complaint: { at } }: PlanComplaint, { right }: Bound): string =>
    JSON.stringify([at, right]);
  for (const each of complaints) {
    const bound = boundOf(each.complaint.hint);
    if (bound === undefined) continue;
    const key = keyOf(each, bound);
    const before = strictest.get(key);
    const stricter =
      before === undefined || (bound.right === 'below' ? bound.mm < before.mm : bound.mm > before.mm);
    if (stricter) strictest.set(key, bound);
  }
  return complaints.map((each) => {
    const { hint } = each.complaint;
    const bound = boundOf(hint);
    const shared = bound && strictest.get(keyOf(each, bound));
    if (hint === undefined || bound === undefined || shared === undefined) return each;
    return {
      ...each,
      complaint: { ...each.complaint, hint: hint.map((word) => (word === bound ? shared : word)) },
    };
  });
};
