import { describe, expect, it } from 'vitest';
import { atPitch } from '../../src/router/limits/atPitch.ts';
import { adviseCutter, CAUTIONS } from '../../src/router/limits/cautions.ts';
import { checkCutter } from '../../src/router/limits/cutter.ts';
import { checkStraight } from '../../src/router/passes/straightPasses.ts';
import type { Measured } from '../../src/router/trial/checkTrial.ts';
import { correctDepth } from '../../src/router/trial/depthCorrection.ts';
import { correctGuide } from '../../src/router/trial/guideCorrection.ts';
import { correctByHand } from '../../src/router/trial/handCorrection.ts';
import { convergence, parseTrialLog } from '../../src/router/trial/trialLog.ts';
import { speak } from '../../src/units/phrase.ts';
import { complaintsOf, told, value } from '../value.ts';
import { CUTTER, cutOf, LAPPED, THROUGH } from './example.ts';

const TRIAL = { angle: 14, depth: 9.5 };
const SLOPED = { slope: { run: 8 } };

describe('a trial by depth', () => {
  const because = (measured: Measured) => speak(value(correctDepth(TRIAL, measured)).because, 'mm');

  it('that is tight is cut less deep', () => {
    expect(because({ looseness: -0.2 })).toBe(
      'Tight by 0.2 mm: 0.2 mm / (2 tan 14°) = 0.4 mm shallower, so looser. Set the dovetail cutter at 9.1 mm for both boards.',
    );
  });

  it('says what the side and the ends of the tails need', () => {
    const words = (measured: Measured) => {
      const { stop, tails } = value(correctDepth(TRIAL, measured));
      return [stop, tails].map((move) => move && speak(move.because, 'mm'));
    };
    expect(words({ looseness: 0, proud: 0.3, short: 0.25 })).toEqual([
      'The tail board is 0.3 mm proud: the sockets are that much too short. Move the stop so that the cutter runs 0.3 mm further in.',
      'The tails end 0.25 mm short of the floors of their sockets. Set the cutter 0.25 mm deeper for the tail board alone, and do not move its guide: the fit stays the same.',
    ]);
    expect(words({ looseness: 0, proud: -0.4 })).toEqual([
      'The tail board is 0.4 mm below flush: the sockets are that much too long. Move the stop so that the cutter ends 0.4 mm sooner.',
      undefined,
    ]);
    expect(Object.keys(value(correctDepth(TRIAL, { looseness: 0 })))).not.toContain('tails');
  });

  it('advises against a neck that rubs and a lap that breaks', () => {
    const advice = (setting: object, looseness = 0) =>
      told(value(correctDepth({ ...TRIAL, ...setting }, { looseness })).advice);
    expect(advice({ length: 9.5, pinBoard: 10.5 })).toEqual([]);
    expect(advice({})).toEqual([]);
    expect(advice({ length: 9, pinBoard: 10 })).toEqual([
      "length: 9.5 mm is deeper than the cutter cuts (9 mm): its neck would rub; move the guide's centres for a tighter fit, or take a longer cutter",
      'depth: 9.5 mm leaves a lap of 0.5 mm of a pin board of 10 mm; it must be at least 1 mm; take a thicker pin board, or a cutter with another angle',
    ]);
    expect(advice({ pinBoard: 20 }, 0.1)).toEqual([
      "depth: gauges, templates and the sides' length were set for 9.5 mm; the lap is now 10.3 mm; give that lap in the plan, and print its sheets again",
    ]);
    // 0.1 / (2 tan 14°) = 0.2005 mm deeper. A change of less than a tenth is planed off.
    expect(advice({ pinBoard: 20 }, 0.04)).toEqual([]);
  });

  it('is refused in plain words', () => {
    expect(complaintsOf(correctDepth({ angle: 14, depth: 201 }, { looseness: 0 }))).toEqual([
      'depth: the depth is 201 mm; it must be more than 0 mm and at most 200 mm',
    ]);
    expect(correctDepth({ angle: 14, depth: 200 }, { looseness: 0 }).ok).toBe(true);
    expect(correctDepth({ angle: 14, depth: 0 }, { looseness: 0 }).ok).toBe(false);
    expect(complaintsOf(correctDepth(TRIAL, { looseness: 5.5, proud: -5.5, short: -0.5 }))).toEqual([
      'looseness: the looseness (tight is less than 0) is 5.5 mm; what a trial can correct is -5 mm to 5 mm; set out and cut the trial joint again',
      'proud: the amount proud (below flush is less than 0) is -5.5 mm; what a trial can correct is -5 mm to 5 mm; set out and cut the trial joint again',
      "short: the gap at the tails' ends is -0.5 mm; what a trial can correct is 0 mm to 5 mm; set out and cut the trial joint again",
    ]);
    expect(correctDepth({ angle: 21, depth: 100 }, { looseness: 5, proud: 5, short: 5 }).ok).toBe(true);
    expect(complaintsOf(correctDepth({ angle: 14, depth: 3 }, { looseness: 2, proud: 3, short: 4 }))).toEqual(
      [
        'looseness: the correction would be 4.01 mm, larger than the depth of 3 mm; measure again, or take a cutter with another angle',
        "proud: the correction would be 3 mm, larger than the joint's 3 mm; measure again, or take a cutter with another angle",
        "short: the correction would be 4 mm, larger than the joint's 3 mm; measure again, or take a cutter with another angle",
      ],
    );
  });
});

describe('a trial by guide', () => {
  const because = (looseness: number) => speak(value(correctGuide(SLOPED, { looseness })).because, 'mm');

  it('that is tight moves towards the inside face, and one that fits stays', () => {
    expect(because(-0.2)).toBe(
      "Tight by 0.2 mm: 0.2 mm x 8 / 2 = 0.8 mm towards the inside face. Put a shim 0.8 mm thick between the guide's fence and the pin board.",
    );
    expect(because(0)).toBe('The fit is right: leave the guide where it is.');
    expect(value(correctGuide(SLOPED, { looseness: -0 })).move).toBe(0);
  });

  it('is refused in plain words', () => {
    expect(complaintsOf(correctGuide({ ...SLOPED, depth: 0 }, { looseness: 6 }))).toEqual([
      'depth: the depth is 0 mm; it must be more than 0 mm and at most 200 mm',
      'looseness: the looseness (tight is less than 0) is 6 mm; what a trial can correct is -5 mm to 5 mm; set out and cut the trial joint again',
    ]);
    expect(complaintsOf(correctGuide({ ...SLOPED, depth: 10 }, { looseness: 3 }))).toEqual([
      "looseness: the correction would be 12 mm, larger than the joint's 10 mm; measure again, or take a cutter with another angle",
    ]);
  });
});

describe('a trial by guide whose straight cutter is known', () => {
  it('sets that deeper where the tail board is proud, shallower where it is below flush', () => {
    const stop = (proud: number) => {
      const move = value(correctGuide({ ...SLOPED, straight: 11 }, { looseness: 0, proud, short: 0.1 }));
      return [move.stop, move.tails].map((each) => each && speak(each.because, 'mm'));
    };
    const tails =
      'The tails end 0.1 mm short. Set the dovetail cutter 0.1 mm deeper for the tail board, and do not move its guide: the fit stays the same.';
    expect(stop(0.3)).toEqual([
      'The tail board is 0.3 mm proud: the sockets are that much too shallow. Set the straight cutter 0.3 mm deeper, at 11.3 mm.',
      tails,
    ]);
    expect(stop(-0.2)).toEqual([
      'The tail board is 0.2 mm below flush: the sockets are that much too deep. Set the straight cutter 0.2 mm shallower, at 10.8 mm.',
      tails,
    ]);
  });
});

describe('a trial by hand', () => {
  const words = (measured: Measured) => {
    const { because, stop, tails } = value(correctByHand(measured));
    return [because, stop?.because, tails?.because].flatMap((each) => (each ? [speak(each, 'mm')] : []));
  };

  it('pares the pins of a tight joint, half on either side', () => {
    expect(words({ looseness: -0.2 })).toEqual([
      'Tight by 0.2 mm: rub pencil on the tails, and pare the pins where it marks them, 0.1 mm off each side. Saw the next pins 0.1 mm nearer to their lines.',
    ]);
  });

  it('shims a loose joint, and scribes and saws the next anew', () => {
    expect(words({ looseness: 0.2 })).toEqual([
      'Loose by 0.2 mm: glue a shaving 0.2 mm thick into each socket, at one side of the tail. Scribe the next pins from their own tails, and saw them 0.1 mm further into the waste.',
    ]);
  });

  it('gauges the next boards by what is proud, below flush or short', () => {
    expect(words({ looseness: 0, proud: 0.3, short: 0.2 })).toEqual([
      'The fit is right: scribe and saw the next corner the same way.',
      'The tail board is 0.3 mm proud: chop the sockets 0.3 mm further from the end, and gauge the next sockets 0.3 mm longer.',
      'The tails end 0.2 mm short: gauge the next tail board 0.2 mm further from its end.',
    ]);
    expect(words({ looseness: 0, proud: -0.3 })[1]).toBe(
      "The tail board is 0.3 mm below flush: plane the pins' ends flush, and gauge the next sockets 0.3 mm shorter.",
    );
  });

  it('is refused where no joint is so far out', () => {
    expect(complaintsOf(correctByHand({ looseness: 6 }))).toHaveLength(1);
    expect(complaintsOf(correctByHand({ looseness: 0, proud: 4 }, 4))).toHaveLength(1);
    expect(correctByHand({ looseness: 0, proud: 4 }).ok).toBe(true);
    expect(told(value(correctByHand({ looseness: 0.6 })).advice)).toHaveLength(1);
  });
});

describe('a log', () => {
  it('of damaged lines gives how to correct them', () => {
    const { complaints, trials } = parseTrialLog('   \n"text"\n7\n');
    expect(trials).toEqual([]);
    expect(told(complaints)).toEqual([
      'line.2: "\\"text\\"" is no trial; a trial is written {"angle":14,"depth":9.5,"loose":0.2} or {"slope":8,"at":0,"loose":0.2}; correct the line or remove it',
      'line.3: "7" is no trial; a trial is written {"angle":14,"depth":9.5,"loose":0.2} or {"slope":8,"at":0,"loose":0.2}; correct the line or remove it',
    ]);
  });

  it('converges to the weighted mean of what its trials call for', () => {
    // At 1:8 a looseness of 0.1 calls for 0.4 more, 0 for none: weights 1 / (0.16 + 0.0025) and 1 / 0.0025.
    const [far, near] = [1 / 0.1625, 1 / 0.0025];
    const found = convergence([
      { slope: 8, at: 0, loose: 0.1 },
      { slope: 6, at: 9, loose: 0.1 },
      { slope: 8, at: 1, loose: 0 },
    ]);
    expect(found?.trials).toBe(2);
    expect(found?.setting).toBeCloseTo((0.4 * far + 1 * near) / (far + near), 12);
    expect(found?.spread).toBeCloseTo(0.6, 12);
  });
});

describe('a cutter', () => {
  it('is refused in plain words', () => {
    expect(complaintsOf(checkCutter({ diameter: 2.5, angle: 30, length: 0 }))).toEqual([
      "diameter: the cutter's diameter is 2.5 mm; it must be 3 mm to 60 mm; try 12.7mm",
      "angle: the cutter's angle is 30 degrees; it must be 2.87 to 21.80 degrees off its axis, such as 8 for a slope near 1:7 or 14 for 1:4; try 8 or 14",
      "length: the cutter's cutting length is 0 mm; it must be more than 0 mm",
    ]);
    expect(complaintsOf(checkCutter({ ...CUTTER, diameter: 61 }))[0]).toContain(
      'is 61 mm; it must be 3 mm to 60 mm',
    );
    expect(complaintsOf(checkCutter({ ...CUTTER, angle: Number.NaN }))[0]).toContain(
      'angle is not a number; it',
    );
    expect(complaintsOf(checkCutter({ ...CUTTER, neck: 0.5 }))).toEqual([
      "neck: the cutter's neck is 0.5 mm; it must be 1 mm or more and less than the diameter, 12.7 mm",
    ]);
    // (12.7 - 1) / (2 tan 14°) = 23.46.
    expect(complaintsOf(checkCutter({ diameter: 12.7, angle: 14, length: 25 }))[0]).toMatch(
      /; try 23\.4mm$/u,
    );
  });

  it('may be at either end of each range', () => {
    const [gentlest, steepest] = [20, 2.5].map((run) => (Math.atan(1 / run) * 180) / Math.PI);
    for (const cutter of [
      { diameter: 3, angle: 8, length: 5, neck: 1 },
      { diameter: 60, angle: steepest ?? 0, length: 5 },
      { diameter: 12, angle: gentlest ?? 0, length: 5 },
      // 12 - 2 x 27.5 / 5 = 1.
      { diameter: 12, angle: (Math.atan(1 / 5) * 180) / Math.PI, length: 27.5 },
    ])
      expect(complaintsOf(checkCutter(cutter))).toEqual([]);
  });

  it('is advised on with what would be right', () => {
    const { joint } = cutOf(LAPPED);
    expect(told(adviseCutter(joint, { ...CUTTER, length: 15.5, neck: 9 }))).toEqual([
      expect.stringMatching(/^cutter\.length: .*; try 16mm$/u),
      expect.stringMatching(/^cutter\.neck: .*; try 8\.48mm, or never set the cutter deeper than 15\.5 mm$/u),
    ]);
    expect(told(adviseCutter(joint, { ...CUTTER, length: 18 }))).toEqual([]);
  });

  it('comes with cautions in the order of the work', () => {
    expect(CAUTIONS.map((caution) => speak(caution, 'mm').split(' ').slice(0, 2).join(' '))).toEqual([
      'Unplug the',
      'Keep the',
      'A dovetail',
      'Take most',
      'Score the',
      'Then feed',
      'Cut one',
    ]);
  });
});

describe('a straight cutter', () => {
  it('is refused with the thickest that passes, to the tenth below', () => {
    const { joint } = cutOf(THROUGH);
    // (150 - 4 x 12) / 3 = 34 at the tip, less 2 x 16 tan 8° at the base, across the slope 29.22.
    expect(told(checkStraight(joint, 30))).toEqual([
      'straight: the straight cutter is 30 mm; to pass the narrowest socket it must be 1 mm to 29.21 mm; try 20mm',
    ]);
    expect(checkStraight(joint, 1)).toEqual([]);
  });
});

describe('a pitch', () => {
  const wish = {
    kind: 'through',
    width: 150,
    tailBoard: 8,
    pinBoard: 8,
    pin: 5,
    spacing: { kind: 'even' },
  } as const;

  it('is refused with what it may be on this board', () => {
    // A tail's base of 3 mm and 8 / 8 mm lost on either side are 5 mm at the tip, and a pin of 5; half pins of 1 mm leave 148.
    expect(complaintsOf(atPitch(wish, 8))).toEqual([
      'pitch: a pitch of 8 mm leaves tails of 3 mm beside pins of 5 mm; it must be 10 mm to 153 mm here; try 10mm, or make the pins narrower',
    ]);
    expect(complaintsOf(atPitch(wish, 4))[0]).toContain('leaves tails of 0 mm');
    expect(atPitch(wish, 10).ok).toBe(true);
    expect(atPitch(wish, 153).ok).toBe(true);
    expect(atPitch(wish, 153.1).ok).toBe(false);
  });

  it('has the tails that leave nearest to a whole pin at both edges, where they fit', () => {
    // (150 - 5) / 29 = 5 tails exactly: (150 - 145 + 5) / 2 = 5 at either edge.
    expect(value(atPitch(wish, 29)).halfPin).toEqual({ lower: 5, upper: 5 });
  });
});
