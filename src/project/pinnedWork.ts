import { blankName, plankName } from '../drawer/blanks/blankWords.ts';
import type { PinSpec } from '../drawer/blanks/boardSpec.ts';
import { pinFaultWords } from '../drawer/blanks/pinWords.ts';
import type { StockWork } from '../drawer/blanks/stockWork.ts';
import { closestWord } from '../plan/check/editDistance.ts';
import { pinFaults } from '../stock/pins/pinFaults.ts';
import type { Pin, Saw } from '../stock/wanted.ts';
import { accept, type Complaint, type Place, type Result, refuse } from '../units/complaint.ts';
import { listNames } from '../units/listNames.ts';
import { nameKey } from '../units/name.ts';
import { say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';

const PINNED: Place = ['breakout', 'pinned'];

/**
 * A plan's boards and blanks, with the blanks pinned that it pins. What has been cut already needs no pin.
 * @returns a complaint at each pin that names no part or no board, names one twice, or cannot be honoured
 */
export const withPins = (work: StockWork, specs: readonly PinSpec[], saw: Saw): Result<StockWork> => {
  if (specs.length === 0) return accept(work);
  const { planks, blanks } = work;
  const partNames = blanks.map(blankName);
  const plankNames = planks.map((plank) => plankName(plank, planks));
  const wrong: Complaint[] = [];
  const pins = new Map<number, Pin>();
  const placeOf = new Map<number, Place>();
  specs.forEach(({ part, board, at, turned, across }, i) => {
    const place: Place = [...PINNED, i];
    const own = (index: number) => nameKey(partNames[index] ?? '') === nameKey(part);
    const found = blanks.findIndex((_, index) => own(index) && !placeOf.has(index));
    const plank = plankNames.findIndex((name) => nameKey(name) === nameKey(board));
    if (found < 0) wrong.push({ at: [...place, 'part'], ...noPart(part, partNames) });
    else placeOf.set(found, place);
    if (plank < 0) wrong.push({ at: [...place, 'board'], ...noBoard(board, plankNames) });
    const lies = Object.entries({ turned, across }).filter(([, value]) => value !== undefined);
    if (at === undefined)
      for (const [key] of lies)
        wrong.push({
          at: [...place, key],
          says: say`${key} is for a part at a given place, and this has none`,
          remedy: say`give its lower left corner as at, or remove ${key}`,
        });
    if (found < 0 || plank < 0) return;
    pins.set(found, {
      plank,
      ...(at && { place: { x: at[0], y: at[1], turned: turned === true, across: across === true } }),
    });
  });
  planks.forEach(({ done }, index) => {
    for (const { wanted } of done?.blanks ?? []) {
      const pin = pins.get(wanted);
      if (pin !== undefined && pin.plank !== index)
        wrong.push({
          at: placeOf.get(wanted) ?? PINNED,
          says: say`${partNames[wanted] ?? ''} has been cut already, out of ${quote(plankNames[index] ?? '')}`,
          remedy: say`remove its pin`,
        });
      pins.delete(wanted);
    }
  });
  const pinned = blanks.map((blank, i) => {
    const pin = pins.get(i);
    return pin === undefined ? blank : { ...blank, pin };
  });
  for (const [index, fault] of pinFaults(planks, pinned, saw, [...pins.keys()])) {
    const blank = pinned[index];
    const plank = planks[blank?.pin?.plank ?? -1];
    if (blank === undefined || plank === undefined) continue;
    wrong.push({
      at: placeOf.get(index) ?? PINNED,
      says: say`${blankName(blank)} ${pinFaultWords(fault, plank, blank, blanks)}`,
      remedy: say`pin it elsewhere, or remove its pin`,
    });
  }
  return wrong.length > 0
    ? refuse(...wrong)
    : accept({ ...work, blanks: pinned, pinned: [...placeOf.keys()] });
};

type Wrong = Omit<Complaint, 'at'>;

const noPart = (part: string, names: readonly string[]): Wrong => {
  if (names.some((name) => nameKey(name) === nameKey(part)))
    return { says: say`${part} is pinned already`, remedy: say`remove one of its pins` };
  const words = (text: string) => text.toLowerCase().split(/[\s,]+/u);
  const meant =
    closestWord(part, names) ?? names.find((name) => words(part).every((word) => words(name).includes(word)));
  return {
    says: say`${quote(part)} is no part that comes out of these boards; there are ${listNames(names)}`,
    ...(meant !== undefined && { hint: say`${meant}` }),
  };
};

const noBoard = (board: string, names: readonly string[]): Wrong => {
  const meant =
    closestWord(board, names) ?? names.find((name) => nameKey(name).startsWith(`${nameKey(board)}no.`));
  return {
    says: say`${quote(board)} is no board of this plan; there are ${listNames(names)}`,
    ...(meant !== undefined && { hint: say`${meant}` }),
  };
};
