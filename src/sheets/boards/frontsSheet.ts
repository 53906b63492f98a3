import type { Cabinet } from '../../drawer/arrangement/cabinetFront.ts';
import { blankName, plankName } from '../../drawer/blanks/blankWords.ts';
import {
  missingSentences,
  runSentences,
  unlistedSentences,
  usedSentence,
} from '../../drawer/blanks/breakoutWords.ts';
import type { BrokenOut } from '../../drawer/blanks/brokenOut.ts';
import type { Box, Drawing, Mark } from '../../drawing/drawing.ts';
import { line, stroke } from '../../drawing/shapes.ts';
import type { Size } from '../../paper/printable.ts';
import type { Blank } from '../../stock/breakout.ts';
import type { Plank } from '../../stock/plank.ts';
import { extentsOf } from '../../stock/polygon.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitWords } from '../../units/notation.ts';
import { type FrontWords, frontsView } from '../elevation.ts';
import { type Block, paragraph, rule, stack, type TextRun } from '../typeset/block.ts';
import { flow, type Group } from '../typeset/flow.ts';
import { columnsOf, tableRow } from '../typeset/tableRow.ts';
import { figure, typeSizes } from '../typeset/typeSizes.ts';
import { blankTitle } from './boardView.ts';
import { sawCautions } from './sawCautions.ts';

const TYPE = typeSizes(1);
const GAP = 5;

export interface FrontsSheetOptions {
  /** The set's name. */
  readonly title: string;
  /** Names of the set's drawers, in the cabinet's order of numbers. */
  readonly drawers: readonly string[];
  readonly cabinet: Cabinet;
  readonly units: Notation;
  readonly area: Size;
}

/** A blank, and the board that it comes from; without one where it is missing. */
interface From {
  readonly wanted: number;
  readonly at?: { readonly blank: Blank; readonly plank: Plank };
}

/**
 * The first board sheet: what is missing and the board to buy, how many boards are cut into, and the fronts of the cabinet, each
 * with the board and the place that it comes from.
 */
export const frontsSheet = (broken: BrokenOut, options: FrontsSheetOptions): readonly Drawing[] => {
  const { title, units, area } = options;
  const { width } = area;
  const head = paragraph([bold(`${title}: board sheets`, TYPE.title * 0.75)], width);
  const missing = missingSentences(broken, units);
  const said = [
    usedSentence(broken),
    ...notCutInto(broken),
    ...unlistedSentences(broken),
    ...runSentences(broken),
  ];
  return flow(
    {
      head: [head, head],
      wide: [
        ...(missing.length === 0
          ? []
          : [missing.map((text) => paragraph([bold(capital(text), TYPE.heading)], width))]),
        [paragraph([plain(said.map(ended).join(' '), TYPE.text)], width)],
        ...fronts(broken, options),
        [sawCautions(width)],
      ],
      narrow: [],
      columns: 1,
      gap: GAP,
    },
    area,
  ).draw();
};

const plain = (text: string, size = TYPE.note): TextRun => ({ text, size, weight: 'regular' });
const bold = (text: string, size: number): TextRun => ({ text, size, weight: 'bold' });

const capital = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`;
const ended = (text: string): string => (text.endsWith('.') ? text : `${text}.`);

const notCutInto = ({ planks, breakout: { boards } }: BrokenOut): string[] => {
  const used = new Set(boards.map(({ plank }) => plank));
  const left = planks.flatMap((plank, i) => (used.has(i) ? [] : [plankName(plank, planks)]));
  return left.length === 0 ? [] : [`Not cut into: ${left.join(', ')}.`];
};

/** The elevation and the list of fronts; nothing where no boards are listed for fronts. */
const fronts = (broken: BrokenOut, { drawers, cabinet, units, area }: FrontsSheetOptions): Group[] => {
  const { blanks, planks } = broken;
  const from = fromOf(broken);
  const listed = from.filter(({ wanted }) => blanks[wanted]?.part === 'front' && !blanks[wanted].spare);
  if (listed.length === 0) return [];
  const frontOf = (drawer: string, copy: number) =>
    listed.filter(({ wanted }) => blanks[wanted]?.drawer === drawer && blanks[wanted].index === copy);
  const hasRuns = broken.breakout.runs.some(({ plank }) => plank !== undefined);
  const view = frontsView(
    cabinet,
    area,
    `each with its letter, its board, and from where to where it lies from the board’s left end, in ${unitWords(units)}${hasRuns ? '; arrows: the figure runs through' : ''}`,
    ({ index }, copy) => frontWords(broken, frontOf(drawers[index] ?? '', copy), units),
  );
  const columns = columnsOf([9, 33, 28, 17, 13], area.width).map((column) => ({
    ...column,
    anchor: 'start' as const,
  }));
  const heading = tableRow(
    columns,
    ['letter', 'front', 'board', 'from left end', 'lower edge'].map((text) => [plain(text)]),
    TYPE.note,
  );
  const rows = listed.map(({ wanted, at }, i): Block => {
    const part = blanks[wanted];
    const place = at && placeOf(at);
    const row = stack([
      rule(area.width, 0.8),
      tableRow(
        columns,
        [
          [bold(blankTitle(blanks, wanted).letter, TYPE.figure)],
          [plain(part === undefined ? '' : blankName(part), TYPE.text)],
          [plain(at === undefined ? 'missing' : plankName(at.plank, planks), TYPE.text)],
          ...(place === undefined
            ? []
            : [figure(formatNumber(place.x, units), TYPE), figure(formatNumber(place.y, units), TYPE)]),
        ],
        TYPE.figure,
      ),
    ]);
    return i === 0 ? stack([heading, row]) : row;
  });
  return [[view], rows];
};

/** Every wanted blank in order, with its place. */
const fromOf = ({ blanks, planks, breakout: { boards } }: BrokenOut): From[] => {
  const places = new Map(
    boards.flatMap(({ plank, blanks: placed }) =>
      placed.flatMap((blank) => {
        const board = planks[plank];
        return board === undefined ? [] : [[blank.wanted, { blank, plank: board }] as const];
      }),
    ),
  );
  return blanks.map((_, wanted) => {
    const at = places.get(wanted);
    return { wanted, ...(at && { at }) };
  });
};

/** Lower left corner of a blank, from its board's left end and lower edge, mm. */
const placeOf = ({ blank, plank }: NonNullable<From['at']>) => {
  const { x0, y0 } = extentsOf(plank.outline);
  return { x: blank.x - x0, y: blank.y - y0 };
};

/** `80 to 395`: from its board's left end. */
const spanWords = (at: NonNullable<From['at']>, units: Notation): string => {
  const { x } = placeOf(at);
  return `${formatNumber(x, units)} to ${formatNumber(x + at.blank.length, units)}`;
};

const frontWords = (broken: BrokenOut, strips: readonly From[], units: Notation): FrontWords => {
  const { blanks, planks } = broken;
  const [first] = strips;
  if (first === undefined) return { number: '–', wordings: ['–'] };
  const number = strips.map(({ wanted }) => blankTitle(blanks, wanted).letter).join(' + ');
  const boards = [...new Set(strips.map(({ at }) => (at ? plankName(at.plank, planks) : 'missing')))];
  const { at } = first;
  const board = boards.join(', ');
  const part = blanks[first.wanted];
  return {
    number,
    wordings: [
      ...(at === undefined || strips.length > 1
        ? []
        : [spanWords(at, units), formatNumber(placeOf(at).x, units)].map(
            (place) => `${number} ${board}, ${place}`,
          )),
      `${number} ${board}`,
      number,
    ],
    ...(part === undefined ? {} : { below: [`${part.drawer} ${part.part} ${part.index}`] }),
    marks: (face) => runMarks(broken, first.wanted, face),
  };
};

/** Length of an arrow's head, and distance of the arrow from a front's edge, mm. */
const HEAD = 1.2;
const OFF = 1.3;

/** Arrows along a front to those beside it or above and below it whose figure its own runs on to. */
const runMarks = ({ runs, breakout }: BrokenOut, wanted: number, face: Box): Mark[] =>
  runs.flatMap(({ kind, wish }, i): Mark[] => {
    const pieces = wish?.pieces ?? [];
    const place = pieces.indexOf(wanted);
    if (place < 0 || pieces.length < 2 || breakout.runs[i]?.plank === undefined) return [];
    const [before, after] = [place > 0, place < pieces.length - 1];
    const { x0, y0, x1, y1 } = face;
    if (kind === 'row') {
      const y = y0 + OFF;
      const [from, to] = [x0 + OFF, x1 - OFF];
      return [
        stroke('label', 'thin', [
          line(from, y, to, y),
          ...(before ? [head([from, y], [HEAD, 0])] : []),
          ...(after ? [head([to, y], [-HEAD, 0])] : []),
        ]),
      ];
    }
    // Upright arrows stand at a front's left, beside its words.
    const x = x0 + OFF;
    const [from, to] = [y0 + OFF, y1 - OFF];
    return [
      stroke('label', 'thin', [
        line(x, from, x, to),
        ...(before ? [head([x, from], [0, HEAD])] : []),
        ...(after ? [head([x, to], [0, -HEAD])] : []),
      ]),
    ];
  });

/** An open arrow head at a tip; its sides run back the way given. */
const head = ([x, y]: readonly [number, number], [dx, dy]: readonly [number, number]) => ({
  points: [
    [x + dx + dy / 2, y + dy + dx / 2],
    [x, y],
    [x + dx - dy / 2, y + dy - dx / 2],
  ] as const,
});
