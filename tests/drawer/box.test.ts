import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Drawer, drawersAndBoxes } from '../../src/drawer/drawer.ts';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { parts } from '../../src/drawer/partsList.ts';
import { KIND_NAMES } from '../../src/joint/kinds/kinds.ts';
import { speak } from '../../src/units/phrase.ts';
import { box, drawer } from './chest.ts';

const UNEQUAL = {
  front: { thickness: 14 },
  side: { thickness: 10 },
  back: { thickness: 12 },
  bottom: { thickness: 4 },
};
const RUNNING = { offset: 8, width: 4, depth: 4 };

const laid = (...specs: readonly DrawerSpec[]): readonly Drawer[] => {
  const set = layOutSet([], undefined, {}, specs);
  if (!set.ok) throw new Error(set.complaints.map(({ says }) => speak(says, 'mm')).join('\n'));
  return drawersAndBoxes(set.value);
};
const made = (spec: DrawerSpec): Drawer => {
  const [one] = laid(spec);
  if (one === undefined) throw new Error('no box');
  return one;
};
const refusals = (spec: DrawerSpec): string[] => {
  const set = layOutSet([], undefined, {}, [spec]);
  return set.ok ? [] : set.complaints.map(({ at, says }) => `${at.join('.')}: ${speak(says, 'mm')}`);
};
const sizes = (spec: DrawerSpec) =>
  parts({ drawers: [], boxes: laid(spec), advice: [] }).map(({ part, count, length, width }) => [
    part,
    count,
    length,
    width,
  ]);

describe('the parts of a box', () => {
  it('are as long as the box where nothing laps, and its bottom lies in all four grooves', () => {
    // Between boards of 9 the bottom has 200 - 18 by 140 - 18; 4 more at each edge, less 0.5 of slack.
    expect(sizes(box())).toEqual([
      ['front', 2, 200, 80],
      ['side', 4, 140, 80],
      ['back', 2, 200, 80],
      ['bottom', 2, 129, 189],
    ]);
  });

  it.each([
    // A quarter of 14 and of 12.
    ['lapped', 140 - 3.5 - 3],
    ['double-lapped', 140 - 3.5 - 3],
    ['through', 140],
  ] as const)('of %s corners have sides that end at the laps of front and back', (kind, length) => {
    const groove = kind === 'through' ? { ...RUNNING, stopped: 4 } : RUNNING;
    const joint = { kind, spacing: { kind: 'even' } } as const;
    expect(sizes(box({ stock: UNEQUAL, joint, groove }))).toEqual([
      ['front', 2, 200, 80],
      ['side', 4, length, 80],
      ['back', 2, 200, 80],
      // 140 - 14 - 12 + 2 * 3.5 and 200 - 20 + 2 * 3.5.
      ['bottom', 2, 121, 187],
    ]);
  });

  it('of secret-mitred corners have sides as long as the box', () => {
    const joint = { kind: 'secret-mitred', spacing: { kind: 'even' } } as const;
    expect(sizes(box({ joint, groove: RUNNING }))[1]).toEqual(['side', 4, 140, 80]);
  });

  it('say where the grooves are, and that those of the sides are stopped', () => {
    const worked = parts({ drawers: [], boxes: laid(box()), advice: [] }).map(({ part, worked }) => [
      part,
      ...worked.map((phrase) => speak(phrase, 'mm')),
    ]);
    const groove = 'inside face: groove 4 mm wide, 4 mm deep, 8 mm above the lower edge';
    expect(worked).toEqual([
      ['front', groove],
      ['side', `${groove}, stopped 5 mm from both ends`],
      ['back', groove],
      ['bottom'],
    ]);
  });
});

describe('the corners of a box', () => {
  it('are alike at front and back, over the whole height', () => {
    const { front, back } = made(box());
    expect(back).toBe(front);
    expect(front.width).toBe(80);
  });

  it('have as many tails at a back of another thickness', () => {
    const joint = { kind: 'lapped', spacing: { kind: 'even' } } as const;
    const { front, back } = made(box({ stock: UNEQUAL, joint, groove: RUNNING }));
    expect([front.pinBoard, back.pinBoard]).toEqual([
      { thickness: 14, lap: 3.5 },
      { thickness: 12, lap: 3 },
    ]);
    expect(back.tails.length).toBe(front.tails.length);
  });

  it('take no part in the look of the drawers', () => {
    const alone = layOutSet([drawer()]);
    const beside = layOutSet([drawer()], undefined, {}, [box()]);
    if (!alone.ok || !beside.ok) throw new Error('cannot be made');
    expect(beside.value.family).toEqual(alone.value.family);
    expect(beside.value.drawers).toEqual(alone.value.drawers);
  });

  it('hide the groove, at both ends, whatever the kind and the boards', () => {
    const length = (min: number, max: number) =>
      fc.integer({ min: 10 * min, max: 10 * max }).map((n) => n / 10);
    let madeOnes = 0;
    fc.assert(
      fc.property(
        fc.record({
          kind: fc.constantFrom(...KIND_NAMES),
          shoulder: fc.constantFrom(undefined, 'lower' as const),
          front: length(8, 20),
          side: length(8, 20),
          back: length(8, 20),
          height: length(50, 160),
          offset: length(3, 20),
        }),
        ({ kind, shoulder, front, side, back, height, offset }) => {
          const stops = kind === 'through' && shoulder === undefined;
          const wish = { kind, spacing: { kind: 'even' }, mitre: 'corner' } as const;
          const set = layOutSet([], undefined, {}, [
            box({
              space: { kind: 'size', size: { width: 220, height, depth: 180 } },
              stock: {
                front: { thickness: front },
                side: { thickness: side },
                back: { thickness: back },
                bottom: { thickness: 4 },
              },
              joint:
                shoulder === undefined || !['through', 'lapped'].includes(kind)
                  ? wish
                  : { ...wish, shoulder },
              groove: { offset, width: 4, depth: 3, ...(stops && { stopped: 2 }) },
            }),
          ]);
          if (!set.ok) return;
          madeOnes++;
          for (const { front: a, back: b } of set.value.boxes ?? [])
            for (const { tails, tailBoard, pinBoard, shoulder: mitred } of [a, b]) {
              const [from, to] = tails[0]?.base ?? [0, 0];
              const inTail = offset - from >= 1 - 1e-6 && to - (offset + 4) >= 1 - 1e-6;
              const underLaps =
                tailBoard.lap > 0 &&
                tailBoard.thickness - tailBoard.lap >= 4 - 1e-6 &&
                pinBoard.thickness - pinBoard.lap >= 4 - 1e-6;
              expect(inTail || underLaps || (offset >= 1 && offset + 5 <= mitred.lower + 1e-6)).toBe(true);
            }
        },
      ),
      { numRuns: 150 },
    );
    expect(madeOnes).toBeGreaterThan(50);
  });
});

describe('a bottom in a rebate', () => {
  const rebate = { offset: 0, width: 4, depth: 4, rebate: true } as const;
  const stopped = box({ groove: { ...rebate, stopped: 5 } });

  it('lies at the lower edges of all four sides, with the same slack', () => {
    expect(sizes(stopped)[3]).toEqual(['bottom', 2, 129, 189]);
    const [{ from, to } = { from: [], to: [] }] = made(stopped).boards.bottom.boxes;
    // Boards of 9 rebated 4 deep leave 5, and 0.5 is slack.
    expect([from, to]).toEqual([
      [5.5, 5.5, 0],
      [194.5, 134.5, 4],
    ]);
  });

  it('is told with where front and back are not rebated, as it would show at their pins there', () => {
    const told = parts({ drawers: [], boxes: laid(stopped), advice: [] }).map(({ worked }) =>
      worked.map((phrase) => speak(phrase, 'mm')).join(),
    );
    const along = 'inside face: rebate 4 mm high, 4 mm deep along the lower edge';
    expect(told.slice(0, 3)).toEqual([
      `${along}, stopped 5 mm from both ends`,
      along,
      `${along}, stopped 5 mm from both ends`,
    ]);
    for (const kind of ['through', 'lapped'] as const)
      expect(refusals(box({ joint: { kind, spacing: { kind: 'even' } }, groove: rebate }))).toEqual([
        `boxes.0.groove.stopped: "Buttons": a rebate that runs through the pins of front and back shows at the corners of a ${kind} joint`,
      ]);
  });

  it('lies in a lower half pin that holds it with 1 mm to spare, or in a mitred shoulder', () => {
    // A half pin of 4.5 is too narrow for 4 and 1.
    expect(made(stopped).front.tails[0]?.tip[0]).toBe(5);
    const joint = { kind: 'through', spacing: { kind: 'even' }, shoulder: 'lower' } as const;
    const { front } = made(box({ joint, groove: rebate }));
    expect([front.shoulder.lower, front.tails[0]?.tip[0]]).toEqual([5, 9.5]);
  });

  it('is refused where listed tails leave it too narrow a half pin', () => {
    const joint = {
      kind: 'through',
      halfPin: { lower: 4, upper: 4 },
      spacing: { kind: 'listed', tails: [33, 33.5] },
      pin: 5.5,
    } as const;
    expect(refusals(box({ joint, groove: { ...rebate, stopped: 5 } }))[0]).toMatch(
      /^boxes\.0\.joint\.halfPin: "Buttons": the rebate for the bottom, 4 mm high, would cut the lowest tail:/u,
    );
  });
});

describe('a box is refused', () => {
  it('where its groove runs through in sight', () => {
    expect(refusals(box({ groove: RUNNING }))).toEqual(
      [
        `groove.stopped: "Buttons": a groove that runs through the sides' tails shows at the corners of a through joint`,
      ].map((line) => `boxes.0.${line}`),
    );
  });

  it('where its groove lies in no tail', () => {
    // The lowest tail's base begins at 1 and what the slope takes of 9 mm, and the groove needs 1 mm more.
    expect(refusals(box({ groove: { ...RUNNING, offset: 2, stopped: 5 } }))).toEqual([
      expect.stringMatching(
        /^boxes\.0\.groove\.offset: "Buttons": the groove, 2 mm to 6 mm up, would show at a corner:/u,
      ),
    ]);
  });

  it('where its groove is too deep for the thinner of front and back', () => {
    const stock = { ...UNEQUAL, back: { thickness: 6 } };
    const groove = { ...RUNNING, depth: 4.5, stopped: 1 };
    expect(refusals(box({ stock, groove }))).toEqual([
      'boxes.0.groove.depth: "Buttons": the groove is 4.5 mm deep; the back, 6 mm thick, must keep 2 mm before it, so it may be at most 4 mm',
    ]);
  });

  it('where its grooves would stop behind the bottom', () => {
    // A groove 4 deep in a back of 12 leaves 8.
    expect(refusals(box({ stock: UNEQUAL, groove: { ...RUNNING, stopped: 9 } }))).toEqual([
      `boxes.0.groove.stopped: "Buttons": from the sides' ends to their groove is 9 mm; it must be 1 mm to 8 mm`,
    ]);
  });
});
