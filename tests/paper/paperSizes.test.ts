import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ISO_PAPERS, mediaName, parsePaper } from '../../src/paper/paperSizes.ts';
import { speak } from '../../src/units/phrase.ts';
import { value } from '../value.ts';

const sizeOf = (text: string): [number, number] | string => {
  const paper = parsePaper(text);
  if (paper.ok) return [Number(paper.value.width.toFixed(6)), Number(paper.value.height.toFixed(6))];
  return paper.complaints.map(({ says }) => speak(says, 'mm')).join('; ');
};

describe('known papers', () => {
  test('A sizes are those of ISO 216: A0 holds a square metre, and each is the one before halved, rounded down', () => {
    const sizes = [...ISO_PAPERS].reverse();
    expect(sizes.map(({ name }) => name)).toEqual(['A0', 'A1', 'A2', 'A3', 'A4', 'A5']);
    expect([sizes[0]?.width, sizes[0]?.height]).toEqual([841, 1189]);
    sizes.slice(1).forEach((paper, i) => {
      expect(paper.height).toBe(sizes[i]?.width);
      expect(paper.width).toBe(Math.floor((sizes[i]?.height ?? 0) / 2));
    });
  });

  test('Letter, Legal and Tabloid are those of ANSI, in inches', () => {
    expect(sizeOf('Letter')).toEqual([215.9, 279.4]);
    expect(sizeOf('Legal')).toEqual([215.9, 355.6]);
    expect(sizeOf('Tabloid')).toEqual([279.4, 431.8]);
  });

  test('names are read in any case', () => {
    expect(sizeOf(' a4 ')).toEqual([210, 297]);
    expect(sizeOf('LETTER')).toEqual([215.9, 279.4]);
  });

  test('a size that has a name gets it', () => {
    const paper = parsePaper('8.5 x 11 in');
    expect(paper.ok && paper.value.name).toBe('Letter');
  });
});

describe('other sizes', () => {
  test.each([
    ['610x914', 610, 914],
    ['610 x 914 mm', 610, 914],
    ['24x36in', 609.6, 914.4],
    ['8.5inx13in', 215.9, 330.2],
    ['8 1/2 x 13"', 215.9, 330.2],
    ['61 × 91.4 cm', 610, 914],
    ['297X210', 297, 210],
  ])('%s is read', (text, width, height) => {
    expect(sizeOf(text)).toEqual([width, height]);
  });

  test('a roll has a width, and a length as needed', () => {
    const paper = parsePaper('610xroll');
    expect(paper).toEqual({ ok: true, value: { name: '610xroll', width: 610, height: 5000, roll: true } });
    const inches = parsePaper('24in roll');
    expect(inches.ok && inches.value.name).toBe('609.6xroll');
  });

  test('the name of a size is read as that size', () => {
    const side = fc.integer({ min: 9000, max: 500000 }).map((hundredths) => hundredths / 100);
    fc.assert(
      fc.property(side, side, (width, height) => {
        const paper = value(parsePaper(`${width}x${height}`));
        expect(value(parsePaper(paper.name))).toEqual(paper);
      }),
    );
  });
});

describe('what is not a paper', () => {
  test('a side outside 90 to 5000 mm is refused with the range, each side for itself', () => {
    expect(sizeOf('24x36')).toBe(
      "the paper's width is 24 mm; it must be 90 mm to 5000 mm; the paper's height is 36 mm; it must be 90 mm to 5000 mm",
    );
    expect(sizeOf('89.9xroll')).toBe("the paper's width is 89.9 mm; it must be 90 mm to 5000 mm");
  });

  test.each(['A7', 'x', '210x', '210x297x3', 'xroll', 'letterx', '-210x297', ''])(
    'nonsense such as %j is refused, and the known names are listed',
    (text) => {
      expect(sizeOf(text)).toMatch(/Letter, Legal, Tabloid|must be 90 mm/u);
    },
  );

  test('any text gets an answer', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const paper = parsePaper(text);
        expect(paper.ok ? paper.value.width : paper.complaints.length).toBeGreaterThan(0);
      }),
    );
  });
});

// PWG 5101.1, Media Standardized Names, and lp(1) of CUPS for sizes without a name: from memory.
test('print queues are asked for standard names, or for a size', () => {
  expect(mediaName({ width: 210, height: 297 })).toBe('iso_a4_210x297mm');
  expect(mediaName({ width: 215.9, height: 279.4 })).toBe('na_letter_8.5x11in');
  expect(mediaName({ width: 610, height: 913.456 })).toBe('Custom.610x913.46mm');
});
