import { html, type TemplateResult } from 'lit-html';
import type { Project } from '../../project/project.ts';
import type { StockName } from '../../stock/plank.ts';
import { type Complaint, under } from '../../units/complaint.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { unitOf, unitWords } from '../../units/notation.ts';
import { parseLength } from '../../units/parseLength.ts';
import type { NewBoard } from '../model/boards/boardEdits.ts';
import { suggestedBoard } from '../model/boards/suggestedBoard.ts';

/** What a board may be listed for, as it is chosen in one list. */
const CHOICES: readonly (readonly StockName[])[] = [
  ['front'],
  ['side', 'back'],
  ['side'],
  ['back'],
  ['bottom'],
];

export interface NewBoardActions {
  readonly add: (board: NewBoard) => void;
  readonly choose: (stocks: readonly StockName[]) => void;
  /** For typed text that cannot be read. */
  readonly complain: (complaints: readonly Complaint[]) => void;
}

/** To list a board; its sizes are suggested. @param button what adding it is called */
export const newBoardForm = (
  project: Project,
  stocks: readonly StockName[],
  button: string,
  { add, choose, complain }: NewBoardActions,
): TemplateResult => {
  const { units } = project;
  const suggested = suggestedBoard(project, stocks);
  const submit = (event: SubmitEvent): void => {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    const typed = (name: string): string => {
      const text = new FormData(form).get(name);
      return typeof text === 'string' ? text : '';
    };
    const read = (name: string) => parseLength(typed(name), unitOf(units));
    const [length, width, thickness] = [read('length'), read('width'), read('thickness')];
    if (length.ok && width.ok && thickness.ok) {
      const count = Number(typed('count'));
      add({ stocks, length: length.value, width: width.value, thickness: thickness.value, count });
    } else {
      const wrong = (['length', 'width', 'thickness'] as const).flatMap((name) => {
        const each = read(name);
        return each.ok ? [] : under([name], each.complaints);
      });
      complain(wrong);
    }
  };
  const field = (name: 'length' | 'width' | 'thickness'): TemplateResult =>
    html`<label>${name}<input name=${name} required autocomplete="off" .value=${formatNumber(suggested[name], units)}></label>`;
  const wordsOf = (choice: readonly StockName[]): string => choice.map((stock) => `${stock}s`).join(' and ');
  return html`<form class="new-board" aria-label="A board to add" @submit=${submit}>
    <p class="quiet">In ${unitWords(units)}, as bought.</p>
    <div class="measures">
      <label>for<select name="stock" @change=${({ target }: Event) => {
        if (target instanceof HTMLSelectElement) choose(CHOICES[target.selectedIndex] ?? stocks);
      }}>${CHOICES.map((choice) => html`<option ?selected=${wordsOf(choice) === wordsOf(stocks)}>${wordsOf(choice)}</option>`)}</select></label>
      ${field('length')}${field('width')}${field('thickness')}
      <label>quantity<input name="count" required inputmode="numeric" autocomplete="off" .value=${'1'}></label>
    </div>
    <div class="row"><button type="submit">${button}</button></div>
  </form>`;
};
