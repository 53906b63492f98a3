import { html, type TemplateResult } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import { isTail, widthName } from '../../joint/widthName.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { unitOf } from '../../units/notation.ts';
import { parseLength } from '../../units/parseLength.ts';
import type { ViewState } from '../model/viewState.ts';
import { widthsOf } from '../model/widths.ts';
import type { ControlActions } from './controls.ts';
import { entry } from './entry.ts';

/** Every width at the tips, the highest first as in the drawing, to be typed and locked. */
export const widthTable = (
  { corner: { joint }, locked, now }: ViewState,
  { width, lock, oneFewer, complain }: ControlActions,
): TemplateResult => {
  const unit = now.project.units;
  const widths = widthsOf(joint);
  const row = ({ value, i }: { readonly value: number; readonly i: number }): TemplateResult => {
    const name = widthName(i, widths.length);
    const typed = entry(`${name}, width`, formatNumber(value, unit), (text) => {
      const read = parseLength(text, unitOf(unit));
      if (read.ok) width(i, read.value);
      else complain(read.complaints);
    });
    return html`<li class=${isTail(i) ? 'tail' : 'pin'}>
      <span class="name">${name}</span>
      ${typed}
      <button type="button" class="mini" aria-label="Lock ${name}" aria-pressed=${locked.has(i)}
        @click=${() => lock(i)}>lock</button>
      <button type="button" class="mini" aria-label="Remove ${name}" ?hidden=${!isTail(i) || widths.length <= 3}
        @click=${() => oneFewer(i)}>×</button>
    </li>`;
  };
  // The reference edge is at the foot, as in the drawing.
  const rows = widths.map((value, i) => ({ value, i })).toReversed();
  return html`<section aria-label="Widths at the tips">
    <h3>Widths at the tips</h3>
    <ol class="widths" reversed>${repeat(rows, ({ i }) => i, row)}</ol>
  </section>`;
};
