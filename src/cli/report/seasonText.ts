import type { Drawer } from '../../drawer/drawer.ts';
import type { DrawerSeason } from '../../drawer/drawerSeason.ts';
import type { GapSeason } from '../../drawer/gaps.ts';
import { partWords } from '../../drawer/partsList.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { table } from '../../render/table.ts';
import type { Complaint } from '../../units/complaint.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitOf, unitWords } from '../../units/notation.ts';
import { cut } from '../../units/shortNames.ts';
import { slotToCut } from '../../wood/bottomSeason.ts';
import type { Climate, Seasonal } from '../../wood/climate.ts';
import { GAP_BAND } from '../../wood/gapBand.ts';
import { formatPercent } from '../../wood/moisture.ts';
import { type SawnWood, thicknessCoefficient, widthCoefficient } from '../../wood/movement.ts';
import { SOURCE_NOTES } from '../../wood/species.ts';
import { adviceText, apart, terminalLines } from './jointText.ts';

/** A drawer, and what the year does to it. */
export interface SeasonedDrawer {
  readonly drawer: Drawer;
  readonly season: DrawerSeason;
}

/** What the year does to a set, in tables no wider than the terminal. */
export const seasonText = (
  climate: Climate,
  drawers: readonly SeasonedDrawer[],
  advice: readonly Complaint[],
  units: Notation,
): string[] =>
  apart([
    terminalLines(
      `Moisture content: ${formatPercent(climate.making)} when made, ${formatPercent(climate.driest)} when driest, ${formatPercent(climate.dampest)} when dampest.`,
    ),
    woodsText(drawers),
    leaveText(drawers, units),
    gapsText(drawers, units),
    widthsText(drawers, units),
    thicknessText(drawers, units),
    bottomsText(drawers, units),
    cornersText(drawers, units),
    adviceText(advice, units),
  ]);

/** The most letters of a drawer's and of a wood's name in a table. */
const NAME = 14;
const WOOD = 24;

const shortName = ({ drawer: { spec } }: SeasonedDrawer): string => cut(spec.name, NAME);

/** Rows that are the same for many drawers, once. */
const once = (rows: readonly (readonly string[])[]): (readonly string[])[] => [
  ...new Map(rows.map((row) => [JSON.stringify(row), row])).values(),
];

const numbers = (count: number, ...words: readonly boolean[]): boolean[] => [
  ...words,
  ...new Array<boolean>(count).fill(true),
];

const cells = ({ making, driest, dampest }: Seasonal<number>, units: Notation): string[] =>
  [making, driest, dampest].map((value) => formatNumber(value, units));

/** The wood of every kind of part, and the change of its width and thickness for 1 % of moisture content. */
const woodsText = (drawers: readonly SeasonedDrawer[]): string[] => {
  const percent = (of: typeof widthCoefficient, { wood, cut: sawn }: SawnWood): string =>
    (100 * of(wood, sawn)).toFixed(3);
  const stocks = drawers.flatMap(({ drawer: { spec }, season }) =>
    season.parts.flatMap(({ part, stock }) => {
      const assumed = spec.stock[part === 'slip' ? 'side' : part].grain === undefined;
      return stock === null ? [] : [{ part, stock, assumed }];
    }),
  );
  const sources = [...new Set(stocks.map(({ stock }) => stock.wood.source))];
  const assumed = [...new Set(stocks.flatMap((each) => (each.assumed ? [each.part] : [])))];
  return [
    ...table(
      ['part', 'wood', 'cut', 'width', 'thickness'],
      once(
        stocks.map(({ part, stock }) => [
          part,
          cut(stock.wood.name, WOOD),
          stock.cut,
          `${percent(widthCoefficient, stock)} %`,
          `${percent(thicknessCoefficient, stock)} %`,
        ]),
      ),
      [false, false, false, true, true],
    ),
    ...terminalLines(
      `For each 1 % of moisture content; lengths do not move. ${sources.map((source) => sourceSentence(source, stocks)).join(' ')}`,
    ),
    ...(assumed.length === 0
      ? []
      : terminalLines(
          `Where no grain is given (${assumed.join(', ')}) the wood is assumed flatsawn, which moves more across its width: the safe side.`,
        )),
  ];
};

const sourceSentence = (
  source: keyof typeof SOURCE_NOTES,
  stocks: readonly { readonly stock: SawnWood }[],
): string => {
  const names = new Set(stocks.flatMap(({ stock: { wood } }) => (wood.source === source ? [wood.name] : [])));
  return `${[...names].join('; ')}: ${SOURCE_NOTES[source]}.`;
};

const leaveText = (drawers: readonly SeasonedDrawer[], units: Notation): string[] => {
  const rows = drawers.flatMap((each) => {
    const { spec, sizes } = each.drawer;
    const { gaps } = each.season;
    return gaps === undefined || spec.space.kind === 'size'
      ? []
      : [
          [
            shortName(each),
            String(spec.count),
            ...[spec.space.opening.height, gaps.leave, gaps.front.gap.making, sizes.height].map((value) =>
              formatNumber(value, units),
            ),
          ],
        ];
  });
  return rows.length === 0
    ? []
    : [
        ...terminalLines(
          `The gap to leave above when made, ${unitWords(units)}, so that ${formatLength(GAP_BAND.least, units)} is left when dampest:`,
        ),
        ...table(['drawer', 'quantity', 'opening', 'leave', 'left', 'made'], rows, numbers(5, false)),
      ];
};

const gapsText = (drawers: readonly SeasonedDrawer[], units: Notation): string[] => {
  const rows = drawers.flatMap((each) => {
    const { gaps } = each.season;
    const row = (where: string, { gap, verdict }: GapSeason): string[] => [
      shortName(each),
      where,
      ...cells(gap, units),
      verdict,
    ];
    return gaps === undefined
      ? []
      : [row('front', gaps.front), row('sides', gaps.side), row('beside', gaps.beside)];
  });
  return rows.length === 0
    ? []
    : [
        ...terminalLines(
          `The gaps through the year, ${unitWords(units)}: above the front, above the sides, and beside each side. Above, a drawer sticks under ${formatLength(GAP_BAND.least, units)}, and a gap over ${formatLength(GAP_BAND.most, units)} shows.`,
        ),
        ...table(['drawer', 'gap', 'made', 'driest', 'dampest', ''], rows, [
          ...numbers(3, false, false),
          false,
        ]),
      ];
};

const widthsText = (drawers: readonly SeasonedDrawer[], units: Notation): string[] => [
  `Widths, ${unitWords(units)}:`,
  ...table(
    ['drawer', 'part', 'quantity', 'made', 'driest', 'dampest'],
    drawers.flatMap((each) =>
      each.season.parts.map(({ count, width, ...part }) => [
        shortName(each),
        partWords(part),
        String(count),
        ...cells(width, units),
      ]),
    ),
    numbers(4, false, false),
  ),
];

const thicknessText = (drawers: readonly SeasonedDrawer[], units: Notation): string[] => [
  `Thicknesses, ${unitWords(units)}:`,
  ...table(
    ['part', 'wood', 'made', 'driest', 'dampest'],
    once(
      drawers.flatMap(({ season }) =>
        season.parts.map(({ part, stock, thickness }) => [
          part,
          stock === null ? 'panel' : cut(stock.wood.name, WOOD),
          ...cells(thickness, units),
        ]),
      ),
    ),
    numbers(3, false, false),
  ),
];

const bottomsText = (drawers: readonly SeasonedDrawer[], units: Notation): string[] => {
  const solid = drawers.flatMap((each) => {
    const { depth, slot } = each.season.bottom;
    return slot === null ? [] : [{ name: shortName(each), depth, slot: slotToCut(slot, unitOf(units)) }];
  });
  if (solid.length === 0) return ['The bottoms are panels, and do not move.'];
  return [
    ...terminalLines(
      `Solid bottoms, ${unitWords(units)}, from front to back: what is made is the depth to cut.${solid.length < drawers.length ? ' The others are panels, and do not move.' : ''}`,
    ),
    ...table(
      ['drawer', 'made', 'driest', 'dampest'],
      solid.map(({ name, depth }) => [name, ...cells(depth, units)]),
      numbers(3, false),
    ),
    ...terminalLines(
      "The slot for each screw under the back: its length, and how far its front end is ahead of the screw's middle.",
    ),
    ...table(
      ['drawer', 'slot', 'ahead'],
      solid.map(({ name, slot }) => [
        name,
        formatNumber(slot.length, units),
        formatNumber(slot.ahead, units),
      ]),
      numbers(2, false),
    ),
  ];
};

const cornersText = (drawers: readonly SeasonedDrawer[], units: Notation): string[] => {
  const flush = drawers.flatMap((each) => {
    const { corners } = each.season;
    return corners === undefined ? [] : [{ ...each, corners }];
  });
  if (flush.length === 0) return [];
  const step = (value: number): string => formatNumber(value, units);
  const open = flush.filter(({ drawer: { front } }) => kindOf(front).sockets === 'open');
  return [
    ...terminalLines(
      `Front corners planed flush when made, ${unitWords(units)}: how far the side's upper edge will be proud of the front's, and the pins' ends of the side's face; less than 0 is below flush.`,
    ),
    ...table(
      ['drawer', 'edge driest', 'edge dampest', 'pins driest', 'pins dampest'],
      flush.map((each) => [
        shortName(each),
        ...[
          each.corners.driest.topEdge,
          each.corners.dampest.topEdge,
          each.corners.driest.pinEnds,
          each.corners.dampest.pinEnds,
        ].map(step),
      ]),
      numbers(4, false),
    ),
    ...(open.length === 0
      ? []
      : [
          ...terminalLines("And the tails' ends of the front's face:"),
          ...table(
            ['drawer', 'tails driest', 'tails dampest'],
            open.map((each) => [
              shortName(each),
              step(each.corners.driest.tailEnds),
              step(each.corners.dampest.tailEnds),
            ]),
            numbers(2, false),
          ),
        ]),
  ];
};
