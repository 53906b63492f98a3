import { signedArea } from '../../stock/polygon.ts';
import type { BrokenOut } from './brokenOut.ts';

/** How well boards were used. Areas in mm², volumes in mm³. */
export interface WoodUsed {
  /** Boards cut into. */
  readonly used: number;
  /** The area of blanks by that of the boards cut into, 0 to 1. */
  readonly yield: number;
  /** Of all boards, of those cut into, and of the blanks, at the boards' thickness. */
  readonly volume: { readonly all: number; readonly used: number; readonly blanks: number };
  /** Number and area of offcuts worth keeping. */
  readonly offcuts: { readonly count: number; readonly area: number };
}

/** What became of the wood. */
export const woodUsed = ({ planks, breakout: { boards } }: BrokenOut): WoodUsed => {
  const sum = (sizes: readonly number[]) => sizes.reduce((total, size) => total + size, 0);
  const cut = boards.flatMap(({ plank, blanks }) => {
    const board = planks[plank];
    return board === undefined
      ? []
      : [
          {
            thickness: board.thickness,
            area: signedArea(board.outline),
            blanks: sum(blanks.map(({ length, width }) => length * width)),
          },
        ];
  });
  const area = sum(cut.map((board) => board.area));
  const offcuts = boards.flatMap((board) => board.offcuts);
  return {
    used: boards.length,
    yield: area === 0 ? 0 : sum(cut.map((board) => board.blanks)) / area,
    volume: {
      all: sum(planks.map(({ thickness, outline }) => thickness * signedArea(outline))),
      used: sum(cut.map((board) => board.thickness * board.area)),
      blanks: sum(cut.map((board) => board.thickness * board.blanks)),
    },
    offcuts: { count: offcuts.length, area: sum(offcuts.map(({ length, width }) => length * width)) },
  };
};
