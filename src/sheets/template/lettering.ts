import type { Box, Mark, Point, TextMark } from '../../drawing/drawing.ts';
import { ASCENT, CAP_HEIGHT, DESCENT, textWidth } from '../../drawing/textWidth.ts';

/** Direction of lines, degrees counter-clockwise: to the right with the first line topmost, or upward with the first line leftmost. */
export type Turn = Extract<TextMark['turn'], 0 | 90>;

/** One wording of a label: its length on a line at an em of `size` mm, and its marks. */
export interface Wording {
  width(size: number): number;
  marks(at: Point, size: number, turn: Turn): Mark[];
}

/** Text that a piece must show, in wordings from the fullest to the shortest. */
export type Label = readonly [Wording, ...Wording[]];

/** Least em on a sheet, mm: its capitals are 2.4 mm high. */
export const SMALL = 2.4 / CAP_HEIGHT;

/** Em of a piece's name where there is room, mm. */
const LARGE = 5;

/** Space between two labels on a line, ems. */
const SPACE = 0.9;

/** Width kept free at both ends of a line, mm. */
const INDENT = 1;

/** Width kept free beside every line of letters, mm: half the width of the boldest line beside it. */
export const AIR = 0.125;

/** Height of a line of text, from its highest accent to its lowest descender, ems. */
const ROOM = ASCENT + DESCENT;

const wording = (text: string, weight: TextMark['weight']): Wording => {
  // Choosing wordings measures some of them many times, and others never.
  let ems: number | undefined;
  const width = (size: number): number => {
    ems ??= textWidth(text, 1, weight);
    return ems * size;
  };
  return {
    width,
    marks: (at, size, turn) => [
      { kind: 'text', role: 'label', text, at, size, turn, anchor: 'start', weight },
    ],
  };
};

/** A label of text, from the fullest wording to the shortest. */
export const textLabel = (
  weight: TextMark['weight'],
  fullest: string,
  ...shorter: readonly string[]
): Label => [wording(fullest, weight), ...shorter.map((text) => wording(text, weight))];

/** The labels of one area: the piece's name, what it is, and its place on the wood. */
export interface Lettering {
  readonly name: readonly Label[];
  readonly about: readonly Label[];
  readonly place: readonly Label[];
}

/** An area for text, and the direction of its lines. */
export interface Area {
  readonly box: Box;
  readonly turn: Turn;
}

export interface LabelArea extends Area {
  /** Whether the name is on the first line; otherwise on the last. */
  readonly nameFirst: boolean;
}

/**
 * Sets labels in an area: on three lines or two with a large name, or all small, in full; where that does not fit, in
 * shorter wordings on as many lines as the area holds.
 * @param more further areas, for labels that do not fit in the first
 * @returns undefined where even the shortest wordings do not fit
 */
export const setLettering = (
  strip: LabelArea,
  { name, about, place }: Lettering,
  more: readonly LabelArea[] = [],
): Mark[] | undefined => {
  const three = [name, about, place];
  const two = [name, [...about, ...place]];
  return (
    setLines(strip, three, [LARGE, SMALL, SMALL], 0) ??
    setLines(strip, two, [LARGE, SMALL], 1) ??
    setLines(strip, three, [SMALL, SMALL, SMALL], 2) ??
    pourTogether(
      { name, about, place },
      [strip, ...more].flatMap((each) => smallLines(each)),
    )
  );
};

/** Longest tag that holds every label in full, mm; a longer tag uses shorter wordings. */
const LONGEST_TAG = 80;

/** Gap between the lines of a tag where every label fits in full, mm. */
const TAG_AIR = 1;

/** Length of a tag of a given breadth that holds every label, mm, for `setTagLettering`. */
export const tagLength = (breadth: number, lettering: Lettering): number => {
  for (let length = 20; ; length += 5) {
    const lines = smallLines({ box: { x0: 0, x1: length, y0: 0, y1: breadth }, turn: 0 });
    const written = length < LONGEST_TAG ? inFull(lettering, lines) : pourTogether(lettering, lines);
    if (written !== undefined) return length;
  }
};

export const setTagLettering = (area: Area, lettering: Lettering): Mark[] =>
  inFull(lettering, smallLines(area, TAG_AIR)) ?? pourTogether(lettering, smallLines(area)) ?? [];

/** A line for text. */
interface Line {
  readonly size: number;
  /** The text's baseline, at its start. */
  readonly start: Point;
  readonly turn: Turn;
  readonly length: number;
}

const breadthOf = ({ box, turn }: Area): number => (turn === 0 ? box.y1 - box.y0 : box.x1 - box.x0);

/** Lines with equal gaps over the area's breadth; undefined where the area is too narrow for them. */
const spread = (area: Area, sizes: readonly number[]): Line[] | undefined => {
  const { box, turn } = area;
  const taken = sizes.reduce((sum, size) => sum + size * ROOM, 0);
  const gap = (breadthOf(area) - taken) / (sizes.length + 1);
  if (gap < AIR) return undefined;
  let across = 0;
  return sizes.map((size) => {
    const offset = across + gap + size * ASCENT;
    across += gap + size * ROOM;
    return turn === 0
      ? { size, turn, start: [box.x0 + INDENT, box.y1 - offset], length: box.x1 - box.x0 - 2 * INDENT }
      : { size, turn, start: [box.x0 + offset, box.y0 + INDENT], length: box.y1 - box.y0 - 2 * INDENT };
  });
};

/** As many lines of the small size as an area holds, with gaps of at least `air` mm. */
const smallLines = (area: Area, air = AIR): Line[] => {
  const count = Math.floor((breadthOf(area) - air) / (SMALL * ROOM + air));
  return spread(area, new Array<number>(Math.max(0, count)).fill(SMALL)) ?? [];
};

const lineLength = (wordings: readonly Wording[], size: number): number =>
  wordings.reduce((sum, { width }) => sum + width(size), 0) + SPACE * size * Math.max(0, wordings.length - 1);

/** Each group on its own line, with at most `steps` shortenings a line. */
const setLines = (
  strip: LabelArea,
  groups: readonly (readonly Label[])[],
  sizes: readonly number[],
  steps: number,
): Mark[] | undefined => {
  const lines = spread(strip, strip.nameFirst ? sizes : sizes.toReversed());
  const ordered = strip.nameFirst ? groups : groups.toReversed();
  const held = lines?.map(({ size, length }, i) =>
    shorten(ordered[i] ?? [], (wordings) => lineLength(wordings, size) <= length, steps),
  );
  return held?.every((wordings) => wordings !== undefined)
    ? lines?.flatMap((line, i) => setLine(line, held[i] ?? []))
    : undefined;
};

const setLine = ({ size, start: [x, y], turn }: Omit<Line, 'length'>, held: readonly Wording[]): Mark[] => {
  let along = 0;
  return held.flatMap(({ width, marks }) => {
    const at: Point = turn === 0 ? [x + along, y] : [x, y + along];
    along += width(size) + SPACE * size;
    return marks(at, size, turn);
  });
};

/** Labels poured into lines, those of the name side by side; where that does not fit, each on its own. */
const pourTogether = ({ name, about, place }: Lettering, lines: readonly Line[]): Mark[] | undefined =>
  pour([...together(name), ...about, ...place], lines) ?? pour([...name, ...about, ...place], lines);

/** Labels of one line joined into one: each wording of the first, with all the others in full. */
const together = ([first, ...others]: readonly Label[]): Label[] => {
  if (first === undefined) return [];
  const rest = others.map(([fullest]) => fullest);
  const [fullest, ...shorter] = first.map((wording): Wording => {
    const held = [wording, ...rest];
    return {
      width: (size) => lineLength(held, size),
      marks: (start, size, turn) => setLine({ size, start, turn }, held),
    };
  });
  return fullest === undefined ? [] : [[fullest, ...shorter]];
};

/** Each label on the first line with room for it, in the fullest wordings that fit. */
const pour = (facts: readonly Label[], lines: readonly Line[]): Mark[] | undefined => {
  const chosen = shorten(facts, (held) => fill(held, lines) !== undefined);
  return chosen && set(chosen, lines);
};

/** Each label on the first line with room for it, in full, the name beside its letter. */
const inFull = ({ name, about, place }: Lettering, lines: readonly Line[]): Mark[] | undefined =>
  set(
    [...together(name), ...about, ...place].map(([fullest]) => fullest),
    lines,
  );

const set = (wordings: readonly Wording[], lines: readonly Line[]): Mark[] | undefined =>
  fill(wordings, lines)?.flatMap((held, i) => (lines[i] ? setLine(lines[i], held) : []));

const fill = (wordings: readonly Wording[], lines: readonly Line[]): Wording[][] | undefined => {
  const filled: Wording[][] = lines.map(() => []);
  for (const next of wordings) {
    const line = filled.find((held, i) => lineLength([...held, next], SMALL) <= (lines[i]?.length ?? 0));
    if (line === undefined) return undefined;
    line.push(next);
  }
  return filled;
};

/** The fullest wordings that fit. Each step, at most `steps` of them, shortens the label that saves the most. */
const shorten = (
  facts: readonly Label[],
  fits: (wordings: readonly Wording[]) => boolean,
  steps = Number.POSITIVE_INFINITY,
): readonly Wording[] | undefined => {
  const levels = facts.map(() => 0);
  for (let step = 0; ; step++) {
    const chosen = facts.map((fact, i) => fact[levels[i] ?? 0] ?? fact[0]);
    if (fits(chosen)) return chosen;
    let [widest, level, saving] = [-1, 0, 0];
    for (const [i, fact] of facts.entries()) {
      const width = chosen[i]?.width(SMALL) ?? 0;
      // A short name has wordings as long as itself; they save nothing.
      const next = fact.findIndex((each, k) => k > (levels[i] ?? 0) && each.width(SMALL) < width);
      const saved = width - (fact[next]?.width(SMALL) ?? width);
      if (saved > saving) [widest, level, saving] = [i, next, saved];
    }
    if (widest < 0 || step >= steps) return undefined;
    levels[widest] = level;
  }
};
