import { type Block, beside, paragraph, stack } from '../typeset/block.ts';
import { typeSizes } from '../typeset/typeSizes.ts';

/** Safety at the saw (common practice). */
const CAUTIONS: readonly string[] = [
  'Keep guards and riving knife on. Keep both hands clear of the blade; end every cut with a push stick.',
  'Saw and plane edges are sharp. Clamp the work, or run it along fence and table; support long boards at both ends.',
  'Wear eye and ear protection and a dust mask.',
  'Look for nails, stones and loose knots before you saw. A board under tension can close on the blade.',
  'Tool makers’ manuals, local rules and a qualified teacher come before this sheet.',
];

/** Width that is left to a dash, mm. */
const DASH = 4;

/** Safety at the saw, under its heading. */
export const sawCautions = (width: number): Block => {
  const { heading, note } = typeSizes(1);
  return stack([
    paragraph([{ text: 'Take care', size: heading, weight: 'bold' }], width),
    ...CAUTIONS.map((text) =>
      beside([
        [0, paragraph([{ text: '–', size: note, weight: 'bold' }], DASH)],
        [DASH, paragraph([{ text, size: note, weight: 'regular' }], width - DASH)],
      ]),
    ),
  ]);
};
