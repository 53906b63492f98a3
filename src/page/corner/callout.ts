import { html, nothing } from 'lit-html';
import type { Project } from '../../project/project.ts';
import type { Complaint } from '../../units/complaint.ts';
import { complaintWords } from '../text/plainWords.ts';
import type { CornerSheet, Face } from './cornerSheet.ts';

const WIDEST = 280;
/** Faces that are less wide have no room for it. */
const LEAST = 200;
/** Kept free at the edges, in px. */
const FREE = 8;
/** From the line that is moved, in px. */
const AWAY = 14;

/** The point of a callout in px, and whether it lies above, as a finger hides what is below. */
export interface Pointed {
  readonly at: readonly [x: number, y: number];
  readonly above: boolean;
  /** From where to where, in px from above, sizes change that it must leave free. */
  readonly between: readonly [top: number, bottom: number] | undefined;
}

/** The faces of the board that is nearest, between the sizes that are written beside them, in px. */
const facesAt = (x: number, { tailFace, tailEnd, pinEnd, width }: CornerSheet): Face =>
  x < (tailEnd.x1 + pinEnd.x0) / 2 ? { x0: tailFace.x0, x1: tailEnd.x1 } : { x0: pinEnd.x0, x1: width };

/**
 * A callout beside what is moved: what it is now, and the reason why it goes no further. It lies on a board, clear of the
 * sizes; where the boards are too narrow, above or below those that change.
 */
export const callout = (
  words: string,
  [stop]: readonly Complaint[],
  { at: [x, y], above, between = [y - AWAY, y + AWAY] }: Pointed,
  sheet: CornerSheet,
  project: Project,
) => {
  const faces = facesAt(x, sheet);
  const isNarrow = faces.x1 - faces.x0 < LEAST;
  const { x0, x1 } = isNarrow ? { x0: 0, x1: sheet.width } : faces;
  const width = Math.min(WIDEST, x1 - x0 - 2 * FREE);
  const left = Math.max(x0 + FREE, Math.min(x + 12, x1 - width - FREE));
  const isAbove = above || (isNarrow && y > sheet.height / 2);
  const [over, under] = isNarrow ? between : [y - AWAY, y + AWAY];
  const top = isAbove ? over : under;
  const reason =
    stop && html`<p class="reason">${complaintWords({ at: stop.at, says: stop.says }, project)}</p>`;
  return html`<div class="callout ${isAbove ? 'above' : ''} ${stop ? 'stopped' : ''}"
    style="max-width: ${width}px; left: ${left}px; top: ${top}px"><p>${words}</p>${reason ?? nothing}</div>`;
};
