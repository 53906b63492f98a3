import { describe, expect, it } from 'vitest';
import type { Thicknesses } from '../../../src/joint/kinds/kind.ts';
import { kindOf } from '../../../src/joint/kinds/kinds.ts';
import { lapped } from '../../../src/joint/kinds/lapped.ts';
import { speak } from '../../../src/units/phrase.ts';
import { told } from '../../value.ts';
import { lappedJoint } from './example.ts';

const [lap] = lapped.lengths;
const boards = { tailBoard: 11, pinBoard: 20 };
const advised = (given: Thicknesses) => lapped.advise(given, lapped.shape(given));

describe('a lapped corner', () => {
  it('is what a joint of its name is asked of', () => {
    expect(kindOf(lappedJoint)).toBe(lapped);
  });

  it('has tails as long as the lap leaves, and a tail board that ends behind it', () => {
    expect(lapped.shape({ ...boards, lap: 6 })).toEqual({
      depth: 14,
      tailBoard: { thickness: 11, lap: 0 },
      pinBoard: { thickness: 20, lap: 6 },
      shoulder: { lower: 0, upper: 0 },
      setBack: 6,
    });
  });

  it('has a lap of a quarter of the pin board unless given', () => {
    expect(lapped.shape(boards)).toMatchObject({ depth: 15, pinBoard: { lap: 5 }, setBack: 5 });
    expect(lap?.usual({ tailBoard: 50, pinBoard: 32 })).toBe(8);
  });

  it('has one length of its own, the lap on its pin board, which places the baseline and a line', () => {
    expect(lapped.lengths).toHaveLength(1);
    expect(lap).toMatchObject({
      key: 'lap',
      word: 'lap',
      about: 'wood left in front of a lapped joint',
      on: 'pin',
      places: ['baseline', 'own'],
    });
    expect(lap?.of(lappedJoint)).toBe(5);
  });

  it('wishes for a lap only where one is given', () => {
    expect(lapped.wish({ lap: 4 })).toEqual({ kind: 'lapped', lap: 4 });
    expect(lapped.wish({})).toStrictEqual({ kind: 'lapped' });
  });

  it('keeps at least 1 mm of lap, and 3 mm for the sockets', () => {
    expect(lap?.range({ tailBoard: 50, pinBoard: 20, width: 96 })).toEqual({ least: 1, most: 17 });
    expect(lapped.leastBoard).toEqual({ tail: 2, pin: 4 });
  });

  it('stops its sockets behind the lap', () => {
    expect(lapped.sockets).toBe('stopped');
  });

  it('goes no deeper by a wider lap, up to a tenth of a millimetre', () => {
    const { wish, words } = lapped.noDeeper({ ...boards, lap: 5 }, 12.37);
    // 20 - 12.37 = 7.63.
    expect(wish).toEqual({ kind: 'lapped', pinBoard: 20, lap: 7.7 });
    expect(speak(words, 'mm')).toBe('make the lap at least 7.63 mm');
  });

  it('asks whether the boards are swapped where the pin board is the thinner', () => {
    expect(told(advised({ tailBoard: 20, pinBoard: 11 }))).toEqual([
      'pinBoard: a pin board of 11 mm is thinner than its tail board of 20 mm: are the two swapped?',
    ]);
    expect(advised({ tailBoard: 20, pinBoard: 20 })).toEqual([]);
    // Float dust is no difference.
    expect(advised({ tailBoard: 0.1 + 0.2, pinBoard: 0.3 })).toEqual([]);
  });

  it('is marked all round the tail board, and on the inside face and the end of the pin board', () => {
    const { tail, pin } = lapped.marks(lappedJoint);
    expect(tail.map(({ surface }) => surface)).toEqual(['inside', 'end', 'outside']);
    expect(pin.map(({ surface }) => surface)).toEqual(['inside', 'end']);
  });

  it('is marked on a face of the tail board with the baseline and the slopes of every tail', () => {
    const [inside, , outside] = lapped.marks(lappedJoint).tail;
    expect(inside?.reach).toBe(15);
    expect(inside?.lines).toEqual([
      {
        role: 'baseline',
        paths: [
          [
            [15, 0],
            [15, 96],
          ],
        ],
      },
      {
        role: 'slope',
        paths: [
          [
            [15, 13],
            [0, 10],
          ],
          [
            [0, 43],
            [15, 40],
          ],
          [
            [15, 56],
            [0, 53],
          ],
          [
            [0, 86],
            [15, 83],
          ],
        ],
      },
    ]);
    expect(inside?.waste).toEqual([
      [
        [15, 0],
        [0, 0],
        [0, 10],
        [15, 13],
      ],
      [
        [15, 40],
        [0, 43],
        [0, 53],
        [15, 56],
      ],
      [
        [15, 83],
        [0, 86],
        [0, 96],
        [15, 96],
      ],
    ]);
    expect({ ...outside, surface: 'inside' }).toEqual(inside);
  });

  it('is marked square across the tail board end, from tip to tip', () => {
    const [, end] = lapped.marks(lappedJoint).tail;
    expect(end).toMatchObject({ surface: 'end', reach: 11 });
    expect(end?.lines).toEqual([
      {
        role: 'square',
        paths: [10, 43, 53, 86].map((u) => [
          [0, u],
          [11, u],
        ]),
      },
    ]);
    expect(end?.waste).toEqual(
      [
        [0, 10],
        [43, 53],
        [86, 96],
      ].map(([from, to]) => [
        [0, from],
        [0, to],
        [11, to],
        [11, from],
      ]),
    );
  });

  it('is marked on the inside face of the pin board where the tails have their bases', () => {
    const [inside] = lapped.marks(lappedJoint).pin;
    // 11 thick, less what stands proud.
    expect(inside?.reach).toBe(10);
    expect(inside?.lines).toEqual([
      {
        role: 'baseline',
        paths: [
          [
            [10, 0],
            [10, 96],
          ],
        ],
      },
      {
        role: 'square',
        paths: [13, 40, 56, 83].map((u) => [
          [0, u],
          [10, u],
        ]),
      },
    ]);
  });

  it('is marked on the end of the pin board from the inside arris to the lap, and the lap along it', () => {
    const [, end] = lapped.marks(lappedJoint).pin;
    expect(end).toMatchObject({ surface: 'end', reach: 15 });
    expect(end?.lines.map(({ role }) => role)).toEqual(['slope', 'lap']);
    expect(end?.lines[1]?.paths).toEqual([
      [
        [15, 0],
        [15, 96],
      ],
    ]);
    expect(end?.waste[1]).toEqual([
      [0, 56],
      [15, 53],
      [15, 86],
      [0, 83],
    ]);
  });

  it('is gauged round the tail board, on the inside face of the pin board, and on its end from there', () => {
    expect(lapped.gauges(lappedJoint)).toEqual([
      { name: 'tailBoard', board: 'tail', on: 'all round', from: 'end', length: 15 },
      { name: 'pinBoardFace', board: 'pin', on: 'inside face', from: 'end', length: 10 },
      { name: 'pinBoardEnd', board: 'pin', on: 'end', from: 'inside face', length: 15 },
    ]);
  });

  it('shows its tails from the lap to the baseline, and both lines', () => {
    const { reach, tails, uprights } = lapped.sideView(lappedJoint);
    expect([reach, uprights]).toEqual([20, [20, 5]]);
    expect(tails).toEqual([
      [
        [20, 13],
        [5, 10],
        [5, 43],
        [20, 40],
      ],
      [
        [20, 56],
        [5, 53],
        [5, 86],
        [20, 83],
      ],
    ]);
  });
});
