import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adjust, dragQuantity } from '../../../src/page/model/adjust.ts';
import { duplicate, rename, setCount } from '../../../src/page/model/drawers.ts';
import type { CornerRef } from '../../../src/page/model/editedCorner.ts';
import {
  dragLine,
  makeEven,
  mirrorTails,
  oneFewer,
  oneMore,
  setTailCount,
  toggleLock,
  typeWidth,
} from '../../../src/page/model/edits.ts';
import { quantity } from '../../../src/page/model/quantities.ts';
import { FIRST_SCOPE, type Scope } from '../../../src/page/model/scope.ts';
import type { Snapshot } from '../../../src/page/model/snapshot.ts';
import { linesOf, widthsOf } from '../../../src/page/model/widths.ts';
import { accept, type Result, sentence } from '../../../src/units/complaint.ts';
import { speak } from '../../../src/units/phrase.ts';
import { BACK, BOX, CHEST, cornerIn, FRONT, LONE, snapshotOf } from '../chest.ts';

const box = snapshotOf(BOX);
const chest = snapshotOf(CHEST);
const lone = (now: Snapshot) => cornerIn(now, LONE);
const widths = (now: Snapshot, ref: CornerRef = LONE) => [...widthsOf(cornerIn(now, ref).joint)];
const made = (result: Result<Snapshot>): Snapshot => {
  if (!result.ok) throw new Error(result.complaints.map(({ says }) => speak(says, 'mm')).join('; '));
  return result.value;
};
const first = (stop: Extract<Result<never>, { ok: false }>['complaints']): string =>
  stop.map(({ says }) => speak(says, 'mm'))[0] ?? '';

describe('dragLine', () => {
  it('lists the tails in the plan, the line where it was put and all others where they were', () => {
    const { snapshot, stop } = dragLine(box, lone(box), 2, 21.5);
    expect(stop).toEqual([]);
    expect(linesOf(widths(snapshot))).toEqual([4, 17.33, 21.5, 34.67, 38.67, 52]);
    expect(snapshot.text).toBe(`${BOX.replace('tails: 3', 'tails: [13.33, 13.17, 13.33]')}    pins: [4.17, 4]
    halfPin: [4, 4]
`);
  });

  it('puts a half pin of a drawer where it was dragged to, at the front of that drawer only', () => {
    const { snapshot } = dragLine(chest, cornerIn(chest, FRONT), 5, 68);
    expect(widths(snapshot, FRONT).at(-1)).toBeCloseTo(7, 9);
    expect(snapshot.text).toContain(
      '- {name: Buttons, count: 2, opening: {width: 280, height: 76, depth: 420}, joint: {tails: [17.67, 17.66, 16.67], pins: [5, 5], halfPin: [6, 7]}, back: {joint: {halfPin: 6}}}',
    );
    expect(snapshot.text).toContain(
      '- {name: Thread, count: 2, opening: {width: 280, height: 76, depth: 420}}',
    );
  });

  it('lists the tails of a back corner under the back', () => {
    const { snapshot } = dragLine(chest, cornerIn(chest, BACK), 0, 7);
    expect(snapshot.text).toMatch(/name: Buttons.*back: \{joint: \{tails: \[/u);
    expect(cornerIn(snapshot, BACK).joint.tails[0]?.tip[0]).toBeCloseTo(7, 9);
  });

  it('stops where a pin would be narrower than can be cut, and says so', () => {
    // Tail 1 ends at 17 1/3; a pin takes at least 1 mm: the last tenth before 18 1/3 is 18.4.
    const { snapshot, stop } = dragLine(box, lone(box), 2, 10);
    expect(linesOf(widths(snapshot))[2]).toBeCloseTo(18.4, 9);
    expect(first(stop)).toBe('pin 1 is 0.97 mm; it must be 1 mm to 5000 mm');
  });

  it('stops where a base would be narrower than can be cut', () => {
    // Slope 1:8 and depth 10 take 1.25 a side: with a base of 3 the tip is 5.5, so tail 2, which ends at 34 2/3, begins at 29.1.
    const { snapshot, stop } = dragLine(box, lone(box), 2, 40);
    expect(linesOf(widths(snapshot))[2]).toBeCloseTo(29.1, 9);
    expect(first(stop)).toMatch(/^tail 2 is 5\.47 mm wide; it must be 5\.5 mm to /u);
  });

  it('stops where the groove would show, and says so', () => {
    // The groove needs the lowest base from 10 to 17; slope 1:7 and depth 15 take 2.143 a side, so its tip begins at 7.8 at most.
    const { snapshot, stop } = dragLine(chest, cornerIn(chest, FRONT), 0, 12);
    expect(cornerIn(snapshot, FRONT).joint.tails[0]?.tip[0]).toBeCloseTo(7.8, 9);
    expect(first(stop)).toMatch(/^the groove, 11 mm to 16 mm up, would show at the front/u);
  });

  it('changes nothing where it is not moved', () => {
    expect(dragLine(box, lone(box), 0, 4).snapshot).toBe(box);
  });
});

describe('locks', () => {
  /** A third of the 40 mm that the pins leave, in as many digits as keep three of them equal and together 40. */
  const THIRD = '13.333333333333';

  it('let a locked tail move as a whole', () => {
    const locked = made(toggleLock(box, lone(box), 3));
    const before = widths(locked)[3];
    const { snapshot } = dragLine(locked, lone(locked), 2, 22);
    expect(widths(snapshot)[3]).toBeCloseTo(before ?? 0, 2);
    expect(linesOf(widths(snapshot))[3]).toBeCloseTo(22 + (before ?? 0), 2);
  });

  it('are in the plan by the names that the page shows, beside the widths, and go by a second toggle', () => {
    const one = made(toggleLock(box, lone(box), 3));
    expect(one.text).toBe(
      `${BOX.replace('tails: 3', `tails: [${THIRD}, ${THIRD}, ${THIRD}]`)}    pins: [4, 4]
    halfPin: [4, 4]
    locked: [tail 2]
`,
    );
    const two = made(toggleLock(one, lone(one), 0));
    expect(two.text).toBe(one.text.replace('[tail 2]', '[lower half pin, tail 2]'));
    const unlocked = made(toggleLock(made(toggleLock(two, lone(two), 0)), lone(one), 3));
    expect(unlocked.text).toBe(one.text.replace('    locked: [tail 2]\n', ''));
  });

  it('keep every digit that a plan gives of a width', () => {
    const text = BOX.replace(
      'tails: 3',
      'tails: [13.3333, 13.3334, "13.3333"] # odd\n    pins: [4.0, 4]\n    halfPin: 4',
    );
    const now = snapshotOf(text);
    const locked = made(toggleLock(now, lone(now), 3));
    expect(locked.text).toBe(`${text}    locked: [tail 2]\n`);
    const { snapshot } = dragLine(locked, lone(locked), 0, 5);
    expect(snapshot.text).toContain('tails: [12.3333, 13.3334, "13.3333"] # odd');
    expect(snapshot.text).toContain('pins: [4.0, 4]');
  });

  it('refuse what would change them, by their names', () => {
    const locked = made(toggleLock(box, lone(box), 3));
    const all = [1, 5].reduce((now, i) => made(toggleLock(now, lone(now), i)), locked);
    const corner = lone(locked);
    const says = (result: Result<Snapshot>): string =>
      result.ok ? '' : result.complaints.map((complaint) => sentence(complaint, 'mm')).join(' / ');
    const tailTwo = 'tail 2 is locked at 13.33 mm; try unlocking it';
    expect(says(typeWidth(locked, corner, 3, 15))).toBe(tailTwo);
    expect(says(oneFewer(locked, corner, 3))).toBe(tailTwo);
    expect(says(setTailCount(locked, corner, undefined))).toBe(tailTwo);
    expect(says(setTailCount(locked, corner, 4))).toBe(tailTwo);
    expect(says(oneMore(all, lone(all)))).toContain(tailTwo);
    const width = quantity(corner, 'jointWidth');
    if (width === undefined) throw new Error('no width');
    expect(says(adjust(all, lone(all), width, 70, FIRST_SCOPE))).toContain(`"Corner": ${tailTwo}`);
    expect(says(adjust(locked, corner, width, 34, FIRST_SCOPE))).toContain(`"Corner": ${tailTwo}`);
  });

  it('are what is said first where a hand is stopped by them, and only then', () => {
    // Pin 1 gives up 3 of its 4 mm, as tail 1 is locked; unlocked, that would give way down to 5.5 mm.
    const one = made(toggleLock(box, lone(box), 1));
    const { snapshot, stop } = dragLine(one, lone(one), 0, 10);
    expect(linesOf(widths(snapshot))[0]).toBeCloseTo(7, 1);
    expect(first(stop)).toBe('tail 1 is locked at 13.33 mm');
    expect(stop.map(({ says }) => speak(says, 'mm'))[1]).toMatch(/^pin 1 is /u);
    // Of two locks, the one that is in the way.
    const two = made(toggleLock(one, lone(one), 5));
    const stops = dragLine(two, lone(two), 0, 10).stop.map(({ says }) => speak(says, 'mm'));
    expect(stops.filter((says) => says.includes('locked'))).toEqual(['tail 1 is locked at 13.33 mm']);
    // Without the lock the half pin would not go there either.
    expect(first(dragLine(two, lone(two), 0, -10).stop)).toMatch(/^the lower half pin is /u);
    const width = quantity(lone(two), 'jointWidth');
    if (width === undefined) throw new Error('no width');
    const narrow = dragQuantity(two, lone(two), width, 20, FIRST_SCOPE);
    expect(first(narrow.stop)).toBe('"Corner": tail 1 is locked at 13.33 mm');
  });

  it('hold in inches too, where a board becomes wider by less than lists may miss it by', () => {
    const now = snapshotOf(
      'units: in\njoints: [{name: A, kind: through, width: 3, tailBoard: 1/2, pinBoard: 1/2, tails: 3}]\n',
    );
    const locked = made(toggleLock(now, lone(now), 3));
    const width = quantity(lone(locked), 'jointWidth');
    if (width === undefined) throw new Error('no width');
    const wider = made(adjust(locked, lone(locked), width, 3.02 * 25.4, FIRST_SCOPE));
    expect(widths(wider)[3]).toBeCloseTo(widths(locked)[3] ?? 0, 4);
    expect(widths(wider)[1]).toBeCloseTo((widths(locked)[1] ?? 0) + 0.01 * 25.4, 2);
  });

  it('hold through every edit, or it is refused', () => {
    const quantities = ['jointWidth', 'tailBoard', 'slope', 'height', 'lap', 'grooveOffset', 'side', 'width'];
    const edit = fc.record({
      kind: fc.constantFrom(
        'drag',
        'more',
        'fewer',
        'even',
        'type',
        'adjust',
        'name',
        'count',
        'copy',
        'choose',
      ),
      which: fc.nat(),
      by: fc.double({ min: -6, max: 6, noNaN: true }),
      scope: fc.record<Scope>({
        drawers: fc.constantFrom('all', 'this'),
        ends: fc.constantFrom('shown', 'both'),
      }),
    });
    const start = fc.tuple(
      fc.constantFrom(FRONT, BACK, LONE),
      fc.uniqueArray(fc.nat(6), { minLength: 1, maxLength: 3 }),
    );
    fc.assert(
      fc.property(start, fc.array(edit, { minLength: 1, maxLength: 6 }), ([ref, locks], edits) => {
        let now = ref === LONE ? box : chest;
        const corner = () => cornerIn(now, ref);
        for (const i of locks) if (i < widths(now, ref).length) now = made(toggleLock(now, corner(), i));
        const held = () => {
          const all = widths(now, ref);
          return [...corner().locked].map((i) => all[i]?.toFixed(6)).sort();
        };
        const before = held();
        for (const { kind, which, by, scope } of edits) {
          const all = widths(now, ref);
          const i = which % all.length;
          const key = quantities[which % quantities.length] ?? '';
          const measure = quantity(corner(), key);
          const result: Result<Snapshot> =
            kind === 'drag'
              ? accept(dragLine(now, corner(), i, (linesOf(all)[i] ?? 0) + by).snapshot)
              : kind === 'more'
                ? oneMore(now, corner())
                : kind === 'fewer'
                  ? oneFewer(now, corner(), i % 2 === 1 ? i : undefined)
                  : kind === 'even'
                    ? makeEven(now, corner())
                    : kind === 'type'
                      ? typeWidth(now, corner(), i, (all[i] ?? 0) + by)
                      : kind === 'name'
                        ? rename(now, corner(), `New ${which}`)
                        : kind === 'count'
                          ? setCount(now, corner(), 1 + (which % 5))
                          : kind === 'copy'
                            ? duplicate(now, corner())
                            : kind === 'choose'
                              ? setTailCount(now, corner(), undefined)
                              : measure === undefined
                                ? accept(now)
                                : adjust(now, corner(), measure, (measure.get(corner()) ?? 0) + by, scope);
          if (result.ok) now = result.value;
          expect(held()).toEqual(before);
        }
        const turned = mirrorTails(now, corner());
        if (turned.ok) now = turned.value;
        expect(held()).toEqual(before);
      }),
      { numRuns: 60 },
    );
  });
});

describe('typeWidth', () => {
  it('gives a tail its width, and the pin above it makes room', () => {
    const now = made(typeWidth(box, lone(box), 1, 15));
    expect(widths(now).slice(0, 3)).toEqual([4, 15, expect.closeTo(2.33, 2)]);
  });

  it('refuses what cannot be cut, in the words of the joint', () => {
    const result = typeWidth(box, lone(box), 1, 4);
    expect(result.ok ? '' : first(result.complaints)).toMatch(/^tail 1 is 4 mm wide/u);
  });
});

describe('typeWidth beside locks', () => {
  it('names them where they are what is in the way', () => {
    const locked = [1, 3].reduce((now, i) => made(toggleLock(now, lone(now), i)), box);
    const refused = typeWidth(locked, lone(locked), 2, 8);
    expect(refused.ok ? [] : refused.complaints.map(({ says }) => speak(says, 'mm'))).toEqual([
      expect.stringContaining('pin 2 is '),
      expect.stringContaining('tail 1 is locked at '),
      expect.stringContaining('tail 2 is locked at '),
    ]);
  });
});

describe('the number of tails', () => {
  it('goes up and down in the plan while they are even', () => {
    const four = made(oneMore(box, lone(box)));
    expect(four.text).toContain('tails: 4');
    expect(made(oneFewer(four, lone(four))).text).toBe(box.text);
  });

  it('goes up and down among listed ones, and the others make room', () => {
    const { snapshot } = dragLine(box, lone(box), 2, 21.5);
    const four = made(oneMore(snapshot, lone(snapshot)));
    expect(lone(four).joint.tails).toHaveLength(4);
    expect(lone(made(oneFewer(four, lone(four), 1))).joint.tails).toHaveLength(3);
  });

  it('keeps a lock on the tail that it was put on', () => {
    const locked = made(toggleLock(box, lone(box), 5));
    const { snapshot } = dragLine(locked, lone(locked), 0, 5);
    const fewer = made(oneFewer(snapshot, lone(snapshot), 1));
    expect([...lone(fewer).locked]).toEqual([3]);
    expect(widths(fewer)[3]).toBeCloseTo(widths(snapshot)[5] ?? 0, 2);
  });

  it('can be left to the set again', () => {
    const five = made(setTailCount(chest, cornerIn(chest, FRONT), 2));
    expect(five.text).toContain('joint: {tails: 2}');
    expect(made(setTailCount(five, cornerIn(five, FRONT), undefined)).text).toBe(
      made(setTailCount(chest, cornerIn(chest, FRONT), undefined)).text,
    );
  });

  it('is refused where there is no room, with what there is room for', () => {
    const result = setTailCount(box, lone(box), 40);
    expect(result.ok ? '' : first(result.complaints)).toMatch(/^40 tails are too many for 56 mm/u);
  });
});

describe('makeEven', () => {
  it('undoes changes by hand', () => {
    const { snapshot } = dragLine(box, lone(box), 2, 21.5);
    expect(made(makeEven(snapshot, lone(snapshot))).text).toBe(BOX);
  });

  it('leaves what is locked', () => {
    const { snapshot } = dragLine(box, lone(box), 1, 14);
    const locked = made(toggleLock(snapshot, lone(snapshot), 1));
    const even = made(makeEven(locked, lone(locked)));
    const [, one, , two, , three] = widths(even);
    expect(one).toBeCloseTo(10, 9);
    expect(two).toBeCloseTo(three ?? 0, 1);
  });
});

describe('mirrorTails', () => {
  it('turns the widths round, and their locks', () => {
    const { snapshot } = dragLine(box, lone(box), 0, 5);
    const locked = made(toggleLock(snapshot, lone(snapshot), 0));
    const turned = made(mirrorTails(locked, lone(locked)));
    expect(widths(turned).map((width) => width.toFixed(6))).toEqual(
      widths(snapshot)
        .map((width) => width.toFixed(6))
        .toReversed(),
    );
    expect([...lone(turned).locked]).toEqual([6]);
  });

  it('is refused where the groove would show', () => {
    const { snapshot } = dragLine(chest, cornerIn(chest, FRONT), 5, 60);
    expect(mirrorTails(snapshot, cornerIn(snapshot, FRONT)).ok).toBe(false);
  });
});
