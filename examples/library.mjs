// Halfpin as a library: a plan in, every part and a PDF of full-size templates out.
//   node library.mjs [folder]
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  formatLength,
  formatPlanComplaint,
  parsePaper,
  parts,
  readProject,
  renderPdf,
  sentence,
  sheetsOf,
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
const reading = readProject(PLAN);
if (!reading.ok)
  throw new Error(reading.complaints.map((each) => formatPlanComplaint('plan', each, reading.units)).join('\n'));
const project = reading.value;
const { set, units } = project;
for (const { spec, front } of set.drawers)
  console.log(`${spec.name}: ${front.tails.length} tails at each front corner`);
for (const { drawer, part, count, roughLength } of parts(set, units))
  console.log(`${count} x ${drawer} ${part}, ${formatLength(roughLength, units)} in the rough`);

// Every corner as a template, packed on sheets of paper; bench sheets and the comparison follow.
const paper = parsePaper('A4');
if (!paper.ok) throw new Error('A4 is a paper');
const sheets = sheetsOf(project, { paper: paper.value });
if (!sheets.ok) throw new Error(sheets.complaints.map((each) => sentence(each, units)).join('\n'));
const [templates] = sheets.value;

// The fonts come with the package.
const font = (file) => readFileSync(fileURLToPath(import.meta.resolve(`halfpin/fonts/${file}`)));
const fonts = { regular: font('DejaVuSansCondensed.ttf'), bold: font('DejaVuSansCondensed-Bold.ttf') };
const chunks = [];
await renderPdf(templates.pages(), { title: templates.title, fonts }, (chunk) => {
  chunks.push(chunk);
});
const path = join(process.argv[2] ?? '.', 'templates.pdf');
writeFileSync(path, Buffer.concat(chunks));
console.log(`${path}: ${templates.count} pages of ${paper.value.name}`);
