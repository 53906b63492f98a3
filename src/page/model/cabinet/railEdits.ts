import type { PlannedCabinet } from '../../../cabinet/frameSpec.ts';
import { ruleThrough } from '../../../cabinet/ruleThrough.ts';
import { type Complaint, type Result, refuse } from '../../../units/complaint.ts';
import { EPSILON } from '../../../units/epsilon.ts';
import { type Notation, unitOf } from '../../../units/notation.ts';
import { parseLength } from '../../../units/parseLength.ts';
import { say } from '../../../units/phrase.ts';
import { MM_PER_INCH, type Unit } from '../../../units/unit.ts';
import type { PlanValue } from '../../text/edit.ts';
import { adjustAt } from '../adjust.ts';
import { stepTowards } from '../bisect.ts';
import type { Moved } from '../edits.ts';
import { planNumber, stepOf } from '../planNumber.ts';
import type { Snapshot } from '../snapshot.ts';
import { valueAt, writtenPlan } from '../writtenPlan.ts';
import { rowHeights } from './openingEdits.ts';

/** The step of a rail, in mm: rows are rounded to it. */
export const railStep = (units: Notation): number => (unitOf(units) === 'mm' ? 0.5 : MM_PER_INCH / 16);

/** Whether a rail moves by itself: where rows are listed, or their rule is broken. */
export const isByItself = ({ heights }: PlannedCabinet): boolean => heights.kind === 'listed';

/**
 * Moves the rail under a row, from 0 from the top, down by an amount in mm, as far as the drawers can be made. Rows in a
 * progression all follow: the number that fixes it changes. Listed rows are as much higher above and lower under the rail;
 * so are those whose rule is broken, which are listed then.
 */
export const moveRail = (now: Snapshot, rail: number, by: number, isBroken: boolean): Moved => {
  const { cabinet, units } = now.project;
  if (cabinet === undefined) return { snapshot: now, stop: [] };
  const change = isBroken || isByItself(cabinet) ? listed : ruled;
  const reach = stepTowards(by, railStep(units), (part) => change(now, cabinet, rail, part));
  return { snapshot: reach.value ?? now, stop: reach.stop };
};

const AT = ['cabinet', 'heights'] as const;

const ruled = (now: Snapshot, cabinet: PlannedCabinet, rail: number, by: number): Result<Snapshot> => {
  const heights = rowHeights(cabinet);
  const above = heights.slice(0, rail + 1).reduce((sum, height) => sum + height, by);
  const total = heights.reduce((sum, height) => sum + height, 0);
  const fixed = ruleThrough(cabinet.heights, {
    upper: rail + 1,
    height: above,
    count: heights.length,
    total,
  });
  if (fixed === undefined) return refuse(EQUAL);
  const { key, value } = fixed;
  const unit = unitOf(now.project.units);
  return adjustAt(now, [
    {
      at: [...AT, key],
      value: key === 'first' || key === 'step' ? marked(value, unit) : Number(value.toFixed(3)),
    },
  ]);
};

const EQUAL: Complaint = {
  at: [...AT],
  says: say`equal rows stay equal; break the rule to move one rail by itself`,
};

/** To the finest mark that hands set. */
const marked = (value: number, unit: Unit): PlanValue =>
  planNumber(Math.round(value / stepOf(unit)) * stepOf(unit), unit);

const listed = (now: Snapshot, cabinet: PlannedCabinet, rail: number, by: number): Result<Snapshot> => {
  const unit = unitOf(now.project.units);
  const heights = rowHeights(cabinet);
  const moved = heights.map((height, i) => height + (i === rail ? by : i === rail + 1 ? -by : 0));
  const before = valueAt(writtenPlan(now.text), AT);
  const isAuto = (i: number): boolean => Array.isArray(before) && before[i] === 'auto';
  const written = moved.map((height, i): PlanValue => {
    const isMoved = i === rail || i === rail + 1;
    if (isAuto(i) && !isMoved) return 'auto';
    return Array.isArray(before) && !isMoved ? (before[i] as PlanValue) : planNumber(height, unit);
  });
  // What no number of digits says is left to one of the rows that move, or to the lowest.
  const sum = written.reduce<number>((all, each) => all + lengthOf(each, unit), 0);
  const total = heights.reduce((all, height) => all + height, 0);
  const left = [rail + 1, rail].find(isAuto) ?? heights.length - 1;
  const isExact = written.includes('auto') || Math.abs(sum - total) < EPSILON;
  const value = isExact ? written : written.map((each, i) => (i === left ? 'auto' : each));
  return adjustAt(now, [{ at: [...AT], value }]);
};

const lengthOf = (value: PlanValue, unit: Unit): number => {
  const read = parseLength(typeof value === 'number' ? value : String(value), unit);
  return read.ok ? read.value : 0;
};
