import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Joint } from '../../src/joint/joint.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { layOut } from '../../src/joint/layOut.ts';
import { formatLength, nearestMark } from '../../src/units/formatLength.ts';
import type { Notation } from '../../src/units/notation.ts';
import { parseLength } from '../../src/units/parseLength.ts';
import { value } from '../value.ts';
import { ordinarySpec } from './anySpec.ts';
import { against } from './told.ts';

const MARKS = { in: 64, 'in/32': 32, 'in/16': 16, 'in/1000': 1000 } as const;
const notations = fc.constantFrom<keyof typeof MARKS>('in', 'in/32', 'in/16', 'in/1000');

/** A length as it is shown and typed back. */
const again = (mm: number, notation: Notation): number =>
  value(parseLength(formatLength(mm, notation), 'mm'));

const size = ([from, to]: readonly [number, number]): number => to - from;

/** A joint's own widths as a list, each rounded by itself, in a corner of its own notation or another. */
const listOf = (spec: JointSpec, joint: Joint, notation: Notation, corner = notation): JointSpec => {
  const [lower = 0, ...rest] = joint.pins.map(({ narrow }) => again(size(narrow), notation));
  const upper = rest.pop() ?? 0;
  return {
    ...spec,
    notation: corner,
    halfPin: { lower, upper },
    spacing: {
      kind: 'listed',
      tails: joint.tails.map(({ tip }) => again(size(tip), notation)),
      pins: rest,
      ...(corner !== notation && { notation }),
    },
  };
};

describe('a list of widths in inches', () => {
  // Wide enough that no rounded tail is narrower than can be cut, which is another matter.
  const roomy = fc
    .tuple(ordinarySpec, notations)
    .map(([spec, notation]) => ({
      notation,
      spec: { ...spec, halfPin: { lower: 8, upper: 8 }, pin: 6, notation },
    }))
    .filter(({ spec }) => {
      const laid = layOut(spec);
      return laid.ok && laid.value.tails.every(({ base }) => size(base) > 5);
    });

  it('fills the board it was told for, though each width is rounded by itself', () => {
    fc.assert(
      fc.property(roomy, fc.boolean(), ({ spec, notation }, inMm) => {
        const joint = value(layOut(spec));
        const listed = value(layOut(listOf(spec, joint, notation, inMm ? 'mm' : notation)));
        expect(listed.tails).toHaveLength(joint.tails.length);
        expect(listed.pins.at(-1)?.narrow[1]).toBe(joint.width);
        // The pins are as they were listed, and what was rounded off is shared by the tails.
        const off =
          (2 * joint.tails.length + 1) / (2 * MARKS[notation]) / joint.tails.length + 0.5 / MARKS[notation];
        listed.tails.forEach(({ tip }, i) => {
          expect(Math.abs(size(tip) - size(joint.tails[i]?.tip ?? [0, 0])) / 25.4).toBeLessThan(off + 1e-9);
        });
        expect(size(listed.pins.at(-1)?.narrow ?? [0, 0])).toBeCloseTo(again(8, notation), 6);
      }),
    );
  });

  it('that is told as differences between marks misses the board by no more than half a mark in all', () => {
    fc.assert(
      fc.property(roomy, ({ spec, notation }) => {
        const joint = value(layOut(spec));
        const widths = [...joint.pins.map(({ narrow }) => narrow), ...joint.tails.map(({ tip }) => tip)].map(
          ([from, to]) => nearestMark(to, notation) - nearestMark(from, notation),
        );
        const sum = widths.reduce((a, b) => a + b, 0);
        expect(sum).toBeCloseTo(nearestMark(joint.width, notation), 9);
      }),
    );
  });

  it('is refused where more is missing than rounding can have left', () => {
    const boards = {
      kind: 'through',
      width: 4 * 25.4,
      tailBoard: 12.7,
      pinBoard: 12.7,
      notation: 'in',
    } as const;
    const half = 25.4 / 128;
    const tails = (short: number): JointSpec => ({
      ...boards,
      pin: 6.35,
      // 2 tails of 1 5/8 in, a pin and two half pins of 1/4 in: five figures.
      spacing: { kind: 'listed', tails: [1.625 * 25.4 - short, 1.625 * 25.4] },
    });
    expect(against(tails(0))).toEqual([]);
    expect(against(tails(5 * half))).toEqual([]);
    expect(against(tails(5 * half + 0.01)).join()).toContain("less than the board's");
    expect(against({ ...tails(5 * half), notation: 'mm' }).join()).toContain("less than the board's");
    const among = (short: number): JointSpec => {
      const spec = tails(short);
      return { ...spec, notation: 'mm', spacing: { ...spec.spacing, notation: 'in' } } as JointSpec;
    };
    expect(against(among(5 * half))).toEqual([]);
    expect(against(among(5 * half + 0.01)).join()).toContain("less than the board's");
  });
});
