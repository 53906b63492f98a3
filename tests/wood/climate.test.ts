import { describe, expect, it } from 'vitest';
import { speak } from '../../src/units/phrase.ts';
import { adviseClimate, checkYear, parseMaking } from '../../src/wood/climate.ts';

const told = (text: string): string[] => {
  const result = parseMaking(text);
  return result.ok ? [] : result.complaints.map(({ says }) => speak(says, 'mm'));
};

describe('parseMaking', () => {
  it('reads a moisture content, and air', () => {
    expect(parseMaking('8.5%')).toEqual({ ok: true, value: 8.5 });
    // 21.1 C and 45 % are 8.5 % (Wood Handbook, Table 4-2).
    const air = parseMaking('70F/45%');
    expect(air.ok && air.value).toBeCloseTo(8.5, 1);
  });

  it('refuses conditions in which wood cannot be worked to a size', () => {
    expect(told('5%')).toEqual([expect.stringMatching(/^wood of 5 % moisture content is too dry /u)]);
    expect(told('16%')).toEqual([expect.stringMatching(/^wood of 16 % moisture content is too wet /u)]);
  });

  it('says everything that is wrong with the air', () => {
    expect(told('300C/120%')).toHaveLength(2);
    expect(told('dry')).toHaveLength(1);
  });
});

describe('checkYear', () => {
  it('allows a year without seasons, and one that is damper or drier than the workshop', () => {
    expect(checkYear({ making: 8, driest: 10, dampest: 10 })).toEqual([]);
    expect(checkYear({ making: 12, driest: 7, dampest: 9 })).toEqual([]);
  });

  it('refuses a driest that is damper than dampest', () => {
    expect(
      checkYear({ making: 8, driest: 12, dampest: 7 }).map(({ at, says, remedy }) => [
        at,
        speak(says, 'mm'),
        remedy && speak(remedy, 'mm'),
      ]),
    ).toEqual([
      [
        ['driest'],
        'driest (12 % moisture content) is damper than dampest (7 %); driest must be the drier of the two',
        'exchange the two',
      ],
    ]);
  });
});

describe('adviseClimate', () => {
  it('gives no advice while the published figures hold', () => {
    expect(adviseClimate({ making: 8, driest: 6, dampest: 14 })).toEqual([]);
  });

  it('warns at each end of the year that lies outside', () => {
    expect(adviseClimate({ making: 8, driest: 4, dampest: 18 }).map(({ at }) => at)).toEqual([
      ['driest'],
      ['dampest'],
    ]);
  });
});
