import fc from 'fast-check';
import type { Result } from '../../src/complaint.ts';
import { type Cutter, checkCutter } from '../../src/guided/cutter.ts';
import { guideBoard } from '../../src/guided/guideBoard.ts';
import { guidedCut } from '../../src/guided/guided.ts';
import { layOutForCutter } from '../../src/guided/layOutForCutter.ts';
import { checkStraight, defaultStraight } from '../../src/guided/straightPasses.ts';
import { correctDepth, correctTemplate, type Measured } from '../../src/guided/trial.ts';
import { convergence, formatTrial, parseTrialLog } from '../../src/guided/trialLog.ts';
import type { JointSpec } from '../../src/joint/spec.ts';
import { mostly, ordinarySpec, wild, wildSpec } from '../joint/anySpec.ts';
import { abuse, must, mustBeFinite, refused } from './abuse.ts';
import { mustBeSound } from './joints.ts';

const optional = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });

const cutter: fc.Arbitrary<Cutter> = fc.record(
  { diameter: mostly(6, 16), angle: mostly(6, 15), length: mostly(12, 25), neck: mostly(2, 6) },
  { requiredKeys: ['diameter', 'angle', 'length'] },
);

/** What leaves the slope and the pins to the cutter, most of the time. */
const wish: fc.Arbitrary<JointSpec> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      kind: fc.constantFrom('through' as const, 'lapped' as const),
      width: mostly(60, 500),
      tailBoard: mostly(8, 20),
      pinBoard: mostly(10, 22),
      spacing: fc.constant({ kind: 'even' as const }),
    }),
  },
  ordinarySpec,
  wildSpec,
);

export const cutters = abuse(
  'corners cut with any cutter',
  1,
  fc.record({
    wish,
    tool: cutter,
    straight: optional(mostly(3, 8)),
    bush: mostly(10, 40),
  }),
  ({ wish, tool, straight, bush }) => {
    const checked = checkCutter(tool);
    if (!checked.ok) return refused(checked.complaints, 'numbers');
    const laid = layOutForCutter(wish, checked.value);
    if (!laid.ok) return refused(laid.complaints, 'numbers');
    const joint = laid.value;
    mustBeSound(joint);
    must(joint.depth <= tool.length + 1e-9, 'deeper than the cutter cuts');
    const through = straight ?? defaultStraight(joint, tool);
    const wrong = joint.kind === 'through' ? checkStraight(joint, through) : [];
    if (wrong.length > 0) return refused(wrong, 'numbers');
    const cut = guidedCut(joint, tool, through);
    mustBeFinite(cut);
    must(cut.passes.length === joint.pins.length, 'there are not passes for every space');
    for (const board of ['tail', 'pin'] as const) {
      const guide = guideBoard(joint, tool, cut, board, bush);
      if (guide.ok) mustBeFinite(guide.value);
      else refused(guide.complaints, 'numbers');
    }
    return 'valid';
  },
);

const measured: fc.Arbitrary<Measured> = fc.record(
  { looseness: mostly(-1, 1), proud: mostly(-1, 1), short: mostly(0, 1) },
  { requiredKeys: ['looseness'] },
);

export const trials = abuse(
  'trial joints of any measures',
  1,
  fc.record({
    angle: mostly(4, 20),
    depth: mostly(5, 20),
    measured,
    run: fc.double({ min: 2.5, max: 20, noNaN: true }),
  }),
  ({ angle, depth, measured, run }) => {
    const moves: Result<object>[] = [
      correctDepth({ angle, depth }, measured),
      correctTemplate({ slope: { run }, depth }, measured),
    ];
    const complaints = moves.flatMap((move) => {
      if (!move.ok) return move.complaints;
      mustBeFinite(move.value);
      return [];
    });
    return complaints.length > 0 ? refused(complaints, 'numbers') : 'valid';
  },
);

const line = fc.oneof(
  fc.record({ angle: wild, depth: wild, loose: wild }).map((trial) => JSON.stringify(trial)),
  fc.record({ slope: wild, at: wild, loose: wild }).map((trial) => JSON.stringify(trial)),
  fc
    .record({
      angle: fc.integer({ min: 5, max: 18 }),
      depth: fc.double({ min: 4, max: 20, noNaN: true }),
      loose: fc.double({ min: -1, max: 1, noNaN: true }),
    })
    .map((trial) => formatTrial(trial).trim()),
  fc.json(),
  fc.string({ unit: 'binary' }),
);

export const trialLogs = abuse('trial logs of any lines', 1, fc.array(line, { maxLength: 8 }), (lines) => {
  const { trials, complaints } = parseTrialLog(lines.join('\n'));
  mustBeFinite(trials);
  const found = convergence(trials);
  must((found === undefined) === (trials.length === 0), 'trials lead nowhere');
  mustBeFinite(found);
  return complaints.length > 0 ? refused(complaints) : 'valid';
});
