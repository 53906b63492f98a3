import { html, type TemplateResult } from 'lit-html';
import { blankLetters, blankName, plankName, reasonWords } from '../../drawer/blanks/blankWords.ts';
import type { BrokenOut } from '../../drawer/blanks/brokenOut.ts';

/**
 * Each part with its letter, its board, and why it lies there.
 * @param chosen the name of the board whose parts are stressed
 * @param choose chooses a part, to be moved
 */
export const partsTable = (
  laid: BrokenOut,
  isNew: boolean,
  chosen: string | undefined,
  choose: (wanted: number) => void,
): TemplateResult => {
  const { planks, blanks, breakout } = laid;
  const rows = breakout.boards
    .flatMap(({ plank, blanks: placed }) =>
      placed.flatMap(({ wanted, why }) => {
        const [part, board] = [blanks[wanted], planks[plank]];
        return part === undefined || board === undefined ? [] : [{ wanted, part, board, why }];
      }),
    )
    .toSorted((a, b) => a.wanted - b.wanted);
  return html`<h3 id="parts-title">Parts and their boards</h3>
    <table class="broken-out ${isNew ? '' : 'old'}" aria-labelledby="parts-title" aria-busy=${!isNew}>
      <thead><tr><th scope="col"><span class="hidden">letter</span></th><th scope="col">part</th><th scope="col">board</th><th scope="col">why there</th></tr></thead>
      <tbody>${rows.map(
        ({ wanted, part, board, why }) => html`<tr class=${board.name === chosen ? 'from-chosen' : ''}>
          <td>${blankLetters(wanted)}</td>
          <th scope="row"><button type="button" class="part-name" @click=${() => choose(wanted)}>${blankName(part)}</button></th>
          <td class="board-name">${plankName(board, planks)}</td>
          <td>${reasonWords(why, blanks)}</td>
        </tr>`,
      )}</tbody>
    </table>`;
};
