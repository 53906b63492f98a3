import type { Surface } from '../../joint/kinds/kind.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import { formatSlope, type Slope } from '../../units/slope.ts';
import { type Fact, type Lettering, words } from './lettering.ts';
import { scaleBar } from './scaleBar.ts';

/** What a template says about itself. */
export interface Titles {
  /** The drawer, or the joint that belongs to none. */
  readonly item: string;
  /** `left side`, `front`, `tail board`. */
  readonly part: string;
  /** `front end`, `left end`. */
  readonly end: string;
  /** The corner's letter. */
  readonly corner: string;
  readonly count: number;
  readonly slope: Slope;
  /** The lengths that the board has by its kind of corner, such as a lap, each with its word. */
  readonly lengths?: readonly (readonly [word: string, length: number])[];
  /** What the template's lower edge is laid against, from the fullest wording to the shortest. */
  readonly edge: readonly [string, ...string[]];
  readonly units: Notation;
}

export const REFERENCE_EDGE = ['reference edge', 'ref. edge', 'edge'] as const;

/** What a front with a lip is marked from instead. */
export const REBATE_EDGE = ["rebate's lower edge", 'rebate'] as const;

const FACES: Readonly<Record<Surface, readonly [string, ...string[]]>> = {
  inside: ['INSIDE FACE', 'INSIDE'],
  outside: ['OUTSIDE FACE', 'OUTSIDE'],
  end: ['END'],
};

/** A name cut to so many characters, with an ellipsis where it was longer. */
export const cut = (text: string, most: number): string => {
  const characters = [...text];
  const kept = characters.slice(0, most - 1).join('');
  return characters.length <= most ? text : `${kept.replace(/[\s\p{P}]+$/u, '')}…`;
};

/** Which of a piece's facts a band bears: all of them, or its share beside the piece's other face. */
export type Share = 'all' | 'first' | 'second';

const nameFacts = ({ item, part, corner }: Titles): Fact[] => [
  words(
    'bold',
    `${item} · ${part}`,
    `${item} ${part}`,
    `${cut(item, 30)} · ${part}`,
    `${cut(item, 20)} · ${part}`,
    `${cut(item, 12)} · ${part}`,
    `${cut(item, 8)} · ${part}`,
    `${cut(item, 5)} ${part}`,
  ),
  words('bold', corner),
];

const aboutFacts = ({ end, slope, count, lengths = [], units }: Titles, share: Share): Fact[] => [
  ...(share === 'second'
    ? []
    : [words('regular', end), words('regular', `slope ${formatSlope(slope)}`, formatSlope(slope))]),
  ...(share === 'first'
    ? []
    : [
        words('regular', `make ${count}`, `× ${count}`),
        ...lengths.map(([word, length]) => words('regular', `${word} ${formatLength(length, units)}`)),
        scaleBar(units),
      ]),
];

/** @param arrow points to the edge, as the letters run */
export const edgeFact = ({ edge: [fullest, ...shorter] }: Titles, arrow: '←' | '↓'): Fact =>
  words('regular', `${arrow} ${fullest}`, ...shorter.map((wording) => `${arrow} ${wording}`));

const faceFact = (face: Surface): Fact => words('bold', ...FACES[face]);

const BASELINE = words('regular', 'baseline', 'base l.');

/** The facts to stand on one band of a piece. Its name, corner and face stand on every one. */
export const letteringOf = (titles: Titles, band: Surface, share: Share): Lettering => ({
  name: nameFacts(titles),
  about: aboutFacts(titles, share),
  // The lettering runs away from the edge.
  place: [edgeFact(titles, '←'), faceFact(band), ...(band === 'end' ? [] : [BASELINE])],
});

/** All of a piece's facts, for a tag that adjoins one of its bands; its other faces lie beyond the board's end. */
export const letteringOfTag = (titles: Titles, on: Surface, faces: readonly Surface[]): Lettering => ({
  name: nameFacts(titles),
  about: aboutFacts(titles, 'all'),
  place: [
    // Over an end the lettering runs away from the edge; beside a face it runs along it.
    edgeFact(titles, on === 'end' ? '←' : '↓'),
    faceFact(on),
    ...faces
      .filter((face) => face !== on)
      .map((face) => words('regular', `${FACES[face][0]} beyond the end`, `${FACES[face][0]} beyond`)),
  ],
});

/** What stands on a grip whose piece says all else on its tag. */
export const gripFacts = (face: Surface): Lettering => ({
  name: [],
  about: [faceFact(face)],
  place: [BASELINE],
});
