import { describe, expect, it } from 'vitest';
import type { JointSpec } from '../../../src/joint/jointSpec.ts';
import { kindOf } from '../../../src/joint/kinds/kinds.ts';
import { speak } from '../../../src/units/phrase.ts';
import { jointOf } from '../told.ts';

/** 56 = 8 + 40 + 8: a tail 20 long at 1:5 with a small pin from 26 to 30, from 24 to 32 half way. */
const spec: JointSpec = {
  kind: 'through',
  width: 56,
  tailBoard: 14,
  pinBoard: 20,
  slope: { run: 5 },
  pin: 8,
  spacing: { kind: 'even', tails: 1 },
  houndsTooth: {},
};
const joint = jointOf(spec);
const { tail, pin } = kindOf(joint).marks(joint);
const { houndsTooth: _, ...plainSpec } = spec;
const plain = kindOf(joint).marks(jointOf(plainSpec));

/** What small pins add to a surface: lines, and outlines of waste. */
const added = (board: 'tail' | 'pin', i: number) => {
  const [marks, before] = [(board === 'tail' ? tail : pin)[i], plain[board][i]];
  return {
    surface: marks?.surface,
    lines: marks?.lines.slice(before?.lines.length).map(({ role, paths }) => [role, paths]),
    waste: marks?.waste.slice(before?.waste.length),
  };
};

describe('the marks of small pins', () => {
  it('are on both faces of the tail board: sloped from the end, to a floor half way down', () => {
    for (const [i, surface] of [
      [0, 'inside'],
      [2, 'outside'],
    ] as const)
      expect(added('tail', i)).toEqual({
        surface,
        lines: [
          [
            'slope',
            [
              [
                [0, 26],
                [10, 24],
              ],
              [
                [10, 32],
                [0, 30],
              ],
            ],
          ],
          [
            'square',
            [
              [
                [10, 24],
                [10, 32],
              ],
            ],
          ],
        ],
        waste: [
          [
            [0, 26],
            [10, 24],
            [10, 32],
            [0, 30],
          ],
        ],
      });
  });

  it('run square over the tail board’s end', () => {
    expect(added('tail', 1)).toEqual({
      surface: 'end',
      lines: [['square', [26, 30].map((u) => [0, 14].map((x) => [x, u]))]],
      waste: [
        [
          [0, 26],
          [0, 30],
          [14, 30],
          [14, 26],
        ],
      ],
    });
  });

  it('are on the pin board’s end from the outside arris, narrow, to half its depth, wide', () => {
    expect(added('pin', 1)).toEqual({
      surface: 'end',
      lines: [
        [
          'slope',
          [
            [
              [20, 26],
              [10, 24],
            ],
            [
              [10, 32],
              [20, 30],
            ],
          ],
        ],
        [
          'square',
          [
            [
              [10, 24],
              [10, 32],
            ],
          ],
        ],
      ],
      waste: [],
    });
    // The socket's waste goes round the small pin.
    expect(pin[1]?.waste[0]).toEqual([
      [0, 12],
      [20, 8],
      [20, 26],
      [10, 24],
      [10, 32],
      [20, 30],
      [20, 48],
      [0, 44],
    ]);
  });

  it('stand on the pin board’s outside face, in the waste of the socket, and not on its inside face', () => {
    expect(pin[2]?.waste.map((outline) => outline.map(([, u]) => u))).toEqual([
      [8, 26, 26, 8],
      [30, 48, 48, 30],
    ]);
    expect(added('pin', 2).lines).toEqual([['square', [26, 30].map((u) => [0, 14].map((x) => [x, u]))]]);
    expect(pin[0]).toEqual(plain.pin[0]);
  });

  it('show from the side as notches in the tails', () => {
    expect(kindOf(joint).sideView(joint).tails[0]).toContainEqual([10, 24]);
  });

  it('are beyond the shoulders of a mitred corner too', () => {
    const mitred = jointOf({ ...spec, width: 70, mitre: 'corner', shoulder: 'both', shoulderWidth: 7 });
    const marks = kindOf(mitred).marks(mitred);
    // The tail board's faces, its end, and the pin board's end and outside face: each bears the small pin and both shoulders.
    for (const { lines } of [...marks.tail, ...marks.pin.slice(1)])
      expect(lines.at(-1)?.paths.map((path) => path[0]?.[1])).toEqual([7, 63]);
    expect(marks.tail[1]?.waste).toContainEqual([
      [0, 33],
      [0, 37],
      [14, 37],
      [14, 33],
    ]);
  });
});

describe("the work of a hound's tooth", () => {
  const work = (wish: JointSpec) =>
    kindOf(wish)
      .work(jointOf(wish), { tail: 'side', pin: 'back' })
      .map((phrase) => speak(phrase, 'mm'));

  it('cuts the tails first, the small sockets in them next, and saws the small pins before chopping', () => {
    expect(work(spec)).toEqual([
      'Gauge the baselines all round.',
      'Gauge the small pins’ line, 10 mm from the side’s end on both faces, and on the back’s end from the inside face.',
      'Saw and chop the tails.',
      'Saw and chop the small sockets in the tails’ ends, down to that line and no further.',
      'Scribe the pins from the tails, or use the templates.',
      'Saw both sides of each small pin down to the baseline, right through the back: what lies behind it is waste.',
      'Saw the pins, chop the sockets.',
      'Beside the small pins chop from both faces; behind them pare down to their line.',
    ]);
    expect(work(plainSpec)).toEqual([]);
  });

  it('adds as many steps to that of mitred shoulders, which end it', () => {
    const shouldered = { ...spec, width: 70, mitre: 'corner', shoulder: 'lower', shoulderWidth: 14 } as const;
    const { houndsTooth, ...without } = shouldered;
    // Scribing becomes a step of its own.
    expect(work(shouldered)).toHaveLength(work(without).length + 5);
    expect(work(shouldered).at(-1)).toBe(work(without).at(-1));
  });

  it('sets the gauge to half the depth on both boards', () => {
    expect(
      kindOf(joint)
        .gauges(joint)
        .slice(2)
        .map(({ board, line, on, from, length }) => [board, line, on, from, length]),
    ).toEqual([
      ['tail', 'small pins', 'both faces', 'end', 10],
      ['pin', 'small pins', 'end', 'inside face', 10],
    ]);
  });
});
