import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dividers } from '../../../src/joint/gauges.ts';
import type { Joint } from '../../../src/joint/joint.ts';
import { isTail } from '../../../src/joint/widthName.ts';
import { adjust } from '../../../src/page/model/adjust.ts';
import { makeEven, oneFewer, oneMore, toggleLock } from '../../../src/page/model/edits.ts';
import { quantity } from '../../../src/page/model/quantities.ts';
import { FIRST_SCOPE } from '../../../src/page/model/scope.ts';
import type { Snapshot } from '../../../src/page/model/snapshot.ts';
import { widthsOf } from '../../../src/page/model/widths.ts';
import type { Result } from '../../../src/units/complaint.ts';
import { CHEST, cornerIn, FRONT, LONE, snapshotOf } from '../chest.ts';

const made = (result: Result<Snapshot>): Snapshot => {
  if (!result.ok) throw new Error(JSON.stringify(result.complaints));
  return result.value;
};
/** As it is read from the file that Save writes. */
const reopened = ({ text }: Snapshot): Snapshot => snapshotOf(text);

/** A corner with equal tails, most of which are no whole number of hundredths wide. */
const corner = fc
  .record({
    unit: fc.constantFrom('mm', 'in'),
    width: fc.integer({ min: 90, max: 400 }),
    tails: fc.integer({ min: 2, max: 7 }),
  })
  .map(({ unit, width, tails }) => {
    const size = (mm: number): number => (unit === 'mm' ? mm : Math.round((mm / 25.4) * 32) / 32);
    return snapshotOf(
      `units: ${unit}\njoints: [{name: A, kind: through, width: ${size(width)}, tailBoard: ${size(10)}, pinBoard: ${size(10)}, tails: ${tails}}]\n`,
    );
  });
const widths = (now: Snapshot): readonly number[] => widthsOf(cornerIn(now, LONE).joint);
const locks = fc.uniqueArray(fc.nat(20), { minLength: 1, maxLength: 4 });
const lockAll = (now: Snapshot, some: readonly number[]): Snapshot =>
  some.reduce((before, i) => made(toggleLock(before, cornerIn(before, LONE), i % widths(now).length)), now);
const expectSameSteps = (a: Joint, b: Joint): void => {
  const [one, other] = [dividers(a), dividers(b)];
  expect(one).toBeDefined();
  for (const key of ['from', 'upTo', 'downFrom', 'step'] as const)
    expect(one?.[key]).toBeCloseTo(other?.[key] ?? Number.NaN, 6);
};

describe('equal tails', () => {
  it('stay equal when they are locked, saved, opened again and unlocked, and dividers step them off as before', () => {
    fc.assert(
      fc.property(corner, locks, (start, some) => {
        const before = cornerIn(start, LONE).joint;
        let now = reopened(lockAll(start, some));
        expectSameSteps(cornerIn(now, LONE).joint, before);
        for (const i of cornerIn(now, LONE).locked) now = made(toggleLock(now, cornerIn(now, LONE), i));
        now = reopened(now);
        expect(now.text).not.toContain('locked');
        expectSameSteps(cornerIn(now, LONE).joint, before);
      }),
      { numRuns: 40 },
    );
  });

  it('that are not locked stay equal to each other while tails are added and taken away, and the board is changed', () => {
    const steps = fc.array(fc.constantFrom('more', 'fewer', 'even', 'wider'), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(corner, locks, steps, (start, some, edits) => {
        let now = lockAll(start, some);
        for (const edit of edits) {
          const at = cornerIn(now, LONE);
          const width = quantity(at, 'jointWidth');
          if (width === undefined) throw new Error('no width');
          const result =
            edit === 'more'
              ? oneMore(now, at)
              : edit === 'fewer'
                ? oneFewer(now, at)
                : edit === 'even'
                  ? makeEven(now, at)
                  : adjust(now, at, width, at.joint.width + 7, FIRST_SCOPE);
          if (result.ok) now = reopened(result.value);
          const { joint, locked } = cornerIn(now, LONE);
          const free = widths(now).filter((_, i) => isTail(i) && !locked.has(i));
          expect(Math.max(...free) - Math.min(...free)).toBeLessThan(free.length === 0 ? 1 : 1e-9);
          if (free.length === joint.tails.length) expect(joint.even).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('of a drawer stay equal too', () => {
    const chest = snapshotOf(CHEST);
    const before = cornerIn(chest, FRONT).joint;
    const locked = reopened(made(toggleLock(chest, cornerIn(chest, FRONT), 3)));
    expectSameSteps(cornerIn(locked, FRONT).joint, before);
  });
});
