import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CHEST, folder, halfpin } from '../program.ts';

/** The example chest, one kind of its drawers with boards as they came out. */
const built = (asBuilt: string, name = 'Buttons'): string => {
  const path = join(folder(), 'built.yaml');
  const plan = readFileSync(CHEST, 'utf8').replace(
    new RegExp(`(\\{name: ${name}\\b.*)\\}`, 'u'),
    `$1, asBuilt: ${asBuilt}}`,
  );
  expect(plan).toContain(asBuilt);
  writeFileSync(path, plan);
  return path;
};

const THINNER = '[{index: 1, part: side, hand: left, thickness: 10.6}]';

interface Row {
  readonly drawer: string;
  readonly copies?: readonly number[];
  readonly corners: readonly string[];
  readonly tailBoard: { readonly thickness: number };
  readonly gauges: { readonly pinBoardFace: number };
}

describe('boards as they came out', () => {
  it('give each corner that differs a record of its own', () => {
    const { joints } = JSON.parse(halfpin(['set-out', built(THINNER), '--json']).out);
    const rows = (joints as Row[])
      .filter(({ drawer }) => drawer === 'Buttons')
      .map(({ copies, corners, tailBoard, gauges }) => [
        copies,
        corners,
        tailBoard.thickness,
        gauges.pinBoardFace,
      ]);
    expect(rows).toEqual([
      [[1], ['A'], 10.6, 10.6],
      [[1], ['B'], 11, 11],
      [[1], ['C'], 11, 11],
      [[1], ['D'], 10.6, 10.6],
      [[2], ['A', 'B'], 11, 11],
      [[2], ['C', 'D'], 11, 11],
    ]);
    expect((joints as Row[]).find(({ drawer }) => drawer === 'Cloth')?.corners).toEqual(['A', 'B']);
  });

  it('are parts and templates of their own, each named for what it is', () => {
    const plan = built(THINNER);
    const { parts } = JSON.parse(halfpin(['parts', plan, '--json']).out);
    const side = parts.find(({ hand }: { hand?: string }) => hand === 'left');
    expect(side).toMatchObject({
      drawer: 'Buttons',
      copies: [1],
      part: 'side',
      count: 1,
      thickness: 10.6,
      built: '10.6 mm thick',
    });
    const out = join(folder(), 'sheets');
    halfpin(['draw', plan, '--out', out, '--as', 'svg', '--only', 'Buttons']);
    const svg = readFileSync(join(out, 'buttons-1-left-side-a.svg'), 'utf8');
    expect(svg).toContain('10.6 mm thick');
    expect(readdirSync(out).filter((file) => file.endsWith('side-a.svg'))).toEqual([
      'buttons-1-left-side-a.svg',
      'buttons-2-left-side-a.svg',
    ]);
  });

  it('change no byte where they are as planned', () => {
    const same = built(
      '[{index: 2, part: front, thickness: 20, length: 279}, {index: 1, part: side, hand: right, thickness: 11}]',
    );
    for (const command of ['set-out', 'parts'])
      expect(halfpin([command, same, '--json']).out).toBe(halfpin([command, CHEST, '--json']).out);
    const drawn = [same, CHEST].map((plan) => {
      const out = join(folder(), 'out');
      halfpin(['draw', plan, '--out', out]);
      return readdirSync(out).map((file) => [file, readFileSync(join(out, file), 'latin1')]);
    });
    expect(drawn[0]).toEqual(drawn[1]);
  });

  it('are refused where nothing can be made of them, with the nearest that can', () => {
    const { status, err } = halfpin(['set-out', built('[{part: front, length: 575}]', 'Cloth')]);
    expect(status).toBe(2);
    expect(err).toContain('the opening is 574 mm wide, so it may be at most 574 mm; try 574mm');
  });
});
