/** The four corners of a drawer seen from above, front at the bottom: clockwise from the front's left end. */
export const CORNERS = {
  A: { end: 'front', hand: 'left' },
  B: { end: 'front', hand: 'right' },
  C: { end: 'back', hand: 'right' },
  D: { end: 'back', hand: 'left' },
} as const;

/** Both hands, as they are listed. */
export const HANDS = ['left', 'right'] as const satisfies readonly Hand[];

export type CornerLetter = keyof typeof CORNERS;
export type CornerEnd = (typeof CORNERS)[CornerLetter]['end'];
export type Hand = (typeof CORNERS)[CornerLetter]['hand'];

/** The letter that a corner carries on the boards, on the templates and on the bench sheet. */
export const cornerLetter = (end: CornerEnd, hand: Hand): CornerLetter =>
  end === 'front' ? (hand === 'left' ? 'A' : 'B') : hand === 'right' ? 'C' : 'D';
