import type { CabinetOpening } from '../../cabinet/openings.ts';
import { Failure, WRONG_INPUT } from '../../files/failure.ts';
import type { Project } from '../../project/project.ts';
import { printJson } from '../../render/json.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitWords } from '../../units/notation.ts';
import type { CabinetOptions } from '../commands/cabinet.ts';
import { loadProject } from '../loadProject.ts';
import { fitTable } from '../report/fitTable.ts';
import { adviceText, apart, terminalLines } from '../report/jointText.ts';

/** Prints the opening of every drawer of a plan's cabinet. Throws a Failure where it gives none. */
export const listOpenings = async (plan: string, options: CabinetOptions): Promise<void> => {
  const project = await loadProject(plan, options);
  const { units, set } = project;
  const openings = set.drawers.flatMap(({ spec: { space } }) =>
    space.kind === 'opening' ? (space.places ?? []) : [],
  );
  if (openings.length === 0)
    throw new Failure(
      [
        `${plan}: this plan gives no cabinet, so its openings are those of its drawers; try cabinet: {width: 600, height: 760, depth: 420, rail: 18, rows: [[Buttons, Thread], Cloth]}`,
      ],
      WRONG_INPUT,
    );
  const fittings = options.json ? await fittingsIn(project) : undefined;
  const inOrder = [...openings].sort(byPlace);
  process.stdout.write(
    options.json
      ? printJson({ openings: inOrder.map((each) => ({ ...each, ...fittings?.get(each) })) })
      : `${apart([text(inOrder, units), adviceText(set.advice, units)]).join('\n')}\n`,
  );
};

/** Pulls and stops by their openings, where the plan has any. */
const fittingsIn = async ({ set }: Project) =>
  set.drawers.some(({ spec }) => spec.fittings !== undefined)
    ? (await import('../../project/tables/fittingsRecord.ts')).placedFittings({ set })
    : undefined;

/** From the top and the left. */
const byPlace = (one: CabinetOpening, other: CabinetOpening): number => {
  const [a, b] = [placeOf(one), placeOf(other)];
  return a.reduce((difference, value, i) => difference || value - (b[i] ?? 0), 0);
};

const placeOf = ({ row, column, inner = [0, 0] }: CabinetOpening): readonly number[] => [
  row,
  column,
  ...inner,
];

const text = (openings: readonly CabinetOpening[], units: Notation): string[] => [
  ...terminalLines(
    `Lengths in ${unitWords(units)}. Rows count from the top, places in a row from the left; left and up are measured from the lower left corner of the cabinet's clear inside to that of the opening.`,
  ),
  '',
  ...fitTable(
    ['drawer', 'row', 'place', 'left', 'up', 'width', 'height', 'depth'],
    openings.map((each) => [
      each.name,
      [each.row, ...(each.inner ? [each.inner[0]] : [])].join('.'),
      [each.column, ...(each.inner ? [each.inner[1]] : [])].join('.'),
      ...[each.x, each.y, each.width, each.height, each.depth].map((value) => formatNumber(value, units)),
    ]),
    [false, true, true, true, true, true, true, true],
    1,
  ),
];
