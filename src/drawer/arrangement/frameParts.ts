import { type FrameMember, type FramePartName, frameOf } from '../../cabinet/frameMembers.ts';
import type { PlannedCabinet } from '../../cabinet/frameSpec.ts';
import { tenonsOf } from '../../cabinet/tenons.ts';
import type { Joint } from '../../joint/joint.ts';
import { railLength, type TopRail } from '../../joint/topRail.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { TRIAL_SPARE, TRIM_SPARE } from '../drawerLimits.ts';
import { roughLength } from '../partsList.ts';

/** Equal parts of a cabinet's frame. Lengths in mm. */
export interface FramePart {
  readonly part: FramePartName;
  /** The drawers that they carry, hold down, guide or part, each once. */
  readonly drawers: readonly string[];
  readonly count: number;
  /** Along the grain, with its tenons, or its tails. */
  readonly length: number;
  /** Between the shoulders of those. */
  readonly shoulders: number;
  readonly width: number;
  readonly thickness: number;
  /** To saw to first: 5 mm or 3/16 in more at each end, or for a trial joint the tail's depth and 3 mm; up to the next mm or 1/16 in. */
  readonly roughLength: number;
  readonly species?: string;
}

/**
 * The parts of a cabinet's frame, equal ones together, in the order in which they are fitted.
 * @param units what the rough lengths will be measured in
 */
export const frameParts = (cabinet: PlannedCabinet, units: Notation): FramePart[] => {
  const found = new Map<string, FramePart>();
  const members = frameOf(cabinet);
  const tenons = tenonsOf(members, cabinet);
  for (const member of members) {
    const part = partOf(member, tenons.filter((each) => each.member === member).length, cabinet, units);
    const key = JSON.stringify([
      part.part,
      ...[part.length, part.shoulders, part.width, part.thickness].map((each) => each.toFixed(3)),
    ]);
    const before = found.get(key);
    found.set(key, {
      ...part,
      count: (before?.count ?? 0) + 1,
      drawers: [...new Set([...(before?.drawers ?? []), ...part.drawers])],
    });
  }
  return [...found.values()].sort((one, other) => NAMES.indexOf(one.part) - NAMES.indexOf(other.part));
};

/** A rail over the drawers whose ends are dovetailed into the sides, as the part that it is. */
export const railPart = (
  rail: TopRail,
  joint: Pick<Joint, 'depth' | 'width' | 'tailBoard'>,
  units: Notation,
): FramePart => {
  const length = railLength(rail, joint);
  return {
    part: 'rail',
    drawers: [],
    count: 1,
    length,
    shoulders: rail.between,
    width: joint.width,
    thickness: joint.tailBoard.thickness,
    roughLength: roughLength(length + 2 * (joint.depth + TRIAL_SPARE), unitOf(units)),
  };
};

/** Along which axis a part's length and its width run, what is left being its thickness. */
const SHAPES: Readonly<Record<FramePartName, { length: Axis; width: Axis; thickness: Axis }>> = {
  rail: { length: 0, width: 1, thickness: 2 },
  divider: { length: 2, width: 1, thickness: 0 },
  runner: { length: 1, width: 0, thickness: 2 },
  kicker: { length: 1, width: 0, thickness: 2 },
  guide: { length: 1, width: 2, thickness: 0 },
};

const NAMES = Object.keys(SHAPES);

type Axis = 0 | 1 | 2;

const partOf = (
  { part, from, to, drawers }: FrameMember,
  tenons: number,
  { frame: { rails, runners } }: PlannedCabinet,
  units: Notation,
): FramePart => {
  const axes = SHAPES[part];
  const along = (axis: Axis): number => to[axis] - from[axis];
  const shoulders = along(axes.length);
  const length = shoulders + tenons * rails.tenon;
  const unit = unitOf(units);
  const { species } = part === 'rail' || part === 'divider' ? rails : runners;
  return {
    part,
    drawers,
    count: 1,
    length,
    shoulders,
    width: along(axes.width),
    thickness: along(axes.thickness),
    roughLength: roughLength(length + 2 * TRIM_SPARE[unit], unit),
    ...(species !== undefined && { species }),
  };
};
