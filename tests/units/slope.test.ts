import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { speak } from '../../src/units/phrase.ts';
import { degrees, formatSlope, parseSlope, rise, slopeOfDegrees } from '../../src/units/slope.ts';

const read = (text: string): number => {
  const result = parseSlope(text);
  if (!result.ok) throw new Error(result.complaints.map(({ says }) => speak(says, 'mm')).join('; '));
  return result.value.run;
};

const refusal = (text: string): string | undefined => {
  const result = parseSlope(text);
  if (result.ok) return undefined;
  return result.complaints
    .map(({ says, hint = [] }) => `${speak(says, 'mm')}; try ${speak(hint, 'mm')}`)
    .join();
};

describe('parseSlope reads', () => {
  it.each([
    ['1:7', 7],
    ['1 : 7', 7],
    [' 1:7 ', 7],
    ['1 in 7', 7],
    ['1 IN 7', 7],
    ['1in7', 7],
    ['1/7', 7],
    ['1:7.5', 7.5],
    ['1:7,5', 7.5],
    ['1:2.5', 2.5],
    ['1:20', 20],
  ])('%j as 1 across for %d along', (text, run) => {
    expect(read(text)).toBe(run);
  });

  // cot 8.13° = 7.0002 and cot 10° = 5.6713, by tables of natural cotangents (from memory).
  it.each([
    ['8.13deg', 7.0],
    ['8,13 deg', 7.0],
    ['8.13°', 7.0],
    ['8.13 °', 7.0],
    ['10 degrees', 5.671],
    ['10 degree', 5.671],
  ])('%j as 1 across for %d along', (text, run) => {
    expect(read(text)).toBeCloseTo(run, 3);
  });
});

describe('parseSlope refuses', () => {
  it.each([
    [''],
    ['steep'],
    ['7'],
    ['1'],
    ['1:'],
    [':7'],
    ['1:seven'],
    ['2:14'],
    ['1:-7'],
    ['-1:7'],
    ['1:1e1'],
    ['1:7:8'],
    ['8.13'],
    ['8.13rad'],
    ['deg'],
    ['NaNdeg'],
    ['1:Infinity'],
    ['１:７'],
  ])('%j, saying how a slope is written', (text) => {
    expect(refusal(text)).toBe(
      `${JSON.stringify(text)} is not a slope; a slope is written 1:7, 1 in 7 or 8.13deg; try 1:7`,
    );
  });

  it.each([
    ['1:0'],
    ['1:2.499'],
    ['1:20.001'],
    ['1:1000000000'],
    [`1:${'9'.repeat(400)}`],
    ['0deg'],
    ['2.8deg'],
    ['21.9deg'],
    ['45°'],
    ['90°'],
    ['180°'],
  ])('%j, saying which slopes can be cut', (text) => {
    expect(refusal(text)).toMatch(/ is outside what can be cut; a slope must be 1:2\.5 to 1:20; try 1:7$/u);
  });

  it('any text at all without throwing, and accepts nothing outside 1:2.5 to 1:20', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^1(:| in )[0-9.,]{1,6}(deg|°)?$/u)), (text) => {
        const result = parseSlope(text);
        if (!result.ok) return;
        expect(result.value.run).toBeGreaterThanOrEqual(2.5 - 1e-9);
        expect(result.value.run).toBeLessThanOrEqual(20 + 1e-9);
      }),
    );
  });
});

describe('a slope', () => {
  it('rises one part in its run', () => {
    expect(rise({ run: 8 })).toBe(0.125);
  });

  it('is shown to the hundredth', () => {
    expect(formatSlope({ run: 7 })).toBe('1:7');
    expect(formatSlope({ run: 7.125 })).toBe('1:7.13');
    expect(formatSlope({ run: 2.5 })).toBe('1:2.5');
  });

  it('becomes an angle and the same slope again', () => {
    fc.assert(
      fc.property(fc.double({ min: 2.5, max: 20, noNaN: true }), (run) => {
        const angle = degrees({ run });
        expect(slopeOfDegrees(angle).run).toBeCloseTo(run, 9);
        // An angle that is shown as that of a limit is taken as the limit.
        const shown = [2.5, 20].find((limit) => Math.abs(degrees({ run: limit }) - angle) <= 0.005);
        expect(read(`${angle.toFixed(12)}°`)).toBeCloseTo(shown ?? run, 9);
      }),
    );
  });
});
