import type { Cut } from './plank.ts';

/** A blank where it lies on its board, exactly its piece; x, y of its lower left corner, length along x, in mm. */
export interface Blank {
  /** Index of the wanted piece. */
  readonly wanted: number;
  /** Half a turn in the plane. */
  readonly turned: boolean;
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
  /** The piece of the cuts that it is. */
  readonly piece: number;
  readonly why: Reason;
}

/** Why a blank lies where it does, so that a change by hand knows what it breaks. */
export type Reason =
  /** It had been cut before. */
  | { readonly kind: 'cut already' }
  /** It was pinned there by hand. */
  | { readonly kind: 'pinned' }
  /** Its figure runs through with these wanted pieces. */
  | { readonly kind: 'runs through'; readonly with: readonly number[] }
  /** Of the boards of its stock, thick enough, no other is wide, or between its ends long enough, or has that much clear wood left. */
  | { readonly kind: 'only board'; readonly for: 'stock' | 'width' | 'length' | 'clear wood' }
  /** It lies next to this wanted piece, the other side of its drawer. */
  | { readonly kind: 'beside'; readonly with: number }
  /** It comes out of one board with this wanted piece, the other side of its drawer. */
  | { readonly kind: 'same board'; readonly with: number }
  /** A short piece out of a board that is bent along its length, or a narrow one out of a cupped board. */
  | { readonly kind: 'bow' }
  /** A second try, out of what was left. */
  | { readonly kind: 'spare' }
  /** So fewest boards are cut into, or most is left. */
  | { readonly kind: 'least waste' };

/** A clear rectangle left over, in mm. */
export interface Offcut {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

/** What is cut from one board. */
export interface PlankLayout {
  /** Index of the board. */
  readonly plank: number;
  readonly blanks: readonly Blank[];
  readonly cuts: readonly Cut[];
  /** Largest first. */
  readonly offcuts: readonly Offcut[];
}

/** Which wanted piece comes out of which board, and the cuts that free it. */
export interface Breakout {
  /** Boards cut into, in the order in which they are listed. */
  readonly boards: readonly PlankLayout[];
  /** For each list that was to run through: the board it lies in, where it is met. */
  readonly runs: readonly { readonly plank?: number }[];
  /** Indices of wanted pieces for which no board has room; never a spare. */
  readonly missing: readonly number[];
  /** No layout by the same rules that cuts every piece cuts into fewer boards; absent when something is missing. */
  readonly bound?: number;
}
