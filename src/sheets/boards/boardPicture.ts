import type { Size } from '../../paper/printable.ts';
import { extentsOf } from '../../stock/polygon.ts';
import { listNames } from '../../units/listNames.ts';
import { SMALL } from '../template/lettering.ts';
import { type Block, paragraph, picture, stack } from '../typeset/block.ts';
import { type BoardView, blankTitle, defectLetter } from './boardView.ts';
import { BEYOND_BOARD, type BoardDrawing, drawBoard, SIDE } from './drawBoard.ts';

/** Scales, as 1 : n. */
const SCALES = [2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 150, 200, 300, 500];
/** The most stretches that a board is drawn in, one below the other. */
const MOST_STRETCHES = 4;
/** Gap between stretches, mm. */
const GAP = 1;

/** A board in one picture, or in stretches below each other at a larger scale where its labels need that. */
export const boardPicture = (view: BoardView, room: Size): Block => {
  const { x0, y0, x1, y1 } = extentsOf(view.plank.outline);
  const [length, width] = [x1 - x0, y1 - y0];
  const scaled = Array.from({ length: MOST_STRETCHES }, (_, i) => i + 1).flatMap((count) => {
    const most = SCALES.find((n) => length / count / n + 2 * SIDE <= room.width);
    const high = (n: number) => count * (width / n + BEYOND_BOARD + GAP) <= room.height;
    // Several stretches only where they are larger than one.
    const n = count === 1 ? SCALES.find((each) => each >= (most ?? Infinity) && high(each)) : most;
    return n === undefined || !(high(n) || count === 1) ? [] : [{ count, n }];
  });
  const [first = { count: 1, n: SCALES.at(-1) ?? 1 }, ...others] = scaled;
  let best = drawn(view, length, first);
  for (const each of others) {
    if (best.crowded.length === 0) break;
    const next = drawn(view, length, each);
    if (next.crowded.length < best.crowded.length) best = next;
  }
  const { n, drawings, crowded } = best;
  const note = (text: string) => paragraph([{ text, size: SMALL, weight: 'regular' }], room.width);
  return stack(
    [
      ...drawings.map(({ drawing }) => picture(drawing)),
      note(
        [
          `1\u00A0:\u00A0${n}${drawings.length > 1 ? `, in ${drawings.length} lengths from left to right` : ''}.`,
          ...(crowded.length === 0 ? [] : [`Too small to mark here: ${listNames(crowded)}.`]),
        ].join(' '),
      ),
    ],
    GAP,
  );
};

interface Drawn {
  readonly n: number;
  readonly drawings: readonly BoardDrawing[];
  /** What has no label in any of them. */
  readonly crowded: readonly string[];
}

const drawn = (
  view: BoardView,
  length: number,
  { count, n }: { readonly count: number; readonly n: number },
): Drawn => {
  const drawings = Array.from({ length: count }, (_, i) =>
    drawBoard(view, { scale: 1 / n, stretch: [(length * i) / count, (length * (i + 1)) / count] }),
  );
  const isShown = (of: 'blanks' | 'cuts' | 'defects', number: number) =>
    drawings.some(({ shown }) => shown[of].has(number));
  return {
    n,
    drawings,
    crowded: [
      ...view.layout.blanks.flatMap(({ wanted }) =>
        isShown('blanks', wanted) ? [] : [blankTitle(view.blanks, wanted).letter],
      ),
      ...view.layout.cuts.flatMap((_, k) => (isShown('cuts', k) ? [] : [`cut ${k + 1}`])),
      ...view.plank.defects.flatMap((_, i) => (isShown('defects', i) ? [] : [defectLetter(i)])),
    ],
  };
};
