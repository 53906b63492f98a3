import type { StrokeMark, TextMark } from '../../drawing/drawing.ts';
import { line, rectangle, stroke } from '../../drawing/shapes.ts';
import { textWidth } from '../../drawing/textWidth.ts';
import type { Interval, Joint } from '../../joint/joint.ts';
import { betweenSplits } from '../../paper/piece.ts';
import { EDGE_MARK_HEIGHT, edgeMark } from './edgeMark.ts';
import {
  type LabelArea,
  type Lettering,
  SMALL,
  setLettering,
  setTagLettering,
  tagLength,
  textLabel,
} from './lettering.ts';
import type { TemplatePiece } from './templatePiece.ts';
import { edgeLabel, letteringOf, type Titles, tapedUp } from './titles.ts';
import { centredWord } from './word.ts';

/** Length of the marks at each edge, and width of the words between them, mm. */
const MARKS = 7;
const WORDS = 12;
const WIDTH = 2 * MARKS + WORDS;

/**
 * A corner's rod: a strip with every mark at full size, to knife from its edge instead of gluing on a template. The
 * tails' tips are marked at its left edge and their bases at its right.
 */
export const rod = (name: string, joint: Joint, titles: Titles): TemplatePiece => {
  const height = joint.width;
  const named = hasSideWords(joint);
  const lettering = letteringOfRod(titles, named);
  const beside = ([from, to]: Interval): LabelArea => ({
    box: { x0: MARKS, x1: MARKS + WORDS, y0: Math.max(from, EDGE_MARK_HEIGHT), y1: to },
    turn: 90,
    nameFirst: true,
  });
  const fits = setLettering(beside([0, height]), lettering) !== undefined;
  const top = fits ? height : height + tagLength(WIDTH, lettering);
  return {
    name,
    title: `${titles.item}, ${titles.part}, corner ${titles.corner}`,
    caption: [titles.item, `${titles.part} · ${titles.corner}`, titles.end],
    itemName: titles,
    signs: ['edge'],
    count: titles.count,
    width: WIDTH,
    height: top,
    overhang: 1,
    splittable: { x: [], y: joint.tails.map(({ base }) => base) },
    taped: { y: tapedUp(titles, height) },
    lines: () => lineMarks(joint, top),
    draw: (splits) => {
      const parts = betweenSplits(splits.y, height);
      return {
        box: { x0: -1, y0: -1, x1: WIDTH + 1, y1: top + 1 },
        marks: [
          ...lineMarks(joint, top),
          edgeMark(WIDTH / 2),
          ...(named ? parts.flatMap((part) => sideWords(joint, part)) : []),
          ...(fits
            ? parts.flatMap((part) => setLettering(beside(part), lettering) ?? [])
            : setTagLettering({ box: { x0: 0, x1: WIDTH, y0: height, y1: top }, turn: 90 }, lettering)),
        ],
      };
    },
  };
};

/** @param named whether its edges are named beside their marks; otherwise the lettering names them */
const letteringOfRod = (titles: Titles, named: boolean): Lettering => {
  const { name, about } = letteringOf(titles, 'end', 'all');
  return { name, about, place: [edgeLabel(titles, '←'), ...(named ? [] : EDGES)] };
};

/** Names of the rod's edges. The letters run upward, so an arrow up in the text points to the left. */
const EDGES = [textLabel('bold', '↑ TIPS'), textLabel('bold', '↓ BASES')];

const lineMarks = ({ tails, width }: Joint, top: number): StrokeMark[] => {
  return [
    stroke(
      'square',
      'saw',
      tails.flatMap(({ tip, base }) => [
        ...tip.map((u) => line(0, u, MARKS, u)),
        ...base.map((u) => line(WIDTH - MARKS, u, WIDTH, u)),
      ]),
    ),
    stroke('outline', 'cut', [
      rectangle(0, 0, WIDTH, top),
      line(MARKS, 0, MARKS, width),
      line(WIDTH - MARKS, 0, WIDTH - MARKS, width),
      ...(top > width ? [line(0, width, WIDTH, width)] : []),
    ]),
    stroke('outline', 'edge', [line(0, 0, WIDTH, 0)]),
  ];
};

/** Whether both edges of an undivided rod can be named beside their marks. */
const hasSideWords = (joint: Joint): boolean => sideWords(joint, [0, joint.width]).length === 2;

/** The names of each edge's marks, in the first tail of a part with room for the word. */
const sideWords = ({ tails }: Joint, part: Interval): TextMark[] => [
  ...sideWord(
    'TIPS',
    MARKS / 2,
    tails.map(({ tip }) => tip),
    part,
  ),
  ...sideWord(
    'BASES',
    WIDTH - MARKS / 2,
    tails.map(({ base }) => base),
    part,
  ),
];

const sideWord = (text: string, x: number, rooms: readonly Interval[], part: Interval): TextMark[] => {
  const length = textWidth(text, SMALL, 'bold') + 1.5;
  const room = rooms
    .map(([from, to]): Interval => [Math.max(from, part[0]), Math.min(to, part[1])])
    .find(([from, to]) => to - from >= length);
  return room === undefined ? [] : [centredWord(text, 'bold', 90, [x, (room[0] + room[1]) / 2])];
};
