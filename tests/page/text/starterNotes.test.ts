import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/page/model/adjust.ts';
import { duplicate, remove, rename, setCount } from '../../../src/page/model/drawers.ts';
import type { CornerRef, EditedCorner } from '../../../src/page/model/editedCorner.ts';
import { dragLine, oneFewer, oneMore, setTailCount } from '../../../src/page/model/edits.ts';
import { quantity } from '../../../src/page/model/quantities.ts';
import { FIRST_SCOPE, type Scope } from '../../../src/page/model/scope.ts';
import type { Snapshot } from '../../../src/page/model/snapshot.ts';
import { linesOf, widthsOf } from '../../../src/page/model/widths.ts';
import { starterPlan } from '../../../src/plan/starterPlan.ts';
import { accept, type Result } from '../../../src/units/complaint.ts';
import { complaintsOf } from '../../plan/complaintsOf.ts';
import { SINGLE_CORNER, STARTER_NOTES, withNote } from '../../plan/starterNotes.ts';
import { cornerIn, snapshotOf } from '../chest.ts';

const ONE: Scope = { drawers: 'this', ends: 'shown' };
const PENCILS: CornerRef = { of: 'drawer', index: 0, end: 'front' };
const PENCILS_BACK: CornerRef = { of: 'drawer', index: 0, end: 'back' };
const LETTERS: CornerRef = { of: 'drawer', index: 1, end: 'front' };
const CARCASE: CornerRef = { of: 'joint', index: 0 };

type EditOfCorner = (now: Snapshot, corner: EditedCorner) => Result<Snapshot>;

const lineUp: EditOfCorner = (now, corner) =>
  accept(dragLine(now, corner, 1, (linesOf(widthsOf(corner.joint))[1] ?? 0) - 1).snapshot);
const measure =
  (key: string, by: number, scope: Scope): EditOfCorner =>
  (now, corner) => {
    const found = quantity(corner, key);
    if (found === undefined) throw new Error(`no ${key}`);
    return adjust(now, corner, found, (found.get(corner) ?? 0) + by, scope);
  };

const EDITS: readonly (readonly [string, CornerRef, EditOfCorner])[] = [
  ['a line is dragged', PENCILS, lineUp],
  ['a line of a back is dragged', PENCILS_BACK, lineUp],
  ['a line of a single corner is dragged', CARCASE, lineUp],
  ['a tail is added', LETTERS, oneMore],
  ['a tail is taken away', LETTERS, oneFewer],
  ['the set chooses', LETTERS, (now, corner) => setTailCount(now, corner, undefined)],
  ['the lap is changed', PENCILS, measure('lap', 0.5, FIRST_SCOPE)],
  ['the lap of one drawer is changed', PENCILS, measure('lap', 0.5, ONE)],
  ['the groove of one drawer is changed', LETTERS, measure('grooveWidth', 0.5, ONE)],
  ['an opening is changed', LETTERS, measure('height', 10, FIRST_SCOPE)],
  ['the slope of the single corner is changed', CARCASE, measure('slope', 1, FIRST_SCOPE)],
  ['a drawer is renamed', LETTERS, (now, corner) => rename(now, corner, 'Cards')],
  ['a quantity is changed', LETTERS, (now, corner) => setCount(now, corner, 3)],
  ['a drawer is copied', PENCILS, duplicate],
  ['the last drawer is copied', LETTERS, duplicate],
  ['a drawer is removed', PENCILS, remove],
  ['the single corner is removed', CARCASE, remove],
];

describe.each(['mm', 'in'] as const)('the notes of the starter plan in %s', (unit) => {
  it.each(EDITS)('work where the # is taken away after %s', (_, ref, edit) => {
    const begun = ref === CARCASE ? withNote(starterPlan(unit), SINGLE_CORNER) : starterPlan(unit);
    const start = snapshotOf(begun);
    const made = edit(start, cornerIn(start, ref));
    if (!made.ok) throw new Error('refused');
    const { text } = made.value;
    expect(text).not.toBe(begun);
    for (const note of STARTER_NOTES.filter((each) => each.test(begun))) {
      expect(text).toMatch(note);
      expect(complaintsOf(withNote(text, note))).toEqual([]);
    }
  });
});
