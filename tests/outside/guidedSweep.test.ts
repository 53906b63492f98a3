import type { Manifold } from 'manifold-3d';
import { describe, expect, it } from 'vitest';
import type { Joint } from '../../src/joint/joint.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import type { Cutter } from '../../src/router/limits/cutter.ts';
import { layOutForCutter } from '../../src/router/limits/layOutForCutter.ts';
import { routerCut } from '../../src/router/passes/routerCut.ts';
import { defaultStraight } from '../../src/router/passes/straightPasses.ts';
import { correctDepth } from '../../src/router/trial/depthCorrection.ts';
import { correctGuide } from '../../src/router/trial/guideCorrection.ts';
import { value } from '../value.ts';
import { box, hullOf, overlaps, Solid, sweep } from './guidedSolids.ts';

/** No ridge and no bite may be larger, in mm. */
const TRUE = 0.01;

const laidOut = (spec: JointSpec, cutter: Cutter): Joint => value(layOutForCutter(spec, cutter));

const EIGHT: Cutter = { diameter: 12.7, angle: 8, length: 22 };
const FOURTEEN: Cutter = { diameter: 12.7, angle: 14, length: 13 };

const CASES: readonly [string, JointSpec, Cutter][] = [
  [
    'a lapped drawer corner, one pass a space',
    { kind: 'lapped', width: 96, tailBoard: 14, pinBoard: 20, lap: 5, spacing: { kind: 'even' } },
    EIGHT,
  ],
  [
    'a lapped corner with wide pins and wide half pins',
    {
      kind: 'lapped',
      width: 190,
      tailBoard: 12,
      pinBoard: 18,
      lap: 6,
      pin: 17,
      halfPin: { lower: 25, upper: 3 },
      spacing: { kind: 'even', tails: 4 },
    },
    FOURTEEN,
  ],
  [
    'a through carcase corner',
    { kind: 'through', width: 240, tailBoard: 16, pinBoard: 18, spacing: { kind: 'even', tails: 5 } },
    EIGHT,
  ],
  [
    'a through corner of graded tails',
    {
      kind: 'through',
      width: 200,
      tailBoard: 10,
      pinBoard: 12,
      pin: 8,
      spacing: { kind: 'graded', tails: 5, ratio: 0.85, from: 'edge' },
    },
    FOURTEEN,
  ],
  [
    'a single tail between broad half pins',
    {
      kind: 'through',
      width: 120,
      tailBoard: 12,
      pinBoard: 12,
      halfPin: { lower: 40, upper: 30 },
      spacing: { kind: 'even', tails: 1 },
    },
    EIGHT,
  ],
];

/** The tail board, its end upward: u, then the board's thickness, then height above the baseline. */
const cutTails = (
  joint: Joint,
  cutter: Cutter,
  passes: readonly (readonly number[])[],
  depth = joint.depth,
) => {
  const { width, tailBoard } = joint;
  const past = cutter.diameter;
  const board = box([0, 0, -20], [width, tailBoard.thickness, joint.depth]);
  return passes.flat().reduce(
    (left: Manifold, u) =>
      left.subtract(
        sweep(cutter, joint.depth - depth, depth + 0.5, [
          [u, -past],
          [u, tailBoard.thickness + past],
        ]),
      ),
    board,
  );
};

/** What the layout calls for, every tail fatter by `more` on each side and the baseline higher by as much. */
const wishedTails = ({ width, tailBoard, tails, depth, slope }: Joint, more: number): Manifold => {
  const t = tailBoard.thickness;
  return tails.reduce(
    (sum: Manifold, { tip: [from, to] }) => {
      // Stated from the tips and the slope alone.
      const loss = depth / slope.run;
      const profile = (y: number): [number, number, number][] => [
        [from + loss - more, y, 0],
        [to - loss + more, y, 0],
        [to + more, y, depth],
        [from - more, y, depth],
      ];
      return sum.add(hullOf([...profile(0), ...profile(t)]));
    },
    box([0, 0, -20], [width, t, more]),
  );
};

describe('the tail board, cut by a dovetail cutter at the listed centres', () => {
  it.each(CASES)('has exactly its tails: %s', (_, spec, cutter) => {
    const joint = laidOut(spec, cutter);
    const cut = cutTails(joint, cutter, routerCut(joint, cutter, 6).passes);
    expect(cut.subtract(wishedTails(joint, TRUE)).volume()).toBeLessThan(1e-6);
    expect(wishedTails(joint, -TRUE).subtract(cut).volume()).toBeLessThan(1e-6);
  });

  it('keeps a ridge where any pass of a space with several is left out', () => {
    const [, spec, cutter] = CASES[1] as (typeof CASES)[number];
    const joint = laidOut(spec, cutter);
    const { passes } = routerCut(joint, cutter, 6);
    expect(passes.map((space) => space.length)).toEqual([5, 3, 3, 3, 1]);
    passes.forEach((space, i) => {
      space.forEach((_, j) => {
        const fewer = passes.map((each, k) => (k === i ? each.filter((_, n) => n !== j) : each));
        const cut = cutTails(joint, cutter, fewer);
        expect(cut.subtract(wishedTails(joint, TRUE)).volume()).toBeGreaterThan(1);
      });
    });
  });
});

describe('through sockets, cut by a straight cutter along the sloped sides', () => {
  /** The pin board seen on its end: u, then the distance from the inside face, then depth. */
  const cutSockets = (joint: Joint, diameter: number, shift = 0): Manifold => {
    const { width, pinBoard, tailBoard } = joint;
    const cut = routerCut(joint, EIGHT, diameter).pinCut;
    if (cut.kind !== 'straight') throw new Error('not a through joint');
    const board = box([0, 0, -10], [width, pinBoard.thickness, cut.depth]);
    expect(cut.depth).toBe(tailBoard.thickness);
    return cut.passes.flat().reduce((left: Manifold, { inside, outside }) => {
      const lean = (outside - inside) / pinBoard.thickness;
      const at = (y: number): [number, number] => [inside + lean * y, y + shift];
      return left.subtract(
        sweep({ diameter, angle: 0 }, 0, cut.depth, [at(-diameter), at(pinBoard.thickness + diameter)]),
      );
    }, board);
  };

  const wishedPins = ({ width, pinBoard, tailBoard, tails, slope }: Joint, more: number): Manifold => {
    const socket = tails.reduce(
      (sum: Manifold, { tip: [from, to] }) => {
        const loss = pinBoard.thickness / slope.run;
        const profile = (z: number): [number, number, number][] => [
          [from + loss + more, 0, z],
          [to - loss - more, 0, z],
          [to - more, pinBoard.thickness, z],
          [from + more, pinBoard.thickness, z],
        ];
        return sum.add(hullOf([...profile(more), ...profile(tailBoard.thickness)]));
      },
      box([0, 0, 0], [0, 0, 0]),
    );
    return box([0, 0, -10], [width, pinBoard.thickness, tailBoard.thickness]).subtract(socket);
  };

  it.each(CASES.filter(([, { kind }]) => kind === 'through'))(
    'are exactly those of the layout: %s',
    (_, spec, cutter) => {
      const joint = laidOut(spec, cutter);
      for (const diameter of [defaultStraight(joint, cutter), 4]) {
        const cut = cutSockets(joint, diameter);
        expect(cut.subtract(wishedPins(joint, TRUE)).volume()).toBeLessThan(1e-6);
        expect(wishedPins(joint, -TRUE).subtract(cut).volume()).toBeLessThan(1e-6);
      }
    },
  );

  it('are wider by what the correction of the template undoes', () => {
    const [, spec, cutter] = CASES[2] as (typeof CASES)[number];
    const joint = laidOut(spec, cutter);
    // The template stood 1 mm too far towards the inside face.
    const moved = cutSockets(joint, 6, -1);
    const [from, to] = joint.tails[1]?.tip ?? [0, 0];
    // A tail turned into its socket: its length across the pin board, its thickness down from the end.
    const tail = wishedTails(joint, 0)
      .intersect(box([from, 0, 0], [to, 16, 18]))
      .transform([1, 0, 0, 0, 0, 0, -1, 0, 0, 1, 0, 0, 0, 0, 0, 1])
      .translate([0, 0, 16.001]);
    const each = 1 / joint.slope.run;
    for (const side of [-1, 1]) {
      expect(overlaps(moved, tail.translate([side * (each - 0.002), 0, 0]))).toBe(false);
      expect(overlaps(moved, tail.translate([side * (each + 0.002), 0, 0]))).toBe(true);
    }
    const corrected = correctGuide({ slope: joint.slope }, { looseness: 2 * each });
    expect(corrected.ok && corrected.value.move).toBeCloseTo(1, 9);
  });
});

describe('lapped sockets, cut by the cutter that cut the tails', () => {
  /** The pin board on its outside face: u, then the distance from its end, then height, its inside face at 0. */
  const cutSockets = (joint: Joint, cutter: Cutter, depth = joint.depth): Manifold => {
    const { width, pinBoard } = joint;
    const cut = routerCut(joint, cutter, 6).pinCut;
    if (cut.kind !== 'round') throw new Error('not a lapped joint');
    const board = box([0, 0, -pinBoard.thickness], [width, 60, 0]);
    return cut.passes.reduce((left: Manifold, passes) => {
      const stop = cut.socket.stop;
      const runs = passes.map((u) =>
        sweep(cutter, -depth, depth + 0.5, [
          [u, -cutter.diameter],
          [u, stop],
        ]),
      );
      const along = sweep(cutter, -depth, depth + 0.5, [
        [passes[0] ?? 0, stop],
        [passes.at(-1) ?? 0, stop],
      ]);
      return left.subtract(Solid.union([...runs, along]));
    }, board);
  };

  /** A tail in its socket, its inside arrises cut off flat from `fromFace` on its sides to the insets on its face. */
  const easedTail = (
    { tails, tailBoard, depth, slope }: Joint,
    index: number,
    { fromFace, atBase, atTip }: { fromFace: number; atBase: number; atTip: number },
    less = 0,
  ): Manifold => {
    const [from, to] = tails[index]?.tip ?? [0, 0];
    const loss = depth / slope.run;
    const t = tailBoard.thickness;
    const level = (z: number, a: number, b: number, inset: number): [number, number, number][] => [
      [a, 0, z],
      [b, 0, z],
      [b, t - fromFace, z],
      [b - inset, t, z],
      [a + inset, t, z],
      [a, t - fromFace, z],
    ];
    return hullOf([
      ...level(0, from + loss + less, to - loss - less, atBase - less),
      ...level(-depth + less, from + less, to - less, atTip - less),
    ]);
  };

  const lapped = CASES.filter(([, { kind }]) => kind === 'lapped');

  it.each(lapped)('clear all that a tail fills but for the eased arrises: %s', (_, spec, cutter) => {
    const joint = laidOut(spec, cutter);
    const cut = cutSockets(joint, cutter);
    const { pinCut } = routerCut(joint, cutter, 6);
    if (pinCut.kind !== 'round') throw new Error('not a lapped joint');
    const { ease } = pinCut.socket;
    joint.tails.forEach((_, i) => {
      expect(overlaps(cut, easedTail(joint, i, ease, 0.001))).toBe(false);
      // A flat 0.55 of the radius wide leaves wood outside the round, whose corner lies 0.29 radii deep.
      const half = { fromFace: 0.55 * ease.fromFace, atBase: 0.55 * ease.atBase, atTip: ease.atTip };
      expect(overlaps(cut, easedTail(joint, i, half, 0.001))).toBe(true);
      const sharpTip = { ...ease, atTip: ease.atTip - 0.05 };
      expect(overlaps(cut, easedTail(joint, i, sharpTip, 0.001))).toBe(true);
    });
  });

  it.each(lapped)('leave the pins whole over the length of the socket: %s', (_, spec, cutter) => {
    const joint = laidOut(spec, cutter);
    const cut = cutSockets(joint, cutter);
    // The tail board's picture turned over, its thickness run along the pin board as far as that goes.
    const sockets = wishedTails({ ...joint, tailBoard: { thickness: 60, lap: 0 } }, TRUE).mirror([0, 0, 1]);
    const pins = box([0, 0, -joint.pinBoard.thickness], [joint.width, 60, 0]).subtract(sockets);
    expect(pins.volume()).toBeGreaterThan(1000);
    expect(pins.subtract(cut).volume()).toBeLessThan(1e-6);
  });

  it('are 14 mm long for a side of 14 mm (common practice), seen on the inside face', () => {
    const [, spec, cutter] = CASES[0] as (typeof CASES)[number];
    const joint = laidOut(spec, cutter);
    const [from, to] = joint.tails[0]?.tip ?? [0, 0];
    const face = cutSockets(joint, cutter)
      .slice(-1e-6)
      .intersect(box([from, 0, -0.5], [to, 60, 0.5]).slice(0));
    // What is left of the board along the middle of the socket begins where the socket ends.
    const middle = face.intersect(
      box([(from + to) / 2 - 0.01, 0, -0.5], [(from + to) / 2 + 0.01, 60, 0.5]).slice(0),
    );
    expect(middle.bounds().min[1]).toBeCloseTo(14, 3);
  });

  it('hold a tail exactly as loosely as the correction undoes where the cutter stood too shallow', () => {
    const [, spec, cutter] = CASES[0] as (typeof CASES)[number];
    const joint = laidOut(spec, cutter);
    const shallow = 0.6;
    const depth = joint.depth - shallow;
    const looseness = 2 * shallow * Math.tan((8 * Math.PI) / 180);
    const sockets = cutSockets(joint, cutter, depth);
    const { passes } = routerCut(joint, cutter, 6);
    // Laid in from above with its end on the sockets' bottom; near the pin board's end, clear of the rounds.
    const tails = cutTails(joint, cutter, passes, depth)
      .intersect(box([0, 0, shallow + 0.001], [joint.width, 3, joint.depth - 0.001]))
      .translate([0, 0, -shallow])
      .mirror([0, 0, 1]);
    for (const side of [-1, 1]) {
      expect(overlaps(sockets, tails.translate([side * (looseness / 2 - 0.002), 0, 0]))).toBe(false);
      expect(overlaps(sockets, tails.translate([side * (looseness / 2 + 0.002), 0, 0]))).toBe(true);
    }
    const next = correctDepth({ angle: 8, depth }, { looseness });
    expect(next.ok && next.value.depth).toBeCloseTo(joint.depth, 9);
  });
});
