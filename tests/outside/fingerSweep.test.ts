import type { Manifold } from 'manifold-3d';
import { describe, expect, it } from 'vitest';
import type { Joint } from '../../src/joint/joint.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { type FingerCut, fingerCut } from '../../src/router/fingers/fingerCut.ts';
import type { Fingers } from '../../src/router/fingers/fingers.ts';
import type { Cutter } from '../../src/router/limits/cutter.ts';
import { layOutForCutter } from '../../src/router/limits/layOutForCutter.ts';
import { value } from '../value.ts';
import { box, hullOf, overlaps, Solid, sweep } from './guidedSolids.ts';

/** No ridge and no bite may be larger, in mm. */
const TRUE = 0.01;

const CUTTER: Cutter = { diameter: 12.7, angle: 8, length: 22 };
const FINGERS: Fingers = { together: 12, bush: 16 };
/** Of the straight cutter and its bush. */
const STRAIGHT = 8;
const PIN_BUSH = 11;

const WISHES: readonly [string, JointSpec][] = [
  [
    'a lapped corner of even tails',
    {
      kind: 'lapped',
      width: 96,
      tailBoard: 14,
      pinBoard: 20,
      lap: 5,
      spacing: { kind: 'even', tails: 3 },
    },
  ],
  [
    'a lapped corner of graded tails and wide pins',
    {
      kind: 'lapped',
      width: 150,
      tailBoard: 12,
      pinBoard: 18,
      lap: 6,
      pin: 14,
      spacing: { kind: 'graded', tails: 3, ratio: 0.8, from: 'edge' },
    },
  ],
  [
    'a through corner of listed tails',
    {
      kind: 'through',
      width: 120,
      tailBoard: 12,
      pinBoard: 14,
      pin: 9,
      halfPin: { lower: 7, upper: 10 },
      spacing: { kind: 'listed', tails: [25, 40, 20] },
    },
  ],
];

const laidOut = (wish: JointSpec): { joint: Joint; cut: FingerCut } => {
  const joint = value(layOutForCutter(wish, CUTTER, FINGERS));
  return { joint, cut: fingerCut(joint, CUTTER, FINGERS, STRAIGHT, PIN_BUSH) };
};

const between = (from: number, to: number, step: number): number[] => {
  const count = Math.ceil((to - from) / step - 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => (count <= 0 ? from : from + ((to - from) * i) / count));
};

/** Where the middle of a bush may go between two walls. */
const inChannel = ([from, to]: readonly [number, number], bush: number): number[] =>
  between(from + bush / 2, to - bush / 2, 2);

/** The tails of a layout by their tips and the slope alone, each fatter by `more` on both sides, on the board below. */
const wishedTails = ({ width, tailBoard, tails, depth }: Joint, more: number): Manifold => {
  const t = tailBoard.thickness;
  const loss = depth * Math.tan((CUTTER.angle * Math.PI) / 180);
  return tails.reduce(
    (sum: Manifold, { tip: [from, to] }) =>
      sum.add(
        hullOf(
          [0, t].flatMap((y): [number, number, number][] => [
            [from + loss - more, y, 0],
            [to - loss + more, y, 0],
            [to + more, y, depth],
            [from - more, y, depth],
          ]),
        ),
      ),
    box([0, 0, -20], [width, t, more]),
  );
};

/** The outer edges of each pair: it is as wide as two fingers together and the spacer between them. */
const edgesOf = ({ setting }: FingerCut): [number, number][] =>
  setting.pairs.map(({ from, spacer }) => [from, from + FINGERS.together + spacer]);

describe('a bush between the pairs of fingers', () => {
  it.each(WISHES)('lets the cutter under it leave exactly the tails: %s', (_, wish) => {
    const { joint, cut } = laidOut(wish);
    const { width, tailBoard, depth } = joint;
    const edges = edgesOf(cut);
    const past = CUTTER.diameter + FINGERS.bush;
    const channels: readonly (readonly [number, number])[] = [
      // Outside there is no finger, and the router runs as far out as it must.
      [-past, edges[0]?.[0] ?? 0],
      ...edges.slice(1).map(([from], i) => [edges[i]?.[1] ?? 0, from] as const),
      [edges.at(-1)?.[1] ?? 0, width + past],
    ];
    channels.slice(1, -1).forEach(([from, to], i) => {
      expect(to - from).toBeCloseTo(cut.setting.gaps[i] ?? 0, 9);
      expect(to - from).toBeGreaterThanOrEqual(FINGERS.bush - 1e-9);
    });
    const left = channels
      .flatMap((channel) => inChannel(channel, FINGERS.bush))
      .reduce(
        (board: Manifold, u) =>
          board.subtract(
            sweep(CUTTER, 0, depth + 0.5, [
              [u, -past],
              [u, tailBoard.thickness + past],
            ]),
          ),
        box([0, 0, -20], [width, tailBoard.thickness, depth]),
      );
    expect(left.subtract(wishedTails(joint, TRUE)).volume()).toBeLessThan(1e-6);
    expect(wishedTails(joint, -TRUE).subtract(left).volume()).toBeLessThan(1e-6);
  });

  it.each(WISHES.filter(([, { kind }]) => kind === 'lapped'))(
    'lets it clear the sockets in their channels, and no more: %s',
    (_, wish) => {
      const { joint, cut } = laidOut(wish);
      if (cut.pins.kind !== 'round') throw new Error('a lapped corner');
      const { width, depth, pinBoard } = joint;
      // Of the pin board, laid on its outside face, as far from its end as the rounds do not reach.
      const board = box([0, 0, -pinBoard.thickness], [width, 3, 0]);
      const left = cut.pins.channels
        .flatMap((channel) => inChannel(channel, FINGERS.bush))
        .reduce(
          (rest: Manifold, u) =>
            rest.subtract(
              sweep(CUTTER, -depth, depth + 0.5, [
                [u, -20],
                [u, 20],
              ]),
            ),
          board,
        );
      const sockets = (more: number) =>
        wishedTails({ ...joint, tailBoard: { thickness: 3, lap: 0 } }, more)
          .intersect(box([0, 0, more], [width, 3, depth + more]))
          .mirror([0, 0, 1]);
      expect(overlaps(left, sockets(-TRUE))).toBe(false);
      expect(board.subtract(sockets(TRUE)).subtract(left).volume()).toBeLessThan(3 * TRUE * width);
    },
  );

  it('runs between tapered fingers to through pins, their inside face as far beyond the mark as is told', () => {
    const [, wish] = WISHES[2] as (typeof WISHES)[number];
    const { joint } = laidOut(wish);
    const { width, pinBoard, tailBoard, tails } = joint;
    const lean = Math.tan((CUTTER.angle * Math.PI) / 180);
    for (const channel of [16, 18.5, 20]) {
      const { setting, pins } = fingerCut(
        joint,
        CUTTER,
        { ...FINGERS, through: { channel } },
        STRAIGHT,
        PIN_BUSH,
      );
      if (pins.kind !== 'straight' || pins.beyond === undefined) throw new Error('tapered fingers');
      const face = pins.beyond;
      const walls = setting.pairs.map(({ from, to, spacer }) => {
        // At the mark as wide as told and its spacer; wider beyond it, over the middle of the pair.
        const [middle, half] = [(from + to) / 2, (channel + spacer) / 2];
        return (y: number): [number, number] => [
          middle - half - lean * (face - y),
          middle + half + lean * (face - y),
        ];
      });
      // The bush touches a leaning wall square to it. Outward from the inside face the sockets grow, and so the channel.
      const reach = (PIN_BUSH / 2) * Math.hypot(1, lean);
      const turned = walls.map((wall) => (y: number): [number, number] => {
        const [from, to] = wall(-y);
        return [from + reach, to - reach];
      });
      const left = turned.reduce(
        (rest: Manifold, at) =>
          between(0, 1, 0.2).reduce((now: Manifold, part) => {
            const run = (y: number): [number, number] => {
              const [from, to] = at(y);
              return [from + (to - from) * part, y];
            };
            return now.subtract(
              sweep({ diameter: STRAIGHT, angle: 0 }, 0, tailBoard.thickness, [
                run(-STRAIGHT),
                run(pinBoard.thickness + STRAIGHT),
              ]),
            );
          }, rest),
        box([0, 0, -10], [width, pinBoard.thickness, tailBoard.thickness]),
      );
      const sockets = (more: number): Manifold =>
        Solid.union(
          tails.map(({ tip: [from, to] }) => {
            const loss = pinBoard.thickness * lean;
            return hullOf(
              [more, tailBoard.thickness + 1].flatMap((z): [number, number, number][] => [
                [from + loss + more, 0, z],
                [to - loss - more, 0, z],
                [to - more, pinBoard.thickness, z],
                [from + more, pinBoard.thickness, z],
              ]),
            );
          }),
        );
      expect(overlaps(left, sockets(TRUE))).toBe(false);
      const whole = box([0, 0, -10], [width, pinBoard.thickness, tailBoard.thickness]);
      expect(whole.subtract(sockets(-TRUE)).subtract(left).volume()).toBeLessThan(1e-6);
    }
  });
});
