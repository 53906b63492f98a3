import { Resvg } from '@resvg/resvg-js';
import dxfParser, { type ILwpolylineEntity, type ITextEntity } from 'dxf-parser';
import fc from 'fast-check';
import { apply } from '../../src/drawing/affine.ts';
import type { PrintPage } from '../../src/drawing/printPage.ts';
import { shownText } from '../../src/drawing/shownText.ts';
import { ANSI_PAPERS, ISO_PAPERS, parsePaper } from '../../src/paper/paperSizes.ts';
import { NO_SPLITS, type Piece } from '../../src/paper/piece.ts';
import { inverse } from '../../src/paper/printerCorrection.ts';
import { proofAccuracy } from '../../src/paper/proofAccuracy.ts';
import { drawProof } from '../../src/paper/proofSheet.ts';
import { readProof } from '../../src/paper/readProof.ts';
import { dxfFiles } from '../../src/project/dxfFiles.ts';
import { guidePieces, guidesOf } from '../../src/project/guidesOf.ts';
import { piecesOf } from '../../src/project/piecesOf.ts';
import { sheetsOf } from '../../src/project/sheetsOf.ts';
import { renderSvg } from '../../src/render/svg.ts';
import { svgWindow } from '../../src/render/svgWindow.ts';
import type { GuideBoard } from '../../src/router/guide/guideBoard.ts';
import { parseName } from '../../src/units/name.ts';
import { mostly } from '../joint/anySpec.ts';
import { FONTS } from '../render/fonts.ts';
import { abuse, must, mustBeFinite, refused } from './abuse.ts';
import { projectOf } from './plans.ts';
import { guidedPlan, ordinaryPlan } from './planTexts.ts';
import { anyText, HOSTILE_NAMES } from './texts.ts';

const paper = fc.oneof(
  { weight: 8, arbitrary: fc.constantFrom(...ISO_PAPERS, ...ANSI_PAPERS).map(({ name }) => name) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.integer({ min: 80, max: 900 }), fc.integer({ min: 80, max: 900 }))
      .map(([w, h]) => `${w}x${h}`),
  },
  { weight: 1, arbitrary: fc.integer({ min: 80, max: 900 }).map((width) => `${width}xroll`) },
  anyText,
);
const margin = mostly(5, 20);
/** Every hostile name that is accepted as one. */
const title = fc.constantFrom(...HOSTILE_NAMES.filter((name) => parseName(name).ok));
const error = fc.record({
  x: fc.double({ min: 0.97, max: 1.03, noNaN: true }),
  y: fc.double({ min: 0.97, max: 1.03, noNaN: true }),
  skew: fc.double({ min: -0.03, max: 0.03, noNaN: true }),
});

/** Every line of a page lies on its paper. */
const mustLieOnPaper = ({ width, height, placed }: PrintPage): void => {
  for (const { drawing, at } of placed)
    for (const mark of drawing.marks)
      for (const point of mark.kind === 'text' ? [mark.at] : mark.paths.flatMap(({ points }) => points)) {
        const [x, y] = apply(at, point);
        must(
          x >= -1e-6 && x <= width + 1e-6 && y >= -1e-6 && y <= height + 1e-6,
          `a ${mark.role} off the paper at ${x}, ${y}`,
        );
      }
};

export const sheets = abuse(
  'sheets on any paper, for any printer',
  0.05,
  fc.record({ plan: fc.oneof(ordinaryPlan, guidedPlan), paper, margin, correction: fc.option(error), title }),
  ({ plan, paper, margin, correction, title }) => {
    const project = projectOf(plan);
    if (project === 'refused') return project;
    const size = parsePaper(paper);
    if (!size.ok) return refused(size.complaints);
    const laid = sheetsOf(
      { ...project, name: title },
      {
        paper: size.value,
        margin,
        choice: { boards: ['tail', 'pin'], flat: false, rods: true },
        ...(correction && { correction: { printer: title, error: correction } }),
      },
    );
    if (!laid.ok) return refused(laid.complaints, 'numbers');
    for (const sheets of laid.value) {
      let count = 0;
      for (const page of sheets.pages()) {
        count += 1;
        mustLieOnPaper(page);
      }
      must(count === sheets.count, `${count} pages where ${sheets.count} were told`);
    }
    return 'valid';
  },
);

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };
const unescaped = (text: string): string =>
  text.replace(/&(\w+);/gu, (whole, name) => ENTITIES[name] ?? whole);

/** Names on the pieces: text that an XML reader finds as it was written. */
export const names = abuse(
  'hostile names on a drawing',
  0.1,
  fc.record({ title: anyText, text: anyText }),
  ({ title, text }) => {
    const window = svgWindow();
    const svg = renderSvg(
      {
        box: { x0: 0, y0: 0, x1: 40, y1: 20 },
        marks: [
          {
            kind: 'text',
            role: 'label',
            text,
            at: [2, 2],
            size: 3,
            turn: 0,
            anchor: 'start',
            weight: 'regular',
          },
        ],
      },
      { title, description: text },
      { fonts: FONTS, window },
    );
    // A strict reader of XML: throws where the file is not well formed.
    must(new Resvg(svg).width > 0, 'nothing is drawn');
    must(!/<(?:script|svg onload|b>|!--)/u.test(svg), 'a name became markup');
    const written = /<title>(.*?)<\/title>/u.exec(svg)?.[1] ?? '';
    must(unescaped(written) === shownText(title), `the title ${title} is not as written`);
    return 'valid';
  },
);

export const proofs = abuse(
  'proof sheets of any paper, and any measures read from them',
  0.3,
  fc.record({
    paper,
    margin,
    unit: fc.constantFrom('mm' as const, 'in' as const),
    factors: fc.record(
      { x: mostly(0.98, 1.02), y: mostly(0.98, 1.02), d1: mostly(0.99, 1.01), d2: mostly(0.99, 1.01) },
      { requiredKeys: ['x', 'y'] },
    ),
  }),
  ({ paper, margin, unit, factors }) => {
    const size = parsePaper(paper);
    if (!size.ok) return refused(size.complaints);
    const proof = drawProof(size.value, margin, unit, undefined);
    if (!proof.ok) return refused(proof.complaints, 'numbers');
    const { lengths, page } = proof.value;
    mustLieOnPaper(page);
    const { x, y, d1, d2 } = factors;
    const measured = {
      x: lengths.x * x,
      y: lengths.y * y,
      ...(d1 !== undefined && { d1: lengths.d1 * d1 }),
      ...(d2 !== undefined && { d2: lengths.d2 * d2 }),
    };
    const read = readProof(lengths, measured);
    if (!read.ok) return refused(read.complaints, 'numbers');
    mustBeFinite(proofAccuracy(lengths, measured, { sides: 0.1, diagonals: 0.5 }));
    mustBeFinite(inverse(read.value));
    return 'valid';
  },
);

/** What a drawing of one piece holds is finite, split or not. */
const mustDraw = (pieces: readonly Piece[]): void => {
  for (const piece of pieces.slice(0, 6)) {
    mustBeFinite(piece.draw(NO_SPLITS));
    const [from, to] = piece.splittable.y[0] ?? [0, 0];
    mustBeFinite(piece.draw({ x: [], y: [(from + to) / 2] }));
  }
};

export const drawings = abuse('pieces drawn whole and in parts', 0.05, ordinaryPlan, (plan) => {
  const project = projectOf(plan);
  if (project === 'refused') return project;
  mustDraw(piecesOf(project, { boards: ['tail', 'pin'], flat: true, rods: true }));
  return 'valid';
});

/** In Node the package is the class itself, whatever its types say. */
const Parser = dxfParser as unknown as typeof dxfParser.DxfParser;

/** What a reader of DXF that did not write the file finds of a guide. */
const mustBeReadable = (guide: GuideBoard, written: string): void => {
  const dxf = new Parser().parseSync(written);
  const lines = (dxf?.entities ?? []).filter(({ type }) => type === 'LWPOLYLINE') as ILwpolylineEntity[];
  const texts = (dxf?.entities ?? []).filter(({ layer, type }) => layer === 'TEXT' && type === 'TEXT');
  must(lines.length + texts.length === dxf?.entities.length, 'other things than lines and texts');
  const [name, edge, ...others] = texts as ITextEntity[];
  must(
    (name?.text ?? '') !== '' && (edge?.text ?? '') !== '' && others.length === 0,
    'not its name and edge',
  );
  mustBeFinite([name?.startPoint, edge?.startPoint, name?.textHeight, edge?.textHeight]);
  must(lines.filter(({ layer }) => layer === 'REFERENCE').length === 1, 'not one reference edge');
  const [outline, ...more] = lines.filter(({ layer }) => layer === 'OUTLINE');
  must(outline?.shape === true && more.length === 0, 'not one closed outline');
  must(outline?.vertices.length === guide.outline.length, 'corners are lost');
  const near = (a = 0, b = 0): boolean => Math.abs(a - b) < 1e-5;
  guide.outline.forEach(({ at: [x, y], bulge }, i) => {
    const vertex = outline?.vertices[i];
    must(near(vertex?.x, x) && near(vertex?.y, y) && near(vertex?.bulge, bulge), `corner ${i} is elsewhere`);
  });
  mustBeFinite(lines.map(({ vertices }) => vertices));
};

export const guides = abuse('guides drawn whole, in parts and as DXF', 0.1, guidedPlan, (plan) => {
  const project = projectOf(plan);
  if (project === 'refused') return project;
  mustDraw(guidePieces(project));
  const files = dxfFiles(project);
  guidesOf(project).forEach(({ guide }, i) => {
    mustBeReadable(guide, files[i]?.text() ?? '');
  });
  return 'valid';
});
