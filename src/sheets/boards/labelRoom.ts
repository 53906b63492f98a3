import { touches } from '../../drawing/clip.ts';
import type { Box, Mark, Point, TextMark } from '../../drawing/drawing.ts';
import { textBox } from '../../drawing/textBox.ts';
import { isClear, obstaclesIn } from '../../paper/labelCollision.ts';

/** Width kept free round every label, mm. */
const AIR = 0.35;

/** A text, and a box round it that may touch lines, but no other text. */
export interface Label {
  readonly text: TextMark;
  readonly box?: Box;
}

/** What has been drawn, and finds room beside it for labels. */
export interface LabelRoom {
  /** Draws marks, which later labels are then clear of. */
  add(marks: readonly Mark[]): void;
  /**
   * Draws a text at the first of some places, all of them in a region, where it is clear of all else. @returns that place, or
   * nothing where none is clear
   */
  place<L extends Label>(places: Iterable<L>, region: Box): L | undefined;
}

/** @param marks what has been drawn; labels are added to it */
export const labelRoom = (whole: Box, marks: Mark[]): LabelRoom => {
  const start = obstaclesIn(whole, marks);
  const lines: (readonly [Point, Point])[] = [...start.lines];
  const boxes: Box[] = [...start.boxes];
  const add = (more: readonly Mark[]) => {
    const found = obstaclesIn(whole, more);
    lines.push(...found.lines);
    boxes.push(...found.boxes);
    marks.push(...more);
  };
  return {
    add,
    place: (places, region) => {
      // Most of a board is far from the region.
      const wide = roomy(region, 1);
      const near = {
        lines: lines.filter(([a, b]) => touches(wide, a, b)),
        boxes: boxes.filter((box) => isClear(box, { lines: [], boxes: [wide] }) === false),
      };
      for (const label of places) {
        const box = roomy(textBox(label.text));
        const isFree =
          isWithin(box, whole) &&
          isClear(box, near) &&
          (label.box === undefined ||
            (isWithin(label.box, whole) && isClear(label.box, { lines: [], boxes: near.boxes })));
        if (!isFree) continue;
        add([label.text]);
        boxes.push(label.box ?? box);
        return label;
      }
      return undefined;
    },
  };
};

/** A box with the width that is kept free round it. */
export const roomy = ({ x0, y0, x1, y1 }: Box, air = AIR): Box => ({
  x0: x0 - air,
  y0: y0 - air,
  x1: x1 + air,
  y1: y1 + air,
});

const isWithin = (inner: Box, outer: Box): boolean =>
  inner.x0 >= outer.x0 && inner.y0 >= outer.y0 && inner.x1 <= outer.x1 && inner.y1 <= outer.y1;
