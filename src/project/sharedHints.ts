import type { Complaint } from '../units/complaint.ts';
import type { LengthWord, Phrase } from '../units/phrase.ts';

/** A bound whose side is known. */
type Bound = LengthWord & Required<Pick<LengthWord, 'right'>>;

interface Told {
  readonly complaint: Complaint;
}

const isBound = (word: Phrase[number] | undefined): word is Bound =>
  typeof word === 'object' && word.right !== undefined;

/** The bound in a hint. A number alone is a number of tails, of which fewer are right too. */
const boundOf = (hint: Phrase | undefined): Bound | undefined =>
  hint?.find(isBound) ?? (isCount(hint) ? { mm: Number(hint.join('')), right: 'below' } : undefined);

const isCount = (hint: Phrase | undefined): hint is readonly string[] => /^\d+$/u.test(hint?.join('') ?? '');

/**
 * Hints for one key that several drawers complain of, each with its own bound: all are given the bound that works for
 * every drawer.
 */
export const sharedHints = <T extends Told>(complaints: readonly T[]): T[] => {
  const strictest = new Map<string, Bound>();
  const keyOf = ({ complaint: { at } }: Told, { right }: Bound): string => JSON.stringify([at, right]);
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
      complaint: {
        ...each.complaint,
        hint: isCount(hint) ? [String(shared.mm)] : hint.map((word) => (word === bound ? shared : word)),
      },
    };
  });
};
