import { describe, expect, it } from 'vitest';
import { adjust, dragQuantity } from '../../../src/page/model/adjust.ts';
import type { CornerRef } from '../../../src/page/model/editedCorner.ts';
import { dragLine, toggleLock } from '../../../src/page/model/edits.ts';
import { quantitiesOf, quantity } from '../../../src/page/model/quantities.ts';
import { FIRST_SCOPE, type Scope } from '../../../src/page/model/scope.ts';
import type { Snapshot } from '../../../src/page/model/snapshot.ts';
import { total, widthsOf } from '../../../src/page/model/widths.ts';
import type { Result } from '../../../src/units/complaint.ts';
import { speak } from '../../../src/units/phrase.ts';
import { BACK, BOX, CHEST, cornerIn, FRONT, LONE, snapshotOf } from '../chest.ts';

const chest = snapshotOf(CHEST);
const named = (now: Snapshot, key: string, ref: CornerRef = FRONT) => {
  const found = quantity(cornerIn(now, ref), key);
  if (found === undefined) throw new Error(`no ${key}`);
  return found;
};
const change = (
  now: Snapshot,
  key: string,
  value: number,
  scope: Scope = FIRST_SCOPE,
  ref: CornerRef = FRONT,
) => adjust(now, cornerIn(now, ref), named(now, key, ref), value, scope);
const ONE: Scope = { drawers: 'this', ends: 'shown' };
const made = (result: Result<Snapshot>): Snapshot => {
  if (!result.ok) throw new Error(result.complaints.map(({ says }) => speak(says, 'mm')).join('; '));
  return result.value;
};

describe('adjust', () => {
  it('changes a shared measure for every drawer, or for one', () => {
    const all = made(change(chest, 'lap', 4));
    expect(all.text).toContain('joint:  {slope: "1:7", pin: 5, halfPin: 6, lap: 4}');
    expect(all.project.set.drawers.map(({ front }) => front.pinBoard.lap)).toEqual([4, 4, 4, 4, 4, 4]);
    const one = made(change(chest, 'lap', 4, ONE));
    expect(one.project.set.drawers.map(({ front }) => front.pinBoard.lap)).toEqual([4, 5, 5, 5, 5, 5]);
  });

  it('changes a measure for all where all are meant, also for a drawer that has its own', () => {
    const one = made(change(chest, 'lap', 4, ONE));
    const again = made(change(one, 'lap', 3.5));
    expect(again.project.set.drawers.map(({ front }) => front.pinBoard.lap)).toEqual(Array(6).fill(3.5));
    expect(again.text).toBe(made(change(chest, 'lap', 3.5)).text);
  });

  it('gives an opening only to its own drawer', () => {
    const wider = made(change(chest, 'width', 300));
    expect(wider.project.set.drawers.map(({ sizes }) => sizes.width)).toEqual([299, 279, 279, 573, 573, 573]);
  });

  it('writes a slope as a ratio', () => {
    expect(made(change(chest, 'slope', 6)).text).toContain('slope: "1:6"');
  });

  it('writes into a back corner what the back has for itself', () => {
    const text = CHEST.replace('back:   {drop: 4}', 'back: {drop: 4, joint: {slope: "1:6"}}');
    const now = snapshotOf(text);
    const steeper = made(change(now, 'slope', 5, FIRST_SCOPE, BACK));
    expect(steeper.text).toContain('back: {drop: 4, joint: {slope: "1:5"}}');
    expect(steeper.text).toContain('joint:  {slope: "1:7"');
  });

  it('changes a corner that belongs to no drawer', () => {
    const box = snapshotOf(BOX);
    expect(made(change(box, 'jointWidth', 80, FIRST_SCOPE, LONE)).text).toContain('width: 80');
    expect(made(change(box, 'pinBoard', 12, FIRST_SCOPE, LONE)).project.joints[0]?.joint.depth).toBe(12);
  });

  it('lets listed tails fill a board that has become higher, all but the locked ones', () => {
    const { snapshot } = dragLine(chest, cornerIn(chest, FRONT), 2, 30);
    const locked = made(toggleLock(snapshot, cornerIn(snapshot, FRONT), 3));
    const before = widthsOf(cornerIn(locked, FRONT).joint);
    const higher = made(change(locked, 'height', 86));
    const after = widthsOf(cornerIn(higher, FRONT).joint);
    expect(total(after)).toBeCloseTo(85, 9);
    expect(after[3]).toBeCloseTo(before[3] ?? 0, 9);
    expect(after[0]).toBeCloseTo(6, 2);
    expect((after[1] ?? 0) / (after[5] ?? 1)).toBeCloseTo((before[1] ?? 0) / (before[5] ?? 1), 2);
  });

  it('lets listed tails of a back fill it when the groove moves', () => {
    const { snapshot } = dragLine(chest, cornerIn(chest, BACK), 0, 7);
    const raised = made(change(snapshot, 'grooveOffset', 12, ONE));
    expect(total(widthsOf(cornerIn(raised, BACK).joint))).toBeCloseTo(75 - 4 - 17, 9);
  });

  it('refuses what cannot be made, in the words of the plan', () => {
    const result = change(chest, 'lap', 19);
    expect(result.ok ? [] : result.complaints.map(({ says }) => speak(says, 'mm'))[0]).toMatch(
      /the lap is 19 mm; it must be 1 mm to 17 mm/u,
    );
  });
});

describe('dragQuantity', () => {
  const drag = (key: string, to: number, scope: Scope = FIRST_SCOPE) =>
    dragQuantity(chest, cornerIn(chest, FRONT), named(chest, key), to, scope);

  it('moves the lap, and with it the depth of the tails: their length is the front less the lap', () => {
    const { snapshot, stop } = drag('lap', 6.2);
    expect(stop).toEqual([]);
    const { joint } = cornerIn(snapshot, FRONT);
    expect(joint.pinBoard.lap).toBe(6.2);
    expect(joint.depth).toBeCloseTo(20 - 6.2, 9);
  });

  it('goes as far as can be made and says what stops it', () => {
    const { snapshot, stop } = drag('lap', 0.2);
    expect(cornerIn(snapshot, FRONT).joint.pinBoard.lap).toBe(1);
    expect(stop.map(({ says }) => speak(says, 'mm'))[0]).toMatch(/0\.9 mm.*must be 1 mm to/u);
  });

  it('keeps the groove inside the lowest tail', () => {
    const { snapshot, stop } = drag('grooveOffset', 4);
    const { joint, groove } = cornerIn(snapshot, FRONT);
    expect(stop).not.toEqual([]);
    expect((groove?.offset ?? 0) - 1).toBeGreaterThanOrEqual((joint.tails[0]?.base[0] ?? 0) - 1e-9);
  });
});

describe('quantitiesOf', () => {
  it('has what belongs to a drawer that is sized to its opening', () => {
    expect(quantitiesOf(cornerIn(chest, FRONT)).map(({ key }) => key)).toEqual([
      'width',
      'height',
      'depth',
      'slope',
      'pin',
      'lap',
      'grooveOffset',
      'grooveWidth',
      'grooveDepth',
      'front',
      'side',
    ]);
  });

  it('has at the back what the back has, and not what the front alone has', () => {
    expect(quantitiesOf(cornerIn(chest, BACK)).map(({ key }) => key)).toEqual([
      'width',
      'height',
      'depth',
      'slope',
      'pin',
      'grooveOffset',
      'grooveWidth',
      'grooveDepth',
      'side',
      'back',
    ]);
  });

  it('has a size in place of an opening, no pin where pins are listed, no lap in a through joint', () => {
    const now = snapshotOf(`stock: {front: {thickness: 19}, side: {thickness: 11}}
drawers:
  - {name: A, size: {width: 300, height: 76, depth: 400}, joint: {kind: through, tails: [18, 18, 18], halfPin: 6, pins: [5, 5]}}
`);
    const keys = quantitiesOf(cornerIn(now, FRONT)).map(({ key }) => key);
    expect(keys).toContain('sizeHeight');
    expect(keys).not.toContain('height');
    expect(keys).not.toContain('pin');
    expect(keys).not.toContain('lap');
  });

  it('has the value in the plan of every measure', () => {
    const values = Object.fromEntries(
      quantitiesOf(cornerIn(chest, FRONT)).map(({ key, get }) => [key, get(cornerIn(chest, FRONT))]),
    );
    expect(values).toMatchObject({
      width: 280,
      height: 76,
      slope: 7,
      pin: 5,
      lap: 5,
      grooveOffset: 11,
      front: 20,
    });
  });
});
