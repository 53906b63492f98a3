import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { environment, filesIn, PROGRAM, scene } from './scene.ts';

const EVERY = process.env.HALFPIN_EVERY === 'yes';
const CHEST = resolve('examples/haberdashery-chest.yaml');
const BOX = resolve('examples/trinket-box.yaml');

const COMMANDS: readonly (readonly string[])[] = [
  ['draw', EVERY ? CHEST : BOX, '--as', 'pdf,svg', '--rods', '--out', 'out'],
  ['compare', CHEST, '--out', 'out'],
  ['proof', '--out', 'out'],
  ['lay', CHEST],
  ['lay', BOX, '--json'],
  ['parts', CHEST, '--csv'],
  ['schema'],
  ['start'],
];

/** Everything that the program writes and says, by a way to run Node and what surrounds it. */
const everything = (node: readonly string[], env: NodeJS.ProcessEnv = {}): Record<string, string> => {
  const at = scene();
  const said = COMMANDS.map((args) => {
    const [command = '', ...before] = node;
    const { status, stdout, stderr } = spawnSync(command, [...before, PROGRAM, ...args], {
      cwd: at.root,
      encoding: 'utf8',
      env: environment(at, env),
    });
    expect({ args, status, stderr }).toEqual({ args, status: 0, stderr: '' });
    return [args.join(' '), stdout] as const;
  });
  const files = filesIn(join(at.root, 'out'));
  rmSync(at.root, { recursive: true });
  return { ...Object.fromEntries(files), ...Object.fromEntries(said) };
};

describe('the same input gives the same bytes', { timeout: 300_000 }, () => {
  const usual = everything([process.execPath], { TZ: 'UTC', LC_ALL: 'C' });

  // The farthest zones from each other, and locales with other digits, capitals and decimal signs.
  it.each([
    { TZ: 'Pacific/Kiritimati', LC_ALL: 'tr_TR.UTF-8', LANG: 'tr_TR.UTF-8' },
    { TZ: 'Pacific/Pago_Pago', LC_ALL: 'ar_EG.UTF-8', LANG: 'ar_EG.UTF-8', COLUMNS: '40', FORCE_COLOR: '3' },
  ])('in $TZ under $LC_ALL', (env) => {
    expect(everything([process.execPath], env)).toEqual(usual);
  });

  it.each(EVERY ? ['20', '22', '24'] : [])('under Node %s', (version) => {
    const npx = spawnSync('npx', ['-y', '-p', `node@${version}`, 'which', 'node'], { encoding: 'utf8' });
    const node = npx.stdout.trim();
    const shown = spawnSync(node, ['--version'], { encoding: 'utf8' }).stdout;
    expect(shown).toMatch(new RegExp(`^v${version}\\.`, 'u'));
    expect(everything([node])).toEqual(usual);
  });
});
