import { html, nothing, render, type TemplateResult } from 'lit-html';
import { drawersAndBoxes } from '../../drawer/drawer.ts';
import { handPaper } from '../../paper/paperSizes.ts';
import { readPrinterName } from '../../paper/printerName.ts';
import { sentence } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import { find } from '../browser/dom.ts';
import { saveFile } from '../browser/files.ts';
import { storePrinter } from '../browser/storage.ts';
import { faultIn } from '../model/session.ts';
import type { AppContext } from '../model/viewState.ts';
import { printedSheets } from '../sheets/printedSheets.ts';
import { readPrinting } from '../sheets/readPrinting.ts';
import { readySheets } from '../sheets/readySheets.ts';
import type { JobEnd, SheetJob, SheetTask } from '../sheets/sheetJob.ts';
import { type RunningJob, startJob } from '../sheets/startJob.ts';
import { choiceFields } from './choiceFields.ts';
import { fileRows } from './fileRows.ts';
import { type Chosen, keptChoice } from './keptChoice.ts';
import { measuredError } from './measuredError.ts';
import { progress, sheetPreview } from './sheetPreview.ts';

const NO_STATUS = { text: '', isStop: false };

/** The dialog that prints sheets, or saves sheets, pieces and lists as files. */
export const sheetsDialog = ({ now, draft, unit }: AppContext) => {
  const dialog = find('take-dialog', HTMLDialogElement);
  let purpose: 'print' | 'save' = 'print';
  let status = NO_STATUS;
  let making: { readonly what: string; readonly job: RunningJob; number: number; of: number } | undefined;
  let printsWhenReady = false;

  const say = (text: string, isStop = false): void => {
    status = { text, isStop };
    show();
  };

  const jobOf = (task: SheetTask): SheetJob => ({ plan: now().text, choice: choice(), task });

  const { chosen, choice, choose: keep, follow, kinds } = keptChoice(unit, () => templates.renew());
  const templates = readySheets(
    () => jobOf({ make: 'print' }),
    () => {
      const { is } = templates.state();
      const isOver = printsWhenReady && is !== 'making';
      if (isOver) [printsWhenReady, status] = [false, NO_STATUS];
      show();
      if (isOver && is === 'ready') void print();
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
    if (printsWhenReady) say('The sheets are still being made. They are printed as soon as they are ready.');
  };

  const choose = (part: Partial<Chosen>): void => {
    keep(part);
    status = NO_STATUS;
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

  const keepMeasures = (): void => {
    const on = readPrinting(choice(), unitOf(unit()));
    const read = on.ok ? measuredError(on.value, unitOf(unit())) : on;
    const name = readPrinterName(find('printer-name', HTMLInputElement).value.trim() || 'my printer');
    if (!read.ok || !name.ok) {
      const wrong = [read, name].flatMap((each) => (each.ok ? [] : each.complaints));
      say(wrong.map((complaint) => sentence(complaint, unit())).join('. '), true);
      return;
    }
    const printer = name.value;
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
    const { benchPaper = '' } = chosen();
    const on = readPrinting(choice(), unitOf(unit()));
    const names = [
      ...drawersAndBoxes(project.set).map(({ spec }) => spec.name),
      ...project.joints.map(({ name }) => name),
    ];
    render(
      html`<div class="dialog-head">
        <h2 id="take-title">${purpose === 'print' ? 'Print' : 'Save sheets'}</h2>
        <button type="button" id="take-close" class="close" aria-label="Close" @click=${() => dialog.close()}>×</button>
      </div>
      ${typed === undefined ? nothing : html`<p class="stop">${faultIn(typed)}; these sheets are of the plan before it.</p>`}
      <div class="sheets">
        <div>
          ${choiceFields(choice(), chosen().printer, names, { choose, proof: take('Proof sheets', { make: 'proof' }), keepMeasures })}
          ${
            purpose === 'print'
              ? printRow(sheets.counts?.templates)
              : fileRows({
                  counts: sheets.counts ?? {},
                  kinds: kinds(project),
                  hasParts: drawersAndBoxes(project.set).length > 0,
                  benchPaper,
                  usualPaper: on.ok ? handPaper(on.value.paper, unitOf(unit())).name : '',
                  choosePaper: (typed) => choose({ benchPaper: typed }),
                  take,
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
    if (!dialog.open) status = NO_STATUS;
    draw();
    // By itself, to be brief: the browser styles the whole page anew.
    if (!dialog.open) setTimeout(() => dialog.showModal());
  };

  dialog.addEventListener('close', () => {
    making?.job.stop();
    printsWhenReady = false;
  });
  let plan: string | undefined;
  return {
    print: () => open('print'),
    save: () => open('save'),
    /** Prints as soon as the sheets are ready. */
    printNow: (): void => {
      // What is printed is another plan than the text shows: that is said first.
      if (draft() === undefined || dialog.open) printNow();
      else open('print');
    },
    hold: templates.hold,
    /** What the plan is now may be another than before. */
    update: (): void => {
      if (plan === now().text) return;
      plan = now().text;
      follow(now().project);
      templates.renew();
      if (dialog.open) templates.ask();
    },
  };
};
