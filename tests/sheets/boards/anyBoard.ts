import fc from 'fast-check';
import type { PartBlank } from '../../../src/drawer/blanks/partBlanks.ts';
import type { BoardView } from '../../../src/sheets/boards/boardView.ts';
import type { Defect, DefectKind, Plank } from '../../../src/stock/plank.ts';
import { shareArea } from '../../../src/stock/polygon.ts';
import { breakOut } from '../../../src/stock/search/breakOut.ts';
import { gradedPlank, numbers, rectangle, SAW, want } from '../../stock/randomBoards.ts';

const KINDS: readonly DefectKind[] = [
  ...(['sound knot', 'loose knot', 'check', 'shake', 'wane'] as const),
  ...(['sapwood', 'pith', 'wormhole', 'stain'] as const),
];

/** A front of a drawer as it is sawn: 25 mm of each end are joint and clear wood. */
export const blank = (length: number, width: number, more: Partial<PartBlank> = {}): PartBlank => ({
  ...want(length, width),
  drawer: 'Buttons',
  part: 'front',
  index: 1,
  finished: 20,
  zones: [
    { from: [0, 0], to: [25, width] },
    { from: [length - 25, 0], to: [length, width] },
  ],
  ...more,
});

/** Names of one letter and of many, and a script without blanks. */
const NAMES = ['X', 'Buttons', 'W'.repeat(80), 'Ausgleichsgewindebohrer und Feilen, große', '縫い糸とボタン'];

/** A board with many defects, which may slope or hang over its edges, and what the engine cuts from it. */
export const boardOf = (seed: number): BoardView => {
  const random = numbers(seed * 7919);
  const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)] as T;
  const between = (least: number, most: number) => Math.round(least + random() * (most - least));
  const graded = gradedPlank(random, pick(['selects', 'common1', 'common2'] as const), {
    sloping: random() < 0.5,
  });
  const more: Defect[] = Array.from({ length: between(0, 12) }, () => ({
    kind: pick(KINDS),
    outline: rectangle(between(-60, 2400), between(-20, 250), between(1, 400), between(1, 60)),
  }));
  const plank: Plank = {
    ...graded,
    name: pick(NAMES),
    defects: [...graded.defects, ...more.filter(({ outline }) => shareArea(graded.outline, outline))],
  };
  const part = pick(['front', 'side', 'back', 'slip'] as const);
  const blanks = Array.from({ length: between(1, 9) }, (_, i) =>
    blank(between(60, 620), between(14, 120), {
      drawer: pick(NAMES),
      part,
      index: i + 1,
      allows: random() < 0.5 ? ['sound knot', 'sapwood'] : [],
    }),
  );
  const { boards } = breakOut([plank], blanks, [], SAW, { effort: 0.1 });
  const [layout] = boards;
  return { plank, layout: layout ?? { blanks: [], cuts: [], offcuts: [] }, kerf: SAW.kerf, blanks };
};

/** Boards are slow to break out, so there are few of them. */
const BOARDS = Array.from({ length: 10 }, (_, i) => boardOf(i + 1));

export const anyBoard: fc.Arbitrary<BoardView> = fc.constantFrom(...BOARDS);
