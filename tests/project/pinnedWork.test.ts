import { describe, expect, it } from 'vitest';
import { BOARDS, projectOf, SMALL_SET, wrongWith } from '../drawer/blanks/boardsPlan.ts';

const withPins = (pins: string, boards = BOARDS): string =>
  `breakout: {pinned: ${pins}}\n${boards}${SMALL_SET}`;
const pinsOf = (plan: string) => projectOf(plan).work?.blanks.flatMap(({ pin }) => pin ?? []);

describe('pins of a plan', () => {
  it('hold the part of that name to its board, of equal boards to that of the number', () => {
    const pins =
      '[{part: Cloth front 1, board: Cherry}, {part: buttons left side 2, board: ash No. 3, at: [100, 5], turned: true}]';
    expect(pinsOf(withPins(pins))).toEqual([
      { plank: 3, place: { x: 100, y: 5, turned: true, across: false } },
      { plank: 0 },
    ]);
  });

  it('have their places in the unit of the plan, or in the one that is written', () => {
    const inches = withPins('[{part: Cloth front 1, board: Cherry, at: [2in, 12]}]');
    expect(pinsOf(inches)).toMatchObject([{ place: { x: 50.8, y: 12 } }]);
  });

  it('lay a panel across its board', () => {
    const panels = BOARDS.replace('[side, back]', '[side, back, bottom]').replace('1810 x 210', '1810 x 450');
    const pin = '[{part: Buttons bottom 1, board: Ash no. 1, at: [300, 5], across: true}]';
    expect(pinsOf(withPins(pin, panels))).toMatchObject([{ place: { across: true } }]);
  });

  it('are done with where the part has been cut out of that board', () => {
    const cut = `cut: {cuts: [{kind: crosscut, piece: 0, at: 22}, {kind: crosscut, piece: 2, at: 340},
      {kind: rip, piece: 3, at: 81}], blanks: [{drawer: Buttons, part: front, index: 1, turned: false, x: 25, y: 0, length: 315, width: 81, piece: 5}]}`;
    const begun = BOARDS.replace('width: 230}', `width: 230, ${cut}}`);
    expect(pinsOf(withPins('[{part: Buttons front 1, board: Cherry, at: [900, 20]}]', begun))).toEqual([]);
    expect(wrongWith(withPins('[{part: Buttons front 1, board: Ash no. 1}]', begun))).toEqual([
      'breakout.pinned[0]: Buttons front 1 has been cut already, out of "Cherry"; remove its pin',
    ]);
    // The pieces that are left begin a saw cut after the part, and above it.
    expect(wrongWith(withPins('[{part: Buttons front 2, board: Cherry, at: [30, 40]}]', begun))).toEqual([
      expect.stringMatching(
        /Buttons front 2 lies over cuts that have been made in "Cherry", or beside what they leave/u,
      ),
    ]);
  });

  it.each([
    [
      'a part that there is not',
      '[{part: Buttons side left, board: Cherry}]',
      /pinned\[0\]\.part: "Buttons side left" is no part that comes out of these boards; there are Buttons front 1, .*; try Buttons left side 1$/u,
    ],
    [
      'a board that there is not',
      '[{part: Cloth front 1, board: Chery}]',
      /pinned\[0\]\.board: "Chery" is no board of this plan; there are Cherry, Ash no\. 1, .*; try Cherry$/u,
    ],
    [
      'one of several equal boards without its number',
      '[{part: Cloth back 1, board: Ash}]',
      /try Ash no\. 1$/u,
    ],
    [
      'a part twice',
      '[{part: Cloth front 1, board: Cherry}, {part: Cloth front 1, board: Cherry, at: [100, 10]}]',
      /pinned\[1\]\.part: Cloth front 1 is pinned already; remove one of its pins$/u,
    ],
    [
      'how it lies without where',
      '[{part: Cloth front 1, board: Cherry, turned: true}]',
      /pinned\[0\]\.turned: turned is for a part at a given place, and this has none/u,
    ],
    [
      'a board for other parts',
      '[{part: Cloth front 1, board: Ash no. 1}]',
      /pinned\[0\]: Cloth front 1 does not come out of a board for side, back; pin it elsewhere, or remove its pin$/u,
    ],
    [
      'an end of the board',
      '[{part: Cloth front 1, board: Cherry, at: [24, 0]}]',
      /Cloth front 1 does not lie inside "Cherry" with its ends cut off/u,
    ],
    [
      'another part',
      '[{part: Buttons front 1, board: Cherry, at: [100, 0]}, {part: Buttons front 2, board: Cherry, at: [300, 60]}]',
      /pinned\[1\]: Buttons front 2 lies on Buttons front 1, which is pinned there/u,
    ],
    [
      'a place across the grain',
      '[{part: Buttons front 1, board: Cherry, at: [100, 0], across: true}]',
      /Buttons front 1 cannot lie across the board: its grain runs along it/u,
    ],
  ])('are refused that name %s', (_, pins, says) => {
    const wrong = wrongWith(withPins(pins));
    expect(wrong).toHaveLength(1);
    expect(wrong[0]).toMatch(says);
  });

  it('are refused over a knot, which is told by its place', () => {
    const knotty = BOARDS.replace(
      'width: 230}',
      'width: 230, defects: [{kind: knot, at: [640, 80], size: [60, 45]}]}',
    );
    expect(wrongWith(withPins('[{part: Cloth front 1, board: Cherry, at: [100, 0]}]', knotty))).toEqual([
      'breakout.pinned[0]: Cloth front 1 lies on a defect that it may not have there: the loose knot at 640 mm, 80 mm; pin it elsewhere, or remove its pin',
    ]);
  });

  it('are refused where no saw can free them', () => {
    const pins = `[{part: Buttons left side 1, board: Ash no. 1, at: [200, 0]}, {part: Cloth left side 1, board: Ash no. 1, at: [638, 0]},
      {part: Buttons right side 1, board: Ash no. 1, at: [540, 198]}, {part: Cloth right side 1, board: Ash no. 1, at: [100, 84]}]`;
    const wide = BOARDS.replace('1810 x 210', '1810 x 300');
    expect(wrongWith(withPins(pins, wide))).toEqual([
      'breakout.pinned[3]: Cloth right side 1 cannot be sawn free: no cuts from edge to edge part it from Buttons left side 1, Cloth left side 1, Buttons right side 1; pin it elsewhere, or remove its pin',
    ]);
  });
});
