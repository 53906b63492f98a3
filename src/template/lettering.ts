import type { Box, Mark, Point, TextMark } from '../drawing/drawing.ts';
import { CAP_HEIGHT, textWidth } from '../drawing/textWidth.ts';

/** Lines run to the right, the first one topmost, or upward, the first one leftmost. */
export type Turn = Extract<TextMark['turn'], 0 | 90>;

/** One way to put a fact on a line: how much of the line it takes at an em, and its marks. */
export interface Wording {
  width(size: number): number;
  marks(at: Point, size: number, turn: Turn): Mark[];
}

/** A fact that must stand on the piece, in its wordings from the fullest to the shortest. */
export type Fact = readonly [Wording, ...Wording[]];

/** The least em on a sheet, in mm: its capitals are 2.4 mm high. */
export const SMALL = 2.4 / CAP_HEIGHT;

/** The em of a piece's name where there is room. */
const LARGE = 4.2;

/** Between two facts on a line, in ems. */
const SPACE = 0.9;

/** Left free at both ends of a line, in mm. */
const INDENT = 1;

const wording = (text: string, weight: TextMark['weight']): Wording => ({
  width: (size) => textWidth(text, size, weight),
  marks: (at, size, turn) => [{ kind: 'text', role: 'label', text, at, size, turn, anchor: 'start', weight }],
});

/** A fact in words, from the fullest wording to the shortest. */
export const words = (weight: TextMark['weight'], fullest: string, ...shorter: readonly string[]): Fact => [
  wording(fullest, weight),
  ...shorter.map((text) => wording(text, weight)),
];

/** The facts of one strip of a piece: its name, what it is, and where it lies on the wood. */
export interface Lettering {
  readonly name: readonly Fact[];
  readonly about: readonly Fact[];
  readonly place: readonly Fact[];
}

/** Where letters go. */
export interface Strip {
  readonly box: Box;
  readonly turn: Turn;
  /** Whether the line of the name comes first of the lines, or last. */
  readonly nameFirst: boolean;
}

/**
 * Letters a strip: three lines, the name large and the rest small; where that does not fit, all small, and in as few
 * words as it takes.
 * @returns nothing where even the fewest words find no room
 */
export const letter = (strip: Strip, lettering: Lettering): Mark[] | undefined => {
  const groups = [lettering.name, lettering.about, lettering.place];
  const ordered = strip.nameFirst ? groups : groups.toReversed();
  const sizes = strip.nameFirst ? [LARGE, SMALL, SMALL] : [SMALL, SMALL, LARGE];
  const small = spread(strip, [SMALL, SMALL, SMALL]);
  return (
    setLines(strip, ordered, spread(strip, sizes)) ??
    setLines(strip, ordered, small) ??
    pour(strip, groups.flat(), small)
  );
};

/** How long a tag of a given breadth must be to hold every fact in full, in mm; `letterTag` then writes it. */
export const tagLength = (breadth: number, lettering: Lettering): number => {
  const facts = allFacts(lettering).map(([fullest]) => fullest);
  for (let length = 20; ; length += 5)
    if (fill(facts, tagLines(breadth).length, length - 2 * INDENT)) return length;
};

export const letterTag = (strip: Strip, lettering: Lettering): Mark[] => {
  const breadth = strip.turn === 0 ? strip.box.y1 - strip.box.y0 : strip.box.x1 - strip.box.x0;
  return pour(strip, allFacts(lettering), spread(strip, tagLines(breadth))) ?? [];
};

const allFacts = ({ name, about, place }: Lettering): Fact[] => [...name, ...about, ...place];

const tagLines = (breadth: number): number[] =>
  new Array<number>(Math.max(1, Math.floor(breadth / (SMALL * 1.15)))).fill(SMALL);

interface Line {
  readonly size: number;
  /** Across the lines, from the strip's near side to the text's baseline. */
  readonly offset: number;
}

/** Lines one after the other, with equal gaps over the strip's breadth. */
const spread = ({ box, turn }: Strip, sizes: readonly number[]): Line[] => {
  const breadth = turn === 0 ? box.y1 - box.y0 : box.x1 - box.x0;
  const caps = sizes.reduce((sum, size) => sum + size * CAP_HEIGHT, 0);
  const gap = (breadth - caps) / (sizes.length + 1);
  let offset = 0;
  return sizes.map((size) => {
    offset += gap + size * CAP_HEIGHT;
    return { size, offset };
  });
};

const lengthOf = ({ box, turn }: Strip): number =>
  (turn === 0 ? box.x1 - box.x0 : box.y1 - box.y0) - 2 * INDENT;

const lineLength = (wordings: readonly Wording[], size: number): number =>
  wordings.reduce((sum, { width }) => sum + width(size), 0) + SPACE * size * Math.max(0, wordings.length - 1);

/** Each group on its own line, in the fullest wordings that fit. */
const setLines = (
  strip: Strip,
  groups: readonly (readonly Fact[])[],
  lines: readonly Line[],
): Mark[] | undefined => {
  const marks: Mark[] = [];
  for (const [i, line] of lines.entries()) {
    const chosen = shorten(groups[i] ?? [], (held) => lineLength(held, line.size) <= lengthOf(strip));
    if (chosen === undefined) return undefined;
    marks.push(...setLine(strip, line, chosen));
  }
  return marks;
};

const setLine = ({ box, turn }: Strip, { size, offset }: Line, held: readonly Wording[]): Mark[] => {
  let along = INDENT;
  return held.flatMap(({ width, marks }) => {
    const at: Point = turn === 0 ? [box.x0 + along, box.y1 - offset] : [box.x0 + offset, box.y0 + along];
    along += width(size) + SPACE * size;
    return marks(at, size, turn);
  });
};

/** Everything small, each fact on the first line that has room. */
const pour = (strip: Strip, facts: readonly Fact[], lines: readonly Line[]): Mark[] | undefined => {
  const filled = (held: readonly Wording[]) => fill(held, lines.length, lengthOf(strip));
  const chosen = shorten(facts, (held) => filled(held) !== undefined);
  return chosen && filled(chosen)?.flatMap((held, i) => (lines[i] ? setLine(strip, lines[i], held) : []));
};

const fill = (wordings: readonly Wording[], count: number, length: number): Wording[][] | undefined => {
  const filled: Wording[][] = Array.from({ length: count }, () => []);
  for (const next of wordings) {
    const line = filled.find((held) => lineLength([...held, next], SMALL) <= length);
    if (line === undefined) return undefined;
    line.push(next);
  }
  return filled;
};

/** The fullest wordings that fit, giving way one step at a time where the most is saved. */
const shorten = (
  facts: readonly Fact[],
  fits: (wordings: readonly Wording[]) => boolean,
): readonly Wording[] | undefined => {
  const levels = facts.map(() => 0);
  for (;;) {
    const chosen = facts.map((fact, i) => fact[levels[i] ?? 0] ?? fact[0]);
    if (fits(chosen)) return chosen;
    let widest = -1;
    let saving = 0;
    for (const [i, fact] of facts.entries()) {
      const next = fact[(levels[i] ?? 0) + 1];
      const saved = next === undefined ? 0 : (chosen[i]?.width(SMALL) ?? 0) - next.width(SMALL);
      if (saved > saving) [widest, saving] = [i, saved];
    }
    if (widest < 0) return undefined;
    levels[widest] = (levels[widest] ?? 0) + 1;
  }
};
