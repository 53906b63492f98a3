import { assert, double, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { speak } from '../../src/units/phrase.ts';
import {
  celsiusOfFahrenheit,
  equilibriumMoisture,
  fahrenheitOfCelsius,
  formatPercent,
  parseMoisture,
} from '../../src/wood/moisture.ts';

const spoken = (text: string): string[] => {
  const result = parseMoisture(text);
  return result.ok ? [] : result.complaints.map(({ says }) => speak(says, 'mm'));
};

const celsius = double({ min: -1, max: 98.8, noNaN: true });
const humidity = double({ min: 5, max: 95, noNaN: true });

const moistureIn = (air: { celsius: number; humidity: number }): number => {
  const result = equilibriumMoisture(air);
  return result.ok ? result.value : Number.NaN;
};

describe('equilibriumMoisture', () => {
  it('rises with the humidity', () => {
    assert(
      property(celsius, humidity, humidity, (t, a, b) => {
        const [drier, damper] = [Math.min(a, b), Math.max(a, b)];
        expect(moistureIn({ celsius: t, humidity: drier })).toBeLessThan(
          moistureIn({ celsius: t, humidity: damper }) + 1e-9,
        );
      }),
    );
  });

  it('falls with the temperature, in air as warm as a room or warmer', () => {
    const warm = double({ min: 20, max: 98.8, noNaN: true });
    assert(
      property(warm, warm, humidity, (a, b, h) => {
        const [cooler, warmer] = [Math.min(a, b), Math.max(a, b)];
        expect(moistureIn({ celsius: warmer, humidity: h })).toBeLessThan(
          moistureIn({ celsius: cooler, humidity: h }) + 1e-9,
        );
      }),
    );
  });

  it('is never over 30 %, where wood is green', () => {
    assert(
      property(celsius, humidity, (t, h) => {
        const moisture = moistureIn({ celsius: t, humidity: h });
        expect(moisture).toBeGreaterThan(0);
        expect(moisture).toBeLessThan(30);
      }),
    );
  });

  it.each([
    { celsius: celsiusOfFahrenheit(30), humidity: 5 },
    { celsius: celsiusOfFahrenheit(210), humidity: 95 },
  ])('answers at the ends of its range', (air) => {
    expect(equilibriumMoisture(air).ok).toBe(true);
  });

  it.each([
    { celsius: -1.2, humidity: 45 },
    { celsius: 99, humidity: 45 },
    { celsius: 21, humidity: 4.9 },
    { celsius: 21, humidity: 95.1 },
    { celsius: Number.NaN, humidity: 45 },
    { celsius: 21, humidity: Number.NaN },
  ])('refuses %o, which lies just outside its range', (air) => {
    const result = equilibriumMoisture(air);
    expect(!result.ok && result.complaints).toHaveLength(1);
  });
});

describe('celsiusOfFahrenheit and fahrenheitOfCelsius', () => {
  it('undo each other', () => {
    assert(
      property(double({ min: -500, max: 500, noNaN: true }), (t) => {
        expect(celsiusOfFahrenheit(fahrenheitOfCelsius(t))).toBeCloseTo(t, 9);
      }),
    );
  });
});

describe('parseMoisture', () => {
  it.each([
    '21C/45%',
    ' 21 °C / 45 % ',
    '21c/45%',
    '21.0C/45.0%',
    '21,0 C/45,0%',
    '+21C/45%',
    '69.8F/45%',
    '69.8 °f / 45 %',
  ])('reads %s as air of 21 C and 45 %', (text) => {
    const result = parseMoisture(text);
    expect(result.ok && result.value).toBeCloseTo(moistureIn({ celsius: 21, humidity: 45 }), 9);
  });

  it.each(['-1C/45%', '−1 C/45%', '- 1C/45%'])('reads %s as air below freezing', (text) => {
    expect(parseMoisture(text)).toEqual(equilibriumMoisture({ celsius: -1, humidity: 45 }));
  });

  it.each([
    ['8%', 8],
    [' 8.5 %', 8.5],
    ['8,5%', 8.5],
    ['.5%', 0.5],
    ['0%', 0],
    ['30%', 30],
  ])('reads %s as what a moisture meter says', (text, moisture) => {
    expect(parseMoisture(text)).toEqual({ ok: true, value: moisture });
  });

  it.each([
    '',
    '8',
    '21C',
    '45%/21C',
    '21/45%',
    '21K/45%',
    '21C/45',
    '21C/-45%',
    '-8%',
    'x21C/45%',
    '21C/45%x',
    'x8%',
    '8%x',
    '1234567%',
    '21C 45%',
  ])('does not take %j for conditions', (text) => {
    expect(spoken(text)).toEqual([
      `${JSON.stringify(text)} is neither air nor a moisture content; air is a temperature and a relative humidity`,
    ]);
  });

  it('says what is allowed, in both scales, when the temperature is none that wood is kept at', () => {
    expect(spoken('300C/45%')).toEqual([
      '300 °C (572 °F) is outside the published table; a temperature must be -1.1 °C (30 °F) to 98.9 °C (210 °F)',
    ]);
    expect(spoken('500F/45%')).toEqual([
      '260 °C (500 °F) is outside the published table; a temperature must be -1.1 °C (30 °F) to 98.9 °C (210 °F)',
    ]);
  });

  it('says what is allowed when the air would be more than full of water', () => {
    expect(spoken('21C/120%')).toEqual([
      'a relative humidity of 120 % is outside the published table; it must be 5 % to 95 %',
    ]);
  });

  it('complains of the temperature and the humidity at once', () => {
    expect(spoken('300C/101%')).toHaveLength(2);
  });

  it('suspects a humidity where a moisture content is that of green wood', () => {
    expect(spoken('70%')).toEqual([
      'wood of 70 % moisture content is still green; it must be 0 % to 30 %, and a relative humidity needs its temperature',
    ]);
    expect(parseMoisture('30.1%').ok).toBe(false);
  });

  it.each(['300C/45%', '21C/120%', '70%', '21C'])('says what to try instead of %s', (text) => {
    const result = parseMoisture(text);
    for (const { at, hint } of result.ok ? [] : result.complaints) {
      expect(at).toEqual([]);
      expect(hint && speak(hint, 'mm')).toContain('21C/45%');
    }
  });
});

describe('formatPercent', () => {
  it('gives a tenth where there is one', () => {
    expect([8, 8.04, 8.46].map(formatPercent)).toEqual(['8 %', '8 %', '8.5 %']);
  });
});
