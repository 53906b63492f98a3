import { join } from 'node:path';
import { refuseOptions } from '../files/failure.ts';
import { loadFonts } from '../files/fonts.ts';
import { sendToQueue } from '../files/printQueue.ts';
import { writePdf } from '../files/writePdf.ts';
import { writeWhole } from '../files/writeWhole.ts';
import { mediaName } from '../paper/sizes.ts';
import { documents, type SheetSet, setPieces } from '../template/documents.ts';
import { fileStem } from '../template/fileStem.ts';
import type { TemplatePiece } from '../template/wrap.ts';
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
  const work = await loadWork(plan, options);
  const wish = readDrawOptions(options, work.units);
  const templateWork = { drawers: work.set.drawers, joints: work.joints, units: work.units };
  const pieces = setPieces(templateWork, wish.choice);
  const correction = options.printer === undefined ? undefined : await loadCorrection(options.printer);
  const laid = documents(templateWork, pieces, {
    title: work.title,
    ...wish,
    ...(correction && { correction }),
  });
  if (!laid.ok) return refuseOptions(laid.complaints, work.units);
  const lines: string[] = [];
  if (wish.kinds.has('pdf'))
    for (const { name, sheets } of laid.value) {
      const path = join(options.out, `${fileStem(work.title)}-${name}.pdf`);
      await writePdf(path, `${work.title}: ${name}`, sheets.pages());
      lines.push(`${path}: ${pagesOf(sheets.count, wish.paper.name)}, ${PURPOSE[name]}`);
      if (options.send !== undefined) {
        await sendToQueue(options.send, path, mediaName(wish.paper));
        lines.push(`  sent to ${options.send}`);
      }
    }
  if (wish.kinds.has('svg')) {
    await writeSvgs(pieces, options.out);
    lines.push(`${options.out}: ${pieces.length} pieces as SVG, one a file`);
  }
  process.stdout.write(`${[...lines, ...closing(work)].join('\n')}\n`);
};

const pagesOf = (count: number, paper: string): string =>
  `${count} ${count === 1 ? 'page' : 'pages'} of ${paper}`;

const PURPOSE: Readonly<Record<SheetSet['name'], string>> = {
  templates: 'templates, to cut out and glue on',
  bench: 'bench sheets, one a drawer',
  comparison: 'the set as it will be seen',
};

const writeSvgs = async (pieces: readonly TemplatePiece[], folder: string): Promise<void> => {
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
};

const closing = ({ set, joints, units }: Work): string[] => [
  ...adviceText([...set.advice, ...joints.flatMap(({ joint }) => joint.advice)], units),
  ...wrapText(
    'Print at 100 %, lay a steel rule on both check bars of a page, and only then cut. Keep tools sharp and hands behind the edge.',
  ),
];
