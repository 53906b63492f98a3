import { assert, double, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { speak } from '../../src/units/phrase.ts';
import {
  adviseMoisture,
  checkMaking,
  movement,
  parseCut,
  sizeAt,
  thicknessCoefficient,
  widthCoefficient,
} from '../../src/wood/movement.ts';
import type { Wood } from '../../src/wood/species.ts';

const plum: Wood = { name: 'Plum', radial: 0.002, tangential: 0.003, source: 'own' };

const size = double({ min: 1, max: 2000, noNaN: true });
const coefficient = double({ min: 0.0001, max: 0.008, noNaN: true });
const moisture = double({ min: 0, max: 30, noNaN: true });

describe('movement', () => {
  it('is size times coefficient times the change of moisture content', () => {
    expect(movement(200, 0.002, 8, 12)).toBeCloseTo(1.6, 12);
    expect(movement(200, 0.002, 12, 8)).toBeCloseTo(-1.6, 12);
  });

  it('is the same there and back, and in two steps as in one', () => {
    assert(
      property(size, coefficient, moisture, moisture, moisture, (d, c, a, b, e) => {
        expect(movement(d, c, a, b)).toBeCloseTo(-movement(d, c, b, a), 9);
        expect(movement(d, c, a, b) + movement(d, c, b, e)).toBeCloseTo(movement(d, c, a, e), 9);
      }),
    );
  });
});

describe('sizeAt', () => {
  it('adds the movement to the size', () => {
    expect(sizeAt(200, 0.002, 8, 12)).toBeCloseTo(201.6, 12);
    expect(sizeAt(200, 0.002, 8, 8)).toBe(200);
  });
});

describe('the coefficients of a board', () => {
  it('are tangential across a flatsawn width and radial through its thickness', () => {
    expect(widthCoefficient(plum, 'flatsawn')).toBe(0.003);
    expect(thicknessCoefficient(plum, 'flatsawn')).toBe(0.002);
  });

  it('are radial across a quartersawn width and tangential through its thickness', () => {
    expect(widthCoefficient(plum, 'quartersawn')).toBe(0.002);
    expect(thicknessCoefficient(plum, 'quartersawn')).toBe(0.003);
  });
});

describe('parseCut', () => {
  it.each(['flatsawn', 'Flat-sawn', ' flat sawn ', 'plainsawn', 'plain-sawn'])(
    'reads %j as flatsawn',
    (text) => {
      expect(parseCut(text)).toEqual({ ok: true, value: 'flatsawn' });
    },
  );

  it.each(['quartersawn', 'Quarter-Sawn', 'quarter sawn'])('reads %j as quartersawn', (text) => {
    expect(parseCut(text)).toEqual({ ok: true, value: 'quartersawn' });
  });

  it.each(['', 'riftsawn', 'radial', 'flat', 'constructor'])(
    'refuses %j and says what is allowed',
    (text) => {
      const result = parseCut(text);
      expect(result).toMatchObject({
        ok: false,
        complaints: [{ at: [], hint: [expect.stringContaining('flatsawn')] }],
      });
      expect(result.ok ? '' : result.complaints.map(({ says }) => speak(says, 'mm')).join()).toBe(
        `${JSON.stringify(text)} is not a cut; a board must be flatsawn or quartersawn`,
      );
    },
  );
});

describe('checkMaking', () => {
  it.each([6, 8.5, 14, 5.96, 14.04])('lets wood of %f %% be worked to a size', (percent) => {
    expect(checkMaking(percent)).toEqual({ ok: true, value: percent });
  });

  it.each([
    [5.9, 'wood of 5.9 % moisture content is too dry to work to a size; '],
    [14.1, 'wood of 14.1 % moisture content is too wet to work to a size; '],
  ])('refuses %f %%', (percent, says) => {
    const result = checkMaking(percent);
    expect(result).toMatchObject({ ok: false, complaints: [{ at: [], hint: ['21C/45%'] }] });
    expect(result.ok ? '' : result.complaints.map((complaint) => speak(complaint.says, 'mm')).join()).toBe(
      `${says}when made it must be 6 % to 14 %, where the published figures hold`,
    );
  });

  it('refuses what is no number', () => {
    expect(checkMaking(Number.NaN).ok).toBe(false);
  });
});

describe('adviseMoisture', () => {
  it('gives no advice from 6 % to 14 %', () => {
    expect([6, 10, 14].flatMap((percent) => adviseMoisture(percent, ['to']))).toEqual([]);
  });

  it('warns outside, at the place that it is told', () => {
    expect(adviseMoisture(16, ['climate', 'dampest']).map(({ at, says }) => [at, speak(says, 'mm')])).toEqual(
      [
        [
          ['climate', 'dampest'],
          'at 16 % moisture content the size is a rough guide; the published figures hold from 6 % to 14 %',
        ],
      ],
    );
    expect(adviseMoisture(5.9, [])).toHaveLength(1);
  });
});
