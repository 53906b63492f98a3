import { describe, expect, it } from 'vitest';
import { checkSizes } from '../../../src/joint/checkSizes.ts';
import { kindOf } from '../../../src/joint/kinds/kinds.ts';
import { secretMitred } from '../../../src/joint/kinds/secretMitred.ts';
import { speak } from '../../../src/units/phrase.ts';
import { told } from '../../value.ts';
import { jointOf } from '../told.ts';
import { secretJoint, secretSpec } from './example.ts';

const boards = { tailBoard: 18, pinBoard: 18 };
const [lap, tailLap] = secretMitred.lengths;

describe('a secret-mitred corner', () => {
  it('is what a joint of its name is asked of', () => {
    expect(kindOf(secretJoint)).toBe(secretMitred);
  });

  it('has both boards at full length outside, equal laps, and shoulders as wide as the lap', () => {
    expect(secretMitred.shape({ ...boards, lap: 4 })).toEqual({
      depth: 14,
      tailBoard: { thickness: 18, lap: 4 },
      pinBoard: { thickness: 18, lap: 4 },
      shoulder: { lower: 4, upper: 4 },
      setBack: 0,
      mitre: { degrees: 45 },
    });
    expect(secretMitred.shape({ ...boards, tailLap: 3, shoulderWidth: 6 })).toMatchObject({
      // A quarter of 18 to the half millimetre is 4.5.
      tailBoard: { lap: 3 },
      pinBoard: { lap: 4.5 },
      shoulder: { lower: 6, upper: 6 },
    });
  });

  it('meets in boards of 12 and 20 mm at the angle whose tangent is 12 / 20', () => {
    const { mitre } = secretMitred.shape({ tailBoard: 12, pinBoard: 20, mitre: 'corner' });
    // 30.96 degrees by a table of tangents: tan 30.96 = 0.6.
    expect(mitre?.degrees).toBeCloseTo(30.96, 2);
  });

  it('asks how boards of unequal thickness are mitred', () => {
    expect(secretMitred.check(boards)).toEqual([]);
    expect(secretMitred.check({ tailBoard: 12, pinBoard: 20, mitre: 'corner' })).toEqual([]);
    expect(told(secretMitred.check({ tailBoard: 12, pinBoard: 20 }))).toEqual([
      'mitre: a tail board of 12 mm and a pin board of 20 mm do not meet at 45 degrees; say how they are mitred; try corner, or make both boards equally thick',
    ]);
  });

  it('cannot be proud', () => {
    expect(told(secretMitred.check({ ...boards, proud: 0.5 }))).toEqual([
      "proud: the pins of a secret-mitred joint end behind the tail board's lap, so it cannot be proud of them; remove it",
    ]);
  });

  it('keeps 1 mm of either lap and 3 mm beside it, and between the shoulders a base of 3 mm and two half pins of 1', () => {
    expect(lap?.range({ ...boards, width: 96 })).toEqual({ least: 1, most: 15 });
    expect(tailLap?.range({ ...boards, width: 96 })).toEqual({ least: 1, most: 15 });
    // 96 less 5, for either edge a half.
    expect(told(checkSizes({ ...secretSpec, width: 96, shoulderWidth: 46 }))).toEqual([
      'shoulderWidth: the mitred shoulder is 46 mm; it must be 1 mm to 45.5 mm',
    ]);
  });

  it('sets out its tails between the shoulders: 106 = 5 + 10 + 33 + 10 + 33 + 10 + 5', () => {
    expect(secretJoint.tails.map(({ tip }) => tip)).toEqual([
      [15, 48],
      [58, 91],
    ]);
    expect(secretJoint.pins.map(({ narrow }) => narrow)).toEqual([
      [5, 15],
      [48, 58],
      [91, 101],
    ]);
  });

  it('goes no deeper by a wider lap, and wishes only for lengths that are given', () => {
    const { wish, words } = secretMitred.noDeeper(boards, 12.37);
    expect(wish).toEqual({ kind: 'secret-mitred', pinBoard: 18, lap: 5.7 });
    expect(speak(words, 'mm')).toBe('make the lap at least 5.63 mm');
    expect(secretMitred.wish({ lap: 4, tailLap: 3 })).toEqual({
      kind: 'secret-mitred',
      lap: 4,
      tailLap: 3,
    });
    expect(secretMitred.wish({})).toStrictEqual({ kind: 'secret-mitred' });
  });

  it('is marked on the inside faces and the rebated ends, with the shoulders right over them', () => {
    const { tail, pin } = secretMitred.marks(secretJoint);
    for (const board of [tail, pin]) {
      expect(board.map(({ surface }) => surface)).toEqual(['inside', 'end']);
      expect(board[1]?.rebated).toBe(true);
      for (const { reach, lines, waste } of board) {
        // Boards of 20 with laps of 5.
        expect(reach).toBe(15);
        expect(lines.at(-1)).toEqual({
          role: 'square',
          paths: [5, 101].map((u) => [
            [0, u],
            [15, u],
          ]),
        });
        expect([waste[0], waste.at(-1)]).toEqual(
          [
            [0, 5],
            [101, 106],
          ].map(([from, to]) => [
            [0, from],
            [0, to],
            [15, to],
            [15, from],
          ]),
        );
      }
    }
  });

  it('is gauged in the order of work, each rebate after the lines of its board', () => {
    const joint = jointOf({ ...secretSpec, tailLap: 4 } as typeof secretSpec);
    expect(
      secretMitred
        .gauges(joint)
        .map(({ name, on, from, line, length }) => [name, on, from, line === 'rebate', length]),
    ).toEqual([
      ['pinBoardFace', 'inside face', 'end', false, 20],
      ['pinBoardEnd', 'end', 'inside face', false, 15],
      ['pinBoardRebate', 'inside face', 'end', true, 4],
      ['tailBoard', 'inside face', 'end', false, 20],
      ['tailBoardEnd', 'end', 'inside face', false, 16],
      ['tailBoardRebate', 'inside face', 'end', true, 5],
    ]);
  });

  it('shows nothing from the side', () => {
    expect(secretMitred.sideView(secretJoint)).toEqual({ reach: 0, tails: [], uprights: [], span: [0, 106] });
  });

  it('stops its rebates at the shoulders only where their inside corner misses the mitre', () => {
    const words = (spec: typeof secretSpec) => {
      const joint = jointOf(spec);
      return secretMitred
        .work(joint, { tail: 'side', pin: 'front' })
        .map((phrase) => speak(phrase, 'mm'))
        .join(' ');
    };
    expect(words(secretSpec)).not.toContain('Stop both rebates');
    expect(words(secretSpec)).toContain('a shooting block of 45°');
    expect(words(secretSpec)).toContain('along the same block');
    const uneven = { ...secretSpec, tailBoard: 12, mitre: 'corner' } as typeof secretSpec;
    expect(words(uneven)).toContain('Stop both rebates 5 mm short of the edges');
    // Equal laps keep their 45 degrees; the shoulders follow the boards.
    expect(words(uneven)).toContain('a shooting block of 45°');
    expect(words(uneven)).toContain('along one of 30.96°');
  });
});
