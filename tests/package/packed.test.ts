import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const run = (cwd: string, command: string, ...args: string[]) => {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd, encoding: 'utf8' });
  return { status, said: `${stdout}${stderr}` };
};
const mustRun = (cwd: string, command: string, ...args: string[]): string => {
  const { status, said } = run(cwd, command, ...args);
  expect({ command, args, status, said: status === 0 ? '' : said }).toMatchObject({ status: 0 });
  return said;
};

const EVERY = process.env.HALFPIN_EVERY === 'yes';
const about = JSON.parse(readFileSync('package.json', 'utf8'));

describe('the package', () => {
  it('holds what runs, its types, fonts and licences, and nothing else', () => {
    const [packed] = JSON.parse(
      spawnSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], { encoding: 'utf8' }).stdout,
    );
    const names: string[] = packed.files.map(({ path }: { path: string }) => path);
    const expected = [
      /^(?:package\.json|README\.md|LICENSE)$/u,
      /^dist\/(?:halfpin|index|part-[A-Z0-9]+)\.js(?:\.LEGAL\.txt)?$/u,
      /^dist\/types\/.*\.d\.ts$/u,
      /^dist\/site\/(?:head\.html|manifest\.webmanifest|worker\.js|icon-(?:192|512)\.png)$/u,
      /^dist\/fonts\/(?:DejaVuSansCondensed(?:-Bold)?\.ttf|LICENSE)$/u,
      /^dist\/site\/(?:head\.html|icon-\d+\.png|manifest\.webmanifest|worker\.js)$/u,
      /^dist\/(?:THIRD-PARTY\.txt|halfpin\.html|plan\.schema\.json)$/u,
    ];
    expect(names.filter((name) => !expected.some((kind) => kind.test(name)))).toEqual([]);
    for (const kind of expected) expect(names.filter((name) => kind.test(name))).not.toEqual([]);
  });

  it('needs no other package and runs no script when it is installed', () => {
    expect(about.dependencies ?? about.optionalDependencies ?? about.peerDependencies).toBeUndefined();
    expect(Object.keys(about.scripts).filter((name) => /install$|^prepare$/u.test(name))).toEqual([]);
  });

  it('bundles nothing that was built for one machine or ran a script when it was installed', () => {
    const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8'));
    const bundled = [...readFileSync('dist/THIRD-PARTY.txt', 'utf8').matchAll(/^(\S+) \d[\d.]* \(.+\)$/gmu)];
    expect(bundled.length).toBeGreaterThan(15);
    for (const [, name] of bundled) {
      const { version, hasInstallScript, cpu, os } = packages[`node_modules/${name}`];
      expect({ name, version, hasInstallScript, cpu, os }).toEqual({ name, version });
    }
  });

  it('has no way to a network', () => {
    const code = readdirSync('dist')
      .filter((name) => name.endsWith('.js'))
      .map((name) => readFileSync(join('dist', name), 'utf8'))
      .join('\n');
    const reaches = (module: string): boolean =>
      new RegExp(`(?:from|require\\(|import\\()\\s*["'](?:node:)?${module}["']`, 'u').test(code);
    expect(['fs', 'dgram', 'dns', 'http', 'http2', 'https', 'net', 'tls'].filter(reaches)).toEqual(['fs']);
    expect(code).not.toMatch(/\bfetch\(|XMLHttpRequest|WebSocket/u);
  });
});

/** Takes a network and a while, so `npm test` leaves it to `npm run faults`. */
if (EVERY)
  describe('the package, installed in an empty folder', { timeout: 300_000 }, () => {
    const folder = mkdtempSync(join(tmpdir(), 'halfpin-package-'));
    let packed = '';

    beforeAll(() => {
      const [made] = JSON.parse(
        spawnSync('npm', ['pack', '--json', '--ignore-scripts', '--pack-destination', folder], {
          encoding: 'utf8',
        }).stdout,
      );
      packed = join(folder, made.filename);
      writeFileSync(join(folder, 'package.json'), '{"type":"module","private":true}');
      mustRun(folder, 'npm', 'install', '--offline', '--no-audit', packed);
    });
    afterAll(() => rmSync(folder, { recursive: true }));

    it('brings nothing with it', () => {
      const all = JSON.parse(mustRun(folder, 'npm', 'ls', '--all', '--json'));
      expect(Object.keys(all.dependencies)).toEqual(['halfpin']);
      expect(all.dependencies.halfpin.dependencies).toBeUndefined();
    });

    it('runs as a program and as a library', () => {
      expect(mustRun(folder, 'npx', '--offline', 'halfpin', 'start', 'plan.yaml')).toMatch(
        /^plan\.yaml: a plan/u,
      );
      mustRun(folder, 'npx', '--offline', 'halfpin', 'draw', 'plan.yaml', '--as', 'pdf,svg', '--out', 'out');
      expect(readFileSync(join(folder, 'out/my-chest-templates.pdf'), 'latin1')).toMatch(/^%PDF/u);
      cpSync('examples/library.mjs', join(folder, 'library.mjs'));
      expect(mustRun(folder, process.execPath, 'library.mjs')).toMatch(/templates\.pdf: \d+ pages of A4$/mu);
    });

    it('has types that a strict program compiles against', () => {
      writeFileSync(
        join(folder, 'use.ts'),
        [
          "import { type Cutting, findWood, guidePieces, layOut, type Joint, type JointSpec, type Piece, projectOfCorner, readProject, renderPdf } from 'halfpin';",
          "const corner = layOut({ kind: 'through', width: 96, tailBoard: 11, pinBoard: 20, spacing: { kind: 'even' } });",
          'export const tips: readonly number[] = corner.ok ? corner.value.tails.map(({ tip }) => tip[1] - tip[0]) : [];',
          'export const first = (joint: Joint): number | undefined => joint.tails[0]?.base[0];',
          'export const guidesOf = (spec: JointSpec, cutting: Cutting): Piece[] => {',
          "  const lid = projectOfCorner({ name: 'Lid', units: 'mm', spec, cutting });",
          '  return lid.ok ? guidePieces(lid.value) : [];',
          '};',
          'export { findWood, readProject, renderPdf };',
          '// @ts-expect-error a lap belongs to a lapped joint',
          "layOut({ kind: 'through', lap: 5, width: 96, tailBoard: 11, pinBoard: 20, spacing: { kind: 'even' } });",
        ].join('\n'),
      );
      const strict = ['--strict', '--noEmit', '--skipLibCheck', 'false', '--exactOptionalPropertyTypes'];
      const modern = ['--module', 'nodenext', '--target', 'es2022', '--lib', 'es2023,dom', '--types', ''];
      mustRun(folder, resolve('node_modules/.bin/tsc'), ...strict, ...modern, 'use.ts');
    });

    it('is found in order by publint and by arethetypeswrong', () => {
      expect(mustRun(folder, 'npx', '-y', 'publint@0.3.25', packed, '--strict')).toMatch(/All good/u);
      mustRun(folder, 'npx', '-y', '@arethetypeswrong/cli@0.18.5', packed, '--profile', 'esm-only');
    });
  });
