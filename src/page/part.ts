import type { Complaint } from '../complaint.ts';
import type { Scope } from './adjust.ts';
import type { CornerRef } from './corner.ts';
import { element } from './dom.ts';
import type { Quantity } from './quantities.ts';
import type { View } from './shown.ts';

/** What the controls can ask for. */
export interface Wishes {
  readonly select: (ref: CornerRef) => void;
  readonly oneMore: () => void;
  readonly oneFewer: (i?: number) => void;
  readonly even: () => void;
  readonly choose: () => void;
  readonly mirror: () => void;
  readonly lock: (i: number) => void;
  readonly width: (i: number, value: number) => void;
  readonly measure: (quantity: Quantity, value: number) => void;
  readonly scope: (scope: Scope) => void;
  readonly rename: (name: string) => void;
  readonly howMany: (count: number) => void;
  readonly another: () => void;
  readonly takeOut: () => void;
  /** What was typed cannot be read. */
  readonly complain: (complaints: readonly Complaint[]) => void;
}

/** A part of the controls, which follows what is shown. */
export interface Part {
  readonly node: HTMLElement;
  readonly show: View;
}

export const button = (
  label: string,
  onclick: () => void,
  attributes: Readonly<Record<string, string>> = {},
): HTMLButtonElement => element('button', { type: 'button', ...attributes, onclick }, label);
