import { type StockWork, stockWork } from '../drawer/blanks/stockWork.ts';
import { adviseFrame } from '../drawer/check/adviseFrame.ts';
import { type DrawerSet, drawersAndBoxes } from '../drawer/drawer.ts';
import { layOutSet } from '../drawer/layOutSet.ts';
import { adviseWoods } from '../plan/check/adviseWoods.ts';
import type { Plan } from '../plan/plan.ts';
import type { Parsed } from '../plan/read/parse.ts';
import { firstComplaints, type PlanComplaint } from '../plan/read/planComplaint.ts';
import { checkPlan, type Locate, type PlanReading, readPlan } from '../plan/readPlan.ts';
import { toolingOf } from '../router/limits/layOutWith.ts';
import { accept, type Complaint, type Result, under } from '../units/complaint.ts';
import type { Notation } from '../units/notation.ts';
import { adviseClimate } from '../wood/climate.ts';
import { withDrawerNames } from './boardNames.ts';
import { layOutSingle } from './layOutSingle.ts';
import { withPins } from './pinnedWork.ts';
import { type Project, type SingleCorner, type UncutProject, withCuts } from './project.ts';
import { sharedHints } from './sharedHints.ts';

/** A result of reading a plan, or every complaint about it. */
export type PlanResult<T> =
  | {
      readonly ok: true;
      readonly value: T;
      /** Locates a later complaint in the plan's text; its place starts at the plan's top. */
      readonly locate: Locate;
    }
  | {
      readonly ok: false;
      /** From the top of the text down: the first hundred, then how many more follow. */
      readonly complaints: readonly PlanComplaint[];
      /** How to show their lengths: as the plan says, if it could be read. */
      readonly units: Notation;
    };

/** Finds what is made of a set of drawers where boards came out other than planned. */
export type MakeSet = (planned: DrawerSet) => Result<DrawerSet>;

/** Ways to read a plan, YAML or JSON, and to lay everything out. */
export interface PlanReader {
  readProject(given: string | Uint8Array): PlanResult<Project>;
  /** The same of a plan's values, which may have been changed since they were read. */
  projectOf(parsed: Parsed): PlanResult<Project>;
  /** The first step of `readProject`: drawers and corners laid out. */
  layOutPlan(given: string | Uint8Array): PlanResult<UncutProject>;
}

/** A reader of plans that has another find what is made of boards as they came out. */
export const readerWith = (make: MakeSet): PlanReader => {
  const layOutPlan: PlanReader['layOutPlan'] = (given) => layOutReading(readPlan(given), make);
  return {
    layOutPlan,
    readProject: (given) => cut(layOutPlan(given)),
    projectOf: (parsed) => cut(layOutReading(checkPlan(parsed), make)),
  };
};

const cut = (laid: PlanResult<UncutProject>): PlanResult<Project> => {
  if (!laid.ok) return laid;
  const { value, locate } = laid;
  const project = withCuts(value);
  return project.ok
    ? { ...project, locate }
    : { ok: false, complaints: firstComplaints(project.complaints.map(locate)), units: value.units };
};

const layOutReading = (reading: PlanReading, make: MakeSet): PlanResult<UncutProject> => {
  const plan = reading.ok ? reading.plan : reading.valid;
  const { name, units, cabinet, climate, cutting, sawing } = plan;
  const planned = layOutSet(plan.drawers, plan.target, plan.spacers, plan.boxes);
  const set = planned.ok ? make(planned.value) : planned;
  const later: Complaint[] = set.ok ? [] : [...set.complaints];
  const joints = plan.joints.flatMap((corner, i): SingleCorner[] => {
    const laid = layOutSingle(corner, toolingOf(cutting));
    if (laid.ok) return [{ ...corner, joint: laid.value }];
    later.push(...under(['joints', i], laid.complaints));
    return [];
  });
  const complaints = [...(reading.ok ? [] : reading.complaints), ...sharedHints(later.map(reading.locate))];
  const work = set.ok && complaints.length === 0 ? workOf(plan, set.value) : accept(undefined);
  if (!work.ok) complaints.push(...work.complaints.map(reading.locate));
  if (complaints.length > 0 || !set.ok || !work.ok)
    return {
      ok: false,
      complaints: firstComplaints(complaints),
      units,
    };
  const onClimate = climate ? under(['climate'], adviseClimate(climate)) : [];
  const advised = {
    ...set.value,
    // Found when it is asked for, as nothing asks while a hand moves a line.
    get advice() {
      return [
        ...(reading.ok ? reading.advice : []),
        ...(work.value?.advice ?? []),
        ...onClimate,
        ...adviseWoods(plan),
        ...(cabinet && set.ok ? adviseFrame(cabinet, set.value.drawers) : []),
        ...set.value.advice,
      ];
    },
  };
  return {
    ok: true,
    value: {
      name,
      units,
      set: advised,
      joints,
      sawing,
      ...(cabinet && { cabinet }),
      ...(work.value && { work: work.value }),
      ...(climate && { climate }),
      ...(cutting && { cutting }),
    },
    locate: reading.locate,
  };
};

/** What is to be sawn from a plan's boards for its drawers; undefined where it lists none. */
const workOf = ({ boards, sawing, units }: Plan, set: DrawerSet): Result<StockWork | undefined> => {
  if (boards === undefined || drawersAndBoxes(set).length === 0) return accept(undefined);
  const named = withDrawerNames(boards, set);
  if (!named.ok) return named;
  const work = stockWork(set, named.value, sawing, units);
  return work.ok ? withPins(work.value, named.value.pinned, sawing) : work;
};
