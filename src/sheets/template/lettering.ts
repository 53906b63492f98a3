import type { Box, Mark, Point, TextMark } from '../../drawing/drawing.ts';
import { ASCENT, CAP_HEIGHT, DESCENT, textWidth } from '../../drawing/textWidth.ts';

/** Lines run to the right, the first one topmost, or upward, the first one leftmost. */
export type Turn = Extract<TextMark['turn'], 0 | 90>;

/** One way to put a fact on a line: how much of the line it takes at an em, and its marks. */
export interface Wording {
  width(size: number): number;
  marks(at: Point, size: number, turn: Turn): Mark[];
}

/** A fact that must stand on the piece, in its wordings from the fullest to the shortest. */
export type Label = readonly [Wording, ...Wording[]];

/** The least em on a sheet, in mm: its capitals are 2.4 mm high. */
export const SMALL = 2.4 / CAP_HEIGHT;

/** The em of a piece's name where there is room. */
const LARGE = 5;

/** Between two facts on a line, in ems. */
const SPACE = 0.9;

/** Left free at both ends of a line, in mm. */
const INDENT = 1;

/** Left free beside every line of letters, in mm: half of the boldest line that may run along it. */
export const AIR = 0.125;

/** What a line of text takes across, from its highest accent to its lowest descender, in ems. */
const ROOM = ASCENT + DESCENT;

const wording = (text: string, weight: TextMark['weight']): Wording => {
  // Asked for over and over while wordings are chosen, or never.
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

/** A fact in words, from the fullest wording to the shortest. */
export const textLabel = (
  weight: TextMark['weight'],
  fullest: string,
  ...shorter: readonly string[]
): Label => [wording(fullest, weight), ...shorter.map((text) => wording(text, weight))];

/** The facts of one strip of a piece: its name, what it is, and where it lies on the wood. */
export interface Lettering {
  readonly name: readonly Label[];
  readonly about: readonly Label[];
  readonly place: readonly Label[];
}

/** Where letters go, and which way. */
export interface Area {
  readonly box: Box;
  readonly turn: Turn;
}

export interface LabelArea extends Area {
  /** Whether the line of the name comes first of the lines, or last. */
  readonly nameFirst: boolean;
}

/**
 * Letters an area: on three lines or on two, the name large, or all small, in full words; where that does not fit, in as
 * few words as it takes, on all the lines there are.
 * @param more further strips, for what the first has no room for
 * @returns nothing where even the fewest words find no room
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

/** The longest that a tag grows to hold every fact in full, in mm; from there on words are left out. */
const LONGEST_TAG = 80;

/** Left free between the lines of a tag, in mm, where all of it finds room so. */
const TAG_AIR = 1;

/** How long a tag of a given breadth must be to hold every fact, in mm; `setTagLettering` then writes it. */
export const tagLength = (breadth: number, lettering: Lettering): number => {
  for (let length = 20; ; length += 5) {
    const lines = smallLines({ box: { x0: 0, x1: length, y0: 0, y1: breadth }, turn: 0 });
    const written = length < LONGEST_TAG ? inFull(lettering, lines) : pourTogether(lettering, lines);
    if (written !== undefined) return length;
  }
};

export const setTagLettering = (area: Area, lettering: Lettering): Mark[] =>
  inFull(lettering, smallLines(area, TAG_AIR)) ?? pourTogether(lettering, smallLines(area)) ?? [];

/** A line to write on. */
interface Line {
  readonly size: number;
  /** The text's baseline, at its start. */
  readonly start: Point;
  readonly turn: Turn;
  readonly length: number;
}

const breadthOf = ({ box, turn }: Area): number => (turn === 0 ? box.y1 - box.y0 : box.x1 - box.x0);

/** Lines one after the other, with equal gaps over the area's breadth; none where they are too many for it. */
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

/** As many lines of the small size as an area holds, with at least so much between them. */
const smallLines = (area: Area, air = AIR): Line[] => {
  const count = Math.floor((breadthOf(area) - air) / (SMALL * ROOM + air));
  return spread(area, new Array<number>(Math.max(0, count)).fill(SMALL)) ?? [];
};

const lineLength = (wordings: readonly Wording[], size: number): number =>
  wordings.reduce((sum, { width }) => sum + width(size), 0) + SPACE * size * Math.max(0, wordings.length - 1);

/** Each group on its own line, in full but for so many steps on each. */
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

/** Poured, the facts of the name beside each other, or where that finds no room, each where it has some. */
const pourTogether = ({ name, about, place }: Lettering, lines: readonly Line[]): Mark[] | undefined =>
  pour([...together(name), ...about, ...place], lines) ?? pour([...name, ...about, ...place], lines);

/** Facts that stay on one line, as one: each wording of the first with all the others in full. */
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

/** Each fact on the first line that has room, in the fullest wordings that fit. */
const pour = (facts: readonly Label[], lines: readonly Line[]): Mark[] | undefined => {
  const chosen = shorten(facts, (held) => fill(held, lines) !== undefined);
  return chosen && set(chosen, lines);
};

/** Each fact on the first line that has room, in full, the name with its letter. */
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

/** The fullest wordings that fit, giving way one step at a time where the most is saved, and so many steps at most. */
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
      // A short name's cuts are no shorter than the name.
      const next = fact.findIndex((each, k) => k > (levels[i] ?? 0) && each.width(SMALL) < width);
      const saved = width - (fact[next]?.width(SMALL) ?? width);
      if (saved > saving) [widest, level, saving] = [i, next, saved];
    }
    if (widest < 0 || step >= steps) return undefined;
    levels[widest] = level;
  }
};
