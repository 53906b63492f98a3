import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { getDocument, OPS, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { type Affine, apply, compose, IDENTITY } from '../../src/drawing/affine.ts';
import type { Point } from '../../src/drawing/drawing.ts';

/** PDF user space: 1/72 in (ISO 32000-1, 8.3.2.3). */
export const POINT = 25.4 / 72;

/** A straight line as a reader found it on a page, in mm from the page's bottom left. */
export interface Stroke {
  readonly width: number;
  readonly from: Point;
  readonly to: Point;
}

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly Stroke[];
}

export interface ReadDocument {
  readonly pages: readonly ReadPage[];
  readonly preferences: unknown;
}

/** As pdf.js reads it: every path through the graphics state that it is painted in. */
export const readWithPdfjs = async (file: string): Promise<ReadDocument> => {
  const document = await getDocument({
    data: new Uint8Array(readFileSync(file)),
    verbosity: VerbosityLevel.ERRORS,
  }).promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = page.view;
    const { fnArray, argsArray } = await page.getOperatorList();
    let state: { map: Affine; width: number } = { map: IDENTITY, width: 1 };
    const saved: (typeof state)[] = [];
    const strokes: Stroke[] = [];
    fnArray.forEach((operator, i) => {
      const values = argsArray[i];
      if (operator === OPS.save) saved.push(state);
      else if (operator === OPS.restore) state = saved.pop() ?? state;
      else if (operator === OPS.transform) state = { ...state, map: compose(values, state.map) };
      else if (operator === OPS.setLineWidth) state = { ...state, width: values[0] };
      else if (operator === OPS.constructPath && values[0] === OPS.stroke)
        strokes.push(...linesOf(Object.values(values[1][0]), state.map, state.width));
    });
    pages.push({ width: (x1 - x0) * POINT, height: (y1 - y0) * POINT, strokes });
  }
  return { pages, preferences: await document.getViewerPreferences() };
};

/** pdf.js writes a path as numbers: 0 for a move, 1 for a line, each with its point, and 4 to close. */
const linesOf = (steps: readonly number[], map: Affine, width: number): Stroke[] => {
  const strokes: Stroke[] = [];
  const point = (k: number): Point => {
    const [x, y] = apply(map, [steps[k] ?? 0, steps[k + 1] ?? 0]);
    return [x * POINT, y * POINT];
  };
  let start: Point = [0, 0];
  let from = start;
  for (let k = 0; k < steps.length; ) {
    const step = steps[k];
    const to = step === 4 ? start : point(k + 1);
    if (step === 0) start = to;
    else strokes.push({ width: width * POINT, from, to });
    from = to;
    k += step === 4 ? 1 : 3;
  }
  return strokes;
};

/** As mupdf reads it: what `mutool trace` says it paints, downward from the top. */
export const readWithMupdf = (file: string): ReadDocument => {
  const trace = execFileSync('mutool', ['trace', file], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const pages = trace.split('<page ').slice(1);
  return {
    pages: pages.map((page) => {
      const [, width = 0, height = 0] = (/mediabox="0 0 ([\d.]+) ([\d.]+)"/.exec(page) ?? []).map(Number);
      const strokes = [
        ...page.matchAll(
          /<stroke_path linewidth="([\d.]+)".*? transform="([^"]+)">([\s\S]*?)<\/stroke_path>/g,
        ),
      ].flatMap(([, pen = '', matrix = '', path = '']): Stroke[] => {
        const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = matrix.split(' ').map(Number);
        let start: Point = [0, 0];
        let from = start;
        return [...path.matchAll(/<(moveto|lineto|closepath)(?: x="([^"]+)" y="([^"]+)")?/g)].flatMap(
          ([, step, px, py]) => {
            const [x, y] = apply([a, b, c, d, e, f], [Number(px), Number(py)]);
            const to: Point = step === 'closepath' ? start : [x * POINT, (height - y) * POINT];
            const stroke = { width: Number(pen) * POINT, from, to };
            if (step === 'moveto') start = to;
            from = to;
            return step === 'moveto' ? [] : [stroke];
          },
        );
      });
      return { width: width * POINT, height: height * POINT, strokes };
    }),
    preferences: undefined,
  };
};
