import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/page/model/adjust.ts';
import {
  makeEven,
  mirrorTails,
  oneFewer,
  oneMore,
  toggleLock,
  typeWidth,
} from '../../../src/page/model/edits.ts';
import { handlesOf } from '../../../src/page/model/handles.ts';
import { quantitiesOf } from '../../../src/page/model/quantities.ts';
import {
  attempt,
  attemptInRun,
  cancel,
  commit,
  drag,
  drop,
  faultIn,
  grab,
  keyTo,
  nudge,
  redo,
  redoable,
  type Session,
  selectCorner,
  selectedCorner,
  settle,
  startSession,
  type,
  undo,
  undoable,
  viewStateOf,
} from '../../../src/page/model/session.ts';
import { widthsOf } from '../../../src/page/model/widths.ts';
import { accept } from '../../../src/units/complaint.ts';
import { BOX, CHEST, snapshotOf } from '../chest.ts';

const chest = startSession(snapshotOf(CHEST));
const box = startSession(snapshotOf(BOX));

const handle = (session: Session, id: string) => {
  const found = handlesOf(selectedCorner(session)).find((each) => each.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
};
const value = (session: Session, id: string): number =>
  handlesOf(viewStateOf(session).corner).find((each) => each.id === id)?.value ?? Number.NaN;

describe('a session', () => {
  it('begins with the first drawer, or with a corner of its own', () => {
    expect(chest.selected).toEqual({ of: 'drawer', index: 0, end: 'front' });
    expect(box.selected).toEqual({ of: 'joint', index: 0 });
  });

  it('makes one step of a drag, however many moves it has', () => {
    let session = grab(box, handle(box, 'line 2'));
    for (const by of [0.3, 0.8, 1.5, 0.17]) session = drag(session, by);
    // 21 1/3 and 0.17 lie nearest to 21.5.
    expect(value(session, 'line 2')).toBeCloseTo(21.5, 9);
    expect(session.history.past).toHaveLength(0);
    session = drop(session, true);
    expect(session.history.past).toHaveLength(1);
    expect(value(undo(session), 'line 2')).toBeCloseTo(64 / 3, 9);
  });

  it('lets everything be as it was where a drag is broken off', () => {
    const session = drop(drag(grab(box, handle(box, 'line 2')), 2), false);
    expect(session).toEqual(box);
  });

  it('keeps at the stop what is dragged beyond it, and comes back with the pointer', () => {
    let session = grab(box, handle(box, 'line 2'));
    for (const by of [-20, -30, -25]) {
      session = drag(session, by);
      expect(value(session, 'line 2')).toBeCloseTo(18.4, 9);
      expect(viewStateOf(session).moving?.stop).toHaveLength(1);
    }
    session = drag(session, -0.8);
    expect(value(session, 'line 2')).toBeCloseTo(20.5, 9);
    expect(viewStateOf(session).moving?.stop).toEqual([]);
  });

  it('moves by a tenth of a millimetre, or by 1/64 inch', () => {
    expect(value(nudge(box, handle(box, 'line 0'), 1), 'line 0')).toBeCloseTo(4.1, 9);
    expect(value(nudge(box, handle(box, 'line 0'), -10), 'line 0')).toBeCloseTo(3, 9);
    const inches = startSession(
      snapshotOf('units: in\njoints: [{name: A, kind: through, width: 3, tailBoard: 1/2, pinBoard: 1/2}]\n'),
    );
    expect(value(nudge(inches, handle(inches, 'line 0'), 1), 'line 0')).toBeCloseTo(
      25.4 * (1 / 4 + 1 / 64),
      9,
    );
  });

  it('says what stops a nudge until something else is done', () => {
    const stopped = nudge(box, handle(box, 'line 0'), -100);
    expect(viewStateOf(stopped).moving).toMatchObject({ handle: 'line 0', stop: [{ at: ['halfPin'] }] });
    expect(viewStateOf(undo(stopped)).moving).toBeUndefined();
    expect(viewStateOf(selectCorner(stopped, box.selected)).moving).toBeUndefined();
  });

  it('makes one step of a run of keys on one handle, until it is settled', () => {
    let session = box;
    for (let i = 0; i < 4; i++) session = nudge(session, handle(session, 'line 2'), 1);
    expect(session.history.past).toHaveLength(1);
    expect(viewStateOf(session).moving).toMatchObject({ handle: 'line 2', stop: [] });
    expect(viewStateOf(session).moving?.from).toBeCloseTo(64 / 3, 9);
    session = settle(session);
    expect(viewStateOf(session).moving).toBeUndefined();
    session = nudge(session, handle(session, 'line 2'), 1);
    expect(session.history.past).toHaveLength(2);
    session = nudge(session, handle(session, 'line 0'), 1);
    expect(session.history.past).toHaveLength(3);
    expect(undo(undo(undo(session))).now.text).toBe(BOX);
  });

  it('puts back where it began what a run of keys has moved, and leaves no step', () => {
    const before = settle(nudge(box, handle(box, 'line 0'), 2));
    const moved = nudge(nudge(before, handle(before, 'line 0'), 3), handle(before, 'line 0'), 5);
    const back = cancel(moved);
    expect(back.now).toBe(before.now);
    expect(back.history).toBe(before.history);
    expect(cancel(before).now).toBe(before.now);
    // A run that comes back by itself leaves none either.
    const once = nudge(settle(before), handle(before, 'line 2'), 1);
    const twice = nudge(once, handle(once, 'line 2'), 1);
    const home = keyTo(twice, handle(twice, 'line 2'), value(before, 'line 2'));
    expect(home.now.text).toBe(before.now.text);
    expect(home.history.past).toHaveLength(before.history.past.length);
  });

  it('moves a handle to its limits', () => {
    const least = keyTo(box, handle(box, 'line 2'), 0);
    expect(value(least, 'line 2')).toBeCloseTo(18.4, 9);
    expect(viewStateOf(least).moving?.stop).toHaveLength(1);
    expect(keyTo(least, handle(least, 'line 2'), 0).history.past).toHaveLength(1);
  });

  it('says what undo takes back and redo brings back', () => {
    const dragged = drop(drag(grab(chest, handle(chest, 'line 2')), 2), true);
    expect(undoable(chest)).toBeUndefined();
    expect(undoable(dragged)).toBe('tail 2 lower edge, Buttons');
    expect(redoable(undo(dragged))).toBe('tail 2 lower edge, Buttons');
    const lap = nudge(dragged, handle(dragged, 'lap'), 3);
    expect(undoable(lap)).toBe('lap, all nine drawers');
    const back = selectCorner(chest, { of: 'drawer', index: 1, end: 'back' });
    expect(undoable(nudge(back, handle(back, 'line 0'), 3))).toBe('tail 1 lower edge, Thread at the back');
    expect(undoable(type(box, BOX.replace('tails: 3', 'tails: 4')))).toBe('the plan as text');
  });

  it('makes one step of what is typed in one go', () => {
    const one = type(box, BOX.replace('tails: 3', 'tails: 4'));
    const two = type(one, BOX.replace('tails: 3', 'tails: 2'));
    expect(undo(two).now.text).toBe(BOX);
    const apart = type(nudge(two, handle(two, 'line 0'), 1), BOX);
    expect(apart.history.past).toHaveLength(3);
  });

  describe('with text that is typed and not valid yet', () => {
    const FOUR = BOX.replace('tails: 3', 'tails: 4');
    const BROKEN = BOX.replace('tails: 3', 'tails: [');
    const broken = type(type(box, FOUR), BROKEN);
    const texts = (session: Session): (string | undefined)[] => [session.now.text, session.draft?.text];

    it('keeps it beside the last valid plan, and knows the line of its first fault', () => {
      expect(texts(broken)).toEqual([FOUR, BROKEN]);
      expect(faultIn(broken.draft ?? { text: '', faults: [], units: 'mm' })).toBe(
        'The plan’s text has a fault in line 9',
      );
      expect(texts(selectCorner(broken, box.selected))).toEqual([FOUR, BROKEN]);
    });

    it('refuses every other edit, and says why', () => {
      const why = [
        { at: [], says: ['The plan’s text has a fault in line 9', ', so nothing else can be changed'] },
      ];
      const refused = attempt(broken, oneMore);
      expect(
        refused.ok
          ? []
          : refused.complaints.map(({ at, says }) => ({ at, says: says.filter((word) => word !== '') })),
      ).toEqual(why);
      const held = drag(grab(broken, handle(broken, 'line 2')), 2);
      expect(viewStateOf(held).moving?.stop).toHaveLength(1);
      expect(texts(drop(held, true))).toEqual([FOUR, BROKEN]);
      const keyed = nudge(broken, handle(broken, 'line 2'), 1);
      expect(viewStateOf(keyed).moving?.stop).toHaveLength(1);
      expect(texts(cancel(keyed))).toEqual([FOUR, BROKEN]);
      expect(keyed.history).toBe(broken.history);
    });

    it('takes it back by one step of undo, and brings it back by redo', () => {
      expect(texts(undo(broken))).toEqual([FOUR, undefined]);
      expect(texts(undo(undo(broken)))).toEqual([BOX, undefined]);
      expect(texts(redo(undo(broken)))).toEqual([FOUR, BROKEN]);
      expect(attempt(undo(broken), oneMore).ok).toBe(true);
    });

    it('takes any number of changes, valid or not, as one step', () => {
      const typed = [BROKEN, `${BROKEN}a`, FOUR, `${FOUR}{`, BROKEN].reduce(type, box);
      expect(texts(typed)).toEqual([FOUR, BROKEN]);
      expect(typed.history.past).toHaveLength(2);
      expect(texts(undo(undo(type(typed, BOX.replace('3', '2')))))).toEqual([BOX, undefined]);
      expect(type(typed, BOX).history.past).toEqual([]);
      // What is brought back is typed on.
      const on = type(type(redo(undo(broken)), `${BROKEN}5`), BOX.replace('3', '2'));
      expect(texts(undo(on))).toEqual([FOUR, undefined]);
    });

    it('keeps it for undo where another plan is opened', () => {
      const other = commit(broken, snapshotOf(CHEST));
      expect(texts(other)).toEqual([CHEST, undefined]);
      expect(texts(undo(other))).toEqual([FOUR, BROKEN]);
      expect(texts(undo(commit(broken, broken.now)))).toEqual([FOUR, BROKEN]);
    });
  });

  it('shows the first corner where the selected one is gone', () => {
    const other = attempt(selectCorner(chest, { of: 'drawer', index: 5, end: 'back' }), () =>
      accept(snapshotOf(BOX)),
    );
    expect(other.ok && selectedCorner(other.value).ref).toEqual({ of: 'joint', index: 0 });
  });

  it('has edits of one run as one step of the history, until another edit comes between', () => {
    const named = (session: Session, name: string, run: string): Session => {
      const made = attemptInRun(
        session,
        ({ text }) => accept(snapshotOf(text.replace(/^name: .*$/mu, `name: ${name}`))),
        'name',
        run,
      );
      if (!made.ok) throw new Error('refused');
      return made.value;
    };
    const one = named(named(chest, 'A', 'x'), 'B', 'x');
    expect(one.now.text).toContain('name: B');
    expect(undo(one).now.text).toBe(CHEST);
    const two = named(one, 'C', 'y');
    expect(undo(two).now.text).toBe(one.now.text);
    // Back where it began it is no step at all.
    const start = /^name: (.*)$/mu.exec(CHEST)?.[1] ?? '';
    expect(undoable(named(one, start, 'x'))).toBeUndefined();
    // After an undo, another run begins.
    expect(undo(named(undo(one), 'D', 'x')).now.text).toBe(CHEST);
  });

  it('is back at the start after 200 edits of any kind are undone, and at the end when they are redone', () => {
    const edit = fc.record({
      kind: fc.constantFrom(
        'drag',
        'nudge',
        'more',
        'fewer',
        'even',
        'mirror',
        'lock',
        'type',
        'adjust',
        'choose',
      ),
      which: fc.nat(),
      by: fc.double({ min: -8, max: 8, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(edit, { minLength: 200, maxLength: 200 }), (edits) => {
        let session = chest;
        for (const { kind, which, by } of edits) {
          const corner = selectedCorner(session);
          const handles = handlesOf(corner);
          const held = handles[which % handles.length];
          const i = which % widthsOf(corner.joint).length;
          const quantities = quantitiesOf(corner);
          const measure = quantities[which % quantities.length];
          const tried = (result: ReturnType<typeof attempt>): Session => (result.ok ? result.value : session);
          if (held === undefined || measure === undefined) continue;
          if (kind === 'drag') session = drop(drag(grab(session, held), by), true);
          else if (kind === 'nudge') session = nudge(session, held, Math.round(by));
          else if (kind === 'choose')
            session = selectCorner(session, {
              of: 'drawer',
              index: which % 6,
              end: by > 4 ? 'back' : 'front',
            });
          else if (kind === 'more') session = tried(attempt(session, oneMore));
          else if (kind === 'fewer') session = tried(attempt(session, oneFewer));
          else if (kind === 'even') session = tried(attempt(session, makeEven));
          else if (kind === 'mirror') session = tried(attempt(session, mirrorTails));
          else if (kind === 'lock') session = tried(attempt(session, (now, at) => toggleLock(now, at, i)));
          else if (kind === 'type')
            session = tried(
              attempt(session, (now, at) => typeWidth(now, at, i, (widthsOf(at.joint)[i] ?? 0) + by / 4)),
            );
          else
            session = tried(
              attempt(session, (now, at) =>
                adjust(now, at, measure, (measure.get(at) ?? 0) + by / 4, session.scope),
              ),
            );
        }
        const end = session.now.text;
        const steps = session.history.past.length;
        expect(steps).toBeGreaterThan(20);
        for (let i = 0; i < steps; i++) session = undo(session);
        expect(session.now.text).toEqual(CHEST);
        for (let i = 0; i < steps; i++) session = redo(session);
        expect(session.now.text).toEqual(end);
      }),
      { numRuns: 1 },
    );
  });
});
