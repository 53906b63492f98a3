import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PrintPage } from '../../src/drawing/printPage.ts';
import { guardOverwrite } from '../../src/files/guardOverwrite.ts';
import { writeNew } from '../../src/files/writeWhole.ts';
import { renderDxf } from '../../src/render/dxf.ts';
import { guideMark, pieceMark } from '../../src/render/mark.ts';
import { renderSvg } from '../../src/render/svg.ts';
import { svgWindow } from '../../src/render/svgWindow.ts';
import { FONTS } from '../render/fonts.ts';
import { pdfBytes } from '../render/pdfBytes.ts';

let where = '';
const at = (name: string): string => join(where, name);
const BLANK: PrintPage = { width: 210, height: 297, placed: [] };
const DRAWING = { marks: [], box: { x0: 0, y0: 0, x1: 10, y1: 10 } };
const PLAN = 'Chest & <co> "ü"';
const MEANT = { title: 'A <b>', description: pieceMark(PLAN, 'own.svg') };
beforeAll(async () => {
  where = mkdtempSync(join(tmpdir(), 'halfpin-'));
  writeFileSync(at('own.pdf'), await pdfBytes([BLANK]));
  writeFileSync(at('long.pdf'), await pdfBytes(Array.from({ length: 400 }, () => BLANK)));
  writeFileSync(at('own.svg'), renderSvg(DRAWING, MEANT, { fonts: FONTS, window: svgWindow() }));
  writeFileSync(at('own.dxf'), renderDxf([], guideMark(PLAN, 'own.dxf', 'Lid')));
  writeFileSync(at('empty.pdf'), '');
});
afterAll(() => rmSync(where, { recursive: true }));

const OWN = ['own.pdf', 'long.pdf', 'own.svg', 'own.dxf', 'empty.pdf'];
const foreign = (path: string): string =>
  `${path}: this file was not made by halfpin, so it is unchanged; choose another --out, or add --force`;
const refusal = (...lines: string[]) => expect.objectContaining({ lines, status: 2 });

/** A user's own files that have the program's name, or what it writes, somewhere else than a mark. */
const MINE: Readonly<Record<string, (own: (name: string) => string) => string>> = {
  'mine.pdf': () => '%PDF-1.7 my own',
  'readme.md': () => '# Halfpin\nHalfpin, plan "x": how I use it\n',
  'thanks.pdf': () => '%PDF-1.7\n1 0 obj\n<<\n/Creator (Halfpin)\n>>\nendobj\n%%EOF\n',
  'other.pdf': (own) => own('own.pdf').replace('(Halfpin)', '(Halfpix)'),
  'signed.pdf': (own) => `${own('own.pdf')}my signature`,
  'torn.pdf': (own) => own('own.pdf').slice(0, -200),
  'huge offset.pdf': (own) => own('own.pdf').replace(/startxref\n\d+/u, 'startxref\n999999999999999'),
  'mine.svg': () => '<svg><desc>Drawn by Halfpin.</desc></svg>',
  'edited.svg': (own) => own('own.svg').replace('<svg ', '<?xml version="1.0"?>\n<svg '),
  'later.svg': (own) => own('own.svg').replace('<desc>', '<desc>mine</desc><desc>'),
  'mine.dxf': (own) => `0\nSECTION\n${own('own.dxf')}`,
  'mine.html': () => '<!doctype html>\n<html lang="en">\n<head>\n<title>Halfpin</title>\n',
};

describe('guardOverwrite', () => {
  it('lets the program write where there is nothing, nothing in it, or something of its own', async () => {
    await expect(guardOverwrite([at('nowhere.pdf'), ...OWN.map(at)], false)).resolves.toBeUndefined();
  });

  it('knows the page for its own', async () => {
    await expect(guardOverwrite(['dist/halfpin.html'], false)).resolves.toBeUndefined();
  });

  it('names every file without the mark in its place, whatever else it holds, and writes it when forced', async () => {
    const paths = Object.entries(MINE).map(([name, text]) => {
      writeFileSync(
        at(name),
        text((own) => readFileSync(at(own), 'latin1')),
        'latin1',
      );
      return at(name);
    });
    await expect(guardOverwrite([at('own.pdf'), ...paths], false)).rejects.toEqual(
      refusal(...paths.map(foreign)),
    );
    await expect(guardOverwrite(paths, true)).resolves.toBeUndefined();
  });

  it('never writes over a folder, a pipe, a device, or a link to one, even when forced', async () => {
    mkdirSync(at('folder'));
    spawnSync('mkfifo', [at('pipe')]);
    symlinkSync('pipe', at('link'));
    for (const force of [false, true])
      await expect(
        guardOverwrite([at('folder'), at('pipe'), at('link'), '/dev/null'], force),
      ).rejects.toEqual(
        refusal(
          `${at('folder')}: this is a folder, which is never written over; choose another --out`,
          ...[at('pipe'), at('link')].map(
            (path) => `${path}: this is a named pipe, which is never written over; choose another --out`,
          ),
          '/dev/null: this is a device, which is never written over; choose another --out',
        ),
      );
  });

  it('takes a link that leads to nothing, or to itself, for somebody’s own', async () => {
    symlinkSync('nothing', at('dangling.svg'));
    symlinkSync('round.svg', at('round.svg'));
    const links = [at('dangling.svg'), at('round.svg')];
    await expect(guardOverwrite(links, false)).rejects.toEqual(refusal(...links.map(foreign)));
    await expect(guardOverwrite(links, true)).resolves.toBeUndefined();
  });
});

describe('writeNew', () => {
  it('writes where there is nothing, and nowhere else', async () => {
    await writeNew(at('new.yaml'), 'units: mm\n');
    await expect(writeNew(at('new.yaml'), 'other')).rejects.toEqual(
      refusal(`${at('new.yaml')}: there is a file of this name already; choose another name`),
    );
  });
});
