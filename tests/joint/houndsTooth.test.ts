import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blockPicture } from '../../src/joint/blockPicture.ts';
import { gauges, glueArea } from '../../src/joint/gauges.ts';
import { jointRecord } from '../../src/joint/jointRecord.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { tailOutlines } from '../../src/joint/tailOutline.ts';
import { jointsOf, toothedSpec } from './anySpec.ts';
import { adviceFor, against, jointOf } from './told.ts';

/** 152 = 8 + 40 + 8 + 40 + 8 + 40 + 8; tails 20 long at 1:5 lose 4 on either side, small pins 10 long gain 2. */
const spec = {
  kind: 'through',
  width: 152,
  tailBoard: 14,
  pinBoard: 20,
  slope: { run: 5 },
  pin: 8,
  spacing: { kind: 'even', tails: 3 },
  houndsTooth: {},
} as const satisfies JointSpec;

describe("a hound's tooth", () => {
  it('has a small pin in the middle of each tail: half a pin wide, at half depth wider by the slope', () => {
    const { tails, pins, smallPins } = jointOf(spec);
    expect(smallPins).toEqual([
      { narrow: [26, 30], wide: [24, 32], depth: 10 },
      { narrow: [74, 78], wide: [72, 80], depth: 10 },
      { narrow: [122, 126], wide: [120, 128], depth: 10 },
    ]);
    // Tails and pins are those of the plain joint.
    const { houndsTooth: _, ...plain } = spec;
    expect(jointOf(plain)).not.toHaveProperty('smallPins');
    expect({ tails, pins }).toEqual({ tails: jointOf(plain).tails, pins: jointOf(plain).pins });
  });

  it('has small pins as wide as the narrowest chisel where half a pin is less, or as wide as is given', () => {
    const narrow = (change: Partial<JointSpec>): number => {
      const [small] = jointOf({ ...spec, ...change } as JointSpec).smallPins ?? [];
      return small === undefined ? 0 : small.narrow[1] - small.narrow[0];
    };
    expect(narrow({ chisel: 6 })).toBeCloseTo(6, 9);
    expect(narrow({ pin: 5, halfPin: { lower: 8, upper: 8 } })).toBeCloseTo(3, 9);
    expect(narrow({ houndsTooth: { smallPin: 5.5 } })).toBeCloseTo(5.5, 9);
    // In inches to a mark of the rule: half of 5/16 is 5/32.
    expect(narrow({ notation: 'in/32', pin: (5 / 16) * 25.4 })).toBeCloseTo((5 / 32) * 25.4, 9);
  });

  it('lies in the middle of graded and of listed tails too', () => {
    const graded = jointOf({ ...spec, spacing: { kind: 'graded', tails: 2, ratio: 0.8, from: 'edge' } });
    const listed = jointOf({ ...spec, spacing: { kind: 'listed', tails: [50, 30, 40] } });
    for (const { tails, smallPins = [] } of [graded, listed]) {
      expect(smallPins).toHaveLength(tails.length);
      tails.forEach(({ tip }, i) => {
        const { narrow } = smallPins[i] ?? { narrow: [0, 0] };
        expect(narrow[0] - tip[0]).toBeCloseTo(tip[1] - narrow[1], 9);
      });
    }
  });

  it('keeps 3 mm of the tail on either side of a small pin at its floor: a tail of 18 = 4 + 2 (3 + 4)', () => {
    // 86 = 3 x 18 + 4 x 8.
    expect(against({ ...spec, width: 86 })).toEqual([]);
    expect(against({ ...spec, width: 85.9 })).toEqual([
      'tails: 3 tails are too many for 85.9 mm: each must keep 3 mm on either side of a small pin of 4 mm, so there may be 1 to 2; try 2',
    ]);
    expect(against({ ...spec, width: 33.9, spacing: { kind: 'even' } })).toEqual([
      'width: half pins of 8 mm and 8 mm leave 17.9 mm of 33.9 mm; one tail needs 18 mm for 3 mm on either side of a small pin of 4 mm; use narrower half pins, a gentler slope or a wider board',
    ]);
    expect(
      against({ ...spec, width: 51.9, spacing: { kind: 'listed', tails: [17.9, 18], pins: [0.5] } }),
    ).toEqual([
      'tails.0: tail 1 is 17.9 mm wide; it must be 18 mm to 5000 mm, for 3 mm on either side of a small pin of 4 mm',
      'pins.0: pin 1 is 0.5 mm; it must be 1 mm to 5000 mm',
    ]);
  });

  it('is refused where the chisel cannot enter, and where no tail shows at its end', () => {
    expect(against({ ...spec, houndsTooth: { smallPin: 2.9 } })).toEqual([
      'smallPin: the small pin, whose socket the narrowest chisel must enter, is 2.9 mm; it must be 3 mm to 152 mm',
    ]);
    expect(against({ ...spec, chisel: 6, houndsTooth: { smallPin: 5 } })).toEqual([
      'smallPin: the small pin, whose socket the narrowest chisel must enter, is 5 mm; it must be 6 mm to 152 mm',
    ]);
    expect(against({ ...spec, houndsTooth: { smallPin: Number.NaN } })[0]).toContain('is not a number');
    for (const kind of ['lapped', 'double-lapped'] as const)
      expect(against({ ...spec, kind })).toEqual([
        `spacing: the tails of a ${kind} joint end behind a lap, where no small pin would show; try even, or choose a through joint`,
      ]);
  });

  it('advises against small pins that look like the others', () => {
    expect(adviceFor(spec)).toEqual([]);
    expect(adviceFor({ ...spec, houndsTooth: { smallPin: 8 } })).toEqual([
      'smallPin: small pins of 8 mm are no narrower than the pins of 8 mm: the joint looks like one of more tails; try 4mm, or use wider pins',
    ]);
  });

  it('adds the sides of its small pins to the glue: half as many again as those of the tails, half as long', () => {
    const { houndsTooth: _, ...plain } = spec;
    expect(glueArea(jointOf(spec))).toBeCloseTo(1.5 * glueArea(jointOf(plain)), 9);
    expect(gauges(jointOf(spec))).toEqual(gauges(jointOf(plain)));
  });

  it('is told to other programs', () => {
    const record = jointRecord('Box', jointOf(spec), 'mm');
    expect(record.smallPins?.[0]).toEqual({ narrow: [26, 30], wide: [24, 32], depth: 10 });
    expect(record.gauges).toEqual({
      tailBoard: 20,
      pinBoardFace: 14,
      pinBoardEnd: 20,
      tailBoardSmallPins: 10,
      pinBoardSmallPins: 10,
    });
  });

  it('is outlined with the sockets of its small pins cut out of the tails', () => {
    expect(tailOutlines(jointOf(spec))[0]).toEqual([
      [12, 0],
      [8, 20],
      [26, 20],
      [24, 10],
      [32, 10],
      [30, 20],
      [48, 20],
      [44, 0],
    ]);
  });

  it('shows its small pins in the block drawing: at the end, not at the base', () => {
    const [end = '', , , base = ''] = blockPicture(jointOf(spec), 152);
    // Half way down the first row of four both sides of a small pin lie 0.5 further out: from 25.5 to 30.5, on the lines of columns 25 and 30.
    expect(end.slice(20, 36)).toBe('█████░░░░░░█████');
    expect(base.slice(20, 36)).toBe('█'.repeat(16));
  });

  it('leaves, of any corner that can be cut, 3 mm of each tail beside each small pin, and never less', () => {
    fc.assert(
      fc.property(jointsOf(toothedSpec), ({ tails, smallPins = [], depth, slope }) => {
        expect(smallPins).toHaveLength(tails.length);
        tails.forEach(({ tip, base }, i) => {
          const { narrow, wide, depth: deep } = smallPins[i] ?? { narrow: [0, 0], wide: [0, 0], depth: 0 };
          expect(deep).toBeCloseTo(depth / 2, 9);
          expect(wide[1] - wide[0]).toBeCloseTo(narrow[1] - narrow[0] + depth / slope.run, 9);
          // Half way up the tail its side lies in the middle between tip and base.
          const [from, to] = [(tip[0] + base[0]) / 2, (tip[1] + base[1]) / 2];
          expect(wide[0] - from).toBeGreaterThan(3 - 1e-6);
          expect(to - wide[1]).toBeGreaterThan(3 - 1e-6);
          expect(narrow[1] - narrow[0]).toBeGreaterThan(1 - 1e-9);
        });
      }),
    );
  });
});
