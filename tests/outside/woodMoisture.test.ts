import { describe, expect, it } from 'vitest';
import { celsiusOfFahrenheit, equilibriumMoisture, fahrenheitOfCelsius } from '../../src/wood/moisture.ts';

/** Moisture contents in percent at 5 %, 10 % … 95 % relative humidity. */
const TABLE_4_2: readonly (readonly [celsius: number, row: string])[] = [
  [-1.1, '1.4 2.6 3.7 4.6 5.5 6.3 7.1 7.9 8.7 9.5 10.4 11.3 12.4 13.5 14.9 16.5 18.5 21.0 24.3'],
  [21.1, '1.3 2.5 3.5 4.5 5.4 6.2 6.9 7.7 8.5 9.2 10.1 11.0 12.0 13.1 14.4 16.0 17.9 20.5 23.9'],
  [37.8, '1.2 2.3 3.3 4.2 5.0 5.8 6.5 7.2 7.9 8.7 9.5 10.3 11.2 12.3 13.6 15.1 17.0 19.5 22.9'],
];

describe('Wood Handbook (FPL-GTR-190), Table 4-2, rows written down from memory', () => {
  it.each(TABLE_4_2)('the equation agrees with the row for %f C to 0.1 % moisture', (celsius, row) => {
    const printed = row.split(' ').map(Number);
    expect(printed).toHaveLength(19);
    for (const [i, moisture] of printed.entries()) {
      const computed = equilibriumMoisture({ celsius, humidity: 5 * (i + 1) });
      expect(computed.ok && Math.abs(computed.value - moisture)).toBeLessThan(0.1);
    }
  });
});

describe('the Fahrenheit and Celsius scales', () => {
  it.each([
    ['water freezes', 32, 0],
    ['water boils', 212, 100],
    ['the scales meet', -40, -40],
  ])('%s where both say so', (_, fahrenheit, celsius) => {
    expect(celsiusOfFahrenheit(fahrenheit)).toBe(celsius);
    expect(fahrenheitOfCelsius(celsius)).toBe(fahrenheit);
  });

  it('agree with the pairs printed beside the rows of Table 4-2 (from memory)', () => {
    expect([30, 70, 100, 210].map((f) => celsiusOfFahrenheit(f).toFixed(1))).toEqual([
      '-1.1',
      '21.1',
      '37.8',
      '98.9',
    ]);
  });
});
