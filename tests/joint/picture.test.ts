import { describe, expect, it } from 'vitest';
import { blockPicture } from '../../src/joint/picture.ts';
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

  it('is as wide as is asked', () => {
    for (const columns of [1, 20, 80])
      for (const line of blockPicture(joint, columns)) expect(line).toHaveLength(columns);
  });
});
