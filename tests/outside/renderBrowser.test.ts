import { createContext, runInContext } from 'node:vm';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { IDENTITY } from '../../src/drawing/affine.ts';
import type { Mark } from '../../src/drawing/drawing.ts';
import type { PrintPage } from '../../src/drawing/printPage.ts';
import { FONTS } from '../render/fonts.ts';
import { pdfBytes } from '../render/pdfBytes.ts';

const marks: Mark[] = [
  {
    kind: 'stroke',
    role: 'fold',
    pen: 'fold',
    paths: Array.from({ length: 100 }, (_, i) => ({
      points: [
        [i / 3, 0],
        [i / 7, 100],
      ],
    })),
  },
  ...Array.from(
    { length: 20 },
    (_, i): Mark => ({
      kind: 'text',
      role: 'label',
      text: `Tail ${i} ½″ 漢`,
      at: [10, i * 10],
      size: 3,
      turn: 0,
      anchor: 'middle',
      weight: i % 2 === 0 ? 'bold' : 'regular',
    }),
  ),
];
const box = { x0: 0, y0: 0, x1: 100, y1: 200 };
const pages: PrintPage[] = [{ width: 210, height: 297, placed: [{ drawing: { box, marks }, at: IDENTITY }] }];

describe('renderPdf in a browser', () => {
  it('needs nothing of Node and writes the same bytes', async () => {
    const { outputFiles } = await build({
      entryPoints: ['src/render/pdf.ts'],
      bundle: true,
      platform: 'browser',
      format: 'iife',
      globalName: 'halfpin',
      // A script has no address of its own; pdfkit makes a name of it.
      define: { 'import.meta.url': '"https://example.org/"' },
      write: false,
    });
    // What every browser has beside the language itself.
    const window = createContext({ TextDecoder, TextEncoder, URL, atob, queueMicrotask });
    runInContext(outputFiles[0]?.text ?? '', window);
    const chunks: Uint8Array[] = [];
    await window.halfpin.renderPdf(
      pages,
      { title: 'Haberdashery chest', fonts: FONTS },
      (chunk: Uint8Array) => {
        chunks.push(chunk);
      },
    );
    expect(Buffer.concat(chunks).equals(await pdfBytes(pages))).toBe(true);
  });
});
