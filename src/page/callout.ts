import type { Complaint } from '../complaint.ts';
import type { Unit } from '../units/length.ts';
import { speak } from '../units/phrase.ts';
import { element, setText } from './dom.ts';

const WIDEST = 280;
/** Kept free at the drawing's edges, in px. */
const FREE = 8;

/** Says beside what is moved why it goes no further. */
export const callout = (host: HTMLElement) => {
  const node = element('div', { class: 'callout', hidden: true });
  host.append(node);
  return (
    stop: readonly Complaint[],
    at: readonly [x: number, y: number] | undefined,
    room: number,
    unit: Unit,
  ): void => {
    const [first] = stop;
    node.hidden = first === undefined || at === undefined;
    if (first === undefined || at === undefined) return;
    const width = Math.min(WIDEST, room - 2 * FREE);
    setText(node, speak(first.says, unit));
    node.style.width = `${width}px`;
    node.style.left = `${Math.max(FREE, Math.min(at[0] + 12, room - width - FREE))}px`;
    node.style.top = `${at[1] + 14}px`;
  };
};
