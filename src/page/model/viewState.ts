import type { Complaint } from '../../units/complaint.ts';
import type { Notation } from '../../units/notation.ts';
import type { KeptPlan } from '../browser/storage.ts';
import type { Message } from '../dialogs/messages.ts';
import type { CornerRef, EditedCorner } from './editedCorner.ts';
import type { Scope } from './scope.ts';
import type { Draft } from './session.ts';
import type { Snapshot } from './snapshot.ts';
import type { Locked } from './widths.ts';

/** All that the page shows. */
export interface ViewState {
  readonly now: Snapshot;
  readonly corner: EditedCorner;
  readonly locked: Locked;
  readonly scope: Scope;
  /** Whether the corner alone is as a hand moves it, and the plan is to follow. */
  readonly isPreview: boolean;
  /** The handle that is moved, its value where it began, in mm, the corner then, and the complaints that stop it. */
  readonly moving?: {
    readonly handle: string;
    readonly from: number;
    readonly before: EditedCorner | undefined;
    readonly stop: readonly Complaint[];
  };
}

/**
 * The widths available to the drawings in px, and how large the user wants letters, to those of one who has asked for none:
 * measured apart, as that makes the browser lay out.
 */
export interface Room {
  readonly cabinet: number;
  readonly corner: number;
  readonly letters: number;
}

export interface SizedViewState extends ViewState {
  readonly room: Room;
}

/** A part of the page, which renders what is shown. */
export type View = (shown: SizedViewState) => void;

/** The most drawers that are drawn; any others are in the plan's text only. */
export const MOST_DRAWN = 200;

/** What the overviews can do to the rest of the page. */
export interface ViewActions {
  readonly select: (ref: CornerRef) => void;
}

/** What dialogs, files and the plan's text need of the page. */
export interface AppContext {
  readonly now: () => Snapshot;
  /** What is typed in the plan's text and not valid yet. */
  readonly draft: () => Draft | undefined;
  readonly unit: () => Notation;
  /** Opens a plan in place of the present one; where it is not valid, shows why and returns false. */
  readonly openPlan: (given: Uint8Array | string, name: string) => boolean;
  /** Says why a plan was not opened. */
  readonly refusePlan: (name: string, lines: readonly string[]) => void;
  /** Types over the plan's text. */
  readonly type: (text: string) => void;
  readonly say: (message: Message) => void;
  readonly refuse: (complaints: readonly Complaint[]) => void;
  /** Takes what is still being typed; what is wrong with it, where it cannot be taken. */
  readonly settle: () => readonly string[];
  /** To be called when the plan has been saved as a file. */
  readonly saved: () => void;
  /** Keeps a plan that another takes the place of. @param left its last edit, in words, beside its name and text */
  readonly keep: (left: Omit<KeptPlan, 'at'>) => void;
}
