import { describe, expect, it } from 'vitest';
import type { Mark } from '../../../src/drawing/drawing.ts';
import { type Label, SMALL } from '../../../src/sheets/template/lettering.ts';
import { scaleBar } from '../../../src/sheets/template/scaleBar.ts';

/** Where each wording's lines run from and to along it, in mm, and what is written beside it. */
const barsOf = (fact: Label, turn: 0 | 90) =>
  fact.map((wording) => {
    const marks = wording.marks([10, 20], SMALL, turn);
    const points = marks.flatMap((mark: Mark) =>
      mark.kind === 'stroke' ? mark.paths.flatMap((path) => path.points) : [],
    );
    const along = points.map(([x, y]) => (turn === 0 ? x - 10 : y - 20));
    return {
      from: Math.min(...along),
      to: Math.max(...along),
      ticks: new Set(along.map((at) => at.toFixed(6))).size,
      text: marks.flatMap((mark: Mark) => (mark.kind === 'text' ? [mark.text] : [])).join(),
    };
  });

describe('scaleBar', () => {
  it('is 50, 20 or 10 mm long to the last bit, with ticks between', () => {
    for (const turn of [0, 90] as const)
      expect(barsOf(scaleBar('mm'), turn)).toEqual([
        { from: 0, to: 50, ticks: 6, text: '50 mm' },
        { from: 0, to: 20, ticks: 3, text: '20 mm' },
        { from: 0, to: 10, ticks: 3, text: '10 mm' },
      ]);
  });

  it('is two, one or half an inch long where the maker reads in inches', () => {
    // The inch of 1959: 25.4 mm.
    for (const turn of [0, 90] as const)
      expect(barsOf(scaleBar('in'), turn)).toEqual([
        { from: 0, to: expect.closeTo(50.8, 12), ticks: 5, text: '2"' },
        { from: 0, to: expect.closeTo(25.4, 12), ticks: 3, text: '1"' },
        { from: 0, to: expect.closeTo(12.7, 12), ticks: 3, text: '½"' },
      ]);
  });

  it('is as wide as its width states', () => {
    for (const wording of scaleBar('mm')) {
      const [bar = 0] = barsOf([wording], 0).map(({ to }) => to);
      // A gap and the words come after the bar.
      expect(wording.width(SMALL)).toBeGreaterThan(bar + 10);
      expect(wording.width(SMALL)).toBeLessThan(bar + 12.5);
    }
  });
});
