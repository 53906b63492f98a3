import { describe, expect, it } from 'vitest';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { adviceFor } from './told.ts';

const plain = {
  kind: 'through',
  width: 100,
  tailBoard: 10,
  pinBoard: 12,
  spacing: { kind: 'even', tails: 5 },
} as const satisfies JointSpec;

describe('advice', () => {
  it('is not given on an ordinary joint', () => {
    expect(adviceFor(plain)).toEqual([]);
  });

  it('warns of short grain where the slope is steeper than 1:5, and not at 1:5', () => {
    expect(adviceFor({ ...plain, slope: { run: 4.9 } })).toEqual([
      "slope: 1:4.9 is steeper than 1:5: the short grain at the tails' corners may break off; try 1:7",
    ]);
    expect(adviceFor({ ...plain, slope: { run: 5 } })).toEqual([]);
  });

  it('warns of little hold where the slope is gentler than 1:9, and not at 1:9', () => {
    expect(adviceFor({ ...plain, slope: { run: 9.1 } })).toEqual([
      'slope: 1:9.1 is gentler than 1:9: the joint has little hold; try 1:7',
    ]);
    expect(adviceFor({ ...plain, slope: { run: 9 } })).toEqual([]);
  });

  it('warns where a pin is narrower than the narrowest chisel, which is 3 mm unless given', () => {
    expect(adviceFor({ ...plain, pin: 2.9 })).toEqual([
      'pin: the narrowest pin is 2.9 mm, less than the narrowest chisel (3 mm); try 3mm, or use a narrower chisel',
    ]);
    expect(adviceFor({ ...plain, pin: 3 })).toEqual([]);
    expect(adviceFor({ ...plain, pin: 2.9, chisel: 2.9 })).toEqual([]);
    expect(adviceFor({ ...plain, chisel: 6 })).toHaveLength(1);
  });

  it('warns where a half pin is narrower than that', () => {
    expect(adviceFor({ ...plain, halfPin: { lower: 5, upper: 2 } })).toHaveLength(1);
  });

  it('warns where a listed pin is narrower than that', () => {
    // 5 + 42 + 2 + 22 + 5 + 19 + 5 = 100; 42 is more than six pins of 5 too.
    const spacing = { kind: 'listed', tails: [42, 22, 19], pins: [2, 5] } as const;
    expect(adviceFor({ ...plain, spacing })).toEqual([
      'pin: the narrowest pin is 2 mm, less than the narrowest chisel (3 mm); try 3mm, or use a narrower chisel',
      'tails: the widest tail is 42 mm, more than 6 pins of 5 mm: few pins hold a wide board; use more tails, or wider pins',
    ]);
  });

  it('warns where a tail is wider than six pins, and not at six', () => {
    // Three tails share 100 - 20 = 80; at 110 they share 90: 30 each, six pins exactly.
    const spacing = { kind: 'even', tails: 3 } as const;
    expect(adviceFor({ ...plain, width: 110, spacing })).toEqual([]);
    expect(adviceFor({ ...plain, width: 110.3, spacing })).toEqual([
      'tails: the widest tail is 30.1 mm, more than 6 pins of 5 mm: few pins hold a wide board; use more tails, or wider pins',
    ]);
  });

  it('ignores rounding errors', () => {
    // Tails of exactly six pins in every count and in pins that have no exact double.
    for (let count = 1; count <= 40; count++)
      for (const pin of [3.1, 3.3, 4.7, 5.1])
        expect(
          adviceFor({
            ...plain,
            chisel: pin,
            pin,
            width: count * 6 * pin + (count + 1) * pin,
            spacing: { kind: 'even', tails: count },
          }),
        ).toEqual([]);
  });

  it('gives all its warnings at once', () => {
    expect(
      adviceFor({ ...plain, slope: { run: 4 }, pin: 2, spacing: { kind: 'even', tails: 1 } }),
    ).toHaveLength(3);
  });

  it('asks whether the boards are swapped where a lapped pin board is the thinner one, and not where they are equal', () => {
    const lapped = { ...plain, kind: 'lapped', lap: 3, tailBoard: 12 } as const;
    expect(adviceFor({ ...lapped, pinBoard: 11.9 })).toEqual([
      'pinBoard: a pin board of 11.9 mm is thinner than its tail board of 12 mm: are the two swapped?',
    ]);
    expect(adviceFor({ ...lapped, pinBoard: 12 })).toEqual([]);
    expect(adviceFor({ ...plain, tailBoard: 12, pinBoard: 10 })).toEqual([]);
  });
});
