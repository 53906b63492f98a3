import type { Box, Mark, Path, Point, TextMark } from '../../drawing/drawing.ts';
import { line, rectangle, stroke, textMark } from '../../drawing/shapes.ts';
import { ASCENT, DESCENT, textWidth } from '../../drawing/textWidth.ts';
import { fitText } from '../../paper/fitText.ts';
import type { Blank } from '../../stock/breakout.ts';
import type { DefectKind } from '../../stock/plank.ts';
import { SMALL } from '../template/lettering.ts';
import { type BoardView, blankTitle, defectLetter } from './boardView.ts';
import { holdsPoint } from './cutAway.ts';
import { type Label, type LabelRoom, roomy } from './labelRoom.ts';

/** What has a label in a picture: numbers of wanted blanks, of cuts from 0, and of the board's defects. */
export interface Shown {
  readonly blanks: ReadonlySet<number>;
  readonly cuts: ReadonlySet<number>;
  readonly defects: ReadonlySet<number>;
}

/** Where all that may have a label lies on the paper. */
export interface Placed {
  readonly blanks: readonly { readonly blank: Blank; readonly box: Box }[];
  readonly kerfs: readonly (Box | undefined)[];
  readonly defects: readonly { readonly kind: DefectKind; readonly outline: readonly Point[] }[];
  readonly outline: readonly Point[];
  /** What is drawn. */
  readonly window: Box;
}

/** Ems of a blank's letter, the first that has room. */
const LETTER_SIZES = [6, 4.5, SMALL];
/** Steps along a line at which a label is tried, mm. */
const STEP = 1.5;
/** The most steps along a line. */
const MOST_STEPS = 24;
/** Distance of a cut's number from its saw cut, mm. */
const OFF = 0.5;
/** Least distance of that number from the end of its saw cut, where another begins, mm. */
const END = 1.6;
/** How far from what it names a label may reach, mm. */
const REACH = 40;
/** The fewest characters of a name that says something. */
const FEW = 6;

/** Letters of blanks first, then numbers of cuts, letters and names of defects, and at last the names of blanks. */
export const placeLabels = (view: BoardView, placed: Placed, room: LabelRoom): Shown => {
  const { window } = placed;
  const blanks = new Set<number>();
  const cuts = new Set<number>();
  const defects = new Set<number>();
  const lettered: { readonly name: string; readonly seen: Box; readonly letter: Point }[] = [];
  for (const { blank, box } of placed.blanks) {
    const seen = common(box, window);
    if (seen === undefined) continue;
    const { letter, name } = blankTitle(view.blanks, blank.wanted);
    for (const size of LETTER_SIZES) {
      const found = room.place(within(seen, letter, size, 'bold'), seen);
      if (found === undefined) continue;
      blanks.add(blank.wanted);
      lettered.push({ name, seen, letter: found.text.at });
      break;
    }
  }
  for (const [k, kerf] of placed.kerfs.entries()) {
    const seen = kerf && common(kerf, window);
    if (
      seen !== undefined &&
      placeNumber(String(k + 1), seen, view.layout.cuts[k]?.kind === 'crosscut', room)
    )
      cuts.add(k);
  }
  for (const [i, { kind, outline }] of placed.defects.entries()) {
    const seen = common(boxRound(outline), window);
    if (seen === undefined) continue;
    const letter = defectLetter(i);
    const isPlaced = [`${letter} ${kind}`, letter].some(
      (text) => room.place(besideDefect(text, seen, outline), roomy(seen, REACH)) !== undefined,
    );
    if (isPlaced) defects.add(i);
  }
  for (const { name, seen, letter } of lettered) {
    const text = fitText([name], seen.x1 - seen.x0 - 2, SMALL, 'regular');
    if (text === name || [...text].length > FEW)
      room.place(nearestFirst(within(seen, text, SMALL, 'regular'), letter), seen);
  }
  return { blanks, cuts, defects };
};

/** A text whose box has its middle at a point. */
const centred = (text: string, size: number, weight: TextMark['weight'], [x, y]: Point): TextMark =>
  textMark(text, [x, y - ((ASCENT - DESCENT) / 2) * size], size, { weight, anchor: 'middle' });

const heightOf = (size: number): number => (ASCENT + DESCENT) * size;

const common = (a: Box, b: Box): Box | undefined => {
  const [x0, y0] = [Math.max(a.x0, b.x0), Math.max(a.y0, b.y0)];
  const [x1, y1] = [Math.min(a.x1, b.x1), Math.min(a.y1, b.y1)];
  return x1 > x0 && y1 > y0 ? { x0, y0, x1, y1 } : undefined;
};

const boxRound = (points: readonly Point[]): Box => ({
  x0: Math.min(...points.map(([x]) => x)),
  y0: Math.min(...points.map(([, y]) => y)),
  x1: Math.max(...points.map(([x]) => x)),
  y1: Math.max(...points.map(([, y]) => y)),
});

const middleOf = ({ x0, y0, x1, y1 }: Box): Point => [(x0 + x1) / 2, (y0 + y1) / 2];

/** Even places from one end to the other, as many as there are steps between them; the middle alone where there is no room. */
const places = (from: number, to: number): number[] => {
  if (to <= from) return to < from ? [] : [from];
  const count = Math.min(MOST_STEPS, Math.max(2, Math.ceil((to - from) / STEP)));
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
};

/** All places of a text in a box, the middle first. */
const within = (box: Box, text: string, size: number, weight: TextMark['weight']): Label[] => {
  const [half, tall] = [textWidth(text, size, weight) / 2, heightOf(size) / 2];
  const [x, y] = middleOf(box);
  const level = places(box.x0 + half, box.x1 - half);
  const upright = places(box.y0 + tall, box.y1 - tall);
  return level
    .flatMap((px) => upright.map((py): Point => [px, py]))
    .sort((a, b) => Math.hypot(a[0] - x, a[1] - y) - Math.hypot(b[0] - x, b[1] - y))
    .map((at) => ({ text: centred(text, size, weight, at) }));
};

const nearestFirst = (labels: readonly Label[], [x, y]: Point): Label[] => {
  const far = ({ text: { at } }: Label) => Math.abs(at[0] - x) + 2 * Math.abs(at[1] - y);
  return labels.toSorted((a, b) => far(a) - far(b));
};

/** Places of a defect's label: beside it, and inside it where its middle is. */
const besideDefect = function* (text: string, box: Box, outline: readonly Point[]): Generator<Label> {
  const [half, tall] = [textWidth(text, SMALL, 'regular') / 2 + 0.6, heightOf(SMALL) / 2 + 0.6];
  const at = (x: number, y: number): Label => ({ text: centred(text, SMALL, 'regular', [x, y]) });
  const [x, y] = middleOf(box);
  if (box.x1 - box.x0 > 2 * half && box.y1 - box.y0 > 2 * tall)
    for (const each of within(box, text, SMALL, 'regular')) if (holdsPoint(outline, each.text.at)) yield each;
  yield at(box.x1 + half, y);
  yield at(box.x0 - half, y);
  for (const px of [x, ...places(Math.min(x, box.x0 + half - 1.2), Math.max(x, box.x1 - half + 1.2))]) {
    yield at(px, box.y1 + tall);
    yield at(px, box.y0 - tall);
  }
  yield at(x, y);
};

/** A cut's number in a box that touches its saw cut: beyond its end, or beside it. */
const placeNumber = (text: string, kerf: Box, isCrosscut: boolean, room: LabelRoom): boolean => {
  const found = room.place(
    isCrosscut ? besideCrosscut(text, kerf) : besideRip(text, kerf),
    roomy(kerf, REACH),
  );
  if (found === undefined) return false;
  const { x0, y0, x1, y1 } = found.box;
  room.add([stroke('label', 'thin', [rectangle(x0, y0, x1, y1), ...found.stem])]);
  return true;
};

interface Numbered extends Label {
  readonly text: TextMark;
  /** The box round it, which touches its saw cut or has a stem to it. */
  readonly box: Box;
  readonly stem: readonly Path[];
}

const NUMBER_AIR = 0.4;

const boxFor = (text: string): { readonly width: number; readonly height: number } => ({
  width: textWidth(text, SMALL, 'bold') + 2 * NUMBER_AIR,
  height: heightOf(SMALL) + 2 * NUMBER_AIR,
});

const numbered = (text: string, room: Box, box: Box, stem: readonly Path[] = []): Numbered => ({
  text: centred(text, SMALL, 'bold', middleOf(room)),
  box,
  stem,
});

const besideCrosscut = function* (text: string, { x0, y0, x1, y1 }: Box): Generator<Numbered> {
  const { width, height } = boxFor(text);
  const middle = (x0 + x1) / 2;
  for (const [low, from] of [
    [y1 + OFF, y1],
    [y0 - OFF - height, y0],
  ] as const) {
    const box = { x0: middle - width / 2, y0: low, x1: middle + width / 2, y1: low + height };
    yield numbered(text, box, box, [line(middle, from, middle, from === y1 ? low : low + height)]);
  }
  for (const y of placesAlong(y0, y1, height).toReversed()) {
    const upright = { y0: y - height / 2, y1: y + height / 2 };
    const right = { ...upright, x0: x1 + OFF, x1: x1 + OFF + width };
    yield numbered(text, right, { ...right, x0: x1 });
    const left = { ...upright, x0: x0 - OFF - width, x1: x0 - OFF };
    yield numbered(text, left, { ...left, x1: x0 });
  }
};

const besideRip = function* (text: string, { x0, y0, x1, y1 }: Box): Generator<Numbered> {
  const { width, height } = boxFor(text);
  for (const x of placesAlong(x0, x1, width)) {
    const level = { x0: x - width / 2, x1: x + width / 2 };
    const above = { ...level, y0: y1 + OFF, y1: y1 + OFF + height };
    yield numbered(text, above, { ...above, y0: y1 });
    const below = { ...level, y0: y0 - OFF - height, y1: y0 - OFF };
    yield numbered(text, below, { ...below, y1: y0 });
  }
};

/** Middles of something `size` long beside a line, clear of its ends where the line is long enough. */
const placesAlong = (from: number, to: number, size: number): number[] =>
  to - from >= size + 2 * END ? places(from + size / 2 + END, to - size / 2 - END) : [(from + to) / 2];

/** Room between words below a board, and the length of the arrows of its grain, mm. */
const GAP = 4;
const ARROW = 8;

/** Below a board: its ends, where they are shown, and the direction of its grain. */
export const endWords = (left: boolean, right: boolean, width: number, low: number): Mark[] => {
  const base = low + DESCENT * SMALL + 0.2;
  const word = (text: string, x: number, anchor: TextMark['anchor']) =>
    textMark(text, [x, base], SMALL, { anchor });
  const [first, last, grain] = ['left end', 'right end', 'grain direction'].map((text) => ({
    text,
    length: textWidth(text, SMALL, 'regular'),
  }));
  if (first === undefined || last === undefined || grain === undefined) return [];
  const ends = first.length + last.length + GAP;
  if (width < ends) return [];
  const half = grain.length / 2 + 1.5;
  const middle = width / 2;
  const height = base + 1.2;
  const arrow = (from: number, to: number): Mark => {
    const back = Math.sign(from - to) * 1.6;
    return stroke('label', 'thin', [
      line(from, height, to, height),
      {
        points: [
          [to + back, height - 0.7],
          [to, height],
          [to + back, height + 0.7],
        ],
      },
    ]);
  };
  return [
    ...(left ? [word(first.text, 0, 'start')] : []),
    ...(right ? [word(last.text, width, 'end')] : []),
    ...(middle - half - ARROW < Math.max(first.length, last.length) + GAP
      ? []
      : [
          word(grain.text, middle, 'middle'),
          arrow(middle - half, middle - half - ARROW),
          arrow(middle + half, middle + half + ARROW),
        ]),
  ];
};
