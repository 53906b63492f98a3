import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CHEST, folder, GUIDED_CHEST, halfpin } from '../program.ts';

const FOURTEEN = ['trial', '--cutter-angle', '14', '--depth', '9.5'];

const json = (...args: string[]) => {
  const { status, out, err } = halfpin([...args, '--json']);
  expect([status, err]).toEqual([0, '']);
  return JSON.parse(out);
};

const refusals = (...args: string[]): string[] => {
  const { status, out, err } = halfpin(args);
  expect([status, out]).toEqual([2, '']);
  return err.trimEnd().split('\n');
};

describe('trial', () => {
  it('turns what was measured into the next depth, by g / (2 tan a)', () => {
    // 0.2 / (2 x 0.249328) = 0.40108
    expect(json(...FOURTEEN, '--loose', '0.2')).toMatchObject({ depth: 9.9011, change: 0.4011 });
    expect(json(...FOURTEEN, '--tight', '0.2')).toMatchObject({ depth: 9.0989, change: -0.4011 });
  });

  it('moves a sloped template by g / (2 s)', () => {
    expect(json('trial', '--slope', '1:8', '--loose', '0.2')).toMatchObject({ move: 0.8 });
    expect(json('trial', '--slope', '1:6', '--tight', '0.1')).toMatchObject({ move: -0.3 });
  });

  it('corrects the length of the sockets and of the tails', () => {
    expect(json('trial', '--slope', '1:8', '--shy', '0.3', '--short', '0.2')).toMatchObject({
      move: 0,
      stop: { change: -0.3 },
      tails: { change: 0.2 },
    });
  });

  it('says why in one line, and shows in letters what moves', () => {
    const { out } = halfpin([...FOURTEEN, '--loose', '0.2']);
    expect(out.split('\n')[0]).toBe(
      'Loose by 0.2 mm: 0.2 mm / (2 tan 14°) = 0.4 mm deeper, so tighter. Set the',
    );
    expect(out.indexOf('trial, 9.5 mm')).toBeLessThan(out.indexOf('next, 9.9 mm'));
    expect(halfpin(['trial', '--slope', '1:8', '--loose', '0.2']).out).toContain('↑ 0.8 mm, for wider pins');
  });

  it('draws what moves, where a folder is given', () => {
    const where = folder();
    expect(halfpin([...FOURTEEN, '--loose', '0.2', '--out', where]).status).toBe(0);
    expect(readdirSync(where).sort()).toEqual(['trial.pdf', 'trial.svg']);
    expect(readFileSync(join(where, 'trial.svg'), 'utf8')).toContain('0.4 mm deeper');
    writeFileSync(join(where, 'trial.svg'), 'mine');
    expect(refusals(...FOURTEEN, '--loose', '0.1', '--out', where)[0]).toContain('not made by halfpin');
  });

  it("reads a plan's joint: one cutter's depth in a lapped one, the pins' guide in a through one, by hand without a cutter", () => {
    const front = json('trial', GUIDED_CHEST, '--joint', 'buttons front', '--loose', '0.2');
    // 15 deep, 0.2 / (2 tan 8°) = 0.71154 more.
    expect(front).toMatchObject({ depth: 15.7115, change: 0.7115 });
    const back = json('trial', GUIDED_CHEST, '--joint', 'Buttons back', '--loose', '0.2');
    expect(back).toMatchObject({ move: 0.7115 });
    const hand = json('trial', CHEST, '--joint', 'Buttons back', '--tight', '0.2');
    expect(hand).toMatchObject({ pare: 0.1 });
    expect(hand).toEqual(
      json('trial', GUIDED_CHEST, '--joint', 'Buttons back', '--by-hand', '--tight', '0.2'),
    );
    // A side of 11 mm: the straight cutter is set as deep, and deeper by what the tail board is proud.
    expect(
      json('trial', GUIDED_CHEST, '--joint', 'Buttons back', '--loose', '0', '--proud', '0.3').stop.because,
    ).toMatch(/Set the straight cutter 0\.3 mm deeper, at 11\.3 mm\.$/u);
  });

  it('doubts a measurement that has lost its decimal point, in words and as JSON', () => {
    for (const trial of [FOURTEEN, ['trial', '--slope', '1:8']]) {
      const wrong = 'measure again: 2 mm is more than a trial joint is usually out';
      expect(json(...trial, '--loose', '2').advice[0]).toContain(wrong);
      expect(halfpin([...trial, '--loose', '2']).out).toContain(`advice: ${wrong}`);
      expect(json(...trial, '--loose', '0.2').advice).toEqual([]);
    }
  });

  it('advises where the next depth is more than the cutter cuts', () => {
    const { advice } = json(...FOURTEEN, '--loose', '0.2', '--cutter-length', '9.8');
    expect(advice).toEqual([expect.stringMatching(/^9\.9 mm is deeper than the cutter cuts/u)]);
  });
});

describe('what a trial cannot be corrected by', () => {
  it.each([
    [['trial'], ['--loose', '--cutter-angle']],
    [['trial', '--cutter-angle', '0', '--depth', '9', '--loose', '0.2'], ['--cutter-angle']],
    [['trial', '--cutter-angle', '90', '--depth', '9', '--loose', '0.2'], ['--cutter-angle']],
    [['trial', '--cutter-angle', '14', '--loose', '0.2'], ['--depth']],
    // 2 / (2 tan 14°) = 4.01 is more than the joint.
    [['trial', '--cutter-angle', '14', '--depth', '3', '--loose', '2'], ['--loose']],
    [['trial', '--cutter-angle', '14', '--depth', '3', '--tight', '2'], ['--tight']],
    [['trial', '--slope', '1:8', '--depth', '3', '--loose', '1'], ['--loose']],
    [['trial', '--slope', '1:8', '--loose', '0', '--shy', '7'], ['--shy']],
    [['trial', '--slope', '1:8', '--loose', '0.1', '--tight', '0.1'], ['--tight']],
    [['trial', '--slope', '1:8', '--loose', '-0.1'], ['--loose']],
    [['trial', '--slope', '1:8', '--cutter-angle', '8', '--depth', '9', '--loose', '0.1'], ['--slope']],
    [
      ['trial', '--slope', '1:8', '--by-hand', '--loose', '0.1'],
      ['--by-hand', '--log', '--out'],
    ],
    [
      ['trial', '--by-hand', '--depth', '9', '--at', '1', '--loose', '0.1'],
      ['--depth', '--at', '--log', '--out'],
    ],
    [['trial', GUIDED_CHEST, '--loose', '0.1'], ['--joint']],
    [['trial', GUIDED_CHEST, '--joint', 'Socks', '--loose', '0.1'], ['--joint']],
    [['trial', '--joint', 'Buttons front', '--slope', '1:8', '--loose', '0.1'], ['--joint']],
  ])('is refused by name: %j', (args, names) => {
    const where = join(folder(), 'out');
    const lines = refusals(...args, '--out', where, '--log', join(where, 'log'));
    expect(lines.map((line) => line.split(':')[0])).toEqual(names);
    expect(existsSync(where)).toBe(false);
  });
});

describe('a corner that the plan does not have', () => {
  it('is refused with the corners it has, and the nearest as it is typed', () => {
    const [line = ''] = refusals('trial', GUIDED_CHEST, '--joint', 'Buton front', '--loose', '0.1');
    expect(line).toContain('it must be one of "Buttons front", "Buttons back", ');
    expect(line).toMatch(/; try "Buttons front"$/u);
  });
});

describe('a log of trials', () => {
  it('keeps every trial, and says where three of them are heading', () => {
    const log = join(folder(), 'logs', 'cutter.log');
    // A cutter sold as 14 degrees but ground to 13.6, whose joint fits at 10 mm; looseness is read to the hundredth.
    const fits = 10;
    const real = Math.tan((13.6 * Math.PI) / 180);
    let depth = 9;
    const settings: number[] = [];
    for (let i = 0; i < 3; i++) {
      const loose = Number((2 * real * (fits - depth)).toFixed(2));
      const fit = loose < 0 ? ['--tight', String(-loose)] : ['--loose', String(loose)];
      const next = json('trial', '--cutter-angle', '14', '--depth', String(depth), ...fit, '--log', log);
      expect(next.converging.trials).toBe(i + 1);
      depth = Number(next.converging.setting.toFixed(2));
      settings.push(depth);
    }
    const misses = settings.map((setting) => Math.abs(setting - fits));
    expect(misses[0]).toBeGreaterThan(0.02);
    expect(Math.max(...misses.slice(1))).toBeLessThan(0.02);
    const lines = readFileSync(log, 'utf8').split('\n');
    expect(lines).toHaveLength(4);
    expect(lines[0]).toBe('{"angle":14,"depth":9,"loose":0.48}');
  });

  it('is refused with its line where it is damaged, and left as it is', () => {
    const log = join(folder(), 'cutter.log');
    const text = '{"angle":14,"depth":9.5,"loose":0.2}\n{"angle":14,"dep\n';
    writeFileSync(log, text);
    const [line] = refusals(...FOURTEEN, '--loose', '0.1', '--log', log);
    expect(line?.startsWith(`${log}:2: `)).toBe(true);
    expect(line).toMatch(/is no trial; a trial is written .*; correct the line or remove it$/u);
    expect(readFileSync(log, 'utf8')).toBe(text);
  });

  it('begins a new line where its last one was left open', () => {
    const log = join(folder(), 'cutter.log');
    writeFileSync(log, '{"angle":14,"depth":9.5,"loose":0.2}');
    expect(halfpin([...FOURTEEN, '--loose', '0', '--log', log]).status).toBe(0);
    expect(readFileSync(log, 'utf8')).toBe(
      '{"angle":14,"depth":9.5,"loose":0.2}\n{"angle":14,"depth":9.5,"loose":0}\n',
    );
  });

  it('asks for the position of a template, once it may have moved', () => {
    const log = join(folder(), 'template.log');
    const trial = ['trial', '--slope', '1:8', '--log', log];
    expect(json(...trial, '--loose', '0.2').converging).toEqual({ setting: 0.8, trials: 1, spread: 0 });
    expect(refusals(...trial, '--loose', '0.02')[0]).toMatch(
      /^--at: the log holds earlier trials of this slope; .*; try 0\.8mm, if it was moved/u,
    );
    expect(json(...trial, '--loose', '0', '--at', '0.8').converging).toEqual({
      setting: 0.8,
      trials: 2,
      spread: 0,
    });
  });
});
