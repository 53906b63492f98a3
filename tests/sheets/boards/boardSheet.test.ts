import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boardSheet, boardSheetDrawing } from '../../../src/sheets/boards/boardSheet.ts';
import type { BoardView } from '../../../src/sheets/boards/boardView.ts';
import { AREAS } from '../anyDrawer.ts';
import { sheetFaults, textsOf, wordsOf } from '../sheetFaults.ts';
import { anyBoard } from './anyBoard.ts';

const options = (view: BoardView) => ({ title: 'Chest', planks: [view.plank], units: 'mm' as const });
const spoken = (text: string) => text.replaceAll('\u00A0', ' ');

describe('a board sheet', () => {
  it('can be read on any paper, whatever the board', () => {
    fc.assert(
      fc.property(
        anyBoard,
        fc.constantFrom(...Object.values(AREAS)),
        fc.constantFrom('mm' as const, 'in' as const),
        (view, area, units) => {
          const pages = boardSheet(view, { ...options(view), units, area });
          for (const page of pages) expect(sheetFaults(page)).toEqual([]);
          const text = spoken(pages.map(wordsOf).join(' '));
          expect(text).toContain('Chest: board sheet');
          for (const [i] of view.layout.cuts.entries()) expect(text).toContain(` ${i + 1} `);
        },
      ),
      { numRuns: 30 },
    );
  });

  it('is one drawing as SVG, as high as it needs', () => {
    fc.assert(
      fc.property(anyBoard, (view) => {
        const drawing = boardSheetDrawing(view, { ...options(view), area: AREAS.A4 });
        expect(sheetFaults(drawing)).toEqual([]);
        const lowest = Math.min(...textsOf(drawing).map(({ at }) => at[1]));
        expect(lowest).toBeGreaterThan(drawing.box.y0);
        expect(lowest).toBeLessThan(drawing.box.y0 + 10);
      }),
      { numRuns: 10 },
    );
  });

  it('says from where to where each letter is written, and measures every cut from what is there', () => {
    fc.assert(
      fc.property(anyBoard, (view) => {
        const text = spoken(
          boardSheet(view, { ...options(view), area: AREAS.A3 })
            .map(wordsOf)
            .join(' '),
        );
        for (const { x, length } of view.layout.blanks) expect(text).toContain(`${x} to ${x + length}`);
        expect(
          text.match(/(?:crosscut|rip), from the (?:left|right) end|rip, from the/gu) ?? [],
        ).toHaveLength(view.layout.cuts.length);
      }),
      { numRuns: 10 },
    );
  });
});
