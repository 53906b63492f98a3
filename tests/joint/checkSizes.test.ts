import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { against, jointOf } from './told.ts';

const through = {
  kind: 'through',
  width: 100,
  tailBoard: 10,
  pinBoard: 12,
  spacing: { kind: 'even' },
} as const satisfies JointSpec;
const lapped = { ...through, kind: 'lapped', pinBoard: 20 } as const satisfies JointSpec;

describe('what cannot be cut is refused with the range that can', () => {
  it.each<[string, JointSpec, string[]]>([
    ['no width', { ...through, width: 0 }, ["width: the boards' width is 0 mm; it must be 5 mm to 5000 mm"]],
    [
      'too much width',
      { ...through, width: 5000.1 },
      ["width: the boards' width is 5000.1 mm; it must be 5 mm to 5000 mm"],
    ],
    [
      'a width that is no number',
      { ...through, width: Number.NaN },
      ["width: the boards' width is not a number; it must be 5 mm to 5000 mm"],
    ],
    [
      'a tail board of paper',
      { ...through, tailBoard: 1.9 },
      ["tailBoard: the tail board's thickness is 1.9 mm; it must be 2 mm to 200 mm"],
    ],
    [
      'a pin board of stone',
      { ...through, pinBoard: 201 },
      ["pinBoard: the pin board's thickness is 201 mm; it must be 2 mm to 200 mm"],
    ],
    [
      'a chisel like a needle',
      { ...through, chisel: 0.4 },
      ['chisel: the narrowest chisel is 0.4 mm; it must be 0.5 mm to 60 mm'],
    ],
    [
      'a chisel like a spade',
      { ...through, chisel: 61 },
      ['chisel: the narrowest chisel is 61 mm; it must be 0.5 mm to 60 mm'],
    ],
    [
      'a pin under 1 mm',
      { ...through, pin: 0.9 },
      ['pin: the pin width is 0.9 mm; it must be 1 mm to 100 mm'],
    ],
    [
      'a pin wider than the board',
      { ...through, pin: 101 },
      ['pin: the pin width is 101 mm; it must be 1 mm to 100 mm'],
    ],
    [
      'half pins out of range',
      { ...through, halfPin: { lower: 0.5, upper: 120 } },
      [
        'halfPin: the lower half pin is 0.5 mm; it must be 1 mm to 100 mm',
        'halfPin: the upper half pin is 120 mm; it must be 1 mm to 100 mm',
      ],
    ],
    [
      'a tail board sunk in',
      { ...through, proud: -0.1 },
      ['proud: the amount proud is -0.1 mm; it must be 0 mm to 2.5 mm'],
    ],
    [
      'a tail board far out',
      { ...through, proud: 2.6 },
      ['proud: the amount proud is 2.6 mm; it must be 0 mm to 2.5 mm'],
    ],
    [
      'a slope too steep',
      { ...through, slope: { run: 2.4 } },
      ['slope: the slope is 1:2.4; it must be 1:2.5 to 1:20; try 1:7'],
    ],
    [
      'a slope too shallow',
      { ...through, slope: { run: 20.1 } },
      ['slope: the slope is 1:20.1; it must be 1:2.5 to 1:20; try 1:7'],
    ],
    [
      'a slope that is none',
      { ...through, slope: { run: 0 } },
      ['slope: the slope is 1:0; it must be 1:2.5 to 1:20; try 1:7'],
    ],
    [
      'a lap under 1 mm',
      { ...lapped, lap: 0.9 },
      ['lap: the lap is 0.9 mm; it must be 1 mm to 17 mm; try 5mm'],
    ],
    [
      'a lap that leaves no socket',
      { ...lapped, lap: 17.1 },
      ['lap: the lap is 17.1 mm; it must be 1 mm to 17 mm; try 5mm'],
    ],
    [
      'a lap thicker than the front',
      { ...lapped, lap: 25 },
      ['lap: the lap is 25 mm; it must be 1 mm to 17 mm; try 5mm'],
    ],
    [
      'a front too thin for the lap it gets when none is given',
      { ...lapped, pinBoard: 5 },
      ['lap: the lap is 3 mm; it must be 1 mm to 2 mm; try 2mm'],
    ],
    [
      'a front too thin for any lap',
      { ...lapped, pinBoard: 3.9 },
      ['pinBoard: the pin board is 3.9 mm thick; a lapped joint needs at least 4 mm; choose a through joint'],
    ],
  ])('%s', (_, spec, complaints) => {
    expect(against(spec)).toEqual(complaints);
  });
});

describe('the last that can be cut is cut', () => {
  it.each<[string, JointSpec]>([
    ['the widest board', { ...through, width: 5000 }],
    // Half pins of 1 and 1, a base of 3, and twice 2/20 for the slope: 5.2.
    [
      'the narrowest board that holds a tail',
      { ...through, width: 5.2, pinBoard: 2, slope: { run: 20 }, halfPin: { lower: 1, upper: 1 } },
    ],
    ['the thinnest boards', { ...through, tailBoard: 2, pinBoard: 2 }],
    ['the thickest boards', { ...through, width: 400, tailBoard: 200, pinBoard: 200 }],
    ['the narrowest chisel', { ...through, chisel: 0.5 }],
    ['the broadest chisel', { ...through, chisel: 60 }],
    ['the narrowest pins', { ...through, pin: 1 }],
    ['a quarter proud', { ...through, proud: 2.5 }],
    ['the steepest slope', { ...through, slope: { run: 2.5 } }],
    ['the shallowest slope', { ...through, slope: { run: 20 } }],
    ['the thinnest lap', { ...lapped, lap: 1 }],
    ['the shallowest sockets', { ...lapped, lap: 17 }],
    ['the thinnest lapped front', { ...lapped, pinBoard: 4, lap: 1 }],
  ])('%s', (_, spec) => {
    expect(against(spec)).toEqual([]);
  });

  it('a default that would not fit where it is not needed', () => {
    // Half of 40 is a pin of 20, wider than the board; but with one tail and half pins given, no pin is cut.
    const joint = jointOf({
      ...through,
      width: 15,
      tailBoard: 40,
      halfPin: { lower: 2, upper: 2 },
      spacing: { kind: 'even', tails: 1 },
    });
    expect(joint.tails).toEqual([{ tip: [2, 13], base: [3.5, 11.5] }]);
  });
});

describe('everything wrong is reported at once', () => {
  it('whatever else is wrong, with the widest range where the stock itself is wrong', () => {
    expect(
      against({
        kind: 'lapped',
        width: 0,
        tailBoard: 0,
        pinBoard: Number.NaN,
        lap: 300,
        slope: { run: 1 },
        pin: 0,
        halfPin: { lower: 0, upper: 9000 },
        proud: 99,
        chisel: 0,
        spacing: { kind: 'graded', tails: 0, ratio: 3, from: 'edge' },
      }),
    ).toEqual([
      "width: the boards' width is 0 mm; it must be 5 mm to 5000 mm",
      "tailBoard: the tail board's thickness is 0 mm; it must be 2 mm to 200 mm",
      "pinBoard: the pin board's thickness is not a number; it must be 2 mm to 200 mm",
      'chisel: the narrowest chisel is 0 mm; it must be 0.5 mm to 60 mm',
      'pin: the pin width is 0 mm; it must be 1 mm to 5000 mm',
      'halfPin: the lower half pin is 0 mm; it must be 1 mm to 5000 mm',
      'halfPin: the upper half pin is 9000 mm; it must be 1 mm to 5000 mm',
      'proud: the amount proud is 99 mm; it must be 0 mm to 50 mm',
      'slope: the slope is 1:1; it must be 1:2.5 to 1:20; try 1:7',
      'lap: the lap is 300 mm; it must be 1 mm to 197 mm',
      'tails: 0 is no number of tails; it must be a whole number, at least 1; remove it, to have the number chosen',
      'graded: the ratio from tail to tail is 3; it must be 0.5 to 2; try 0.9',
    ]);
  });

  it('and what was not given is not blamed for what was', () => {
    expect(against({ ...through, pin: 0 })).toHaveLength(1);
    expect(against({ ...lapped, tailBoard: 1e9, pinBoard: 1e9 })).toHaveLength(2);
    expect(against({ ...lapped, tailBoard: Number.NaN, pinBoard: Number.NaN })).toHaveLength(2);
  });

  const spoils = {
    width: { width: 1e9 },
    tailBoard: { tailBoard: -1 },
    pinBoard: { pinBoard: Number.NaN },
    chisel: { chisel: 0 },
    pin: { pin: 0 },
    halfPin: { halfPin: { lower: 3, upper: 0 } },
    proud: { proud: -1 },
    slope: { slope: { run: 0 } },
    lap: { lap: 0 },
    tails: { spacing: { kind: 'even', tails: 1.5 } },
  } as const;

  it('one complaint for each thing spoilt and none for the rest', () => {
    const keys = Object.keys(spoils) as (keyof typeof spoils)[];
    fc.assert(
      fc.property(fc.subarray(keys, { minLength: 1 }), (spoilt) => {
        const spec: JointSpec = Object.assign({ ...lapped }, ...spoilt.map((key) => spoils[key]));
        expect(
          against(spec)
            .map((line) => line.split(':')[0])
            .sort(),
        ).toEqual([...spoilt].sort());
      }),
    );
  });
});
