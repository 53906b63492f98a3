import { html, type TemplateResult } from 'lit-html';
import { MOST_SOUGHT } from '../../drawer/drawerLimits.ts';
import type { Project } from '../../project/project.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { unitOf } from '../../units/notation.ts';
import type { PriceRow } from '../model/fingers/priceTable.ts';
import type { PricesState } from '../sheets/readyPrices.ts';

/**
 * What few spacers cost, to choose by. While they are worked out anew, the older table stays and is said to be old.
 * @param limit how many different spacers the plan allows; undefined without a limit
 */
export const priceView = (
  { rows, isNew, fault }: PricesState,
  limit: number | undefined,
  { set, units }: Project,
  choose: (most: number | undefined) => void,
): TemplateResult => {
  const cells = ({ look }: PriceRow): TemplateResult =>
    look === undefined
      ? html`<td class="names" colspan="3">cannot be</td>`
      : html`<td data-name=${SPREAD}>${look.spread.toFixed(3)}</td>
        <td data-name="half pins">${[...new Set(look.halfPins.map((half) => formatNumber(half, units)))].join(' to ')}</td>
        <td class="names" data-name="changed">${changedWords(look.changed, set.drawers.length)}</td>`;
  const row = (price: PriceRow): TemplateResult => {
    const isChosen = price.limit === limit;
    return html`<tr>
      <th scope="row"><button type="button" aria-label="${choiceWords(price)} ${price.spacers === 1 ? 'spacer' : 'spacers'}" aria-pressed=${isChosen} ?disabled=${price.look === undefined}
        @click=${() => {
          if (!isChosen) choose(price.limit);
        }}>${choiceWords(price)}</button></th>
      ${cells(price)}
    </tr>`;
  };
  return html`<h3 id="prices-title">Different spacers at the front</h3>
    <p class="quiet">${news(rows, isNew, fault)}</p>
    <table class="prices ${isNew ? '' : 'old'}" aria-labelledby="prices-title" aria-busy=${!isNew} ?hidden=${rows.length === 0}>
      <thead><tr>
        <th scope="col">spacers</th>
        <th scope="col">${SPREAD}</th>
        <th scope="col">half pins, ${unitOf(units) === 'mm' ? 'mm' : 'inches'}</th>
        <th class="names" scope="col">changed</th>
      </tr></thead>
      <tbody>${rows.map(row)}</tbody>
    </table>`;
};

const SPREAD = 'widest by narrowest';

const choiceWords = ({ limit, spacers }: PriceRow): string =>
  limit === undefined ? `no limit: ${spacers}` : `${spacers}`;

const changedWords = (changed: readonly string[], all: number): string => {
  if (changed.length === 0) return 'none';
  return changed.length === all && all > 1 ? 'all' : changed.join(', ');
};

const news = (rows: readonly PriceRow[], isNew: boolean, fault: string | undefined): string => {
  if (fault !== undefined) return `The table cannot be worked out: ${fault}.`;
  if (!isNew) return rows.length === 0 ? 'Working…' : 'Working…; this table is old.';
  if (rows.length === 1)
    return `Few spacers are sought for at most ${MOST_SOUGHT} drawers whose tails are not listed.`;
  return 'Half pins move, so that few spacers serve all fronts.';
};
