import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { BOARDS, filesIn, GUIDED, run, runResident, scene } from './scene.ts';

const EVERY = process.env.HALFPIN_EVERY === 'yes';
const CHEST = resolve('examples/haberdashery-chest.yaml');
const GUIDED_CHEST = resolve('examples/haberdashery-chest-guided.yaml');
const BOX = resolve('examples/trinket-box.yaml');

const COMMANDS: readonly (readonly string[])[] = [
  ...(EVERY ? [['draw', CHEST, '--rods', '--as', 'pdf,svg', '--out', 'out/chest']] : []),
  ['draw', EVERY ? GUIDED_CHEST : GUIDED, '--rods', '--as', 'pdf,svg,dxf', '--out', 'out/guided'],
  ['trial', '--slope', '1:8', '--loose', '0.2', '--log', 'out/trials.log', '--out', 'out'],
  ['compare', CHEST, '--out', 'out'],
  ['breakout', BOARDS, '--out', 'out'],
  ['proof', '--out', 'out'],
  ['lay', CHEST],
  ['lay', BOX, '--json'],
  ['lay', GUIDED_CHEST],
  ['parts', CHEST, '--csv'],
  ['schema'],
  ['start'],
];

/** Everything that the program writes and says, however it is run. */
const everything = async (run: typeof runResident): Promise<Record<string, string>> => {
  const at = scene();
  const said = await Promise.all(
    COMMANDS.map(async (args) => {
      const { status, stdout, stderr } = await run(at, args);
      expect({ args, status, stderr }).toEqual({ args, status: 0, stderr: '' });
      return [args.join(' '), stdout] as const;
    }),
  );
  // Bytes that differ are told by their file's name: no one would read them.
  const files = [...filesIn(join(at.root, 'out'))].map(
    ([name, bytes]) => [name, createHash('sha256').update(bytes).digest('hex')] as const,
  );
  expect(files.map(([name]) => name)).toEqual(expect.arrayContaining(['trials.log', 'proof-a4.pdf']));
  rmSync(at.root, { recursive: true });
  return { ...Object.fromEntries(files), ...Object.fromEntries(said) };
};

/** The farthest zones from each other, and locales with other digits, capitals and decimal signs. */
const SURROUNDINGS: readonly NodeJS.ProcessEnv[] = [
  { TZ: 'Pacific/Kiritimati', LC_ALL: 'tr_TR.UTF-8', LANG: 'tr_TR.UTF-8', COLUMNS: '40', FORCE_COLOR: '3' },
  { TZ: 'Pacific/Pago_Pago', LC_ALL: 'ar_EG.UTF-8', LANG: 'ar_EG.UTF-8' },
];

const usual = await everything(runResident);

describe('the same input gives the same bytes', { timeout: 300_000 }, () => {
  it.each(EVERY ? SURROUNDINGS : SURROUNDINGS.slice(0, 1))('in $TZ under $LC_ALL', async (env) => {
    expect(await everything((at, args) => run(at, args, { env }))).toEqual(usual);
  });

  it.each(EVERY ? ['20', '22', '24'] : [])('under Node %s', async (version) => {
    const npx = spawnSync('npx', ['-y', '-p', `node@${version}`, 'which', 'node'], { encoding: 'utf8' });
    const node = npx.stdout.trim();
    const shown = spawnSync(node, ['--version'], { encoding: 'utf8' }).stdout;
    expect(shown).toMatch(new RegExp(`^v${version}\\.`, 'u'));
    expect(await everything((at, args) => run(at, args, { node }))).toEqual(usual);
  });
});
