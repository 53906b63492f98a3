import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, posix } from 'node:path';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { planJsonSchema } from '../src/plan/planJsonSchema.ts';

interface SourceFile {
  readonly path: string;
  readonly text: string;
  /** Without comments that have lines to themselves, or end one. */
  readonly code: string;
  /** Files by their path from the project's top folder, all else as it is written; types and dynamic imports included. */
  readonly imports: readonly string[];
}

const COMMENT = /^\s*(?:\/?\*|\/\/).*$|\s\/\/ .*$/gmu;
/** The formatter lays statements out so. */
const STATEMENT = /^(?:import|export)\b[^;]*?\bfrom '([^']+)'|^import '([^']+)'/gmu;
const CALL = /\bimport\('([^']+)'\)/gu;

const read = (path: string): SourceFile => {
  const text = readFileSync(path, 'utf8');
  const code = text.replace(COMMENT, '');
  const named = [...code.matchAll(STATEMENT), ...code.matchAll(CALL)].map(([, a, b]) => a ?? b ?? '');
  const imports = named.map((name) => (name.startsWith('.') ? posix.join(dirname(path), name) : name));
  return { path, text, code, imports };
};

const ofGit = execFileSync('git', ['ls-files', '-z', 'src'], { encoding: 'utf8' })
  .split('\0')
  .filter(Boolean);
const onDisk = readdirSync('src', { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => posix.join(entry.parentPath, entry.name));
const files = onDisk.filter((path) => /\.(?:ts|mjs)$/u.test(path)).map(read);
const typescript = files.filter(({ path }) => path.endsWith('.ts') && !path.endsWith('.d.ts'));

/** A folder of `src/`, or a file that lies there by itself. */
const roomOf = (path: string): string => path.split('/')[1] ?? '';
const imports = files.flatMap(({ path, imports }) => imports.map((to) => ({ from: path, to })));
const arrows = imports.filter(({ to }) => to.startsWith('src/'));
const outward = imports.filter(({ to }) => !to.startsWith('src/'));
const written = ({ from, to }: (typeof imports)[number]): string => `${from} -> ${to}`;

const guide = readFileSync('DEVELOPERS.md', 'utf8');
/** What has a line in the list of folders, from the top down; folders end with a slash. */
const listed = [...guide.matchAll(/^\| `src\/([^`]+)` \|/gmu)].map(([, name = '']) => name);
const rooms = [...new Set(listed.map((name) => name.split('/')[0]))];
/** The rooms and files that may import each library. */
const libraries = new Map(
  [...guide.matchAll(/^\| ([a-z@][^|` ]*) \| ((?:`[^`|]+`[, ]*)+)\|/gmu)].map(
    ([, name = '', places = '']) => [
      name,
      [...places.matchAll(/`([^`]+)`/gu)].map(([, place]) => `src/${place}`),
    ],
  ),
);
/** Some are imported by a file of theirs. */
const packageOf = (name: string): string => /^(?:@[^/]+\/)?[^/]+/u.exec(name)?.[0] ?? name;

describe('what these checks read', () => {
  it('is every file that git knows', () => {
    expect(ofGit.length).toBeGreaterThan(100);
    expect(ofGit.filter((path) => !onDisk.includes(path))).toEqual([]);
  });

  it('is every line that imports', () => {
    const lines = files.flatMap(
      ({ code }) => code.match(/\b(?:from|import) '[\w@./:-]+'|\bimport\('/gu) ?? [],
    );
    expect(imports.length).toBe(lines.length);
  });

  it('is every import that the bundler follows', async () => {
    const { metafile } = await build({
      entryPoints: [
        'src/cli/halfpin.ts',
        'src/index.ts',
        'src/page/main.ts',
        'src/page/sheets/sheetWorker.ts',
      ],
      bundle: true,
      write: false,
      metafile: true,
      outdir: 'dist',
      format: 'esm',
      splitting: true,
      platform: 'node',
      packages: 'external',
    });
    const followed = Object.entries(metafile.inputs).flatMap(([from, { imports }]) =>
      imports.map(({ path: to }) => written({ from, to })),
    );
    expect(followed.length).toBeGreaterThan(100);
    const seen = new Set(imports.map(written));
    expect(followed.filter((arrow) => !seen.has(arrow))).toEqual([]);
  });
});

describe('the list of folders', () => {
  it('has a line for each folder, and for each file beside them, and no other', () => {
    const folders = onDisk.map((path) => `${dirname(path)}/`).filter((path) => path !== 'src/');
    const beside = onDisk.filter((path) => dirname(path) === 'src');
    const there = [...new Set([...folders, ...beside])].map((path) => path.slice('src/'.length));
    expect([...listed].sort()).toEqual(there.sort());
  });

  it('imports point down the list only', () => {
    const below = (from: string, to: string): boolean => rooms.indexOf(from) <= rooms.indexOf(to);
    expect(arrows.filter(({ from, to }) => !below(roomOf(from), roomOf(to))).map(written)).toEqual([]);
  });

  it('leaves Node itself to the build, the program and the files', () => {
    const inRooms = outward.filter(({ from }) => !['build', 'cli', 'files'].includes(roomOf(from)));
    expect(inRooms.filter(({ to }) => to.startsWith('node:')).map(written)).toEqual([]);
  });
});

describe('the list of libraries', () => {
  const ofLibraries = outward.filter(({ from, to }) => !to.startsWith('node:') && roomOf(from) !== 'build');

  it('has a line for each library, and no other', () => {
    const used = [...new Set(ofLibraries.map(({ to }) => packageOf(to)))];
    expect([...libraries.keys()].sort()).toEqual(used.sort());
  });

  it('says where each is imported', () => {
    const elsewhere = ofLibraries.filter(
      ({ from, to }) => !libraries.get(packageOf(to))?.some((place) => from.startsWith(place)),
    );
    expect(elsewhere.map(written)).toEqual([]);
  });
});

const kinds = planJsonSchema().properties?.joints?.items?.properties?.kind?.enum as readonly string[];
/** Written as a value, as a key, or as a property. */
const ANY_KIND = new RegExp(
  kinds.map((kind) => `(['"\`])${kind}\\1|\\b${kind}:|\\.${kind}\\b`).join('|'),
  'u',
);
const BY_LAP = /\blaps?\b[\w.?]*\s*(?:[!=]==|[<>]=?)\s*(?:0|undefined)\b|'laps?' in /u;
const ofKinds = (path: string): boolean =>
  path.startsWith('src/joint/kinds/') ||
  path.startsWith('src/plan/schema/') ||
  /\/starterPlan\.ts$/u.test(path);
const withCode = (sought: RegExp): string[] =>
  typescript.filter(({ path, code }) => !ofKinds(path) && sought.test(code)).map(({ path }) => path);

/** Those of the names that stand for more than so many of the others. */
const repeated = (names: readonly string[], most: number): string[] => {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].filter(([, count]) => count > most).map(([name, count]) => `${name}: ${count}`);
};

/** The most that there may be of what should be rare. */
const LIMITS: readonly (readonly [name: string, most: number, found: () => readonly string[]])[] = [
  ['no folder holds more than 22 files', 0, () => repeated(onDisk.map(dirname), 22)],
  [
    'at most 30 files have 15 lines or fewer',
    30,
    () => typescript.filter(({ text }) => text.trimEnd().split('\n').length <= 15).map(({ path }) => path),
  ],
  [
    'no two files have one name',
    0,
    () =>
      repeated(
        typescript.map(({ path }) => basename(path)),
        1,
      ),
  ],
  [
    'at most 6 files outside its own, the schema and the starter name a kind of corner',
    6,
    () => withCode(ANY_KIND),
  ],
  ['no file tells kinds of corner apart by a lap', 0, () => withCode(BY_LAP)],
];

describe('the tree', () => {
  it('has kinds of corner to look for', () => {
    expect(kinds.length).toBeGreaterThan(1);
    expect(files.filter(({ code }) => ANY_KIND.test(code))).not.toEqual([]);
  });

  for (const [name, most, found] of LIMITS)
    it(name, () => {
      const paths = found();
      expect(paths.length, paths.join('\n')).toBeLessThanOrEqual(most);
    });
});
