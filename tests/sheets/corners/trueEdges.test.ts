import { describe, expect, it } from 'vitest';
import { trueEdges } from '../../../src/sheets/corners/trueEdges.ts';
import { box, written } from './blocks.ts';

describe('the edges of a solid', () => {
  it('are the twelve of a box', () => {
    expect(trueEdges([box([0, 0, 0], [1, 2, 3])])).toHaveLength(12);
  });

  it('leave out the seams between boxes side by side, however many', () => {
    const whole = box([0, 0, 0], [3, 1, 1]);
    const parts = [box([0, 0, 0], [1, 1, 1]), box([1, 0, 0], [3, 1, 1])];
    const quarters = [0, 1].flatMap((y) => [0, 1].map((z) => box([0, y, z], [3, y + 1, z + 1])));
    expect(trueEdges(parts)).toHaveLength(12 + 4);
    expect(written(trueEdges(parts).filter(([a, b]) => a[0] === b[0]))).toEqual(
      written(trueEdges([whole]).filter(([a, b]) => a[0] === b[0])),
    );
    expect(
      trueEdges(quarters).every(([a, b]) => !(a[1] === 1 && b[1] === 1 && a[2] === 1 && b[2] === 1)),
    ).toBe(true);
  });

  it('have the line at which a box stands on another', () => {
    const edges = trueEdges([box([0, 0, 0], [3, 3, 1]), box([1, 1, 1], [2, 2, 2])]);
    expect(edges).toHaveLength(12 + 12);
    expect(written(edges)).toContain('1 1 1 - 1 2 1');
  });

  it('have no line where the box stands flush with the side of the other', () => {
    const edges = trueEdges([box([0, 0, 0], [3, 3, 1]), box([1, 0, 1], [2, 1, 2])]);
    expect(written(edges)).not.toContain('1 0 1 - 2 0 1');
    expect(written(edges)).toContain('1 1 1 - 2 1 1');
    // The lower one's edge there is in two parts.
    expect(written(edges)).toEqual(expect.arrayContaining(['0 0 1 - 1 0 1', '2 0 1 - 3 0 1']));
  });
});
