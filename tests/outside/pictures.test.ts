/** The pictures of a set, as pdf.js reads them from the program's PDF files, against the sizes in its JSON. */

import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { folder, halfpin } from '../cli/program.ts';
import { readWithPdfjs, type Stroke } from './readPdf.ts';

const PLAN = `
name: Chest
stock: {front: {thickness: 22}, side: {thickness: 12}}
drawers:
  - {name: Lipped, count: 2, opening: {width: 280, height: 96, depth: 300}, front: {lip: {sides: 9, top: 7, bottom: 5}}}
  - {name: Inset, opening: {width: 460, height: 150, depth: 300}}
  - {name: Low, opening: {width: 900, height: 50, depth: 600}}
`;

interface Part {
  readonly drawer: string;
  readonly part: string;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}

const drawn = async () => {
  const out = folder();
  const plan = join(out, 'chest.yaml');
  writeFileSync(plan, PLAN);
  expect(halfpin(['draw', plan, '--sheets', 'bench,comparison', '--out', out]).status).toBe(0);
  const parts: readonly Part[] = JSON.parse(halfpin(['parts', plan, '--json']).out).parts;
  const read = async (kind: string) => {
    const file = join(out, `chest-${kind}.pdf`);
    const { pages } = await readWithPdfjs(file);
    const words = execFileSync('pdftotext', [file, '-'], { encoding: 'utf8' }).split('\f');
    return pages.map(({ strokes }, i) => ({ strokes, words: words[i] ?? '' }));
  };
  return { parts, bench: await read('bench'), comparison: await read('comparison') };
};

/** Lengths of the lines of outlines, 0.25 mm wide (ISO 128), level or upright. */
const outlines = (strokes: readonly Stroke[], way: 'level' | 'upright'): number[] => {
  return strokes
    .filter(
      ({ width, from, to }) =>
        Math.abs(width - 0.25) < 0.01 && Math.abs(way === 'level' ? from[1] - to[1] : from[0] - to[0]) < 1e-3,
    )
    .map(({ from, to }) => Math.hypot(from[0] - to[0], from[1] - to[1]));
};

const has = (lengths: readonly number[], wanted: number): boolean =>
  lengths.some((length) => Math.abs(length - wanted) < 0.02);

it('are to scale, or say that they are not and keep the order of sizes', async () => {
  const { parts, bench, comparison } = await drawn();
  const part = (drawer: string, name: string): Part => {
    const found = parts.find((each) => each.drawer === drawer && each.part === name);
    if (found === undefined) throw new Error(`there is no ${name} of ${drawer}`);
    return found;
  };
  const [page] = comparison;
  const scaleAfter = (words: string) =>
    Number(new RegExp(`${words}[^:]* 1 : ([\\d.]+)`, 'u').exec(page?.words.replace(/\s+/gu, ' ') ?? '')?.[1]);
  const [fronts, corners] = [scaleAfter('Fronts,'), scaleAfter('Front corners')];
  const told = bench.map(({ words }) => words.includes('not to scale'));
  expect(told).toContain(true);
  expect(told).toContain(false);
  ['Lipped', 'Inset', 'Low'].forEach((name, i) => {
    const [front, side, back] = [part(name, 'front'), part(name, 'side'), part(name, 'back')];
    const [level, upright] = [
      outlines(bench[i]?.strokes ?? [], 'level'),
      outlines(bench[i]?.strokes ?? [], 'upright'),
    ];
    const scale = Math.max(...level) / Math.max(front.length, side.length);
    if (told[i]) {
      // The front is longer than the sides as far as its own lines and theirs show.
      expect(Math.sign(Math.max(...level) - Math.max(...upright))).toBe(
        Math.sign(front.length - side.length),
      );
    } else {
      for (const length of [front.length, back.length - 2 * side.thickness, side.length])
        expect([name, length, has(level, length * scale)]).toEqual([name, length, true]);
      for (const length of [front.width, side.width, front.thickness, back.thickness])
        expect([name, length, has(upright, length * scale)]).toEqual([name, length, true]);
    }
    const drawn = page?.strokes ?? [];
    expect([name, has(outlines(drawn, 'level'), front.length / fronts)]).toEqual([name, true]);
    expect([name, has(outlines(drawn, 'upright'), front.width / fronts)]).toEqual([name, true]);
    // The corner from the side: the front with its lip, and the side.
    expect([name, has(outlines(drawn, 'upright'), front.width / corners)]).toEqual([name, true]);
    expect([name, has(outlines(drawn, 'upright'), side.width / corners)]).toEqual([name, true]);
  });
});
