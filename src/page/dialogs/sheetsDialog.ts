import { html, nothing, render, type TemplateResult } from 'lit-html';
import { parts } from '../../drawer/partsList.ts';
import { DEFAULT_MARGIN } from '../../paper/printable.ts';
import { partsCsv } from '../../project/partsCsv.ts';
import { hasGuides } from '../../project/project.ts';
import { sentence } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import { find } from '../browser/dom.ts';
import { saveFile } from '../browser/files.ts';
import { storedPrinters, storePrinter } from '../browser/storage.ts';
import { faultIn } from '../model/session.ts';
import type { AppContext } from '../model/viewState.ts';
import { printedSheets } from '../sheets/printedSheets.ts';
import { readPrinting } from '../sheets/readPrinting.ts';
import { readySheets } from '../sheets/readySheets.ts';
import type { JobEnd, SheetChoice, SheetJob, SheetTask } from '../sheets/sheetJob.ts';
import { type RunningJob, startJob } from '../sheets/startJob.ts';
import { type Chosen, choiceFields } from './choiceFields.ts';
import { fileRows } from './fileRows.ts';
import { measuredError } from './measuredError.ts';
import { progress, sheetPreview } from './sheetPreview.ts';

/** The dialog that prints sheets, or saves sheets, pieces and lists as files; and the key that prints. */
export const sheetsDialog = ({ now, draft, unit }: AppContext) => {
  const dialog = find('take-dialog', HTMLDialogElement);
  let purpose: 'print' | 'save' = 'print';
  let chosen: Chosen = { boards: 'both', flat: false, rods: false, printer: '' };
  let status = { text: '', isStop: false };
  let making: { readonly what: string; readonly job: RunningJob; number: number; of: number } | undefined;
  let printsWhenReady = false;

  const say = (text: string, isStop = false): void => {
    status = { text, isStop };
    show();
  };

  const choice = (): SheetChoice => {
    const isMetric = unitOf(unit()) === 'mm';
    const { printer, ...rest } = chosen;
    const error = storedPrinters()[printer];
    return {
      paper: isMetric ? 'A4' : 'Letter',
      // It is round in mm alone, and a proof must be measured with the margin it was drawn with.
      margin: `${DEFAULT_MARGIN}${isMetric ? '' : 'mm'}`,
      ...rest,
      ...(error && { correction: { printer, error } }),
    };
  };
  const jobOf = (task: SheetTask): SheetJob => ({ plan: now().text, choice: choice(), task });

  const templates = readySheets(
    () => jobOf({ make: 'print' }),
    () => {
      const { is } = templates.state();
      const isNow = printsWhenReady && is === 'ready';
      if (is !== 'making') printsWhenReady = false;
      show();
      if (isNow) void print();
    },
  );
  const print = printedSheets(templates.state, () => {
    const typed = draft();
    return typed && `${faultIn(typed)}. On the page, press Print for the plan before it.`;
  });

  const printNow = (): void => {
    if (templates.state().is === 'ready') {
      void print();
      return;
    }
    open('print');
    printsWhenReady = templates.state().is === 'making';
  };

  const choose = (part: Partial<Chosen>): void => {
    chosen = { ...chosen, ...part };
    status = { text: '', isStop: false };
    templates.renew();
    templates.ask();
  };

  const take = (what: string, task: SheetTask) => async (): Promise<void> => {
    if (making !== undefined) {
      say(`${making.what} are still being made. Wait for them, or cancel them.`, true);
      return;
    }
    const job = startJob(jobOf(task), (news) => {
      if (news.is !== 'progress' || making === undefined) return;
      making = { ...making, ...news };
      show();
    });
    making = { what, job, number: 0, of: 0 };
    say(`${what} are being made.`);
    const end = await job.end;
    making = undefined;
    finish(end);
  };
  const finish = (end: JobEnd): void => {
    switch (end.is) {
      case 'made':
        if (end.file) saveFile(end.file.name, end.file.ending, end.file.blob.type, [end.file.blob]);
        say(end.says);
        break;
      case 'refused':
        say(end.says.join('. '), true);
        break;
      case 'failed':
        say(`This did not work: ${end.says}.`, true);
        break;
      case 'stopped':
        say('Cancelled. Nothing was saved.');
    }
  };

  const takeParts = (): void => {
    const { set, name } = now().project;
    saveFile(name, '-parts.csv', 'text/csv', [partsCsv(parts(set, unit()), unit())]);
    say('The parts, for a spreadsheet.');
  };

  const keepMeasures = (): void => {
    const on = readPrinting(choice(), unitOf(unit()));
    const read = on.ok ? measuredError(on.value, unitOf(unit())) : on;
    if (!read.ok) {
      say(read.complaints.map((complaint) => sentence(complaint, unit())).join('. '), true);
      return;
    }
    const printer = find('printer-name', HTMLInputElement).value.trim() || 'my printer';
    const { error, accuracy } = read.value;
    const isKept = storePrinter({ printer, error });
    choose({ printer });
    say(
      isKept
        ? `Sheets are now corrected for ${printer}. ${accuracy}`
        : 'This browser stores nothing, so the correction could not be kept.',
    );
  };

  const show = (): void => {
    if (dialog.open) draw();
  };
  const draw = (): void => {
    const { project } = now();
    const sheets = templates.state();
    const typed = draft();
    render(
      html`<div class="dialog-head">
        <h2 id="take-title">${purpose === 'print' ? 'Print' : 'Save sheets'}</h2>
        <button type="button" id="take-close" class="close" aria-label="Close" @click=${() => dialog.close()}>×</button>
      </div>
      ${typed === undefined ? nothing : html`<p class="stop">${faultIn(typed)}; these sheets are of the plan before it.</p>`}
      <div class="sheets">
        <div>
          ${choiceFields(choice(), chosen.printer, { choose, proof: take('Proof sheets', { make: 'proof' }), keepMeasures })}
          ${
            purpose === 'print'
              ? printRow(sheets.counts?.templates)
              : fileRows({
                  counts: sheets.counts ?? {},
                  hasDrawers: project.set.drawers.length > 0,
                  hasGuides: hasGuides(project),
                  take,
                  takeParts,
                })
          }
          <p id="take-status" role="status" tabindex="-1" class=${status.isStop ? 'stop' : ''}>${status.text}</p>
          ${making === undefined ? nothing : progress(making.what, making, making.job.stop)}
        </div>
        ${sheetPreview(sheets, templates)}
      </div>`,
      dialog,
    );
    // Where the button that had the focus is gone, as Cancel is, the next key must do nothing.
    if (dialog.open && !dialog.contains(document.activeElement))
      find('take-status', HTMLElement).focus({ preventScroll: true });
  };

  const printRow = (count: number | undefined): TemplateResult =>
    html`<div class="row">
      <button type="button" id="take-print" class="chief" autofocus @click=${printNow}>${
        count === undefined ? 'Print' : `Print ${count} ${count === 1 ? 'sheet' : 'sheets'}`
      }</button>
    </div>
    <p class="quiet">In your browser’s print window choose 100 % and no margins. Before you cut, lay a rule on both check bars.</p>`;

  const open = (why: 'print' | 'save'): void => {
    purpose = why;
    templates.ask();
    if (!dialog.open) status = { text: '', isStop: false };
    draw();
    // By itself, to be brief: the browser styles the whole page anew.
    if (!dialog.open) setTimeout(() => dialog.showModal());
  };

  dialog.addEventListener('close', () => {
    making?.job.stop();
    printsWhenReady = false;
  });
  addEventListener('keydown', (event) => {
    const isPrint = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey;
    if (!isPrint || event.key.toLowerCase() !== 'p') return;
    event.preventDefault();
    // What is being typed counts.
    const at = document.activeElement;
    if (at instanceof HTMLElement) {
      at.blur();
      at.focus();
    }
    // What is printed is another plan than the text shows: that is said first.
    if (draft() === undefined || dialog.open) printNow();
    else open('print');
  });

  let plan: string | undefined;
  return {
    print: () => open('print'),
    save: () => open('save'),
    /** What the plan is now may be another than before. */
    update: (): void => {
      if (plan === now().text) return;
      plan = now().text;
      templates.renew();
      if (dialog.open) templates.ask();
    },
  };
};
