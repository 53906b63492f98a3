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
    expect(words(['stock', 'front', 'thickness'])).toBe('thickness, front: 2 mm is out of range');
    expect(words([])).toBe('2 mm is out of range');
    expect(complaintWords({ at: ['joints', 0, 'tailBoard'], says: say`no` }, snapshotOf(BOX).project)).toBe(
      'Corner, tail board: no',
    );
  });

  it('calls a field as it is called on the page', () => {
    expect(words(['fit', 'top'])).toBe('gap above: 2 mm is out of range');
    expect(words(['drawers', 2, 'fit', 'side'])).toBe('Ribbon, gap at each side: 2 mm is out of range');
    expect(words(['front', 'lip', 'top'])).toBe('lip above: 2 mm is out of range');
    expect(words(['groove', 'offset'])).toBe('groove, from edge: 2 mm is out of range');
    expect(words(['drawers', 0, 'size', 'depth'])).toBe('Buttons, drawer, depth: 2 mm is out of range');
    expect(words(['back', 'joint', 'shoulderWidth'])).toBe('back, shoulder: 2 mm is out of range');
    expect(words(['family', 'halfPins'])).toBe('look of the set, half pins: 2 mm is out of range');
    expect(words(['bottom', 'slips', 'width'])).toBe("slips' width: 2 mm is out of range");
    expect(words(['boards', 1, 'thickness'])).toBe('board 2, thickness: 2 mm is out of range');
  });

  it('says of no entry which it is in a list of the text', () => {
    expect(words(['drawers', 1, 'name'], say`"B" is the name of drawers[0] too`)).toBe(
      'Thread: "B" is the name of drawer 1 too',
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
  it('has its number of line in words, of a file what the line says, and counts entries from one', () => {
    const bad = CHEST.replace('height: 110', 'height: 2');
    const reading = readProject(bad);
    const [fault] = reading.ok ? [] : reading.complaints;
    if (fault === undefined) throw new Error('it is valid');
    const told = 'drawer 3, opening, height: 2 mm is out of range; it must be 10 mm to 5000 mm';
    expect(faultWords(fault, 'mm')).toBe(`Line 21: ${told}`);
    expect(fileFaultWords(fault, 'mm', bad)).toBe(`${told}, in "…height: 2, depth: 420}}"`);
  });

  it.each([
    ['groove:\n  ofset: 3\n', /groove, ofset: there is no such key here; .*, in "ofset: 3"$/u],
    ['drawers: [\n  {name: A', /, in "\{name: A"$/u],
    ['name: Chest\n', /the plan has no drawers, boxes or joints[^"]*$/u],
  ])('of a file, %j, is told by its place in words and the line, without its number', (text, words) => {
    const reading = readProject(text);
    const told = reading.ok ? '' : reading.complaints.map((each) => fileFaultWords(each, 'mm', text)).join();
    expect(told).toMatch(words);
    expect(told).not.toMatch(/line \d|column/iu);
  });
});
