import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { translation } from '../../drawing/affine.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import { appendLine } from '../../files/appendLine.ts';
import { Failure, refuseOptions, WRONG_INPUT } from '../../files/failure.ts';
import { guardOverwrite } from '../../files/guardOverwrite.ts';
import { readRegular } from '../../files/readInput.ts';
import { writePdf, writeSvg } from '../../files/writeDrawn.ts';
import { isPlainEnd } from '../../joint/joint.ts';
import { closestWord } from '../../plan/check/editDistance.ts';
import { namedCorners } from '../../project/project.ts';
import { printJson } from '../../render/json.ts';
import { PICTURE_MARK } from '../../render/mark.ts';
import type { Measured } from '../../router/trial/checkTrial.ts';
import type { Correction } from '../../router/trial/correction.ts';
import { correctDepth } from '../../router/trial/depthCorrection.ts';
import { correctGuide } from '../../router/trial/guideCorrection.ts';
import { correctByHand } from '../../router/trial/handCorrection.ts';
import {
  type Convergence,
  convergence,
  formatTrial,
  parseTrialLog,
  type Trial,
} from '../../router/trial/trialLog.ts';
import { depthPicture, guidePicture } from '../../router/trial/trialPicture.ts';
import { drawDepthMove, drawGuideMove } from '../../sheets/trialDrawing.ts';
import { type Complaint, sentence } from '../../units/complaint.ts';
import { formatLength } from '../../units/formatLength.ts';
import { listNames } from '../../units/listNames.ts';
import { nameKey } from '../../units/name.ts';
import { finest, type Notation } from '../../units/notation.ts';
import { mm, say, speak } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { shellWord } from '../../units/shellWord.ts';
import { loadProject } from '../loadProject.ts';
import { atOption } from '../options/atOption.ts';
import { readUnits } from '../options/notationOptions.ts';
import {
  type PlannedJoint,
  readTrialOptions,
  type TrialOptions,
  type TrialSetting,
} from '../options/trialOptions.ts';
import { adviceText, terminalLines } from '../report/jointText.ts';

/** Finds the next setting from the measures of a trial joint, prints it, draws it with --out, and logs it with --log. */
export const tryJoint = async (plan: string | undefined, options: TrialOptions): Promise<void> => {
  const typed = readUnits(options.units);
  const found = plan === undefined ? undefined : await plannedJoint(plan, options);
  // What a trial joint corrects is finer than the marks of a rule.
  const unit = finest(found?.units ?? typed ?? 'mm');
  const { trial, measured } = readTrialOptions(options, unit, found?.planned);
  const next = correct(trial, measured, options, unit);
  const log = options.log === undefined ? undefined : await readLog(options.log, unit);
  const cut = trialOf(trial, measured, log?.trials ?? [], unit);

  const drawn =
    options.out === undefined || next.drawing === undefined
      ? []
      : await draw(next.drawing, options.out, options.force === true);
  if (options.log !== undefined && log !== undefined && cut !== undefined)
    await appendLine(options.log, `${log.open ? '\n' : ''}${formatTrial(cut)}`);
  const converging = log && cut && convergence([...log.trials, cut]);
  process.stdout.write(
    options.json
      ? printJson({ ...next.record, ...(converging && { converging }) })
      : `${[...next.text, ...(converging ? convergenceText(converging, trial.kind, unit) : []), ...drawn].join('\n')}\n`,
  );
};

/** The corner of a plan that is meant: its only one, or the one that is named. */
const plannedJoint = async (
  plan: string,
  { joint: wanted, units }: TrialOptions,
): Promise<{ units: Notation; planned: PlannedJoint }> => {
  const project = await loadProject(plan, units === undefined ? {} : { units });
  const corners = namedCorners(project);
  const named = corners.filter(({ name }) => wanted !== undefined && nameKey(name) === nameKey(wanted));
  const [meant] = wanted === undefined && corners.length === 1 ? corners : named;
  if (meant === undefined) return refuseJoint(plan, corners, wanted, project.units);
  const fingers = project.cuts.get(meant.joint)?.fingers;
  return {
    units: project.units,
    planned: {
      joint: meant.joint,
      // Where the tails are sawn, the cutter's depth changes the sockets alone, which are then pared.
      ...(project.cutting && isPlainEnd(meant.joint) && { cutter: project.cutting.cutter }),
      ...(fingers && { fingers }),
    },
  };
};

/** No corner is named, or none of the plan's. */
const refuseJoint = (
  plan: string,
  corners: readonly { readonly name: string }[],
  wanted: string | undefined,
  units: Notation,
): never => {
  const names = corners.map(({ name }) => name);
  const found = `${plan} has ${wanted === undefined ? `${names.length} corners` : `no corner ${quote(wanted)}`}`;
  const nearest = wanted === undefined ? undefined : closestWord(wanted, names);
  return refuseOptions(
    [
      {
        at: ['joint'],
        says: say`${found}; it must be one of ${listNames(names.map(shellWord))}`,
        ...(nearest !== undefined && { hint: say`${shellWord(nearest)}` }),
      },
    ],
    units,
  );
};

/** The next setting as JSON, as text and as a drawing; work by hand moves nothing that could be drawn. */
interface Next {
  readonly record: object;
  readonly text: readonly string[];
  readonly drawing?: Drawing;
}

const correct = (trial: TrialSetting, measured: Measured, options: TrialOptions, unit: Notation): Next => {
  const refused = (complaints: readonly Complaint[]): never =>
    refuseOptions(
      complaints.map((each) => atOption(each, options)),
      unit,
    );
  const isFitMeasured = options.loose !== undefined || options.tight !== undefined;
  /** Nothing is said of a fit that was not measured, and nothing drawn in letters. */
  const told = <T extends Correction>(move: T, pictured: readonly string[]) => {
    const said = isFitMeasured ? move : { ...move, because: say`The fit was not measured.` };
    return { said: reasons(said, unit), text: moveText(said, isFitMeasured ? pictured : [], unit) };
  };
  if (trial.kind === 'depth') {
    const corrected = correctDepth(trial.setting, measured);
    if (!corrected.ok) return refused(corrected.complaints);
    const { depth, change } = corrected.value;
    const { said, text } = told(corrected.value, depthPicture(corrected.value, unit));
    return {
      record: { depth, change, ...said },
      text,
      drawing: drawDepthMove(trial.setting, corrected.value, unit),
    };
  }
  if (trial.kind === 'guide') {
    const corrected = correctGuide(trial.setting, measured);
    if (!corrected.ok) return refused(corrected.complaints);
    const { move } = corrected.value;
    const { said, text } = told(corrected.value, guidePicture(corrected.value, unit));
    return {
      record: { move, ...said },
      text,
      drawing: drawGuideMove(trial.setting, corrected.value, unit),
    };
  }
  const corrected = correctByHand(measured, trial.depth);
  if (!corrected.ok) return refused(corrected.complaints);
  const { pare } = corrected.value;
  const { said, text } = told(corrected.value, []);
  return { record: { pare, ...said }, text };
};

const moveText = (move: Correction, picture: readonly string[], unit: Notation): string[] => [
  ...sentences(move, unit),
  ...(picture.length > 0 ? ['', ...picture] : []),
  ...adviceText(move.advice, unit),
];

const reasons = ({ because, stop, tails, fingers, advice }: Correction, unit: Notation) => ({
  because: speak(because, unit),
  ...(stop && { stop: { change: stop.change, because: speak(stop.because, unit) } }),
  ...(tails && { tails: { change: tails.change, because: speak(tails.because, unit) } }),
  ...(fingers && { fingers: { ...fingers, because: speak(fingers.because, unit) } }),
  advice: advice.map((each) => sentence(each, unit)),
});

const sentences = ({ because, fingers, stop, tails }: Correction, unit: Notation): string[] =>
  [because, fingers?.because, stop?.because, tails?.because].flatMap((each) =>
    each === undefined ? [] : terminalLines(speak(each, unit)),
  );

/** The most damaged lines that are listed. */
const MOST_TOLD = 20;

/** The trials in a log. Throws a Failure where a line is damaged, and leaves the file as it is. */
const readLog = async (
  path: string,
  unit: Notation,
): Promise<{ trials: readonly Trial[]; open: boolean }> => {
  const text = existsSync(path) ? new TextDecoder().decode(await readRegular(path, 'a log of trials')) : '';
  const { trials, complaints } = parseTrialLog(text);
  const [told, untold] = [complaints.slice(0, MOST_TOLD), complaints.length - MOST_TOLD];
  if (complaints.length > 0)
    throw new Failure(
      [
        ...told.map((complaint) => `${path}:${complaint.at[1]}: ${sentence(complaint, unit)}`),
        ...(untold > 0 ? [`${path}: ${untold} more lines are damaged`] : []),
      ],
      WRONG_INPUT,
    );
  return { trials, open: text !== '' && !text.endsWith('\n') };
};

/** The trial as it is logged; none by hand. After the first along a slope, the guide's position is required. */
const trialOf = (
  trial: TrialSetting,
  { looseness }: Measured,
  earlier: readonly Trial[],
  unit: Notation,
): Trial | undefined => {
  if (trial.kind === 'hand') return undefined;
  if (trial.kind === 'depth') {
    const { angle, depth } = trial.setting;
    return { angle, depth, loose: looseness };
  }
  const slope = trial.setting.slope.run;
  const last = convergence(earlier.filter((each) => 'slope' in each && each.slope === slope));
  if (trial.at === undefined && last !== undefined)
    return refuseOptions(
      [
        {
          at: ['at'],
          says: say`the log holds earlier trials of this slope; how far the guide was from its first place this time is missing`,
          hint: say`${mm(last.setting)}, if it was moved as the log says`,
        },
      ],
      unit,
    );
  return { slope, at: trial.at ?? 0, loose: looseness };
};

const convergenceText = (
  { setting, trials, spread }: Convergence,
  kind: TrialSetting['kind'],
  unit: Notation,
): string[] => {
  const length = (value: number): string => formatLength(value, unit);
  const where =
    kind === 'depth' ? `a depth of ${length(setting)}` : `${length(setting)} from the guide's first place`;
  return [
    '',
    ...terminalLines(
      trials === 1
        ? `The log's first trial points to ${where}.`
        : `The log's ${trials} trials point to ${where}; what each calls for by itself lies within ${length(spread)}.`,
    ),
  ];
};

/** Margin round the drawing of a trial, in mm. */
const MARGIN = 10;

const draw = async (drawing: Drawing, folder: string, force: boolean): Promise<string[]> => {
  const [pdf, svg] = [join(folder, 'trial.pdf'), join(folder, 'trial.svg')];
  await guardOverwrite([pdf, svg], force);
  const { x0, y0, x1, y1 } = drawing.box;
  await writePdf(pdf, 'Trial joint', [
    {
      width: x1 - x0 + 2 * MARGIN,
      height: y1 - y0 + 2 * MARGIN,
      placed: [{ drawing, at: translation(MARGIN - x0, MARGIN - y0) }],
    },
  ]);
  const meta = { title: 'What moves after a trial joint', description: PICTURE_MARK };
  await writeSvg(svg, drawing, meta);
  return ['', `${pdf}, ${svg}: what moves, drawn`];
};
