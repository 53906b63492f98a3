import { execFileSync, spawn, spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { type Affine, apply, compose, IDENTITY, translation } from '../../src/drawing/affine.ts';
import type { Point } from '../../src/drawing/drawing.ts';
import type { PrintPage } from '../../src/drawing/printPage.ts';
import { parsePaper } from '../../src/paper/paperSizes.ts';
import { correctPage } from '../../src/paper/printerCorrection.ts';
import { drawProof } from '../../src/paper/proofSheet.ts';
import { readProof } from '../../src/paper/readProof.ts';
import { halfpin, PROGRAM } from '../cli/program.ts';
import { value } from '../value.ts';
import { barsOf } from './bars.ts';
import { readWithPdfjs, type Stroke } from './readPdf.ts';

const folder = mkdtempSync(join(tmpdir(), 'halfpin-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A fresh place for settings in every test. */
let settings = '';
let stored = '';
beforeEach(() => {
  settings = mkdtempSync(join(folder, 'settings-'));
  stored = join(settings, 'printers.json');
});
const run = (...args: string[]) => halfpin(args, undefined, { HALFPIN_CONFIG_DIR: settings });

const CORNER = ['--width', '96', '--tail-board', '11', '--pin-board', '20', '--kind', 'lapped'];

/** What a printer does that makes of 1 mm so much across and up, lets upright lines lean, and feeds the sheet askew. */
const printer = (x: number, y: number, lean = 0, turn = 0): Affine =>
  compose(
    [x, 0, y * Math.sin(lean), y * Math.cos(lean), 0, 0],
    [Math.cos(turn), Math.sin(turn), -Math.sin(turn), Math.cos(turn), 1.5, -0.8],
  );

const apart = (a: Point, b: Point): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

const printedBy = (error: Affine, { from, to, ...stroke }: Stroke): Stroke => ({
  ...stroke,
  from: apply(error, from),
  to: apply(error, to),
});

type Lengths = Readonly<Record<'x' | 'y' | 'd1' | 'd2', number>>;

/** What a steel rule reads on a proof sheet: the four long lines that all begin or end in its corners. */
const measured = (strokes: readonly Pick<Stroke, 'from' | 'to'>[]): Lengths => {
  const ends = strokes.flatMap(({ from, to }) => [from, to]);
  // Corners are furthest along the sheet's diagonals, whatever the printer has done to it.
  const furthest = (across: number, up: number): Point =>
    ends.reduce((a, b) => (across * (b[0] - a[0]) + up * (b[1] - a[1]) > 0 ? b : a));
  const [lowerLeft, lowerRight] = [furthest(-1, -1), furthest(1, -1)];
  const [upperLeft, upperRight] = [furthest(-1, 1), furthest(1, 1)];
  return {
    x: apart(lowerLeft, lowerRight),
    y: apart(lowerLeft, upperLeft),
    d1: apart(lowerLeft, upperRight),
    d2: apart(upperLeft, lowerRight),
  };
};

const linesOf = ({ placed }: PrintPage): Pick<Stroke, 'from' | 'to'>[] =>
  placed.flatMap(({ drawing, at }) =>
    drawing.marks.flatMap((mark) =>
      mark.kind !== 'stroke'
        ? []
        : mark.paths.flatMap(({ points }) =>
            points.slice(1).map((to, i) => ({ from: apply(at, points[i] ?? to), to: apply(at, to) })),
          ),
    ),
  );

describe('any printer, measured on its proof', () => {
  it('prints a corrected page true within 0.02 mm over the whole page', () => {
    const share = fc.double({ min: 0.975, max: 1.025, noNaN: true });
    const angle = fc.double({ min: -0.008, max: 0.008, noNaN: true });
    fc.assert(
      fc.property(
        share,
        share,
        angle,
        angle,
        fc.constantFrom('A5', 'A4', 'A3', 'Letter', 'Tabloid', '610xroll', '297x210'),
        fc.constantFrom('mm' as const, 'in' as const),
        (x, y, lean, turn, name, unit) => {
          const paper = value(parsePaper(name));
          const proof = value(drawProof(paper, 6, unit));
          const { lengths, page } = proof;
          const error = printer(x, y, lean, turn);
          const read = readProof(
            lengths,
            measured(
              linesOf(page).map(({ from, to }) => ({ from: apply(error, from), to: apply(error, to) })),
            ),
          );
          if (!read.ok) throw new Error(JSON.stringify(read.complaints));

          const { width, height } = page;
          const [blank] = correctPage(
            {
              width,
              height,
              placed: [{ drawing: { box: { x0: 0, y0: 0, x1: 0, y1: 0 }, marks: [] }, at: IDENTITY }],
            },
            read.value,
          ).placed;
          if (blank === undefined) throw new Error('nothing placed');
          // A sheet that goes in turned or shifted prints no length wrong; turned back, nothing may have moved.
          const turnedBack: Affine = [Math.cos(turn), -Math.sin(turn), Math.sin(turn), Math.cos(turn), 0, 0];
          const out = compose(compose(blank.at, error), turnedBack);
          const [middleX, middleY] = apply(out, [width / 2, height / 2]);
          const onPage = compose(out, translation(width / 2 - middleX, height / 2 - middleY));
          for (const across of [0, 0.25, 0.5, 1])
            for (const up of [0, 0.25, 0.5, 1]) {
              const point: Point = [across * width, up * height];
              expect(apart(apply(onPage, point), point)).toBeLessThan(0.02);
            }
        },
      ),
    );
  });
});

describe('a printer that prints 0.4 % short across and 0.3 % long up', () => {
  const error = printer(0.996, 1.003, 0.0015);

  it("prints the check bars of a corrected page 100 mm long, and the pieces' bars true", async () => {
    const sheet = run('proof', '--paper', 'A4', '--out', settings);
    expect([sheet.status, sheet.err]).toEqual([0, '']);
    const nominal: Lengths = JSON.parse(run('proof', '--paper', 'A4', '--json').out);
    const [proof] = (await readWithPdfjs(join(settings, 'proof-a4.pdf'))).pages;
    const drawn = proof?.strokes ?? [];
    for (const side of ['x', 'y', 'd1', 'd2'] as const)
      expect(Math.abs(measured(drawn)[side] - nominal[side])).toBeLessThan(0.001);

    const { x, y, d1, d2 } = measured(drawn.map((stroke) => printedBy(error, stroke)));
    const saved = run(
      'proof',
      ...['--measured-x', x.toFixed(2), '--measured-y', y.toFixed(2)],
      ...['--measured-d1', d1.toFixed(2), '--measured-d2', d2.toFixed(2), '--save', 'office'],
    );
    expect(saved.out).toBe(
      [
        'Across −0.40 %, up +0.30 %, skew +0.15 mm in 100. Kept as office: add --printer',
        '  office to halfpin draw.',
        'Read to 0.01 mm, a corrected 200 mm is true within 0.01 mm across and 0.01 mm',
        '  up. The skew over 200 mm is within 0.01 mm.',
        '',
      ].join('\n'),
    );

    const barsDrawn = async (name: string, ...options: string[]) => {
      const { status, err } = run('draw', ...CORNER, ...options, '--out', join(settings, name));
      expect([status, err]).toEqual([0, '']);
      const [page] = (await readWithPdfjs(join(settings, name, 'corner-templates.pdf'))).pages;
      return barsOf((page?.strokes ?? []).map((stroke) => printedBy(error, stroke)));
    };
    const uncorrected = (await barsDrawn('plain')).filter(({ length }) => length > 90);
    expect(uncorrected.map(({ length }) => Number(length.toFixed(2)))).toEqual([99.6, 100.3]);

    const bars = await barsDrawn('corrected', '--printer', 'office');
    expect(bars.length).toBeGreaterThan(4);
    expect(bars.filter(({ length }) => length > 90)).toHaveLength(2);
    for (const { length } of bars) {
      const nearest = [100, 50, 20, 10].find((wanted) => Math.abs(wanted - length) < 1);
      expect(Math.abs(length - (nearest ?? 0))).toBeLessThan(0.01);
    }
    const [level, upright] = bars.filter(({ length }) => length > 90);
    if (level === undefined || upright === undefined) throw new Error('no bars');
    // And the two stand square to each other.
    const lean =
      ((level.to[0] - level.from[0]) * (upright.to[0] - upright.from[0]) +
        (level.to[1] - level.from[1]) * (upright.to[1] - upright.from[1])) /
      (level.length * upright.length);
    expect(Math.abs(lean)).toBeLessThan(0.0002);
  });

  it('is told of in small print on the page', () => {
    run('proof', '--measured-x', '149.4', '--measured-y', '200.6', '--save', 'office');
    run('draw', ...CORNER, '--printer', 'office', '--out', settings);
    const text = execFileSync('pdftotext', ['-raw', join(settings, 'corner-templates.pdf'), '-'], {
      encoding: 'utf8',
    });
    expect(text.replaceAll('\n', ' ')).toMatch(
      /page 1 of 1 · (?:A4 · )?corrected for office(?:, which prints 0\.40 % short across and 0\.30 % long up)? · print at 100 %/,
    );
  });

  it('prints a corrected proof true, which proves the correction', async () => {
    run('proof', '--measured-x', '149.4', '--measured-y', '200.6', '--save', 'office');
    run('proof', '--printer', 'office', '--out', settings);
    const [proof] = (await readWithPdfjs(join(settings, 'proof-a4.pdf'))).pages;
    const strokes = (proof?.strokes ?? []).map((stroke) => printedBy(printer(0.996, 1.003), stroke));
    const { x, y } = measured(strokes);
    // Its sides are as long as an uncorrected sheet's, or shorter by whole ticks where those would not fit any more.
    expect([x, y].map((length) => Number(length.toFixed(2)) % 10)).toEqual([0, 0]);
    expect(x).toBeGreaterThan(140);
  });
});

describe('measures that no printer makes', () => {
  const GOOD = ['--measured-x', '149.4', '--measured-y', '200.6'];

  it.each([
    [
      'inches without their unit',
      ['--measured-x', '5.88', '--measured-y', '7.9'],
      [
        '--measured-x: x should be near 150 mm, so what was measured looks like inches; try 5.88in',
        '--measured-y: y should be near 200 mm, so what was measured looks like inches; try 7.9in',
      ],
    ],
    [
      'centimetres without their unit',
      ['--measured-x', '14.94', '--measured-y', '20.06'],
      [
        '--measured-x: x should be near 150 mm, so what was measured looks like centimetres; try 14.94cm',
        '--measured-y: y should be near 200 mm, so what was measured looks like centimetres; try 20.06cm',
      ],
    ],
    [
      'the lengths of a sheet in inches',
      ['--measured-x', '6.73', '--measured-y', '9.02'],
      ['--measured-x: these are the lengths of the proof sheet in inches; try --units in'],
    ],
    [
      'the lengths of a sheet in mm, typed for one in inches',
      ['--units', 'in', '--measured-x', '149.4mm', '--measured-y', '200.6mm', '--paper', 'A4'],
      ['--measured-x: these are the lengths of the proof sheet in mm; try --units mm'],
    ],
    [
      'x and y swapped',
      ['--measured-x', '200.6', '--measured-y', '149.4'],
      [
        '--measured-x: x and y are swapped: x runs across the foot of the sheet and should be near 150 mm, y up its left side and near 200 mm; give x as 149.4 mm and y as 200.6 mm',
      ],
    ],
    [
      'the lengths of an older, larger sheet',
      ['--measured-x', '179.3', '--measured-y', '240.7'],
      [
        '--measured-x: everything is about 120 % of its size: the page was fitted to the paper, or this is another proof sheet; print the proof sheet for this paper again at 100 %, with no scaling',
      ],
    ],
    [
      'over 3 % off',
      ['--measured-x', '160', '--measured-y', '200'],
      [
        '--measured-x: x should be near 150 mm and 160 mm is 6.7 % off; no printer is out by more than 3 %; measure again, on the proof sheet for this paper',
      ],
    ],
    ['one side alone', ['--measured-x', '149.4'], ['--measured-y: y is missing; it should be near 200 mm']],
    [
      'no lengths at all',
      ['--measured-x', 'a hand', '--measured-y', 'short'],
      [
        '--measured-x: "a hand" is not a length; try 18, 18mm, 0.75in, 3/4in or 5-11/16in',
        '--measured-y: "short" is not a length; try 18, 18mm, 0.75in, 3/4in or 5-11/16in',
      ],
    ],
    [
      'nothing and less',
      ['--measured-x', '0', '--measured-y', '-3'],
      [
        '--measured-x: x must be a length over 0, near 150 mm',
        '--measured-y: y must be a length over 0, near 200 mm',
      ],
    ],
  ])('are questioned and not saved: %s', (_, measures, lines) => {
    expect(run('proof', ...GOOD, '--save', 'office').status).toBe(0);
    const before = readFileSync(stored);
    const { status, out, err } = run('proof', ...measures, '--save', 'office');
    expect([status, out]).toEqual([2, '']);
    expect(err.trimEnd().split('\n')).toEqual(lines);
    expect(readFileSync(stored)).toEqual(before);
  });
});

const OFFICE = { error: { x: 0.996, y: 1.003, skew: 0 }, paper: 'A4', measured: '2026-05-31' };
const save = (name: string) => ['proof', '--measured-x', '150.8', '--measured-y', '200', '--save', name];

describe('a file of printers that is damaged', () => {
  it.each([
    ['cut short', JSON.stringify({ office: OFFICE }).slice(0, -9)],
    ['empty', ''],
    ['a list', '[]'],
    ['of another program', '\u0000\u0001PNG'],
    ['without a part of a printer', JSON.stringify({ office: { ...OFFICE, paper: undefined } })],
    [
      'with an error that no printer makes',
      JSON.stringify({ office: { ...OFFICE, error: { x: 1.4, y: 1, skew: 0 } } }),
    ],
    ['with a day that is none', JSON.stringify({ office: { ...OFFICE, measured: 'yesterday' } })],
  ])('is told of and left as it is: %s', (_, text) => {
    writeFileSync(stored, text);
    for (const command of [
      save('attic'),
      ['printers'],
      ['draw', ...CORNER, '--printer', 'office', '--out', settings],
    ]) {
      const { status, out, err } = run(...command);
      expect([status, out]).toEqual([1, '']);
      expect(err).toBe(
        `${stored}: this file of printers is damaged, and is unchanged; correct it, or move it away and measure the printers again\n`,
      );
      expect(readFileSync(stored, 'utf8')).toBe(text);
      expect(readdirSync(settings)).toEqual(['printers.json']);
    }
  });
});

describe('settings that cannot be written', () => {
  const kept = JSON.stringify({ office: OFFICE });

  it('are told of, and the old correction is kept, on a disk where one may only read', () => {
    // Root may write anywhere, so the program runs as nobody, from a copy that nobody may read.
    const copy = join(settings, 'dist');
    cpSync('dist', copy, { recursive: true });
    const locked = join(settings, 'locked');
    mkdirSync(locked);
    writeFileSync(join(locked, 'printers.json'), kept);
    for (const above of [folder, settings]) chmodSync(above, 0o755);
    chmodSync(locked, 0o555);
    const asNobody = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};
    const runLocked = (...args: string[]) =>
      spawnSync(process.execPath, [join(copy, 'halfpin.js'), ...args], {
        env: { ...process.env, HALFPIN_CONFIG_DIR: locked },
        encoding: 'utf8',
        ...asNobody,
      });
    const { status, stdout, stderr } = runLocked(...save('attic'));
    expect([status, stdout]).toEqual([1, '']);
    expect(stderr).toBe(
      `--save: "attic" could not be kept: ${locked}/printers.json.lock: this may not be read or written here; nothing that was kept before is changed\n`,
    );
    expect(readdirSync(locked)).toEqual(['printers.json']);
    expect(readFileSync(join(locked, 'printers.json'), 'utf8')).toBe(kept);
    expect(runLocked('printers').stdout).toContain('office');
  });

  it('are told of where a file stands in the place of their folder', () => {
    const file = join(settings, 'file');
    writeFileSync(file, 'mine');
    const { status, err } = halfpin(save('attic'), undefined, {
      HALFPIN_CONFIG_DIR: join(file, 'deeper'),
    });
    expect(status).toBe(1);
    expect(err).toBe(
      `--save: "attic" could not be kept: ${file}/deeper: what should be a folder on the way is a file; nothing that was kept before is changed\n`,
    );
    expect(readFileSync(file, 'utf8')).toBe('mine');
  });
});

describe('several runs that save at once', () => {
  const saveAtOnce = (names: readonly string[]): Promise<(number | null)[]> =>
    Promise.all(
      names.map(
        (name) =>
          new Promise<number | null>((resolve) => {
            spawn(process.execPath, [PROGRAM, ...save(name)], {
              env: { ...process.env, HALFPIN_CONFIG_DIR: settings },
              stdio: 'ignore',
            }).on('close', resolve);
          }),
      ),
    );

  it('all keep their printers, and those of before, and leave nothing behind', async () => {
    writeFileSync(stored, JSON.stringify({ office: OFFICE }));
    const names = ['attic', 'cellar', 'hall', 'shed', 'shop', 'study'];
    expect(await saveAtOnce(names)).toEqual(names.map(() => 0));
    const { printers } = JSON.parse(run('printers', '--json').out);
    expect(Object.keys(printers).sort()).toEqual([...names, 'office'].sort());
    expect(printers.office).toEqual(OFFICE);
    expect(readdirSync(settings)).toEqual(['printers.json']);
  });

  it('are not kept out by the lock of a run that was killed', () => {
    const lock = `${stored}.lock`;
    writeFileSync(lock, '');
    const anHourAgo = Date.now() / 1000 - 3600;
    utimesSync(lock, anHourAgo, anHourAgo);
    expect(run(...save('attic')).status).toBe(0);
    expect(readdirSync(settings)).toEqual(['printers.json']);
  });
});

describe('the printers that have been measured', () => {
  const day = (ago: number) => new Date(Date.now() - ago * 24 * 3600 * 1000).toISOString().slice(0, 10);

  it('are listed with how they err and how long ago they were measured', () => {
    const [thirty, today] = [day(30), day(0)];
    writeFileSync(
      stored,
      JSON.stringify({
        office: { ...OFFICE, measured: thirty },
        'Repair café': { error: { x: 1, y: 0.99996, skew: -0.0012 }, paper: '610xroll', measured: today },
      }),
    );
    expect(run('printers').out.split('\n')).toEqual([
      'printer       across       up             skew  paper     measured    days ago',
      `office       −0.40 %  +0.30 %   0.00 mm in 100  A4        ${thirty}        30`,
      `Repair café   0.00 %   0.00 %  −0.12 mm in 100  610xroll  ${today}         0`,
      '',
    ]);
  });

  it('are named where another is asked for', () => {
    const draw = ['draw', ...CORNER, '--out', settings, '--printer', 'ofice'];
    expect(run(...draw)).toMatchObject({
      status: 2,
      err: '--printer: no printer is called "ofice"; none has been measured yet; try halfpin proof to measure one\n',
    });
    writeFileSync(stored, JSON.stringify({ office: OFFICE, attic: OFFICE }));
    expect(run(...draw)).toMatchObject({
      status: 2,
      err: '--printer: no printer is called "ofice"; known: "office", "attic"; try halfpin proof to measure one\n',
    });
    expect(readdirSync(settings)).toEqual(['printers.json']);
  });

  it('are none at first', () => {
    expect(run('printers').out).toBe('No printer has been measured yet. Begin with: halfpin proof\n');
  });
});
