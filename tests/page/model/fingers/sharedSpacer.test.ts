import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CornerRef } from '../../../../src/page/model/editedCorner.ts';
import { toggleLock } from '../../../../src/page/model/edits.ts';
import { dragSharedSpacer } from '../../../../src/page/model/fingers/sharedSpacer.ts';
import { handlesOf } from '../../../../src/page/model/handles.ts';
import { changedWords, movedWords } from '../../../../src/page/model/movedWords.ts';
import { drag, drop, grab, startSession, undoable, viewStateOf } from '../../../../src/page/model/session.ts';
import type { Snapshot } from '../../../../src/page/model/snapshot.ts';
import { widthsOf } from '../../../../src/page/model/widths.ts';
import { speak } from '../../../../src/units/phrase.ts';
import { openChest } from '../../../openChest.ts';
import { BACK, cornerIn, FRONT, inInches, snapshotOf } from '../../chest.ts';

/** Six front corners that two spacers serve; a pair pushed together is 14 mm wide. */
const TEXT = openChest('fingers');
const chest = snapshotOf(TEXT);
/** The same in inches, and one with a front of its own thickness, whose joint is deeper. */
const PLANS = {
  mm: chest,
  in: snapshotOf(inInches(TEXT)),
  deeper: snapshotOf(
    TEXT.replace('name: Cloth', 'name: Cloth, stock: {front: {thickness: 21}}').replace(
      'spacers: 2',
      'spacers: 3',
    ),
  ),
};

type End = 'front' | 'back';
const refsOf = (end: End): CornerRef[] => [0, 1, 2, 3, 4, 5].map((index) => ({ of: 'drawer', index, end }));
const pairsOf = (now: Snapshot, ref: CornerRef) => cornerIn(now, ref).fingers?.setting.pairs ?? [];
const spacersOf = (now: Snapshot, end: End): number[][] =>
  refsOf(end).map((ref) => pairsOf(now, ref).map(({ spacer }) => spacer));
const widthsAt = (now: Snapshot, end: End): (readonly number[])[] =>
  refsOf(end).map((ref) => widthsOf(cornerIn(now, ref).joint));

/** Words, and numbers to a thousandth of a mm. */
const near = (lists: readonly (readonly number[])[]): number[][] =>
  lists.map((list) => list.map((each) => Number(each.toFixed(3)) + 0));

const move = (now: Snapshot, ref: CornerRef, i: number, by: number) => {
  const from = pairsOf(now, ref)[i]?.spacer ?? 0;
  return { from, to: from + by, ...dragSharedSpacer(now, cornerIn(now, ref), i, from + by) };
};

describe.each(['mm', 'in', 'deeper'] as const)('a spacer that drawers share, plan "%s"', (name) => {
  const plan = PLANS[name];

  it('gives all its tails one width when it is dragged, and no other tail another', () => {
    fc.assert(
      fc.property(
        fc.nat(5),
        fc.constantFrom<End>('front', 'back'),
        fc.nat(5),
        fc.integer({ min: -12, max: 12 }),
        (index, end, pair, tenths) => {
          const ref: CornerRef = { of: 'drawer', index, end };
          const before = spacersOf(plan, end);
          const i = pair % (before[index]?.length ?? 1);
          const { from, to, snapshot, stop } = move(plan, ref, i, tenths / 10);
          const reached = pairsOf(snapshot, ref)[i]?.spacer ?? 0;
          if (stop.length === 0) expect(reached).toBeCloseTo(to, 3);
          // Spacers that differ by 0.1 mm are one.
          const expected = before.map((list) =>
            list.map((spacer) => (Math.abs(spacer - from) < 0.1 ? reached : spacer)),
          );
          const after = spacersOf(snapshot, end);
          after.forEach((list, drawer) => {
            for (const [place, spacer] of list.entries())
              expect(Math.abs(spacer - (expected[drawer]?.[place] ?? 0))).toBeLessThan(2e-3);
          });
        },
      ),
      { numRuns: 12 },
    );
  });

  it('leaves pins, and the corners at the other end, as they are; half pins give alike what tails take', () => {
    const [pins, backs] = [widthsAt(plan, 'front'), widthsAt(plan, 'back')];
    const { snapshot } = move(plan, { of: 'drawer', index: 2, end: 'front' }, 0, -0.4);
    expect(snapshot).not.toBe(plan);
    expect(near(widthsAt(snapshot, 'back'))).toEqual(near(backs));
    widthsAt(snapshot, 'front').forEach((widths, drawer) => {
      const before = pins[drawer] ?? [];
      const inner = (list: readonly number[]) => list.slice(2, -2).filter((_, i) => i % 2 === 0);
      expect(near([inner(widths)])).toEqual(near([inner(before)]));
      const [lower, upper] = [0, -1].map((at) => (widths.at(at) ?? 0) - (before.at(at) ?? 0));
      expect(lower).toBeCloseTo(upper ?? 0, 2);
    });
  });
});

describe('a spacer that drawers share', () => {
  it('stops where one of its drawers cannot follow, and names it', () => {
    const { snapshot, stop } = move(chest, FRONT, 0, 8);
    expect(stop.map(({ says }) => speak(says, 'mm')).join()).toMatch(
      /^"Notions": front corners: the lower half pin is 0\.\d+ mm/u,
    );
    // Four tails of the widest drawer that it serves share what two half pins of 6.417 mm have above 1 mm.
    const grown = (pairsOf(snapshot, FRONT)[0]?.spacer ?? 0) - (pairsOf(chest, FRONT)[0]?.spacer ?? 0);
    expect(grown).toBeLessThanOrEqual((2 * (6.417 - 1)) / 4 + 1e-3);
    expect(grown).toBeGreaterThan((2 * (6.417 - 1)) / 4 - 0.1);
  });

  it('keeps the groove hidden: where the lower half pin may not grow, the upper one takes all', () => {
    const { snapshot, stop } = move(chest, FRONT, 0, -3);
    expect(stop).toEqual([]);
    // The groove's band from 10 mm up must lie inside the lowest tail's base, 2.11 mm above its tip.
    const most = 10 - 15 * Math.tan((8 * Math.PI) / 180);
    for (const [lower = 0] of widthsAt(snapshot, 'front')) expect(lower).toBeLessThanOrEqual(most + 0.03);
    const ribbon = widthsAt(snapshot, 'front')[2] ?? [];
    expect(ribbon[0]).toBeCloseTo(most, 1);
    expect(ribbon.at(-1)).toBeGreaterThan(most + 3);
  });

  it('stops at a locked tail of another drawer, and names both', () => {
    const lock = toggleLock(chest, cornerIn(chest, { of: 'drawer', index: 3, end: 'front' }), 3);
    if (!lock.ok) throw new Error('not locked');
    // The lock lists one front, and the others go on to share its spacer.
    expect(near(spacersOf(lock.value, 'front'))).toEqual(near(spacersOf(chest, 'front')));
    const { snapshot, stop } = move(lock.value, FRONT, 0, 0.5);
    expect(snapshot).toBe(lock.value);
    expect(stop.map(({ says }) => speak(says, 'mm'))).toEqual(['"Patches": tail 2 is locked at 26.67 mm']);
  });

  it('takes all of it from one half pin where the other is locked', () => {
    const lock = toggleLock(chest, cornerIn(chest, FRONT), 0);
    if (!lock.ok) throw new Error('not locked');
    const before = widthsAt(lock.value, 'front')[0] ?? [];
    const after = widthsAt(move(lock.value, FRONT, 0, 0.5).snapshot, 'front')[0] ?? [];
    expect(after[0]).toBeCloseTo(before[0] ?? 0, 6);
    expect(after.at(-1)).toBeCloseTo((before.at(-1) ?? 0) - 1, 2);
  });

  it('stops where the bar would be too short for one of its drawers', () => {
    // The pairs of Notions lie 4 x (14 + 5.15) + 3 x 16.02 mm from the first edge to the last.
    const short = snapshotOf(TEXT.replace('bush: 16,', 'bush: 16, bar: 130,').replace(/.*Cloth.*\n/u, ''));
    const { snapshot, stop } = move(short, FRONT, 0, 2.5);
    expect(stop.map(({ says }) => speak(says, 'mm')).join()).toMatch(/more than the bar's 130 mm/u);
    const span = 4 * (14 + (pairsOf(snapshot, FRONT)[0]?.spacer ?? 0)) + 3 * 16.017;
    expect(span).toBeLessThanOrEqual(130 + 1e-3);
    expect(span).toBeGreaterThan(130 - 0.5);
  });

  it('is told with its drawers and its change', () => {
    const handle = handlesOf(cornerIn(chest, FRONT)).find(({ id }) => id === 'spacer 0');
    if (handle === undefined) throw new Error('no spacer');
    const moving = drag(grab(startSession(chest), handle), -0.2);
    const shown = viewStateOf(moving);
    const now = handlesOf(shown.corner).find(({ id }) => id === handle.id) ?? handle;
    expect(movedWords(now, handle.value, shown)).toBe(
      'spacer 5 mm (−0.15), all its tails in eight of nine drawers, 26.52 mm wide',
    );
    expect(undoable(drop(moving, true))).toBe('spacer, eight of nine drawers');
    expect(changedWords(now, { ...shown, corner: cornerIn(chest, BACK) })).toMatch(
      /^all its tails at the back in /u,
    );
  });
});
