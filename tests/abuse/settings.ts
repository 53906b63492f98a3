import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Command } from 'commander';
import fc from 'fast-check';
import { addTrial } from '../../src/cli/commands/trial.ts';
import { atOption } from '../../src/cli/options/atOption.ts';
import { addJointOptions } from '../../src/cli/options/jointOptions.ts';
import { readJointOptions } from '../../src/cli/options/readJointOptions.ts';
import {
  type PlannedJoint,
  readTrialOptions,
  type TrialOptions,
} from '../../src/cli/options/trialOptions.ts';
import { printerRows } from '../../src/cli/report/printerText.ts';
import { Failure, optionName } from '../../src/files/failure.ts';
import { loadPrinters } from '../../src/files/printerStore.ts';
import { inverse } from '../../src/paper/printerCorrection.ts';
import { cutJoint } from '../../src/router/guide/cutJoint.ts';
import { layOutWith, toolingOf } from '../../src/router/limits/layOutWith.ts';
import { correctDepth } from '../../src/router/trial/depthCorrection.ts';
import { correctGuide } from '../../src/router/trial/guideCorrection.ts';
import { correctByHand } from '../../src/router/trial/handCorrection.ts';
import type { Complaint } from '../../src/units/complaint.ts';
import { wild } from '../joint/anySpec.ts';
import { abuse, must, mustBeClear, mustBeFinite, refused } from './abuse.ts';
import { mustCut } from './cutters.ts';
import { mustBeSound } from './joints.ts';
import { anyText, hostileName } from './texts.ts';

const folder = mkdtempSync(join(tmpdir(), 'halfpin-abuse-'));
process.on('exit', () => rmSync(folder, { recursive: true }));

const near1 = fc.double({ min: 0.97, max: 1.03, noNaN: true });
const printer = fc.record({
  error: fc.record({
    x: fc.oneof({ weight: 4, arbitrary: near1 }, wild),
    y: fc.oneof({ weight: 4, arbitrary: near1 }, wild),
    skew: fc.oneof({ weight: 4, arbitrary: fc.constant(0) }, wild),
  }),
  paper: fc.oneof({ weight: 4, arbitrary: fc.constantFrom('A4', 'Letter') }, anyText),
  measured: fc.oneof({ weight: 4, arbitrary: fc.constantFrom('2026-05-31', '2024-02-29') }, anyText),
});
const stored = fc
  .dictionary(fc.oneof(fc.constantFrom('office', 'Copy shop 2'), hostileName), printer, { maxKeys: 3 })
  .map((printers) => JSON.stringify(printers));
const damaged = fc
  .tuple(stored, fc.nat(400), fc.nat(6), fc.string({ maxLength: 4 }))
  .map(([text, at, cut, put]) => `${text.slice(0, at)}${put}${text.slice(at + cut)}`);

export const printerFiles = abuse(
  'files of printers of any bytes',
  0.3,
  fc.oneof(stored, damaged, fc.json(), fc.string({ unit: 'binary' }), fc.uint8Array({ maxLength: 40 })),
  async (bytes) => {
    const path = join(folder, 'printers.json');
    writeFileSync(path, bytes);
    const before = readFileSync(path);
    try {
      const printers = await loadPrinters(folder);
      for (const { error } of Object.values(printers)) mustBeFinite(inverse(error));
      for (const line of printerRows(printers, new Date('2026-06-01'))) mustBeClear(line);
      return 'valid';
    } catch (error) {
      if (!(error instanceof Failure)) throw error;
      for (const line of error.lines) mustBeClear(line);
      must(readFileSync(path).equals(before), 'a damaged file was changed');
      return 'refused';
    }
  },
);

const typed = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 4, max: 40 }).map(String) },
  { weight: 1, arbitrary: anyText },
);
const rarely = (text: fc.Arbitrary<string>) =>
  fc.oneof({ weight: 5, arbitrary: fc.constant(undefined) }, text);

const cutterSize = (...ordinary: string[]) =>
  fc.oneof({ weight: 12, arbitrary: fc.constantFrom(...ordinary) }, anyText);

/** The options a command takes, as they are typed. */
const optionsOf = (add: (command: Command) => unknown): ReadonlySet<string> => {
  const program = new Command();
  add(program);
  return new Set(
    [program, ...program.commands].flatMap(({ options }) => options.map(({ long }) => long ?? '')),
  );
};
const JOINT_OPTIONS = optionsOf(addJointOptions);
const TRIAL_OPTIONS = optionsOf(addTrial);

/** What is absent is not typed. */
const typedOnly = (all: Readonly<Record<string, string | undefined>>): Record<string, string> =>
  Object.fromEntries(Object.entries(all).flatMap(([key, text]) => (text === undefined ? [] : [[key, text]])));

/** Complaints at options that there are. */
const refusedOptions = (complaints: readonly Complaint[], options: ReadonlySet<string>): 'refused' => {
  for (const { at } of complaints)
    must(options.has(optionName(at)), `there is no option ${optionName(at)} to be wrong`);
  return refused(complaints);
};

export const jointOptions = abuse(
  'options of any text',
  1,
  fc.record({
    name: rarely(hostileName),
    kind: rarely(fc.oneof(fc.constantFrom('through', 'lapped'), anyText)),
    width: fc.oneof({ weight: 6, arbitrary: fc.integer({ min: 50, max: 400 }).map(String) }, anyText),
    tailBoard: typed,
    pinBoard: typed,
    lap: rarely(typed),
    slope: rarely(fc.oneof(fc.constant('1:7'), anyText)),
    tails: rarely(fc.oneof(fc.constantFrom('3', '20,25,20'), anyText)),
    pin: rarely(typed),
    pitch: rarely(typed),
    cutter: fc.option(
      fc.record({
        cutterDiameter: cutterSize('12.7', '10'),
        cutterAngle: cutterSize('8', '14deg', '9,5°'),
        cutterLength: cutterSize('20', '1in'),
        cutterNeck: rarely(typed),
      }),
    ),
    straight: rarely(cutterSize('6', '5')),
    bush: rarely(cutterSize('16', '14')),
    pinBush: rarely(cutterSize('11', '16')),
    fingersTogether: rarely(cutterSize('12', '1/2in')),
    fingersBush: rarely(cutterSize('16', '14')),
    fingersPairs: rarely(fc.oneof(fc.constantFrom('2', '9'), anyText)),
    fingersBar: rarely(cutterSize('200', '12in')),
    halfPin: rarely(typed),
    graded: rarely(fc.oneof(fc.constant('0.9'), anyText)),
    gradedFrom: rarely(anyText),
    units: rarely(fc.oneof(fc.constantFrom('mm', 'in'), anyText)),
    fractions: rarely(fc.oneof(fc.constantFrom('64', '16', 'decimal'), anyText)),
  }),
  ({ cutter, ...others }) => {
    const { spec, complaints, name, cutting, pitch } = readJointOptions(typedOnly({ ...others, ...cutter }));
    if (complaints.length > 0) return refusedOptions(complaints, JOINT_OPTIONS);
    must(!/\p{Cc}/u.test(name) && name.length <= 160, 'a name that is no name');
    must(spec !== undefined, 'neither read nor refused');
    if (spec === undefined) return 'refused';
    const laid = layOutWith(spec, toolingOf(cutting, pitch));
    if (!laid.ok)
      return refusedOptions(
        laid.complaints.map((each) => atOption(each, { pitch })),
        JOINT_OPTIONS,
      );
    mustBeSound(laid.value);
    if (cutting === undefined) return 'valid';
    const cut = cutJoint(laid.value, cutting);
    if (!cut.ok)
      return refusedOptions(
        cut.complaints.map((each) => atOption(each)),
        JOINT_OPTIONS,
      );
    mustCut(laid.value, cut.value);
    return 'valid';
  },
);

const measure = fc.oneof({ weight: 6, arbitrary: fc.constantFrom('0', '0.2', '1/64in', '0,3') }, anyText);
/** The corners of the plan that is tried. */
const PLANNED = [
  undefined,
  ...(['through', 'lapped'] as const).map((kind): PlannedJoint => {
    const cutter = { diameter: 12.7, angle: 8, length: 20 };
    const laid = layOutWith(
      { kind, width: 100, tailBoard: 11, pinBoard: 19, spacing: { kind: 'even' } },
      { cutter },
    );
    if (!laid.ok) throw new Error('an ordinary corner is refused');
    return { joint: laid.value, cutter };
  }),
].flatMap((planned) => (planned === undefined ? [planned] : [planned, { joint: planned.joint }]));

export const trialOptions = abuse(
  'options of a trial of any text',
  1,
  fc.record({
    planned: fc.constantFrom(...PLANNED),
    unit: fc.constantFrom('mm' as const, 'in' as const),
    given: fc.record({
      cutterAngle: rarely(cutterSize('8', '14')),
      cutterLength: rarely(typed),
      depth: rarely(typed),
      slope: rarely(fc.oneof(fc.constantFrom('1:7', '8deg'), anyText)),
      at: rarely(measure),
      loose: rarely(measure),
      tight: rarely(measure),
      proud: rarely(measure),
      shy: rarely(measure),
      short: rarely(measure),
    }),
    byHand: fc.constantFrom({}, {}, { byHand: true }),
  }),
  ({ planned, unit, given, byHand }) => {
    const options: TrialOptions = { ...typedOnly(given), ...byHand };
    try {
      const { trial, measured } = readTrialOptions(options, unit, planned);
      mustBeFinite({ trial, measured });
      const next =
        trial.kind === 'depth'
          ? correctDepth(trial.setting, measured)
          : trial.kind === 'guide'
            ? correctGuide(trial.setting, measured)
            : correctByHand(measured, trial.depth);
      if (next.ok) mustBeFinite(next.value);
      return next.ok
        ? 'valid'
        : refusedOptions(
            next.complaints.map((each) => atOption(each, options)),
            TRIAL_OPTIONS,
          );
    } catch (error) {
      if (!(error instanceof Failure)) throw error;
      for (const line of error.lines) {
        mustBeClear(line);
        must(TRIAL_OPTIONS.has(/^(--[a-z-]+): /u.exec(line)?.[1] ?? ''), `no option at: ${line}`);
      }
      return 'refused';
    }
  },
);
