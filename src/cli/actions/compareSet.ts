import { madeCabinet } from '../../drawer/arrangement/cabinetOf.ts';
import { USUAL_FRONT } from '../../drawer/drawerSpec.ts';
import { layOutWidths } from '../../drawer/layOutWidths.ts';
import { Failure, refuseOptions, WRONG_INPUT } from '../../files/failure.ts';
import { glueArea } from '../../joint/gauges.ts';
import { meanPin, meanTail } from '../../joint/joint.ts';
import { kindFor } from '../../joint/kinds/kinds.ts';
import { frontCorners } from '../../project/project.ts';
import type { ComparedSet } from '../../project/sheetsOf.ts';
import { printJson } from '../../render/json.ts';
import { toolingOf } from '../../router/limits/layOutWith.ts';
import type { Complaint } from '../../units/complaint.ts';
import { areaNumber, areaUnit, formatLength, formatNumber } from '../../units/formatLength.ts';
import { unitOf } from '../../units/notation.ts';
import type { CompareOptions } from '../commands/compare.ts';
import { loadProject } from '../loadProject.ts';
import { atOption } from '../options/atOption.ts';
import { bareUnit } from '../options/notationOptions.ts';
import { optionReader } from '../options/optionReader.ts';
import { lengthsTyped, readJointOptions } from '../options/readJointOptions.ts';
import { fitTable } from '../report/fitTable.ts';
import { adviceText, familySentence, terminalLines } from '../report/jointText.ts';

/** The corners to be compared, and the advice on them. */
interface Comparison extends ComparedSet {
  readonly advice: readonly Complaint[];
}

/** Prints the comparison of a plan's corners, or of bare widths, and draws it with --out. */
export const compareSet = async (plan: string | undefined, options: CompareOptions): Promise<void> => {
  const comparison = options.widths === undefined ? await ofPlan(plan, options) : ofWidths(options);
  if (options.widths !== undefined && options.out !== undefined)
    await (await import('../readyLetters.ts')).readyNameLetters(options.name, options.font);
  // Drawing is loaded only with --out.
  const drawn =
    options.out === undefined
      ? []
      : await (await import('./drawComparison.ts')).drawComparison(comparison, options, options.out);
  process.stdout.write(
    options.json ? printJson(record(comparison)) : `${[...text(comparison), ...drawn].join('\n')}\n`,
  );
};

const ofPlan = async (plan: string | undefined, options: CompareOptions): Promise<Comparison> => {
  if (plan === undefined)
    throw new Failure(
      ['--widths: give a plan, or the widths to compare; try --widths 60,90,140,200'],
      WRONG_INPUT,
    );
  const { name, units, set } = await loadProject(plan, { ...options, draws: options.out !== undefined });
  if (set.family === undefined)
    throw new Failure([`${plan}: there are no drawers in this plan to compare`], WRONG_INPUT);
  return {
    name,
    units,
    family: set.family,
    rows: frontCorners(set),
    cabinet: madeCabinet(set.drawers),
    advice: set.advice,
  };
};

/** Boards of a usual drawer, where bare widths are compared without saying what they are made of. */
const USUAL_BOARDS = {
  mm: { tailBoard: '12mm', pinBoard: '20mm' },
  in: { tailBoard: '1/2in', pinBoard: '3/4in' },
};

const ofWidths = (options: CompareOptions): Comparison => {
  const unit = bareUnit(options);
  const read = optionReader(options, unit);
  const widths = read.lengths('widths');
  const { name, spec, units, cutting, pitch, complaints } = readJointOptions({
    ...USUAL_BOARDS[unit],
    ...options,
    kind: options.kind ?? kindFor(lengthsTyped(options), USUAL_FRONT),
    width: `${widths?.[0] ?? 100}mm`,
  });
  const laid = spec && widths ? layOutWidths(spec, widths, toolingOf(cutting, pitch)) : undefined;
  if (laid?.ok !== true || complaints.length > 0)
    return refuseOptions(
      [
        ...read.complaints,
        ...complaints,
        ...(laid?.ok === false ? laid.complaints.map((each) => atOption(each, { pitch })) : []),
      ],
      units,
    );
  return {
    name: options.name === undefined ? 'Bare widths' : name,
    units,
    family: laid.value.family,
    rows: laid.value.joints.map((joint) => ({ name: formatLength(joint.width, units), count: 1, joint })),
    advice: laid.value.joints.flatMap(({ advice }) => advice),
  };
};

const record = ({ family, rows }: Comparison) => ({
  family: { target: family.target, spread: family.spread },
  corners: rows.map(({ name, count, joint, corner }) => ({
    name,
    ...(corner && { corner }),
    count,
    width: joint.width,
    tails: joint.tails.length,
    tail: meanTail(joint),
    pin: meanPin(joint),
    ratio: meanTail(joint) / meanPin(joint),
    glueArea: glueArea(joint),
  })),
});

/** The most rows of the cabinet that are listed. */
const MOST_ROWS = 20;

/** The drawers in their rows, a row a line, where any stand beside each other. */
const cabinetText = ({ rows, cabinet }: Comparison): string[] => {
  if (cabinet === undefined || cabinet.rows.length > MOST_ROWS || cabinet.leftOut > 0) return [];
  if (cabinet.rows.every((row) => row.length === 1)) return [];
  // A corner B is its drawer's second row.
  const drawers = rows.filter(({ corner }) => corner !== 'B');
  const lines = cabinet.rows.map((row) => {
    const runs: { index: number; count: number }[] = [];
    for (const { index } of row) {
      const last = runs.at(-1);
      if (last?.index === index) last.count += 1;
      else runs.push({ index, count: 1 });
    }
    const names = runs.map(({ index, count }) => {
      const name = drawers[index]?.name ?? '';
      return count > 1 ? `${name}, quantity ${count}` : name;
    });
    return `  ${names.join(' | ')}`;
  });
  return [
    '',
    ...terminalLines(
      cabinet.planned
        ? 'Rows from the top:'
        : "Rows from the top, assumed from the plan's order and the heights:",
    ),
    ...lines.flatMap(terminalLines),
  ];
};

const text = (comparison: Comparison): string[] => {
  const { units, family, rows, advice } = comparison;
  return [
    ...fitTable(
      [
        'drawer',
        'count',
        `height ${unitOf(units)}`,
        'tails',
        `tail ${unitOf(units)}`,
        `pin ${unitOf(units)}`,
        'ratio',
        `glue ${areaUnit(units)}`,
      ],
      rows.map(({ name, count, joint, corner }) => [
        corner === undefined ? name : `${name} ${corner}`,
        String(count),
        formatNumber(joint.width, units),
        String(joint.tails.length),
        formatNumber(meanTail(joint), units),
        formatNumber(meanPin(joint), units),
        (meanTail(joint) / meanPin(joint)).toFixed(2),
        areaNumber(glueArea(joint), units),
      ]),
      [false, true, true, true, true, true, true, true],
      1,
    ),
    '',
    ...terminalLines(familySentence(family, units)),
    ...cabinetText(comparison),
    ...adviceText(advice, units),
  ];
};
