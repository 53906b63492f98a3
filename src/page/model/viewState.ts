import type { Complaint } from '../../units/complaint.ts';
import type { Notation } from '../../units/notation.ts';
import type { Message } from '../dialogs/messages.ts';
import type { Scope } from './adjust.ts';
import type { CornerRef, EditedCorner } from './editedCorner.ts';
import type { Snapshot } from './snapshot.ts';
import type { Locked } from './widths.ts';

/** All that the page shows. */
export interface ViewState {
  readonly now: Snapshot;
  readonly corner: EditedCorner;
  readonly locked: Locked;
  readonly scope: Scope;
  /** What is being moved, and what stops it. */
  readonly moving?: { readonly handle: string; readonly stop: readonly Complaint[] };
}

/** What is shown, and how many px wide the drawings may be: measured apart, for measuring holds the browser up. */
export interface SizedViewState extends ViewState {
  readonly room: { readonly cabinet: number; readonly corner: number };
}

/** A part of the page, which follows what is shown. */
export type View = (shown: SizedViewState) => void;

/** Of more drawers than this only the first are drawn; the others are found in the plan's text. */
export const MOST_DRAWN = 200;

/** What a part of the page can ask for. */
export interface Ask {
  readonly select: (ref: CornerRef) => void;
}

/** What the parts of the page that stand beside the drawings know of it. */
export interface AppContext {
  readonly now: () => Snapshot;
  readonly unit: () => Notation;
  /** Takes a plan in place of the one in hand; false where it cannot be made, which is said. */
  readonly take: (given: Uint8Array | string, name: string) => boolean;
  readonly say: (message: Message) => void;
  readonly refuse: (complaints: readonly Complaint[]) => void;
}
