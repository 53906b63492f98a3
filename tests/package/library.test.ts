import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const TYPES = resolve('dist/types');

/** A module's names by where they are declared: `['layOut', 'joint/layOut']`. */
const exported = (): { name: string; declared: string; path: string }[] => {
  const index = readFileSync('src/index.ts', 'utf8');
  return [...index.matchAll(/^export (type )?\{([^}]*)\} from '(\.[^']+)\.ts';/gmu)].flatMap(
    ([, , names = '', path = '']) =>
      names
        .split(',')
        .map((entry) => entry.trim().replace(/^type /u, ''))
        .filter((entry) => entry !== '')
        .map((entry) => {
          const [declared = '', name = declared] = entry.split(' as ');
          return { name, declared, path };
        }),
  );
};

describe('the library', () => {
  it('has what a program wants, each name once, and says of each what it is', () => {
    const names = exported();
    expect(names.length).toBeGreaterThan(150);
    expect(new Set(names.map(({ name }) => name)).size).toBe(names.length);
    const bare = names.filter(({ declared, path }) => {
      const text = readFileSync(join('src', `${path}.ts`), 'utf8');
      return !new RegExp(`\\*/\\nexport (?:const|interface|type) ${declared}\\b`, 'u').test(text);
    });
    expect(bare.map(({ name }) => name)).toEqual([]);
  });

  it('comes with types that lead to each other and to nothing else', () => {
    const seen = new Set<string>();
    const read = (path: string): void => {
      if (seen.has(path)) return;
      seen.add(path);
      const text = readFileSync(path, 'utf8').replace(/\/\*[\s\S]*?\*\//gu, '');
      for (const [, module = ''] of text.matchAll(/(?:from|import\()\s*'([^']+)'/gu)) {
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
