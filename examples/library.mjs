// Halfpin as a library: a plan in, every part and a PDF of full-size templates out.
//   node library.mjs [folder]
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  BOTH_BOARDS,
  DEFAULT_MARGIN,
  formatLength,
  formatPlanComplaint,
  layOutPlan,
  layPages,
  parsePaper,
  parts,
  renderPdf,
  sentence,
  setLayouts,
  setPieces,
} from 'halfpin';

const PLAN = `
name: Repair café
stock:
  front: {thickness: 20, species: "Cherry, black"}
  side: {thickness: 11, species: "Ash, white"}
joint: {slope: "1:7", pin: 5, halfPin: 6, lap: 5}
groove: {offset: 11}
drawers:
  - {name: Buttons, count: 2, opening: {width: 280, height: 76, depth: 420}}
  - {name: Cloth, opening: {width: 574, height: 190, depth: 420}}
`;

// A plan is read and set out whole, or every complaint about it comes back with its line and column.
const laid = layOutPlan(PLAN);
if (!laid.ok)
  throw new Error(laid.complaints.map((each) => formatPlanComplaint('plan', each, laid.units)).join('\n'));
const { plan, set, joints } = laid.value;
const { name: title, units } = plan;
for (const { spec, front } of set.drawers)
  console.log(`${spec.name}: ${front.tails.length} tails at each front corner`);
for (const { drawer, part, count, roughLength } of parts(set, units))
  console.log(`${count} x ${drawer} ${part}, ${formatLength(roughLength, units)} in the rough`);

// Every corner as a template, packed on sheets of paper.
const paper = parsePaper('A4');
if (!paper.ok) throw new Error('A4 is a paper');
const work = { ...set, joints, units };
const wish = { title, paper: paper.value, margin: DEFAULT_MARGIN };
const [templates] = setLayouts(work, setPieces(work, BOTH_BOARDS), wish);
const sheets = layPages(templates.layout);
if (!sheets.ok) throw new Error(sheets.complaints.map((each) => sentence(each, units)).join('\n'));

// The fonts come with the package.
const font = (file) => readFileSync(fileURLToPath(import.meta.resolve(`halfpin/fonts/${file}`)));
const fonts = { regular: font('DejaVuSansCondensed.ttf'), bold: font('DejaVuSansCondensed-Bold.ttf') };
const chunks = [];
await renderPdf(sheets.value.pages(), { title, fonts }, (chunk) => {
  chunks.push(chunk);
});
const path = join(process.argv[2] ?? '.', 'templates.pdf');
writeFileSync(path, Buffer.concat(chunks));
console.log(`${path}: ${sheets.value.count} pages of ${paper.value.name}`);
