import { describe, expect, it } from 'vitest';
import { dividers, gauges } from '../../src/joint/gauges.ts';
import { type Interval, pinLength } from '../../src/joint/joint.ts';
import { kindOf } from '../../src/joint/kinds/kinds.ts';
import { defaultLap } from '../../src/joint/kinds/lap.ts';
import { parseLength } from '../../src/units/parseLength.ts';
import { speak } from '../../src/units/phrase.ts';
import { parseSlope, type Slope } from '../../src/units/slope.ts';
import { adviceFor, jointOf } from '../joint/told.ts';
import { value } from '../value.ts';

const inches = (text: string): number => value(parseLength(text, 'in'));

const slopeOf = (text: string): Slope => value(parseSlope(text));

const size = ([from, to]: Interval): number => to - from;

// A. G. Compton, "First Lessons in Wood-Working" (1888), lesson XVII, fig. 52: a box side 5 11/16 in wide and 7/16 in
// thick with five equal tails, four equal pins and two end spaces half as wide as a pin.
describe('the box of "First Lessons in Wood-Working"', () => {
  const width = inches('5 11/16"');
  const pin = inches('1/4');
  const box = jointOf({
    kind: 'through',
    width,
    tailBoard: inches('7/16'),
    pinBoard: inches('7/16'),
    pin,
    halfPin: { lower: pin / 2, upper: pin / 2 },
    spacing: { kind: 'even', tails: 5 },
  });

  it('is 144.4625 mm wide, 91/16 of 25.4', () => {
    expect(box.width).toBeCloseTo(144.4625, 10);
  });

  it('has five equal tails, four equal pins and two end spaces half as wide', () => {
    const [first, ...rest] = box.tails.map(({ tip }) => size(tip));
    expect(rest).toHaveLength(4);
    for (const tail of rest) expect(tail).toBeCloseTo(first ?? Number.NaN, 10);
    const whole = box.pins.filter(({ half }) => !half);
    const halves = box.pins.filter(({ half }) => half);
    expect(whole).toHaveLength(4);
    expect(halves).toHaveLength(2);
    for (const { narrow } of whole) expect(size(narrow)).toBeCloseTo(6.35, 10);
    for (const { narrow } of halves) expect(size(narrow)).toBeCloseTo(3.175, 10);
  });

  it('is filled by the eleven spaces, at the tips and at the baseline', () => {
    const spaces = [...box.tails.map(({ tip }) => tip), ...box.pins.map(({ narrow }) => narrow)];
    expect(spaces).toHaveLength(11);
    expect(spaces.map(size).reduce((a, b) => a + b, 0)).toBeCloseTo(144.4625, 10);
    const atBaseline = [...box.tails.map(({ base }) => base), ...box.pins.map(({ wide }) => wide)];
    expect(atBaseline.map(size).reduce((a, b) => a + b, 0)).toBeCloseTo(144.4625, 10);
  });

  it('is stepped off in fifths of its width, whatever the pins: half pins at the ends make every pitch alike', () => {
    expect(dividers(box)?.step).toBeCloseTo(144.4625 / 5, 10);
    box.tails.forEach(({ tip: [from, to] }, i) => {
      expect((from + to) / 2).toBeCloseTo(((2 * i + 1) * 144.4625) / 10, 10);
    });
  });

  it('is gauged all round to the thickness of its boards', () => {
    const setting = (7 / 16) * 25.4;
    for (const gauge of Object.values(gauges(box))) expect(gauge).toBeCloseTo(setting, 10);
  });
});

// "Building Furniture" (2007), drawer article: a front 3/4 in thick, the gauge set to 9/16 in, leaves a lap of 3/16 in.
describe('the drawer front of "Building Furniture"', () => {
  const front = (lap: string) =>
    jointOf({
      kind: 'lapped',
      width: inches('4'),
      tailBoard: inches('1/2'),
      pinBoard: inches('3/4'),
      lap: inches(lap),
      spacing: { kind: 'even' },
    });

  it('3/4 in thick, with a lap of 3/16 in, sets the gauge to 9/16 in on both boards ends', () => {
    const { tailBoard, pinBoardEnd } = gauges(front('3/16'));
    expect(tailBoard).toBeCloseTo((9 / 16) * 25.4, 10);
    expect(pinBoardEnd).toBeCloseTo((9 / 16) * 25.4, 10);
  });

  it('may have the usual laps, 3/32 to 3/16 in, and the gauge takes the rest', () => {
    expect(gauges(front('3/32')).pinBoardEnd).toBeCloseTo((21 / 32) * 25.4, 10);
    expect(gauges(front('1/8')).pinBoardEnd).toBeCloseTo((5 / 8) * 25.4, 10);
  });

  it('is gauged on its inside face to the thickness of the side', () => {
    expect(gauges(front('3/16')).pinBoardFace).toBeCloseTo(12.7, 10);
  });
});

// G. Ellis, "Modern Practical Joinery" (1902), and P. A. Wells and J. Hooper, "Modern Cabinet Work" (1909), from memory: a
// double-lapped dovetail shows at one side a strip of end grain as thick as the lap; a secret mitred one nothing, its laps
// and shoulders meeting at 45 degrees in boards of one thickness, the pins cut first and the tails scribed from them.
describe('closed corners of the cabinet makers, 7/8 in thick with laps of 1/4 in', () => {
  const boards = {
    width: inches('6'),
    tailBoard: inches('7/8'),
    pinBoard: inches('7/8'),
    lap: inches('1/4'),
  };
  const double = jointOf({
    ...boards,
    kind: 'double-lapped',
    tailLap: inches('1/4'),
    spacing: { kind: 'even' },
  });
  const secret = jointOf({ ...boards, kind: 'secret-mitred', spacing: { kind: 'even' } });
  const orderOf = (joint: typeof double): string =>
    kindOf(joint)
      .work(joint, { tail: 'tail board', pin: 'pin board' })
      .map((phrase) => speak(phrase, 'in'))
      .join(' ');

  it('show a strip as wide as the lap, or nothing', () => {
    expect(kindOf(double).sideView(double)).toMatchObject({ reach: 6.35, tails: [], uprights: [6.35] });
    expect(kindOf(secret).sideView(secret)).toMatchObject({ tails: [], uprights: [] });
  });

  it('have pins and tails of 5/8 in, what the laps leave', () => {
    for (const joint of [double, secret]) {
      expect(joint.depth).toBeCloseTo(inches('5/8'), 9);
      expect(pinLength(joint)).toBeCloseTo(inches('5/8'), 9);
    }
  });

  it('are mitred at 45 degrees, over shoulders as wide as the lap', () => {
    expect(secret.mitre?.degrees).toBeCloseTo(45, 9);
    expect(secret.shoulder.lower).toBeCloseTo(inches('1/4'), 9);
    expect(orderOf(secret)).toContain('a shooting block of 45°');
  });

  it('are made pins first', () => {
    for (const joint of [double, secret]) {
      const order = orderOf(joint);
      expect(order.indexOf('Cut the pins first')).toBeGreaterThan(0);
      expect(order.indexOf('Scribe the tails round them')).toBeGreaterThan(
        order.indexOf('Cut the pins first'),
      );
    }
  });
});

describe('slopes in print', () => {
  // The tail's side leaves square by 1 for every so many of its length: over a board as thick as the run, by exactly 1.
  it.each([
    // G. A. Ross, "An Elementary Course in Woodwork", figs. 101-102: a taper of 1 in 4.
    ['1 in 4', 4],
    // Joyce, "The Technique of Furniture Making", on dovetailing: a rise of 1 in 5, 1 in 6, 1 in 7.
    ['1 in 5', 5],
    ['1 in 6', 6],
    ['1 in 7', 7],
    // "Building Furniture" (2007), drawer article: 1 in from the edge to 6 in, or 8 in, along.
    ['1 in 8', 8],
  ])('a taper of %s takes 1 from each side of a tail %d long', (text, run) => {
    const joint = jointOf({
      kind: 'through',
      width: 60,
      tailBoard: 8,
      pinBoard: run,
      slope: slopeOf(text),
      spacing: { kind: 'even' },
    });
    for (const { tip, base } of joint.tails) {
      expect(base[0] - tip[0]).toBeCloseTo(1, 12);
      expect(tip[1] - base[1]).toBeCloseTo(1, 12);
    }
  });

  const board = {
    kind: 'through',
    width: 100,
    tailBoard: 12,
    pinBoard: 12,
    spacing: { kind: 'even' },
  } as const;

  // Softwood 1 in 6, hardwood 1 in 8 (common practice); 1 in 5 to 1 in 7, Joyce.
  it.each(['1 in 5', '1 in 6', '1 in 7', '1 in 8'])(
    'of %s, as handbooks give them, need no advice',
    (text) => {
      expect(adviceFor({ ...board, slope: slopeOf(text) })).toEqual([]);
    },
  );

  // Ross's 1 in 4 is cut, but is steeper than what later books give.
  it('of 1 in 4 are cut, with a warning', () => {
    expect(adviceFor({ ...board, slope: slopeOf('1 in 4') })).toHaveLength(1);
  });
});

describe('a side that is to be planed flush', () => {
  // A household mechanics' manual, "Tables", figs. 577-583: sides 5/8 in thick, the cutting gauge set a shaving under the
  // side's thickness, so that the side stands proud.
  it('stands proud by the shaving that the cutting gauge is set under its thickness', () => {
    const shaving = 0.2;
    const joint = jointOf({
      kind: 'lapped',
      width: 120,
      tailBoard: inches('5/8'),
      pinBoard: inches('7/8'),
      proud: shaving,
      spacing: { kind: 'even' },
    });
    expect(gauges(joint).pinBoardFace).toBeCloseTo((5 / 8) * 25.4 - shaving, 10);
  });

  // Common practice: a side of 14 mm that is to come flush from the saw, the socket cut to exactly its thickness.
  it('comes flush from the saw where the gauge is set to its thickness', () => {
    const joint = jointOf({
      kind: 'lapped',
      width: 120,
      tailBoard: 14,
      pinBoard: 22,
      spacing: { kind: 'even' },
    });
    expect(gauges(joint).pinBoardFace).toBe(14);
  });
});

describe('what is chosen where nothing is given', () => {
  // Common practice: laps between a quarter and a third of the front; to the half millimetre, as the lap is rounded.
  it('is a lap of a quarter to a third of the front, for fronts of 12 mm and more', () => {
    for (let front = 12; front <= 40; front += 0.5) {
      expect(defaultLap(front)).toBeGreaterThanOrEqual(front / 4 - 0.25);
      expect(defaultLap(front)).toBeLessThanOrEqual(front / 3);
    }
  });

  // Common practice: tails two to four times the pins' narrow width.
  it('is tails of two to four pins, on boards of all usual widths and thicknesses', () => {
    for (const tailBoard of [9, 11, 14, 18])
      for (let width = 80; width <= 600; width += 7) {
        const { tails } = jointOf({
          kind: 'lapped',
          width,
          tailBoard,
          pinBoard: 20,
          spacing: { kind: 'even' },
        });
        const pins = size(tails[0]?.tip ?? [0, 0]) / (tailBoard / 2);
        expect(pins).toBeGreaterThanOrEqual(2);
        expect(pins).toBeLessThanOrEqual(4);
      }
  });
});
