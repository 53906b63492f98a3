import { describe, expect, it } from 'vitest';
import { speak } from '../../src/units/phrase.ts';
import { adviseClimate, parseClimate } from '../../src/wood/climate.ts';

const complaintsOf = (making: string, driest: string, dampest: string) => {
  const result = parseClimate({ making, driest, dampest });
  return result.ok ? [] : result.complaints;
};

describe('parseClimate', () => {
  it('reads each part as a moisture content', () => {
    expect(parseClimate({ making: '8.5%', driest: '6.2%', dampest: '13.1%' })).toEqual({
      ok: true,
      value: { making: 8.5, driest: 6.2, dampest: 13.1 },
    });
  });

  it('reads air, in which 21.1 C and 30, 45 and 70 % are 6.2, 8.5 and 13.1 % (Wood Handbook, Table 4-2)', () => {
    const result = parseClimate({ making: '21.1C/45%', driest: '70F/30%', dampest: '21.1C/70%' });
    expect(result.ok && result.value.making).toBeCloseTo(8.5, 1);
    expect(result.ok && result.value.driest).toBeCloseTo(6.2, 1);
    expect(result.ok && result.value.dampest).toBeCloseTo(13.1, 1);
  });

  it('allows a year without seasons, and one that is damper or drier than the workshop', () => {
    expect(complaintsOf('8%', '10%', '10%')).toEqual([]);
    expect(complaintsOf('12%', '7%', '9%')).toEqual([]);
  });

  it('allows a place to be drier or damper than wood can be worked in', () => {
    expect(complaintsOf('8%', '4%', '18%')).toEqual([]);
  });

  it('says everything at once, each at its part', () => {
    expect(complaintsOf('5%', 'dry', '300C/120%').map(({ at }) => at)).toEqual([
      ['making'],
      ['driest'],
      ['dampest'],
      ['dampest'],
    ]);
    expect(complaintsOf('wet', '8%', '10%').map(({ at }) => at)).toEqual([['making']]);
    expect(complaintsOf('8%', '8%', 'wet').map(({ at }) => at)).toEqual([['dampest']]);
  });

  it('refuses a driest that is damper than dampest, and turns them round', () => {
    expect(
      complaintsOf('3%', '12 %', '7%').map(({ at, says, hint }) => [
        at,
        speak(says, 'mm'),
        hint && speak(hint, 'mm'),
      ]),
    ).toEqual([
      [['making'], expect.stringContaining('too dry'), '21C/45%'],
      [
        ['driest'],
        'driest (12 % moisture content) must not be damper than dampest (7 %)',
        'driest: 7%, dampest: 12 %',
      ],
    ]);
  });
});

describe('adviseClimate', () => {
  it('has nothing to say while the published figures hold', () => {
    expect(adviseClimate({ making: 8, driest: 6, dampest: 14 })).toEqual([]);
  });

  it('warns at each end of the year that lies outside', () => {
    expect(adviseClimate({ making: 8, driest: 4, dampest: 18 }).map(({ at }) => at)).toEqual([
      ['driest'],
      ['dampest'],
    ]);
  });
});
