import type { StrokeMark, TextMark } from '../../drawing/drawing.ts';
import { hatch } from '../../drawing/hatch.ts';
import { line, rectangle, stroke } from '../../drawing/shapes.ts';
import { type Interval, type Joint, jointSpan, tailParts } from '../../joint/joint.ts';
import { betweenSplits } from '../../paper/piece.ts';
import { formatLength } from '../../units/formatLength.ts';
import { dividedAt } from './band.ts';
import { edgeMark } from './edgeMark.ts';
import { type Label, type Lettering, textLabel } from './lettering.ts';
import { holdsWord, type RodBreadth, rodOutline, rodStrip, rodWidth } from './rodStrip.ts';
import type { TemplatePiece } from './templatePiece.ts';
import { edgeLabel, letteringOf, type Titles, tapedUp } from './titles.ts';
import { centredWord, hatchFreeBox } from './word.ts';

const MARKS = 7;
const BREADTH: RodBreadth = { marks: MARKS, words: 12 };
const WIDTH = rodWidth(BREADTH);

/**
 * A corner's rod: a strip with every mark at full size, to knife from its edge instead of gluing on a template. The
 * tails' tips are marked at its left edge and their bases at its right, the tail board's waste hatched between them.
 * @param board titles of the tail board
 */
export const rod = (name: string, joint: Joint, board: Titles, pinBoard: OtherBoard): TemplatePiece => {
  const height = joint.width;
  const titles = { ...board, part: `rod, ${board.part}` };
  const named = hasSideWords(joint);
  const edges = named ? [] : EDGES;
  const lettering = letteringOfRod(titles, [...notes(board, pinBoard), ...edges]);
  // A short part of a long rod need not repeat what both boards take from it.
  const short = letteringOfRod(titles, edges);
  const { top, letter } = rodStrip(BREADTH, height, lettering, short);
  return {
    name,
    title: `${titles.item}, ${titles.part}, corner ${titles.corner}`,
    caption: [titles.item, `${titles.part} · ${titles.corner}`, titles.end],
    itemName: titles,
    signs: ['waste', 'edge', 'tips', 'bases'],
    count: titles.count,
    copies: 1,
    width: WIDTH,
    height: top,
    overhang: 1,
    splittable: { x: [], y: dividedAt(joint) },
    taped: { y: tapedUp(titles, height) },
    lines: () => lineMarks(joint, board.jointFrom, top),
    draw: (splits) => {
      const parts = betweenSplits(splits.y, height);
      const words = columnsOf(joint).flatMap((column) =>
        parts.flatMap((part) => columnWords(column, part, named)),
      );
      return {
        box: { x0: -1, y0: -1, x1: WIDTH + 1, y1: top + 1 },
        marks: [
          wasteMarks(joint, words),
          ...lineMarks(joint, board.jointFrom, top),
          edgeMark(WIDTH / 2),
          ...words,
          ...letter(parts),
        ],
      };
    },
  };
};

/** The pin board of a rod's corner. */
interface OtherBoard {
  readonly part: string;
  /** The edge that it is marked from where that is not its reference edge. */
  readonly edge?: Titles['edge'];
}

const letteringOfRod = (titles: Titles, notes: readonly Label[]): Lettering => {
  const { name, about } = letteringOf(titles, 'end', 'all');
  return { name, about, place: [edgeLabel(titles, '←'), ...notes] };
};

/** What the hatching is on either board, and where the pin board is laid that does not begin at the rod's end. */
const notes = ({ part, jointFrom, units }: Titles, other: OtherBoard): Label[] => {
  const up = formatLength(jointFrom, units);
  const [edge] = other.edge ?? [];
  return [
    textLabel('regular', `hatched: waste of the ${part}`, 'hatched: waste'),
    textLabel('regular', `on the ${other.part} the tails are waste`, `${other.part}: tails are waste`),
    ...(jointFrom > 0
      ? [
          textLabel(
            'regular',
            `${other.part} starts at the line ${up} above`,
            `${other.part} starts ${up} above`,
          ),
        ]
      : []),
    ...(edge === undefined ? [] : [textLabel('regular', `${other.part} from the ${edge}`)]),
  ];
};

/** Names of the rod's edges. The letters run upward, so an arrow up in the text points to the left. */
const EDGES = [textLabel('bold', '↑ TIPS'), textLabel('bold', '↓ BASES')];

/** The marks at one edge of a rod, mm from it and from its reference edge. */
interface Column {
  readonly name: 'TIPS' | 'BASES';
  readonly x0: number;
  readonly tails: readonly Interval[];
  readonly waste: readonly Interval[];
  /** Where the tail board is whole, below its joint. */
  readonly below: Interval;
}

const columnsOf = (joint: Joint): readonly [Column, Column] => {
  const { tails, pins, smallPins = [] } = joint;
  return [
    {
      name: 'TIPS',
      x0: 0,
      tails: tailParts(joint, 'tip'),
      waste: [...pins, ...smallPins].map(({ narrow }) => narrow),
      below: [0, pins[0]?.narrow[0] ?? 0],
    },
    {
      name: 'BASES',
      x0: WIDTH - MARKS,
      tails: tails.map(({ base }) => base),
      waste: pins.map(({ wide }) => wide),
      below: [0, pins[0]?.wide[0] ?? 0],
    },
  ];
};

/** Where the boards are mitred right through, from there to their edges. */
const shouldersOf = (joint: Joint): number[] => jointSpan(joint).filter((u) => u > 0 && u < joint.width);

/** @param jointFrom height of the joint's lower edge, which is marked where it is not the rod's own */
const lineMarks = (joint: Joint, jointFrom: number, top: number): StrokeMark[] => [
  stroke(
    'square',
    'saw',
    columnsOf(joint).flatMap(({ x0, tails }) =>
      [...(jointFrom > 0 ? [jointFrom] : []), ...shouldersOf(joint), ...tails.flat()].map((u) =>
        line(x0, u, x0 + MARKS, u),
      ),
    ),
  ),
  ...rodOutline(BREADTH, joint.width, top),
];

/** The tail board's waste, hatched as on its template. */
const wasteMarks = (joint: Joint, words: readonly TextMark[]): StrokeMark => {
  const clear = words.map(hatchFreeBox);
  return stroke(
    'waste',
    'hatch',
    columnsOf(joint).flatMap(({ x0, waste }) =>
      waste.flatMap(([from, to]) => hatch(rectangle(x0, from, x0 + MARKS, to).points, clear)),
    ),
  );
};

/** Whether both edges of an undivided rod can be named beside their marks. */
const hasSideWords = (joint: Joint): boolean =>
  columnsOf(joint).every(({ name, tails }) => tails.some((tail) => holdsWord(tail, name)));

/** Words beside a column's marks on one part: its name in the first tail with room for it, and what the others are. */
const columnWords = (
  { name, x0, tails, waste, below }: Column,
  part: Interval,
  named: boolean,
): TextMark[] => {
  const onPart = ([from, to]: Interval): Interval => [Math.max(from, part[0]), Math.min(to, part[1])];
  const rooms = tails.map(onPart);
  const first = named ? rooms.find((room) => holdsWord(room, name)) : undefined;
  const words = [
    ...rooms.map((room) => [room, room === first ? name : 'TAIL'] as const),
    ...waste.map((room) => [onPart(room), 'WASTE'] as const),
    [onPart(below), 'NO TAIL'] as const,
  ];
  return words
    .filter(([room, word]) => holdsWord(room, word))
    .map(([[from, to], word]) => centredWord(word, 'bold', 90, [x0 + MARKS / 2, (from + to) / 2]));
};
