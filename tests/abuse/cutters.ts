import fc from 'fast-check';
import type { Joint } from '../../src/joint/joint.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { cutJoint, type JointCut } from '../../src/router/guide/cutJoint.ts';
import type { Cutter } from '../../src/router/limits/cutter.ts';
import { type Cutting, checkCutting } from '../../src/router/limits/cutting.ts';
import { layOutWith } from '../../src/router/limits/layOutWith.ts';
import type { Measured } from '../../src/router/trial/checkTrial.ts';
import { correctDepth } from '../../src/router/trial/depthCorrection.ts';
import { correctGuide } from '../../src/router/trial/guideCorrection.ts';
import { convergence, formatTrial, parseTrialLog } from '../../src/router/trial/trialLog.ts';
import type { Result } from '../../src/units/complaint.ts';
import { mostly, ordinarySpec, wild, wildSpec } from '../joint/anySpec.ts';
import { abuse, must, mustBeFinite, refused } from './abuse.ts';
import { mustBeSound } from './joints.ts';

const cutter: fc.Arbitrary<Cutter> = fc.record(
  { diameter: mostly(9, 16), angle: mostly(6, 12), length: mostly(16, 22), neck: mostly(2, 6) },
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

/** What holds of every joint that a cutter cuts. */
export const mustCut = (joint: Joint, cut: JointCut): void => {
  mustBeFinite(cut);
  const { passes, pinCut } = cut.guided;
  must(passes.length === joint.pins.length, 'there are not passes for every space');
  must(pinCut.passes.length === joint.tails.length, 'there are not passes for every socket');
  for (const [first = 0, ...more] of [passes, pinCut.kind === 'round' ? pinCut.passes : []].flat())
    more.reduce((before, centre) => {
      must(centre > before, 'passes that do not go on');
      return centre;
    }, first);
};

const cutting: fc.Arbitrary<Cutting> = fc.record(
  { cutter, straight: mostly(2, 8), bush: mostly(14, 24), pinBush: mostly(9, 20) },
  { requiredKeys: ['cutter'] },
);

export const cutters = abuse(
  'corners cut with any cutter, bush and pitch',
  1,
  fc.record({
    wish,
    cutting,
    pitch: fc.oneof({ weight: 4, arbitrary: fc.constant(undefined) }, mostly(15, 60)),
  }),
  ({ wish, cutting, pitch }) => {
    const wrong = checkCutting(cutting);
    if (wrong.length > 0) return refused(wrong, 'numbers');
    const { cutter } = cutting;
    const laid = layOutWith(wish, { cutter, ...(pitch !== undefined && { pitch }) });
    if (!laid.ok) return refused(laid.complaints, 'numbers');
    mustBeSound(laid.value);
    must(laid.value.depth <= cutter.length + 1e-6, 'deeper than the cutter cuts');
    const cut = cutJoint(laid.value, cutting);
    if (!cut.ok) return refused(cut.complaints, 'numbers');
    mustCut(laid.value, cut.value);
    must(cutting.bush === undefined || cut.value.guides.length > 0, 'a bush without a guide');
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
      correctGuide({ slope: { run }, depth }, measured),
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
