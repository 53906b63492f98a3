import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { format } from 'node:util';
import { transform } from 'esbuild';
import { describe, expect, it } from 'vitest';
import * as library from '../../src/index.ts';
import { value } from '../value.ts';

const TYPES = resolve('dist/types');

interface Name {
  readonly name: string;
  readonly isType: boolean;
  /** The comment where it is declared; empty where there is none. */
  readonly doc: string;
}

/** The doc comment of a declaration, which must stand right above it. */
const docOf = (path: string, name: string): string => {
  const [before] = readFileSync(join('src', `${path}.ts`), 'utf8').split(
    new RegExp(`(?<=\\*/\n)export (?:const|interface|type) ${name}\\b`, 'u'),
  );
  return /\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n$/u.exec(before ?? '')?.[0] ?? '';
};

/** What the library exports, each by name. */
const exported = (): Name[] => {
  const index = readFileSync('src/index.ts', 'utf8');
  expect(index).not.toMatch(/^export (?:\*|.* as )|^ {2}.* as /mu);
  return [...index.matchAll(/^export (type )?\{([^}]*)\} from '\.\/([^']+)\.ts';/gmu)].flatMap(
    ([, allTypes, names = '', path = '']) =>
      names
        .split(',')
        .map((entry) => entry.trim())
        .filter((entry) => entry !== '')
        .map((entry) => {
          const name = entry.replace(/^type /u, '');
          return { name, isType: allTypes !== undefined || name !== entry, doc: docOf(path, name) };
        }),
  );
};

/** The code of a doc comment's examples. */
const examplesIn = (doc: string): string[] =>
  [...doc.matchAll(/@example\n \* ```ts\n([\s\S]*?) \* ```/gu)].map(([, code = '']) =>
    code.replace(/^ \* ?/gmu, ''),
  );

const FONTS = {
  regular: readFileSync('dist/fonts/DejaVuSansCondensed.ttf'),
  bold: readFileSync('dist/fonts/DejaVuSansCondensed-Bold.ttf'),
};

/** A plan that has all there is to be told of: drawers, a cutter with a bush, a climate, and boards. */
const PLAN = `${readFileSync('examples/haberdashery-chest-guided.yaml', 'utf8')}
climate: {making: 8%, driest: 6%, dampest: 12%}
boards:
  - {name: Cherry, stock: front, thickness: 26, size: 2400 x 230 x 3}
  - {name: Ash, stock: [side, back], thickness: 20, size: 2400 x 210 x 6}
`;

/** What examples take as given, beside the library itself. */
const given = (told: (line: string) => void) => {
  const reading = library.readProject(PLAN);
  if (!reading.ok) throw new Error('the example is no plan');
  const say = (...things: unknown[]): void => told(format(...things));
  const nothing = (): void => {};
  return {
    project: reading.value,
    paper: value(library.parsePaper('A4')),
    fonts: FONTS,
    sink: nothing,
    readFileSync: () => PLAN,
    writeFileSync: nothing,
    console: { log: say, error: say },
  };
};

/** Runs an example. @returns each line that it prints, and each that it says it prints */
const run = async (code: string): Promise<{ printed: string[]; promised: string[] }> => {
  const printed: string[] = [];
  const scope: Record<string, unknown> = { ...library, ...given((line) => printed.push(line)) };
  // The first example of all names what it imports; here everything is at hand.
  const { code: plain } = await transform(code.replace(/^import .*$/gmu, ''), { loader: 'ts' });
  // A function made of text is the only way to run a comment.
  const body = new Function(...Object.keys(scope), `return (async () => {${plain}})();`);
  await body(...Object.values(scope));
  const promised = [...code.matchAll(/console\.log\(.*\); \/\/ (.+)$/gmu)].map(([, line = '']) => line);
  return { printed, promised };
};

describe('the library', () => {
  it('has what a program wants and no more, each name once', () => {
    const names = exported().map(({ name }) => name);
    expect(names.length).toBeLessThanOrEqual(94);
    expect(new Set(names).size).toBe(names.length);
    expect(Object.keys(library).toSorted()).toEqual(
      exported()
        .flatMap(({ name, isType }) => (isType ? [] : [name]))
        .toSorted(),
    );
  });

  // A type is explained by what takes and gives it, so that a comment is enough; whatever can be called has an example too.
  it('says of each name what it is where it is declared, and shows how each function and constant is used', () => {
    const names = exported();
    expect(names.filter(({ doc }) => doc === '').map(({ name }) => name)).toEqual([]);
    const bare = names.filter(({ isType, doc }) => !isType && examplesIn(doc).length === 0);
    expect(bare.map(({ name }) => name)).toEqual([]);
  });

  it.each(exported().flatMap(({ name, doc }) => examplesIn(doc).map((code) => [name, code] as const)))(
    'does what the example of %s shows',
    async (_, code) => {
      const { printed, promised } = await run(code);
      if (promised.length > 0) expect(printed).toEqual(promised);
      expect(printed.join('\n')).not.toMatch(/undefined|NaN/u);
    },
  );

  it('comes with types that lead to each other and to nothing else', () => {
    const seen = new Set<string>();
    const read = (path: string): void => {
      if (seen.has(path)) return;
      seen.add(path);
      const text = readFileSync(path, 'utf8').replace(/\/\*[\s\S]*?\*\//gu, '');
      for (const [, module = ''] of text.matchAll(/(?:\bfrom\s+|import\(\s*)'([^']+)'/gu)) {
        expect(module, path).toMatch(/^\.\.?\/.*\.js$/u);
        const inner = join(dirname(path), module.replace(/\.js$/u, '.d.ts'));
        expect(existsSync(inner), inner).toBe(true);
        read(inner);
      }
    };
    read(join(TYPES, 'index.d.ts'));
    expect(seen.size).toBeGreaterThan(50);
  });

  it('makes a set of drawers and its PDF in the example', () => {
    const folder = mkdtempSync(join(tmpdir(), 'halfpin-library-'));
    const said = execFileSync(process.execPath, ['examples/library.mjs', folder], { encoding: 'utf8' });
    // Openings of 280 and 574 mm with 0.5 mm left free on each side; a joint of 15 mm and 3 mm to spare at both ends.
    expect(said).toMatch(/^2 x Buttons front, 315 mm in the rough$/mu);
    expect(said).toMatch(/^1 x Cloth front, 609 mm in the rough$/mu);
    const pdf = readFileSync(join(folder, 'templates.pdf'), 'latin1');
    expect(pdf.slice(0, 8)).toBe('%PDF-1.7');
    expect(pdf.match(/\/Type \/Page\b/gu)?.length).toBe(Number(/(\d+) pages of A4/u.exec(said)?.[1]));
    rmSync(folder, { recursive: true });
  });

  it('ships the licence of everything that is bundled', () => {
    const licences = readFileSync('dist/THIRD-PARTY.txt', 'utf8');
    for (const name of ['commander', 'pdfkit', 'fontkit', 'js-yaml', 'zod', 'dejavu-fonts-ttf'])
      expect(licences).toMatch(new RegExp(`^${name} \\d[\\d.]* \\(.+\\)\\n\\n\\S`, 'mu'));
  });
});
