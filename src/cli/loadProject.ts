import { Failure, optionName, refuseOptions, WRONG_INPUT } from '../files/failure.ts';
import { readInput } from '../files/readInput.ts';
import { kindOf, OWN_LENGTH_KEYS } from '../joint/kinds/kinds.ts';
import type { PlanComplaint } from '../plan/read/planComplaint.ts';
import { layOutCorner, namedCorners, type Project, withCuts } from '../project/project.ts';
import { type Complaint, type Result, refuse } from '../units/complaint.ts';
import { type Notation, unitOf } from '../units/notation.ts';
import { inchesMeant, parseLength } from '../units/parseLength.ts';
import { say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';
import { atOption } from './options/atOption.ts';

import type { JointOptions } from './options/jointOptions.ts';
import { saidByPlan } from './options/meaning.ts';
import { readNotation } from './options/notationOptions.ts';
import { changeTools } from './options/readCutterOptions.ts';
import { readJointOptions } from './options/readJointOptions.ts';

/** Options of a project; `draws` where sheets will show its names, which a font may have to be loaded for. */
interface LoadOptions extends JointOptions {
  readonly draws?: boolean;
  readonly font?: string;
}

/** Reads a plan, or the options of one corner, and sets everything out. Throws a Failure with all that is wrong. */
export const loadProject = async (plan: string | undefined, options: LoadOptions): Promise<Project> => {
  const project = plan === undefined ? projectOfOptions(options) : await projectOfPlan(plan, options);
  if (plan === undefined && options.draws === true) {
    const { readyNameLetters } = await import('./readyLetters.ts');
    await readyNameLetters(options.name, options.font);
  }
  const unused = unusedTools(options, project);
  return unused.length > 0 ? refuseOptions(unused, project.units) : project;
};

/** Complaints of tools that are typed, and cut nothing of a project. */
const unusedTools = (options: JointOptions, project: Project): Complaint[] =>
  namedCorners(project).some(({ joint }) => kindOf(joint).sockets === 'open')
    ? []
    : (['straight', 'pinBush'] as const)
        .filter((key) => options[key] !== undefined)
        .map((key) => ({
          at: [key],
          says: say`no pins here are cut with a straight cutter`,
          remedy: say`remove the option`,
        }));

const projectOfOptions = (options: JointOptions): Project => {
  const { project, units } = layOutOptions(options);
  return project.ok ? project.value : refuseOptions(project.complaints, units);
};

/** The project of one corner that options describe, or every complaint, each at its option; and how lengths are shown. */
export const layOutOptions = (
  options: JointOptions,
): { readonly project: Result<Project>; readonly units: Notation } => {
  const { spec, complaints, ...wish } = readJointOptions(options);
  const { units, pitch } = wish;
  const laid = spec && layOutCorner({ ...wish, spec });
  if (laid?.ok === true && complaints.length === 0) {
    const project = withCuts(laid.value);
    return {
      units,
      project: project.ok ? project : refuse(...project.complaints.map((each) => atOption(each))),
    };
  }
  // An option that could not be read gets no second complaint, about its default.
  const blamed = new Set(complaints.map(({ at }) => at[0]));
  const more =
    laid?.ok === false
      ? laid.complaints.map((each) => atOption(each, { pitch })).filter(({ at }) => !blamed.has(at[0] ?? ''))
      : [];
  return {
    units,
    project: refuse(...[...complaints, ...more].map((each) => withInches(each, options, units))),
  };
};

/** Options that are one length each. */
const LENGTHS: readonly unknown[] = ['width', 'tailBoard', 'pinBoard', 'pin', 'chisel', ...OWN_LENGTH_KEYS];

/** A bare fraction that comes out too small as mm was meant in inches. */
const withInches = (complaint: Complaint, options: JointOptions, unit: Notation): Complaint => {
  const [, typed] = Object.entries(options).find(([name]) => name === complaint.at[0]) ?? [];
  const meant = LENGTHS.includes(complaint.at[0]) ? inchesMeant(typed, unitOf(unit)) : undefined;
  return meant === undefined ? complaint : { ...complaint, hint: meant };
};

/** Refuses the second half of a length with a blank in it: what a shell makes of `--width 5 11/16in`. */
const checkBlank = (file: string, options: JointOptions): void => {
  const cut = Object.entries(options).filter(([, typed]) => /^\d+$/u.test(String(typed)));
  const [[name, whole] = []] = cut;
  if (!/^\d+\/\d/u.test(file) || name === undefined || !parseLength(file, 'mm').ok) return;
  throw new Failure(
    [
      cut.length === 1
        ? `${optionName([name])}: ${quote(file)} was read as a plan; try ${whole}-${file}`
        : `${quote(file)} was read as a plan; write a hyphen before the fraction of a length, as in 5-11/16in`,
    ],
    WRONG_INPUT,
  );
};

const projectOfPlan = async (file: string, options: LoadOptions): Promise<Project> => {
  checkBlank(file, options);
  const beside = saidByPlan(options);
  if (beside.length > 0) return refuseOptions(beside, 'mm');
  const bytes = await readInput(file, 'a plan; try halfpin start to begin one');
  // The parser and the schema of plans are loaded only where there is a plan.
  const [{ layOutPlan }, { firstComplaints, formatPlanComplaint }] = await Promise.all([
    import('../project/readProject.ts'),
    import('../plan/read/planComplaint.ts'),
  ]);
  const reading = layOutPlan(bytes);
  const planned = reading.ok ? reading.value.units : reading.units;
  const units = readNotation(options, planned);
  const refusePlan = (complaints: readonly PlanComplaint[]): never => {
    throw new Failure(
      complaints.map((complaint) => formatPlanComplaint(file, complaint, units)),
      WRONG_INPUT,
    );
  };
  if (!reading.ok) return refusePlan(reading.complaints);

  const { value: laid, locate } = reading;
  const cutting = changeTools(laid.cutting, options, units);
  if (!cutting.ok) return refuseOptions(cutting.complaints, units);
  const project = withCuts({ ...laid, units, ...(cutting.value && { cutting: cutting.value }) });
  if (project.ok) {
    let { set } = project.value;
    if (laid.set.drawers.some(({ spec }) => spec.fittings !== undefined)) {
      // Fittings are loaded only where a plan asks for them.
      const { setFittings } = await import('../drawer/fittings/setFittings.ts');
      const fitted = setFittings(laid.set.drawers);
      if (!fitted.ok) return refusePlan(firstComplaints(fitted.complaints.map(locate)));
      set = { ...set, advice: [...set.advice, ...fitted.value.advice] };
    }
    if (options.draws === true) {
      const { readyPlanLetters } = await import('./readyPlanLetters.ts');
      await readyPlanLetters(file, bytes, options.font, units);
    }
    return { ...project.value, set };
  }
  // A complaint about a tool that was typed names its option.
  const typed = project.complaints.map((each) => atOption(each)).filter(({ at }) => isTyped(options, at[0]));
  return typed.length > 0
    ? refuseOptions(typed, units)
    : refusePlan(firstComplaints(project.complaints.map(locate)));
};

const isTyped = (options: JointOptions, key: string | number | undefined): boolean =>
  key !== undefined && Object.entries(options).some(([name, text]) => name === key && text !== undefined);
