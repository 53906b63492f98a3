import type { PlannedCabinet } from '../cabinet/frameSpec.ts';
import type { StockWork } from '../drawer/blanks/stockWork.ts';
import type { CornerLetter } from '../drawer/cornerLetters.ts';
import { type Drawer, type DrawerSet, madeOf } from '../drawer/drawer.ts';
import { drawerCorners } from '../drawer/made/drawerCorners.ts';
import type { Joint } from '../joint/joint.ts';
import type { JointSpec } from '../joint/jointSpec.ts';
import type { TopRail } from '../joint/topRail.ts';
import { type Cuts, cutCorners, type NamedCorner } from '../router/guide/cutCorners.ts';
import type { Cutting } from '../router/limits/cutting.ts';
import { layOutWith, toolingOf } from '../router/limits/layOutWith.ts';
import { type Sawing, USUAL_SAWING } from '../stock/usualSawing.ts';
import { accept, type Result, refuse } from '../units/complaint.ts';
import { type Notation, unitOf } from '../units/notation.ts';
import type { Climate } from '../wood/climate.ts';
import type { Only } from './only.ts';
import { sharedHints } from './sharedHints.ts';

/** A single corner (one that belongs to no drawer), laid out. */
export interface SingleCorner {
  readonly name: string;
  /** What was asked for. */
  readonly spec: JointSpec;
  readonly joint: Joint;
  /** What its tail board is, where that is a rail over the drawers. */
  readonly rail?: TopRail;
}

/**
 * Everything that follows from a plan, or from the spec of one corner: the drawers, their corners, and how those are cut.
 * Lengths in mm.
 */
export interface Project {
  readonly name: string;
  /** How lengths are shown. */
  readonly units: Notation;
  /** Without drawers where the project is a single corner. Its advice includes that on climate and woods. */
  readonly set: DrawerSet;
  /** The single corners, in the plan's order. */
  readonly joints: readonly SingleCorner[];
  /** The cabinet that its drawers stand in; absent where none is planned. */
  readonly cabinet?: PlannedCabinet;
  /** What is lost between its boards and its parts. */
  readonly sawing: Sawing;
  /** The boards that its parts come out of, and what is to come out of them; absent where no boards are listed. */
  readonly work?: StockWork;
  /** Moisture contents where the drawers are made and kept; absent where no plan gives them. */
  readonly climate?: Climate;
  /** The tools that every corner is cut with; absent for work by hand. */
  readonly cutting?: Cutting;
  /** How each joint is cut; empty without a cutter. */
  readonly cuts: Cuts;
  /** What is drawn of it; all unless given. */
  readonly only?: Only;
}

/** A project whose corners are laid out, before the cuts by its tools are found. */
export type UncutProject = Omit<Project, 'cuts'>;

/** The spec of a single corner with its name, unit and tools. */
export interface CornerSpec {
  readonly name: string;
  readonly units: Notation;
  readonly spec: JointSpec;
  /** The tools that it is cut with; absent for work by hand. */
  readonly cutting?: Cutting;
  /** A machine's spacing, from the middle of one pin to that of the next, in mm. */
  readonly pitch?: number;
}

const NO_DRAWERS: DrawerSet = { drawers: [], advice: [] };

/**
 * The project of a single corner.
 * @returns complaints at the spec's own keys, at `pitch`, and at `cutter` and its keys
 * @example
 * ```ts
 * const box = projectOfCorner({
 *   name: 'Trinket box',
 *   units: 'mm',
 *   spec: { kind: 'through', width: 60, tailBoard: 10, pinBoard: 10, spacing: { kind: 'even', tails: 3 } },
 * });
 * if (box.ok) console.log(box.value.joints[0]?.joint.tails.length); // 3
 * ```
 */
export const projectOfCorner = (corner: CornerSpec): Result<Project> => {
  const laid = layOutCorner(corner);
  return laid.ok ? withCuts(laid.value) : laid;
};

/** The first step of `projectOfCorner`: the corner laid out. */
export const layOutCorner = ({ name, units, spec, cutting, pitch }: CornerSpec): Result<UncutProject> => {
  const joint = layOutWith(spec, toolingOf(cutting, pitch));
  if (!joint.ok) return joint;
  return accept({
    name,
    units,
    set: NO_DRAWERS,
    joints: [{ name, spec, joint: joint.value }],
    sawing: USUAL_SAWING[unitOf(units)],
    ...(cutting && { cutting }),
  });
};

/** The project with its cuts; complaints at `cutter` and its keys where a tool is unsuitable. */
export const withCuts = (project: UncutProject): Result<Project> => {
  const { drawers } = project.set;
  // What is planned is shown too where boards came out otherwise.
  const planned = drawers.filter(({ made }) => made !== undefined).flatMap(drawerCorners);
  const cuts = cutCorners([...planned, ...namedCorners(project)], project.cutting);
  if (cuts.ok) return accept({ ...project, cuts: cuts.value });
  const shared = sharedHints(cuts.complaints.map((complaint) => ({ complaint })));
  return refuse(...shared.map(({ complaint }) => complaint));
};

/**
 * Every corner by its name: `Buttons front`, `Buttons back`, `Buttons 1 front A` where boards came out other than planned, and the
 * names of the single corners; a box's as a drawer's.
 */
export const namedCorners = ({ set, joints }: Pick<Project, 'set' | 'joints'>): NamedCorner[] => [
  ...madeOf(set).flatMap(drawerCorners),
  ...joints,
];

/** The front corners of a set's drawers, for comparison. */
export const frontCorners = ({ drawers: planned }: Pick<DrawerSet, 'drawers'>) => {
  const drawers = madeOf({ drawers: planned });
  const row = (
    { spec: { name, count }, sizes: { rebate } }: Drawer,
    joint: Joint,
    corner?: CornerLetter,
  ) => ({
    name,
    count,
    joint,
    lip: rebate,
    ...(corner && { corner }),
  });
  return drawers.flatMap((drawer) =>
    drawer.right === undefined
      ? [row(drawer, drawer.front)]
      : [row(drawer, drawer.front, 'A'), row(drawer, drawer.right.front, 'B')],
  );
};

/** Whether there are guides to make, or setting rods of fingers: only where corners are cut with a bush. */
export const hasGuides = ({ cuts }: Pick<Project, 'cuts'>): boolean =>
  [...cuts.values()].some(({ guides, fingers }) => guides.length > 0 || fingers !== undefined);
