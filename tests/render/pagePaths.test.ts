import { describe, expect, it } from 'vitest';
import type { Drawing, Mark } from '../../src/drawing/drawing.ts';
import { pagePaths } from '../../src/render/pagePaths.ts';
import { FONTS } from './fonts.ts';

const line = (pen: 'cut' | 'fold', x: number, y: number): Mark => ({
  kind: 'stroke',
  role: 'outline',
  pen,
  paths: [
    {
      points: [
        [x, y],
        [x + 10, y],
      ],
    },
  ],
});

const pathsOf = (...marks: Mark[]) => {
  const drawing: Drawing = { box: { x0: 0, y0: 0, x1: 40, y1: 40 }, marks };
  // A quarter turn clockwise, then to 100, 50.
  return pagePaths({ width: 210, height: 297, placed: [{ drawing, at: [0, -1, 1, 0, 100, 50] }] }, FONTS);
};

const WORD: Mark = {
  kind: 'text',
  role: 'label',
  text: 'lap',
  at: [0, 0],
  size: 4,
  turn: 0,
  anchor: 'start',
  weight: 'regular',
};

describe('pagePaths', () => {
  it('puts each drawing in its place, in mm from the page’s top left, y downward', () => {
    // 1, 2 is turned to 2, -1 and moved to 102, 49, which is 248 below the top; 11, 2 to 102, 39.
    expect(pathsOf(line('cut', 1, 2))).toEqual([
      { look: { fill: 'none', stroke: 'black', 'stroke-width': '0.13' }, data: 'M102 248L102 258' },
    ]);
  });

  it('joins marks in a row that look the same, and leaves the order of all others', () => {
    const area: Mark = { kind: 'fill', role: 'waste', tone: 0.8, paths: [{ points: [[0, 0]] }] };
    const paths = pathsOf(
      line('cut', 0, 0),
      line('cut', 0, 5),
      line('fold', 0, 0),
      area,
      line('cut', 0, 9),
      WORD,
    );
    expect(paths.map(({ look }) => look.stroke ?? look.fill)).toEqual([
      'black',
      'black',
      'rgb(204,204,204)',
      'black',
      'black',
    ]);
    expect(paths[0]?.data).toBe('M100 247L100 257M105 247L105 257');
    expect(paths[1]?.look['stroke-dasharray']).toBe('6 1.2 0.5 1.2');
    expect(paths[4]?.look).toEqual({ fill: 'black' });
  });

  it('divides what is long, so that no path takes a browser long', () => {
    const words = Array.from({ length: 900 }, () => WORD);
    const paths = pathsOf(...words);
    const [one = { data: '' }] = pathsOf(WORD);
    expect(paths.length).toBeGreaterThan(1);
    expect(paths.map(({ data }) => data).join('')).toBe(one.data.repeat(900));
    for (const { data } of paths) expect(data.length).toBeLessThan(65_536 + one.data.length);
  });
});
