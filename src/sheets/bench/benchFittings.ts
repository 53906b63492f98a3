import type { Fittings, Hole } from '../../drawer/fittings/fittings.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitWords } from '../../units/notation.ts';
import type { Instruction, Section } from './benchInstructions.ts';

/**
 * What is drilled in a drawer's front, and fixed under it, with the cautions for that; nothing where it has none.
 * @param frontLength of the front, lip included, in mm
 */
export const benchFittings = (
  fittings: Fittings | undefined,
  frontLength: number,
  unit: Notation,
): Section[] => {
  if (fittings === undefined) return [];
  const { pulls, lock, stops } = fittings;
  const length = (value: number) => formatLength(value, unit).replaceAll(' ', '\u00A0');
  const size = (values: readonly number[]) =>
    `${values.map((value) => formatNumber(value, unit).replaceAll(' ', '\u00A0')).join(' × ')} ${unitWords(unit)}`;
  const holes = pulls.flatMap((pull) => pull.holes);
  return [
    ...(holes.length === 0 && lock === undefined
      ? []
      : [
          {
            heading: lock === undefined ? 'Pulls' : holes.length === 0 ? 'Lock' : 'Pulls and lock',
            numbered: false,
            lines: [
              { text: 'Before glue, prick the holes through the drilling templates.' },
              ...pullLines(holes, frontLength, length),
              ...(lock === undefined
                ? []
                : [
                    {
                      text: `Key: drill ${length(lock.keyhole.diameter)} in the middle, down from the upper edge`,
                      figure: length(lock.pin),
                    },
                    {
                      text: 'Let the lock’s body into the inside face, width × height × depth:',
                      figure: size([lock.body.x1 - lock.body.x0, lock.body.y1 - lock.body.y0, lock.depth]),
                    },
                  ]),
              ...CAUTIONS,
            ],
          },
        ]),
    ...(stops === undefined
      ? []
      : [
          {
            heading: stops.at.length === 1 ? 'Stop' : 'Stops',
            numbered: false,
            lines: [
              {
                text: `On the rail under the drawer, ${size([stops.width, stops.depth, stops.thickness])} (along the rail × back × up), behind its front edge`,
                figure: length(stops.behind),
              },
              {
                text: `${stops.at.length === 1 ? 'Its middle' : 'Their middles'} from ${stops.at.length === 1 ? 'both sides' : 'each side'} of the opening:`,
                figure: length(stops.at[0] ?? 0),
              },
              { text: 'Push the drawer home against them before the glue sets; plane what is too thick.' },
            ],
          },
        ]),
  ];
};

/** Each hole by its distance from the nearer end; those that mirror each other once. */
const pullLines = (
  holes: readonly Hole[],
  frontLength: number,
  length: (value: number) => string,
): Instruction[] => {
  const isMirrored = ({ at: [x] }: Hole): boolean =>
    holes.some(({ at: [other] }) => Math.abs(x + other - frontLength) < EPSILON);
  return holes
    .filter((hole) => !isMirrored(hole) || hole.at[0] <= frontLength / 2 + EPSILON)
    .map((hole) => {
      const [x, up] = hole.at;
      const isLeft = x <= frontLength / 2 + EPSILON;
      const end = isMirrored(hole) ? 'each end' : `the ${isLeft ? 'left' : 'right'} end`;
      return {
        text: `Pull: drill ${length(hole.diameter)}; from ${end}, and up:`,
        figure: `${length(isLeft ? x : frontLength - x)}, ${length(up)}`,
      };
    });
};

const CAUTIONS: readonly Instruction[] = [
  {
    text: 'Drill from the outside face. Clamp a backing board tight behind it, so that the wood does not break out.',
  },
  {
    text: 'Clamp the front to the bench: never hold it in a hand. Keep fingers, hair and sleeves clear of the drill.',
  },
];
