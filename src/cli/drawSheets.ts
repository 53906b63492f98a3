import { join } from 'node:path';
import { refuseOptions } from '../files/failure.ts';
import { loadFonts } from '../files/fonts.ts';
import { writeWhole } from '../files/writeWhole.ts';
import { documents, type SheetSet, setPieces } from '../template/documents.ts';
import { fileStem } from '../template/fileStem.ts';
import type { TemplatePiece } from '../template/wrap.ts';
import { type DrawOptions, readDrawOptions } from './drawOptions.ts';
import type { JointOptions } from './jointOptions.ts';
import { adviceText, wrapText } from './jointText.ts';
import { loadWork, type Work } from './work.ts';

/** Sets a plan or one corner out, writes its sheets, and says what was made. */
export const drawSheets = async (
  plan: string | undefined,
  options: DrawOptions & JointOptions,
): Promise<void> => {
  const work = await loadWork(plan, options);
  const wish = readDrawOptions(options, work.units);
  const templateWork = { drawers: work.set.drawers, joints: work.joints, units: work.units };
  const pieces = setPieces(templateWork, wish.choice);
  const laid = documents(templateWork, pieces, { title: work.title, ...wish });
  if (!laid.ok) return refuseOptions(laid.complaints, work.units);
  const written = [
    ...(wish.kinds.has('pdf') ? await writePdfs(work.title, laid.value, options.out, wish.paper.name) : []),
    ...(wish.kinds.has('svg') ? await writeSvgs(pieces, options.out) : []),
  ];
  process.stdout.write(`${[...written, ...closing(work)].join('\n')}\n`);
};

const PURPOSE: Readonly<Record<SheetSet['name'], string>> = {
  templates: 'templates, to cut out and glue on',
  bench: 'bench sheets, one a drawer',
  comparison: 'the set as it will be seen',
};

const writePdfs = async (
  title: string,
  sets: readonly SheetSet[],
  folder: string,
  paper: string,
): Promise<string[]> => {
  const { renderPdf } = await import('../render/pdf.ts');
  const fonts = loadFonts();
  const lines: string[] = [];
  for (const { name, sheets } of sets) {
    const path = join(folder, `${fileStem(title)}-${name}.pdf`);
    await writeWhole(path, (write) =>
      renderPdf(sheets.pages(), { title: `${title}: ${name}`, fonts }, write),
    );
    const pages = sheets.count === 1 ? '1 page' : `${sheets.count} pages`;
    lines.push(`${path}: ${pages} of ${paper}, ${PURPOSE[name]}`);
  }
  return lines;
};

const writeSvgs = async (pieces: readonly TemplatePiece[], folder: string): Promise<string[]> => {
  const [{ renderSvg }, { svgWindow }, { NO_SPLITS }] = await Promise.all([
    import('../render/svg.ts'),
    import('../render/svgWindow.ts'),
    import('../paper/piece.ts'),
  ]);
  const tools = { fonts: loadFonts(), window: svgWindow() };
  for (const piece of pieces)
    await writeWhole(join(folder, `${piece.name}.svg`), (write) =>
      write(renderSvg(piece.draw(NO_SPLITS), { title: `${piece.title}, make ${piece.count}` }, tools)),
    );
  return [`${folder}: ${pieces.length} pieces as SVG, one a file`];
};

const closing = ({ set, joints, units }: Work): string[] => [
  ...adviceText([...set.advice, ...joints.flatMap(({ joint }) => joint.advice)], units),
  ...wrapText(
    'Print at 100 %, lay a steel rule on both check bars of a page, and only then cut. Keep tools sharp and hands behind the edge.',
  ),
];
