import type { Box, Mark, Path, Point, TextMark } from '../drawing/drawing.ts';
import { textBox } from '../drawing/textBox.ts';
import { ASCENT, DESCENT, textWidth } from '../drawing/textWidth.ts';
import { formatLength, type Unit } from '../units/length.ts';
import { isClear, type Obstacles, obstaclesIn } from './clearPlace.ts';
import { fitText } from './fitText.ts';
import { WORDS } from './frame.ts';
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
  return [{ kind: 'fill', role: 'label', tone: 1, paths: [{ points: corners, closed: true }] }, text];
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

const checkWordings = ({ axis, whole }: Join, unit: Unit): string[] => {
  const length = formatLength(whole, unit);
  return axis === 'y'
    ? [
        `when taped: ${length} from the reference edge to the other edge`,
        `when taped: ${length} from edge to edge`,
        `taped: ${length}`,
      ]
    : [`when taped: ${length} from side to side`, `taped: ${length}`];
};

/**
 * The length to measure when two parts are taped, for the part with the tab: where there is a clear place in `quiet`, or
 * else on the tab.
 * @param marks the whole piece's, and any check that stands there already
 */
export const checkMarks = (join: Join, quiet: Box, marks: readonly Mark[], unit: Unit): Mark[] => {
  const { axis, at, from, to, tab } = join;
  const near: Box =
    axis === 'y'
      ? { ...quiet, y0: Math.max(quiet.y0, at - REACH) }
      : { ...quiet, x0: Math.max(quiet.x0, at - REACH) };
  const { all } = groundOf(near, marks);
  const height = (ASCENT + DESCENT) * WORDS;
  const wordings = checkWordings(join, unit);
  for (const text of wordings) {
    const length = textWidth(text, WORDS, 'regular');
    for (const turn of [0, 90] as const) {
      const [width, rise] = turn === 0 ? [length, height] : [height, length];
      for (let y = near.y1 - rise; y >= near.y0; y -= 2)
        for (let x = near.x1 - width; x >= near.x0; x -= 1) {
          const box = { x0: x, y0: y, x1: x + width, y1: y + rise };
          if (!isClear(grown(box, AROUND_WORDS), all)) continue;
          const start: Point = turn === 0 ? [x, y + DESCENT * WORDS] : [x + ASCENT * WORDS, y];
          return [
            {
              kind: 'text',
              role: 'label',
              text,
              at: start,
              size: WORDS,
              turn,
              anchor: 'start',
              weight: 'regular',
            },
          ];
        }
    }
  }
  const text = fitText(wordings, to - from - 2 * CLEARANCE, WORDS, 'regular');
  const off = (tab - height) / 2;
  return onWhite(wordBeside(join, 'laidOver', text, (from + to) / 2, off, 'regular'));
};

/** Register crosses and the join's letter for one of its parts; they match its neighbour's. */
export const joinMarks = (join: Join, side: Side, marks: readonly Mark[]): Mark[] => {
  const { axis, at, from, to } = join;
  const line: Box =
    axis === 'y' ? { x0: from, y0: at, x1: to, y1: at } : { x0: at, y0: from, x1: at, y1: to };
  const ground = groundOf(grown(line, CLEAR_OF_SPLITS), marks);
  const crosses = crossPlaces(join, ground);
  const letter = lettersOf(join, crosses, ground)[side];
  return [
    { kind: 'stroke', role: 'scale', pen: 'thin', paths: crosses.flatMap((along) => cross(join, along)) },
    ...(isClear(grown(textBox(letter), AROUND_WORDS), ground.all) ? [letter] : onWhite(letter)),
  ];
};
