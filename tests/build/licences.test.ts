import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { inflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';

/** The files that are bundled, as the bundler lists them. */
const inputs: Readonly<Record<'program' | 'page', readonly string[]>> = JSON.parse(
  execFileSync(
    'node',
    [
      '--input-type=module',
      '-e',
      `import { build } from 'esbuild';
      import { BUNDLING } from './src/build/bundling.mjs';
      import { buildPage } from './src/build/page.mjs';
      const entryPoints = ['src/cli/halfpin.ts', 'src/index.ts'];
      const { metafile } = await build({ ...BUNDLING, entryPoints, outdir: 'dist', write: false, metafile: true });
      const { inputs } = await buildPage();
      console.log(JSON.stringify({ program: Object.keys(metafile.inputs), page: inputs }));`,
    ],
    { encoding: 'utf8' },
  ),
);

const shown = {
  program: readFileSync('dist/THIRD-PARTY.txt', 'utf8'),
  page: inflateRawSync(
    Buffer.from(
      /id="packed-licences">([^<]*)</u.exec(readFileSync('dist/halfpin.html', 'utf8'))?.[1] ?? '',
      'base64',
    ),
  ).toString(),
};

/** `@noble/hashes` in the last folder of packages on a path. */
const packageIn = (path: string): string | undefined => {
  const [first = '', second] = path.split('node_modules/').at(-1)?.split('/') ?? [];
  if (!path.includes('node_modules/')) return undefined;
  return first.startsWith('@') ? `${first}/${second}` : first;
};

describe.each(['program', 'page'] as const)('the licences of the %s', (where) => {
  const text = shown[where];
  const bundled = inputs[where].filter((path) => packageIn(path) !== undefined);
  const code = bundled
    .filter((path) => /\.[cm]?js$/u.test(path))
    .map((path) => ({ path, text: readFileSync(path, 'utf8') }));

  it('are those of every package in the list of the bundler, in full', () => {
    const names = new Set(bundled.map((path) => packageIn(path) ?? ''));
    expect(names.size).toBeGreaterThan(10);
    for (const name of names) {
      const folder = `node_modules/${name}`;
      const { version } = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8'));
      expect(text).toContain(`\n${name} ${version} (`);
      for (const file of readdirSync(folder).filter((entry) =>
        /^(?:licen[cs]e|copying|notice)/iu.test(entry),
      ))
        expect(text).toContain(readFileSync(`${folder}/${file}`, 'utf8').trim());
    }
  });

  it('are those of the packages too that were bundled in them before', () => {
    const inside = code.flatMap(({ path }) =>
      existsSync(`${path}.map`)
        ? (JSON.parse(readFileSync(`${path}.map`, 'utf8')).sources as string[]).flatMap(
            (source) => packageIn(source) ?? [],
          )
        : [],
    );
    expect(inside).toContain('core-js-pure');
    for (const name of inside) expect(text).toContain(`\n${name} `);
  });

  it('name every holder of a copyright whom the bundled code names', () => {
    const holders = new Set(
      code.flatMap((each) =>
        [
          ...each.text.matchAll(
            /(?:[Cc]opyright|©|\([Cc]\))[\s\d–,(Cc)-]*(\p{Lu}\p{Ll}+ \p{Lu}\w+)|\bby (@\w+) \*\//gu,
          ),
        ].flatMap(([, named, signed]) => named ?? signed ?? []),
      ),
    );
    expect([...holders]).toEqual(
      expect.arrayContaining(['Denis Pushkarev', 'Microsoft Corporation', 'Wout Fierens']),
    );
    for (const holder of holders) expect(text).toContain(holder);
  });
});
