import type { Command } from 'commander';
import type { CabinetOpening } from '../../cabinet/openings.ts';
import { Failure, WRONG_INPUT } from '../../files/failure.ts';
import { printJson } from '../../render/json.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitWords } from '../../units/notation.ts';
import { loadProject } from '../loadProject.ts';
import { FRACTIONS_OPTION, type NotationOptions } from '../options/notationOptions.ts';
import { fitTable } from '../report/fitTable.ts';
import { adviceText, apart, terminalLines } from '../report/jointText.ts';

interface CabinetOptions extends NotationOptions {
  readonly json?: boolean;
}

/** `cabinet`: the opening of every drawer, from the cabinet that the plan gives. */
export const addCabinet = (program: Command): void => {
  program
    .command('cabinet')
    .summary('find the openings of a planned cabinet')
    .description(
      'Lists the opening of every drawer of a planned cabinet: where it lies from the lower left corner of the clear inside, and its size.',
    )
    .argument('<plan>', 'a plan file, or - for standard input')
    .option('--json', 'one JSON object, lengths in mm')
    .option('--units <unit>', 'mm or in: what is shown')
    .option(...FRACTIONS_OPTION)
    .addHelpText('after', '\nExample:\n  halfpin cabinet examples/haberdashery-chest-cabinet.yaml\n')
    .action(async (plan: string, options: CabinetOptions) => {
      const { units, set } = await loadProject(plan, options);
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
      const inOrder = [...openings].sort(byPlace);
      process.stdout.write(
        options.json
          ? printJson({ openings: inOrder })
          : `${apart([text(inOrder, units), adviceText(set.advice, units)]).join('\n')}\n`,
      );
    });
};

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
