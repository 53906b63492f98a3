import { html, nothing, render, type TemplateResult } from 'lit-html';
import { spacerList } from '../../drawer/spacers/spacerList.ts';
import type { Fingers } from '../../router/fingers/fingers.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { finest, type Notation, unitOf, unitWords } from '../../units/notation.ts';
import { parseLength } from '../../units/parseLength.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { readNumber } from '../model/fields/fieldText.ts';
import {
  type FingerKey,
  limitSpacers,
  listedFronts,
  releaseFronts,
  removeFingers,
  setFingers,
} from '../model/fingers/fingerEdits.ts';
import type { Snapshot } from '../model/snapshot.ts';
import type { View } from '../model/viewState.ts';
import { readyPrices } from '../sheets/readyPrices.ts';
import { entry } from './entry.ts';
import { priceView } from './priceView.ts';

/** What the panel needs of the page. */
interface PanelActions {
  /** @param what the edit in words */
  readonly edit: (what: string, edit: (now: Snapshot) => Result<Snapshot>) => void;
  /** For typed text that cannot be read. */
  readonly complain: (complaints: readonly Complaint[]) => void;
}

const FIELDS: readonly { readonly key: FingerKey; readonly label: string; readonly name: string }[] = [
  { key: 'together', label: 'pair together', name: 'width of a pair of fingers pushed together' },
  { key: 'bush', label: 'guide bush', name: 'guide bush between the pairs' },
  { key: 'pairs', label: 'pairs', name: 'quantity of pairs' },
  { key: 'bar', label: 'bar', name: 'length of the bar' },
];

/** The number that a field holds; undefined where it is left empty. */
const readField = (key: FingerKey, text: string, unit: Notation): Result<number | undefined> => {
  if (text.trim() === '') return { ok: true, value: undefined };
  if (key !== 'pairs') return parseLength(text, unitOf(unit));
  const pairs = readNumber(text);
  return typeof pairs === 'string'
    ? refuse({ at: [], says: say`${quote(pairs)} is no quantity of pairs`, hint: say`10` })
    : accept(pairs);
};

/**
 * A guide with movable fingers: its numbers, the spacers of the set, and what few spacers cost. A plan with a cutter and
 * without such a guide is offered one; without a cutter the section is hidden.
 */
export const fingersPanel = (section: HTMLElement, host: HTMLElement, actions: PanelActions): View => {
  let shown: Parameters<View>[0] | undefined;
  const prices = readyPrices(() => {
    if (shown !== undefined) show(shown);
  });
  const show: View = (state) => {
    shown = state;
    const { now } = state;
    const { cutting } = now.project;
    section.hidden = cutting === undefined;
    if (cutting === undefined) return;
    const { fingers, bush } = cutting;
    render(
      fingers === undefined
        ? beginning(bush, now.project.units, actions)
        : html`${fields(fingers, now, actions)}${spacers(now)}${choice(now)}${ending(now, actions)}`,
      host,
    );
  };
  const choice = (now: Snapshot): TemplateResult | typeof nothing => {
    const { asked } = now.project.set;
    return asked === undefined
      ? nothing
      : priceView(prices(now.text), asked.spacers.spacers, now.project, (most) =>
          actions.edit('number of spacers', (from) => limitSpacers(from, most)),
        );
  };
  return show;
};

/** The numbers of the guide, to be typed. */
const fields = (fingers: Fingers, now: Snapshot, { edit, complain }: PanelActions): TemplateResult => {
  const unit = finest(now.project.units);
  const field = ({ key, label, name }: (typeof FIELDS)[number]): TemplateResult => {
    const value = fingers[key];
    const shown = value === undefined ? '' : key === 'pairs' ? String(value) : formatNumber(value, unit);
    const typed = entry(`Movable fingers, ${label}`, shown, (text) => {
      const read = readField(key, text, unit);
      if (read.ok) edit(name, (from) => setFingers(from, { [key]: read.value }));
      else complain(read.complaints);
    });
    return html`<label>${label}${typed}</label>`;
  };
  return html`<p class="quiet">In ${unitWords(unit)}. Pairs and bar are not limited where they are empty.</p>
    <div class="measures">${FIELDS.map(field)}</div>`;
};

/** The spacers of the set. */
const spacers = ({ project: { set, units } }: Snapshot): TemplateResult | typeof nothing => {
  if (set.asked === undefined) return nothing;
  const groups = spacerList(set);
  const unit = finest(units);
  return html`<h3 id="spacers-title">Spacers</h3>
    ${
      groups.length === 0
        ? html`<p>No pair of fingers needs a spacer.</p>`
        : html`<table class="spacers" aria-labelledby="spacers-title">
          <thead><tr><th scope="col">width, ${unit === 'mm' ? 'mm' : 'inches'}</th><th scope="col">quantity</th><th class="names" scope="col">corners</th></tr></thead>
          <tbody>${groups.map(
            ({ width, count, corner, drawers }) =>
              html`<tr><th scope="row">${formatNumber(width, unit)}</th><td data-name="quantity">${count}</td><td class="names">${corner} of ${drawers.join(', ')}</td></tr>`,
          )}</tbody>
        </table>`
    }`;
};

/** For a plan that is cut along no such guide yet. */
const beginning = (
  bush: number | undefined,
  unit: Notation,
  { edit, complain }: PanelActions,
): TemplateResult => {
  const begin = (event: SubmitEvent): void => {
    event.preventDefault();
    const typed = new FormData(event.target as HTMLFormElement);
    const [together, bush] = (['together', 'bush'] as const).map((key) => {
      const text = typed.get(key);
      return readField(key, typeof text === 'string' ? text : '', unit);
    });
    if (together?.ok && bush?.ok)
      edit('movable fingers', (from) => setFingers(from, { together: together.value, bush: bush.value }));
    else complain([together, bush].flatMap((read) => (read?.ok === false ? read.complaints : [])));
  };
  return html`<p class="quiet">For a guide whose fingers slide along a bar in pairs, one pair for each tail.</p>
    <form @submit=${begin}>
      <div class="measures">
        <label>pair together<input name="together" required autocomplete="off"></label>
        <label>guide bush<input name="bush" ?required=${bush === undefined} autocomplete="off" .value=${bush === undefined ? '' : formatNumber(bush, finest(unit))}></label>
      </div>
      <div class="row"><button type="submit">Cut along movable fingers</button></div>
    </form>`;
};

const ending = (now: Snapshot, { edit }: PanelActions): TemplateResult => {
  const { length } = listedFronts(now);
  return html`<div class="row">
    <button type="button" ?hidden=${length === 0} @click=${() => edit('fronts as the set has them', releaseFronts)}>Let the set choose all fronts</button>
    <button type="button" @click=${() => edit('cutting without fingers', removeFingers)}>Cut without fingers</button>
  </div>`;
};
