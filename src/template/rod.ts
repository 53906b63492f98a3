import type { Drawing, Mark, Path, TextMark } from '../drawing/drawing.ts';
import { CAP_HEIGHT, textWidth } from '../drawing/textWidth.ts';
import type { Interval, Joint } from '../joint/joint.ts';
import type { Splits } from '../paper/piece.ts';
import { type Lettering, letter, letterTag, SMALL, type Strip, tagLength, words } from './lettering.ts';
import { letteringOf, type Titles } from './titles.ts';
import type { TemplatePiece } from './wrap.ts';

/** How far each edge's marks reach in, and how wide the words between them stand, in mm. */
const MARKS = 7;
const WORDS = 12;
const WIDTH = 2 * MARKS + WORDS;
const EDGE_MARK = 4.2;

/**
 * A corner's rod: a strip with every mark at full size, for those who knife from its edge instead of gluing paper on.
 * The tails' tips stand at its left edge and their bases at its right.
 */
export const rod = (name: string, joint: Joint, titles: Titles): TemplatePiece => {
  const height = joint.width;
  const lettering = letteringOfRod(titles);
  const beside: Strip = {
    box: { x0: MARKS, x1: MARKS + WORDS, y0: EDGE_MARK, y1: height },
    turn: 90,
    nameFirst: true,
  };
  const fits = letter(beside, lettering) !== undefined;
  const top = fits ? height : height + tagLength(WIDTH, lettering);
  return {
    name,
    title: `${titles.item}, ${titles.part}, corner ${titles.corner}`,
    caption: [titles.item, `${titles.part} · ${titles.corner}`, titles.end],
    count: titles.count,
    width: WIDTH,
    height: top,
    overhang: 1,
    splittable: { x: [], y: joint.tails.map(({ base }) => base) },
    draw: (splits) => ({
      box: { x0: -1, y0: -1, x1: WIDTH + 1, y1: top + 1 },
      marks: [
        ...lineMarks(joint, top),
        ...sideWords(joint),
        ...(fits
          ? lettersBetween(beside, lettering, height, splits)
          : letterTag({ ...beside, box: { x0: 0, x1: WIDTH, y0: height, y1: top } }, lettering)),
      ],
    }),
  };
};

const letteringOfRod = (titles: Titles): Lettering => {
  const { name, about } = letteringOf(titles, 'end', 'all');
  return { name, about, place: [words('regular', `← ${titles.edge[0]}`, `← ${titles.edge[1]}`, '← edge')] };
};

const lettersBetween = (strip: Strip, lettering: Lettering, height: number, { y }: Splits): Mark[] => {
  const levels = [strip.box.y0, ...y, height];
  return levels.slice(1).flatMap((to, i) => {
    const box = { ...strip.box, y0: levels[i] ?? 0, y1: to };
    return letter({ ...strip, box }, lettering) ?? [];
  });
};

const lineMarks = ({ tails, width }: Joint, top: number): Drawing['marks'] => {
  const across = (x0: number, x1: number, y: number): Path => ({
    points: [
      [x0, y],
      [x1, y],
    ],
  });
  const upright = (x: number): Path => ({
    points: [
      [x, 0],
      [x, width],
    ],
  });
  return [
    {
      kind: 'stroke',
      role: 'square',
      pen: 'saw',
      paths: tails.flatMap(({ tip, base }) => [
        ...tip.map((u) => across(0, MARKS, u)),
        ...base.map((u) => across(WIDTH - MARKS, WIDTH, u)),
      ]),
    },
    {
      kind: 'stroke',
      role: 'outline',
      pen: 'cut',
      paths: [
        {
          points: [
            [0, 0],
            [WIDTH, 0],
            [WIDTH, top],
            [0, top],
          ],
          closed: true,
        },
        upright(MARKS),
        upright(WIDTH - MARKS),
        ...(top > width ? [across(0, WIDTH, width)] : []),
      ],
    },
    { kind: 'stroke', role: 'outline', pen: 'edge', paths: [across(0, WIDTH, 0)] },
    {
      kind: 'stroke',
      role: 'label',
      pen: 'medium',
      paths: [
        {
          points: [
            [WIDTH / 2 - 1.6, 3.2],
            [WIDTH / 2, 0],
            [WIDTH / 2 + 1.6, 3.2],
          ],
        },
      ],
    },
  ];
};

/** What each edge's marks are, in the first tail that has room for the word. */
const sideWords = ({ tails }: Joint): TextMark[] => [
  ...sideWord(
    'TIPS',
    MARKS / 2,
    tails.map(({ tip }) => tip),
  ),
  ...sideWord(
    'BASES',
    WIDTH - MARKS / 2,
    tails.map(({ base }) => base),
  ),
];

const sideWord = (text: string, x: number, rooms: readonly Interval[]): TextMark[] => {
  const length = textWidth(text, SMALL, 'bold') + 1.5;
  const room = rooms.find(([from, to]) => to - from >= length);
  if (room === undefined) return [];
  const at = [x + (SMALL * CAP_HEIGHT) / 2, (room[0] + room[1]) / 2] as const;
  return [{ kind: 'text', role: 'label', text, at, size: SMALL, turn: 90, anchor: 'middle', weight: 'bold' }];
};
