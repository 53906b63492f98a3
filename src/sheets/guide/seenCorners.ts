import { type CornerEnd, cornerLetter, type Hand } from '../../drawer/cornerLetters.ts';

/** The hand of a drawer on one side, seen in front of that end: from behind, the right hand is on the left. */
const handSeen = (end: CornerEnd, seen: Hand): Hand =>
  end === 'front' ? seen : seen === 'left' ? 'right' : 'left';

/**
 * The corners on one side, seen in front of their ends: those of the left have the tail board's outside face on the left
 * with the reference edge down; so with the end up and that face towards one, the reference edge is at one's right.
 */
export const lettersSeen = (ends: readonly CornerEnd[], seen: Hand): string =>
  ends.map((end) => cornerLetter(end, handSeen(end, seen))).join(', ');
