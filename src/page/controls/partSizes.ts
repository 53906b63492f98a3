import { html, nothing, type TemplateResult } from 'lit-html';
import { parts } from '../../drawer/partsList.ts';
import { formatNumber } from '../../units/formatLength.ts';
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
      ({ part, length, width, thickness }) =>
        html`<tr><th scope="row">${part}</th><td data-name="length">${size(length)}</td><td data-name="width">${size(width)}</td><td data-name="thick">${size(thickness)}</td></tr>`,
    )}</tbody>
  </table>`;
};
