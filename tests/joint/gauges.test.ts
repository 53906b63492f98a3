import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dividers, gauges, glueArea } from '../../src/joint/gauges.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { layOut } from '../../src/joint/layOut.ts';
import { ordinarySpec } from './anySpec.ts';
import { jointOf } from './told.ts';

const through = {
  kind: 'through',
  width: 100,
  tailBoard: 10,
  pinBoard: 12,
  spacing: { kind: 'even', tails: 5 },
} as const satisfies JointSpec;

describe('the marking gauges of a through joint', () => {
  it('are set to the other board', () => {
    expect(gauges(jointOf(through))).toEqual({ tailBoard: 12, pinBoardFace: 10, pinBoardEnd: 12 });
  });

  it('are shorter by what the tail board is to be proud', () => {
    expect(gauges(jointOf({ ...through, proud: 0.5 }))).toEqual({
      tailBoard: 12,
      pinBoardFace: 9.5,
      pinBoardEnd: 12,
    });
  });
});

describe('the marking gauges of a lapped joint', () => {
  it('leave the lap on the end of the pin board', () => {
    expect(gauges(jointOf({ ...through, kind: 'lapped', pinBoard: 20, lap: 6 }))).toEqual({
      tailBoard: 14,
      pinBoardFace: 10,
      pinBoardEnd: 14,
    });
  });
});

describe('the dividers', () => {
  it('open by a tail and a pin, and start from either half pin', () => {
    // Five tails of 14 and pins of 5.
    expect(dividers(jointOf(through))).toEqual({ from: 5, upTo: 81, downFrom: 95, step: 19 });
  });

  it('start from unequal half pins', () => {
    // 100 - 12 - 8 - 5 leaves 75 for two tails.
    expect(
      dividers(
        jointOf({ ...through, halfPin: { lower: 12, upper: 8 }, spacing: { kind: 'even', tails: 2 } }),
      ),
    ).toEqual({ from: 12, upTo: 54.5, downFrom: 92, step: 42.5 });
  });

  it('step over listed widths that are alike', () => {
    expect(dividers(jointOf({ ...through, spacing: { kind: 'listed', tails: [42.5, 42.5] } }))?.step).toBe(
      47.5,
    );
  });

  it('have nothing to step with one tail, or with tails or pins that differ', () => {
    expect(dividers(jointOf({ ...through, spacing: { kind: 'even', tails: 1 } }))).toBeUndefined();
    expect(
      dividers(jointOf({ ...through, spacing: { kind: 'graded', ratio: 0.9, from: 'edge' } })),
    ).toBeUndefined();
    expect(
      dividers(jointOf({ ...through, spacing: { kind: 'listed', tails: [27, 26, 27], pins: [5, 5] } })),
    ).toBeUndefined();
    expect(
      dividers(jointOf({ ...through, spacing: { kind: 'listed', tails: [27, 27, 27], pins: [4, 5] } })),
    ).toBeUndefined();
  });

  it('reach every line of the tails, in any joint', () => {
    fc.assert(
      fc.property(ordinarySpec, (spec) => {
        const result = layOut({ ...spec, spacing: { kind: 'even' } });
        if (!result.ok) return;
        const { tails } = result.value;
        const set = dividers(result.value);
        expect(set === undefined).toBe(tails.length === 1);
        if (set === undefined) return;
        expect(set.upTo).toBeCloseTo(set.from + (tails.length - 1) * set.step, 8);
        tails.forEach(({ tip }, i) => {
          expect(set.from + i * set.step).toBeCloseTo(tip[0], 8);
          expect(set.downFrom - (tails.length - 1 - i) * set.step).toBeCloseTo(tip[1], 8);
        });
      }),
    );
  });
});

describe('the glue area', () => {
  // A slope of 7 in 24 makes a side over a depth of 24 exactly 25 long.
  const joint = { ...through, pinBoard: 24, slope: { run: 24 / 7 } } as const;

  it('is both sides of every tail: two of 25 by 10 for each', () => {
    expect(glueArea(jointOf({ ...joint, spacing: { kind: 'even', tails: 1 } }))).toBeCloseTo(500, 9);
    expect(glueArea(jointOf({ ...joint, spacing: { kind: 'even', tails: 3 } }))).toBeCloseTo(1500, 9);
  });

  it('does not count what is proud of the pins', () => {
    expect(glueArea(jointOf({ ...joint, proud: 1, spacing: { kind: 'even', tails: 3 } }))).toBeCloseTo(
      1350,
      9,
    );
  });

  it('of a lapped joint ends at the lap', () => {
    expect(
      glueArea(
        jointOf({ ...joint, kind: 'lapped', pinBoard: 30, lap: 6, spacing: { kind: 'even', tails: 3 } }),
      ),
    ).toBeCloseTo(1500, 9);
  });
});
