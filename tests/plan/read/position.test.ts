import { describe, expect, it } from 'vitest';
import { positionsIn } from '../../../src/plan/read/position.ts';

describe('a position in a text', () => {
  it('counts lines and columns from 1', () => {
    const positionOf = positionsIn('name: x\nunits: mm\n');
    expect(positionOf(0)).toEqual({ line: 1, column: 1 });
    expect(positionOf(6)).toEqual({ line: 1, column: 7 });
    expect(positionOf(8)).toEqual({ line: 2, column: 1 });
    expect(positionOf(15)).toEqual({ line: 2, column: 8 });
  });

  it('counts a line end to its line, and what follows the last one as a line', () => {
    const positionOf = positionsIn('a\nb\n');
    expect(positionOf(1)).toEqual({ line: 1, column: 2 });
    expect(positionOf(4)).toEqual({ line: 3, column: 1 });
  });

  it('knows the line ends of every system', () => {
    const positionOf = positionsIn('a\r\nb\rc\nd');
    expect([0, 3, 5, 7].map((offset) => positionOf(offset).line)).toEqual([1, 2, 3, 4]);
  });
});
