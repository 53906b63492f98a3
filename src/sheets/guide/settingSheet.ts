import type { SpacerGroup } from '../../drawer/spacers/spacerList.ts';
import { SPACER_TOLERANCE } from '../../drawer/spacers/spacersToCut.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import type { Size } from '../../paper/printable.ts';
import { fingersMoved } from '../../router/fingers/settingOrder.ts';
import { CAUTIONS, FINGER_CAUTIONS } from '../../router/limits/cautions.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { finest, type Notation, unitWords } from '../../units/notation.ts';
import { speak } from '../../units/phrase.ts';
import { type Block, beside, paragraph, rule, stack, type TextRun } from '../typeset/block.ts';
import { flow } from '../typeset/flow.ts';
import { type Column, tableRow } from '../typeset/tableRow.ts';
import { figure, typeSizes } from '../typeset/typeSizes.ts';
import { lettersSeen } from './seenCorners.ts';
import type { NamedSetting } from './settingsToMake.ts';

/** What is cut and set for the fingers of a set. Lengths in mm. */
export interface FingerWork {
  /** In the order in which they are set. */
  readonly settings: readonly NamedSetting[];
  /** Spacers to cut, spares among them; none for single corners, whose rods name theirs. */
  readonly spacers: readonly SpacerGroup[];
  /** Width of the block that checks every gap; absent where gaps differ. */
  readonly block?: number;
}

const TYPE = typeSizes(1);
const { heading: HEADING, text: SIZE } = TYPE;

/** Width of the columns of figures, and gap between columns, mm. */
const FIGURES = 24;
const GAP = 3;

/** The sheets before the setting rods: the order of the settings, the spacers to cut, and how to work with them. */
export const settingSheets = (
  title: string,
  { settings, spacers, block }: FingerWork,
  units: Notation,
  area: Size,
): readonly Drawing[] => {
  const { width } = area;
  const head = paragraph(
    [{ text: `${title}: fingers and spacers`, size: 1.3 * HEADING, weight: 'bold' }],
    width,
  );
  const steps = [...FINGER_CAUTIONS, ...CAUTIONS].map((phrase): string => speak(phrase, units));
  return flow(
    {
      head: [head, head],
      wide: [
        ...(spacers.length > 0 ? [spacerRows(spacers, units, width)] : []),
        ...(block === undefined ? [] : [[blockNote(block, units, width)]]),
        orderRows(settings, units, width),
        [paragraph([regular(faceNote(settings))], width)],
        steps.map((text, i) =>
          i === 0 ? stack([titleOf('At the router', width), listed(text, width)]) : listed(text, width),
        ),
      ],
      narrow: [],
      columns: 1,
      gap: 2.4,
    },
    area,
  ).draw();
};

const regular = (text: string): TextRun => ({ text, size: SIZE, weight: 'regular' });
const bold = (text: string): TextRun => ({ text, size: SIZE, weight: 'bold' });

const titleOf = (text: string, width: number): Block =>
  paragraph([{ text, size: HEADING, weight: 'bold' }], width);

const listed = (text: string, width: number): Block =>
  beside([
    [0, paragraph([bold('–')], 5)],
    [5, paragraph([regular(text)], width - 5)],
  ]);

/** So many columns of figures, and the rest of the width for words. */
const columnsFor = (figures: number, width: number): Column[] => [
  ...Array.from(
    { length: figures },
    (_, i): Column => ({ left: i * (FIGURES + GAP), width: FIGURES, anchor: 'end' }),
  ),
  { left: figures * (FIGURES + GAP), width: width - figures * (FIGURES + GAP), anchor: 'start' },
];

const spacerRows = (spacers: readonly SpacerGroup[], units: Notation, width: number): Block[] => {
  const fine = finest(units);
  const columns = columnsFor(2, width);
  const tolerance = formatLength(SPACER_TOLERANCE, fine);
  const heading = stack([
    titleOf('Spacers to cut', width),
    paragraph(
      [
        regular(
          `Of hardwood or sheet material, each to its thickness in ${unitWords(fine)}, within ${tolerance} over or under; one spare is counted. Write its thickness and corners on each.`,
        ),
      ],
      width,
    ),
    tableRow(columns, [[regular('thickness')], [regular('quantity')], [regular('corners')]], SIZE),
  ]);
  return spacers.map((group, i) => {
    const row = stack([
      rule(width, 0.8),
      tableRow(
        columns,
        [
          figure(formatNumber(group.width, fine), TYPE),
          figure(String(group.count), TYPE),
          [bold(`${group.corner}:`), regular(group.drawers.join(', '))],
        ],
        TYPE.figure,
      ),
    ]);
    return i === 0 ? stack([heading, row]) : row;
  });
};

const blockNote = (block: number, units: Notation, width: number): Block =>
  paragraph(
    [
      bold('Gap block:'),
      ...figure(formatLength(block, finest(units)), TYPE),
      regular('wide, one. It checks the gap between any two pairs; it sets none.'),
    ],
    width,
    { strut: TYPE.figure },
  );

const orderRows = (settings: readonly NamedSetting[], units: Notation, width: number): Block[] => {
  const columns = columnsFor(3, width);
  const heading = stack([
    titleOf('Order of settings', width),
    paragraph(
      [
        regular(
          `In this order the fewest fingers are moved. The cutter’s depth is in ${unitWords(units)}; a pair more or fewer is two fingers.`,
        ),
      ],
      width,
    ),
    tableRow(
      columns,
      [[regular('depth')], [regular('pairs')], [regular('to move')], [regular('setting rod')]],
      SIZE,
    ),
  ]);
  return settings.map(({ setting, titles }, i) => {
    const before = settings[i - 1]?.setting.pairs ?? [];
    const row = stack([
      rule(width, 0.8),
      tableRow(
        columns,
        [
          figure(formatNumber(setting.cutter.depth, units), TYPE),
          figure(String(setting.pairs.length), TYPE),
          figure(String(fingersMoved(before, setting.pairs).fingers), TYPE),
          [bold(`${i + 1}`), regular(titles.names.join(', '))],
        ],
        TYPE.figure,
      ),
    ]);
    return i === 0 ? stack([heading, row]) : row;
  });
};

/** How one setting serves left and right corners. */
const faceNote = (settings: readonly NamedSetting[]): string => {
  const ends = [...new Set(settings.flatMap(({ titles }) => titles.ends))];
  const [drawn, other] = [lettersSeen(ends, 'left'), lettersSeen(ends, 'right')];
  return `One setting serves left and right corners: put the stop and the rod’s reference edge at your right. Clamp the tail boards of corners ${drawn} with their OUTSIDE FACE towards you, those of ${other} with their INSIDE FACE. With the stop at your left it is the other way round.`;
};
