import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convergence, formatTrial, parseTrialLog, type Trial } from '../../../src/router/trial/trialLog.ts';
import { speak } from '../../../src/units/phrase.ts';

const LOG = `{"angle":14,"depth":9.5,"loose":0.2}

{"angle":14,"depth":9.9,"loose":0.03}\r
{"slope":8,"at":-0.4,"loose":-0.1}
`;

describe('a log of trials', () => {
  it('is one trial a line, blank lines and line ends of either kind allowed', () => {
    expect(parseTrialLog(LOG)).toEqual({
      trials: [
        { angle: 14, depth: 9.5, loose: 0.2 },
        { angle: 14, depth: 9.9, loose: 0.03 },
        { slope: 8, at: -0.4, loose: -0.1 },
      ],
      complaints: [],
    });
  });

  it('says which lines are damaged, and keeps the others', () => {
    const damaged = `${LOG}{"angle":14,"dep\nnull\n{"angle":0,"depth":9,"loose":0}\n{"angle":14,"depth":"9","loose":0}\n`;
    const { trials, complaints } = parseTrialLog(damaged);
    expect(trials.length).toBe(3);
    expect(complaints.map(({ at }) => at)).toEqual([
      ['line', 5],
      ['line', 6],
      ['line', 7],
      ['line', 8],
    ]);
    expect(speak(complaints[0]?.says ?? [], 'mm')).toMatch(
      /^"\{\\"angle\\":14,\\"dep" is no trial; a trial is written/u,
    );
  });

  it('leaves out what no trial can be', () => {
    // Beyond what the corrections take: an angle and a slope outside 1:20 to 1:2.5, deeper than a board, looser than 5 mm.
    const lines = [
      '{"angle":2,"depth":9,"loose":0}',
      '{"angle":30,"depth":9,"loose":0}',
      '{"angle":14,"depth":0,"loose":0}',
      '{"angle":14,"depth":201,"loose":0}',
      '{"angle":14,"depth":9,"loose":5.1}',
      '{"slope":2,"at":0,"loose":0}',
      '{"slope":1e300,"at":0,"loose":0.2}',
      '{"slope":8,"at":-201,"loose":0}',
    ];
    const { trials, complaints } = parseTrialLog(lines.join('\n'));
    expect(trials).toEqual([]);
    expect(complaints.map(({ at }) => at[1])).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it('reads back what it writes', () => {
    // JSON has no negative zero.
    const number = (min: number, max: number) =>
      fc.double({ min, max, noNaN: true }).map((value) => value + 0);
    const loose = number(-5, 5);
    const trial: fc.Arbitrary<Trial> = fc.oneof(
      fc.record({ angle: number(3, 21), depth: number(0.001, 200), loose }),
      fc.record({ slope: number(2.5, 20), at: number(-200, 200), loose }),
    );
    fc.assert(
      fc.property(fc.array(trial), (trials) => {
        expect(parseTrialLog(trials.map(formatTrial).join(''))).toEqual({ trials, complaints: [] });
      }),
    );
  });
});

describe('convergence', () => {
  it('is nothing before the first trial, and what one trial corrects to after it', () => {
    expect(convergence([])).toBeUndefined();
    const change = 0.2 / (2 * Math.tan((14 * Math.PI) / 180));
    expect(convergence([{ angle: 14, depth: 9.5, loose: 0.2 }])).toEqual({
      setting: expect.closeTo(9.5 + change, 9),
      trials: 1,
      spread: 0,
    });
  });

  it('finds where three trials of a cutter ground to 13.6 degrees instead of 14 are heading', () => {
    const [fits, real] = [10, Math.tan((13.6 * Math.PI) / 180)];
    const at = (depth: number): Trial => ({ angle: 14, depth, loose: 2 * real * (fits - depth) });
    const called = (trials: readonly Trial[]) => convergence(trials)?.setting ?? Number.NaN;
    const first = [at(9)];
    const second = [...first, at(called(first))];
    const third = [...second, at(called(second))];
    const misses = [first, second, third].map((trials) => Math.abs(called(trials) - fits));
    expect(misses[0]).toBeGreaterThan(0.02);
    expect(misses[1]).toBeLessThan((misses[0] ?? 0) / 5);
    expect(misses[2]).toBeLessThan(misses[1] ?? 0);
    expect(convergence(third)?.trials).toBe(3);
  });

  it('is found from a log of any length', () => {
    const trial = { angle: 14, depth: 9, loose: 0 };
    expect(convergence(new Array<typeof trial>(200_000).fill(trial))).toMatchObject({ spread: 0 });
  });

  it('lets trials of other cutters and slopes be', () => {
    const sloped: Trial = { slope: 8, at: 0, loose: 0.1 };
    expect(
      convergence([sloped, { angle: 8, depth: 9, loose: 1 }, { angle: 14, depth: 9, loose: 0 }]),
    ).toEqual({ setting: 9, trials: 1, spread: 0 });
    expect(convergence([{ angle: 8, depth: 9, loose: 1 }, sloped])?.setting).toBeCloseTo(0.4, 12);
  });
});
