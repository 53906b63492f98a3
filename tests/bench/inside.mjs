// One measurement in a process of its own: node inside.mjs NAME [ARGUMENTS]. Prints what it found as JSON.
import { closeSync, openSync, readFileSync, writeSync } from 'node:fs';
import { chestOf } from './chest.mjs';
import * as engine from './dist/engine.js';
import { flatten } from './flatten.mjs';
import { drawPage, newDocument } from './rawPdfkit.mjs';
import { timesInTurn, worked } from './timing.mjs';

const font = (name) => readFileSync(new URL(`../../dist/fonts/${name}.ttf`, import.meta.url));
const fonts = { regular: font('DejaVuSansCondensed'), bold: font('DejaVuSansCondensed-Bold') };

const accepted = (result) => {
  if (!result.ok) throw new Error(JSON.stringify(result.complaints[0]));
  return result.value;
};

const specsOf = (count) => {
  const reading = engine.readPlan(JSON.stringify(chestOf(count)));
  if (!reading.ok) throw new Error(JSON.stringify(reading.complaints[0]));
  return reading.plan.drawers;
};

const PAPER = accepted(engine.parsePaper('A4'));

const projectOf = (specs) => ({
  name: 'Bench',
  units: 'mm',
  set: { drawers: accepted(engine.layOutSet(specs)).drawers, advice: [] },
  joints: [],
  cuts: new Map(),
});

const sheetsOf = (project) =>
  accepted(engine.sheetsOf(project, { paper: PAPER, kinds: ['templates', 'contents'] })).find(
    ({ kind }) => kind === 'templates',
  );

/** The pieces of thirty drawers. */
const somePieces = () => engine.piecesOf(projectOf(specsOf(30)));

/** A page that holds one piece. */
const pageOf = (piece) => {
  const drawing = piece.draw(engine.NO_SPLITS);
  const { x0, y0, x1, y1 } = drawing.box;
  return { width: x1 - x0, height: y1 - y0, placed: [{ drawing, at: [1, 0, 0, 1, -x0, -y0] }] };
};

/** Corners of many sizes, of every kind and spacing but listed. */
const someCorners = () =>
  Array.from({ length: 1000 }, (_, i) => ({
    kind: i % 2 === 0 ? 'lapped' : 'through',
    width: 50 + (i % 100) * 5,
    tailBoard: 8 + (i % 7),
    pinBoard: 16 + (i % 5),
    slope: { run: 6 + (i % 3) },
    spacing: i % 5 === 0 ? { kind: 'graded', ratio: 0.95, from: 'edge' } : { kind: 'even' },
  }));

/** The marks of a corner's tails by the bare formulas: nothing chosen, checked or advised. */
const bareMarks = ({ width, tailBoard, pinBoard, slope }, count) => {
  const pin = tailBoard / 2;
  const loss = pinBoard / slope.run;
  const tip = (width - pin * (count + 1)) / count;
  const tails = [];
  for (let i = 0; i < count; i++) {
    const from = pin + i * (tip + pin);
    tails.push({ tip: [from, from + tip], base: [from + loss, from + tip - loss] });
  }
  return tails;
};

const plainSvg = ({ size: [width, height], marks }) => {
  let text = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">\n`;
  for (const mark of marks)
    if (mark.kind === 'text')
      text += `<text x="${mark.x}" y="${mark.y}" font-size="${mark.size}">${mark.text}</text>\n`;
    else
      for (const { points } of mark.paths)
        text += `<path stroke-width="${mark.width}" d="${points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('')}"/>\n`;
  return `${text}</svg>\n`;
};

/** Milliseconds a page as PDF by our renderer, and by pdfkit's own calls. */
const pdfTimes = async (pages) => {
  const flat = pages.map(flatten);
  const { ours, floor } = await timesInTurn(5, {
    ours: () => engine.renderPdf(pages, { title: 'Bench', fonts }, () => {}),
    floor: () => {
      const document = newDocument();
      document.resume();
      for (const page of flat) drawPage(document, page);
      document.end();
    },
  });
  return { ours: ours / pages.length, floor: floor / pages.length };
};

const measurements = {
  /** Milliseconds a layout. */
  async layouts() {
    const corners = someCorners().map((spec) => ({
      spec,
      count: accepted(engine.layOut(spec)).tails.length,
    }));
    const { ours, floor } = await timesInTurn(100, {
      ours: () => {
        for (const { spec } of corners) engine.layOut(spec);
      },
      floor: () => {
        for (const { spec, count } of corners) bareMarks(spec, count);
      },
    });
    return { ours: ours / corners.length, floor: floor / corners.length };
  },

  /** Milliseconds for layout and parts list of so many drawers, and for as many front and back corners by themselves. */
  async set(count) {
    const specs = specsOf(Number(count));
    const some = someCorners();
    const corners = [...specs, ...specs].map((_, i) => some[i % some.length]);
    return await timesInTurn(5, {
      ours: () => engine.parts(accepted(engine.layOutSet(specs))),
      floor: () => {
        for (const corner of corners) engine.layOut(corner);
      },
    });
  },

  /** Milliseconds a piece as PDF, each on a page of its own. */
  pdf() {
    return pdfTimes(somePieces().map(pageOf));
  },

  /** The same with nothing but the words on it. */
  words() {
    return pdfTimes(
      somePieces()
        .map(pageOf)
        .map(({ placed: [{ drawing, at }], ...page }) => {
          const marks = drawing.marks.filter(({ kind }) => kind === 'text');
          return { ...page, placed: [{ drawing: { ...drawing, marks }, at }] };
        }),
    );
  },

  /** Milliseconds a piece as SVG, drawing included, once the process is warm. */
  async svg() {
    // Drawings are not held, as they are not when files are written one after the other.
    const pieces = somePieces().map((piece) => ({ piece, flat: flatten(pageOf(piece)) }));
    const tools = { fonts, window: engine.svgWindow() };
    const { ours, floor } = await timesInTurn(31, {
      ours: () => {
        for (const { piece } of pieces)
          engine.renderSvg(piece.draw(engine.NO_SPLITS), { title: piece.title }, tools);
      },
      floor: () => {
        for (const { flat } of pieces) plainSvg(flat);
      },
    });
    return { ours: ours / pieces.length, floor: floor / pieces.length };
  },

  /** Milliseconds for the first SVG in a process: a piece, or a document with nothing drawn in it. */
  firstSvg(empty) {
    const [piece] = somePieces();
    const nothing = { box: { x0: 0, y0: 0, x1: 1, y1: 1 }, marks: [] };
    const started = worked();
    const drawing = empty ? nothing : piece.draw(engine.NO_SPLITS);
    engine.renderSvg(drawing, { title: piece.title }, { fonts, window: engine.svgWindow() });
    return { ms: worked() - started };
  },

  /** Milliseconds and megabytes for the templates of so many drawers, from their specs to the last byte of the PDF. */
  async templates(count, out) {
    const specs = specsOf(Number(count));
    const file = openSync(out, 'w');
    const started = worked();
    const write = (chunk) => {
      writeSync(file, chunk);
    };
    await engine.renderPdf(sheetsOf(projectOf(specs)).pages(), { title: 'Bench', fonts }, write);
    closeSync(file);
    const ms = worked() - started;
    return { ms, megabytes: process.resourceUsage().maxRSS / 1024 };
  },

  /** Writes the pages of the templates of so many drawers for the floor to draw, one a line. */
  pages(count, out) {
    const file = openSync(out, 'w');
    for (const page of sheetsOf(projectOf(specsOf(Number(count)))).pages())
      writeSync(file, `${JSON.stringify(flatten(page))}\n`);
    closeSync(file);
    return {};
  },

  /** The same for one lapped corner. */
  corner(out) {
    const joint = accepted(
      engine.layOut({ kind: 'lapped', width: 96, tailBoard: 11, pinBoard: 20, spacing: { kind: 'even' } }),
    );
    const sheets = sheetsOf({ ...projectOf([]), joints: [{ name: 'Corner', joint }] });
    const file = openSync(out, 'w');
    for (const page of sheets.pages()) writeSync(file, `${JSON.stringify(flatten(page))}\n`);
    closeSync(file);
    return {};
  },
};

const [name, ...rest] = process.argv.slice(2);
console.log(JSON.stringify(await measurements[name](...rest)));
