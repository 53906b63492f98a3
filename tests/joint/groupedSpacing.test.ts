import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupDividers } from '../../src/joint/gauges.ts';
import { grouped } from '../../src/joint/groupedSpacing.ts';
import { jointSpan } from '../../src/joint/joint.ts';
import { jointRecord } from '../../src/joint/jointRecord.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { layOut } from '../../src/joint/layOut.ts';
import { groupedSpec } from './anySpec.ts';
import { adviceFor, against, jointOf } from './told.ts';

/** 245 = 2 x 10 + 7 x 25 + 4 x 5 + 2 x 15. */
const spec: JointSpec = {
  kind: 'through',
  width: 245,
  tailBoard: 12,
  pinBoard: 16,
  pin: 5,
  halfPin: { lower: 10, upper: 10 },
  spacing: grouped([2, 3, 2]),
};

const widths = (change: Partial<JointSpec> = {}): number[] =>
  jointOf({ ...spec, ...change } as JointSpec).pins.map(({ narrow: [from, to] }) => to - from);

describe('tails in groups', () => {
  it('are equal, with pins inside the groups and three times as wide ones between them', () => {
    const { tails, even, alternatives } = jointOf(spec);
    expect(tails.map(({ tip }) => tip)).toEqual([
      [10, 35],
      [40, 65],
      [80, 105],
      [110, 135],
      [140, 165],
      [180, 205],
      [210, 235],
    ]);
    expect(widths()).toEqual([10, 5, 15, 5, 5, 15, 5, 10]);
    // No dividers step them, and no other number of them was asked for.
    expect([even, alternatives]).toEqual([false, []]);
  });

  it('are stepped off by dividers group by group: a tail of 25 and a pin of 5', () => {
    expect(groupDividers(jointOf(spec))).toEqual({
      step: 30,
      groups: [
        { from: 10, downFrom: 65 },
        { from: 80, downFrom: 165 },
        { from: 180, downFrom: 235 },
      ],
    });
    expect(jointRecord('Case', jointOf(spec), 'mm')).toMatchObject({
      dividers: null,
      groupDividers: { step: 30 },
    });
    // A group of one has nothing to step; tails that are all evenly spaced, or differ, are in no groups.
    expect(
      groupDividers(jointOf({ ...spec, width: 120, spacing: grouped([1, 2], 20) }))?.groups,
    ).toHaveLength(1);
    const even = jointOf({ ...spec, spacing: { kind: 'even', tails: 5 } });
    expect(groupDividers(even)).toBe(undefined);
    expect(jointRecord('Case', even, 'mm')).not.toHaveProperty('groupDividers');
    expect(
      groupDividers(jointOf({ ...spec, spacing: { kind: 'graded', tails: 5, ratio: 0.9, from: 'edge' } })),
    ).toBe(undefined);
  });

  it('have pins between groups as wide as is given', () => {
    // 7 x 25 + 2 x 10 more than half of them.
    expect(widths({ spacing: grouped([1, 2], 20), width: 120 })).toEqual([10, 20, 5, 10]);
    expect(widths({ spacing: grouped([1, 1, 1], 12), width: 134 })).toEqual([10, 12, 12, 10]);
  });

  it('may be in any kind of corner', () => {
    expect(jointOf({ ...spec, kind: 'lapped' }).tails).toHaveLength(7);
    expect(jointOf({ ...spec, kind: 'double-lapped' }).tails).toHaveLength(7);
  });

  it('need two groups or more of whole tails, which are as many as the groups say', () => {
    expect(against({ ...spec, spacing: grouped([3]) })).toEqual([
      'groups: one group is listed; there must be two or more; list the number of tails in each, such as 2, 3, 2, or choose even spacing',
    ]);
    expect(against({ ...spec, spacing: grouped([]) })).toHaveLength(1);
    expect(against({ ...spec, spacing: grouped([2, 0, 1.5], 0.5) })).toEqual([
      'groups.1: group 2 has 0 tails; it must have a whole number of them, at least 1',
      'groups.2: group 3 has 1.5 tails; it must have a whole number of them, at least 1',
      'groupPin: the pin between groups is 0.5 mm; it must be 1 mm to 5000 mm',
    ]);
    expect(against({ ...spec, spacing: { kind: 'grouped', tails: 5, groups: [2, 2] } })).toEqual([
      'tails: 5 tails are not as many as their groups have, 4',
    ]);
  });

  it('are refused where they have no room: 7 bases of 3 that lose 2 on either side need 49 of what the pins leave', () => {
    // 49 = 119 - 2 x 10 - 4 x 5 - 2 x 15.
    expect(against({ ...spec, width: 119 })).toEqual([]);
    expect(against({ ...spec, width: 118.3 })).toEqual([
      'groups: 7 tails in 3 groups are too many for 118.3 mm: the pins leave 6.9 mm for each, and each base must be at least 3 mm; use fewer tails, narrower pins between groups or a wider board',
    ]);
    expect(against({ ...spec, width: 30 })[0]).toContain('the pins leave 0 mm for each');
  });

  it('are advised against where the pins between groups look like those inside', () => {
    expect(adviceFor(spec)).toEqual([]);
    expect(adviceFor({ ...spec, spacing: grouped([2, 3, 2], 5) })).toEqual([
      'groupPin: pins of 5 mm between groups are no wider than those of 5 mm inside them: the groups do not show; try 15mm',
    ]);
  });

  it('fill the joint, of any corner that can be cut: half pins, tails, pins and pins between groups', () => {
    fc.assert(
      fc.property(groupedSpec, (wish) => {
        const laid = layOut(wish);
        fc.pre(laid.ok && wish.spacing.kind === 'grouped');
        const joint = laid.value;
        const { groups, groupPin } = wish.spacing;
        const { tails, pins } = joint;
        const count = groups.reduce((a, b) => a + b, 0);
        expect(tails).toHaveLength(count);
        const pin = wish.pin ?? Math.max(3, wish.tailBoard / 2);
        const between = groupPin ?? 3 * pin;
        // What starts a group: all but the first have a wide pin below them.
        const starts = groups.map((_, i) => groups.slice(0, i).reduce((a, b) => a + b, 0));
        pins.slice(1, -1).forEach(({ narrow: [from, to] }, i) => {
          expect(to - from).toBeCloseTo(starts.includes(i + 1) ? between : pin, 6);
        });
        const [from, to] = jointSpan(joint);
        const tip = (tails[0]?.tip[1] ?? 0) - (tails[0]?.tip[0] ?? 0);
        const whole = 2 * pin + count * tip + (count - groups.length) * pin + (groups.length - 1) * between;
        expect(whole).toBeCloseTo(to - from, 6);
      }),
    );
  });
});
