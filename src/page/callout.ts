import type { Complaint } from '../complaint.ts';
import { speak } from '../units/phrase.ts';
import type { Unit } from '../units/unit.ts';
import { element, setText } from './dom.ts';

const WIDEST = 280;
/** Kept free at the drawing's edges, in px. */
const FREE = 8;
/** From the line that is moved, in px. */
const AWAY = 14;

/** Where a callout points to, in px, and whether it stands above, as a finger hides what is below. */
export interface Pointed {
  readonly at: readonly [x: number, y: number];
  readonly above: boolean;
}

/** Says beside what is moved why it goes no further. */
export const callout = (host: HTMLElement) => {
  const node = element('div', { class: 'callout', hidden: true });
  host.append(node);
  return (stop: readonly Complaint[], pointed: Pointed | undefined, room: number, unit: Unit): void => {
    const [first] = stop;
    node.hidden = first === undefined || pointed === undefined;
    if (first === undefined || pointed === undefined) return;
    const { at, above } = pointed;
    const width = Math.min(WIDEST, room - 2 * FREE);
    setText(node, speak(first.says, unit));
    node.classList.toggle('above', above);
    node.style.width = `${width}px`;
    node.style.left = `${Math.max(FREE, Math.min(at[0] + 12, room - width - FREE))}px`;
    node.style.top = `${at[1] + (above ? -AWAY : AWAY)}px`;
  };
};
