import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CornerRef } from '../../../src/page/model/editedCorner.ts';
import { dragSpacer, toggleLock } from '../../../src/page/model/edits.ts';
import { handlesOf } from '../../../src/page/model/handles.ts';
import { movedWords } from '../../../src/page/model/movedWords.ts';
import {
  drag,
  drop,
  grab,
  startSession,
  undo,
  undoable,
  viewStateOf,
} from '../../../src/page/model/session.ts';
import type { Snapshot } from '../../../src/page/model/snapshot.ts';
import { widthsOf } from '../../../src/page/model/widths.ts';
import { speak } from '../../../src/units/phrase.ts';
import { openChest } from '../../openChest.ts';
import { BACK, cornerIn, FRONT, snapshotOf } from '../chest.ts';

/** Cutter 12.7 at 8 degrees in a bush of 16; a pair pushed together is 14 wide. */
const [TOGETHER, BUSH, CUTTER] = [14, 16, 12.7];
const LEAN = Math.tan((8 * Math.PI) / 180);
const guided = snapshotOf(
  openChest('guided').replace('joint:  {pin', `fingers: {together: ${TOGETHER}}\njoint:  {pin`),
);
const PATCHES: CornerRef = { of: 'drawer', index: 3, end: 'front' };

const cornerOf = (now: Snapshot, ref: CornerRef) => cornerIn(now, ref);
const pairs = (now: Snapshot, ref: CornerRef) => cornerOf(now, ref).fingers?.setting.pairs ?? [];
const spacers = (now: Snapshot, ref: CornerRef) => pairs(now, ref).map(({ spacer }) => spacer);
/** The tail that a spacer makes, from the geometry of cutter and bush. */
const tailFor = (spacer: number, depth: number): number =>
  spacer + TOGETHER + 2 * depth * LEAN - CUTTER + BUSH;

describe('dragSpacer', () => {
  it('makes its tail what the spacer gives, at any corner, and fills the board', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5 }),
        fc.constantFrom('front' as const, 'back' as const),
        fc.integer({ min: 0, max: 6 }),
        fc.integer({ min: -30, max: 30 }),
        (index, end, which, tenths) => {
          const ref: CornerRef = { of: 'drawer', index, end };
          const before = spacers(guided, ref);
          const i = which % before.length;
          const { snapshot, stop } = dragSpacer(
            guided,
            cornerOf(guided, ref),
            i,
            (before[i] ?? 0) + tenths / 10,
          );
          const { joint } = cornerOf(snapshot, ref);
          const widths = widthsOf(joint);
          const now = spacers(snapshot, ref)[i] ?? 0;
          if (stop.length === 0) expect(now).toBeCloseTo((before[i] ?? 0) + tenths / 10, 3);
          if (now > 0) expect(widths[2 * i + 1]).toBeCloseTo(tailFor(now, joint.depth), 6);
          expect(widths.reduce((sum, width) => sum + width, 0)).toBeCloseTo(joint.width, 6);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('keeps pins and gaps; the next tail gives what it takes', () => {
    const before = pairs(guided, PATCHES);
    const was = widthsOf(cornerOf(guided, PATCHES).joint);
    const { snapshot } = dragSpacer(guided, cornerOf(guided, PATCHES), 0, (before[0]?.spacer ?? 0) + 1);
    const now = widthsOf(cornerOf(snapshot, PATCHES).joint);
    expect(now[2]).toBeCloseTo(was[2] ?? 0, 1);
    expect((now[1] ?? 0) + (now[3] ?? 0)).toBeCloseTo((was[1] ?? 0) + (was[3] ?? 0), 1);
    expect(now.slice(4).map((width, i) => Math.abs(width - (was[i + 4] ?? 0)) < 0.02)).not.toContain(false);
  });

  it('stops at no spacer, and says that the tail would be narrower than its fingers', () => {
    const { snapshot, stop } = dragSpacer(guided, cornerOf(guided, FRONT), 0, -5);
    expect(spacers(snapshot, FRONT)[0]).toBeLessThan(0.1);
    expect(stop.map(({ says }) => speak(says, 'mm')).join()).toMatch(/finger/u);
  });

  it('leaves a locked tail as it is, and says so', () => {
    const lock = toggleLock(guided, cornerOf(guided, FRONT), 1);
    if (!lock.ok) throw new Error('not locked');
    const { snapshot, stop } = dragSpacer(lock.value, cornerOf(lock.value, FRONT), 0, 20);
    expect(snapshot).toBe(lock.value);
    expect(stop.map(({ says }) => speak(says, 'mm')).join()).toMatch(/^tail 1 is locked at /u);
  });

  it('leaves the other corners of its drawer as they are', () => {
    const { snapshot } = dragSpacer(
      guided,
      cornerOf(guided, FRONT),
      0,
      (spacers(guided, FRONT)[0] ?? 0) + 0.5,
    );
    expect(widthsOf(cornerOf(snapshot, BACK).joint)).toEqual(widthsOf(cornerOf(guided, BACK).joint));
  });
});

describe('a spacer that is dragged', () => {
  const last = spacers(guided, FRONT).length - 1;
  const handle = handlesOf(cornerOf(guided, FRONT)).find(({ id }) => id === `spacer ${last}`);
  if (handle === undefined) throw new Error('no spacer');

  it('is told with its change and its tail', () => {
    const moving = drag(grab(startSession(guided), handle), -0.3);
    const shown = viewStateOf(moving);
    const now = handlesOf(shown.corner).find(({ id }) => id === handle.id);
    expect(movedWords(now ?? handle, handle.value, shown)).toMatch(
      new RegExp(
        `^spacer [\\d.]+ mm \\(.0?\\.?\\d+\\), tail ${last + 1} of these two drawers, [\\d.]+ mm wide$`,
        'u',
      ),
    );
  });

  it('is one step of undo', () => {
    const moved = drop(drag(drag(grab(startSession(guided), handle), -0.2), -0.4), true);
    expect(undoable(moved)).toBe(`spacer of tail ${last + 1}, Buttons`);
    expect(undo(moved).now.text).toBe(guided.text);
  });
});

it('a plan without fingers has no spacers', () => {
  const plain = snapshotOf(openChest('guided'));
  expect(handlesOf(cornerOf(plain, FRONT)).filter(({ id }) => id.startsWith('spacer'))).toEqual([]);
});
