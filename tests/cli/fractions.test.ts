import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folder, halfpin } from './program.ts';

const CORNER = ['--width', '5-11/16in', '--tail-board', '7/16in', '--pin-board', '13/16in'];
const MM = ['--width', '96', '--tail-board', '11', '--pin-board', '20'];

const planOf = (text: string): string => {
  const file = join(folder(), 'plan.yaml');
  writeFileSync(
    file,
    `${text}\nstock: {front: {thickness: 20mm}, side: {thickness: 11mm}}\ndrawers: [{name: A, opening: {width: 280mm, height: 76mm, depth: 420mm}}]\n`,
  );
  return file;
};

describe('fractions', () => {
  it.each([
    ['64', '7/32"'],
    ['16', '1/4"'],
    ['decimal', '.219"'],
  ])('of %s are asked for beside the options of a corner', (fractions, halfPin) => {
    const { out, status } = halfpin(['lay', ...CORNER, '--fractions', fractions]);
    expect(status).toBe(0);
    expect(out).toContain(`steps up from ${halfPin}`);
  });

  it('of a plan are its own, unless others are asked for', () => {
    const plan = planOf('units: in\nfractions: 16');
    expect(halfpin(['parts', plan]).out).toContain('inches to 1/16');
    expect(halfpin(['parts', plan, '--fractions', 'decimal']).out).toContain('inches to .001');
    expect(halfpin(['parts', planOf('units: mm'), '--units', 'in', '--fractions', '32']).out).toContain(
      'inches to 1/32',
    );
  });

  it('leave the exact figure in --json as it is', () => {
    const laid = (fractions: string) =>
      halfpin(['lay', planOf(`units: in\nfractions: ${fractions}`), '--json']).out;
    const tails = (json: string): unknown =>
      JSON.parse(json).joints.map(({ tails }: { tails: unknown }) => tails);
    expect(tails(laid('16'))).toEqual(tails(laid('decimal')));
    expect(laid('16')).not.toContain('"1/16');
  });

  it.each([
    ['65', 'must be 64, 32, 16 or decimal; try 64'],
    ['0', 'must be 64, 32, 16 or decimal; try 64'],
    ['1/64', 'must be 64, 32, 16 or decimal; try 64'],
    ['decimals', 'must be 64, 32, 16 or decimal; try 64'],
  ])('of %s are refused where they are typed', (typed, why) => {
    const run = halfpin(['lay', ...CORNER, '--fractions', typed]);
    expect(run).toMatchObject({ status: 2, out: '' });
    expect(run.err).toBe(`--fractions: "${typed}" is no fraction of a rule; it ${why}\n`);
  });

  it.each(['65', '0', '"64"', '1/64', 'decimals', '[64]', '6.4'])(
    'of %s are refused in a plan, and nothing is drawn',
    (typed) => {
      const out = join(folder(), 'out');
      const run = halfpin(['draw', planOf(`units: in\nfractions: ${typed}`), '--out', out]);
      expect(run.status).toBe(2);
      expect(run.err).toMatch(/plan\.yaml:2:1 fractions: .*it must be 64, 32, 16 or decimal\n$/u);
      expect(run.err.trim().split('\n')).toHaveLength(1);
      expect(existsSync(out)).toBe(false);
    },
  );

  it('are refused beside mm, as nothing is left out in silence', () => {
    expect(halfpin(['lay', ...MM, '--fractions', '32']).err).toBe(
      '--fractions: fractions are of an inch, and lengths are shown in mm here; try --units in\n',
    );
    const run = halfpin(['lay', planOf('units: mm\nfractions: 32')]);
    expect(run.status).toBe(2);
    expect(run.err).toContain(
      'plan.yaml:2:1 fractions: fractions are of an inch, and this plan is in mm; try units: in, or remove the fractions\n',
    );
    expect(halfpin(['parts', planOf('units: in'), '--units', 'mm', '--fractions', '32']).status).toBe(2);
    expect(
      halfpin([
        'season',
        '--species',
        'cherry',
        '--size',
        '180',
        '--from',
        '8%',
        '--to',
        '12%',
        '--fractions',
        '32',
      ]).status,
    ).toBe(2);
  });

  it.each(['3/0in', '5/65in', '1 2/7in', '5/8 1/2in', '5/16in 3mm', '1/2/4in', '1 5/4in'])(
    'as a length that no rule shows are refused: %s',
    (typed) => {
      const run = halfpin(['lay', ...CORNER, '--lap', typed]);
      expect(run).toMatchObject({ status: 2, out: '' });
      expect(run.err).toMatch(/^--lap: /u);
    },
  );
});
