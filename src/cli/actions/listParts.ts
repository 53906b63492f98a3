import { cuttingList, roughThickness, roughWidth } from '../../drawer/cuttingList.ts';
import { drawersAndBoxes } from '../../drawer/drawer.ts';
import { SAW_CUT, TRIAL_SPARE, TRIM_SPARE } from '../../drawer/drawerLimits.ts';
import {
  drawerOf,
  letteredBoards,
  type Part,
  partWords,
  type StockTotal,
  stockTotals,
  workedOn,
} from '../../drawer/partsList.ts';
import { Failure, WRONG_INPUT } from '../../files/failure.ts';
import { cuttingListCsv } from '../../project/tables/cuttingListCsv.ts';
import { partsCsv } from '../../project/tables/partsCsv.ts';
import { printJson } from '../../render/json.ts';
import { table } from '../../render/table.ts';
import type { Sawing } from '../../stock/usualSawing.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitOf, unitWords } from '../../units/notation.ts';
import { speak } from '../../units/phrase.ts';
import { MM_PER_INCH } from '../../units/unit.ts';
import type { Climate } from '../../wood/climate.ts';
import { formatPercent } from '../../wood/moisture.ts';
import type { PartsOptions } from '../commands/parts.ts';
import { loadProject } from '../loadProject.ts';
import { cuttingListText, cuttingRecord } from '../report/cuttingListText.ts';
import { spacerPartsRecord } from '../report/fingerRecord.ts';
import { spacerPartsText } from '../report/fingerText.ts';
import { fitTable } from '../report/fitTable.ts';
import { framePartRecord, framePartsText } from '../report/frameText.ts';
import { adviceText, apart, terminalLines } from '../report/jointText.ts';

/** Prints every part of a plan's drawers and boxes, or its cutting list. Throws a Failure where it has none. */
export const listParts = async (plan: string, options: PartsOptions): Promise<void> => {
  const project = await loadProject(plan, options);
  const { units, set, climate, sawing } = project;
  const hasRails = project.joints.some(({ rail }) => rail !== undefined);
  if (drawersAndBoxes(set).length === 0 && !hasRails)
    throw new Failure(
      [`${plan}: there are no drawers and no boxes in this plan, so there are no parts to list`],
      WRONG_INPUT,
    );
  const { frameOfProject, partsOfProject } = await import('../../project/partsOfProject.ts');
  const rows = partsOfProject(project);
  const totals = stockTotals(rows);
  const frame = frameOfProject(project);
  const list = cuttingList(rows, sawing, frame);
  if (options.cuttingList) {
    process.stdout.write(
      options.csv ? cuttingListCsv(list, units) : `${cuttingListText(list, sawing, units).join('\n')}\n`,
    );
    return;
  }
  process.stdout.write(
    options.json
      ? printJson({
          parts: rows.map((row) => partRecord(row, sawing, units)),
          totals,
          cuttingList: list.flatMap(({ rows }) => rows).map(cuttingRecord),
          ...(frame.length > 0 && { frame: frame.map((part) => framePartRecord(part, sawing)) }),
          ...spacerPartsRecord(set),
          ...(climate && { making: { mc: climate.making } }),
          advice: set.advice.map(({ says }) => speak(says, units)),
        })
      : options.csv
        ? partsCsv(rows, units, frame)
        : `${apart([rows.length === 0 ? [] : text(rows, totals, units, climate), framePartsText(frame, units), spacerPartsText(set, units), adviceText(set.advice, units)]).join('\n')}\n`,
  );
};

const partRecord = ({ worked, built, drawer, box, ...part }: Part, saw: Sawing, units: Notation) => ({
  ...(box ? { box: drawer } : { drawer }),
  ...part,
  roughWidth: roughWidth(part, saw),
  roughThickness: roughThickness(part, saw),
  species: part.species ?? null,
  worked: worked.map((phrase) => speak(phrase, units)),
  ...(built && { built: speak(built, units) }),
});

const text = (
  rows: readonly Part[],
  totals: readonly StockTotal[],
  units: Notation,
  climate: Climate | undefined,
): string[] => {
  const length = (value: number): string => formatNumber(value, units);
  const boards = boardsColumn(rows);
  const area = (value: number): string =>
    units !== 'mm'
      ? `${(value / (12 * MM_PER_INCH) ** 2).toFixed(2)} sq ft`
      : `${(value / 1e6).toFixed(3)} m²`;
  const running = (value: number): string =>
    units !== 'mm' ? `${(value / (12 * MM_PER_INCH)).toFixed(2)} ft` : `${(value / 1000).toFixed(2)} m`;
  return [
    ...terminalLines(
      `Lengths in ${unitWords(units)}; the rough length has more at each jointed end: the joint depth and ${formatLength(TRIAL_SPARE, units)}, or on a front or back the side's thickness and ${formatLength(SAW_CUT, units)} where that is more; and ${formatLength(TRIM_SPARE[unitOf(units)], units)} at each end of a solid bottom or a slip, up to the next ${units === 'mm' ? 'mm' : formatLength(MM_PER_INCH / 16, units)}.`,
    ),
    ...(climate ? terminalLines(daySentence(climate)) : []),
    '',
    ...fitTable(
      [
        rows.some(({ box }) => box) ? 'drawer or box' : 'drawer',
        'part',
        'quantity',
        'length',
        'width',
        'thickness',
        'rough',
        'wood',
        ...boards.title,
      ],
      rows.map((row) => [
        drawerOf(row),
        partWords(row),
        String(row.count),
        ...[row.length, row.width, row.thickness, row.roughLength].map(length),
        row.species ?? '',
        ...boards.cells(row),
      ]),
      [false, false, true, true, true, true, true, false, ...boards.title.map(() => false)],
      2,
    ),
    '',
    ...rows.flatMap((row) =>
      workedOn(row).flatMap((phrase) =>
        terminalLines(`${drawerOf(row)} ${partWords(row)}: ${speak(phrase, units)}`),
      ),
    ),
    '',
    'In all, at rough length, before planing and sawing:',
    ...table(
      ['wood', 'thickness', 'parts', 'area', 'length'],
      totals.map((total) => [
        total.species ?? 'not named',
        length(total.thickness),
        String(total.count),
        area(total.area),
        running(total.length),
      ]),
      [false, true, true, true, true],
    ),
  ];
};

/** The boards that parts come out of: no column where the plan lists none. */
const boardsColumn = (rows: readonly Part[]) =>
  rows.some((row) => row.boards)
    ? { title: ['boards'], cells: (part: Part) => [letteredBoards(part).join(', ')] }
    : { title: [], cells: () => [] };

/** Which day's sizes these are. */
const daySentence = ({ making }: Climate): string =>
  `These are the sizes on the day of making, for wood of ${formatPercent(making)} moisture content. If your wood is damper or drier, change climate.making in the plan.`;
