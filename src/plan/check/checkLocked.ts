import { isTail, widthNames } from '../../joint/widthName.ts';
import type { Complaint, Place } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { areListed, type WrittenJoint } from '../schema/planSchema.ts';

/** Locks on widths that a corner does not have, or that are not listed beside them and so would not hold. */
export const checkLocked = ({ tails, pins, halfPin, locked = [] }: WrittenJoint, at: Place): Complaint[] => {
  if (locked.length === 0) return [];
  if (!areListed(tails))
    return [
      {
        at: [...at, 'locked'],
        says: say`widths are locked, but the tails are not listed, so they follow from the board`,
        remedy: say`list the tails, or remove the locks`,
      },
    ];
  const names = widthNames(tails.lengths.length);
  return locked.flatMap((name, i): Complaint[] => {
    const number = names.indexOf(name);
    const place = [...at, 'locked', i];
    if (number < 0)
      return [
        {
          at: place,
          says: say`${quote(name)} is no width of this corner; they are ${inShort(tails.lengths.length)}`,
        },
      ];
    if (isTail(number)) return [];
    if (number === 0 || number === names.length - 1)
      return halfPin === undefined
        ? [
            {
              at: place,
              says: say`the ${name} is locked, but its width is not given`,
              remedy: say`give the half pins beside it: halfPin: [6mm, 6mm]`,
            },
          ]
        : [];
    return pins === undefined
      ? [
          {
            at: place,
            says: say`${name} is locked, but the pins are not listed`,
            remedy: say`list the pins between the tails, or remove the lock`,
          },
        ]
      : [];
  });
};

/** `lower half pin, tail 1 to tail 3, pin 1 to pin 2, upper half pin` */
const inShort = (tails: number): string => {
  const range = (what: string, count: number): string[] => {
    if (count < 1) return [];
    return [count === 1 ? `${what} 1` : `${what} 1 to ${what} ${count}`];
  };
  return ['lower half pin', ...range('tail', tails), ...range('pin', tails - 1), 'upper half pin'].join(', ');
};
