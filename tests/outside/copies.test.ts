import { execFileSync, spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CHEST, folder, said } from '../cli/program.ts';

interface ListedPart {
  readonly drawer: string;
  readonly part: string;
  readonly count: number;
}

/** How many of each part the parts list has, the bottoms left out, which have no templates. */
const listed = (): ListedPart[] => {
  const { parts } = JSON.parse(said('parts', CHEST, '--json')) as { parts: ListedPart[] };
  return parts.filter(({ part }) => part !== 'bottom');
};

/** Every part has a joint, and so a template, at both of its ends. */
const ENDS = 2;

const run = (program: string, ...args: string[]): string => execFileSync(program, args, { encoding: 'utf8' });
const installed = (program: string): boolean => spawnSync(program, ['-v']).error === undefined;

/** The templates in a PDF of the chest, as poppler reads it: each says once how often to make it. */
const drawn = (...options: string[]) => {
  const out = folder();
  const told = said('draw', CHEST, '--sheets', 'templates', '--out', out, ...options);
  // Of chosen drawers the file has another name.
  const file = join(out, readdirSync(out).find((name) => name.endsWith('templates.pdf')) ?? '');
  const text = run('pdftotext', '-raw', file, '-').replace(/\s+/gu, ' ');
  return {
    templates: text.match(/quantity \d+|qty \d+/gu)?.length ?? 0,
    parts: new Set(
      text.match(/(?<=· )(?:left side|right side|front|back)/gu)?.map((part) => part.split(' ').at(-1)),
    ),
    pages: Number(/^Pages:\s+(\d+)$/mu.exec(run('pdfinfo', file))?.[1]),
    sheets: Number(/^(\d+) sheets? of A4/u.exec(told)?.[1]),
  };
};

describe.skipIf(!installed('pdftotext') || !installed('pdfinfo'))('the templates that poppler finds', () => {
  it('with every copy are as many as the ends of the parts on the parts list', () => {
    const { templates, pages, sheets } = drawn('--copies', 'made');
    expect(templates).toBe(ENDS * listed().reduce((sum, { count }) => sum + count, 0));
    expect(pages).toBe(sheets);
  });

  it.each(['Buttons', 'Patches'])(
    'of each part of %s alone are as many as its ends on the parts list',
    (name) => {
      const parts = listed().filter(({ drawer }) => drawer === name);
      expect(parts.map(({ part }) => part)).toEqual(['front', 'side', 'back']);
      for (const { part, count } of parts) {
        const found = drawn('--only', `${name}/${part}`, '--copies', 'made');
        expect(found.templates).toBe(ENDS * count);
        expect([...found.parts]).toEqual([part]);
      }
    },
  );

  it('without copies are one for each end of a drawer that differs', () => {
    // A to D, each with both of its boards.
    expect(drawn('--only', 'Buttons').templates).toBe(8);
    expect(drawn('--only', 'Buttons', '--boards', 'tail').templates).toBe(4);
  });
});
