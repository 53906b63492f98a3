import type { Box, Mark, Path, Point, TextMark } from '../drawing/drawing.ts';
import { line, rectangle, stroke } from '../drawing/shapes.ts';
import { textBox } from '../drawing/textBox.ts';
import { ASCENT, DESCENT, textWidth } from '../drawing/textWidth.ts';
import { formatLength, formatNumber } from '../units/formatLength.ts';
import type { Notation } from '../units/notation.ts';
import { FRAME_EM } from './frame.ts';
import { isClear, type Obstacles, obstaclesIn } from './labelCollision.ts';
import { CLEAR_OF_SPLITS } from './piece.ts';
import { CROSS } from './split.ts';

/** A line along which two parts of a piece are taped together, mm on the piece. */
export interface Join {
  /** The axis that the line crosses: `y` for a level line, `x` for an upright one. */
  readonly axis: 'x' | 'y';
  readonly at: number;
  /** Its ends along the other axis. */
  readonly from: number;
  readonly to: number;
  /** Width of the tab of the lower or left part, under its neighbour. */
  readonly tab: number;
  /** The length of the whole piece across the join. */
  readonly whole: number;
  /** Unique in the set; on both sides of the line. */
  readonly letter: string;
}

/** Which of the two parts: the lower or left one, which has the tab, or the one that covers it. */
export type Side = 'tabbed' | 'covering';

/** Distance of words from the line, mm. */
const CLEARANCE = 1;

/** Greatest distance of a join's check from its line, mm. */
const REACH = 120;

/** The point `along` mm along the join and `across` mm across it, upward or to the right. */
const pointAt = ({ axis, at }: Join, along: number, across: number): Point =>
  axis === 'y' ? [along, at + across] : [at + across, along];

/** Positions along the join in steps of 1 mm, from the preferred one outward. */
const stepsFrom = (wish: number, least: number, most: number): number[] => {
  const steps = [wish];
  for (let off = 1; off <= most - least; off += 1) steps.push(wish - off, wish + off);
  return steps.filter((at) => at >= least && at <= most);
};

/** Obstacles for the words of a join: all, and those other than waste, which a white ground can hide. */
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
  return [{ kind: 'fill', role: 'label', tone: 1, paths: [rectangle(x0, y0, x1, y1)] }, text];
};

/** The first place whose texts are clear of all obstacles, or else of all but waste. */
const firstClear = <T>(places: readonly T[], boxesOf: (place: T) => readonly Box[], ground: Ground) => {
  const clearOf = (obstacles: Obstacles) => (place: T) =>
    boxesOf(place).every((box) => isClear(box, obstacles));
  return places.find(clearOf(ground.all)) ?? places.find(clearOf(ground.butWaste));
};

/** Positions of the two register crosses along the join: a fifth from its ends, or the nearest place clear of lines. */
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
  return [line(x - CROSS, y, x + CROSS, y), line(x, y - CROSS, x, y + CROSS)];
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
  // Along an upright line, text runs upward, so its top is to the left.
  const topsAway = (side === 'covering') === (join.axis === 'y');
  const distance = off + (topsAway ? DESCENT : ASCENT) * FRAME_EM;
  return {
    kind: 'text',
    role: 'label',
    text,
    at: pointAt(join, along, side === 'covering' ? distance : -distance),
    size: FRAME_EM,
    turn: join.axis === 'y' ? 0 : 90,
    anchor: 'middle',
    weight,
  };
};

/** The join's letter on both sides, at the same distance along it. */
const lettersOf = (
  join: Join,
  crosses: readonly number[],
  ground: Ground,
): Readonly<Record<Side, TextMark>> => {
  const { from, to, letter } = join;
  const taken = crosses.map((along) => crossBox(join, along));
  const words = [`join ${letter}`, letter].flatMap((text) => {
    const half = textWidth(text, FRAME_EM, 'bold') / 2;
    return stepsFrom((from + to) / 2, from + half + CLEARANCE, to - half - CLEARANCE).map((along) => ({
      tabbed: wordBeside(join, 'tabbed', text, along, CLEARANCE, 'bold'),
      covering: wordBeside(join, 'covering', text, along, CLEARANCE, 'bold'),
    }));
  });
  const clear = firstClear(
    words,
    ({ tabbed, covering }) => [tabbed, covering].map((word) => grown(textBox(word), AROUND_WORDS)),
    { all: withBoxes(ground.all, taken), butWaste: withBoxes(ground.butWaste, taken) },
  );
  return (
    clear ?? {
      tabbed: wordBeside(join, 'tabbed', letter, (from + to) / 2, CLEARANCE, 'bold'),
      covering: wordBeside(join, 'covering', letter, (from + to) / 2, CLEARANCE, 'bold'),
    }
  );
};

const withBoxes = ({ lines, boxes }: Obstacles, more: readonly Box[]): Obstacles => ({
  lines,
  boxes: [...boxes, ...more],
});

/** Wordings of the check in groups: sentences, then the length alone, then its number alone for the narrowest pieces. */
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

const HEIGHT = (ASCENT + DESCENT) * FRAME_EM;

const checkText = (text: string, turn: 0 | 90, at: Point, size = FRAME_EM): TextMark => ({
  kind: 'text',
  role: 'label',
  text,
  at,
  size,
  turn,
  anchor: 'start',
  weight: 'regular',
});

/** Numbers from `most` down to `least`. */
const downward = (most: number, least: number, step: number): number[] =>
  Array.from({ length: Math.max(0, Math.floor((most - least) / step) + 1) }, (_, i) => most - i * step);

/** A place for a text: its mark, and the box that it needs clear. */
interface TextPlace {
  readonly mark: TextMark;
  readonly taken: Box;
}

const movedBy = ({ mark, taken }: TextPlace, dx: number, dy: number): TextPlace => ({
  mark: { ...mark, at: [mark.at[0] + dx, mark.at[1] + dy] },
  taken: { x0: taken.x0 + dx, y0: taken.y0 + dy, x1: taken.x1 + dx, y1: taken.y1 + dy },
});

/** All places for a text in a region, level and then upright, from the upper right. */
function* placesIn({ x0, y0, x1, y1 }: Box, text: string): Generator<TextPlace> {
  for (const turn of [0, 90] as const) {
    const mark = checkText(text, turn, [0, 0]);
    const box = textBox(mark);
    const first = { mark, taken: grown(box, AROUND_WORDS) };
    for (const dy of downward(y1 - box.y1, y0 - box.y0, 1))
      for (const dx of downward(x1 - box.x1, x0 - box.x0, 1)) yield movedBy(first, dx, dy);
  }
}

/** Least distance of small letters from the lines along them, mm. */
const BESIDE_LINES = 0.12;

/** All places for a text in line with an upright line of small letters, from the top of a region. */
function* placesOnLines(region: Box, text: string, marks: readonly Mark[]): Generator<TextPlace> {
  for (const line of marks) {
    if (line.kind !== 'text' || line.turn !== 90 || line.size > FRAME_EM) continue;
    const mark = checkText(text, 90, [line.at[0], 0], line.size);
    const box = textBox(mark);
    if (box.x0 < region.x0 || box.x1 > region.x1) continue;
    const beside = grown(box, BESIDE_LINES);
    const taken = { ...beside, y0: box.y0 - CLEARANCE, y1: box.y1 + CLEARANCE };
    for (const dy of downward(region.y1 - box.y1, region.y0 - box.y0, 1))
      yield movedBy({ mark, taken }, 0, dy);
  }
}

const textInFreeArea = (
  free: Box,
  wordings: readonly string[],
  marks: readonly Mark[],
  obstacles: Obstacles,
): TextMark | undefined => {
  for (const text of wordings)
    for (const places of [placesIn(free, text), placesOnLines(free, text, marks)])
      for (const { mark, taken } of places) if (isClear(taken, obstacles)) return mark;
  return undefined;
};

/**
 * The length to measure when two parts are taped, on the part with the tab: in a clear place in `free`, or else on the
 * tab, or else over waste; nothing on pieces too narrow for the number.
 * @param marks those of the whole piece, with any check already placed
 */
export const checkMarks = (join: Join, free: Box, marks: readonly Mark[], unit: Notation): Mark[] => {
  const { axis, at, from, to, tab } = join;
  const near: Box =
    axis === 'y'
      ? { ...free, y0: Math.max(free.y0, at - REACH) }
      : { ...free, x0: Math.max(free.x0, at - REACH) };
  const ground = groundOf(near, marks);
  const room = to - from - 2 * CLEARANCE;
  const onTab = (text: string): Mark[] =>
    onWhite(wordBeside(join, 'covering', text, (from + to) / 2, (tab - HEIGHT) / 2, 'regular'));
  const groups = checkWordings(join, unit);
  for (const wordings of groups) {
    const clear = textInFreeArea(near, wordings, marks, ground.all);
    if (clear !== undefined) return [clear];
    const held = wordings.find((text) => textWidth(text, FRAME_EM, 'regular') <= room);
    if (held !== undefined) return onTab(held);
    const overWaste = textInFreeArea(near, wordings, marks, ground.butWaste);
    if (overWaste !== undefined) return onWhite(overWaste);
  }
  // A number cut short would be a wrong number.
  return [];
};

/** Register crosses and the join's letter for one part; they match those of its neighbour. */
export const joinMarks = (join: Join, side: Side, marks: readonly Mark[]): Mark[] => {
  const { axis, at, from, to } = join;
  const line: Box =
    axis === 'y' ? { x0: from, y0: at, x1: to, y1: at } : { x0: at, y0: from, x1: at, y1: to };
  const ground = groundOf(grown(line, CLEAR_OF_SPLITS), marks);
  const crosses = crossPlaces(join, ground);
  const letter = lettersOf(join, crosses, ground)[side];
  // On the narrowest pieces the letter replaces the crosses, and the piece's own edges register it.
  const alongLetter = axis === 'y' ? letter.at[0] : letter.at[1];
  const taken = textWidth(letter.text, FRAME_EM, 'bold') / 2 + AROUND_WORDS;
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
