import { html, nothing, type TemplateResult } from 'lit-html';
import type { Drawer } from '../../drawer/drawer.ts';
import { copyNumbers } from '../../drawer/made/builtCopies.ts';
import { builtWords } from '../../drawer/made/builtWords.ts';
import { parts, partWords } from '../../drawer/partsList.ts';
import { formatNumber } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import { speak } from '../../units/phrase.ts';
import type { ViewState } from '../model/viewState.ts';

/** The finished sizes of the drawer's or box's parts. */
export const partSizes = ({
  corner: { drawer },
  now: { project },
}: ViewState): TemplateResult | typeof nothing => {
  if (drawer === undefined) return nothing;
  const size = (value: number): string => formatNumber(value, project.units);
  const rows = parts({ drawers: [drawer], advice: [] }, project.units);
  return html`<table class="parts">
    <caption class="quiet">Finished sizes</caption>
    <thead><tr><th scope="col">part</th><th scope="col">length</th><th scope="col">width</th><th scope="col">thick</th></tr></thead>
    <tbody>${rows.map(
      ({ length, width, thickness, copies, ...part }) =>
        html`<tr><th scope="row">${partWords(part)}${copies ? ` ${copyNumbers(copies)}` : ''}</th><td data-name="length">${size(length)}</td><td data-name="width">${size(width)}</td><td data-name="thick">${size(thickness)}</td></tr>`,
    )}</tbody>
  </table>${asBuilt(drawer, project.units)}`;
};

/** Which boards came out other than planned; the drawing is of the corner as planned. */
const asBuilt = ({ made = [] }: Drawer, units: Notation): TemplateResult | typeof nothing =>
  made.length === 0
    ? nothing
    : html`<p class="quiet" data-name="built">Drawn as planned. ${made
        .flatMap(({ spec }) =>
          builtWords(spec).map(
            (words) => `${spec.name}: ${speak(words, units)}; its corners are so on the sheets.`,
          ),
        )
        .join(' ')}</p>`;
