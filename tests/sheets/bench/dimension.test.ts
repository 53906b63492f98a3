import { describe, expect, it } from 'vitest';
import { dimension } from '../../../src/sheets/bench/dimension.ts';
import { sheetFaults } from '../sheetFaults.ts';

const BOX = { x0: -50, y0: -50, x1: 150, y1: 150 };
const text = (number: string) => [{ text: number, size: 5, weight: 'bold' as const }];

describe('a dimension', () => {
  it('reaches with its arrows from edge to edge, its text over the middle of its line', () => {
    const marks = dimension({ way: 'level', from: 10, to: 90, edge: 0, line: -8, text: text('279') });
    const tips = marks.flatMap((mark) =>
      mark.kind === 'fill' ? mark.paths.map(({ points }) => points[0]) : [],
    );
    expect(tips).toEqual([
      [10, -8],
      [90, -8],
    ]);
    const [label] = marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
    expect(label?.turn).toBe(0);
    expect(label?.at[1]).toBeGreaterThan(-8);
    expect(sheetFaults({ box: BOX, marks })).toEqual([]);
  });

  it('reads from the right where it is upright', () => {
    const marks = dimension({ way: 'upright', from: 10, to: 90, edge: 0, line: -5, text: text('408') });
    const [label] = marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
    expect(label?.turn).toBe(90);
    expect(label?.at[0]).toBeLessThan(-5);
    expect(sheetFaults({ box: BOX, marks })).toEqual([]);
  });

  it('breaks its extension lines where the text is longer than what it measures', () => {
    for (const way of ['level', 'upright'] as const) {
      const marks = dimension({ way, from: 10, to: 22, edge: 0, line: -8, text: text('15 55/64') });
      expect(sheetFaults({ box: BOX, marks })).toEqual([]);
    }
  });
});
