import { html, render } from 'lit-html';
import { type Complaint, under } from '../complaint.ts';
import { parts } from '../drawer/parts.ts';
import { partsCsv } from '../drawer/partsCsv.ts';
import { DEFAULT_MARGIN } from '../paper/printable.ts';
import { ANSI_PAPERS, ISO_PAPERS, parsePaper } from '../paper/sizes.ts';
import { sentence } from '../sentence.ts';
import type { Board } from '../template/band.ts';
import type { PieceChoice } from '../template/corner.ts';
import type { SetLayout } from '../template/setLayouts.ts';
import { formatNumber } from '../units/formatLength.ts';
import { parseLength } from '../units/parseLength.ts';
import { find, setText } from './dom.ts';
import { saveFile } from './files.ts';
import { loadPress } from './loadPress.ts';
import { measuredError, type Printing } from './measuredError.ts';
import type { PressSheets, PressWish, PressWork } from './press.ts';
import { printPages } from './printPages.ts';
import { keepPrinter, keptPrinters } from './storage.ts';
import type { AppContext } from './viewState.ts';

/** All that can be taken away: sheets, pieces, lists. */
export const exportDialog = ({ now, unit }: AppContext): (() => void) => {
  const dialog = find('take-dialog', HTMLDialogElement);
  const paper = find('paper', HTMLInputElement);
  const margin = find('margin', HTMLInputElement);
  const flat = find('flat', HTMLInputElement);
  const rods = find('rods', HTMLInputElement);
  const boards = find('boards', HTMLSelectElement);
  const printer = find('printer', HTMLSelectElement);
  const status = find('take-status', HTMLElement);
  render(
    [...ISO_PAPERS, ...ANSI_PAPERS].map(({ name }) => html`<option value=${name}></option>`),
    find('papers', HTMLDataListElement),
  );

  const say = (text: string, isStop = false): void => {
    setText(status, text);
    status.classList.toggle('stop', isStop);
  };
  const refuse = (complaints: readonly Complaint[]): void =>
    say(complaints.map((complaint) => sentence(complaint, unit())).join('. '), true);

  const choice = (): PieceChoice => ({
    flat: flat.checked,
    rods: rods.checked,
    boards: boards.value === 'both' ? ['tail', 'pin'] : [boards.value as Board],
  });

  const hasGuides = (): boolean => [...now().cuts.values()].some(({ guides }) => guides.length > 0);

  /** What was typed about the paper; what is wrong with it is said. */
  const printing = (): Printing | undefined => {
    const sheet = parsePaper(paper.value);
    const edge = parseLength(margin.value, unit());
    if (sheet.ok && edge.ok) return { paper: sheet.value, margin: edge.value };
    refuse([
      ...(sheet.ok ? [] : under(['paper'], sheet.complaints)),
      ...(edge.ok ? [] : under(['margin'], edge.complaints)),
    ]);
    return undefined;
  };

  const work = (): PressWork => {
    const { laid, cuts } = now();
    const { drawers, family } = laid.set;
    return { drawers, joints: laid.joints, units: unit(), cuts, ...(family && { family }) };
  };

  const wishOf = (on: Printing): PressWish => {
    const error = keptPrinters()[printer.value];
    return {
      title: now().laid.plan.name,
      ...on,
      choice: choice(),
      ...(error && { correction: { printer: printer.value, error } }),
    };
  };

  /** Runs one of the tasks, saying that it runs and what came of it. */
  const run = (task: () => Promise<string | undefined>) => async (): Promise<void> => {
    say('Making it …');
    dialog.setAttribute('aria-busy', 'true');
    try {
      // Lets the words be painted first.
      await new Promise((resolve) => setTimeout(resolve, 20));
      const done = await task();
      if (done !== undefined) say(done);
    } catch (error) {
      say(`This did not work: ${error instanceof Error ? error.message : 'the browser stopped it'}.`, true);
    } finally {
      dialog.removeAttribute('aria-busy');
    }
  };

  const laid = async (name: SetLayout['name']): Promise<PressSheets | undefined> => {
    const on = printing();
    if (on === undefined) return undefined;
    const { press } = await loadPress();
    const all = press.layAll(work(), wishOf(on));
    const found = all.ok ? all.value.find((each) => each.name === name) : undefined;
    if (!all.ok) refuse(all.complaints);
    else if (found === undefined) say('There are no drawers in this plan, so there is no such sheet.', true);
    return found;
  };

  const takePdf = (name: SetLayout['name']) =>
    run(async () => {
      const made = await laid(name);
      if (made === undefined) return undefined;
      const { press, fonts } = await loadPress();
      const bytes = await press.pdf(made.title, made.sheets.pages(), fonts);
      saveFile(now().laid.plan.name, `-${name}.pdf`, 'application/pdf', bytes);
      return `${pagesOf(made.sheets.count)} of ${paper.value}. Print at 100 %, and lay a rule on both check bars before you cut.`;
    });

  const print = run(async () => {
    const made = await laid('templates');
    const on = printing();
    if (made === undefined || on === undefined) return undefined;
    const { press, fonts } = await loadPress();
    printPages([...made.sheets.pages()].map((page) => ({ ...page, svg: press.pageSvg(page, fonts) })));
    return `${pagesOf(made.sheets.count)} sent to your browser's print window: there, choose 100 % and no margins.`;
  });

  const takePieces = run(async () => {
    const { press, fonts } = await loadPress();
    const zip = press.pieceZip(work(), choice(), fonts);
    saveFile(now().laid.plan.name, '-pieces.zip', 'application/zip', [zip]);
    return hasGuides()
      ? 'Every piece and guide as an SVG file, the guides as DXF too, in one zip.'
      : 'Every piece as an SVG file, in one zip.';
  });

  const takeParts = run(async () => {
    const { set } = now().laid;
    if (set.drawers.length === 0) return 'There are no drawers in this plan, so there are no parts to list.';
    saveFile(now().laid.plan.name, '-parts.csv', 'text/csv', [partsCsv(parts(set, unit()), unit())]);
    return 'The parts, for a spreadsheet.';
  });

  const takeProof = run(async () => {
    const on = printing();
    if (on === undefined) return undefined;
    const { press, fonts } = await loadPress();
    const made = await press.proof(on.paper, on.margin, unit(), fonts);
    if (made.ok) {
      saveFile(`proof-${on.paper.name}`, '.pdf', 'application/pdf', made.value);
      return 'Print it at 100 %, measure it with a steel rule, and type in below what you read.';
    }
    refuse(made.complaints);
    return undefined;
  });

  const keepMeasures = run(async () => {
    const on = printing();
    if (on === undefined) return undefined;
    const name = find('printer-name', HTMLInputElement).value.trim() || 'my printer';
    const error = measuredError(on, unit());
    if (!error.ok) {
      refuse(error.complaints);
      return undefined;
    }
    const isKept = keepPrinter({ printer: name, error: error.value });
    showPrinters(name);
    return isKept
      ? `Sheets are now corrected for ${name}.`
      : 'This browser keeps nothing, so the correction could not be kept.';
  });

  const showPrinters = (chosen: string): void => {
    const options = Object.keys(keptPrinters()).map((name) => html`<option value=${name}>${name}</option>`);
    render(html`<option value="">none</option>${options}`, printer);
    printer.value = chosen;
  };

  const tasks: Readonly<Record<string, () => unknown>> = {
    'take-templates': takePdf('templates'),
    'take-guides': takePdf('guides'),
    'take-bench': takePdf('bench'),
    'take-comparison': takePdf('comparison'),
    'take-print': print,
    'take-pieces': takePieces,
    'take-parts': takeParts,
    'take-proof': takeProof,
    'keep-printer': keepMeasures,
    'take-close': () => dialog.close(),
  };
  for (const [id, task] of Object.entries(tasks))
    find(id, HTMLButtonElement).addEventListener('click', () => void task());

  return () => {
    if (paper.value === '') {
      paper.value = unit() === 'in' ? 'Letter' : 'A4';
      margin.value = formatNumber(DEFAULT_MARGIN, unit());
    }
    if (unit() === 'in' && margin.value.includes('+')) margin.value = `${DEFAULT_MARGIN}mm`;
    showPrinters(printer.value);
    find('take-guides', HTMLButtonElement).hidden = !hasGuides();
    say('');
    dialog.showModal();
  };
};

const pagesOf = (count: number): string => `${count} ${count === 1 ? 'page' : 'pages'}`;
