import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { halfpin } from './program.ts';

const HERE = mkdtempSync(join(tmpdir(), 'halfpin-fingers-'));
afterAll(() => rmSync(HERE, { recursive: true, force: true }));

const CORNER = ['--width', '100', '--tail-board', '11', '--pin-board', '20', '--lap', '5', '--pin', '10'];
const CUTTER = ['--cutter-diameter', '12.7', '--cutter-angle', '8', '--cutter-length', '20'];
const FINGERS = ['--fingers-together', '14', '--fingers-bush', '16'];

const lay = (...args: string[]) => halfpin(['set-out', ...args]);
const record = (...args: string[]) => JSON.parse(lay(...args, '--json').out);

const PLAN = join(HERE, 'chest.yaml');
writeFileSync(
  PLAN,
  `name: Chest
stock: {front: {thickness: 20}, side: {thickness: 11}}
cutter: {diameter: 12.7, angle: 8, length: 20, straight: 8, bush: 16, pinBush: 11}
fingers: {together: 14, through: {channel: 20}}
family: {spacers: 2}
joint: {pin: 8.5, halfPin: 6, lap: 5}
back: {joint: {pin: 9.7}}
drawers:
  - {name: Buttons, opening: {width: 280, height: 76, depth: 420}}
  - {name: Ribbon, opening: {width: 280, height: 110, depth: 420}}
  - {name: Cloth, opening: {width: 574, height: 190, depth: 420}}
`,
);

describe('set-out along fingers', () => {
  it('gives the pairs, the gaps and the sockets of a corner in mm', () => {
    const [corner] = record(...CORNER, ...CUTTER, ...FINGERS).joints;
    const { pairs, gaps, sockets } = corner.fingers;
    expect(corner.way).toBe('none');
    expect(pairs).toHaveLength(corner.tails.length);
    expect(gaps).toHaveLength(corner.tails.length - 1);
    corner.tails.forEach(({ tip, base }: { tip: number[]; base: number[] }, i: number) => {
      // (16 - 12.7) / 2 inside the base, and as much outside the tip.
      expect(pairs[i].from).toBeCloseTo((base[0] ?? 0) + 1.65, 3);
      expect(pairs[i].to).toBeCloseTo((base[1] ?? 0) - 1.65, 3);
      expect(pairs[i].spacer).toBeCloseTo(pairs[i].to - pairs[i].from - 14, 3);
      expect(sockets[i]).toEqual({
        from: expect.closeTo((tip[0] ?? 0) - 1.65, 3),
        to: expect.closeTo((tip[1] ?? 0) + 1.65, 3),
      });
    });
  });

  it('gives the spacers of a set, and the price of few', () => {
    const { joints, spacers, prices, family } = record(PLAN);
    expect(prices.map(({ spacers: n, met }: { spacers: number; met: boolean }) => [n, met])).toEqual([
      [1, true],
      [2, true],
      [3, true],
    ]);
    expect(Object.keys(prices[0])).toEqual(['spacers', 'met', 'spread', 'sum', 'changed']);
    expect(family.spread).toBe(prices[1].spread);
    const fronts = spacers.filter(({ corner }: { corner: string }) => corner === 'front');
    expect(fronts.length).toBeLessThanOrEqual(2);
    expect(Object.keys(fronts[0])).toEqual(['width', 'count', 'corner', 'drawers']);
    const most = Math.max(
      ...joints
        .filter(({ corner }: { corner: string }) => corner === 'front')
        .map(({ tails }: { tails: unknown[] }) => tails.length),
    );
    expect(fronts[0].count).toBe(most);
    // (11 - 8) / cos 8 + 16 - 12.7 - (20 - 14), by 2 tan 8.
    const angle = (8 * Math.PI) / 180;
    for (const { corner, beyond } of joints)
      expect(beyond).toEqual(
        corner === 'back'
          ? expect.closeTo((3 / Math.cos(angle) + 3.3 - 6) / (2 * Math.tan(angle)), 4)
          : undefined,
      );
  });

  it('has null for through pins without tapered fingers', () => {
    const [corner] = record(
      '--width',
      '100',
      '--tail-board',
      '15',
      '--pin-board',
      '15',
      ...CUTTER,
      ...FINGERS,
    ).joints;
    expect([corner.beyond, 'way' in corner]).toEqual([null, false]);
  });

  it('says in words what to set', () => {
    const { status, out } = lay(PLAN);
    expect(status).toBe(0);
    expect(out.split('\n').every((line) => line.length <= 80)).toBe(true);
    expect(out).toContain('The pairs of fingers over the tails, from the reference edge, mm:');
    expect(out).toContain('The spacers between the fingers of a pair, mm:');
    expect(out).toMatch(/spacers +widest by narrowest +half pins +drawers changed/u);
    expect(out).toMatch(/set\s+the\s+pin\s+board's\s+inside\s+face\s+1\.17 mm beyond/u);
  });

  it('gives spacers in inches finer than a rule is marked', () => {
    const mm = [...CORNER, ...CUTTER, ...FINGERS].map((word, i, all) =>
      /^\d/u.test(word) && all[i - 1] !== '--cutter-angle' ? `${word}mm` : word,
    );
    const { out } = lay(...mm, '--tails', '2', '--half-pin', '10mm', '--units', 'in');
    expect(out).toMatch(/reference edge, inches to 1\/64;\s+spacers\s+inches to \.001:/u);
    // Two tails of 35 mm: 35 + 12.7 - 30 tan 8 - 16 - 14 mm are .531 in.
    expect(out).toMatch(/^pair 2 .* \.531\s*$/mu);
  });

  it.each([
    [
      [...FINGERS.slice(0, 2)],
      '--fingers-bush: the guide bush that runs between the fingers is missing; try 16mm\n',
    ],
    [
      ['--fingers-bush', '16'],
      '--fingers-together: the width of a pair of fingers pushed together is missing; try --fingers-together 20mm\n',
    ],
    [['--fingers-together', '-5', '--fingers-bush', '16'], /^--fingers-together: .*-5/u],
    [
      ['--fingers-together', '14', '--fingers-bush', '12'],
      '--fingers-bush: the guide bush is 12 mm outside; the dovetail cutter of 12.7 mm must pass through it, so it must be 12.7 mm or more; try 16mm\n',
    ],
    [
      [...FINGERS, '--fingers-pairs', 'two'],
      '--fingers-pairs: "two" is not a number of pairs of fingers; it must be a whole number from 1; try 10\n',
    ],
    [
      [...FINGERS, '--fingers-bar', '20'],
      /^--fingers-bar: from the first pair's outer edge to the last's there are [\d.]+ mm, more than the bar's 20 mm; try [\d.]+mm\n$/u,
    ],
    [
      [...FINGERS, '--tails', '4'],
      /^--tails: a tail is [\d.]+ mm wide; the pair of fingers that guards it would be .*the nearest that works: \d tails? of/u,
    ],
    // A gap under the bush is a pin under the cutter's least.
    [[...FINGERS, '--pin', '8'], /^--pin: a pin is 8 mm wide; at this depth the cutter removes 8\.48 mm/u],
  ] as const)('refuses %j by name', (options, says) => {
    const { status, err, out } = lay(
      ...(options.some((word) => word === '--pin') ? CORNER.slice(0, -2) : CORNER),
      ...CUTTER,
      ...options,
    );
    expect([status, out]).toEqual([2, '']);
    if (typeof says === 'string') expect(err).toBe(says);
    else expect(err).toMatch(says);
  });

  it('refuses fingers without a cutter, and beside a plan that names its own', () => {
    expect(lay(...CORNER, ...FINGERS).err).toBe(
      '--fingers-together: there is no dovetail cutter for it to go with; try --cutter-diameter 12.7mm --cutter-angle 8 --cutter-length 20mm\n' +
        '--fingers-bush: there is no dovetail cutter for it to go with; try --cutter-diameter 12.7mm --cutter-angle 8 --cutter-length 20mm\n',
    );
    expect(lay(PLAN, ...FINGERS).err).toContain('change fingers.together there');
    expect(halfpin(['draw', PLAN, '--bush', '17', '--out', join(HERE, 'out')]).err).toBe(
      "--bush: the plan's fingers are set for its own bush; change cutter.bush in the plan, or give the fingers a bush there (fingers.bush)\n",
    );
  });
});
