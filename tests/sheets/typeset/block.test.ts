import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textWidth } from '../../../src/drawing/textWidth.ts';
import { beside, paragraph, rule, space, stack, type TextRun } from '../../../src/sheets/typeset/block.ts';
import { sheetFaults } from '../sheetFaults.ts';

const run = (text: string, size = 4): TextRun => ({ text, size, weight: 'regular' });

/** More than the widest letter of the sheets' fonts, in ems. */
const WIDEST = 3;

const linesOf = (block: { marks(left: number, top: number): readonly object[] }) =>
  block.marks(0, 0).flatMap((mark) => ('text' in mark ? [mark.text] : []));

describe('a paragraph', () => {
  it('breaks at spaces where its line would become too long', () => {
    const width = textWidth('saw on the waste', 4, 'regular') + 0.01;
    expect(linesOf(paragraph([run('saw on the waste side')], width))).toEqual(['saw on the waste', 'side']);
  });

  it('keeps a measure whole, and breaks it at its own spaces before it breaks a number', () => {
    expect(linesOf(paragraph([run('a 15\u00A055/64')], textWidth('15 55/64', 4, 'regular') + 0.01))).toEqual([
      'a',
      '15\u00A055/64',
    ]);
    expect(linesOf(paragraph([run('15\u00A055/64')], textWidth('55/64', 4, 'regular') + 0.01))).toEqual([
      '15',
      '55/64',
    ]);
  });

  it('breaks a word that no line can hold, but never between a letter and its accent', () => {
    // U+0323 joins no x into one character.
    expect(linesOf(paragraph([run('x\u0323x\u0323')], textWidth('x', 4, 'regular') * 1.5))).toEqual([
      'x\u0323',
      'x\u0323',
    ]);
  });

  it('sets sizes on one line on one baseline, a space apart, as high as the largest', () => {
    const block = paragraph([run('15', 6), run('+.007', 4)], 100);
    expect(block.height).toBeCloseTo(7.5, 12);
    const [first, second] = block.marks(10, 50).flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
    expect(second?.at[1]).toBe(first?.at[1]);
    expect(second?.at[0]).toBeCloseTo(10 + textWidth('15', 6, 'regular') + textWidth(' ', 4, 'regular'), 12);
  });

  it('is level with a larger word beside it', () => {
    const [small] = paragraph([run('gauge', 4)], 100, { strut: 6 }).marks(0, 0);
    const [large] = paragraph([run('15', 6)], 100).marks(0, 0);
    expect(small?.kind === 'text' && large?.kind === 'text' && small.at[1] === large.at[1]).toBe(true);
  });

  it('is aligned right on request', () => {
    const [mark] = paragraph([run('403')], 30, { anchor: 'end' }).marks(5, 0);
    expect(mark?.kind === 'text' && mark.at[0] + textWidth('403', 4, 'regular')).toBeCloseTo(35, 12);
  });

  it('keeps every text inside its width and its height, and loses no letter', () => {
    const texts = fc.array(
      fc.record({
        text: fc.string({ unit: 'grapheme', maxLength: 30 }),
        size: fc.constantFrom(3.3, 5, 9),
        weight: fc.constantFrom('regular' as const, 'bold' as const),
      }),
      { maxLength: 6 },
    );
    fc.assert(
      fc.property(texts, fc.double({ min: WIDEST * 9, max: 200, noNaN: true }), (runs, width) => {
        const block = paragraph(runs, width);
        const marks = block.marks(0, block.height);
        const box = { x0: 0, y0: 0, x1: width, y1: block.height };
        expect(sheetFaults({ box, marks })).toEqual([]);
        const letters = (text: string) => text.replace(/[\s\u00A0]/gu, '');
        expect(letters(marks.map((mark) => (mark.kind === 'text' ? mark.text : '')).join(''))).toBe(
          letters(runs.map(({ text }) => text).join('')),
        );
      }),
      { numRuns: 200 },
    );
  });
});

describe('blocks', () => {
  it('are one below the other with a gap between, or side by side with their upper edges level', () => {
    const column = stack([paragraph([run('one')], 50), space(3), rule(50, 1)], 2);
    expect(column.height).toBe(5 + 3 + 2 + 2 * 2);
    const row = beside([
      [0, space(4)],
      [20, paragraph([run('two')], 50)],
    ]);
    expect(row.height).toBe(5);
    const [word] = row.marks(10, 0);
    expect(word?.kind === 'text' && word.at[0]).toBe(30);
    expect(stack([]).height).toBe(0);
  });
});
