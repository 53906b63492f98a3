import { inflateSync } from 'node:zlib';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { IDENTITY } from '../../src/drawing/affine.ts';
import type { Drawing, Mark, TextMark } from '../../src/drawing/drawing.ts';
import type { PrintPage } from '../../src/drawing/printPage.ts';
import { renderPdf } from '../../src/render/pdf.ts';
import { FONTS } from './fonts.ts';
import { pdfBytes } from './pdfBytes.ts';

/** A page of 1 x 2 in, so that its points are round numbers. */
const page = (...marks: Mark[]): PrintPage => ({
  width: 25.4,
  height: 50.8,
  placed: [{ drawing: { box: { x0: 0, y0: 0, x1: 25.4, y1: 50.8 }, marks }, at: IDENTITY }],
});

const label = (text: string, more: Partial<TextMark> = {}): TextMark => ({
  kind: 'text',
  role: 'label',
  text,
  at: [12.7, 25.4],
  size: 2.54,
  turn: 0,
  anchor: 'start',
  weight: 'regular',
  ...more,
});

/** The first stream of the file, which is the first page's content. */
const content = async (...pages: PrintPage[]): Promise<string[]> => {
  const bytes = await pdfBytes(pages);
  const text = Buffer.from(bytes).toString('latin1');
  const length = Number(/\/Length (\d+)/.exec(text)?.[1]);
  const start = text.indexOf('stream\n') + 'stream\n'.length;
  return Buffer.from(inflateSync(bytes.subarray(start, start + length)))
    .toString('latin1')
    .trim()
    .split('\n')
    .map((line) => line.trim());
};

/** pdfkit's own map, downward from the top left. */
const DOWNWARD = '1 0 0 -1 0 144 cm';

afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

describe('renderPdf', () => {
  it('draws the marks in a row that share a pen as one path, and sets each pen once', async () => {
    const line = (x: number, pen: 'cut' | 'lap'): Mark => ({
      kind: 'stroke',
      role: 'slope',
      pen,
      paths: [
        {
          points: [
            [x, 0],
            [x, 25.4],
          ],
        },
      ],
    });
    expect(await content(page(line(0, 'cut'), line(2.54, 'cut'), line(5.08, 'lap')))).toEqual([
      DOWNWARD,
      '0.368504 w [] 0 d',
      '0 144 m 0 72 l',
      '7.2 144 m 7.2 72 l',
      'S',
      '0.708661 w [8.503937 2.834646] 0 d',
      '14.4 144 m 14.4 72 l',
      'S',
    ]);
  });

  it('closes outlines and fills areas with their grey, leaving what follows black', async () => {
    const points = [
      [0, 0],
      [25.4, 0],
      [25.4, 25.4],
    ] as const;
    const fill: Mark = { kind: 'fill', role: 'waste', tone: 0.75, paths: [{ points, closed: true }] };
    expect(await content(page(fill))).toEqual([DOWNWARD, 'q 0.75 g', '0 144 m 72 144 l 72 72 l h', 'f Q']);
  });

  it('paints nothing for marks without paths', async () => {
    const empty: Mark = { kind: 'stroke', role: 'waste', pen: 'hatch', paths: [] };
    expect(await content(page(empty, { kind: 'fill', role: 'waste', tone: 0.5, paths: [] }))).toEqual([
      DOWNWARD,
    ]);
  });

  it('maps coordinates, but not line widths, to the place of a drawing on the page', async () => {
    const { placed } = page({
      kind: 'stroke',
      role: 'fold',
      pen: 'thin',
      paths: [
        {
          points: [
            [1, 2],
            [3, 2],
          ],
        },
      ],
    });
    const drawing = placed[0]?.drawing as Drawing;
    // A quarter turn, ten times as large.
    const turned: PrintPage = {
      width: 25.4,
      height: 50.8,
      placed: [{ drawing, at: [0, 10, -10, 0, 25.4, 0] }],
    };
    expect(await content(turned)).toEqual([
      DOWNWARD,
      '0.368504 w [] 0 d',
      '15.307 115.654 m 15.307 58.961 l',
      'S',
    ]);
  });

  it('sets text at its size in mm, turned and anchored, one glyph number a character', async () => {
    expect(await content(page(label('aba'), label('b', { turn: 90 })))).toEqual([
      DOWNWARD,
      'BT /F1 1 Tf 7.2 0 0 -7.2 36 72 Tm <000100020001> Tj ET',
      'BT /F1 1 Tf 0 -7.2 -7.2 0 36 72 Tm <0002> Tj ET',
    ]);
    // The 'a' of DejaVu Sans Condensed is 1129 of 2048 units wide: at 7.2 pt 3.969 pt.
    expect(
      await content(page(label('a', { anchor: 'middle' }), label('a', { anchor: 'end', turn: 180 }))),
    ).toEqual([
      DOWNWARD,
      'BT /F1 1 Tf 7.2 0 0 -7.2 34.015 72 Tm <0001> Tj ET',
      'BT /F1 1 Tf -7.2 0 0 7.2 39.969 72 Tm <0001> Tj ET',
    ]);
  });

  it('embeds a font only where a page uses it', async () => {
    const names = async (...marks: Mark[]) =>
      [
        ...Buffer.from(await pdfBytes([page(...marks)]))
          .toString('latin1')
          .matchAll(/\/FontName \/(\S+)/g),
      ].map(([, name]) => name);
    expect(await names()).toEqual([]);
    expect(await names(label('x'))).toEqual(['BZZZZZ+DejaVuSansCondensed']);
    expect(await names(label('x', { weight: 'bold' }))).toEqual(['BZZZZZ+DejaVuSansCondensed-Bold']);
    expect(await names(label('x'), label('x', { weight: 'bold' }))).toHaveLength(2);
  });

  it('gives the same bytes whatever the clock and the random numbers', async () => {
    const marks = [label('tail'), label('pin', { weight: 'bold' })];
    vi.useFakeTimers({ now: new Date('2020-02-02T02:02:02Z'), toFake: ['Date'] });
    const first = await pdfBytes([page(...marks)]);
    vi.setSystemTime(new Date('2031-03-03T03:03:03Z'));
    vi.spyOn(Math, 'random').mockReturnValue(0.25);
    expect(Buffer.from(first).equals(await pdfBytes([page(...marks)]))).toBe(true);
    expect(Buffer.from(first).toString('latin1')).not.toMatch(/Date/);
  });

  it('draws pages one at a time and passes on bytes before it draws the last', async () => {
    let taken = 0;
    function* pages() {
      for (; taken < 300; taken++)
        yield page(...Array.from({ length: 100 }, (_, i) => label(`${taken} ${i} ${taken * i}`)));
    }
    const takenAt: number[] = [];
    await renderPdf(pages(), { title: '', fonts: FONTS }, () => {
      takenAt.push(taken);
    });
    expect(takenAt.length).toBeGreaterThan(3);
    expect(takenAt[0]).toBeLessThan(150);
    expect(takenAt.at(-1)).toBe(300);
  });

  it('waits for a slow sink, and passes on what goes wrong in it', async () => {
    let busy = false;
    const many = Array.from({ length: 300 }, () =>
      page(...Array.from({ length: 300 }, (_, i) => label(`${i}`))),
    );
    await renderPdf(many, { title: '', fonts: FONTS }, async () => {
      expect(busy).toBe(false);
      busy = true;
      await new Promise((resolve) => setTimeout(resolve, 1));
      busy = false;
    });
    const full = renderPdf([page()], { title: '', fonts: FONTS }, () => {
      throw new Error('no space left');
    });
    await expect(full).rejects.toThrow('no space left');
  });
});
