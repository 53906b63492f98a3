import { describe, expect, it } from 'vitest';
import { doubleLapped } from '../../../src/joint/kinds/doubleLapped.ts';
import { kindOf } from '../../../src/joint/kinds/kinds.ts';
import { lapped } from '../../../src/joint/kinds/lapped.ts';
import { secretMitred } from '../../../src/joint/kinds/secretMitred.ts';
import { through } from '../../../src/joint/kinds/through.ts';
import { speak } from '../../../src/units/phrase.ts';
import { told } from '../../value.ts';
import { doubleJoint } from './example.ts';

const boards = { tailBoard: 11, pinBoard: 20 };
const [lap, tailLap] = doubleLapped.lengths;

describe('a double-lapped corner', () => {
  it('is what a joint of its name is asked of', () => {
    expect(kindOf(doubleJoint)).toBe(doubleLapped);
  });

  it('has tails as long as the lap leaves, and a tail board that ends behind it', () => {
    expect(doubleLapped.shape({ ...boards, lap: 6, tailLap: 4 })).toEqual({
      depth: 14,
      tailBoard: { thickness: 11, lap: 4 },
      pinBoard: { thickness: 20, lap: 6 },
      shoulder: { lower: 0, upper: 0 },
      setBack: 6,
    });
  });

  it('has laps of a quarter of either board, to the half millimetre and at least 3, unless given', () => {
    expect(doubleLapped.shape({ tailBoard: 19, pinBoard: 22 })).toMatchObject({
      tailBoard: { lap: 5 },
      pinBoard: { lap: 5.5 },
    });
    expect(doubleLapped.shape(boards)).toMatchObject({ tailBoard: { lap: 3 }, pinBoard: { lap: 5 } });
  });

  it('keeps at least 1 mm of either lap, and 3 mm for the sockets beside it', () => {
    expect(lap?.range({ ...boards, width: 96 })).toEqual({ least: 1, most: 17 });
    expect(tailLap?.range({ ...boards, width: 96 })).toEqual({ least: 1, most: 8 });
    expect(doubleLapped.leastBoard).toEqual({ tail: 4, pin: 4 });
  });

  it('wishes only for laps that are given', () => {
    expect(doubleLapped.wish({ lap: 4, tailLap: 3 })).toEqual({ kind: 'double-lapped', lap: 4, tailLap: 3 });
    expect(doubleLapped.wish({})).toStrictEqual({ kind: 'double-lapped' });
  });

  it('is closed by laps on both boards, and cannot be proud', () => {
    expect(doubleLapped.sockets).toBe('closed');
    expect(doubleLapped.check(boards)).toEqual([]);
    expect(told(doubleLapped.check({ ...boards, proud: 0.5 }))).toEqual([
      "proud: the pins of a double-lapped joint end behind the tail board's lap, so it cannot be proud of them; remove it",
    ]);
  });

  it('advises against pins shorter than 6 mm', () => {
    const advised = (given: number) => {
      const wish = { ...boards, tailLap: given };
      return told(doubleLapped.advise(wish, doubleLapped.shape(wish)));
    };
    expect(advised(5)).toEqual([]);
    expect(advised(5.5)).toEqual([
      'tailLap: the tail lap of 5.5 mm leaves pins 5.5 mm long: under 6 mm they hold little; try 5mm, or use a thicker tail board',
    ]);
  });

  it('goes no deeper by a wider lap', () => {
    const { wish, words } = doubleLapped.noDeeper({ ...boards, lap: 5 }, 12.37);
    expect(wish).toEqual({ kind: 'double-lapped', pinBoard: 20, lap: 7.7 });
    expect(speak(words, 'mm')).toBe('make the lap at least 7.63 mm');
  });

  it('is marked on the inside face and the end of both boards, and on neither outside face', () => {
    const { tail, pin } = doubleLapped.marks(doubleJoint);
    expect(tail.map(({ surface }) => surface)).toEqual(['inside', 'end']);
    expect(pin.map(({ surface }) => surface)).toEqual(['inside', 'end']);
  });

  it('is marked over the tail board end from the inside arris to the lap line, 11 - 4 = 7 mm', () => {
    const [inside, end] = doubleLapped.marks(doubleJoint).tail;
    expect(inside?.reach).toBe(15);
    expect(end?.reach).toBe(7);
    expect(end?.rebated).toBeUndefined();
    expect(end?.lines.map(({ role }) => role)).toEqual(['square', 'lap']);
    expect(end?.lines[0]?.paths).toEqual(
      [10, 43, 53, 86].map((u) => [
        [0, u],
        [7, u],
      ]),
    );
    expect(end?.lines[1]?.paths).toEqual([
      [
        [7, 0],
        [7, 96],
      ],
    ]);
  });

  it('is marked on the rebated pin board: squares 7 mm long from the shoulder, and slopes as deep as the tails', () => {
    const [inside, end] = doubleLapped.marks(doubleJoint).pin;
    expect(inside?.reach).toBe(7);
    expect(inside?.lines[1]?.paths).toEqual(
      [13, 40, 56, 83].map((u) => [
        [0, u],
        [7, u],
      ]),
    );
    expect(end).toMatchObject({ reach: 15, rebated: true });
    expect(end?.lines.map(({ role }) => role)).toEqual(['slope']);
  });

  it('is gauged in the order of work, the pin board and its rebate first', () => {
    expect(
      doubleLapped
        .gauges(doubleJoint)
        .map(({ name, on, from, line, length }) => [name, on, from, line === 'rebate', length]),
    ).toEqual([
      ['pinBoardFace', 'inside face', 'end', false, 11],
      ['pinBoardEnd', 'end', 'inside face', false, 15],
      ['pinBoardRebate', 'inside face', 'end', true, 4],
      ['tailBoard', 'inside face and edges', 'end', false, 15],
      ['tailBoardEnd', 'end', 'inside face', false, 7],
    ]);
  });

  it('shows from the side only the strip of the lap', () => {
    expect(doubleLapped.sideView(doubleJoint)).toEqual({ reach: 5, tails: [], uprights: [5], span: [0, 96] });
  });

  it('tells the order of work by the names of its boards, and which faces of a carcase show the joint', () => {
    const words = doubleLapped
      .work(doubleJoint, { tail: 'side', pin: 'front' })
      .map((phrase) => speak(phrase, 'mm'));
    expect(words[0]).toBe('Gauge the front. Rebate its end from the inside face, 4 mm long and 15 mm deep.');
    expect(words.join(' ')).not.toContain('carcase');
    for (const { inCarcase } of [lapped, doubleLapped, secretMitred])
      expect(inCarcase && speak(inCarcase, 'mm')).toMatch(/^In a carcase, |^In a carcase no lap shows/u);
    // Tails and pins both show.
    expect(through.inCarcase).toBe(undefined);
  });
});
