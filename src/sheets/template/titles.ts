import type { BuiltMeasure } from '../../drawer/drawerSpec.ts';
import { MEASURED } from '../../drawer/made/builtWords.ts';
import type { Surface } from '../../joint/kinds/kind.ts';
import type { TapedLength } from '../../paper/piece.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import type { ShortName } from '../../units/shortNames.ts';
import { formatSlope, type Slope } from '../../units/slope.ts';
import { type Label, type Lettering, textLabel } from './lettering.ts';
import { scaleBar } from './scaleBar.ts';

/** The text of a template, with the name of the drawer or the single corner. */
export interface Titles extends ShortName {
  /** `left side`, `front`, `tail board`. */
  readonly part: string;
  /** `front end`, `left end`. */
  readonly end: string;
  /** The corner's letter. */
  readonly corner: string;
  readonly count: number;
  readonly slope: Slope;
  /** Lengths of the board that its joint has, such as a lap, mm, each with its word. */
  readonly lengths?: readonly (readonly [word: string, length: number])[];
  /** Measures of the board that came out other than planned, mm. */
  readonly built?: readonly (readonly [measure: BuiltMeasure, length: number])[];
  /** What stops short of the board's end, and how far from it, mm; absent where nothing does. */
  readonly grooveStops?: readonly [what: 'groove' | 'rebate', at: number];
  /** The edge that the template's lower edge is aligned with, from the fullest wording to the shortest. */
  readonly edge: readonly [string, ...string[]];
  /** Height of the joint's lower edge above that edge, mm. */
  readonly jointFrom: number;
  /** The edge at the joint's other end, `upper edge`. */
  readonly upper: string;
  readonly units: Notation;
}

export const REFERENCE_EDGE = ['reference edge', 'reference', 'edge'] as const;

/** The edge that a rail over the drawers, and the sides that it is let into, are marked from. */
export const FRONT_EDGE = ['front edge', 'front', 'edge'] as const;

/** The line on a side where a rail's front edge is let in behind the side's. */
export const frontLine = (behind: string): [string, ...string[]] => [
  `line ${behind} behind the front edge`,
  `${behind} behind front edge`,
  `${behind} from front`,
];

/** The edge that a front with a lip is marked from. */
export const REBATE_EDGE = ["rebate's lower edge", 'rebate'] as const;

const FACES: Readonly<Record<Surface, readonly [string, ...string[]]>> = {
  inside: ['INSIDE FACE', 'INSIDE'],
  outside: ['OUTSIDE FACE', 'OUTSIDE'],
  end: ['END GRAIN', 'END'],
};

/** The length of a whole piece up the board, mm, to check when its parts are taped. */
export const tapedUp = (
  { edge: [fullest], upper }: Pick<Titles, 'edge' | 'upper'>,
  length: number,
): TapedLength => ({
  length,
  between: [`${fullest} to ${upper}`, 'edge to edge'],
});

/** The share of a piece's labels on one band: all of them, or those of the first or second face. */
export type Share = 'all' | 'first' | 'second';

const nameLabels = ({ item, shorter, part, corner }: Titles): Label[] => [
  textLabel(
    'bold',
    `${item} · ${part}`,
    `${item} ${part}`,
    ...shorter.slice(0, -1).map((wording) => `${wording} · ${part}`),
    ...shorter.slice(-1).map((wording) => `${wording} ${part}`),
  ),
  textLabel('bold', corner),
];

const aboutLabels = (
  { end, slope, count, lengths = [], built = [], units }: Titles,
  share: Share,
): Label[] => [
  ...(share === 'second'
    ? []
    : [textLabel('regular', end), textLabel('regular', `slope ${formatSlope(slope)}`, formatSlope(slope))]),
  ...(share === 'first'
    ? []
    : [
        textLabel('regular', `quantity ${count}`, `qty ${count}`),
        ...lengths.map(([word, length]) => textLabel('regular', `${word} ${formatLength(length, units)}`)),
        ...built.map(([measure, length]) => builtLabel(measure, formatLength(length, units))),
        scaleBar(units),
      ]),
];

const builtLabel = (measure: BuiltMeasure, length: string): Label =>
  textLabel('regular', `came out ${length} ${MEASURED[measure]}`, `${length} ${MEASURED[measure]}`);

const mapWordings = (
  [fullest, ...shorter]: readonly [string, ...string[]],
  change: (wording: string) => string,
): [string, ...string[]] => [change(fullest), ...shorter.map(change)];

/** @param arrow points to the edge, relative to the direction of the text */
export const edgeLabel = ({ edge }: Titles, arrow: '←' | '↓'): Label =>
  textLabel('regular', ...mapWordings(edge, (wording) => `${arrow} ${wording}`));

const faceLabel = (face: Surface): Label => textLabel('bold', ...FACES[face]);

const BASELINE = textLabel('regular', 'baseline');

/** Where a joint starts that does not start at the board's reference edge. */
const startLabels = ({ jointFrom, units }: Titles): Label[] => {
  const length = formatLength(jointFrom, units);
  return jointFrom > 0 ? [textLabel('regular', `joint starts ${length} above`, `joint ${length} above`)] : [];
};

/** Where the groove or the rebate on the inside face stops. */
const stopLabels = ({ grooveStops, units }: Titles): Label[] => {
  if (grooveStops === undefined) return [];
  const [what, at] = grooveStops;
  const length = formatLength(at, units);
  return [textLabel('regular', `${what} stops ${length} from the end`, `${what} stops ${length} from end`)];
};

/** The labels of one band of a piece. Every band has its name, corner and face. */
export const letteringOf = (titles: Titles, band: Surface, share: Share): Lettering => ({
  name: nameLabels(titles),
  about: aboutLabels(titles, share),
  // The text runs away from the edge.
  place: [
    edgeLabel(titles, '←'),
    ...(share === 'second' ? [] : startLabels(titles)),
    faceLabel(band),
    ...(band === 'end' ? [] : [BASELINE]),
    ...(band === 'inside' ? stopLabels(titles) : []),
  ],
});

/** All of a piece's labels, for a tag beside one of its faces. */
export const letteringOfTag = (titles: Titles, on: Surface, faces: readonly Surface[]): Lettering => ({
  name: nameLabels(titles),
  about: aboutLabels(titles, 'all'),
  place: [
    // The text runs along the edge.
    edgeLabel(titles, '↓'),
    ...startLabels(titles),
    ...(faces.length === 1
      ? [faceLabel(on)]
      : [
          flapLabel('bold', 'this flap', on),
          ...faces.filter((face) => face !== on).map((face) => flapLabel('regular', 'other flap', face)),
        ]),
    ...(faces.includes('inside') ? stopLabels(titles) : []),
  ],
});

/** Which face a flap of a piece with two is on. */
const flapLabel = (weight: 'bold' | 'regular', flap: string, face: Surface): Label =>
  textLabel(weight, ...mapWordings(FACES[face], (wording) => `${flap}: ${wording}`));

/**
 * The labels of the end grain's flat template, on its flap or on a tag that lengthens it.
 * @param toOutside an arrow, relative to the direction of the text, from the flap to the outside face
 * @param toEdge one to the reference edge
 */
export const letteringOfEnd = (
  titles: Titles,
  toOutside: '↑' | '↓' | '←' | '→',
  toEdge: '←' | '↓',
): Lettering => ({
  name: nameLabels(titles),
  about: aboutLabels(titles, 'all'),
  place: [
    edgeLabel(titles, toEdge),
    ...startLabels(titles),
    faceLabel('end'),
    flapLabel('regular', 'flap', 'inside'),
    textLabel('bold', ...mapWordings(FACES.outside, (wording) => `${toOutside} ${wording}`)),
  ],
});

/** The labels of a grip whose piece has a tag for all others. */
export const gripLabels = (face: Surface, joint: boolean): Lettering => ({
  name: [],
  about: [faceLabel(face)],
  place: joint ? [BASELINE] : [],
});
