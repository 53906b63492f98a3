import { type Complaint, type Place, under } from '../units/complaint.ts';
import { type Phrase, say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';

/** What is said of one drawer, its place in the drawer's entry. */
export interface DrawerComplaint {
  readonly name: string;
  /** The drawer's entry in the plan. */
  readonly entry: Place;
  readonly complaint: Complaint;
}

/** What is said of several drawers in the same words, together. */
const gathered = (said: readonly DrawerComplaint[]): DrawerComplaint[][] => {
  const alike = new Map<string, DrawerComplaint[]>();
  for (const each of said) {
    const key = JSON.stringify(each.complaint);
    const group = alike.get(key);
    if (group === undefined) alike.set(key, [each]);
    else group.push(each);
  }
  return [...alike.values()];
};

/** Complaints that are of no drawer, whoever gives rise to them: each once. */
export const saidOnce = (said: readonly DrawerComplaint[]): Complaint[] =>
  gathered(said).flatMap(([first]) => first?.complaint ?? []);

/** Complaints from the plan's top, each naming its drawer; what is said of several in the same words is said once, of all. */
export const mergeComplaints = (said: readonly DrawerComplaint[]): Complaint[] =>
  gathered(said).flatMap((group) => {
    const [first, ...others] = group.flatMap(({ entry, complaint }) => under(entry, [complaint]));
    if (first === undefined) return [];
    const also = others.map(({ at }) => at);
    return [
      {
        ...first,
        says: say`${namesOf(group)}: ${first.says}`,
        ...(also.length > 0 && { also }),
      },
    ];
  });

const namesOf = (group: readonly DrawerComplaint[]): Phrase => {
  const names = group.map(({ name }) => quote(name));
  const last = names.pop() ?? '';
  return names.length === 0 ? say`${last}` : say`${names.join(', ')} and ${last}`;
};
