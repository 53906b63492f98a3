import { blankLetters, blankName } from '../../drawer/blanks/blankWords.ts';
import type { BrokenOut } from '../../drawer/blanks/brokenOut.ts';
import type { PartBlank } from '../../drawer/blanks/partBlanks.ts';
import type { PlankLayout } from '../../stock/breakout.ts';
import type { Plank } from '../../stock/plank.ts';
import type { Saw } from '../../stock/wanted.ts';

/** What is shown of one board. */
export interface BoardView {
  readonly plank: Plank;
  readonly layout: Pick<PlankLayout, 'blanks' | 'cuts' | 'offcuts'>;
  /** Lost in a cut, mm. */
  readonly kerf: number;
  /** All blanks of the set, by their numbers in the layout. */
  readonly blanks: readonly PartBlank[];
}

/** What is shown of each board that is cut into. */
export const boardViews = (
  { planks, blanks, breakout: { boards } }: BrokenOut,
  { kerf }: Pick<Saw, 'kerf'>,
): BoardView[] =>
  boards.flatMap((layout) => {
    const plank = planks[layout.plank];
    return plank === undefined ? [] : [{ plank, layout, kerf, blanks }];
  });

/** A blank's letter and name. */
export const blankTitle = (
  blanks: readonly PartBlank[],
  wanted: number,
): { readonly letter: string; readonly name: string } => {
  const part = blanks[wanted];
  return { letter: blankLetters(wanted), name: part === undefined ? '' : blankName(part) };
};

/** A defect's small letter, by its place in its board's list: `a` to `z`, then `aa`, `ab` and so on. */
export const defectLetter = (index: number): string =>
  (index < ALPHABET ? '' : defectLetter(Math.floor(index / ALPHABET) - 1)) +
  String.fromCharCode('a'.charCodeAt(0) + (index % ALPHABET));

const ALPHABET = 26;

/** The ends of a blank as it lies not turned: how far each joint reaches with the clear wood beyond it, mm; 0 without a joint. */
export interface BlankEnds {
  readonly left: number;
  readonly right: number;
  /** Of a side, which end is at the drawer's front. */
  readonly front?: 'left' | 'right';
}

export const blankEnds = ({ part, zones, length, index }: PartBlank): BlankEnds => {
  if (part === 'bottom' || part === 'slip') return { left: 0, right: 0 };
  const ends = zones.filter(({ from, to }) => to[0] - from[0] < length);
  return {
    left: Math.max(0, ...ends.map(({ from, to }) => (from[0] <= 0 ? to[0] : 0))),
    right: Math.max(0, ...ends.map(({ from, to }) => (to[0] >= length ? length - from[0] : 0))),
    ...(part === 'side' && index !== undefined && { front: index % 2 === 1 ? 'right' : 'left' }),
  };
};
