import { describe, expect, it } from 'vitest';
import { toggleLock } from '../../../src/page/model/edits.ts';
import { followedWords } from '../../../src/page/model/movedWords.ts';
import { quantitiesOf, quantitiesShown, quantity } from '../../../src/page/model/quantities.ts';
import { FIRST_SCOPE } from '../../../src/page/model/scope.ts';
import { selectedCorner, startSession } from '../../../src/page/model/session.ts';
import type { Snapshot } from '../../../src/page/model/snapshot.ts';
import { typeMeasure } from '../../../src/page/model/typeMeasure.ts';
import { complaintWords } from '../../../src/page/text/plainWords.ts';
import { CHEST, cornerIn, FRONT, snapshotOf } from '../chest.ts';

const typed = (now: Snapshot, key: string, value: number) => {
  const corner = cornerIn(now, FRONT);
  const measure = quantity(corner, key);
  if (measure === undefined) throw new Error(`no ${key}`);
  return typeMeasure(now, corner, measure, value, FIRST_SCOPE);
};
const refusal = (now: Snapshot, key: string, value: number): string[] => {
  const made = typed(now, key, value);
  return made.ok ? [] : made.complaints.map((complaint) => complaintWords(complaint, now.project));
};
const listed = (...locks: number[]): Snapshot =>
  [...locks].reduce((now, i) => {
    const made = toggleLock(now, cornerIn(now, FRONT), i);
    if (!made.ok) throw new Error('not locked');
    return made.value;
  }, snapshotOf(CHEST));

describe('typeMeasure', () => {
  it('names the nearest value that works, and the parts that a refused one would make', () => {
    // A list that nothing is locked in: its tails are scaled to the height, here to under the least of a list.
    const now = listed(0, 0);
    const [first = '', ...more] = refusal(now, 'height', 25);
    const nearest = Number(/the nearest that does is ([\d.]+) mm\. With 25 mm:$/u.exec(first)?.[1]);
    expect(first).toMatch(/^"Buttons": opening's height 25 mm does not work, /u);
    expect(typed(now, 'height', nearest).ok).toBe(true);
    expect(typed(now, 'height', nearest - 0.1).ok).toBe(false);
    expect(more.join('\n')).toMatch(
      /^Buttons, tail 1: [\d.]+ mm is out of range; it must be 3 mm to 5000 mm$/mu,
    );
  });

  it('names the list of widths and its locks where even widths would work', () => {
    const even = snapshotOf(CHEST);
    const now = listed(0);
    expect(typed(even, 'grooveOffset', 16.5).ok).toBe(true);
    expect(refusal(now, 'grooveOffset', 16.5).at(-1)).toBe(
      '"Buttons": its widths are listed one by one, and lower half pin is locked at 6 mm; unlock them and press Make even there',
    );
    // What no widths can help is not put down to them.
    expect(refusal(now, 'grooveDepth', 20).join('\n')).not.toContain('listed');
  });
});

describe('a measure', () => {
  it('of a pin that leaves room for one tail can be put right where it was mistyped', () => {
    const now = snapshotOf(`stock: {front: {thickness: 20}, side: {thickness: 11}}
joint: {pin: 5, halfPin: 6}
drawers: [{name: Buttons, opening: {width: 280, height: 110, depth: 420}}]
`);
    const wide = typed(now, 'pin', 80);
    if (!wide.ok) throw new Error('refused');
    const corner = cornerIn(wide.value, FRONT);
    expect(corner.joint.tails).toHaveLength(1);
    expect(quantity(corner, 'pin')?.get(corner)).toBe(80);
    const right = typed(wide.value, 'pin', 8);
    if (!right.ok) throw new Error('refused');
    const again = typed(now, 'pin', 8);
    expect(right.value.text).toBe(again.ok && again.value.text);
  });

  it('says what it takes along', () => {
    const now = snapshotOf(CHEST);
    const made = typed(now, 'grooveOffset', 8);
    if (!made.ok) throw new Error('refused');
    const before = selectedCorner(startSession(now));
    // The groove begins 1 mm above the lowest tail's base, which is 15/7 above its tip: 8 - 1 - 15/7.
    expect(followedWords(before, cornerIn(made.value, FRONT), 'mm')).toBe('lower half pin 6 → 4.86');
    expect(followedWords(before, before, 'mm')).toBe('');
  });

  it('that is listed is shown, but cannot be set', () => {
    const corner = cornerIn(listed(0), FRONT);
    const keys = (of: typeof quantitiesOf): string[] => of(corner).map(({ key }) => key);
    expect(keys(quantitiesOf)).not.toContain('pin');
    expect(keys(quantitiesShown)).toContain('pin');
    expect(quantitiesShown(cornerIn(snapshotOf(CHEST), FRONT))).toEqual(
      quantitiesOf(cornerIn(snapshotOf(CHEST), FRONT)),
    );
  });
});
