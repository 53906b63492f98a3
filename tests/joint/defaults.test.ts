import { describe, expect, it } from 'vitest';
import { defaultPin, withDefaults } from '../../src/joint/defaults.ts';
import { defaultLap } from '../../src/joint/kinds/lap.ts';

describe('what a wish leaves open', () => {
  const plain = { width: 100, tailBoard: 11, pinBoard: 20, spacing: { kind: 'even' } } as const;

  it('is filled in by common practice: 1:8, pins half the tail board, half pins as pins, nothing proud, a 3 mm chisel', () => {
    expect(withDefaults({ kind: 'through', ...plain })).toEqual({
      kind: 'through',
      width: 100,
      tailBoard: 11,
      pinBoard: 20,
      shape: {
        depth: 20,
        tailBoard: { thickness: 11, lap: 0 },
        pinBoard: { thickness: 20, lap: 0 },
        shoulder: { lower: 0, upper: 0 },
        setBack: 0,
      },
      depth: 20,
      slope: { run: 8 },
      pin: 5.5,
      halfPin: { lower: 5.5, upper: 5.5 },
      proud: 0,
      chisel: 3,
      spacing: { kind: 'even' },
      notation: 'mm',
    });
  });

  it('makes tails as long as the pin board less its lap', () => {
    expect(withDefaults({ kind: 'lapped', ...plain })).toMatchObject({
      shape: { pinBoard: { lap: 5 } },
      depth: 15,
    });
    expect(withDefaults({ kind: 'lapped', ...plain, lap: 6.5 })).toMatchObject({
      shape: { pinBoard: { lap: 6.5 } },
      depth: 13.5,
    });
  });

  it('makes half pins as wide as the pin that is wished', () => {
    expect(withDefaults({ kind: 'through', ...plain, pin: 4 }).halfPin).toEqual({ lower: 4, upper: 4 });
  });

  it('leaves alone what is given', () => {
    const given = {
      kind: 'through',
      ...plain,
      slope: { run: 6 },
      pin: 4,
      halfPin: { lower: 7, upper: 2 },
      proud: 0.5,
      chisel: 6,
      notation: 'mm',
    } as const;
    const { shape } = withDefaults({ kind: 'through', ...plain });
    expect(withDefaults(given)).toEqual({ ...given, shape, depth: 20 });
  });
});

describe('the default pin', () => {
  it.each([
    [20, 10],
    [11, 5.5],
    [6, 3],
    [5, 3],
    [2, 3],
  ])('of a %d mm tail board is %d mm: half of it, at least 3', (tailBoard, pin) => {
    expect(defaultPin(tailBoard)).toBe(pin);
  });
});

describe('in inches', () => {
  it.each([
    // Half of 7/16 is 7/32, of 13/32 13/64: half-way between marks, so the upper; of 3/16 3/32, under the least.
    [7 / 16, 7 / 32],
    [13 / 32, 7 / 32],
    [1 / 2, 1 / 4],
    [3 / 16, 1 / 8],
  ])('the default pin of a tail board of %d in is %d in: to 1/32, at least 1/8', (tailBoard, pin) => {
    expect(defaultPin(tailBoard * 25.4, 'in')).toBeCloseTo(pin * 25.4, 9);
  });

  it.each([
    [3 / 4, 3 / 16],
    [13 / 16, 7 / 32],
    [7 / 8, 7 / 32],
    [3 / 8, 1 / 8],
  ])('the default lap of a pin board of %d in is %d in: to 1/32, at least 1/8', (pinBoard, lap) => {
    expect(defaultLap(pinBoard * 25.4, 'in/16')).toBeCloseTo(lap * 25.4, 9);
  });

  it('the chisel is 1/8 in, and a joint has these defaults whatever its fractions are', () => {
    const boards = { width: 100, tailBoard: 12.7, pinBoard: 19.05, spacing: { kind: 'even' } } as const;
    const { chisel, pin, depth } = withDefaults({ kind: 'lapped', ...boards, notation: 'in/1000' });
    expect([chisel, pin]).toEqual([3.175, 6.35]);
    expect(depth / 25.4).toBeCloseTo(9 / 16, 12);
  });
});

describe('the default lap', () => {
  it.each([
    [20, 5],
    [19, 5],
    [18, 4.5],
    [22, 5.5],
    [16.9, 4],
    [17, 4.5],
    [12, 3],
    [8, 3],
  ])('of a %d mm pin board is %d mm: a quarter of it to the half mm, at least 3', (pinBoard, lap) => {
    expect(defaultLap(pinBoard)).toBe(lap);
  });
});
