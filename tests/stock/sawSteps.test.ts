import { describe, expect, it } from 'vitest';
import type { Plank } from '../../src/stock/plank.ts';
import { sawSteps } from '../../src/stock/sawSteps.ts';

const board: Plank = {
  name: 'Ash',
  copy: 1,
  stocks: ['side'],
  thickness: 16,
  // Its ends are askew: the left one at 0 to 30, the right one at 1000 to 980.
  outline: [
    [0, 0],
    [1000, 0],
    [980, 200],
    [30, 200],
  ],
  defects: [],
  clean: { left: false, right: false },
  keep: false,
};

describe('the saw cuts of a board', () => {
  it('are measured from what is there, and from what is sawn where something is', () => {
    const steps = sawSteps(
      board,
      [
        { kind: 'crosscut', piece: 0, at: 37 },
        { kind: 'crosscut', piece: 2, at: 540 },
        { kind: 'rip', piece: 3, at: 90 },
        { kind: 'rip', piece: 6, at: 180 },
        { kind: 'crosscut', piece: 4, at: 900 },
      ],
      3,
    );
    expect(steps).toEqual([
      // Nothing is sawn yet: from the furthest place of the left end.
      { kind: 'crosscut', piece: 0, from: 'left end', measure: 37, leaves: [1, 2] },
      { kind: 'crosscut', piece: 2, from: 'left end', measure: 500, leaves: [3, 4] },
      { kind: 'rip', piece: 3, from: 'lower edge', measure: 90, leaves: [5, 6] },
      // What is above the first rip starts at its saw cut.
      { kind: 'rip', piece: 6, from: 'lower edge', measure: 87, leaves: [7, 8] },
      { kind: 'crosscut', piece: 4, from: 'left end', measure: 357, leaves: [9, 10] },
    ]);
  });

  it('are measured from the right where the saw has been there, and not at the left', () => {
    const steps = sawSteps(
      board,
      [
        { kind: 'crosscut', piece: 0, at: 900 },
        { kind: 'crosscut', piece: 1, at: 500 },
      ],
      3,
    );
    expect(steps[1]).toMatchObject({ from: 'right end', measure: 900 - 503 });
  });

  it('leave nothing where there is no wood', () => {
    const [first] = sawSteps(board, [{ kind: 'rip', piece: 0, at: 198 }], 3);
    expect(first?.leaves).toEqual([1, undefined]);
  });
});
