import { describe, expect, it } from 'vitest';
import { blockPicture } from '../../src/joint/blockPicture.ts';
import { jointOf } from './told.ts';

describe('the block drawing of a joint', () => {
  // Tails from 8 to 29 and from 35 to 56 at the tip, 2 narrower on each side at the base: a column a millimetre.
  const joint = jointOf({
    kind: 'lapped',
    width: 60,
    tailBoard: 12,
    pinBoard: 20,
    lap: 6,
    slope: { run: 7 },
    halfPin: { lower: 8, upper: 4 },
    spacing: { kind: 'even', tails: 2 },
  });

  const row = (...widths: readonly number[]): string =>
    widths.map((width, i) => (i % 2 === 0 ? '░' : '█').repeat(width)).join('');

  it('shows pins and tails in their places, the tails widest at the top, where the end is', () => {
    // The sides come in by 2 x 1/8, 3/8, 5/8 and 7/8 half way down each row.
    expect(blockPicture(joint, 60)).toEqual([
      row(8, 21, 6, 21, 4),
      row(9, 19, 8, 19, 5),
      row(9, 19, 8, 19, 5),
      row(10, 17, 10, 17, 6),
    ]);
  });

  it('draws a column on the line as pin', () => {
    // A tail from 4 to 12 whose sides, over a depth of 8 at 1:8, come in by 1/8 half way down the first row: columns of
    // a quarter millimetre have their middles at 1/8, 3/8 and so on, the 17th at 4 1/8 and the 48th at 11 7/8.
    const single = jointOf({
      kind: 'through',
      width: 16,
      tailBoard: 8,
      pinBoard: 8,
      slope: { run: 8 },
      spacing: { kind: 'even', tails: 1 },
    });
    expect(blockPicture(single, 64)[0]).toBe(row(17, 30, 17));
  });

  it('leaves no pin and no tail out where a board is wider than its columns can show', () => {
    // 13 tails of 16, 12 pins of 4 and half pins of 4: 25 widths and 2 half pins, some under a column of 264 / 40 = 6.6.
    const wide = jointOf({
      kind: 'through',
      width: 264,
      tailBoard: 12,
      pinBoard: 12,
      pin: 4,
      spacing: { kind: 'even', tails: 13 },
    });
    for (const line of blockPicture(wide, 40)) {
      expect(line).toHaveLength(40);
      expect(line.match(/█+/gu)).toHaveLength(13);
      expect(line.match(/░+/gu)).toHaveLength(14);
    }
    // With fewer columns than widths there is no room for all, so there is no picture.
    expect(blockPicture(wide, 26)).toEqual([]);
    expect(blockPicture(wide, 27)).toHaveLength(4);
  });

  it('is as wide as is asked', () => {
    for (const columns of [5, 20, 80])
      for (const line of blockPicture(joint, columns)) expect(line).toHaveLength(columns);
  });
});
