import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { isInRange } from '../../units/range.ts';
import { RUN_RANGE, slopeOfDegrees } from '../../units/slope.ts';
import { checkAngle } from '../limits/cutter.ts';
import { MOST_DEPTH, MOST_MEASURED } from './checkTrial.ts';
import { correction } from './correction.ts';

/** One trial joint of a log, in mm: where it was cut, and how loose it was (tight is less than 0). */
export type Trial =
  /** Cut with one cutter in both boards, at a depth. */
  | { readonly angle: number; readonly depth: number; readonly loose: number }
  /** Pins cut along a sloped guide, 1 in `slope`, which was moved `at` mm from its first position. */
  | { readonly slope: number; readonly at: number; readonly loose: number };

/** A log as far as it can be read: what is damaged is complained of and left out. */
export interface TrialLog {
  readonly trials: readonly Trial[];
  /** Places are `['line', n]`, n counted from 1. */
  readonly complaints: readonly Complaint[];
}

/** Reads a log: one JSON object a line, blank lines between them allowed. */
export const parseTrialLog = (text: string): TrialLog => {
  const trials: Trial[] = [];
  const complaints: Complaint[] = [];
  text.split(/\r?\n/u).forEach((line, i) => {
    if (line.trim() === '') return;
    const trial = readTrial(line);
    if (trial !== undefined) trials.push(trial);
    else
      complaints.push({
        at: ['line', i + 1],
        says: say`${quote(line)} is no trial; a trial is written {"angle":14,"depth":9.5,"loose":0.2} or {"slope":8,"at":0,"loose":0.2}`,
        remedy: say`correct the line or remove it`,
      });
  });
  return { trials, complaints };
};

/** A trial as a line of a log, its line end included. */
export const formatTrial = (trial: Trial): string => `${JSON.stringify(trial)}\n`;

const readTrial = (line: string): Trial | undefined => {
  const value = parseJson(line);
  if (typeof value !== 'object' || value === null) return undefined;
  const fields: Partial<Record<string, unknown>> = { ...value };
  const { angle, depth, slope, at, loose } = fields;
  if (!isWithin(loose, -MOST_MEASURED, MOST_MEASURED)) return undefined;
  if (isNumber(angle) && checkAngle(angle).length === 0 && isWithin(depth, 2 * EPSILON, MOST_DEPTH))
    return { angle, depth, loose };
  return isWithin(slope, RUN_RANGE.least, RUN_RANGE.most) && isWithin(at, -MOST_DEPTH, MOST_DEPTH)
    ? { slope, at, loose }
    : undefined;
};

const parseJson = (line: string): unknown => {
  // What JSON.parse throws holds the line, and thousands of them are slow: a text that is no log is found out without.
  if (!/^\s*\{/u.test(line)) return undefined;
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
};

const isNumber = (value: unknown): value is number => typeof value === 'number';

const isWithin = (value: unknown, least: number, most: number): value is number =>
  isNumber(value) && isInRange(value, { least, most });

/** The setting that the trials of one cutter or slope converge to. */
export interface Convergence {
  /** The depth, or the guide's place, at which the joint should fit. */
  readonly setting: number;
  /** Number of trials that it is based on. */
  readonly trials: number;
  /** Range of the settings that the single trials call for. */
  readonly spread: number;
}

/** What can be measured of a joint's fit, in mm of setting: no trial counts for more than one that is this near. */
const MEASURABLE = 0.05;

/**
 * The setting that the newest trial and those before it with the same cutter or slope converge to. Each trial calls for
 * the setting that its looseness corrects to. Near trials count for more, for a wrong angle spoils a long correction
 * more than a short one: each weighs 1 / (c² + m²), c its correction and m what can be measured.
 * @returns nothing for an empty log
 */
export const convergence = (trials: readonly Trial[]): Convergence | undefined => {
  const newest = trials.at(-1);
  if (newest === undefined) return undefined;
  const calls = trials.filter((trial) => sameTool(trial, newest)).map(correctedSetting);
  const weights = calls.map(({ correction }) => 1 / (correction ** 2 + MEASURABLE ** 2));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const settings = calls.map(({ setting }) => setting);
  return {
    setting: settings.reduce((sum, setting, i) => sum + setting * ((weights[i] ?? 0) / total), 0),
    trials: calls.length,
    // A long log has more settings than a call may have arguments.
    spread:
      settings.reduce((most, each) => Math.max(most, each)) -
      settings.reduce((least, each) => Math.min(least, each)),
  };
};

const sameTool = (trial: Trial, other: Trial): boolean =>
  'angle' in trial
    ? 'angle' in other && trial.angle === other.angle
    : 'slope' in other && trial.slope === other.slope;

const correctedSetting = (trial: Trial): { setting: number; correction: number } => {
  const change = correction(
    trial.loose,
    'angle' in trial ? slopeOfDegrees(trial.angle) : { run: trial.slope },
  );
  return { setting: ('angle' in trial ? trial.depth : trial.at) + change, correction: change };
};
