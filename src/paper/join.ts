import type { Box, Mark, Path, Point, TextMark } from '../drawing/drawing.ts';
import { polygon, stroke } from '../drawing/shapes.ts';
import { textBox } from '../drawing/textBox.ts';
import { ASCENT, DESCENT, textWidth } from '../drawing/textWidth.ts';
import { formatLength, formatNumber } from '../units/formatLength.ts';
import type { Notation } from '../units/notation.ts';
import { WORDS } from './frame.ts';
import { isClear, type Obstacles, obstaclesIn } from './labelCollision.ts';
import { CLEAR_OF_SPLITS } from './piece.ts';
import { CROSS } from './split.ts';

/** A line along which two parts of a piece are taped together, in the piece's mm. */
export interface Join {
  /** Across `y` runs a level line, across `x` an upright one. */
  readonly axis: 'x' | 'y';
  readonly at: number;
  /** Its ends along the other axis. */
  readonly from: number;
  readonly to: number;
  /** How far the lower or left part runs on under its neighbour. */
  readonly tab: number;
  /** The length of the whole piece across the join. */
  readonly whole: number;
  /** Unique in the set; it stands on both sides of the line. */
  readonly letter: string;
}

/** Which of the two parts: the lower or left one, which has the tab, or the one that is laid over it. */
export type Side = 'tabbed' | 'laidOver';

/** How far words stand off the line. */
const CLEARANCE = 1;

/** How far off its line a join looks for a place for its check. */
const REACH = 120;

/** A place on the join: mm along it, and mm across it, which count up or to the right. */
const pointAt = ({ axis, at }: Join, along: number, across: number): Point =>
  axis === 'y' ? [along, at + across] : [at + across, along];

/** Steps along the join, from the place wished for outward. */
const stepsFrom = (wish: number, least: number, most: number): number[] => {
  const steps = [wish];
  for (let off = 1; off <= most - least; off += 1) steps.push(wish - off, wish + off);
  return steps.filter((at) => at >= least && at <= most);
};

/** What the words of a join may not cover, and what they had better not: waste, which a white ground can hide. */
interface Ground {
  readonly all: Obstacles;
  readonly butWaste: Obstacles;
}

const groundOf = (region: Box, marks: readonly Mark[]): Ground => ({
  all: obstaclesIn(region, marks),
  butWaste: obstaclesIn(
    region,
    marks.filter(({ role }) => role !== 'waste'),
  ),
});

const grown = ({ x0, y0, x1, y1 }: Box, by: number): Box => ({
  x0: x0 - by,
  y0: y0 - by,
  x1: x1 + by,
  y1: y1 + by,
});

const AROUND_WORDS = 0.3;

const onWhite = (text: TextMark): Mark[] => {
  const { x0, y0, x1, y1 } = grown(textBox(text), AROUND_WORDS);
  const corners: readonly Point[] = [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
  return [{ kind: 'fill', role: 'label', tone: 1, paths: [polygon(corners)] }, text];
};

/** The first of some places whose texts are clear of everything, or else of all but waste. */
const firstClear = <T>(places: readonly T[], boxesOf: (place: T) => readonly Box[], ground: Ground) => {
  const clearOf = (obstacles: Obstacles) => (place: T) =>
    boxesOf(place).every((box) => isClear(box, obstacles));
  return places.find(clearOf(ground.all)) ?? places.find(clearOf(ground.butWaste));
};

/** Where along the join its two register crosses stand: a fifth from its ends, or the nearest place clear of lines. */
const crossPlaces = (join: Join, ground: Ground): readonly number[] => {
  const { from, to } = join;
  const length = to - from;
  return [
    { wish: from + length / 5, least: from + CROSS, most: from + length / 2 - CROSS },
    { wish: to - length / 5, least: from + length / 2 + CROSS, most: to - CROSS },
  ].map(
    ({ wish, least, most }) =>
      firstClear(stepsFrom(wish, least, most), (along) => [crossBox(join, along)], ground) ?? wish,
  );
};

const crossBox = (join: Join, along: number): Box => {
  const [x, y] = pointAt(join, along, 0);
  return grown({ x0: x, y0: y, x1: x, y1: y }, CROSS + AROUND_WORDS);
};

const cross = (join: Join, along: number): Path[] => {
  const [x, y] = pointAt(join, along, 0);
  return [
    {
      points: [
        [x - CROSS, y],
        [x + CROSS, y],
      ],
    },
    {
      points: [
        [x, y - CROSS],
        [x, y + CROSS],
      ],
    },
  ];
};

/** A word along the join, on one side of it. */
const wordBeside = (
  join: Join,
  side: Side,
  text: string,
  along: number,
  off: number,
  weight: TextMark['weight'],
): TextMark => {
  // Along an upright line words run upward, so their tops point to the left.
  const topsAway = (side === 'laidOver') === (join.axis === 'y');
  const distance = off + (topsAway ? DESCENT : ASCENT) * WORDS;
  return {
    kind: 'text',
    role: 'label',
    text,
    at: pointAt(join, along, side === 'laidOver' ? distance : -distance),
    size: WORDS,
    turn: join.axis === 'y' ? 0 : 90,
    anchor: 'middle',
    weight,
  };
};

/** The join's letter, the same distance along it on both sides. */
const lettersOf = (
  join: Join,
  crosses: readonly number[],
  ground: Ground,
): Readonly<Record<Side, TextMark>> => {
  const { from, to, letter } = join;
  const taken = crosses.map((along) => crossBox(join, along));
  const words = [`join ${letter}`, letter].flatMap((text) => {
    const half = textWidth(text, WORDS, 'bold') / 2;
    return stepsFrom((from + to) / 2, from + half + CLEARANCE, to - half - CLEARANCE).map((along) => ({
      tabbed: wordBeside(join, 'tabbed', text, along, CLEARANCE, 'bold'),
      laidOver: wordBeside(join, 'laidOver', text, along, CLEARANCE, 'bold'),
    }));
  });
  const clear = firstClear(
    words,
    ({ tabbed, laidOver }) => [tabbed, laidOver].map((word) => grown(textBox(word), AROUND_WORDS)),
    { all: withBoxes(ground.all, taken), butWaste: withBoxes(ground.butWaste, taken) },
  );
  return (
    clear ?? {
      tabbed: wordBeside(join, 'tabbed', letter, (from + to) / 2, CLEARANCE, 'bold'),
      laidOver: wordBeside(join, 'laidOver', letter, (from + to) / 2, CLEARANCE, 'bold'),
    }
  );
};

const withBoxes = ({ lines, boxes }: Obstacles, more: readonly Box[]): Obstacles => ({
  lines,
  boxes: [...boxes, ...more],
});

/** In words as full as there is room for; then the bare length; on the narrowest strips its number alone. */
const checkWordings = ({ axis, whole }: Join, unit: Notation): readonly (readonly string[])[] => {
  const length = formatLength(whole, unit);
  const full =
    axis === 'y'
      ? [
          `when taped: ${length} from the reference edge to the far end`,
          `when taped: ${length} from end to end`,
          `taped: ${length}`,
        ]
      : [`when taped: ${length} from side to side`, `taped: ${length}`];
  return [full, [length], [formatNumber(whole, unit)]];
};

const HEIGHT = (ASCENT + DESCENT) * WORDS;

const checkText = (text: string, turn: 0 | 90, at: Point, size = WORDS): TextMark => ({
  kind: 'text',
  role: 'label',
  text,
  at,
  size,
  turn,
  anchor: 'start',
  weight: 'regular',
});

/** Numbers from the greatest down. */
const downward = (most: number, least: number, step: number): number[] =>
  Array.from({ length: Math.max(0, Math.floor((most - least) / step) + 1) }, (_, i) => most - i * step);

/** Where a text may stand: its mark, and what it takes with the room that it needs. */
interface TextPlace {
  readonly mark: TextMark;
  readonly taken: Box;
}

const movedBy = ({ mark, taken }: TextPlace, dx: number, dy: number): TextPlace => ({
  mark: { ...mark, at: [mark.at[0] + dx, mark.at[1] + dy] },
  taken: { x0: taken.x0 + dx, y0: taken.y0 + dy, x1: taken.x1 + dx, y1: taken.y1 + dy },
});

/** Everywhere in a region that a text may stand, level and upright, from its upper right. */
function* placesIn({ x0, y0, x1, y1 }: Box, text: string): Generator<TextPlace> {
  for (const turn of [0, 90] as const) {
    const mark = checkText(text, turn, [0, 0]);
    const box = textBox(mark);
    const first = { mark, taken: grown(box, AROUND_WORDS) };
    for (const dy of downward(y1 - box.y1, y0 - box.y0, 1))
      for (const dx of downward(x1 - box.x1, x0 - box.x0, 1)) yield movedBy(first, dx, dy);
  }
}

/** Small letters stand this far off the lines that run along them, or a little more. */
const BESIDE_LINES = 0.12;

/** Everywhere in a region that a text may go on with an upright line of small letters, from the top. */
function* placesOnLines(region: Box, text: string, marks: readonly Mark[]): Generator<TextPlace> {
  for (const line of marks) {
    if (line.kind !== 'text' || line.turn !== 90 || line.size > WORDS) continue;
    const mark = checkText(text, 90, [line.at[0], 0], line.size);
    const box = textBox(mark);
    if (box.x0 < region.x0 || box.x1 > region.x1) continue;
    const beside = grown(box, BESIDE_LINES);
    const taken = { ...beside, y0: box.y0 - CLEARANCE, y1: box.y1 + CLEARANCE };
    for (const dy of downward(region.y1 - box.y1, region.y0 - box.y0, 1))
      yield movedBy({ mark, taken }, 0, dy);
  }
}

const textInQuiet = (
  quiet: Box,
  wordings: readonly string[],
  marks: readonly Mark[],
  obstacles: Obstacles,
): TextMark | undefined => {
  for (const text of wordings)
    for (const places of [placesIn(quiet, text), placesOnLines(quiet, text, marks)])
      for (const { mark, taken } of places) if (isClear(taken, obstacles)) return mark;
  return undefined;
};

/**
 * The length to measure when two parts are taped, for the part with the tab: where there is a clear place in `quiet`, or
 * else on the tab, or else over waste; nothing on strips that are too narrow for the number.
 * @param marks the whole piece's, and any check that stands there already
 */
export const checkMarks = (join: Join, quiet: Box, marks: readonly Mark[], unit: Notation): Mark[] => {
  const { axis, at, from, to, tab } = join;
  const near: Box =
    axis === 'y'
      ? { ...quiet, y0: Math.max(quiet.y0, at - REACH) }
      : { ...quiet, x0: Math.max(quiet.x0, at - REACH) };
  const ground = groundOf(near, marks);
  const room = to - from - 2 * CLEARANCE;
  const onTab = (text: string): Mark[] =>
    onWhite(wordBeside(join, 'laidOver', text, (from + to) / 2, (tab - HEIGHT) / 2, 'regular'));
  const groups = checkWordings(join, unit);
  for (const wordings of groups) {
    const clear = textInQuiet(near, wordings, marks, ground.all);
    if (clear !== undefined) return [clear];
    const held = wordings.find((text) => textWidth(text, WORDS, 'regular') <= room);
    if (held !== undefined) return onTab(held);
    const overWaste = textInQuiet(near, wordings, marks, ground.butWaste);
    if (overWaste !== undefined) return onWhite(overWaste);
  }
  // A number cut short would be another number.
  return [];
};

/** Register crosses and the join's letter for one of its parts; they match its neighbour's. */
export const joinMarks = (join: Join, side: Side, marks: readonly Mark[]): Mark[] => {
  const { axis, at, from, to } = join;
  const line: Box =
    axis === 'y' ? { x0: from, y0: at, x1: to, y1: at } : { x0: at, y0: from, x1: at, y1: to };
  const ground = groundOf(grown(line, CLEAR_OF_SPLITS), marks);
  const crosses = crossPlaces(join, ground);
  const letter = lettersOf(join, crosses, ground)[side];
  // On the narrowest strips the letter takes their place, and the strip's own edges register it.
  const alongLetter = axis === 'y' ? letter.at[0] : letter.at[1];
  const taken = textWidth(letter.text, WORDS, 'bold') / 2 + AROUND_WORDS;
  const free = crosses.filter((along) => Math.abs(along - alongLetter) > taken);
  return [
    stroke(
      'scale',
      'thin',
      free.flatMap((along) => cross(join, along)),
    ),
    ...(isClear(grown(textBox(letter), AROUND_WORDS), ground.all) ? [letter] : onWhite(letter)),
  ];
};
