// The floor under every PDF: pdfkit's regular build drawing the same lines and labels straight.
// node rawPdfkit.mjs PAGES OUT [builtin]: pages as `flatten.mjs` has them, one a line. Prints its time and memory.
import { once } from 'node:events';
import { closeSync, createWriteStream, openSync, readSync } from 'node:fs';
import { StringDecoder } from 'node:string_decoder';
import { setImmediate } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import PDFDocument from 'pdfkit';
import { worked } from './timing.mjs';

const fontFile = (name) =>
  fileURLToPath(new URL(`../../node_modules/dejavu-fonts-ttf/ttf/${name}.ttf`, import.meta.url));
const EMBEDDED = { regular: fontFile('DejaVuSansCondensed'), bold: fontFile('DejaVuSansCondensed-Bold') };
const BUILTIN = { regular: 'Helvetica', bold: 'Helvetica-Bold' };

export const newDocument = () => new PDFDocument({ autoFirstPage: false });

export const drawPage = (document, { size, marks }, fonts = EMBEDDED) => {
  document.addPage({ size, margin: 0 });
  for (const mark of marks) {
    if (mark.kind === 'text') {
      const { text, x, y, size, turn, weight } = mark;
      document.font(fonts[weight]).fontSize(size);
      if (turn !== 0) document.save().rotate(turn, { origin: [x, y] });
      document.text(text, x, y, { lineBreak: false, baseline: 'alphabetic' });
      if (turn !== 0) document.restore();
      continue;
    }
    if (mark.kind === 'stroke') {
      document.lineWidth(mark.width);
      if (mark.dash) document.dash(mark.dash);
      else document.undash();
    }
    for (const { points, closed } of mark.paths) {
      for (const [i, [x, y]] of points.entries())
        if (i === 0) document.moveTo(x, y);
        else document.lineTo(x, y);
      if (closed) document.closePath();
    }
    if (mark.kind === 'stroke') document.stroke();
    else document.fill(mark.grey);
  }
};

/** The lines of a file, a few at a time, so that a long one takes no more memory than a short one. */
function* linesOf(path) {
  const file = openSync(path);
  const buffer = Buffer.alloc(1 << 16);
  const decoder = new StringDecoder();
  let rest = '';
  for (let length = readSync(file, buffer); length > 0; length = readSync(file, buffer)) {
    const lines = (rest + decoder.write(buffer.subarray(0, length))).split('\n');
    rest = lines.pop();
    yield* lines;
  }
  closeSync(file);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [pages, out, builtin] = process.argv.slice(2);
  const started = worked();
  let reading = 0;
  const document = newDocument();
  const file = document.pipe(createWriteStream(out));
  let before = worked();
  for (const line of linesOf(pages)) {
    const page = JSON.parse(line);
    // To read the pages back is no part of drawing them.
    reading += worked() - before;
    drawPage(document, page, builtin ? BUILTIN : EMBEDDED);
    // A document hands its bytes on when nothing else is going on; without a pause it keeps them all.
    await setImmediate();
    before = worked();
  }
  document.end();
  await once(file, 'finish');
  const ms = worked() - started - reading;
  console.log(JSON.stringify({ ms, megabytes: process.resourceUsage().maxRSS / 1024 }));
}
