import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Joint } from '../../../src/joint/joint.ts';
import { adjust } from '../../../src/page/model/adjust.ts';
import type { CornerRef } from '../../../src/page/model/editedCorner.ts';
import { dragLine, makeEven, mirrorTails, oneFewer, oneMore } from '../../../src/page/model/edits.ts';
import { handlesOf } from '../../../src/page/model/handles.ts';
import { movedWords } from '../../../src/page/model/movedWords.ts';
import { quantitiesOf, quantity } from '../../../src/page/model/quantities.ts';
import { FIRST_SCOPE, type Scope } from '../../../src/page/model/scope.ts';
import { scopeWords } from '../../../src/page/model/scopeWords.ts';
import { type Snapshot, snapshot } from '../../../src/page/model/snapshot.ts';
import { linesOf, widthsOf } from '../../../src/page/model/widths.ts';
import type { Result } from '../../../src/units/complaint.ts';
import { BACK, BOX, CHEST, cornerIn, FRONT, LONE, snapshotOf } from '../chest.ts';

const ALL_BOTH: Scope = { drawers: 'all', ends: 'both' };
const ONE: Scope = { drawers: 'this', ends: 'shown' };
const ONE_BOTH: Scope = { drawers: 'this', ends: 'both' };

const edited = (text: string, key: string, value: number, ref: CornerRef, scope: Scope): Snapshot => {
  const now = snapshotOf(text);
  const corner = cornerIn(now, ref);
  const measure = quantity(corner, key);
  if (measure === undefined) throw new Error(`no ${key}`);
  const result = adjust(now, corner, measure, value, scope);
  if (!result.ok) throw new Error(JSON.stringify(result.complaints));
  return result.value;
};
const runs = ({ project }: Snapshot) =>
  project.set.drawers.map(({ front, back }) => [front.slope.run, back.slope.run]);

describe('an edit of the slope', () => {
  const three = CHEST.replace(/ {2}- \{name: Patches[\s\S]*/u, '');
  const sixes = (drawers: number, end: 0 | 1) =>
    Array.from({ length: 3 }, (_, i) => [0, 1].map((e) => (e === end && i < drawers ? 6 : 7)));

  it.each([
    ['every back', BACK, FIRST_SCOPE, sixes(3, 1)],
    ['the back of one drawer', BACK, ONE, sixes(1, 1)],
    ['every front', FRONT, FIRST_SCOPE, sixes(3, 0)],
    ['the front of one drawer', FRONT, ONE, sixes(1, 0)],
    [
      'every corner, from the front',
      FRONT,
      ALL_BOTH,
      [
        [6, 6],
        [6, 6],
        [6, 6],
      ],
    ],
    [
      'every corner, from the back',
      BACK,
      ALL_BOTH,
      [
        [6, 6],
        [6, 6],
        [6, 6],
      ],
    ],
    [
      'all corners of one drawer',
      BACK,
      ONE_BOTH,
      [
        [6, 6],
        [7, 7],
        [7, 7],
      ],
    ],
  ] as const)('changes %s and nothing else', (_, ref, scope, expected) => {
    expect(runs(edited(three, 'slope', 6, ref, scope))).toEqual(expected);
  });

  it('is written where it belongs, once for all', () => {
    expect(edited(three, 'slope', 6, BACK, FIRST_SCOPE).text).toMatch(
      /back: +\{drop: 4, joint: \{slope: "?1:6"?\}\}/u,
    );
    const front = edited(three, 'slope', 6, FRONT, FIRST_SCOPE).text;
    expect(front).toContain('{slope: "1:6", pin: 5, halfPin: 6, lap: 5}');
    expect(front).toMatch(/back: +\{drop: 4, joint: \{slope: "?1:7"?\}\}/u);
    // Where both are changed, the backs follow their fronts again.
    const both = edited(front, 'slope', 5, BACK, ALL_BOTH).text;
    expect(both).toContain('{slope: "1:5", pin: 5, halfPin: 6, lap: 5}');
    expect(both).toMatch(/back: +\{drop: 4\}/u);
  });

  it('leaves a single corner as it is, which inherits from all', () => {
    const text = `${three}joints: [{name: Carcase, kind: through, width: 430, tailBoard: 19, pinBoard: 19}]\n`;
    const now = edited(text, 'slope', 6, FRONT, ALL_BOTH);
    expect(now.project.joints[0]?.joint.slope.run).toBe(7);
    expect(edited(now.text, 'pin', 6, FRONT, ALL_BOTH).project.joints[0]?.joint.pins[1]?.narrow).toEqual(
      snapshotOf(text).project.joints[0]?.joint.pins[1]?.narrow,
    );
  });

  it('reaches drawers that have a value of their own, and leaves the length out that their kind does not have', () => {
    const mixed = three.replace(
      'height: 110, depth: 420}',
      'height: 110, depth: 420}, joint: {kind: through}',
    );
    const laps = edited(mixed, 'lap', 4, FRONT, FIRST_SCOPE).project.set.drawers.map(
      ({ front }) => front.pinBoard.lap,
    );
    expect(laps).toEqual([4, 4, 0]);
    const kinds = mixed
      .replace('joint:  {slope: "1:7", pin: 5, halfPin: 6, lap: 5}', 'joint: {kind: through, slope: "1:7"}')
      .replaceAll('height: 76, depth: 420}', 'height: 76, depth: 420}, joint: {kind: lapped, lap: 5}');
    expect(
      edited(kinds, 'lap', 4, FRONT, FIRST_SCOPE).project.set.drawers.map(({ front }) => front.pinBoard.lap),
    ).toEqual([4, 4, 0]);
  });
});

describe('an edit at one end', () => {
  /** Plans in which backs have something of their own, or inherit all of it, or have listed tails. */
  const plan = fc
    .record({
      halfPin: fc.constantFrom('', ', halfPin: 6', ', halfPin: [6, 5]'),
      pin: fc.constantFrom('', ', pin: 5'),
      back: fc.constantFrom('', ', joint: {slope: "1:6"}', ', joint: {pin: 6, halfPin: 7}'),
      ownFront: fc.constantFrom(
        '',
        'slope: "1:8"',
        'pin: 4.5',
        'tails: [17, 18.34, 17.66], pins: [5, 5], halfPin: [6, 6]',
      ),
      ownBack: fc.constantFrom('', 'slope: "1:9"', 'tails: [20, 20], pins: [5], halfPin: [5, 5]'),
      joints: fc.boolean(),
    })
    .map(
      ({
        halfPin,
        pin,
        back,
        ownFront,
        ownBack,
        joints,
      }) => `stock: {front: {thickness: 20}, side: {thickness: 11}}
joint: {slope: "1:7"${pin}${halfPin}}
groove: {offset: 11, width: 5, depth: 5}
back: {drop: 4${back}}
drawers:
  - {name: A, opening: {width: 280, height: 76, depth: 420}, joint: {${ownFront}}, back: {joint: {${ownBack}}}}
  - {name: B, opening: {width: 280, height: 110, depth: 420}}
${joints ? 'joints: [{name: C, kind: through, width: 90, tailBoard: 12, pinBoard: 12}]\n' : ''}`,
    );
  const made = (text: string): Snapshot | undefined => {
    const read = snapshot(text);
    return read.ok ? read.value : undefined;
  };
  const edit = fc.record({
    kind: fc.constantFrom('line', 'more', 'fewer', 'even', 'mirror', 'measure', 'measure', 'measure'),
    which: fc.nat(50),
    by: fc.double({ min: -3, max: 3, noNaN: true }),
    drawer: fc.nat(1),
    scope: fc.constantFrom<Scope>(FIRST_SCOPE, ONE),
  });
  const layout = ({ tails, pins, slope, depth }: Joint): number[] => [
    slope.run,
    depth,
    ...tails.flatMap(({ tip, base }) => [...tip, ...base]),
    ...pins.flatMap(({ narrow, wide }) => [...narrow, ...wide]),
  ];

  it('writes down the back pins of a drawer whose front lists its own', () => {
    const now = snapshotOf(`stock: {front: {thickness: 20}, side: {thickness: 11}}
joint: {slope: "1:7"}
drawers:
  - {name: A, opening: {width: 280, height: 76, depth: 420}, joint: {tails: [17, 18.34, 17.66], pins: [5, 5], halfPin: [6, 6]}}
  - {name: B, opening: {width: 280, height: 110, depth: 420}}
`);
    const corner = cornerIn(now, { of: 'drawer', index: 1, end: 'front' });
    const pin = quantity(corner, 'pin');
    const after = pin && adjust(now, corner, pin, 7, FIRST_SCOPE);
    const backs = ({ project }: Snapshot) => project.set.drawers.map(({ back }) => layout(back));
    expect(after?.ok && backs(after.value)).toEqual(backs(now));
  });

  it.each(['front', 'back'] as const)(
    'at the %s never changes a corner of the other, nor a single corner',
    (end) => {
      let changed = 0;
      fc.assert(
        fc.property(plan, edit, (text, { kind, which, by, drawer, scope }) => {
          const now = made(text);
          if (now === undefined) return;
          const corner = cornerIn(now, { of: 'drawer', index: drawer, end });
          const lines = linesOf(widthsOf(corner.joint));
          const line = which % lines.length;
          const measures = quantitiesOf(corner).filter(({ ends }) => ends !== 'both');
          const measure = measures[which % measures.length];
          const results: Record<typeof kind, () => Result<Snapshot> | undefined> = {
            line: () => ({ ok: true, value: dragLine(now, corner, line, (lines[line] ?? 0) + by).snapshot }),
            more: () => oneMore(now, corner),
            fewer: () => oneFewer(now, corner),
            even: () => makeEven(now, corner),
            mirror: () => mirrorTails(now, corner),
            measure: () => measure && adjust(now, corner, measure, (measure.get(corner) ?? 0) + by, scope),
          };
          const result = results[kind]();
          if (result === undefined || !result.ok) return;
          changed++;
          const others = ({ project }: Snapshot): number[] => [
            ...project.set.drawers.flatMap((each) => layout(end === 'front' ? each.back : each.front)),
            ...project.joints.flatMap(({ joint }) => layout(joint)),
          ];
          const [before, after] = [others(now), others(result.value)];
          expect(after).toHaveLength(before.length);
          // What is written down has four decimals.
          expect(Math.max(0, ...after.map((value, i) => Math.abs(value - (before[i] ?? 0))))).toBeLessThan(
            0.001,
          );
        }),
        { numRuns: 150 },
      );
      expect(changed).toBeGreaterThan(50);
    },
  );
});

describe('the words of a scope', () => {
  const chest = snapshotOf(CHEST);
  const words = (key: string, ref: CornerRef, scope: Scope, now = chest): string => {
    const corner = cornerIn(now, ref);
    return scopeWords(now.project, corner, quantity(corner, key), scope);
  };

  it('count every drawer that is made, not the entries of the plan', () => {
    expect(words('lap', FRONT, FIRST_SCOPE)).toBe('all nine drawers');
    expect(words('lap', FRONT, ONE)).toBe('these two drawers');
    expect(words('pin', { ...FRONT, index: 3 }, ONE)).toBe('front corners of this drawer');
  });

  it('name the corners, where front and back each have a measure', () => {
    expect(words('pin', BACK, FIRST_SCOPE)).toBe('back corners of all nine drawers');
    expect(words('pin', BACK, ALL_BOTH)).toBe('front and back corners of all nine drawers');
    expect(words('side', BACK, ONE)).toBe('front and back corners of these two drawers');
    expect(words('grooveOffset', FRONT, FIRST_SCOPE)).toBe('front and back corners of all nine drawers');
    expect(words('back', BACK, FIRST_SCOPE)).toBe('all nine drawers');
    expect(words('height', BACK, ALL_BOTH)).toBe('these two drawers');
  });

  it('say how many of all have the measure', () => {
    const mixed = snapshotOf(CHEST.replace('joint: {tails: 6}', 'joint: {kind: through}'));
    expect(words('lap', FRONT, FIRST_SCOPE, mixed)).toBe('eight of nine drawers');
  });

  it('follow the value of a handle and its change', () => {
    const moved = (now: Snapshot, ref: CornerRef, id: string, from: number, scope = FIRST_SCOPE): string => {
      const corner = cornerIn(now, ref);
      const handle = handlesOf(corner).find((each) => each.id === id);
      if (handle === undefined) throw new Error(`no ${id}`);
      return movedWords(handle, from, { now, corner, scope });
    };
    expect(moved(chest, FRONT, 'lap', 3.1)).toBe('lap 5 mm (+1.9), all nine drawers');
    expect(moved(chest, FRONT, 'groove', 11.3)).toBe(
      'groove from edge 11 mm (−0.3), front and back corners of all nine drawers',
    );
    expect(moved(chest, BACK, 'tail baseline', 11)).toBe('thickness of the back 11 mm, all nine drawers');
    expect(moved(chest, FRONT, 'line 0', 5)).toBe(
      'tail 1 lower edge 6 mm (+1), front corners of these two drawers',
    );
    expect(moved(snapshotOf(BOX), LONE, 'line 0', 5)).toBe('tail 1 lower edge 4 mm (−1), this corner');
  });
});
