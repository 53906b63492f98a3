import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { replacing, halfpin as run } from '../program.ts';

const folder = mkdtempSync(join(tmpdir(), 'halfpin-'));
afterAll(() => rmSync(folder, { recursive: true }));

const halfpin = (...args: string[]) => {
  const { status, out, err } = run(args);
  return { status, stdout: out, lines: err.split('\n').filter((line) => line !== '') };
};

const season = (...args: string[]) => halfpin('season', ...args);

const CHEST = 'examples/haberdashery-chest-seasons.yaml';
const CHERRY = ['--species', 'Cherry, black', '--size', '180'];

/** Writes a plan of one drawer 75 high in an opening of 76, of woods that are easy to reckon with. */
const planOf = (...lines: string[]): string => {
  const path = join(folder, 'plan.yaml');
  writeFileSync(
    path,
    [
      'name: Small',
      'woods: {Plum: {coefficient: {radial: 0.001, tangential: 0.002}}, Pear: {coefficient: {radial: 0.0015, tangential: 0.003}}}',
      'stock: {front: {thickness: 20, species: Plum}, side: {thickness: 11, species: Pear}, bottom: {species: Plum}}',
      ...lines,
      'drawers: [{name: Buttons, opening: {width: 280, height: 76, depth: 420}}]',
    ].join('\n'),
  );
  return path;
};

const CLIMATE = 'climate: {making: 8%, driest: 6%, dampest: 12%}';

describe('season, of one board', () => {
  it('prints one object for other programs', () => {
    const { status, stdout, lines } = season(...CHERRY, '--from', '8%', '--to', '12%', '--json');
    expect({ status, lines }).toEqual({ status: 0, lines: [] });
    // 180 × 0.00248 × 4.
    expect(JSON.parse(stdout)).toMatchObject({
      from: { mc: 8 },
      to: { mc: 12 },
      change: 1.7856,
      size: 181.7856,
    });
  });

  it('says it in words, with the source of the figures and what was assumed', () => {
    expect(
      season(...CHERRY, '--from', '8%', '--to', '6%')
        .stdout.replaceAll('\n  ', ' ')
        .split('\n'),
    ).toEqual([
      'Cherry, black, flatsawn: 180 mm wide at 8 % moisture content.',
      'At 6 % moisture content: 179.11 mm, 0.89 mm narrower.',
      'Each 1 % of moisture content makes 0.248 % of the width, a coefficient of 0.00248: Wood Handbook (FPL-GTR-190, 2010), Table 13-5.',
      'Taken as flatsawn, which moves more across its width; add --grain quartersawn if it is that.',
      '',
    ]);
  });

  it('says where a figure is from memory', () => {
    const { stdout } = season('--species', 'teak', '--size', '180', '--from', '8%', '--to', '12%');
    expect(stdout.replaceAll('\n  ', ' ')).toContain('from memory of the Wood Handbook');
  });

  it('reads air in either scale, inches, and cuts', () => {
    const { stdout } = season(
      '--species',
      'ash',
      '--grain',
      'quarter-sawn',
      '--size',
      '7',
      '--units',
      'in',
      '--from',
      '70F/45%',
      '--to',
      '21C/70%',
    );
    expect(stdout).toContain('Ash, white, quartersawn: 7" wide at 8.5 % moisture content (70F/45%).');
    expect(stdout).toContain('At 13.1 % moisture content (21C/70%):');
    expect(stdout).not.toContain('Taken as');
  });

  it('accepts a wood of your own, by its shrinkage or its coefficient', () => {
    const move = ['--size', '200', '--from', '8%', '--to', '12%', '--json'];
    // 6 / (30 (100 - 4)) and 3 / (30 (100 - 2)).
    expect(JSON.parse(season('--shrinkage', '3,6', ...move).stdout).change).toBeCloseTo(800 / 480, 4);
    const radial = JSON.parse(season('--shrinkage', '3,6', '--grain', 'quartersawn', ...move).stdout);
    expect(radial.change).toBeCloseTo(800 / 980, 4);
    const named = JSON.parse(season('--species', 'Plum', '--coefficient', '0.001,0.002', ...move).stdout);
    expect(named).toMatchObject({ species: 'Plum', change: 1.6, source: 'your own figures' });
  });

  it('has a word where the wood comes to be wetter or drier than the figures hold for', () => {
    const { status, stdout } = season(...CHERRY, '--from', '8%', '--to', '16%');
    expect(status).toBe(0);
    expect(stdout.replaceAll('\n  ', ' ')).toContain(
      'advice: at 16 % moisture content the size is a rough guide; the published figures hold from 6 % to 14 %',
    );
    const record = JSON.parse(season(...CHERRY, '--from', '8%', '--to', '16%', '--json').stdout);
    expect(record.advice).toHaveLength(1);
  });

  it.each([
    [
      ['--from', '21C/120%', '--to', '8%'],
      /^--from: a relative humidity of 120 % is outside .* must be 5 % to 95 %; try 21C\/45%$/u,
    ],
    [
      ['--from', '8%', '--to', '300C/50%'],
      /^--to: 300 °C \(572 °F\) is outside the published table; a temperature must be /u,
    ],
    [
      ['--from', '5%', '--to', '8%'],
      /^--from: wood of 5 % moisture content is too dry .* must be 6 % to 14 %/u,
    ],
    [
      ['--from', '15%', '--to', '8%'],
      /^--from: wood of 15 % moisture content is too wet .* must be 6 % to 14 %/u,
    ],
    [
      ['--from', 'damp', '--to', '8%'],
      /^--from: "damp" is neither air nor a moisture content; .*; try 21C\/45%/u,
    ],
    [
      ['--from', '8%', '--to', '9%', '--grain', 'riftsawn'],
      /^--grain: "riftsawn" is not a cut; a board must be flatsawn or quartersawn; try /u,
    ],
    [
      ['--from', '8%', '--to', '9%', '--size', '0'],
      /^--size: a board 0 mm wide is out of range; it must be 1 mm to 5000 mm$/u,
    ],
    [
      ['--from', '8%', '--to', '9%', '--species', 'chery'],
      /^--species: "chery" is not a wood that is known here; the closest names are "Cherry, black"; [^;]+; [^;]+; choose one of these, one that --woods lists, or give your own wood's shrinkage, radial and tangential: --shrinkage 3\.7,7\.1$/u,
    ],
    [
      ['--from', '8%', '--to', '9%', '--shrinkage', '3.7'],
      /^--shrinkage: "3\.7" is not a pair of figures; .*; try 3\.7,7\.1$/u,
    ],
    [
      ['--from', '8%', '--to', '9%', '--shrinkage', '7.1,3.7'],
      /^--shrinkage: the radial shrinkage of 7\.1 is over the tangential one of 3\.7/u,
    ],
    [
      ['--from', '8%', '--to', '9%', '--coefficient', '0.1,0.002'],
      /^--coefficient: no wood has a radial coefficient of 0\.1; .*; try 0\.00126,0\.00248$/u,
    ],
    [
      ['--from', '8%', '--to', '9%', '--shrinkage', '3,6', '--coefficient', '0.001,0.002'],
      /^--coefficient: .* not both$/u,
    ],
    [['--from', '8%', '--to', '9%', '--units', 'cm'], /^--units: "cm" is not a unit/u],
    [
      ['--from', '8%', '--to', '9%', '--out', 'x'],
      /^--out: pictures are drawn of the drawers of a plan; give one$/u,
    ],
  ])('refuses %j', (options, line) => {
    const { status, stdout, lines } = season(...replacing(CHERRY, options));
    expect({ status, stdout, lines }).toEqual({
      status: 2,
      stdout: '',
      lines: [expect.stringMatching(line)],
    });
  });

  it('names everything that is missing, and everything that is wrong, at once', () => {
    expect(season().lines.map((line) => line.split(':')[0])).toEqual([
      '--species',
      '--size',
      '--from',
      '--to',
    ]);
    const wrong = season(
      '--species',
      'ook',
      '--grain',
      'x',
      '--size',
      'y',
      '--from',
      '200C/200%',
      '--to',
      'z',
    );
    expect(wrong.lines.map((line) => line.split(':')[0])).toEqual([
      '--species',
      '--grain',
      '--size',
      '--from',
      '--from',
      '--to',
    ]);
  });
});

describe('season, of a plan', () => {
  it('prints every drawer through the year for other programs', () => {
    const { status, stdout } = season(planOf(CLIMATE), '--json');
    expect(status).toBe(0);
    const { climate, drawers, advice } = JSON.parse(stdout);
    expect(climate).toEqual({ making: { mc: 8 }, driest: { mc: 6 }, dampest: { mc: 12 } });
    expect(drawers).toMatchObject([
      {
        name: 'Buttons',
        height: 75,
        gaps: {
          front: { making: 1, driest: 1.3, dampest: 0.4, verdict: 'sticks' },
          side: { making: 1, driest: 1.45, dampest: 0.1, verdict: 'sticks' },
          beside: { making: 0.5, driest: 0.533, verdict: 'fits' },
          leave: 1.3953, // 76 - 75.5 / 1.012
        },
        parts: [
          {
            part: 'front',
            width: { making: 75, driest: 74.7, dampest: 75.6 },
            species: 'Plum',
            grain: 'flatsawn',
          },
          {
            part: 'side',
            count: 2,
            width: { making: 75, driest: 74.55, dampest: 75.9 },
            thickness: { dampest: 11.066 },
          },
          { part: 'back', species: 'Pear' },
          { part: 'bottom', species: null },
        ],
        bottom: { kind: 'panel', slot: null },
        corners: { driest: { topEdge: -0.15 }, dampest: { topEdge: 0.3, pinEnds: -0.066 } },
      },
    ]);
    expect(advice).toHaveLength(1);
  });

  it('prints tables that are no wider than the terminal, in mm and in inches', () => {
    for (const units of ['mm', 'in']) {
      const { status, stdout } = season(CHEST, '--units', units);
      expect(status).toBe(0);
      for (const line of stdout.split('\n')) expect([...line].length).toBeLessThanOrEqual(80);
    }
  });

  it('says what the woods are, what to leave, what sticks and shows, and that panels do not move', () => {
    const text = season(CHEST).stdout;
    expect(text).toContain('Moisture content: 8.5 % when made, 6.2 % when driest, 13.1 % when dampest.');
    expect(text).toMatch(/^front +Cherry, black +flatsawn +0\.248 % +0\.126 %$/mu);
    expect(text).toMatch(/^Notions +front( +[\d.]+){3} +shows$/mu);
    expect(text).toMatch(/^Buttons +sides( +[\d.]+){2} +0\.5 +fits$/mu);
    expect(text).toContain('The bottoms are panels, and do not move.');
    expect(text).not.toContain('Where no grain is given');
  });

  it('says which boards were assumed flatsawn for want of a grain', () => {
    expect(season(planOf(CLIMATE)).stdout.replaceAll('\n  ', ' ')).toContain(
      'Where no grain is given (front, side, back) the wood is assumed flatsawn, which moves more across its width: the safe side.',
    );
  });

  it('says how deep to cut a solid bottom and how long its slot is', () => {
    const { stdout } = season(
      planOf(CLIMATE, 'bottom: {kind: solid}', 'fit: {behind: 2}', 'groove: {depth: 5}'),
    );
    // 418 - 20 + 5 = 403 to the back, and 1 of the 2 behind it to swell into: 404 / 1.008 = 400.79, × 0.996 when driest.
    expect(stdout).toMatch(/^Buttons +400\.79 +399\.19 +404$/mu);
    // A screw of 4, and 400.79 × 0.012; ahead 2 and 400.79 × 0.008.
    expect(stdout).toMatch(/^Buttons +8\.81 +5\.21$/mu);
  });

  it('lists the tails’ ends too, where corners are through', () => {
    const { stdout } = season(planOf(CLIMATE, 'joint: {kind: through}'));
    // A front 20 thick moves radially: 20 × 0.001 × 2 and × 4.
    expect(stdout).toMatch(/^Buttons +0\.04 +-0\.08$/mu);
  });

  it('draws each gap as SVG and all of them as PDF, the same bytes each time', () => {
    const draw = (name: string) => {
      const out = join(folder, name);
      const { status, stdout } = season(CHEST, '--out', out);
      expect(status).toBe(0);
      expect(stdout).toContain('6 of them as SVG, one a file');
      return readdirSync(out)
        .sort()
        .map((file) => [file, readFileSync(join(out, file), 'latin1')] as const);
    };
    const first = draw('a');
    expect(first.map(([file]) => file)).toEqual([
      'buttons-season.svg',
      'cloth-season.svg',
      'notions-season.svg',
      'patches-season.svg',
      'ribbon-season.svg',
      'seasonal-haberdashery-chest-season.pdf',
      'thread-season.svg',
    ]);
    expect(first[1]?.[1]).toMatch(/^<svg [^>]*width="150mm"/u);
    expect(draw('b')).toEqual(first);
    // What the program drew itself it may draw again.
    expect(season(CHEST, '--out', join(folder, 'a')).status).toBe(0);
  });

  it('leaves files alone that it did not make, unless forced', () => {
    const out = mkdtempSync(join(folder, 'own-'));
    writeFileSync(join(out, 'cloth-season.svg'), 'mine');
    const { status, lines } = season(CHEST, '--out', out);
    expect({ status, lines }).toEqual({
      status: 2,
      lines: [expect.stringContaining('was not made by halfpin')],
    });
    expect(readFileSync(join(out, 'cloth-season.svg'), 'utf8')).toBe('mine');
    expect(season(CHEST, '--out', out, '--force').status).toBe(0);
  });

  it.each([
    [
      'examples/haberdashery-chest.yaml',
      [],
      /^examples\/haberdashery-chest\.yaml: this plan has no climate .*; try climate: \{/u,
    ],
    ['examples/trinket-box.yaml', [], /^examples\/trinket-box\.yaml: this plan has no climate /u],
    ['examples/none.yaml', [], /^examples\/none\.yaml: there is no such file to read as a plan/u],
    [
      CHEST,
      ['--size', '3'],
      /^--size: a plan says this itself; change the opening or size of a drawer there, or remove the option or the plan$/u,
    ],
    [CHEST, ['--out', 'x', '--paper', 'A9'], /^--paper: /u],
  ])('refuses %s with %j', (plan, options, line) => {
    const { status, stdout, lines } = season(plan, ...options);
    expect({ status, stdout, lines }).toEqual({
      status: 2,
      stdout: '',
      lines: [expect.stringMatching(line)],
    });
  });

  it('refuses a plan with a wrong climate, at its line', () => {
    const plan = planOf('climate: {making: 21C/45%, driest: 21C/30%, dampest: 21C/170%}');
    expect(season(plan).lines).toEqual([
      `${plan}:4:45 climate.dampest: a relative humidity of 170 % is outside the published table; it must be 5 % to 95 %; try 21C/45%`,
    ]);
  });
});

describe('what else a climate changes', () => {
  it('is the parts: the sizes on the day of making, which are named', () => {
    const auto = planOf(CLIMATE, 'fit: {top: auto}');
    const { parts, making } = JSON.parse(halfpin('parts', auto, '--json').stdout);
    expect(making).toEqual({ mc: 8 });
    expect(parts[0]).toMatchObject({ part: 'front', width: 74.6047 }); // 75.5 / 1.012
    expect(halfpin('parts', auto).stdout.replaceAll('\n  ', ' ')).toContain(
      'These are the sizes on the day of making, for wood of 8 % moisture content.',
    );
    expect(halfpin('parts', 'examples/haberdashery-chest.yaml').stdout).not.toContain('moisture');
  });

  it('is the same set made in a damper workshop: with less left to swell, the drawer is larger', () => {
    const plan = planOf(CLIMATE.replace('8%', '12%'), 'fit: {top: auto}');
    expect(JSON.parse(halfpin('parts', plan, '--json').stdout).parts[0].width).toBe(75.5);
  });

  it('is advice wherever a drawer is set out that will stick', () => {
    const { stdout } = halfpin('lay', planOf(CLIMATE));
    expect(stdout.replaceAll('\n  ', ' ')).toContain(
      'advice: "Buttons": when dampest, the gap above the sides is 0.1 mm, so the drawer will stick;',
    );
  });

  it('is a word where the place is kept drier or damper than the figures hold for', () => {
    const { stdout } = halfpin('lay', planOf('climate: {making: 8%, driest: 4%, dampest: 8%}'));
    expect(stdout.replaceAll('\n  ', ' ')).toContain(
      'advice: at 4 % moisture content the size is a rough guide;',
    );
  });
});
