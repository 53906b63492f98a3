import { html, nothing, type TemplateResult } from 'lit-html';
import type { Box } from '../../drawing/drawing.ts';
import { defectLetter } from '../../sheets/boards/boardView.ts';
import type { DefectKind, Plank, StockName } from '../../stock/plank.ts';
import { extentsOf } from '../../stock/polygon.ts';
import type { Complaint, Result } from '../../units/complaint.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitOf, unitWords } from '../../units/notation.ts';
import { parseLength } from '../../units/parseLength.ts';
import { entry } from '../controls/entry.ts';
import {
  removeBoard,
  renameBoard,
  setBoardCount,
  setBoardSizes,
  setStocks,
  setThickness,
} from '../model/boards/boardEdits.ts';
import { boardSizes, endOfDefect, hasTwoWidths } from '../model/boards/boardShape.ts';
import { removeDefect, setDefectBox, setDefectKind } from '../model/boards/defectEdits.ts';
import type { Snapshot } from '../model/snapshot.ts';

/** What the fields of a board need of the page. */
export interface FieldActions {
  /** @param what the edit in words */
  readonly edit: (what: string, edit: (now: Snapshot) => Result<Snapshot>) => boolean;
  /** For typed text that cannot be read. */
  readonly complain: (complaints: readonly Complaint[]) => void;
  readonly chooseDefect: (defect: number | undefined) => void;
  /** Adds a defect in the middle of the board. */
  readonly addDefect: () => void;
  /** The kind of the defect that is drawn or added next. */
  readonly setKind: (kind: DefectKind) => void;
  /** Begins or ends to draw defects on the board. */
  readonly toggleDrawing: () => void;
}

/** What the fields show beside the board. */
export interface FieldState {
  readonly board: number;
  readonly plank: Plank;
  readonly count: number;
  readonly defect: number | undefined;
  readonly kind: DefectKind;
  readonly isDrawing: boolean;
  readonly units: Notation;
}

export const STOCKS: readonly StockName[] = ['front', 'side', 'back', 'bottom'];

const KINDS: readonly DefectKind[] = [
  'sound knot',
  'loose knot',
  'check',
  'shake',
  'wane',
  'sapwood',
  'pith',
  'wormhole',
  'stain',
];

/** The sizes of a board and its defects, to be typed. */
export const boardFields = (state: FieldState, actions: FieldActions): TemplateResult => {
  const { board, plank, count, units } = state;
  const { edit } = actions;
  const sizes = boardSizes(plank.outline);
  const length = lengthField(plank.name, units, actions);
  const setSizes = (what: string, more: Partial<typeof sizes>) =>
    edit(what, (now) => setBoardSizes(now, board, { ...sizes, ...more }));
  const both = (width: number) =>
    setSizes('width of a board', { left: width, right: width + sizes.right - sizes.left });
  const stock = (name: StockName): TemplateResult => {
    const isChosen = plank.stocks.includes(name);
    return html`<label><input type="checkbox" .checked=${isChosen} @change=${({ target }: Event) => {
      const next = STOCKS.filter((each) => (each === name ? !isChosen : plank.stocks.includes(each)));
      const isDone = edit('stock of a board', (now) => setStocks(now, board, next));
      if (!isDone && target instanceof HTMLInputElement) target.checked = isChosen;
    }}>${name}s</label>`;
  };
  return html`<div class="board-fields">
    <p class="quiet">In ${unitWords(units)}. Drag the right end and the upper edge, or type.</p>
    <div class="measures">
      <label>name${entry(`${plank.name}, name`, plank.name, (text) => edit('name of a board', (now) => renameBoard(now, board, text)))}</label>
      ${length('length', sizes.length, (value) => setSizes('length of a board', { length: value }))}
      ${
        hasTwoWidths(plank.outline)
          ? html`${length('width at left', sizes.left, (value) => setSizes('width of a board', { left: value, ...(sizes.left === sizes.right && { right: value }) }))}
            ${length('width at right', sizes.right, (value) => setSizes('width of a board', { right: value }))}`
          : length('width', sizes.left, both)
      }
      ${length('thickness', plank.thickness, (value) => edit('thickness of a board', (now) => setThickness(now, board, value)))}
      <label>quantity${entry(`${plank.name}, quantity`, String(count), (text) => edit('quantity of a board', (now) => setBoardCount(now, board, Number(text))))}</label>
    </div>
    <fieldset><legend>For</legend>${STOCKS.map(stock)}</fieldset>
    ${defects(state, actions)}
    <div class="row"><button type="button" @click=${() => edit('removal of a board', (now) => removeBoard(now, board))}>Remove ${plank.name}</button></div>
  </div>`;
};

/** Makes a field for a length. */
const lengthField =
  (of: string, units: Notation, { complain }: FieldActions) =>
  (label: string, value: number, take: (value: number) => void): TemplateResult =>
    html`<label>${label}${entry(`${of}, ${label}`, formatNumber(value, units), (text) => {
      const read = parseLength(text, unitOf(units));
      if (read.ok) take(read.value);
      else complain(read.complaints);
    })}</label>`;

const kindChoice = (label: string, chosen: DefectKind, take: (kind: DefectKind) => void): TemplateResult =>
  html`<select class="kind-choice" aria-label=${label} @change=${({ target }: Event) => {
    if (target instanceof HTMLSelectElement) take(target.value as DefectKind);
  }}>${KINDS.map((kind) => html`<option value=${kind} ?selected=${kind === chosen} .selected=${kind === chosen}>${kind}</option>`)}</select>`;

const defects = (state: FieldState, actions: FieldActions): TemplateResult => {
  const { plank, defect: chosen, kind, isDrawing } = state;
  return html`<h4>Defects</h4>
    <ul class="defects" ?hidden=${plank.defects.length === 0}>${plank.defects.map(
      (defect, i) => html`<li class="marked">
        <button type="button" class="defect" aria-pressed=${chosen === i} @click=${() => actions.chooseDefect(chosen === i ? undefined : i)}>${defectLetter(i)} ${defect.kind}</button>
        ${chosen === i ? defectFields(state, i, actions) : nothing}
      </li>`,
    )}</ul>
    <div class="row">
      ${kindChoice('Kind of the next defect', kind, actions.setKind)}
      <button type="button" aria-pressed=${isDrawing} @click=${actions.toggleDrawing}>Draw it</button>
      <button type="button" @click=${actions.addDefect}>Add it by numbers</button>
    </div>
    <p class="quiet" ?hidden=${!isDrawing}>Press on the board and drag across the defect. Escape ends drawing.</p>`;
};

/** Where a defect lies: how far it reaches from an end that it takes whole, else its middle and its extent. */
const defectFields = (
  { board, plank, units }: FieldState,
  i: number,
  actions: FieldActions,
): TemplateResult => {
  const { edit, chooseDefect } = actions;
  const defect = plank.defects[i];
  if (defect === undefined) return html``;
  const length = lengthField(`${defectLetter(i)} ${defect.kind}`, units, actions);
  const own = extentsOf(defect.outline);
  const on = extentsOf(plank.outline);
  const end = endOfDefect(defect.outline, plank.outline);
  const put = (what: string, box: Box) =>
    edit(`${what} of a defect`, (now) => setDefectBox(now, board, i, box));
  const moved = (x: number, y: number): Box => ({
    x0: own.x0 + x,
    x1: own.x1 + x,
    y0: own.y0 + y,
    y1: own.y1 + y,
  });
  const stretched = (along: number, across: number): Box => ({
    x0: own.x0 - along / 2,
    x1: own.x1 + along / 2,
    y0: own.y0 - across / 2,
    y1: own.y1 + across / 2,
  });
  const [x, y] = [(own.x0 + own.x1) / 2 - on.x0, (own.y0 + own.y1) / 2 - on.y0];
  const [long, wide] = [own.x1 - own.x0, own.y1 - own.y0];
  return html`<div class="measures">
      <label>kind${kindChoice(`Kind of ${defectLetter(i)}`, defect.kind, (kind) => edit('kind of a defect', (now) => setDefectKind(now, board, i, kind)))}</label>
      ${
        end === undefined
          ? html`${length('from left end', x, (value) => put('place', moved(value - x, 0)))}
            ${length('from lower edge', y, (value) => put('place', moved(0, value - y)))}
            ${length('length', long, (value) => put('size', stretched(value - long, 0)))}
            ${length('width', wide, (value) => put('size', stretched(0, value - wide)))}`
          : length(`length from ${end} end`, long, (value) =>
              put('size', end === 'left' ? { ...own, x1: on.x0 + value } : { ...own, x0: on.x1 - value }),
            )
      }
    </div>
    <div class="row"><button type="button" @click=${() => {
      if (edit('removal of a defect', (now) => removeDefect(now, board, i))) chooseDefect(undefined);
    }}>Remove this ${defect.kind}</button></div>`;
};
