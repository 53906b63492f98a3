import type { Mark, StrokeMark } from '../../drawing/drawing.ts';
import { line, rectangle, stroke } from '../../drawing/shapes.ts';
import { textWidth } from '../../drawing/textWidth.ts';
import type { Interval } from '../../joint/joint.ts';
import { EDGE_MARK_HEIGHT } from './edgeMark.ts';
import {
  type LabelArea,
  type Lettering,
  SMALL,
  setLettering,
  setTagLettering,
  tagLength,
} from './lettering.ts';

/** The breadth of a rod: the length of the marks at either edge, and the width of the words between them, mm. */
export interface RodBreadth {
  readonly marks: number;
  readonly words: number;
}

export const rodWidth = ({ marks, words }: RodBreadth): number => 2 * marks + words;

/** The strip of a rod: where it ends, with its tag, and the lettering of its parts. */
export interface RodStrip {
  readonly top: number;
  readonly letter: (parts: readonly Interval[]) => Mark[];
}

/**
 * The strip of a rod, lettered between its marks or, where it is too short for that, on a tag beyond its end.
 * @param height to the end of what is marked, mm
 * @param short what a short part of a long rod says in its place
 */
export const rodStrip = (
  breadth: RodBreadth,
  height: number,
  lettering: Lettering,
  short: Lettering,
): RodStrip => {
  const { marks, words } = breadth;
  const width = rodWidth(breadth);
  const beside = ([from, to]: Interval): LabelArea => ({
    box: { x0: marks, x1: marks + words, y0: Math.max(from, EDGE_MARK_HEIGHT), y1: to },
    turn: 90,
    nameFirst: true,
  });
  if (setLettering(beside([0, height]), lettering) !== undefined)
    return {
      top: height,
      letter: (parts) =>
        parts.flatMap(
          (part) => setLettering(beside(part), lettering) ?? setLettering(beside(part), short) ?? [],
        ),
    };
  const top = height + tagLength(width, lettering);
  const tag = { x0: 0, x1: width, y0: height, y1: top };
  return { top, letter: () => setTagLettering({ box: tag, turn: 90 }, lettering) };
};

/** Where a rod is cut, the ends of its marks, the line before its tag, and its reference edge. */
export const rodOutline = (breadth: RodBreadth, height: number, top: number): StrokeMark[] => {
  const { marks } = breadth;
  const width = rodWidth(breadth);
  return [
    stroke('outline', 'cut', [
      rectangle(0, 0, width, top),
      line(marks, 0, marks, height),
      line(width - marks, 0, width - marks, height),
      ...(top > height ? [line(0, height, width, height)] : []),
    ]),
    stroke('outline', 'edge', [line(0, 0, width, 0)]),
  ];
};

/** Whether there is room for a word along a rod, with air at both its ends. */
export const holdsWord = ([from, to]: Interval, word: string): boolean =>
  to - from >= textWidth(word, SMALL, 'bold') + 1.5;
