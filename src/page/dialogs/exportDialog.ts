import { html, render } from 'lit-html';
import { parts } from '../../drawer/partsList.ts';
import { ANSI_PAPERS, ISO_PAPERS, parsePaper } from '../../paper/paperSizes.ts';
import { DEFAULT_MARGIN } from '../../paper/printable.ts';
import { partsCsv } from '../../project/partsCsv.ts';
import { hasGuides } from '../../project/project.ts';
import type { SheetOptions, SheetSet } from '../../project/sheetsOf.ts';
import type { PieceChoice } from '../../sheets/template/cornerPieces.ts';
import { type Complaint, sentence, under } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import { parseLength } from '../../units/parseLength.ts';
import { find } from '../browser/dom.ts';
import { saveFile } from '../browser/files.ts';
import { storedPrinters, storePrinter } from '../browser/storage.ts';
import type { AppContext } from '../model/viewState.ts';
import { loadExporter } from './loadExporter.ts';
import { measuredError, type Printing } from './measuredError.ts';
import { printPages } from './printPages.ts';

const PAPERS = [...ISO_PAPERS, ...ANSI_PAPERS];

/** The dialog that prints and saves sheets, pieces and lists. */
export const exportDialog = ({ now, unit }: AppContext): (() => void) => {
  const dialog = find('take-dialog', HTMLDialogElement);
  const input = (id: string): HTMLInputElement => find(id, HTMLInputElement);
  const select = (id: string): HTMLSelectElement => find(id, HTMLSelectElement);
  let status = { text: '', isStop: false };

  const say = (text: string, isStop = false): void => {
    status = { text, isStop };
    show();
  };
  const refuse = (complaints: readonly Complaint[]): void =>
    say(complaints.map((complaint) => sentence(complaint, unit())).join('. '), true);

  const choice = (): PieceChoice => {
    const boards = select('boards').value;
    return {
      flat: input('flat').checked,
      rods: input('rods').checked,
      boards: boards === 'tail' || boards === 'pin' ? [boards] : ['tail', 'pin'],
    };
  };

  /** The paper and margin that were typed; undefined where they are wrong, which is shown. */
  const printing = (): Printing | undefined => {
    const sheet = parsePaper(input('paper').value);
    const edge = parseLength(input('margin').value, unitOf(unit()));
    if (sheet.ok && edge.ok) return { paper: sheet.value, margin: edge.value };
    refuse([
      ...(sheet.ok ? [] : under(['paper'], sheet.complaints)),
      ...(edge.ok ? [] : under(['margin'], edge.complaints)),
    ]);
    return undefined;
  };

  const optionsOf = (on: Printing): SheetOptions => {
    const printer = select('printer').value;
    const error = storedPrinters()[printer];
    return { ...on, choice: choice(), ...(error && { correction: { printer, error } }) };
  };

  /** Runs a task, and shows that it runs and its result. */
  const run = (task: () => Promise<string | undefined>) => async (): Promise<void> => {
    say('Making it …');
    dialog.setAttribute('aria-busy', 'true');
    try {
      // The browser paints the status first.
      await new Promise((resolve) => setTimeout(resolve, 20));
      const done = await task();
      if (done !== undefined) say(done);
    } catch (error) {
      say(`This did not work: ${error instanceof Error ? error.message : 'the browser stopped it'}.`, true);
    } finally {
      dialog.removeAttribute('aria-busy');
    }
  };

  const laid = async (kind: SheetSet['kind']): Promise<SheetSet | undefined> => {
    const on = printing();
    if (on === undefined) return undefined;
    const { exporter } = await loadExporter();
    const all = exporter.sheetsOf(now().project, optionsOf(on));
    const found = all.ok ? all.value.find((each) => each.kind === kind) : undefined;
    if (!all.ok) refuse(all.complaints);
    else if (found === undefined) say('There are no drawers in this plan, so there is no such sheet.', true);
    return found;
  };

  const takePdf = (kind: SheetSet['kind']) =>
    run(async () => {
      const made = await laid(kind);
      if (made === undefined) return undefined;
      const { exporter, fonts } = await loadExporter();
      const bytes = await exporter.pdf(made.title, made.pages(), fonts);
      saveFile(now().project.name, `-${kind}.pdf`, 'application/pdf', bytes);
      return `${pagesOf(made.count)} of ${made.paper.name}. Print at 100 %, and lay a rule on both check bars before you cut.`;
    });

  const print = run(async () => {
    const made = await laid('templates');
    const on = printing();
    if (made === undefined || on === undefined) return undefined;
    const { exporter, fonts } = await loadExporter();
    printPages([...made.pages()].map((page) => ({ ...page, svg: exporter.pageSvg(page, fonts) })));
    return `${pagesOf(made.count)} sent to your browser's print window: there, choose 100 % and no margins.`;
  });

  const takePieces = run(async () => {
    const { exporter, fonts } = await loadExporter();
    const zip = exporter.pieceZip(now().project, choice(), fonts);
    saveFile(now().project.name, '-pieces.zip', 'application/zip', [zip]);
    return hasGuides(now().project)
      ? 'Every template and guide as an SVG file, the guides as DXF too, in one zip.'
      : 'Every template as an SVG file, in one zip.';
  });

  const takeParts = run(async () => {
    const { set } = now().project;
    if (set.drawers.length === 0) return 'There are no drawers in this plan, so there are no parts to list.';
    saveFile(now().project.name, '-parts.csv', 'text/csv', [partsCsv(parts(set, unit()), unit())]);
    return 'The parts, for a spreadsheet.';
  });

  const takeProof = run(async () => {
    const on = printing();
    if (on === undefined) return undefined;
    const { exporter, fonts } = await loadExporter();
    const made = await exporter.proof(on.paper, on.margin, unitOf(unit()), fonts);
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
    const name = input('printer-name').value.trim() || 'my printer';
    const read = measuredError(on, unitOf(unit()));
    if (!read.ok) {
      refuse(read.complaints);
      return undefined;
    }
    const { error, accuracy } = read.value;
    const isKept = storePrinter({ printer: name, error });
    show();
    select('printer').value = name;
    return isKept
      ? `Sheets are now corrected for ${name}. ${accuracy}`
      : 'This browser stores nothing, so the correction could not be kept.';
  });

  const show = (): void => {
    render(
      html`<div class="dialog-head">
        <h2 id="take-title">Print and save</h2>
        <button type="button" id="take-close" class="close" aria-label="Close" @click=${() => dialog.close()}>×</button>
      </div>
      <div class="fields">
        <label>Paper <input id="paper" list="papers" autocomplete="off" spellcheck="false"></label>
        <datalist id="papers">${PAPERS.map(({ name }) => html`<option value=${name}></option>`)}</datalist>
        <label>Margin <input id="margin" autocomplete="off" spellcheck="false"></label>
        <label>Boards
          <select id="boards">
            <option value="both">both</option>
            <option value="tail">tail boards</option>
            <option value="pin">pin boards</option>
          </select>
        </label>
        <label>Corrected for
          <select id="printer">
            <option value="">none</option>
            ${Object.keys(storedPrinters()).map((name) => html`<option value=${name}>${name}</option>`)}
          </select>
        </label>
      </div>
      <label class="check"><input type="checkbox" id="flat"> Flat templates: one face each, for boards of uneven thickness</label>
      <label class="check"><input type="checkbox" id="rods"> Rods too: printed strips with every mark of a board</label>
      <div class="row">
        <button type="button" id="take-templates" class="chief" @click=${takePdf('templates')}>Templates, PDF</button>
        <button type="button" id="take-print" @click=${print}>Templates, print from here</button>
        <button type="button" id="take-guides" ?hidden=${!hasGuides(now().project)} @click=${takePdf('guides')}>Guides, PDF</button>
        <button type="button" id="take-bench" @click=${takePdf('bench')}>Bench sheets, PDF</button>
        <button type="button" id="take-comparison" @click=${takePdf('comparison')}>Comparison sheet, PDF</button>
        <button type="button" id="take-pieces" @click=${takePieces}>Templates, SVG</button>
        <button type="button" id="take-parts" @click=${takeParts}>Parts, CSV</button>
      </div>
      <p id="take-status" role="status" class=${status.isStop ? 'stop' : ''}>${status.text}</p>
      <details>
        <summary>Correct a printer error</summary>
        <p>Print the proof sheet at 100 %, measure it with a steel rule, and type in what you read. The diagonals are needed only if the printer skews.</p>
        <button type="button" id="take-proof" @click=${takeProof}>Proof sheet, PDF</button>
        <div class="fields">
          <label>x, across <input id="measured-x" autocomplete="off"></label>
          <label>y, up <input id="measured-y" autocomplete="off"></label>
          <label>Diagonal d1 <input id="measured-d1" autocomplete="off"></label>
          <label>Diagonal d2 <input id="measured-d2" autocomplete="off"></label>
          <label>Printer’s name <input id="printer-name" autocomplete="off" maxlength="40"></label>
        </div>
        <button type="button" id="keep-printer" @click=${keepMeasures}>Keep the correction</button>
      </details>`,
      dialog,
    );
  };

  return () => {
    say('');
    const [paper, margin] = [input('paper'), input('margin')];
    if (paper.value === '') {
      paper.value = unitOf(unit()) === 'in' ? 'Letter' : 'A4';
      // The margin is round in mm alone, and a proof must be measured with the one it was drawn with.
      margin.value = `${DEFAULT_MARGIN}${unit() === 'mm' ? '' : 'mm'}`;
    }
    dialog.showModal();
  };
};

const pagesOf = (count: number): string => `${count} ${count === 1 ? 'page' : 'pages'}`;
