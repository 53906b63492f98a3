import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { halfpin } from '../cli/program.ts';
import { differences, type Segment } from '../sheets/segments.ts';
import { type Bar, barsOf } from './bars.ts';
import { type ReadPage, readWithPdfjs } from './readPdf.ts';
import { type Queue, startQueue } from './startQueue.ts';

const folder = mkdtempSync(join(tmpdir(), 'halfpin-'));
afterAll(() => rmSync(folder, { recursive: true }));

const CHEST = 'examples/haberdashery-chest.yaml';
const ALL_SHEETS = ['--width', '96', '--tail-board', '11', '--pin-board', '20', '--kind', 'lapped'];
const CORNER = [...ALL_SHEETS, '--sheets', 'templates'];

/** A check bar is 100 mm or 4 in long, a piece's own 50, 20 or 10, or 2, 1 or ½ in: each is meant to be the nearest of these. */
const nominal = (length: number): number =>
  [101.6, 100, 50.8, 50, 25.4, 20, 12.7, 10].reduce((a, b) =>
    Math.abs(b - length) < Math.abs(a - length) ? b : a,
  );

/** By how much the worst of some bars is off, in mm. */
const worst = (bars: readonly Bar[]): number =>
  Math.max(...bars.map(({ length }) => Math.abs(length - nominal(length))));

/** A page's lines, measured from where its first bar begins. */
const linesOf = ({ strokes }: ReadPage): Segment[] => {
  const [[x0, y0] = [Number.NaN, Number.NaN]] = barsOf(strokes).map(({ from }) => from);
  return strokes.map(({ from, to }) => [
    [from[0] - x0, from[1] - y0],
    [to[0] - x0, to[1] - y0],
  ]);
};

/** CUPS counts paper in whole points. */
const PAPER_WITHIN = 25.4 / 72;

describe('a print queue of CUPS that prints to PDF (Debian: printer-driver-cups-pdf)', () => {
  let queue: Queue;
  beforeAll(async () => {
    queue = await startQueue();
  });
  afterAll(() => queue?.stop());

  /** What comes out of the queue for what is done, page after page. */
  const printedBy = async (work: () => unknown): Promise<ReadPage[]> => {
    const before = (await queue.printed()).length;
    await work();
    const files = (await queue.printed()).slice(before);
    return (await Promise.all(files.map(readWithPdfjs))).flatMap(({ pages }) => pages);
  };

  /** Draws and sends: every page as it was sent, and as it came out. */
  const sendAndRead = async (name: string, ...options: string[]) => {
    const out = join(folder, name);
    const printed = await printedBy(() => {
      const { status, err } = halfpin(
        ['draw', ...options, '--out', out, '--send', 'PDF'],
        undefined,
        queue.environment,
      );
      expect([status, err]).toEqual([0, '']);
    });
    const files = ['templates', 'cutting-list', 'bench', 'comparison'].flatMap((kind) =>
      readdirSync(out).filter((file) => file.endsWith(`${kind}.pdf`)),
    );
    const sent = await Promise.all(files.map((file) => readWithPdfjs(join(out, file))));
    const pages = sent.flatMap((document) => document.pages);
    expect(printed).toHaveLength(pages.length);
    return pages.map((page, i) => ({ sent: page, printed: printed[i] ?? page }));
  };

  const expectTrue = ({ sent, printed }: { sent: ReadPage; printed: ReadPage }): void => {
    expect(Math.abs(printed.width - sent.width)).toBeLessThan(PAPER_WITHIN);
    expect(Math.abs(printed.height - sent.height)).toBeLessThan(PAPER_WITHIN);
    const bars = barsOf(printed.strokes);
    expect(bars.filter(({ length }) => nominal(length) >= 100)).toHaveLength(2);
    expect(bars).toHaveLength(barsOf(sent.strokes).length);
    expect(worst(bars)).toBeLessThan(0.05);
    expect(differences(linesOf(printed), linesOf(sent), 0.05)).toEqual([]);
  };

  it('prints every sheet of the chest with its bars true and every line in its place, within 0.05 mm', async () => {
    const pages = await sendAndRead('chest', CHEST, '--paper', 'A4');
    expect(pages.length).toBeGreaterThan(10);
    pages.forEach(expectTrue);
  });

  it.each(['Letter', 'A3', '260x190'])('prints a corner as truly on %s', async (paper) => {
    const pages = await sendAndRead(paper, ...CORNER, '--paper', paper);
    expect(pages).toHaveLength(1);
    pages.forEach(expectTrue);
  });

  it('cuts a roll off where each page ends, and gets bench sheets on paper of their own', async () => {
    const which = ['--only', 'Buttons,Patches/side', '--copies', 'made', '--sheets', 'templates,bench'];
    const pages = await sendAndRead('roll', CHEST, '--paper', '150xroll', ...which);
    pages.forEach(expectTrue);
    const heightsAcross = (width: number) =>
      new Set(pages.filter(({ sent }) => Math.round(sent.width) === width).map(({ sent }) => sent.height));
    expect(heightsAcross(150).size).toBeGreaterThan(1);
    expect([...heightsAcross(210)].map(Math.round)).toEqual([297]);
    expect(queue.log()).toMatch(/media=iso_a4_210x297mm/);
  });

  it('is asked for one side, no scaling, and the paper by its standard name', async () => {
    // PWG 5101.1 names A5.
    await sendAndRead('asked', ...CORNER, '--paper', 'A5');
    expect(queue.log()).toMatch(/argv\[5\]=.*media=iso_a5_148x210mm.* print-scaling=none sides=one-sided/);
  });

  it('is caught by the scale bars of a page that it fits to its paper', async () => {
    const [page] = await sendAndRead('fitted', ...CORNER, '--paper', 'A4');
    const file = join(folder, 'fitted', 'corner-templates.pdf');
    const [fitted] = await printedBy(() =>
      queue.run('lp', '-d', 'PDF', '-o', 'fit-to-page', '-o', 'media=na_letter_8.5x11in', file),
    );
    const bars = barsOf(fitted?.strokes ?? []);
    const wanted = barsOf(page?.sent.strokes ?? []);
    expect(wanted.length).toBeGreaterThan(4);
    expect(bars).toHaveLength(wanted.length);
    // A4 on letter paper comes out as their heights are, 279.4 to 297: 100 mm as 94.1, and 10 mm as 9.4.
    bars.forEach(({ length }, i) => {
      expect(Math.abs(length / (wanted[i]?.length ?? 0) - 279.4 / 297)).toBeLessThan(0.002);
    });
    expect(worst(bars)).toBeGreaterThan(5);
  });

  it('of another name is refused in plain words, with those that are known', () => {
    const { status, err } = halfpin(
      ['draw', ...CORNER, '--out', join(folder, 'unknown'), '--send', 'attic'],
      undefined,
      queue.environment,
    );
    expect(status).toBe(1);
    expect(err).toBe(
      `--send: the queue "attic" did not take ${folder}/unknown/corner-templates.pdf: The printer or class does not exist; known queues: "PDF"\n`,
    );
  });

  it('that takes no jobs is told of in its own words', async () => {
    await queue.run('/usr/sbin/cupsreject', 'PDF');
    const { status, err } = halfpin(
      ['draw', ...CORNER, '--out', join(folder, 'closed'), '--send', 'PDF'],
      undefined,
      queue.environment,
    );
    await queue.run('/usr/sbin/cupsaccept', 'PDF');
    expect(status).toBe(1);
    expect(err).toMatch(/^--send: the queue "PDF" did not take .*: .*not accepting.*\n$/);
  });
});

describe('without a print queue', () => {
  const send = (environment: Readonly<Record<string, string>>, ...options: string[]) =>
    halfpin(
      ['draw', ...CORNER, '--out', join(folder, 'none'), '--send', 'PDF', ...options],
      undefined,
      environment,
    );

  it('where there is no lp, says so, says what to do, and keeps what it has drawn', () => {
    const { status, out, err } = send({ PATH: '' });
    expect(status).toBe(1);
    expect(err).toBe(
      `--send: there is no program lp, so no print queue (CUPS, the printing system of Linux and macOS); print ${folder}/none/corner-templates.pdf yourself, at 100 %\n`,
    );
    expect(out).toContain(`${folder}/none/corner-templates.pdf: 1 page of A4`);
  });

  it('where CUPS is not running, says that there is none', () => {
    const { status, err } = send({ CUPS_SERVER: join(folder, 'no.sock') });
    expect(status).toBe(1);
    expect(err).toMatch(
      /^--send: the queue "PDF" did not take .*; CUPS has no queue here, or is not running\n$/,
    );
  });

  it('nothing but a PDF can be sent', () => {
    const at = ['--out', join(folder, 'none'), '--send', 'PDF'];
    const { status, err } = halfpin(['draw', ...ALL_SHEETS, ...at, '--as', 'svg'], undefined, {});
    expect([status, err]).toEqual([
      2,
      '--send: only a PDF goes to a queue; it must be among --as; try --as pdf,svg\n',
    ]);
  });
});
