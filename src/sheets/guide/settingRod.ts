import type { FillMark, StrokeMark, TextMark } from '../../drawing/drawing.ts';
import { line, rectangle, stroke } from '../../drawing/shapes.ts';
import type { Interval } from '../../joint/joint.ts';
import { betweenSplits, type Piece } from '../../paper/piece.ts';
import type { FingerPair } from '../../router/fingers/fingerSetting.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { finest } from '../../units/notation.ts';
import { edgeMark } from '../template/edgeMark.ts';
import { type Label, type Lettering, textLabel } from '../template/lettering.ts';
import { holdsWord, type RodBreadth, rodOutline, rodStrip, rodWidth } from '../template/rodStrip.ts';
import { scaleBar } from '../template/scaleBar.ts';
import { REFERENCE_EDGE, tapedUp } from '../template/titles.ts';
import { centredWord } from '../template/word.ts';
import { lettersSeen } from './seenCorners.ts';
import type { NamedSetting, RodSetting, SettingTitles } from './settingsToMake.ts';

const MARKS = 8;
const BREADTH: RodBreadth = { marks: MARKS, words: 20 };
const WIDTH = rodWidth(BREADTH);

/**
 * A setting of fingers as a strip at full size, to lay against their bar: the outer edges of every pair are marked at both
 * its edges, so that it serves turned end for end too, and beside them at one edge the fingers' inner edges.
 * @param number its place in the order of settings, which stands on it even where there is no room for names
 */
export const settingRod = ({ setting, titles }: NamedSetting, number: number): Piece => {
  const height = setting.to;
  const lettering = letteringOf(setting, titles, number);
  // A short part of a long rod need not repeat how the boards are placed.
  const short: Lettering = { ...lettering, place: lettering.place.slice(0, 1) };
  const { top, letter } = rodStrip(BREADTH, height, lettering, short);
  return {
    name: `${titles.stem}-setting-rod`,
    title: `${titles.item}, setting rod for the fingers`,
    count: 1,
    width: WIDTH,
    height: top,
    overhang: 1,
    splittable: { x: [], y: setting.pairs.map(({ from, to }): Interval => [from, to]) },
    taped: { y: tapedUp({ edge: REFERENCE_EDGE, upper: titles.upper }, height) },
    draw: (splits) => {
      const parts = betweenSplits(splits.y, height);
      return {
        box: { x0: -1, y0: -1, x1: WIDTH + 1, y1: top + 1 },
        marks: [
          fingerMarks(setting),
          ...lineMarks(setting, top),
          edgeMark(WIDTH / 2),
          ...parts.flatMap((part) => words(setting, titles, part)),
          ...letter(parts),
        ],
      };
    },
  };
};

const letteringOf = (
  { from, bush, cutter, pairs, supports }: RodSetting,
  { item, shorter, units, ends }: SettingTitles,
  number: number,
): Lettering => {
  const length = (value: number): string => formatLength(value, units);
  const [atRight, atLeft] = [lettersSeen(ends, 'left'), lettersSeen(ends, 'right')];
  const board = (edge: string, outside: string, inside: string): Label =>
    textLabel(
      'bold',
      `reference edge at your ${edge}: ${outside} OUTSIDE FACE, ${inside} INSIDE FACE towards you`,
      `edge at your ${edge}: ${outside} OUTSIDE, ${inside} INSIDE FACE to you`,
      `${edge}: ${outside} OUTSIDE, ${inside} INSIDE to you`,
    );
  return {
    name: [
      textLabel(
        'bold',
        `${number} · ${item} · setting rod`,
        ...shorter.flatMap((wording) => [
          `${number} · ${wording} · setting rod`,
          `${number} · ${wording} · rod`,
        ]),
        `rod ${number}`,
      ),
    ],
    about: [
      textLabel(
        'regular',
        spacersText(pairs, (value) => formatNumber(value, finest(units))),
      ),
      textLabel('regular', `guide bush ${length(bush)}`, `bush ${length(bush)}`),
      textLabel(
        'regular',
        `dovetail cutter ${length(cutter.diameter)}, ${length(cutter.depth)} below the board’s end`,
        `cutter ${length(cutter.diameter)}, depth ${length(cutter.depth)}`,
      ),
      scaleBar(units),
    ],
    place: [
      textLabel('regular', ...mapped(REFERENCE_EDGE, (wording) => `← ${wording}`)),
      board('right', atRight, atLeft),
      board('left', atLeft, atRight),
      ...(from > 0
        ? [textLabel('regular', `joint starts ${length(from)} above`, `joint ${length(from)} above`)]
        : []),
      ...(supports
        ? [textLabel('regular', 'beyond the half spaces a support under the router', 'supports beyond')]
        : []),
    ],
  };
};

const mapped = (
  [fullest, ...shorter]: readonly [string, ...string[]],
  change: (wording: string) => string,
): [string, ...string[]] => [change(fullest), ...shorter.map(change)];

/** The spacers of a setting in order, once where all are equal. */
const spacersText = (pairs: RodSetting['pairs'], number: (value: number) => string): string => {
  const shown = pairs.map(({ spacer }) => (spacer > 0 ? number(spacer) : 'none'));
  const [only] = shown;
  if (new Set(shown).size === 1) return only === 'none' ? 'no spacers' : `spacers ${only}`;
  return `spacers from the edge: ${shown.join(', ')}`;
};

const lineMarks = (setting: RodSetting, top: number): StrokeMark[] => {
  const { pairs, from, to: height } = setting;
  const right = WIDTH - MARKS;
  const levels = [...(from > 0 ? [from] : []), ...pairs.flatMap((pair) => [pair.from, pair.to])];
  const inner = pairs.flatMap((pair) => [...new Set(innerEdges(pair, setting))]);
  return [
    stroke(
      'square',
      'saw',
      [0, right].flatMap((x) => levels.map((u) => line(x, u, x + MARKS, u))),
    ),
    ...(inner.length > 0
      ? [
          stroke(
            'square',
            'thin',
            inner.map((u) => line(right, u, WIDTH, u)),
          ),
        ]
      : []),
    ...rodOutline(BREADTH, height, top),
  ];
};

/** Grey of the fingers beside their spacers: 0 black to 1 paper. */
const TONE = 0.85;

const fingerMarks = (setting: RodSetting): FillMark => ({
  kind: 'fill',
  role: 'label',
  tone: TONE,
  paths: setting.pairs.flatMap((pair) => {
    const [low, high] = innerEdges(pair, setting);
    const fingers: readonly Interval[] = [
      [pair.from, low],
      [high, pair.to],
    ];
    return fingers.map(([from, to]) => rectangle(WIDTH - MARKS, from, WIDTH, to));
  }),
});

/** The two faces of a pair's spacer; without one, the line where its fingers meet. */
const innerEdges = ({ from, to, spacer }: FingerPair, { together }: RodSetting): Interval =>
  spacer > 0 ? [from + together / 2, to - together / 2] : [(from + to) / 2, (from + to) / 2];

/** What is between the marks of one part: the pairs by number and the gaps at one edge, the spacers at the other. */
const words = (setting: RodSetting, { units }: SettingTitles, part: Interval): TextMark[] => {
  const { pairs, gaps, from, to } = setting;
  const number = (value: number): string => formatNumber(value, finest(units));
  const outer = setting.supports ? 'SUPPORT' : 'NO FINGER';
  const left: (readonly [Interval, ...string[]])[] = [
    [[from, pairs[0]?.from ?? from], outer],
    ...pairs.map((pair, i) => [[pair.from, pair.to], `PAIR ${i + 1}`, `${i + 1}`] as const),
    ...pairs.slice(1).map((pair, i) => {
      const gap = number(gaps[i] ?? 0);
      return [[pairs[i]?.to ?? 0, pair.from], `GAP ${gap}`, gap] as const;
    }),
    [[pairs.at(-1)?.to ?? to, to], outer],
  ];
  const right = pairs.map((pair) => {
    const spacer = number(pair.spacer);
    return [innerEdges(pair, setting), `SPACER ${spacer}`, spacer] as const;
  });
  const placed = (rooms: typeof left | typeof right, x: number): TextMark[] =>
    rooms.flatMap(([room, ...wordings]) => {
      const [low, high] = [Math.max(room[0], part[0]), Math.min(room[1], part[1])];
      const word = wordings.find((each) => holdsWord([low, high], each));
      return word === undefined ? [] : [centredWord(word, 'bold', 90, [x, (low + high) / 2])];
    });
  return [...placed(left, MARKS / 2), ...placed(right, WIDTH - MARKS / 2)];
};
