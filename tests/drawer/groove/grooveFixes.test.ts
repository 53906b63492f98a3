import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draftDrawer, grooveFixesOf } from '../../../src/drawer/draftDrawer.ts';
import type { DrawerSpec } from '../../../src/drawer/drawerSpec.ts';
import { grooveFixes } from '../../../src/drawer/groove/grooveFixes.ts';
import type { Slope } from '../../../src/units/slope.ts';
import { complaintsOf } from '../../value.ts';
import { drawer, inOpening } from '../chest.ts';

const withOffset = (spec: DrawerSpec, offset: number): DrawerSpec => ({
  ...spec,
  groove: { ...spec.groove, offset },
});
const withPin = (spec: DrawerSpec, pin: number): DrawerSpec => ({ ...spec, joint: { ...spec.joint, pin } });
const withSlope = (spec: DrawerSpec, slope: Slope): DrawerSpec => ({
  ...spec,
  joint: { ...spec.joint, slope },
});

const low = drawer({ groove: { offset: 3, width: 5, depth: 5 } });
const crowded = drawer({
  joint: { ...drawer().joint, spacing: { kind: 'even', tails: 5 } },
});

describe('what would hide a groove', () => {
  // Depth 15, slope 1:7: the half pin of 6, the slope's 15/7 and 1 to spare.
  it('is an offset of at least the wished half pin, the loss and the spare', () => {
    expect(grooveFixesOf(low).offset).toEqual({ bound: 'least', value: 9.15 });
  });

  it('is an offset that changes the half pin where none leaves it as wished', () => {
    // A single tail between half pins of 12 and 1: its base, from 14.14 to 75 - 1 - 2.14, holds no groove of 57. With the
    // least half pin of 1 it begins at 3.14, and the groove, with 1 to spare, 4.15 up.
    const wide = drawer({
      groove: { offset: 3, width: 57, depth: 5 },
      backDrop: 4,
      joint: { ...drawer().joint, halfPin: { lower: 12, upper: 1 }, spacing: { kind: 'even', tails: 1 } },
    });
    expect(grooveFixes(wide, ({ groove }) => groove.offset < 13).offset).toEqual({
      bound: 'least',
      value: 4.15,
    });
  });

  it('is the nearer of both where the wished half pin leaves some base too narrow, wherever the groove lies', () => {
    // Three tails that grow from the edge by 10 : 7 : 4.9, half pins of 12 below and 6 above, pins of 9: the last would be
    // (75 - 12 - 6 - 18) * 4.9 / 21.9 = 8.7 at its tip and 8.7 - 2 * 15 / 4 = 1.2 at its base.
    // With the least half pin of 1 the first tail's base begins at 1 + 15 / 4, and the groove, with 1 to spare, at 5.75.
    const tapered = drawer({
      groove: { offset: 3, width: 5, depth: 5 },
      joint: {
        ...drawer().joint,
        halfPin: { lower: 12, upper: 6 },
        pin: 9,
        slope: { run: 4 },
        spacing: { kind: 'graded', ratio: 0.7, from: 'edge', tails: 3 },
      },
    });
    expect(grooveFixesOf(tapered).offset).toEqual({ bound: 'least', value: 5.75 });
  });

  it('is a slope that loses no more than the offset leaves', () => {
    // 15 s <= 3 - 2.
    expect(grooveFixesOf(low).slope).toEqual({ run: 15 });
  });

  it('is a narrower pin where tails are crowded, and nothing where that cannot help', () => {
    expect(grooveFixesOf(low).pin).toBeUndefined();
    // h = 10 - 15/7; 17 + 15/7 - h = (75 - h - 6 - 4 p) / 5.
    const h = 10 - 15 / 7;
    const exact = (69 - h - 5 * (17 + 15 / 7 - h)) / 4;
    expect(grooveFixesOf(crowded).pin).toBe(Math.floor(exact * 100) / 100);
    expect(grooveFixesOf(crowded).offset).toBeUndefined();
    expect(grooveFixesOf(crowded).slope).toBeUndefined();
  });

  it('is at most the least pin and the gentlest slope, and never a pin or an offset of nothing', () => {
    const anything = (change: Partial<DrawerSpec>) => grooveFixes(drawer(change), () => true);
    const { joint, groove } = drawer();
    // At 1:7.5 a depth of 15 loses 2: h is 8, and five tails of (opening - 1 - 8 - 6 - 4 p) / 5 must be 11 to hold 17 and 1 to spare.
    const five = { joint: { ...joint, slope: { run: 7.5 }, spacing: { kind: 'even', tails: 5 } } } as const;
    expect(grooveFixesOf(inOpening(280, 74, 420, five)).pin).toBe(1);
    expect(grooveFixes(inOpening(280, 73.9, 420, five), () => true).pin).toBeUndefined();
    // 15 s <= offset - 2.
    expect(anything({ groove: { ...groove, offset: 2.75 } }).slope).toEqual({ run: 20 });
    expect(anything({ groove: { ...groove, offset: 2.74 } }).slope).toBeUndefined();
    expect(anything({ groove: { ...groove, offset: 1 } }).slope).toBeUndefined();
    // A listed tail's base that ends at 6 + tip - 2 has no room for the groove's 5 and 1 to spare, wherever that lies.
    const narrow = (tip: number) =>
      anything({ joint: { ...joint, slope: { run: 7.5 }, spacing: { kind: 'listed', tails: [tip] } } });
    expect(narrow(2.01).offset).toEqual({ bound: 'most', value: 0.01 });
    expect(narrow(2).offset).toBeUndefined();
    expect(narrow(1).offset).toBeUndefined();
    // Listed tails and half pins stay, whatever the pin.
    expect(narrow(1).pin).toBeUndefined();
  });

  it('is an offset of at most what a single tail reaches, where the number of tails is free', () => {
    // Its base ends at 75 - 6 - 15/7 = 66.857; the groove's 5 and 1 to spare lie below that.
    const high = drawer({ groove: { offset: 70, width: 5, depth: 5 } });
    expect(grooveFixes(high, () => true).offset).toEqual({ bound: 'most', value: 60.85 });
  });

  it('may be any of the three', () => {
    // 4 tails at 1:6 lose 2.5 on either side: h <= 7.5, but h >= (19.5 - (75 - 6 - 15) / 4) * 4 / 3 = 8.
    const near = drawer({
      joint: { ...drawer().joint, slope: { run: 6 }, spacing: { kind: 'even', tails: 4 } },
    });
    expect(grooveFixesOf(near)).toEqual({
      // 0.75 (o - 3.5) >= o - 5.
      offset: { bound: 'most', value: 9.5 },
      // (69 - 3 p) / 4 >= 19.5 - 0.75 * 7.5.
      pin: 4.5,
      // 0.75 (10 - 15 s) >= 3.5 + 15 s: s <= 4 / (1.75 * 15), 1:6.5625.
      slope: { run: 6.57 },
    });
  });

  it('is no offset that would leave the back too low for its joint', () => {
    // The back is 6.5 high: half pins of 1 and a tail of 3 + 2 * 11 / 20. 1.15 higher, the groove leaves it too little.
    const lowBack = {
      ...low,
      backDrop: 60.5,
      backJoint: { pin: 1, slope: { run: 20 }, spacing: { kind: 'even' } },
    } as const;
    expect(grooveFixesOf(lowBack)).toEqual({ slope: { run: 15 } });
  });

  it('is nothing where the groove is hidden, or where there is more to set right first', () => {
    expect(grooveFixesOf(drawer())).toEqual({});
    expect(grooveFixesOf(inOpening(20, 76, 420))).toEqual({});
  });

  it('is reported with its numbers, the miss, and the nearest count that helps', () => {
    expect(complaintsOf(draftDrawer(low))).toEqual([
      'groove.offset: the groove, 3 mm to 8 mm up, would show at the front: it must lie inside the base of the lowest tail, however many there are, with 1 mm to spare, but it lies 1.14 mm too low; try 9.15mm, or choose a slope of 1:15 or gentler (changing only the pin width is not enough)',
    ]);
    expect(complaintsOf(draftDrawer(crowded))).toEqual([
      'groove.offset: the groove, 11 mm to 16 mm up, would show at the front: it must lie inside the base of the lowest of 5 tails with 1 mm to spare, but it reaches 3.06 mm too high; choose a pin width of 1.17 mm or less or 4 tails (changing only the groove offset or only the slope is not enough)',
    ]);
  });

  it('is enough alone, a little less is not, and where none is found none helps', () => {
    const wishes = fc.record({
      height: fc.double({ min: 40, max: 140, noNaN: true }),
      run: fc.double({ min: 3, max: 12, noNaN: true }),
      pin: fc.double({ min: 1.5, max: 12, noNaN: true }),
      ownHalfPins: fc.boolean(),
      offset: fc.double({ min: 1, max: 40, noNaN: true }),
      tails: fc.option(fc.integer({ min: 1, max: 9 }), { nil: undefined }),
      graded: fc.option(fc.double({ min: 0.7, max: 1.3, noNaN: true }), { nil: undefined }),
    });
    let showing = 0;
    fc.assert(
      fc.property(wishes, ({ height, run, pin, ownHalfPins, offset, tails, graded }) => {
        const count = tails === undefined ? {} : { tails };
        const { halfPin, ...joint } = drawer().joint;
        const spec = inOpening(280, height, 420, {
          groove: { offset, width: 5, depth: 5 },
          joint: {
            ...joint,
            ...(ownHalfPins && halfPin !== undefined ? { halfPin } : {}),
            slope: { run },
            pin,
            spacing:
              graded === undefined
                ? { kind: 'even', ...count }
                : { kind: 'graded', ratio: graded, from: 'edge', ...count },
          },
        });
        const draft = draftDrawer(spec);
        // Only where the groove is all that is wrong is a remedy expected to leave nothing wrong.
        fc.pre(!draft.ok && draft.complaints.every(({ at }) => at[0] === 'groove'));
        showing++;
        const works = (changed: DrawerSpec) => draftDrawer(changed).ok;
        const { offset: moved, pin: narrowed, slope } = grooveFixesOf(spec);
        if (moved === undefined)
          for (let other = 1; other < height; other += 0.5)
            expect(works(withOffset(spec, other))).toBe(false);
        else {
          const keepsHalfPin = (changed: DrawerSpec): boolean => {
            const laid = draftDrawer(changed);
            if (!laid.ok) return false;
            const { candidates, resolved } = laid.value.front;
            return candidates.some(
              ({ lowerHalfPin }) => Math.abs(lowerHalfPin - resolved.halfPin.lower) < 1e-6,
            );
          };
          const there = withOffset(spec, moved.value);
          const nearer = withOffset(spec, moved.value + (moved.bound === 'least' ? -0.02 : 0.02));
          expect(works(there)).toBe(true);
          expect((keepsHalfPin(there) ? keepsHalfPin : works)(nearer)).toBe(false);
        }
        if (narrowed === undefined)
          for (let other = 1; other < 20; other += 1) expect(works(withPin(spec, other))).toBe(false);
        else {
          expect(works(withPin(spec, narrowed))).toBe(true);
          expect(works(withPin(spec, narrowed + 0.02))).toBe(false);
        }
        if (slope === undefined)
          for (let other = 2.5; other <= 20; other += 1.25)
            expect(works(withSlope(spec, { run: other }))).toBe(false);
        else {
          expect(works(withSlope(spec, slope))).toBe(true);
          expect(works(withSlope(spec, { run: slope.run - 0.02 }))).toBe(false);
        }
      }),
      { numRuns: 120, endOnFailure: true },
    );
    expect(showing).toBeGreaterThanOrEqual(120);
  });
});
