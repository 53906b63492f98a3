import { frameOf } from '../../cabinet/frameMembers.ts';
import type { PlannedCabinet } from '../../cabinet/frameSpec.ts';
import type { CabinetOpening } from '../../cabinet/openings.ts';
import { type DepthLimit, depthLimit, limitAtStops } from '../../drawer/arrangement/depthLimit.ts';
import type { DrawerSet } from '../../drawer/drawer.ts';
import { homeOf } from '../../drawer/fittings/stopsOf.ts';
import { usualFittings } from '../../drawer/fittings/usualFittings.ts';
import { Failure, WRONG_INPUT } from '../../files/failure.ts';
import type { Project } from '../../project/project.ts';
import { printJson } from '../../render/json.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitWords } from '../../units/notation.ts';
import type { CabinetOptions } from '../commands/cabinet.ts';
import { loadProject } from '../loadProject.ts';
import { fitTable } from '../report/fitTable.ts';
import { adviceText, apart, terminalLines } from '../report/jointText.ts';

/** Prints the opening of every drawer of a plan's cabinet. Throws a Failure where it gives none. */
export const listOpenings = async (plan: string, options: CabinetOptions): Promise<void> => {
  const project = await loadProject(plan, options);
  const { units, set, cabinet } = project;
  if (cabinet === undefined)
    throw new Failure(
      [
        `${plan}: this plan gives no cabinet, so its openings are those of its drawers; try cabinet: {width: 600, height: 760, depth: 420, rail: 18, rows: [[Buttons, Thread], Cloth]}`,
      ],
      WRONG_INPUT,
    );
  const inOrder = [...cabinet.openings].sort(byPlace);
  const depths = depthsOf(set);
  const fittings = options.json ? await fittingsIn(project) : undefined;
  process.stdout.write(
    options.json
      ? printJson({
          openings: inOrder.map((each) => ({ ...each, ...fittings?.get(each) })),
          depths: depths.map(depthRecord),
          frame: frameOf(cabinet),
        })
      : `${apart([text(inOrder, units), depthText(depths, cabinet, units), adviceText(set.advice, units)]).join('\n')}\n`,
  );
};

/** A drawer in the cabinet, how deep it is, and what limits that. */
interface Depth {
  readonly name: string;
  readonly depth: number;
  readonly limit: DepthLimit;
}

const depthsOf = ({ drawers }: DrawerSet): Depth[] =>
  drawers.flatMap(({ spec, sizes }) => {
    const { name, space, lip } = spec;
    if (space.kind === 'size' || space.places === undefined) return [];
    const home = homeOf(spec, sizes);
    const past = (usualFittings(spec).stops?.behind ?? home) - home;
    // A lip meets the cabinet first.
    const limit = limitAtStops(depthLimit(space), lip === undefined ? past : Math.min(0, past));
    return [{ name, depth: sizes.depth, limit }];
  });

const depthRecord = ({ name, depth, limit: { by, left } }: Depth) => ({
  name,
  depth,
  limit: by,
  behind: left,
});

/** What limits the depths of drawers, those alike together. */
const depthText = (depths: readonly Depth[], { frame }: PlannedCabinet, units: Notation): string[] => {
  const length = (value: number): string => formatLength(value, units);
  const alike = new Map<string, Depth[]>();
  for (const each of depths) {
    const key = JSON.stringify([each.depth, each.limit]);
    alike.set(key, [...(alike.get(key) ?? []), each]);
  }
  const { vent = 0 } = frame;
  const why = ({ by, left }: DepthLimit): string => {
    if (by === 'stop')
      return left === 0
        ? "nothing is left behind, and the cabinet's back is the stop"
        : `limited by its stops, which leave ${length(left)} behind${left < vent ? `, less than the vent of ${length(vent)}` : ''}`;
    if (by === 'vent') return `limited by the vent, ${length(left)}, which is more than the clearance behind`;
    return `limited by the clearance behind, ${length(left)}${vent === 0 ? '' : `, which leaves the vent its ${length(vent)}`}`;
  };
  return [...alike.values()].flatMap((group) => {
    const [first] = group;
    return first === undefined
      ? []
      : terminalLines(
          `${group.map(({ name }) => name).join(', ')}: ${length(first.depth)} deep, ${why(first.limit)}.`,
        );
  });
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
