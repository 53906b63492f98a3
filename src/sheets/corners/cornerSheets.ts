import type { Drawing } from '../../drawing/drawing.ts';
import type { Joint } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import type { Size } from '../../paper/printable.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import { SMALL } from '../template/lettering.ts';
import { type Block, beside, paragraph, picture, space, stack } from '../typeset/block.ts';
import { flow } from '../typeset/flow.ts';
import { cornerPicture, pictureSize, type Shown } from './cornerPicture.ts';

/** A corner, and whose it is. */
export interface PicturedCorner {
  readonly name: string;
  readonly joint: Joint;
}

export interface CornerSheetOptions {
  readonly title: string;
  readonly units: Notation;
  /** Usable area of a page, mm. */
  readonly area: Size;
}

const TITLE = 6;
/** Gap between corners, between pictures, and from a corner's words to its pictures, mm. */
const GAP = { corners: 7, pictures: 6, words: 1.5 };

/** The pictures of a corner from left to right, and what each takes of the width. */
const COLUMNS: readonly (readonly [shown: Shown, share: number])[] = [
  ['closed', 0.24],
  ['open', 0.36],
  ['inside', 0.4],
];

/** Most height of a picture, mm; of wide boards, as a share of their width; and of any, as a share of the page's. */
const MOST = { usual: 60, wide: 0.25, share: 0.8 };

/** Scales as 1 : n; boards too large for them are made as small as they must be. */
const SCALES = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20];

const HOW =
  'Each corner closed; open, as its boards come apart, along the pin board; and both boards from inside. End grain is hatched.';

/** Corners as pictures, drawn from their numbers: each closed, open and from inside. */
export const cornerSheets = (
  corners: readonly PicturedCorner[],
  { title, units, area }: CornerSheetOptions,
): Drawing[] => {
  const head = paragraph([{ text: `${title}: corners`, size: TITLE, weight: 'bold' }], area.width);
  const how = paragraph([{ text: HOW, size: SMALL, weight: 'regular' }], area.width);
  return flow(
    {
      head: [stack([head, how]), head],
      wide: corners.map((corner) => [cornerRow(corner, units, area)]),
      narrow: [],
      columns: 1,
      gap: GAP.corners,
    },
    area,
  ).draw();
};

/** The three pictures of a corner on one drawing, at the largest scale at which they fit a width of 198 mm. */
export const cornerPictures = (joint: Joint): Drawing => {
  const width = 198;
  const { height, marks } = pictures(joint, { width, height: mostHeight(joint) });
  return { box: { x0: 0, y0: -height, x1: width, y1: 0 }, marks: marks(0, 0) };
};

const cornerRow = ({ name, joint }: PicturedCorner, units: Notation, { width, height }: Size): Block =>
  stack([
    paragraph([{ text: name, size: SMALL, weight: 'bold' }], width),
    paragraph([{ text: about(joint, units), size: SMALL, weight: 'regular' }], width),
    space(GAP.words),
    pictures(joint, { width, height: Math.min(mostHeight(joint), MOST.share * height) }),
  ]);

const mostHeight = ({ width }: Joint): number => Math.max(MOST.usual, MOST.wide * width);

/** The pictures of a corner beside each other, all to one scale. */
const pictures = (joint: Joint, { width, height }: Size): Block => {
  const room = width - (COLUMNS.length - 1) * GAP.pictures;
  const held = Math.min(
    ...COLUMNS.map(([shown, share]) => {
      const size = pictureSize(joint, shown);
      return Math.min((share * room - EDGE) / size.width, (height - EDGE) / size.height);
    }),
  );
  const n = SCALES.find((each) => 1 / each <= held);
  let left = 0;
  return beside(
    COLUMNS.map(([shown, share]): readonly [number, Block] => {
      const at = left;
      left += share * room + GAP.pictures;
      return [at, picture(cornerPicture(joint, shown, n === undefined ? held : 1 / n))];
    }),
  );
};

/** What the width of its lines adds to a picture, mm. */
const EDGE = 0.5;

/** `lapped, 4 tails, 96 mm wide, tail board 11 mm, pin board 20 mm, lap 5 mm, upper shoulder 9 mm`. */
const about = (joint: Joint, units: Notation): string => {
  const { kind, tails, width, tailBoard, pinBoard, shoulder } = joint;
  const length = (value: number) => formatLength(value, units).replaceAll(' ', '\u00A0');
  return [
    kind,
    `${tails.length} ${tails.length === 1 ? 'tail' : 'tails'}`,
    `${length(width)} wide`,
    `tail board ${length(tailBoard.thickness)}`,
    `pin board ${length(pinBoard.thickness)}`,
    ...kindOf(joint).lengths.map(({ word, of }) => `${word} ${length(of(joint))}`),
    ...(Math.abs(shoulder.lower - shoulder.upper) < EPSILON
      ? shoulder.lower > 0
        ? [`shoulders ${length(shoulder.lower)}`]
        : []
      : (['lower', 'upper'] as const)
          .filter((edge) => shoulder[edge] > 0)
          .map((edge) => `${edge} shoulder ${length(shoulder[edge])}`)),
  ].join(', ');
};
