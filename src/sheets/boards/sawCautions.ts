/** Safety at the saw (common practice). */
export const SAW_CAUTIONS: readonly string[] = [
  'Keep guards and riving knife on. Keep both hands clear of the blade; end every cut with a push stick.',
  'Saw and plane edges are sharp. Clamp the work, or run it along fence and table; support long boards at both ends.',
  'Wear eye and ear protection and a dust mask.',
  'Look for nails, stones and loose knots before you saw. A board under tension can close on the blade.',
  'Tool makers’ manuals, local rules and a qualified teacher come before this sheet.',
];

/** What stands for what on a picture of a board. */
export const MARKS_LEGEND =
  'Capital letters: parts. Numbers in boxes: saw cuts, in order. Small letters: defects, hatched by kind. Bold line with an open arrow: reference edge; at the upper side a part is turned. Dashed: how far a joint reaches, with the clear wood beyond it. Filled triangle: front end of a side. Long dashes: offcut worth keeping.';
