import { describe, expect, it } from 'vitest';
import { defaultPin, withDefaults } from '../../src/joint/defaults.ts';
import { defaultLap } from '../../src/joint/kinds/lapped.ts';

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
        tailBoard: { thickness: 11 },
        pinBoard: { thickness: 20, lap: 0 },
        setBack: 0,
      },
      depth: 20,
      slope: { run: 8 },
      pin: 5.5,
      halfPin: { lower: 5.5, upper: 5.5 },
      proud: 0,
      chisel: 3,
      spacing: { kind: 'even' },
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
