import { describe, expect, it } from 'vitest';
import type { Mark } from '../../../src/drawing/drawing.ts';
import { textWidth } from '../../../src/drawing/textWidth.ts';
import {
  type LabelArea,
  type Lettering,
  SMALL,
  setLettering,
  setTagLettering,
  tagLength,
  textLabel,
} from '../../../src/sheets/template/lettering.ts';

const lettering: Lettering = {
  name: [textLabel('bold', 'Buttons · left side', 'Butt… left side'), textLabel('bold', 'A')],
  about: [textLabel('regular', 'slope 1:8', '1:8'), textLabel('regular', 'quantity 2', 'qty 2')],
  place: [textLabel('regular', 'reference edge', 'edge'), textLabel('bold', 'INSIDE FACE', 'IN')],
};

const strip = (length: number, more: Partial<LabelArea> = {}): LabelArea => ({
  box: { x0: 0, x1: 12, y0: 0, y1: length },
  turn: 90,
  nameFirst: true,
  ...more,
});

/** The lines of a strip that runs upward, from the left, each from its beginning. */
const linesOf = (marks: readonly Mark[] | undefined): string[][] => {
  const lines = new Map<number, [number, string][]>();
  for (const mark of marks ?? [])
    if (mark.kind === 'text')
      lines.set(mark.at[0], [...(lines.get(mark.at[0]) ?? []), [mark.at[1], mark.text]]);
  return [...lines]
    .sort(([a], [b]) => a - b)
    .map(([, line]) => line.sort(([a], [b]) => a - b).map(([, text]) => text));
};

const sizesOf = (marks: readonly Mark[] | undefined): string[] => [
  ...new Set((marks ?? []).flatMap((mark) => (mark.kind === 'text' ? [mark.size.toFixed(2)] : []))),
];

describe('setLettering', () => {
  it('sets the name large and the rest beside it where there is room', () => {
    const marks = setLettering(strip(120), lettering);
    expect(linesOf(marks)).toEqual([
      ['Buttons · left side', 'A'],
      ['slope 1:8', 'quantity 2', 'reference edge', 'INSIDE FACE'],
    ]);
    expect(sizesOf(marks)).toEqual(['5.00', '3.29']);
  });

  it('keeps the name on the outer side: last where that side is last', () => {
    expect(linesOf(setLettering(strip(120, { nameFirst: false }), lettering))).toEqual([
      ['slope 1:8', 'quantity 2', 'reference edge', 'INSIDE FACE'],
      ['Buttons · left side', 'A'],
    ]);
  });

  it('sets three lines on a broad area', () => {
    const broad = { box: { x0: 0, x1: 20, y0: 0, y1: 120 } };
    const marks = setLettering(strip(120, broad), lettering);
    expect(linesOf(marks)).toEqual([
      ['Buttons · left side', 'A'],
      ['slope 1:8', 'quantity 2'],
      ['reference edge', 'INSIDE FACE'],
    ]);
    expect(sizesOf(marks)).toEqual(['5.00', '3.29']);
  });

  it('sets all small on three lines where two are too short', () => {
    const marks = setLettering(strip(60), lettering);
    expect(linesOf(marks)).toEqual([
      ['Buttons · left side', 'A'],
      ['slope 1:8', 'quantity 2'],
      ['reference edge', 'INSIDE FACE'],
    ]);
    expect(sizesOf(marks)).toEqual(['3.29']);
  });

  it('sets shorter wordings on a short area, but omits no label', () => {
    const lines = linesOf(setLettering(strip(31), lettering)).flat();
    expect(lines.sort()).toEqual(['1:8', 'A', 'Butt… left side', 'IN', 'edge', 'qty 2']);
  });

  it('keeps the name and its letter on one line where it can, and skips wordings that save nothing', () => {
    const wide: Lettering = {
      name: [
        textLabel('bold', 'Buttons, Thread · left side', 'Buttons, Thread · left side', 'Butt… left side'),
        textLabel('bold', 'A'),
      ],
      about: [textLabel('regular', 'front end'), textLabel('regular', 'slope 1:8', '1:8')],
      place: [textLabel('regular', 'reference edge', 'edge'), textLabel('bold', 'INSIDE FACE', 'INSIDE')],
    };
    // As long as the name, so the letter beside it has no room.
    const length = 2 + 5 / 4 + textWidth('Buttons, Thread · left side', SMALL, 'bold');
    const lines = linesOf(setLettering(strip(length), wide));
    expect(lines.find((line) => line.includes('A'))).toEqual(['Butt… left side', 'A']);
    const roomy = linesOf(setLettering(strip(length + 10), wide));
    expect(roomy.find((line) => line.includes('A'))).toEqual(['Buttons, Thread · left side', 'A']);
  });

  it('sets nothing where even the shortest wordings do not fit, and continues in a further area where there is one', () => {
    expect(setLettering(strip(24), lettering)).toBeUndefined();
    const further = { box: { x0: 0, x1: 12, y0: 40, y1: 70 } };
    const marks = setLettering(strip(24), lettering, [strip(30, further)]);
    const heights = (marks ?? []).flatMap((mark) => (mark.kind === 'text' ? [mark.at[1]] : []));
    expect(heights).toHaveLength(6);
    expect(heights.some((y) => y < 24)).toBe(true);
    expect(heights.every((y) => y < 24 || y > 40)).toBe(true);
  });
});

describe('a tag', () => {
  const long = { ...lettering, name: [textLabel('bold', 'W'.repeat(80), 'W'.repeat(20))] };

  it('is as long as its breadth needs, all labels in full', () => {
    for (const breadth of [12, 24, 40]) {
      const length = tagLength(breadth, lettering);
      const area = { box: { x0: 0, x1: length, y0: 0, y1: breadth }, turn: 0 as const };
      const texts = setTagLettering(area, lettering).flatMap((mark) =>
        mark.kind === 'text' ? [mark.text] : [],
      );
      expect(texts.sort()).toEqual(
        ['A', 'Buttons · left side', 'INSIDE FACE', 'quantity 2', 'reference edge', 'slope 1:8'].sort(),
      );
    }
    expect(tagLength(12, lettering)).toBeGreaterThan(tagLength(24, lettering));
  });

  it('grows no longer than 80 mm for a long name, which is cut instead', () => {
    expect(tagLength(12, long)).toBe(80);
  });
});
