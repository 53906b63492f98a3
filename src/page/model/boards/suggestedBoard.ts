import { roughThickness, roughWidth, stockOf } from '../../../drawer/cuttingList.ts';
import { parts } from '../../../drawer/partsList.ts';
import type { Project } from '../../../project/project.ts';
import type { StockName } from '../../../stock/plank.ts';
import { unitOf } from '../../../units/notation.ts';
import { MM_PER_INCH } from '../../../units/unit.ts';
import type { NewBoard } from './boardEdits.ts';

/** What boards are commonly measured by, and a usual length and width, in mm. */
const USUAL = {
  mm: { thickness: 1, width: 10, least: 200, length: 2000 },
  in: {
    thickness: MM_PER_INCH / 8,
    width: MM_PER_INCH / 2,
    least: 8 * MM_PER_INCH,
    length: 80 * MM_PER_INCH,
  },
};

/** A board to begin with, thick and wide enough for every part of its stocks. */
export const suggestedBoard = ({ set, sawing, units }: Project, stocks: readonly StockName[]): NewBoard => {
  const usual = USUAL[unitOf(units)];
  const needed = parts(set, units).filter(({ part }) => stocks.includes(stockOf(part)));
  const up = (value: number, step: number): number => Math.ceil(value / step - 1e-9) * step;
  const thickest = Math.max(usual.thickness, ...needed.map((part) => roughThickness(part, sawing)));
  const widest = Math.max(usual.least, ...needed.map((part) => roughWidth(part, sawing)));
  return {
    stocks,
    thickness: up(thickest, usual.thickness),
    length: usual.length,
    width: up(widest, usual.width),
  };
};
