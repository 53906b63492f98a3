import { describe, expect, it } from 'vitest';
import { jointRecord } from '../../src/joint/jointRecord.ts';
import { layOut } from '../../src/joint/layOut.ts';

describe("a joint's record for other programs", () => {
  it('holds its lengths in mm from the reference edge, and advice as text', () => {
    const laid = layOut({
      kind: 'lapped',
      width: 52,
      tailBoard: 12,
      pinBoard: 20,
      lap: 5,
      slope: { run: 10 },
      pin: 6,
      spacing: { kind: 'even', tails: 2 },
    });
    if (!laid.ok) throw new Error('it can be cut');
    // Two tails of (52 - 3 x 6) / 2 = 17 mm, which lose 15 / 10 = 1.5 mm on either side.
    expect(jointRecord('Box', laid.value, 'mm')).toEqual({
      name: 'Box',
      kind: 'lapped',
      width: 52,
      depth: 15,
      slope: { run: 10, degrees: expect.closeTo(5.7106, 4) },
      tailBoard: { thickness: 12, lap: 0 },
      pinBoard: { thickness: 20, lap: 5 },
      shoulder: { lower: 0, upper: 0 },
      tails: [
        { tip: [6, 23], base: [7.5, 21.5] },
        { tip: [29, 46], base: [30.5, 44.5] },
      ],
      pins: [
        { narrow: [0, 6], wide: [0, 7.5], half: true },
        { narrow: [23, 29], wide: [21.5, 30.5], half: false },
        { narrow: [46, 52], wide: [44.5, 52], half: true },
      ],
      gauges: { tailBoard: 15, pinBoardFace: 12, pinBoardEnd: 15 },
      dividers: { from: 6, downFrom: 46, step: 23 },
      // Four sides, each 15 √(1 + 0.01) long and 12 wide.
      glueArea: expect.closeTo(4 * 15 * Math.sqrt(1.01) * 12, 9),
      alternatives: [
        { tails: 1, tip: 40 },
        { tails: 3, tip: expect.closeTo(28 / 3, 12) },
      ],
      advice: ['1:10 is gentler than 1:9: the joint has little hold'],
    });
  });

  it('has no dividers where nothing can be stepped off', () => {
    const laid = layOut({
      kind: 'through',
      width: 40,
      tailBoard: 12,
      pinBoard: 12,
      spacing: { kind: 'even', tails: 1 },
    });
    expect(laid.ok && jointRecord('One', laid.value, 'mm').dividers).toBeNull();
  });
});
