import type { Box, Mark, Path, Point, TextMark } from '../drawing/drawing.ts';
import { line, rectangle, stroke } from '../drawing/shapes.ts';
import { textBox } from '../drawing/textBox.ts';
import { ASCENT, DESCENT, textWidth } from '../drawing/textWidth.ts';
import { formatLength, formatNumber } from '../units/formatLength.ts';
import type { Notation } from '../units/notation.ts';
import { FRAME_EM } from './frame.ts';
import { isClear, type Obstacles, obstaclesIn } from './labelCollision.ts';
import type { TapedLength } from './piece.ts';
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
  /** The length across the join to check; absent where there are no marks to measure between. */
  readonly taped?: TapedLength;
  /** Unique in the set, and no corner's. */
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

/** Positions of the two register crosses along the join: a fifth from its ends, or the nearest place clear of lines; none on the words. */
const crossPlaces = (join: Join, ground: Ground, words: readonly Box[]): readonly number[] => {
  const { from, to } = join;
  const length = to - from;
  const besideWords = { all: withBoxes(ground.all, words), butWaste: withBoxes(ground.butWaste, words) };
  return [
    { wish: from + length / 5, least: from + CROSS, most: from + length / 2 - CROSS },
    { wish: to - length / 5, least: from + length / 2 + CROSS, most: to - CROSS },
  ]
    .map(
      ({ wish, least, most }) =>
        firstClear(stepsFrom(wish, least, most), (along) => [crossBox(join, along)], besideWords) ?? wish,
    )
    .filter((along) => isClear(crossBox(join, along), { lines: [], boxes: words }));
};

const crossBox = (join: Join, along: number): Box => {
  const [x, y] = pointAt(join, along, 0);
  return grown({ x0: x, y0: y, x1: x, y1: y }, CROSS + AROUND_WORDS);
};

const cross = (join: Join, along: number): Path[] => {
  const [x, y] = pointAt(join, along, 0);
  return [line(x - CROSS, y, x + CROSS, y), line(x, y - CROSS, x, y + CROSS)];
};

/** A text along the join, on one side of it. */
const textBeside = (
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

/** A text away from the join, on one side of it. */
const textAcross = (join: Join, side: Side, text: string, along: number): TextMark => {
  const middle = ((ASCENT - DESCENT) / 2) * FRAME_EM;
  return {
    kind: 'text',
    role: 'label',
    text,
    // Upright text has its top to the left.
    at: pointAt(
      join,
      join.axis === 'y' ? along + middle : along - middle,
      side === 'covering' ? CLEARANCE : -CLEARANCE,
    ),
    size: FRAME_EM,
    turn: join.axis === 'y' ? 90 : 0,
    anchor: side === 'covering' ? 'start' : 'end',
    weight: 'bold',
  };
};

type OnBothSides = Readonly<Record<Side, TextMark>>;

/**
 * The join's name on both sides, at the same distance along it: beside the line where there is room, or else away from it;
 * the letter alone where the word would hide a line, which only happens on the end grain of thin boards.
 */
const namesOf = (join: Join, word: string, ground: Ground): OnBothSides => {
  const { from, to, letter } = join;
  const both = (set: (side: Side) => TextMark): OnBothSides => ({
    tabbed: set('tabbed'),
    covering: set('covering'),
  });
  const places = (half: number): number[] =>
    stepsFrom((from + to) / 2, from + half + AROUND_WORDS, to - half - AROUND_WORDS);
  const beside = (text: string, along: number) =>
    both((side) => textBeside(join, side, text, along, CLEARANCE, 'bold'));
  const across = (text: string, along: number) => both((side) => textAcross(join, side, text, along));
  const clearOf = (names: readonly OnBothSides[]) =>
    firstClear(names, ({ tabbed, covering }) => [boxOf(tabbed), boxOf(covering)], ground);
  const halfOf = (text: string) => textWidth(text, FRAME_EM, 'bold') / 2;
  return (
    clearOf([
      ...places(halfOf(word)).map((along) => beside(word, along)),
      ...places(HEIGHT / 2).map((along) => across(word, along)),
    ]) ??
    clearOf(places(halfOf(letter)).map((along) => beside(letter, along))) ??
    beside(letter, (from + to) / 2)
  );
};

const boxOf = (text: TextMark): Box => grown(textBox(text), AROUND_WORDS);

const withBoxes = ({ lines, boxes }: Obstacles, more: readonly Box[]): Obstacles => ({
  lines,
  boxes: [...boxes, ...more],
});
/** Wordings of the check, the fullest first; on the narrowest pieces it is the length alone, or its number. */
const checkWordings = ({ length, between }: TapedLength, unit: Notation): string[] => {
  const shown = formatLength(length, unit);
  return [
    `when taped: ${between[0]} ${shown}`,
    ...between.map((marks) => `taped, ${marks}: ${shown}`),
    `taped: ${shown}`,
    shown,
    formatNumber(length, unit),
  ];
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
  text: string,
  marks: readonly Mark[],
  obstacles: Obstacles,
): TextMark | undefined => {
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
  const { axis, at, from, to, tab, taped } = join;
  if (taped === undefined) return [];
  const near: Box =
    axis === 'y'
      ? { ...free, y0: Math.max(free.y0, at - REACH) }
      : { ...free, x0: Math.max(free.x0, at - REACH) };
  const ground = groundOf(near, marks);
  const room = to - from - 2 * CLEARANCE;
  const onTab = (text: string): Mark[] =>
    onWhite(textBeside(join, 'covering', text, (from + to) / 2, (tab - HEIGHT) / 2, 'regular'));
  for (const text of checkWordings(taped, unit)) {
    const clear = textInFreeArea(near, text, marks, ground.all);
    if (clear !== undefined) return [clear];
    if (textWidth(text, FRAME_EM, 'regular') <= room) return onTab(text);
    const overWaste = textInFreeArea(near, text, marks, ground.butWaste);
    if (overWaste !== undefined) return onWhite(overWaste);
  }
  // A number cut short would be a wrong number.
  return [];
};

/** Register crosses and the join's name for one part; they match those of its neighbour. */
export const joinMarks = (join: Join, side: Side, marks: readonly Mark[]): Mark[] => {
  const { axis, at, from, to } = join;
  const line: Box =
    axis === 'y' ? { x0: from, y0: at, x1: to, y1: at } : { x0: at, y0: from, x1: at, y1: to };
  const name = `join ${join.letter}`;
  const reach = CLEARANCE + textWidth(name, FRAME_EM, 'bold') + AROUND_WORDS;
  const ground = groundOf(grown(line, reach), marks);
  const names = namesOf(join, name, ground);
  // On the narrowest pieces the name replaces the crosses, and the piece's own edges register it.
  const crosses = crossPlaces(join, ground, [boxOf(names.tabbed), boxOf(names.covering)]);
  return [
    stroke(
      'scale',
      'thin',
      crosses.flatMap((along) => cross(join, along)),
    ),
    ...(isClear(boxOf(names[side]), ground.all) ? [names[side]] : onWhite(names[side])),
  ];
};
