import { describe, expect, it } from 'vitest';
import { speak } from '../../src/units/phrase.ts';
import { type OwnFigures, ownWood } from '../../src/wood/ownWood.ts';

const complaintsOf = (figures: OwnFigures) => {
  const result = ownWood('Plum', figures);
  return result.ok
    ? []
    : result.complaints.map(({ at, says, hint }) => ({
        at,
        says: speak(says, 'mm'),
        hint: hint && speak(hint, 'mm'),
      }));
};

describe('ownWood', () => {
  it('uses coefficients as they are', () => {
    expect(ownWood('Plum', { coefficient: { radial: 0.002, tangential: 0.003 } })).toEqual({
      ok: true,
      value: { name: 'Plum', radial: 0.002, tangential: 0.003, source: 'own' },
    });
  });

  it('turns shrinkage into coefficients', () => {
    // 3 / (30 (100 - 2)) and 6 / (30 (100 - 4)).
    const result = ownWood('Plum', { shrinkage: { radial: 3, tangential: 6 } });
    expect(result).toMatchObject({ ok: true, value: { name: 'Plum', source: 'own' } });
    expect(result.ok && result.value.radial).toBeCloseTo(1 / 980, 12);
    expect(result.ok && result.value.tangential).toBeCloseTo(1 / 480, 12);
  });

  it.each<OwnFigures>([
    { shrinkage: { radial: 0.5, tangential: 20 } },
    { shrinkage: { radial: 5, tangential: 5 } },
    { coefficient: { radial: 0.00017, tangential: 0.00769 } },
  ])('allows the ends of the range, and wood that moves the same both ways: %o', (figures) => {
    expect(complaintsOf(figures)).toEqual([]);
  });

  it('names every figure that no wood has', () => {
    expect(complaintsOf({ shrinkage: { radial: 0.4, tangential: 71 } })).toEqual([
      {
        at: ['shrinkage', 'radial'],
        says: 'no wood has a radial shrinkage of 0.4; it must be 0.5 to 20 (percent, from green to oven-dry)',
        hint: '{radial: 3.7, tangential: 7.1}',
      },
      {
        at: ['shrinkage', 'tangential'],
        says: 'no wood has a tangential shrinkage of 71; it must be 0.5 to 20 (percent, from green to oven-dry)',
        hint: '{radial: 3.7, tangential: 7.1}',
      },
    ]);
  });

  it('does not also suspect a pair that is the wrong way round only because a figure is wild', () => {
    expect(complaintsOf({ shrinkage: { radial: 37, tangential: 7.1 } }).map(({ at }) => at)).toEqual([
      ['shrinkage', 'radial'],
    ]);
  });

  it('catches a coefficient given in percent', () => {
    expect(complaintsOf({ coefficient: { radial: 0.002, tangential: 0.25 } })).toEqual([
      {
        at: ['coefficient', 'tangential'],
        says: 'no wood has a tangential coefficient of 0.25; it must be 0.00017 to 0.00769 (for 1 % of moisture content)',
        hint: '{radial: 0.00126, tangential: 0.00248}',
      },
    ]);
  });

  it.each([Number.NaN, -1, Number.POSITIVE_INFINITY])('refuses %d', (radial) => {
    expect(complaintsOf({ shrinkage: { radial, tangential: 6 } })).toHaveLength(1);
    expect(complaintsOf({ coefficient: { radial, tangential: 0.003 } })).toHaveLength(1);
  });

  it('suspects a pair that is the wrong way round', () => {
    expect(complaintsOf({ shrinkage: { radial: 7.1, tangential: 3.7 } })).toEqual([
      {
        at: ['shrinkage'],
        says: 'the radial shrinkage of 7.1 is over the tangential one of 3.7; wood moves least across its rings',
        hint: '{radial: 3.7, tangential: 7.1}',
      },
    ]);
  });
});
