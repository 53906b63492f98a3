import { describe, expect, it } from 'vitest';
import { removeBoard, renameBoard, setBoardCount } from '../../../../src/page/model/boards/boardEdits.ts';
import { freeAll, freePart, pinPart } from '../../../../src/page/model/boards/pinEdits.ts';
import { remove, rename } from '../../../../src/page/model/drawers.ts';
import { openChest } from '../../../openChest.ts';
import { cornerIn, snapshotOf } from '../../chest.ts';

const BOARDS = openChest('boards');
const chest = snapshotOf(BOARDS);
const BEFORE = '  spare: {front: 1}\n';
const withPins = (...lines: string[]) =>
  BOARDS.replace(BEFORE, `${BEFORE}  pinned:\n${lines.map((line) => `    - ${line}\n`).join('')}`);
const textOf = (result: ReturnType<typeof freeAll>): string => {
  if (!result.ok) throw new Error(JSON.stringify(result.complaints));
  return result.value.text;
};
/** Blanks follow each other as parts do: Buttons front 1, front 2, left side 1, … */
const [FRONT_1, SIDE_1] = [0, 2];
const at = (x: number, y: number, more = {}) => ({ x, y, turned: false, across: false, ...more });

describe('a part', () => {
  it('is pinned to a place after the others, by the names that are printed', () => {
    const once = textOf(pinPart(chest, FRONT_1, { plank: 1, place: at(300, 5) }));
    expect(once).toBe(withPins('{part: Buttons front 1, board: Cherry 2, at: [300, 5]}'));
    const twice = textOf(pinPart(snapshotOf(once), SIDE_1, { plank: 7 }));
    expect(twice).toContain('    - {part: Buttons left side 1, board: Ash 5}\n');
    expect(snapshotOf(twice).project.work?.blanks[SIDE_1]?.pin).toEqual({ plank: 7 });
  });

  it('that is pinned moves with the rest of its line as it is written, and turns', () => {
    const now = snapshotOf(withPins('{part: Buttons front 1, board: Cherry 2, at: [300mm, 5]} # the best'));
    expect(textOf(pinPart(now, FRONT_1, { plank: 1, place: at(300, 9, { turned: true }) }))).toBe(
      withPins('{part: Buttons front 1, board: Cherry 2, at: [300mm, 9], turned: true} # the best'),
    );
    expect(textOf(pinPart(now, FRONT_1, { plank: 0 }))).toBe(
      withPins('{part: Buttons front 1, board: Cherry 1} # the best'),
    );
  });

  it('is set free, the last one with the list of them, or all at once', () => {
    const now = snapshotOf(
      withPins('{part: Buttons front 1, board: Cherry 2}', '{part: Buttons left side 1, board: Ash 5}'),
    );
    const one = textOf(freePart(now, FRONT_1));
    expect(one).toBe(withPins('{part: Buttons left side 1, board: Ash 5}'));
    expect(textOf(freePart(snapshotOf(one), SIDE_1))).toBe(BOARDS);
    expect(textOf(freeAll(now))).toBe(BOARDS);
    expect(textOf(freePart(now, 9))).toBe(now.text);
  });

  it('cannot be pinned where it cannot be sawn: the plan stays as it is', () => {
    const result = pinPart(chest, FRONT_1, { plank: 0, place: at(1300, 150) });
    expect(result).toMatchObject({ ok: false, complaints: [{ at: ['breakout', 'pinned', 0] }] });
  });
});

describe('pins follow', () => {
  const now = snapshotOf(
    withPins('{part: Notions front 1, board: Cherry 2}', '{part: Thread left side 1, board: ash 5}'),
  );

  it('a drawer and a board to their new names, and leave the others as they are written', () => {
    expect(textOf(rename(now, cornerIn(now, { of: 'drawer', index: 4, end: 'front' }), 'Hooks'))).toContain(
      '{part: Hooks front 1, board: Cherry 2}',
    );
    const renamed = textOf(renameBoard(now, 1, 'Cherry, wide'));
    expect(renamed).toContain('{part: Notions front 1, board: "Cherry, wide"}');
    expect(renamed).toContain('{part: Thread left side 1, board: ash 5}');
  });

  it('a board that becomes one of several, and one again', () => {
    const two = textOf(setBoardCount(now, 1, 2));
    expect(two).toContain('{part: Notions front 1, board: Cherry 2 no. 1}');
    expect(textOf(setBoardCount(snapshotOf(two), 1, 1))).toBe(now.text);
  });

  it('a drawer that is removed, with which they go', () => {
    const without = textOf(remove(now, cornerIn(now, { of: 'drawer', index: 4, end: 'front' })));
    expect(without).not.toContain('Notions');
    expect(without).toContain('  pinned:\n    - {part: Thread left side 1, board: ash 5}\n');
  });

  it('a board that is removed, with which they go', () => {
    expect(textOf(removeBoard(now, 1))).not.toContain('Notions front 1');
    expect(textOf(removeBoard(now, 1))).toContain('{part: Thread left side 1, board: ash 5}');
  });
});
