import { html, nothing, type TemplateResult } from 'lit-html';
import {
  buySentence,
  letteredName,
  runSentences,
  unlistedSentences,
  usedSentence,
  woodSentences,
} from '../../drawer/blanks/breakoutWords.ts';
import type { BoardToBuy } from '../../drawer/blanks/brokenOut.ts';
import type { Notation } from '../../units/notation.ts';
import type { BoardsState } from '../sheets/readyBoards.ts';

/** What the news of a layout let the user do. */
export interface NewsActions {
  readonly stop: () => void;
  readonly resume: () => void;
  /** Lists boards that would do for what is missing. */
  readonly list: (board: BoardToBuy) => void;
}

/** How far a layout is, how good it is, and what is missing. */
export const layoutNews = (state: BoardsState, units: Notation, actions: NewsActions): TemplateResult => {
  const { laid, isNew, share, isStopped, fault } = state;
  const isFinal = isNew && share >= 1;
  return html`<div class="row progress" role="group" aria-label="Breaking out" ?hidden=${isFinal || fault !== undefined}>
      <span>${workWords(state)}</span>
      <progress aria-label="Breaking out" max="1" .value=${share} ?hidden=${isStopped}></progress>
      <button type="button" ?hidden=${isStopped} @click=${actions.stop}>Stop</button>
      <button type="button" ?hidden=${!isStopped} @click=${actions.resume}>Break out</button>
    </div>
    <p class="stop" ?hidden=${fault === undefined}>The parts cannot be broken out: ${fault}.</p>
    ${laid === undefined ? nothing : html`<div class=${isNew ? '' : 'old'}>${words(state, units, actions)}</div>`}`;
};

const workWords = ({ laid, isNew, isStopped }: BoardsState): string => {
  const left = laid === undefined ? '' : isNew ? ' This is the best so far.' : ' What is shown is old.';
  return `${isStopped ? 'Stopped.' : 'Breaking out…'}${left}`;
};

const words = ({ laid, isNew, share }: BoardsState, units: Notation, { list }: NewsActions) => {
  if (laid === undefined) return nothing;
  const missing = laid.breakout.missing.map((wanted) => letteredName(laid.blanks, wanted)).join('; ');
  const canList = isNew && share >= 1;
  return html`<ul class="totals">
      ${[usedSentence(laid), ...woodSentences(laid, units), ...unlistedSentences(laid), ...(share >= 1 ? runSentences(laid) : [])].map((each) => html`<li>${each}</li>`)}
    </ul>
    ${
      missing === ''
        ? nothing
        : html`<div class="message stop missing"><div>
          <p>No board has room for: ${missing}.</p>
          ${laid.toBuy.map(
            (board) => html`<p>${capital(buySentence(board, units))}.</p>
              <button type="button" ?disabled=${!canList} @click=${() => list(board)}>List ${board.count === 1 ? 'it' : 'them'}</button>`,
          )}
        </div></div>`
    }`;
};

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
