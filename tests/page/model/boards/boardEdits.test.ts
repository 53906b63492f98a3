import { describe, expect, it } from 'vitest';
import {
  addBoard,
  boardsIn,
  removeBoard,
  setBoardCount,
  setBoardSizes,
  setStocks,
} from '../../../../src/page/model/boards/boardEdits.ts';
import type { BoardSizes } from '../../../../src/page/model/boards/boardShape.ts';
import {
  addDefect,
  removeDefect,
  setDefectBox,
  setDefectKind,
} from '../../../../src/page/model/boards/defectEdits.ts';
import { suggestedBoard } from '../../../../src/page/model/boards/suggestedBoard.ts';
import type { Snapshot } from '../../../../src/page/model/snapshot.ts';
import { openChest } from '../../../openChest.ts';
import { CHEST, inInches, snapshotOf } from '../../chest.ts';

const BOARDS = openChest('boards');
const chest = snapshotOf(BOARDS);

const madeBy = (result: ReturnType<typeof removeBoard>): string => {
  if (!result.ok) throw new Error(JSON.stringify(result.complaints));
  return result.value.text;
};

/** Three ways in which a plan gives the sizes of a board. */
const withBoard = (board: string): Snapshot => snapshotOf(`${CHEST}\nboards:\n  - ${board} # by the door\n`);
const sized = (now: Snapshot, sizes: BoardSizes): string =>
  (madeBy(setBoardSizes(now, 0, sizes)).split('boards:\n')[1] ?? '').trim();

describe('a board', () => {
  it('is added after the last, named after its wood by the first number that is free', () => {
    const made = madeBy(addBoard(chest, { stocks: ['front'], thickness: 26, length: 1900, width: 210 }));
    const line = '  - {name: Cherry 4, stock: front, thickness: 26, length: 1900, width: 210}\n';
    expect(made).toContain(line);
    expect(made.replace(line, '')).toBe(BOARDS);
    expect(boardsIn(snapshotOf(made)).map(({ plank }) => plank.name)).toEqual([
      ...[
        'Cherry 1',
        'Cherry 2',
        'Cherry 3',
        'Ash 1',
        'Ash 2',
        'Ash 3',
        'Ash 4',
        'Ash 5',
        'Ash 6',
        'Cherry 4',
      ],
    ]);
    expect(
      madeBy(
        addBoard(chest, { stocks: ['side', 'back'], thickness: 16, length: 1900, width: 210, count: 3 }),
      ),
    ).toContain('{name: Ash 7, stock: [side, back], thickness: 16, length: 1900, width: 210, count: 3}');
  });

  it('begins the list where a plan has none, and the list goes with the last', () => {
    const made = madeBy(addBoard(snapshotOf(CHEST), suggestedBoard(snapshotOf(CHEST).project, ['front'])));
    expect(made.startsWith(CHEST.trimEnd())).toBe(true);
    expect(made).toMatch(/\nboards:\n {2}- \{name: Cherry 1, stock: front, /u);
    expect(madeBy(removeBoard(snapshotOf(made), 0)).trimEnd()).toBe(CHEST.trimEnd());
  });

  it('is suggested thick and wide enough for every part of its stock, in mm and in inches', () => {
    for (const text of [CHEST, inInches(CHEST)])
      for (const stocks of [['front'], ['side', 'back'], ['bottom']] as const) {
        const now = snapshotOf(text);
        const added = addBoard(now, suggestedBoard(now.project, stocks));
        expect(added.ok && added.value.project.work?.planks).toHaveLength(1);
      }
  });

  it('keeps the way in which its sizes are given, and the comment beside them', () => {
    const sizes = { length: 2000, left: 200, right: 200 };
    expect(sized(withBoard('{name: A, stock: front, thickness: 26, length: 2150, width: 228}'), sizes)).toBe(
      '- {name: A, stock: front, thickness: 26, length: 2000, width: 200} # by the door',
    );
    expect(
      sized(withBoard('{name: A, stock: front, thickness: 26, length: 2150, width: [228, 241]}'), {
        ...sizes,
        right: 241,
      }),
    ).toBe('- {name: A, stock: front, thickness: 26, length: 2000, width: [200, 241]} # by the door');
    const bySize = withBoard('{name: A, stock: front, thickness: 26, size: 2150 x 228 x 3}');
    expect(sized(bySize, sizes)).toBe(
      '- {name: A, stock: front, thickness: 26, size: 2000 x 200 x 3} # by the door',
    );
    expect(sized(bySize, { ...sizes, right: 210 })).toBe(
      '- {name: A, stock: front, thickness: 26, length: 2000, width: [200, 210], count: 3} # by the door',
    );
    // Clockwise, as nobody forbids; 2150 long and 230 wide.
    const outline =
      '{name: A, stock: front, thickness: 26, outline: [[40, 5], [45, 235], [2190, 230], [2180, 10]]}';
    expect(sized(withBoard(outline), { length: 2140, left: 220, right: 220 })).toBe(
      '- {name: A, stock: front, thickness: 26, outline: [[40, 5], [45, 225], [2180, 220], [2170, 10]]} # by the door',
    );
  });

  it('is written in fractions where the plan is in inches', () => {
    const inches = snapshotOf(
      inInches(CHEST).concat('\nboards:\n  - {name: A, stock: front, thickness: 1, size: 80 x 9 x 2}\n'),
    );
    expect(
      madeBy(setBoardSizes(inches, 0, { length: 78.5 * 25.4, left: 8.25 * 25.4, right: 8.25 * 25.4 })),
    ).toContain('size: 78 1/2 x 8 1/4 x 2');
  });

  it('has its quantity where its size tells it, and its stocks in a list where there are several', () => {
    const bySize = withBoard('{name: A, stock: front, thickness: 26, size: 2150 x 228}');
    expect(madeBy(setBoardCount(bySize, 0, 4))).toContain('size: 2150 x 228 x 4}');
    const byCount = withBoard('{name: A, stock: front, thickness: 26, length: 2150, width: 228, count: 2}');
    expect(madeBy(setBoardCount(byCount, 0, 4))).toContain('count: 4}');
    expect(madeBy(setBoardCount(byCount, 0, 1))).toContain('width: 228}');
    expect(madeBy(setStocks(byCount, 0, ['front', 'side']))).toContain('stock: [front, side],');
    expect(setStocks(byCount, 0, []).ok).toBe(false);
  });
});

describe('a defect of a board', () => {
  it('is added by its middle and its extent, a sound knot as a knot that is sound', () => {
    const box = { x0: 300, y0: 40, x1: 360, y1: 90 };
    const line = '      - {kind: knot, sound: true, at: [330, 65], size: [60, 50]}\n';
    const made = madeBy(addDefect(chest, 1, 'sound knot', box));
    expect(made).toContain(line);
    expect(made.replace(line, '')).toBe(BOARDS);
    expect(madeBy(removeDefect(snapshotOf(made), 1, 3))).toBe(BOARDS);
  });

  it('takes the list of defects with it where it is the last', () => {
    const now = withBoard('{name: A, stock: front, thickness: 26, length: 2150, width: 228}');
    const made = madeBy(addDefect(now, 0, 'stain', { x0: 0, y0: 0, x1: 10, y1: 10 }));
    expect(made).toContain('width: 228, defects: [{kind: stain, at: [5, 5], size: [10, 10]}]} # by the door');
    expect(madeBy(removeDefect(snapshotOf(made), 0, 0))).toBe(now.text);
  });

  it('moves and is stretched in the way in which it is given', () => {
    const moved = (defect: number, box: { x0: number; y0: number; x1: number; y1: number }) =>
      madeBy(setDefectBox(chest, 0, defect, box));
    // From an end, while it takes that end whole.
    expect(moved(0, { x0: 0, y0: 0, x1: 95, y1: 241 })).toBe(
      BOARDS.replace('{kind: check, from: left, length: 80}', '{kind: check, from: left, length: 95}'),
    );
    expect(moved(0, { x0: 10, y0: 0, x1: 90, y1: 241 })).toBe(
      BOARDS.replace(
        '{kind: check, from: left, length: 80}',
        '{kind: check, at: [50, 120.5], size: [80, 241]}',
      ),
    );
    expect(moved(1, { x0: 1400, y0: 167.5, x1: 1460, y1: 212.5 })).toBe(
      BOARDS.replace('at: [1410, 190], size: [60, 45]}', 'at: [1430, 190], size: [60, 45]}'),
    );
    // Its extents were 0 to 2150 and 212 to 241: 10 lower, each corner is.
    expect(moved(2, { x0: 0, y0: 202, x1: 2150, y1: 231 })).toBe(
      BOARDS.replace(
        '[[0, 212], [2150, 226], [2150, 241], [0, 228]]',
        '[[0, 202], [2150, 216], [2150, 231], [0, 218]]',
      ),
    );
  });

  it('is said to be of another kind', () => {
    expect(madeBy(setDefectKind(chest, 0, 1, 'loose knot'))).toBe(
      BOARDS.replace('{kind: knot, sound: true, at: [1410', '{kind: knot, at: [1410'),
    );
    expect(madeBy(setDefectKind(chest, 0, 1, 'pith'))).toBe(
      BOARDS.replace('{kind: knot, sound: true, at: [1410', '{kind: pith, at: [1410'),
    );
  });

  it('is refused beside its board', () => {
    const result = addDefect(chest, 0, 'stain', { x0: 3000, y0: 0, x1: 3010, y1: 10 });
    expect(result.ok).toBe(false);
  });
});
