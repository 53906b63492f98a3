import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../src/drawing/outline.ts';
import type { JointSpec } from '../../../src/joint/jointSpec.ts';
import { type GuideBoard, guideBoard } from '../../../src/router/guide/guideBoard.ts';
import type { Cutter } from '../../../src/router/limits/cutter.ts';
import { layOutForCutter } from '../../../src/router/limits/layOutForCutter.ts';
import { routerCut } from '../../../src/router/passes/routerCut.ts';
import { mostStraight } from '../../../src/router/passes/straightPasses.ts';
import { speak } from '../../../src/units/phrase.ts';
import { complaintsOf, value } from '../../value.ts';
import { CUTTER, cutOf, LAPPED, STRAIGHT, THROUGH } from '../example.ts';

const guideOf = (spec: JointSpec, board: 'tail' | 'pin', bush: number): GuideBoard => {
  const { joint, guided } = cutOf(spec);
  return value(guideBoard(joint, CUTTER, guided, board, bush));
};

const refusal = (spec: JointSpec, board: 'tail' | 'pin', bush: number): string[] => {
  const { joint, guided } = cutOf(spec);
  return complaintsOf(guideBoard(joint, CUTTER, guided, board, bush));
};

/** Where the outline crosses a line across the slots, from the reference edge upward. */
const crossings = (guide: GuideBoard, x: number): number[] => {
  const { points } = flatten(guide.outline);
  return points
    .flatMap(([x0, y0], i) => {
      const [x1, y1] = points[(i + 1) % points.length] ?? [x0, y0];
      return x0 < x === x1 < x ? [] : [y0 + ((y1 - y0) * (x - x0)) / (x1 - x0)];
    })
    .sort((a, b) => a - b);
};

describe('a guide for the tails', () => {
  it('has a slot for every space, as wide as the bush and what the cutter must travel', () => {
    const { joint, guided } = cutOf(LAPPED);
    const guide = guideOf(LAPPED, 'tail', 16);
    const walls = crossings(guide, joint.tailBoard.thickness / 2).slice(1, -1);
    expect(walls.length).toBe(2 * guided.passes.length);
    guided.passes.forEach((centres, i) => {
      expect(walls[2 * i]).toBeCloseTo((centres[0] ?? 0) - 8, 9);
      expect(walls[2 * i + 1]).toBeCloseTo((centres.at(-1) ?? 0) + 8, 9);
    });
  });

  it('has none for a half space that is cut by hand', () => {
    const { joint } = cutOf(THROUGH);
    const slots = (lower: boolean, upper: boolean) => {
      const guided = routerCut(joint, CUTTER, 8, { lower, upper });
      const guide = value(guideBoard(joint, CUTTER, guided, 'tail', 16));
      return [crossings(guide, 5).length / 2 - 1, guide.byHand];
    };
    // Three tails have four spaces beside and between them.
    expect(slots(false, false)).toEqual([4, []]);
    expect(slots(true, false)).toEqual([3, ['lower']]);
    expect(slots(false, true)).toEqual([3, ['upper']]);
    expect(slots(true, true)).toEqual([2, ['lower', 'upper']]);
  });

  it('lies on upright work, and for lapped pins on flat work', () => {
    expect(guideOf(LAPPED, 'tail', 16).lies).toBe('upright');
    expect(guideOf(LAPPED, 'pin', 16).lies).toBe('flat');
    expect(guideOf(THROUGH, 'pin', 11).lies).toBe('upright');
  });

  it('has fingers between them that its lands and its splits know of', () => {
    const guide = guideOf(LAPPED, 'tail', 16);
    const walls = crossings(guide, 5);
    expect(guide.fingers.flat()).toEqual(walls.map((wall) => expect.closeTo(wall, 9)));
  });

  it('closes its slots past the fence, so that the cut runs right through the work', () => {
    const guide = guideOf(LAPPED, 'tail', 16);
    expect(guide.work).toEqual([0, 14]);
    expect(crossings(guide, -2 - 7.999).length).toBeGreaterThan(2);
    expect(crossings(guide, -2 - 8.001).length).toBe(2);
  });
});

describe('a guide for lapped sockets', () => {
  it('stops the cutter where the socket ends', () => {
    const { guided } = cutOf(LAPPED);
    const stop = guided.pinCut.kind === 'round' ? guided.pinCut.socket.stop : Number.NaN;
    const guide = guideOf(LAPPED, 'pin', 16);
    expect(crossings(guide, -stop - 7.999).length).toBe(2 + 2 * 3);
    expect(crossings(guide, -stop - 8.001).length).toBe(2);
    expect(guide.fence[0]).toBe(0);
  });
});

describe('a guide for through pins', () => {
  it('leans its walls by the slope, a bush from the pins', () => {
    const { joint } = cutOf(THROUGH);
    const guide = guideOf(THROUGH, 'pin', 12);
    // Square off a wall a bush of 12 keeps a cutter of 8 by 2 mm, which is 2 / cos 8° along the board.
    const off = 2 / Math.cos((8 * Math.PI) / 180);
    const [inside, outside] = [crossings(guide, 1e-9), crossings(guide, 16)];
    joint.tails.forEach(({ tip, base }, i) => {
      expect(inside[2 * i + 1]).toBeCloseTo(base[0] - off, 6);
      expect(inside[2 * i + 2]).toBeCloseTo(base[1] + off, 6);
      expect(outside[2 * i + 1]).toBeCloseTo(tip[0] - off, 9);
      expect(outside[2 * i + 2]).toBeCloseTo(tip[1] + off, 9);
    });
  });
});

describe('a guide for through pins whose sockets are as narrow as their cutter at the inside', () => {
  it('closes its slots where the outermost passes meet, at the fence, and else 2 mm past it', () => {
    const { joint } = cutOf(THROUGH);
    const closesAt = (straight: number, bush: number): number => {
      const guide = value(guideBoard(joint, CUTTER, routerCut(joint, CUTTER, straight), 'pin', bush));
      const { points } = flatten(guide.outline);
      const back = Math.min(...points.map(([x]) => x));
      return Math.min(...points.map(([x]) => x).filter((x) => x > back)) + bush / 2;
    };
    expect(closesAt(mostStraight(joint), 30)).toBeCloseTo(0, 3);
    expect(closesAt(8, 12)).toBeCloseTo(-2, 3);
  });
});

describe('any guide', () => {
  it('refuses a bush smaller than the cutter, by name', () => {
    expect(refusal(LAPPED, 'tail', 12)).toEqual([
      'bush: the guide bush is 12 mm outside; the dovetail cutter of 12.7 mm must pass through it, so it must be 12.7 mm or more; try 16mm',
    ]);
    expect(refusal(THROUGH, 'pin', 7)[0]).toContain('the straight cutter of 8 mm must pass through it');
    for (const bush of [0, -1, Number.NaN]) expect(refusal(LAPPED, 'pin', bush).length).toBe(1);
  });

  it('refuses a bush that leaves no finger, and gives the largest that does', () => {
    // Between two sockets lies a pin of 10: 10 + 12.7 - bush is 3 at 19.7.
    expect(refusal(LAPPED, 'pin', 19.7)).toEqual([]);
    expect(refusal(LAPPED, 'pin', 22)).toEqual([
      'bush: a guide bush of 22 mm leaves a finger of 0.7 mm between two slots for the pins; it must be 3 mm or more; try 18mm, or make the pins wider by 2.3 mm, or take a cutter of smaller diameter',
    ]);
  });

  it('offers no bush that the cutter does not pass through', () => {
    // 15 mm deep at 20° the cutter leaves pins of 12.7 - 30 tan 20° = 1.78, and so, in a bush as wide as itself, fingers.
    const steep: Cutter = { diameter: 12.7, angle: 20, length: 15 };
    const told = (pin: number, bush: number): string[] => {
      const joint = value(layOutForCutter({ ...LAPPED, pin }, steep));
      const guide = guideBoard(joint, steep, routerCut(joint, steep, STRAIGHT), 'pin', bush);
      return guide.ok ? [] : guide.complaints.map(({ hint = [] }) => speak(hint, 'mm'));
    };
    expect(told(1.79, 12.7)).toEqual(['']);
    expect(told(2.9, 14)).toEqual(['']);
    expect(told(3, 14)).toEqual(['12.7 mm']);
  });

  it('gives the narrowest finger where slots differ, and no bush where the cutter itself is too thick', () => {
    // Between the sockets lie pins of 20 and 9: 9 + 12.7 - 20 = 1.7.
    const uneven: JointSpec = {
      ...LAPPED,
      width: 116,
      halfPin: { lower: 6, upper: 6 },
      spacing: { kind: 'listed', tails: [25, 25, 25], pins: [20, 9] },
    };
    const { pin: _, ...listed } = uneven;
    expect(refusal(listed, 'pin', 20)[0]).toMatch(
      /leaves a finger of 1\.7 mm between two slots for the pins; .*; try 18mm, or make the pins wider by 1\.3 mm/u,
    );
    // 12.7 + t - b must be 3 between tails of t: 15 - 12.7 wide bushes leave it, so only wider tails are offered.
    const narrow: JointSpec = {
      ...LAPPED,
      width: 44,
      halfPin: { lower: 3, upper: 3 },
      spacing: { kind: 'even', tails: 2 },
    };
    expect(refusal(narrow, 'tail', 22)[0] ?? '').toMatch(/^bush: a guide bush of 22 mm leaves a finger/u);
  });

  it('is one closed outline that never crosses itself, with every arc of the radius of the bush', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(LAPPED, THROUGH),
        fc.constantFrom('tail' as const, 'pin' as const),
        fc.double({ min: 12.7, max: 16, noNaN: true }),
        (spec, board, bush) => {
          const { joint, guided } = cutOf(spec);
          const guide = guideBoard(joint, CUTTER, guided, board, bush);
          if (!guide.ok) return;
          const { outline } = guide.value;
          expect(outline.filter(({ bulge }) => bulge !== undefined).length).toBeGreaterThan(2);
          outline.forEach(({ at: [x0, y0], bulge }, i) => {
            if (bulge === undefined) return;
            const [x1, y1] = outline[i + 1]?.at ?? [Number.NaN, Number.NaN];
            // A chord c with bulge b belongs to a circle of radius c (1 + b²) / 4b.
            const chord = Math.hypot(x1 - x0, y1 - y0);
            expect((chord * (1 + bulge ** 2)) / (4 * Math.abs(bulge))).toBeCloseTo(bush / 2, 9);
          });
          const mouth = Math.max(...outline.map(({ at: [x] }) => x));
          for (const x of [mouth - 0.01, mouth / 2]) {
            const levels = crossings(guide.value, x);
            expect(levels.length % 2).toBe(0);
            levels.slice(1).forEach((level, i) => {
              expect(level - (levels[i] ?? 0)).toBeGreaterThan(2.99);
            });
          }
        },
      ),
    );
  });
});
