import type { Complaint } from '../complaint.ts';
import type { Unit } from '../units/unit.ts';
import type { Message } from './messages.ts';
import type { Snapshot } from './work.ts';

/** What the parts of the page that stand beside the drawings know of it. */
export interface AppContext {
  readonly now: () => Snapshot;
  readonly unit: () => Unit;
  /** Takes a plan in place of the one in hand; false where it cannot be made, which is said. */
  readonly take: (given: Uint8Array | string, name: string) => boolean;
  readonly say: (message: Message) => void;
  readonly refuse: (complaints: readonly Complaint[]) => void;
}
