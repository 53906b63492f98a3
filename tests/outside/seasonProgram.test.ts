import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { MM_PER_INCH } from '../../src/units/unit.ts';
import { said } from '../cli/program.ts';

const Outcome = z.object({
  from: z.object({ mc: z.number() }),
  to: z.object({ mc: z.number() }),
  change: z.number(),
  size: z.number(),
});

const season = (...options: string[]) => Outcome.parse(JSON.parse(said('season', ...options, '--json')));

describe('the program, by worked examples in print of Wood Handbook equation 13-2', () => {
  it.each([
    ['a board 5 in wide with the coefficient 0.00129', '0.00129', '5in', '6%', '9%', 0.019, 3],
    [
      'a red alder board 8 in wide, its coefficient rounded to 0.0026',
      '0.0026',
      '8in',
      '6%',
      '12%',
      0.1248,
      4,
    ],
  ] as const)('%s', (_, coefficient, size, from, to, inches, decimals) => {
    const { change } = season(
      '--coefficient',
      `${coefficient},${coefficient}`,
      '--size',
      size,
      '--from',
      from,
      '--to',
      to,
    );
    expect((change / MM_PER_INCH).toFixed(decimals)).toBe(String(inches));
  });
});

describe('the program, by Wood Handbook Table 4-2, the row of 21.1 C (from memory), and Table 13-5', () => {
  it.each([
    ['35', 6.9],
    ['40', 7.7],
    ['45', 8.5],
    ['50', 9.2],
    ['60', 11.0],
    ['70', 13.1],
  ])('finds the moisture content at %s %% relative humidity to 0.1 %%', (humidity, printed) => {
    const board = ['--species', 'Cherry, black', '--size', '100', '--to', '8%'];
    const celsius = season(...board, '--from', `21.1C/${humidity}%`).from.mc;
    const fahrenheit = season(...board, '--from', `70F/${humidity}%`).from.mc;
    expect(Math.abs(celsius - printed)).toBeLessThan(0.1);
    expect(fahrenheit).toBeCloseTo(celsius, 2);
  });

  it('moves black cherry by 0.00248 flatsawn and 0.00126 quartersawn for 1 %', () => {
    const board = ['--species', 'Cherry, black', '--size', '200', '--from', '8%', '--to', '12%'];
    expect(season(...board, '--grain', 'flatsawn')).toMatchObject({ change: 1.984, size: 201.984 });
    expect(season(...board, '--grain', 'quartersawn')).toMatchObject({ change: 1.008, size: 201.008 });
  });
});
