import { dividers, groupDividers } from '../../joint/gauges.ts';
import { type Joint, meanPin, meanTail } from '../../joint/joint.ts';
import type { BoardNames } from '../../joint/kinds/kind.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { railLength, railWork, type TopRail } from '../../joint/topRail.ts';
import type { Size } from '../../paper/printable.ts';
import { CAUTIONS } from '../../router/limits/cautions.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { speak } from '../../units/phrase.ts';
import { formatSlope } from '../../units/slope.ts';
import { type Block, beside, paragraph, rule, space, stack, type TextRun } from '../typeset/block.ts';
import { type Flow, flow } from '../typeset/flow.ts';
import { columnsOf, tableRow } from '../typeset/tableRow.ts';
import { figure, typeSizes } from '../typeset/typeSizes.ts';
import { TAKE_CARE } from './benchInstructions.ts';

/** A single corner to be made, and what its boards are called. */
export interface BenchCorner {
  readonly name: string;
  readonly joint: Joint;
  readonly boards: Pick<BoardNames, 'tail' | 'pin'>;
  /** Whether a router cuts what it can of it first. */
  readonly routed: boolean;
  /** What its tail board is, where that is a rail over the drawers. */
  readonly rail?: TopRail;
}

export interface CornersBenchOptions {
  readonly title: string;
  readonly units: Notation;
  /** Usable area of a page, mm. */
  readonly area: Size;
}

const TYPE = typeSizes(1);
const GAP = 6;
/** The least width of a column, mm, and shares of it: the label, then the figure. */
const COLUMN = 85;
const SHARES = [70, 30];
const VARIED = 'varied';

/** The bench sheet of single corners, as a carcase's: the settings of each, its order of work, and which way a lap faces. */
export const cornersBench = (
  corners: readonly BenchCorner[],
  { title, units, area }: CornersBenchOptions,
): Flow => {
  const { width } = area;
  const columns = Math.max(1, Math.floor((width + GAP) / (COLUMN + GAP)));
  const column = (width - (columns - 1) * GAP) / columns;
  const head = paragraph([{ text: `${title}: corners`, size: 0.75 * TYPE.title, weight: 'bold' }], width);
  const routed = corners.some((corner) => corner.routed);
  return flow(
    {
      head: [head, head],
      wide: [],
      narrow: [
        ...corners.map((corner) => cornerRows(corner, units, column)),
        ...(routed
          ? [
              section(
                'At the router',
                CAUTIONS.map((phrase) => speak(phrase, units)),
                column,
              ),
            ]
          : []),
        section(
          TAKE_CARE.heading,
          TAKE_CARE.lines.map(({ text }) => text),
          column,
        ),
      ],
      columns,
      gap: GAP,
    },
    area,
  );
};

const regular = (text: string): TextRun => ({ text, size: TYPE.text, weight: 'regular' });
const bold = (text: string): TextRun => ({ text, size: TYPE.text, weight: 'bold' });

/** A corner's name and boards with its settings under rules; and its steps. */
const cornerRows = (corner: BenchCorner, units: Notation, width: number): Block[] => {
  const { name, joint, rail } = corner;
  const { kind, tailBoard, pinBoard } = joint;
  const length = (value: number): string => formatLength(value, units).replaceAll(' ', '\u00A0');
  const { lengths, inCarcase } = kindOf(joint);
  const own = lengths.map(({ word, of }) => `, ${word} ${length(of(joint))}`);
  const about = `${kind}, ${length(joint.width)} wide; ${corner.boards.tail} ${length(tailBoard.thickness)}, ${corner.boards.pin} ${length(pinBoard.thickness)} thick${own.join('')}`;
  const columns = columnsOf(SHARES, width);
  return [
    stack([
      paragraph([{ text: name, size: TYPE.heading, weight: 'bold' }], width),
      paragraph([regular(about)], width),
      ...settingsOf(corner, units).map(([label, value]) =>
        stack([rule(width, 0.8), tableRow(columns, [[regular(label)], figure(value, TYPE)], TYPE.figure)]),
      ),
    ]),
    stack([
      space(0.5 * TYPE.text),
      ...(inCarcase === undefined || rail !== undefined ? [] : [row('–', speak(inCarcase, units), width)]),
      ...numbered(stepsOf(corner, units), width),
    ]),
  ];
};

/** Gauge, bevel and dividers of a corner, each with what it is set to. */
const settingsOf = ({ joint, boards, rail }: BenchCorner, units: Notation): (readonly [string, string])[] => {
  const number = (value: number): string => formatNumber(value, units);
  const { even, shoulder, mitre, slope, tails } = joint;
  const [stepping, inGroups] = [dividers(joint), groupDividers(joint)];
  return [
    ...(rail === undefined
      ? []
      : ([
          ['rail, with its tails', number(railLength(rail, joint))],
          ['between its shoulders', number(rail.between)],
          ...(rail.setBack > 0 ? [['behind the sides’ front edges', number(rail.setBack)]] : []),
        ] as [string, string][])),
    ...kindOf(joint)
      .gauges(joint)
      .map(({ board, on, line, from, length }) => {
        const surface = on === 'end' ? 'end grain' : on;
        return [
          `gauge ${boards[board]}, ${line === undefined ? '' : `${line}, `}${surface}, from ${from}, ${unitOf(units)}`,
          number(length),
        ] as const;
      }),
    ...(['lower', 'upper'] as const)
      .filter((edge) => shoulder[edge] > 0)
      .map((edge) => [`mitred shoulder, ${edge} edge`, number(shoulder[edge])] as const),
    ...(mitre === undefined
      ? []
      : [[`mitre, off the ${boards.tail}’s face`, `${Number(mitre.degrees.toFixed(2))}°`] as const]),
    ['slope (sliding bevel)', formatSlope(slope)],
    ['tails', String(tails.length)],
    ['tail width', even ? number(meanTail(joint)) : VARIED],
    ['pin width', even ? number(meanPin(joint)) : VARIED],
    ...(stepping === undefined
      ? []
      : [
          [units === 'mm' ? 'dividers' : 'dividers, near', number(stepping.step)] as const,
          ['step up from', number(stepping.from)] as const,
          ...(units === 'mm' ? [] : [['last step up ends at', number(stepping.upTo)] as const]),
          ['step down from', number(stepping.downFrom)] as const,
        ]),
    ...(inGroups === undefined
      ? []
      : [
          [
            units === 'mm' ? 'dividers, in each group' : 'dividers, in each group, near',
            number(inGroups.step),
          ] as const,
          ...inGroups.groups.flatMap(({ from, downFrom }) => [
            ['in a group step up from', number(from)] as const,
            ['and down from', number(downFrom)] as const,
          ]),
        ]),
  ];
};

/** Its own order of work, or the usual one: tails first, and the pins scribed from them. */
const stepsOf = ({ joint, boards, routed, rail }: BenchCorner, units: Notation): string[] => {
  if (rail !== undefined) return railWork(rail, joint, routed).map((phrase) => speak(phrase, units));
  const own = kindOf(joint)
    .work(joint, { ...boards, routed })
    .map((phrase) => speak(phrase, units));
  const usual = [
    'Gauge every end.',
    ...(routed
      ? [
          'Cut with the router what it reaches; halfpin lay prints its settings.',
          'Fit dry; pare what shines.',
        ]
      : [
          `Glue the templates on the ${boards.tail}’s ends. Saw and chop the tails.`,
          `Scribe the pins from the tails, each corner from its own. Saw the pins, chop the sockets.`,
          'Fit dry; pare what shines.',
        ]),
  ];
  return own.length > 0 ? own : usual;
};

const numbered = (steps: readonly string[], width: number): Block[] =>
  steps.map((text, i) => row(String(i + 1), text, width));

const section = (heading: string, lines: readonly string[], width: number): Block[] => [
  stack([
    paragraph([{ text: heading, size: TYPE.heading, weight: 'bold' }], width),
    ...lines.map((text) => row('–', text, width)),
  ]),
];

const row = (mark: string, text: string, width: number): Block => {
  const indent = 1.7 * TYPE.text;
  return beside([
    [0, paragraph([bold(mark)], indent)],
    [indent, paragraph([regular(text)], width - indent)],
  ]);
};
