import { join } from 'node:path';
import { failWith, refuseOptions } from '../files/failure.ts';
import { loadFonts } from '../files/fonts.ts';
import { sendToQueue } from '../files/printQueue.ts';
import { refuseForeign } from '../files/refuseForeign.ts';
import { writePdf } from '../files/writePdf.ts';
import { writeWhole } from '../files/writeWhole.ts';
import { BEFORE_ROUTING } from '../guided/cautions.ts';
import type { Piece } from '../paper/piece.ts';
import { type Layout, layPages, sheetCounts } from '../paper/sheets.ts';
import { ANSI_PAPERS, ISO_PAPERS, type Paper } from '../paper/sizes.ts';
import { guideLayers, guidePiece } from '../template/drawGuide.ts';
import { fileStem } from '../template/fileStem.ts';
import type { NamedGuide } from '../template/guidesToMake.ts';
import { setGuides } from '../template/setGuides.ts';
import { type SetLayout, setLayouts, setPieces } from '../template/setLayouts.ts';
import { speak } from '../units/phrase.ts';
import { type DrawOptions, readDrawOptions } from './drawOptions.ts';
import type { JointOptions } from './jointOptions.ts';
import { adviceText, wrapText } from './jointText.ts';
import { loadCorrection } from './printers.ts';
import { loadWork, type Work } from './work.ts';

/** Sets a plan or one corner out, writes its sheets, and says what was made. */
export const drawSheets = async (
  plan: string | undefined,
  options: DrawOptions & JointOptions,
): Promise<void> => {
  const work = await loadWork(plan, options).catch((error: unknown) =>
    failWith(error, () => readDrawOptions(options, options.units === 'in' ? 'in' : 'mm', true)),
  );
  const { drawers, family } = work.set;
  const { joints, units } = work;
  const guides = setGuides({ drawers, joints, units }, work.cuts);
  const wish = readDrawOptions(options, units, guides.length > 0);
  const guidePieces = guides.map(({ guide, titles }) => guidePiece(guide, titles));
  const sheetWork = {
    drawers,
    joints,
    units,
    guides: guidePieces,
    cuts: work.cuts,
    ...(family && { family }),
  };
  const pieces = setPieces(sheetWork, wish.choice);
  const correction = options.printer === undefined ? undefined : await loadCorrection(options.printer);
  const layouts = setLayouts(sheetWork, pieces, {
    title: work.title,
    ...wish,
    ...(correction && { correction }),
  });
  const laid = layouts.map(({ name, layout }) => ({ name, layout, sheets: layPages(layout) }));
  const complaints = laid.flatMap(({ sheets }) => (sheets.ok ? [] : sheets.complaints));
  if (complaints.length > 0) return refuseOptions(complaints, work.units);

  const pdfs = wish.kinds.has('pdf') ? laid.map(({ name }) => pdfPath(options.out, work.title, name)) : [];
  const drawn = [...pieces, ...guidePieces];
  const svgs = wish.kinds.has('svg') ? drawn.map(({ name }) => join(options.out, `${name}.svg`)) : [];
  const dxfs = wish.kinds.has('dxf') ? guidePieces.map(({ name }) => join(options.out, `${name}.dxf`)) : [];
  await refuseForeign([...pdfs, ...svgs, ...dxfs], options.force === true);
  if (wish.kinds.has('pdf'))
    for (const { name, layout, sheets } of laid) {
      if (!sheets.ok) continue;
      const path = pdfPath(options.out, work.title, name);
      if (name === 'templates') say(sheetsSentence(sheets.value.count, layout));
      const pages = await writePdf(path, `${work.title}: ${name}`, sheets.value.pages());
      say(`${path}: ${pagesOf(sheets.value.count, wish.paper.name)}, ${PURPOSE[name]}`);
      if (options.send !== undefined) {
        await sendToQueue(options.send, path, pages);
        say(`  sent to ${options.send}`);
      }
    }
  if (wish.kinds.has('svg')) {
    await writeSvgs(drawn, options.out);
    say(`${options.out}: ${drawn.length} pieces as SVG, one a file`);
  }
  if (wish.kinds.has('dxf')) {
    await writeDxfs(guides, options.out);
    say(`${options.out}: ${guides.length} guides as DXF, in mm, one a file`);
  }
  for (const line of closing(work, guides.length > 0)) say(line);
};

const pdfPath = (folder: string, title: string, name: string): string =>
  join(folder, `${fileStem(title)}-${name}.pdf`);

const pagesOf = (count: number, paper: string): string =>
  `${count} ${count === 1 ? 'page' : 'pages'} of ${paper}`;

const say = (line: string): void => {
  process.stdout.write(`${line}\n`);
};

const PURPOSE: Readonly<Record<SetLayout['name'], string>> = {
  templates: 'templates, to cut out and glue on',
  guides: 'guides to make of sheet material, for the bush to run in',
  bench: 'bench sheets, drawer by drawer',
  comparison: 'the set as it will be seen',
};

/** More pieces than this are not laid out again on other papers. */
const MOST_TO_COMPARE = 1000;

/** What is about to be written, and which larger papers would take fewer sheets. */
const sheetsSentence = (count: number, layout: Layout): string => {
  const { paper, pieces } = layout;
  const larger = pieces.length > MOST_TO_COMPARE ? [] : largerThan(paper);
  const better = sheetCounts(layout, larger).flatMap((other) =>
    other.count !== undefined && other.count < count ? [`${other.paper.name} would take ${other.count}`] : [],
  );
  return [`${count} ${count === 1 ? 'sheet' : 'sheets'} of ${paper.name}`, ...better].join('; ');
};

/** The next two larger papers of the same family. */
const largerThan = ({ name, width, height }: Paper): Paper[] => {
  const family = ANSI_PAPERS.some((paper) => paper.name === name) ? ANSI_PAPERS : ISO_PAPERS;
  return family
    .filter((paper) => paper.width * paper.height > width * height)
    .toSorted((a, b) => a.width * a.height - b.width * b.height)
    .slice(0, 2);
};

const writeDxfs = async (guides: readonly NamedGuide[], folder: string): Promise<void> => {
  const { renderDxf } = await import('../render/dxf.ts');
  for (const { guide, titles } of guides) {
    const { name, title } = guidePiece(guide, titles);
    await writeWhole(join(folder, `${name}.dxf`), (write) =>
      write(renderDxf(guideLayers(guide), `Halfpin: ${title}`)),
    );
  }
};

const writeSvgs = async (pieces: readonly Piece[], folder: string): Promise<void> => {
  const [{ pieceSvg }, { svgWindow }] = await Promise.all([
    import('../render/pieceSvg.ts'),
    import('../render/svgWindow.ts'),
  ]);
  const tools = { fonts: loadFonts(), window: svgWindow() };
  for (const piece of pieces)
    await writeWhole(join(folder, `${piece.name}.svg`), (write) => write(pieceSvg(piece, tools)));
};

const closing = ({ set, joints, units }: Work, guided: boolean): string[] => [
  ...adviceText([...set.advice, ...joints.flatMap(({ joint }) => joint.advice)], units),
  ...wrapText(
    'Print at 100 %, lay a steel rule on both check bars of a page, and only then cut. Keep tools sharp and hands behind the edge.',
  ),
  ...(guided ? BEFORE_ROUTING.flatMap((caution) => wrapText(speak(caution, units))) : []),
];
