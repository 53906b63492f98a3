import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cornersOf } from '../../../src/page/model/editedCorner.ts';
import { handlesOf } from '../../../src/page/model/handles.ts';
import type { Scope } from '../../../src/page/model/scope.ts';
import {
  drag,
  drop,
  grab,
  rest,
  type Session,
  selectCorner,
  selectedCorner,
  startSession,
  viewStateOf,
} from '../../../src/page/model/session.ts';
import { widthsOf } from '../../../src/page/model/widths.ts';
import { openChest } from '../../openChest.ts';
import { BOX, CHEST, snapshotOf } from '../chest.ts';

/** By hand, along a guide of fingers, in inches, and with widths that are listed and locked. */
const PLANS = [
  CHEST,
  openChest('fingers'),
  BOX,
  'units: in\njoints: [{name: A, kind: lapped, width: 3, tailBoard: 1/2, pinBoard: 3/4}]\n',
  CHEST.replace(
    /(name: Buttons.*)\}/u,
    '$1, joint: {tails: [18, 19, 16], pins: [5, 5], halfPin: 6, locked: [tail 2]}}',
  ),
].map((text) => startSession(snapshotOf(text)));

/** A corner of some plan, one of its handles, and where a hand moves it: mm, and whether it rests there. */
const anyDrag = fc.record({
  plan: fc.nat(),
  corner: fc.nat(),
  handle: fc.nat(),
  scope: fc.record<Scope>({
    drawers: fc.constantFrom('all', 'this'),
    ends: fc.constantFrom('shown', 'both'),
  }),
  moves: fc.array(
    fc.record({ by: fc.integer({ min: -300, max: 300 }).map((tenths) => tenths / 10), rests: fc.boolean() }),
    { minLength: 1, maxLength: 5 },
  ),
});

const pick = <T>(all: readonly T[], i: number): T => {
  const found = all[i % all.length];
  if (found === undefined) throw new Error('none to pick');
  return found;
};

type Drag = typeof anyDrag extends fc.Arbitrary<infer T> ? T : never;

const grabbed = ({ plan, corner, handle, scope }: Drag): Session => {
  const session = pick(PLANS, plan);
  const selected = { ...selectCorner(session, pick(cornersOf(session.now.project), corner)), scope };
  return grab(selected, pick(handlesOf(selectedCorner(selected)), handle));
};

/** All that is drawn of a corner, in mm, but for the last digits of calculation. */
const drawn = (session: Session): string => {
  const { joint, groove } = viewStateOf(session).corner;
  const lengths = [...widthsOf(joint), joint.width, joint.depth, joint.pinBoard.lap, groove?.offset ?? 0];
  return lengths.map((length) => (length + 1e-6).toFixed(3)).join(', ');
};

describe('a drag', () => {
  it('ends as one move to the same place does, however it came there, and as its text says', () => {
    fc.assert(
      fc.property(anyDrag, (gesture) => {
        const start = grabbed(gesture);
        let session = start;
        for (const { by, rests } of gesture.moves) {
          session = drag(session, by);
          if (rests) session = rest(session);
        }
        const dropped = drop(session, true);
        const atOnce = drop(drag(start, gesture.moves.at(-1)?.by ?? 0), true);
        expect(dropped.now.text).toBe(atOnce.now.text);
        expect(dropped.now.project).toEqual(snapshotOf(dropped.now.text).project);
        expect(dropped.history.past.length).toBe(dropped.now.text === start.now.text ? 0 : 1);
        // Nothing jumps when the hand lets go.
        expect(drawn(dropped)).toEqual(drawn(session));
      }),
      { numRuns: 60 },
    );
  });

  it('leaves the plan as it is until the hand is still, and lays out the same from its values as from its text', () => {
    fc.assert(
      fc.property(anyDrag, (gesture) => {
        const start = grabbed(gesture);
        const moved = drag(start, gesture.moves[0]?.by ?? 0);
        expect(moved.now).toBe(start.now);
        const { now } = viewStateOf(rest(moved));
        expect(now.project).toEqual(snapshotOf(now.text).project);
      }),
      { numRuns: 60 },
    );
  });
});
