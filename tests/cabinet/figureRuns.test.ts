import { describe, expect, it } from 'vitest';
import { figureRuns } from '../../src/cabinet/figureRuns.ts';
import type { CabinetOpening } from '../../src/cabinet/openings.ts';

const at = (name: string, x: number, y: number, width: number, height: number): CabinetOpening => ({
  name,
  row: 1,
  column: 1,
  x,
  y,
  width,
  height,
  depth: 400,
});

/** A wide drawer under two narrow ones, and over them a tall one beside two low ones. */
const CHEST = [
  at('Buttons', 0, 210, 95, 90),
  at('Thread', 105, 260, 95, 40),
  at('Ribbon', 105, 210, 95, 40),
  at('Patches', 0, 110, 95, 90),
  at('Patches', 105, 110, 95, 90),
  at('Cloth', 0, 0, 200, 100),
];

describe('figureRuns', () => {
  it('runs rows from left to right, where fronts are of one height', () => {
    expect(figureRuns(CHEST, 'rows')).toEqual([['Patches', 'Patches']]);
  });

  it('runs stacks from the bottom up, where fronts are of one width', () => {
    expect(figureRuns(CHEST, 'stacks')).toEqual([
      ['Patches', 'Buttons'],
      ['Patches', 'Ribbon', 'Thread'],
    ]);
  });

  it('does not run on past another drawer', () => {
    const parted = [at('Buttons', 0, 200, 95, 90), at('Cloth', 0, 100, 200, 90), at('Thread', 0, 0, 95, 90)];
    expect(figureRuns(parted, 'stacks')).toEqual([]);
    const beside = [at('Buttons', 0, 0, 50, 90), at('Cloth', 60, 0, 50, 100), at('Thread', 120, 0, 50, 90)];
    expect(figureRuns(beside, 'rows')).toEqual([]);
  });
});
