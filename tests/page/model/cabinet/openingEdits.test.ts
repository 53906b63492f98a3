import { describe, expect, it } from 'vitest';
import { openingEdits } from '../../../../src/page/model/cabinet/openingEdits.ts';
import type { Snapshot } from '../../../../src/page/model/snapshot.ts';
import { editPlan } from '../../../../src/page/text/editPlan.ts';
import { EXAMPLE, snapshotOf } from '../../chest.ts';

type Side = 'width' | 'height' | 'depth';

const typed = (text: string, name: string, side: Side, value: number | string): Snapshot | undefined => {
  const now = snapshotOf(text);
  const drawer = now.project.set.drawers.find(({ spec }) => spec.name === name);
  const space = drawer?.spec.space;
  const places = space?.kind === 'opening' ? (space.places ?? []) : [];
  const edits = openingEdits(now, places, side, value);
  return edits && snapshotOf(editPlan(text, edits));
};
const openings = (now: Snapshot | undefined, side: Side) =>
  now?.project.set.drawers.map(({ spec: { space } }) => space.kind === 'opening' && space.opening[side]);

const LEDGER = (heights: string, units = 'mm') => `units: ${units}
stock: {front: {thickness: 20mm}, side: {thickness: 11mm}}
cabinet: # clear inside
  {width: 600mm, height: 418mm, depth: 420mm, rail: 18mm, rows: [[Buttons, Thread], Cloth], heights: ${heights}} # from the top
`;

describe('the opening of a drawer in a cabinet', () => {
  it('is made higher with its row and the cabinet, the other rows staying as they are', () => {
    const now = typed(EXAMPLE, 'Thread', 'height', 80);
    expect(openings(now, 'height')).toEqual([76, 80, 110, 110, 146, 190]);
    expect(now?.text).toContain('height: 782\n');
    expect(now?.text).toContain('heights: [76, 80, 110, 110, 146, 190]');
    expect(now?.text).toContain('Cloth]   # from the top');
  });

  it('takes what it grows by from rows that share what is left', () => {
    const now = typed(LEDGER('[100, auto]'), 'Buttons', 'height', 120);
    expect(openings(now, 'height')).toEqual([120, 120, 280]);
    expect(now?.text).toContain('height: 418mm');
  });

  it('lists the rows that a rule gave before', () => {
    const now = typed(LEDGER('{progression: arithmetic, first: 150}'), 'Buttons', 'height', 160);
    expect(openings(now, 'height')).toEqual([160, 160, 250]);
    expect(now?.text).toContain('heights: [160, 250]} # from the top');
    expect(now?.text).toContain('height: 428');
  });

  it('is made wider with the cabinet where its row is all its own', () => {
    expect(openings(typed(EXAMPLE, 'Buttons', 'width', 300), 'width')).toEqual([
      300, 300, 300, 614, 614, 614,
    ]);
    expect(openings(typed(EXAMPLE, 'Cloth', 'width', 600), 'width')).toEqual([293, 293, 293, 600, 600, 600]);
  });

  it('is made wider beside others, which share what is left', () => {
    // 600 less a divider of 18 and 250 leaves 332.
    const now = typed(LEDGER('equal'), 'Thread', 'width', 250);
    expect(openings(now, 'width')).toEqual([332, 250, 600]);
    expect(now?.text).toContain('[[Buttons, {name: Thread, width: 250}], Cloth]');
  });

  it('is as deep as all others', () => {
    expect(openings(typed(EXAMPLE, 'Ribbon', 'depth', 400), 'depth')).toEqual(Array(6).fill(400));
  });

  it('is written in fractions of an inch in an inch plan', () => {
    // 418 mm less 18 is 200 for each, or 7 7/8 in and what is left: 126 sixteenths and 125.98.
    const now = typed(LEDGER('[8, auto]', 'in'), 'Buttons', 'height', '8 1/4');
    expect(now?.text).toContain('heights: [8 1/4, auto]');
  });

  it('is left to the rows inside a place', () => {
    const inner = LEDGER('equal').replace('Thread]', '{rows: [Thread, Ribbon]}]');
    expect(typed(inner, 'Thread', 'height', 50)).toBe(undefined);
  });
});
