import { describe, expect, it } from 'vitest';
import {
  adviceWords,
  complaintWords,
  faultWords,
  fileFaultWords,
} from '../../../src/page/text/plainWords.ts';
import { readProject } from '../../../src/project/readProject.ts';
import { mm, say } from '../../../src/units/phrase.ts';
import { BOX, CHEST, snapshotOf } from '../chest.ts';

const { project } = snapshotOf(CHEST);
const words = (at: readonly (string | number)[], says = say`${mm(2)} is out of range`): string =>
  complaintWords({ at, says }, project);

describe('complaintWords', () => {
  it('says what of the plan a complaint is about, without its keys', () => {
    expect(words(['drawers', 2, 'joint', 'tails', 0])).toBe('Ribbon, tail 1: 2 mm is out of range');
    expect(words(['drawers', 0, 'opening', 'height'])).toBe('Buttons, opening, height: 2 mm is out of range');
    expect(words(['drawers', 0, 'back', 'joint', 'halfPin', 1])).toBe(
      'Buttons, back, upper half pin: 2 mm is out of range',
    );
    expect(words(['joint', 'lap'])).toBe('lap: 2 mm is out of range');
    expect(words(['stock', 'front', 'thickness'])).toBe('stock, front, thickness: 2 mm is out of range');
    expect(words([])).toBe('2 mm is out of range');
    expect(complaintWords({ at: ['joints', 0, 'tailBoard'], says: say`no` }, snapshotOf(BOX).project)).toBe(
      'Corner, tail board: no',
    );
  });

  it('says nothing twice', () => {
    expect(words(['back', 'drop'], say`"Buttons" and "Thread": no height is left`)).toBe(
      '"Buttons" and "Thread": no height is left',
    );
    expect(words(['joint', 'tails', 0], say`front corners: tail 1 is thin`)).toBe(
      'front corners: tail 1 is thin',
    );
  });
});

describe('adviceWords', () => {
  it('leaves out where in a plan a measure is written, and nothing else in brackets', () => {
    const complaint = {
      at: [],
      says: say`it is too low (changing only the pin is not enough)`,
      remedy: say`make the drop smaller (back.drop), or lower the groove (groove.offset)`,
    };
    expect(adviceWords(complaint, 'mm')).toBe(
      'it is too low (changing only the pin is not enough); make the drop smaller, or lower the groove',
    );
  });

  it('names the page’s button where the program names a command', () => {
    const reading = readProject('');
    expect(reading.ok ? [] : reading.complaints.map(({ complaint }) => adviceWords(complaint, 'mm'))).toEqual(
      ['the plan is empty; press New for a plan to begin with'],
    );
  });
});

describe('a fault of a text', () => {
  it('has its line in words, of a file its column too, and counts entries from one', () => {
    const reading = readProject(CHEST.replace('height: 110', 'height: 2'));
    const [fault] = reading.ok ? [] : reading.complaints;
    if (fault === undefined) throw new Error('it is valid');
    const told = 'drawer 3, opening, height: 2 mm is out of range; it must be 10 mm to 5000 mm';
    expect(faultWords(fault, 'mm')).toBe(`Line 21: ${told}`);
    expect(fileFaultWords(fault, 'mm')).toBe(`Line 21, column 52: ${told}`);
  });
});
