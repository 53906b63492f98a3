import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PrintPage } from '../../src/drawing/printPage.ts';
import { guardOverwrite } from '../../src/files/guardOverwrite.ts';
import { writeNew } from '../../src/files/writeWhole.ts';
import { pdfBytes } from '../render/pdfBytes.ts';

let where = '';
const at = (name: string): string => join(where, name);
beforeAll(() => {
  where = mkdtempSync(join(tmpdir(), 'halfpin-'));
  writeFileSync(at('own.pdf'), `%PDF-1.7 ${'x'.repeat(50_000)} /Creator (Halfpin)`);
  writeFileSync(at('own.svg'), `<svg><desc>Drawn by Halfpin</desc>${'x'.repeat(50_000)}</svg>`);
  // Reading goes in parts of 64 kB, and this word lies over the end of the first.
  writeFileSync(at('long.pdf'), `${'x'.repeat(65_536 - 3)}Halfpin${'x'.repeat(200_000)}`);
  writeFileSync(at('empty.pdf'), '');
  writeFileSync(at('mine.pdf'), '%PDF-1.7 my own');
  writeFileSync(at('mine.svg'), `<svg>${'x'.repeat(50_000)}</svg>`);
});
afterAll(() => rmSync(where, { recursive: true }));

describe('guardOverwrite', () => {
  it('lets the program write where there is nothing, nothing in it, or something of its own', async () => {
    await expect(
      guardOverwrite(
        [at('nowhere.pdf'), at('empty.pdf'), at('own.pdf'), at('own.svg'), at('long.pdf')],
        false,
      ),
    ).resolves.toBeUndefined();
  });

  it('knows a PDF of hundreds of pages for its own', async () => {
    const blank: PrintPage = { width: 210, height: 297, placed: [] };
    writeFileSync(at('pages.pdf'), await pdfBytes(Array.from({ length: 400 }, () => blank)));
    await expect(guardOverwrite([at('pages.pdf')], false)).resolves.toBeUndefined();
  });

  it('names every file that it did not make', async () => {
    await expect(guardOverwrite([at('own.pdf'), at('mine.pdf'), at('mine.svg')], false)).rejects.toEqual(
      expect.objectContaining({
        lines: [at('mine.pdf'), at('mine.svg')].map(
          (path) =>
            `${path}: this file was not made by halfpin, so it is left as it is; try another --out, or --force`,
        ),
        status: 2,
      }),
    );
  });

  it('lets all be written where that is asked for', async () => {
    await expect(guardOverwrite([at('mine.pdf')], true)).resolves.toBeUndefined();
  });
});

describe('writeNew', () => {
  it('writes where there is nothing, and nowhere else', async () => {
    await writeNew(at('new.yaml'), 'units: mm\n');
    await expect(writeNew(at('new.yaml'), 'other')).rejects.toEqual(
      expect.objectContaining({
        lines: [`${at('new.yaml')}: there is a file of this name already; try another name`],
        status: 2,
      }),
    );
  });
});
