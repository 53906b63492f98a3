import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Measured } from '../../../src/router/trial/checkTrial.ts';
import { correction } from '../../../src/router/trial/correction.ts';
import { correctDepth } from '../../../src/router/trial/depthCorrection.ts';
import { correctGuide } from '../../../src/router/trial/guideCorrection.ts';
import { mm, say, speak } from '../../../src/units/phrase.ts';
import { value } from '../../value.ts';

const TRIAL = { angle: 14, depth: 9.5 };

const next = (measured: Measured, setting: Parameters<typeof correctDepth>[0] = TRIAL) =>
  value(correctDepth(setting, measured));

const placesOf = (result: ReturnType<typeof correctDepth> | ReturnType<typeof correctGuide>): string[] =>
  result.ok ? [] : result.complaints.map(({ at }) => at.join('.'));

describe('correction', () => {
  it('is g / (2 s): half the looseness on either side, over the slope', () => {
    expect(correction(0.2, { run: 8 })).toBeCloseTo(0.8, 12);
    expect(correction(-0.1, { run: 6 })).toBeCloseTo(-0.3, 12);
  });
});

describe('correctDepth', () => {
  it('sets a loose joint deeper by g / (2 tan a), a tight one less deep', () => {
    const change = 0.2 / (2 * Math.tan((14 * Math.PI) / 180));
    expect(next({ looseness: 0.2 })).toMatchObject({
      depth: expect.closeTo(9.5 + change, 12),
      change: expect.closeTo(change, 12),
    });
    expect(next({ looseness: -0.2 }).change).toBeCloseTo(-change, 12);
  });

  it('says why in one line', () => {
    expect(speak(next({ looseness: 0.2 }).because, 'mm')).toBe(
      'Loose by 0.2 mm: 0.2 mm / (2 tan 14°) = 0.4 mm deeper, so tighter. Set the dovetail cutter at 9.9 mm for both boards.',
    );
    expect(speak(next({ looseness: 0 }).because, 'mm')).toBe('The fit is right: leave the depth at 9.5 mm.');
  });

  it('lengthens the sockets of a side that is proud, and shortens those of one below flush', () => {
    expect(next({ looseness: 0, proud: 0.3 }).stop?.change).toBe(0.3);
    expect(next({ looseness: 0, proud: -0.4 }).stop?.change).toBe(-0.4);
    expect(next({ looseness: 0 }).stop).toBeUndefined();
  });

  it('deepens the tails alone where they end short', () => {
    const { tails, change } = next({ looseness: 0, short: 0.25 });
    expect(tails?.change).toBe(0.25);
    expect(change).toBe(0);
  });

  it('is refused where the cutter would come out at the face', () => {
    // 0.4 / (2 tan 14°) = 0.802 mm deeper: 10.302.
    const places = (pinBoard: number) => placesOf(correctDepth({ ...TRIAL, pinBoard }, { looseness: 0.4 }));
    expect(places(10.3)).toEqual(['looseness']);
    const refused = correctDepth({ ...TRIAL, pinBoard: 10 }, { looseness: 0.4 });
    expect(
      refused.ok
        ? []
        : refused.complaints.map(({ says, remedy = [] }) => [speak(says, 'mm'), speak(remedy, 'mm')]),
    ).toEqual([
      [
        'the next depth would be 10.3 mm, and the cutter would come out at the face of a pin board of 10 mm',
        "measure again, move the guide's centres, or take a thicker pin board or a cutter with another angle",
      ],
    ]);
    expect(places(10.31)).toEqual([]);
  });

  it('advises where the next depth is more than the cutter cuts, or leaves too little lap', () => {
    const places = (setting: { length?: number; pinBoard?: number }) =>
      next({ looseness: 0.4 }, { ...TRIAL, ...setting }).advice.map(({ at }) => at.join('.'));
    // A lap that is large enough has changed all the same, and what was made for the old one with it.
    expect(places({ length: 10.31, pinBoard: 11.31 })).toEqual(['depth']);
    expect(places({ length: 10.31 })).toEqual([]);
    expect(places({ length: 10.31, pinBoard: 11.3 })).toEqual(['depth']);
    expect(places({ length: 10.3, pinBoard: 11.3 })).toEqual(['length', 'depth']);
  });

  it('doubts a looseness of more than 0.5 mm, either way, and reckons with it all the same', () => {
    const told = (looseness: number) =>
      next({ looseness }).advice.map(({ at, says }) => [at, speak(says, 'mm')]);
    expect(told(0.5)).toEqual([]);
    expect(told(-0.5)).toEqual([]);
    expect(told(0.51).map(([at]) => at)).toEqual([['looseness']]);
    const doubt = [[['looseness'], 'measure again: 2 mm is more than a trial joint is usually out']];
    expect(told(2)).toEqual(doubt);
    expect(told(-2)).toEqual(doubt);
    expect(next({ looseness: 2 }).advice[0]?.hint).toEqual(say`${mm(0.2)}, if a decimal point was left out`);
  });

  it('refuses by name an angle of 0 or 90, a depth of nothing, and what no trial can correct', () => {
    expect(placesOf(correctDepth({ angle: 0, depth: 0 }, { looseness: 6 }))).toEqual([
      'angle',
      'depth',
      'looseness',
    ]);
    expect(placesOf(correctDepth({ angle: 90, depth: 9.5 }, { looseness: 0.2 }))).toEqual(['angle']);
    expect(placesOf(correctDepth(TRIAL, { looseness: Number.NaN, proud: 9, short: -1 }))).toEqual([
      'looseness',
      'proud',
      'short',
    ]);
  });

  it('refuses a correction as large as the joint', () => {
    // At 9.5 mm and 14 degrees the correction reaches the depth at 2 x 9.5 tan 14° = 4.737 mm.
    expect(placesOf(correctDepth(TRIAL, { looseness: 4.73 }))).toEqual([]);
    expect(placesOf(correctDepth(TRIAL, { looseness: 4.74 }))).toEqual(['looseness']);
    expect(placesOf(correctDepth(TRIAL, { looseness: -4.74 }))).toEqual(['looseness']);
    expect(placesOf(correctDepth({ angle: 14, depth: 3 }, { looseness: 0, proud: 3, short: 4 }))).toEqual([
      'proud',
      'short',
    ]);
  });
});

describe('correctGuide', () => {
  const slope = { run: 8 };

  it('moves the guide by g / (2 s), towards the outside face where the joint is loose', () => {
    const loose = correctGuide({ slope }, { looseness: 0.2 });
    expect(loose.ok && loose.value.move).toBeCloseTo(0.8, 12);
    expect(loose.ok && speak(loose.value.because, 'mm')).toBe(
      "Loose by 0.2 mm: 0.2 mm x 8 / 2 = 0.8 mm towards the outside face. Fasten the guide's fence 0.8 mm further from the open ends of its slots.",
    );
    const tight = correctGuide({ slope }, { looseness: -0.2 });
    expect(tight.ok && tight.value.move).toBeCloseTo(-0.8, 12);
  });

  it('refuses a move as large as the joint', () => {
    expect(placesOf(correctGuide({ slope, depth: 18 }, { looseness: 4.4 }))).toEqual([]);
    expect(placesOf(correctGuide({ slope, depth: 18 }, { looseness: 4.5 }))).toEqual(['looseness']);
  });

  it('undoes itself: a joint moved by the correction measures nothing more', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.double({ min: 4, max: 10, noNaN: true }),
        (looseness, run) => {
          const moved = correctGuide({ slope: { run } }, { looseness });
          expect(moved.ok && looseness - (2 * moved.value.move) / run).toBeCloseTo(0, 9);
        },
      ),
    );
  });
});
