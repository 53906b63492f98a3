import { join } from 'node:path';
import { digestsOf } from '../../files/digests.ts';
import { DEVICE_FAILED, Failure, failWith, refuseOptions } from '../../files/failure.ts';
import { guardOverwrite } from '../../files/guardOverwrite.ts';
import { loadFonts, writePdf } from '../../files/writeDrawn.ts';
import { writeWhole } from '../../files/writeWhole.ts';
import { copiesNeeded } from '../../paper/copiesNeeded.ts';
import { ANSI_PAPERS, ISO_PAPERS, type Paper } from '../../paper/paperSizes.ts';
import type { Size } from '../../paper/printable.ts';
import type { Copies } from '../../paper/sheets.ts';
import { drillingOf } from '../../project/drillingOf.ts';
import { pdfName } from '../../project/fileNames.ts';
import { guidePieces, guidesOf } from '../../project/guidesOf.ts';
import { onlyNumbers } from '../../project/only.ts';
import { picturedCorners } from '../../project/picturedCorners.ts';
import { piecesOf } from '../../project/piecesOf.ts';
import { hasGuides, type Project } from '../../project/project.ts';
import {
  kindsOf,
  type SheetKind,
  type SheetOptions,
  type SheetSet,
  sheetsOf,
} from '../../project/sheetsOf.ts';
import type { DrawnFile } from '../../project/svgFiles.ts';
import { BEFORE_ROUTING } from '../../router/limits/cautions.ts';
import type { PieceChoice } from '../../sheets/template/cornerPieces.ts';
import { speak } from '../../units/phrase.ts';
import { loadProject } from '../loadProject.ts';
import { type DrawOptions, readDrawOptions } from '../options/drawOptions.ts';
import type { JointOptions } from '../options/jointOptions.ts';
import { bareUnit } from '../options/notationOptions.ts';
import { loadCorrection } from '../options/printerOption.ts';
import { adviceText, terminalLines } from '../report/jointText.ts';
import { keepHeapSmall } from './keepHeapSmall.ts';
import { namesakesOf } from './namesakes.ts';
import { oldFilesOf, tidyFiles } from './tidyFiles.ts';

/** The sheets of more drawers than this would take the memory of a small machine, unless it is tidied often. */
const MANY = 50;

/** Sets a plan or one corner out, writes its sheets, and says what was made. */
export const drawSheets = async (
  plan: string | undefined,
  options: DrawOptions & JointOptions,
): Promise<void> => {
  const whole = await loadProject(plan, { ...options, draws: true }).catch((error: unknown) =>
    failWith(error, () => readDrawOptions(options, bareUnit(options), undefined)),
  );
  if (whole.set.drawers.length > MANY) await keepHeapSmall();
  const { kinds, sheetKinds, only, ...printed } = readDrawOptions(options, whole.units, whole);
  const project: Project = { ...whole, ...(only && { only }) };
  const correction = options.printer === undefined ? undefined : await loadCorrection(options.printer);
  const asked = { ...printed, kinds: sheetKinds, ...(correction && { correction }) };
  const sets = laySheets(project, asked, kinds.has('pdf'));

  const at = (name: string): string => join(options.out, name);
  // The sheets of chosen drawers do not take the place of the whole set's.
  const chosen = only === undefined ? '' : `only-${onlyNumbers(whole, only)}-`;
  const nameOf = (kind: SheetSet['kind']): string => pdfName(whole.name, kind, chosen);
  const pdfs = sets.map(({ kind }) => kind);
  const leftOut = kinds.has('pdf') ? kindsOf(project).filter((kind) => !pdfs.includes(kind)) : [];
  const svgs = kinds.has('svg') ? await drawSvgs(project, printed.choice, sheetKinds) : [];
  const dxfs = kinds.has('dxf') ? await drawDxfs(project) : [];
  const paths = [...pdfs.map(nameOf), ...[...svgs, ...dxfs].map(({ name }) => name)].map(at);
  await guardOverwrite(paths, options.force === true);
  const before = await digestsOf(paths);
  const sizes = new Map<string, Size[]>();
  // Each is dropped when it is written: the pages of a large set take much memory.
  for (let set = sets.shift(); set !== undefined; set = sets.shift()) {
    const { kind, title, count, paper } = set;
    const path = at(nameOf(kind));
    if (kind === 'templates') for (const line of sheetsLines(set, printed.copies)) say(line);
    sizes.set(path, await writePdf(path, title, set.pages()));
    say(`${path}: ${pagesOf(count, paper.name)}, ${purposeOf(kind, project)}`);
  }
  for (const { name, text } of svgs) await writeWhole(at(name), (write) => write(text()));
  if (kinds.has('svg'))
    say(
      `${options.out}: ${svgs.length} templates${sheetKinds.includes('corners') ? ' and pictures' : ''} as SVG, one a file`,
    );
  for (const { name, text } of dxfs) await writeWhole(at(name), (write) => write(text()));
  if (kinds.has('dxf')) say(`${options.out}: ${dxfs.length} guides as DXF, in mm, one a file`);
  const after = await digestsOf(before.keys());
  const replaced = [...before.keys()].filter((path) => after.get(path) !== before.get(path));
  const old = await oldFilesOf(whole, options.out || '.', leftOut.map(nameOf));
  // Other plans are read only where something of theirs may be lost.
  const namesakes = replaced.length + old.length > 0 ? await namesakesOf(plan, whole.name) : [];
  for (const line of [
    ...replacedLines(replaced),
    ...(await tidyFiles(old, namesakes, options.tidy === true)),
    ...namesakes.map((other) => `${other}: ${NAMESAKE}`),
  ])
    say(line);
  for (const line of closing(project, hasGuides(project))) say(line);
  if (options.send !== undefined) await send(options.send, sizes);
};

/** The sheets to write as PDF. For other files they are laid out all the same, as what is wrong is told for them too. */
const laySheets = (project: Project, options: SheetOptions, asPdf: boolean): SheetSet[] => {
  const sheets = sheetsOf(project, options);
  if (!sheets.ok) return refuseOptions(sheets.complaints, project.units);
  return asPdf ? sheets.value : [];
};

const NAMESAKE =
  'this plan has the same name, so its sheets and these take each other’s place; give one another name, or draw it with another --out';

/** What was there before and is lost: of the plan as it was, or of another one whose files have the same names. */
const replacedLines = (paths: readonly string[]): string[] => {
  const count = `${paths.length} ${paths.length === 1 ? 'file' : 'files'}`;
  const listed = paths.join(', ');
  const which = listed.length > LONGEST_LIST ? '' : `: ${listed}`;
  return paths.length === 0 ? [] : [`written over what ${count} held before${which}`];
};

/** Sends every file, whatever becomes of another. Throws a Failure with all that the queue did not take. */
const send = async (queue: string, sizes: ReadonlyMap<string, readonly Size[]>): Promise<void> => {
  const { sendToQueue } = await import('../../files/printQueue.ts');
  const refused: string[] = [];
  for (const [path, pages] of sizes)
    try {
      await sendToQueue(queue, path, pages);
      say(`${path}: sent to ${queue}`);
    } catch (error) {
      if (!(error instanceof Failure)) throw error;
      refused.push(...error.lines);
    }
  if (refused.length > 0) throw new Failure(refused, DEVICE_FAILED);
};

const pagesOf = (count: number, paper: string): string =>
  `${count} ${count === 1 ? 'page' : 'pages'} of ${paper}`;

const say = (line: string): void => {
  process.stdout.write(`${line}\n`);
};

const PURPOSE: Readonly<Record<SheetSet['kind'], string>> = {
  templates: 'templates, to cut out and glue on',
  drilling: 'templates to drill the fronts by, for pulls and locks',
  guides: 'guides to make of sheet material, for the guide bush to run in',
  'cutting-list': 'the cutting list, to saw by',
  bench: 'bench sheets',
  comparison: 'the comparison sheet',
  proportion: 'the fronts with and without pulls, and their proportions',
  corners: 'every corner as pictures, closed and open',
};

const purposeOf = (kind: SheetSet['kind'], project: Project): string => {
  if (kind !== 'guides' || project.cutting?.fingers === undefined) return PURPOSE[kind];
  const rods = 'setting rods of the fingers, spacers and the order of settings';
  return guidesOf(project).length > 0 ? `${PURPOSE.guides}; ${rods}` : rods;
};

/** More pieces than this are not laid out again on other papers. */
const MOST_TO_COMPARE = 1000;

/** Longest list of pages by their copies, in letters; each template says its quantity too. */
const LONGEST_LIST = 400;

/** The number of sheets, the larger papers that need fewer, and how often to print each page. */
const sheetsLines = (
  { count, pagesOf: pieces, countOn, paper, copies }: SheetSet,
  drawn: Copies,
): string[] => {
  const larger = pieces.size > MOST_TO_COMPARE ? [] : largerThan(paper);
  const better = larger.flatMap((other) => {
    const fewer = countOn(other);
    return fewer !== undefined && fewer < count ? [`${other.name} would take ${fewer}`] : [];
  });
  const listed = drawn === 'made' ? '' : copiesNeeded(copies);
  const needed = listed.length > LONGEST_LIST ? 'each page as often as the largest quantity on it' : listed;
  return [
    [`${count} ${count === 1 ? 'sheet' : 'sheets'} of ${paper.name}`, ...better].join('; '),
    ...(needed === ''
      ? []
      : terminalLines(`For a template of every part, print ${needed}; or draw with --copies made`)),
  ];
};

/** The next two larger papers of the same family. */
const largerThan = ({ name, width, height }: Paper): Paper[] => {
  const family = ANSI_PAPERS.some((paper) => paper.name === name) ? ANSI_PAPERS : ISO_PAPERS;
  return family
    .filter((paper) => paper.width * paper.height > width * height)
    .toSorted((a, b) => a.width * a.height - b.width * b.height)
    .slice(0, 2);
};

const drawSvgs = async (
  project: Project,
  choice: PieceChoice,
  sheets: readonly SheetKind[],
): Promise<DrawnFile[]> => {
  const [{ pictureFiles, svgFiles }, { svgWindow }] = await Promise.all([
    import('../../project/svgFiles.ts'),
    import('../../render/svgWindow.ts'),
  ]);
  const pieces = [...piecesOf(project, choice), ...drillingOf(project), ...guidePieces(project)];
  const tools = { fonts: loadFonts(), window: svgWindow() };
  return [
    ...svgFiles(pieces, tools, project.name),
    ...(sheets.includes('corners') ? pictureFiles(picturedCorners(project), tools, project.name) : []),
  ];
};

const drawDxfs = async (project: Project): Promise<DrawnFile[]> => {
  const { dxfFiles } = await import('../../project/dxfFiles.ts');
  return dxfFiles(project);
};

const closing = ({ set, joints, units }: Project, guided: boolean): string[] => [
  ...adviceText([...set.advice, ...joints.flatMap(({ joint }) => joint.advice)], units),
  ...terminalLines(
    'Print at 100 %, lay a steel rule on both check bars of a sheet, and only then cut. Keep both hands behind the cutting edge. Wear eye and ear protection and a dust mask.',
  ),
  ...(guided ? BEFORE_ROUTING.flatMap((caution) => terminalLines(speak(caution, units))) : []),
];
