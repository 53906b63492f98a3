import { describe, expect, it } from 'vitest';
import { CHEST, halfpin } from './program.ts';

const json = (...args: string[]) => JSON.parse(halfpin(args).out);

/** Every number in a value. */
const numbersIn = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(numbersIn)
      : [];

describe('lay --json', () => {
  it('gives one corner in mm, every key of its shape, every number to 0.0001', () => {
    // Through, 60 wide, boards of 10 and 8, slope 1:4, two tails, pins of 6: tails (60 - 3 x 6) / 2 = 21 at the tip,
    // and 8/4 = 2 less on either side at the base.
    const { status, out, err } = halfpin([
      ...['lay', '--json', '--name', 'Tray', '--kind', 'through', '--width', '60', '--tail-board', '10'],
      ...['--pin-board', '8', '--slope', '1:4', '--tails', '2', '--pin', '6'],
    ]);
    expect([status, err]).toEqual([0, '']);
    expect(JSON.parse(out)).toEqual({
      joints: [
        {
          name: 'Tray',
          kind: 'through',
          width: 60,
          depth: 8,
          // atan(1/4) is 14.0362 degrees.
          slope: { run: 4, degrees: 14.0362 },
          tailBoard: { thickness: 10, lap: 0 },
          pinBoard: { thickness: 8, lap: 0 },
          shoulder: { lower: 0, upper: 0 },
          tails: [
            { tip: [6, 27], base: [8, 25] },
            { tip: [33, 54], base: [35, 52] },
          ],
          pins: [
            { narrow: [0, 6], wide: [0, 8], half: true },
            { narrow: [27, 33], wide: [25, 35], half: false },
            { narrow: [54, 60], wide: [52, 60], half: true },
          ],
          gauges: { tailBoard: 8, pinBoardFace: 10, pinBoardEnd: 8 },
          dividers: { from: 6, downFrom: 54, step: 27 },
          // Four sides, each sqrt(8² + 2²) = 8.2462 long and 10 wide.
          glueArea: 329.8485,
          // One tail of 60 - 12, three of (60 - 24) / 3.
          alternatives: [
            { tails: 1, tip: 48 },
            { tails: 3, tip: 12 },
          ],
          advice: ["1:4 is steeper than 1:5: the short grain at the tails' corners may break off"],
        },
      ],
    });
  });

  it('stays in mm where lengths are typed and shown in inches', () => {
    // A. G. Compton, First Lessons in Wood-Working (1888), fig. 52: five equal tails and four equal pins, end spaces half
    // as wide as a pin, fill 5 11/16 in.
    const { joints } = json(
      ...['lay', '--json', '--kind', 'through', '--width', '5-11/16in', '--tail-board', '7/16in'],
      ...['--pin-board', '7/16in', '--tails', '5'],
    );
    expect(joints[0].width).toBe(144.4625);
    expect(joints[0].tailBoard).toEqual({ thickness: 11.1125, lap: 0 });
    expect(joints[0].tails).toHaveLength(5);
  });

  it('gives both corners of every drawer of a plan, in its order, and the family', () => {
    const { joints, family } = json('lay', CHEST, '--json');
    const names = ['Buttons', 'Thread', 'Ribbon', 'Patches', 'Notions', 'Cloth'];
    expect(joints.map(({ drawer, corner }: Record<string, string>) => `${drawer} ${corner}`)).toEqual(
      names.flatMap((name) => [`${name} front`, `${name} back`]),
    );
    for (const { corner, kind, tails, width, pins } of joints) {
      expect(kind).toBe(corner === 'front' ? 'lapped' : 'through');
      expect(pins).toHaveLength(tails.length + 1);
      expect(pins[0].narrow[0]).toBe(0);
      expect(pins.at(-1).narrow[1]).toBe(width);
    }
    const tips = joints
      .filter(({ corner }: Record<string, string>) => corner === 'front')
      .map(({ tails }: { tails: { tip: [number, number] }[] }) => {
        const widths = tails.map(({ tip }) => tip[1] - tip[0]);
        return widths.reduce((a, b) => a + b, 0) / widths.length;
      });
    expect(family.spread).toBeCloseTo(Math.max(...tips) / Math.min(...tips), 3);
    expect(family.target).toBeGreaterThan(2 * 5 - 1e-4);
    expect(family.target).toBeLessThan(4 * 5 + 1e-4);
    for (const value of numbersIn(joints)) expect(value).toBe(Math.round(value * 1e4) / 1e4);
  });
});

describe('parts --json', () => {
  it('gives every part with its sizes in mm', () => {
    const { parts } = json('parts', CHEST, '--json');
    // Buttons: an opening of 280 x 76 x 420 less 0.5 a side, 1 at the top and 12 behind. Front 20 thick with a lap of 5,
    // so joints 15 deep; sides 11 thick; the back's joints 11 deep; 3 mm more at each jointed end.
    expect(parts.slice(0, 4)).toEqual([
      expect.objectContaining({
        drawer: 'Buttons',
        part: 'front',
        count: 2,
        length: 279,
        width: 75,
        thickness: 20,
        roughLength: 279 + 2 * (15 + 3),
        species: 'Cherry, black',
      }),
      expect.objectContaining({
        drawer: 'Buttons',
        part: 'side',
        count: 4,
        length: 408 - 5,
        width: 75,
        thickness: 11,
        roughLength: 403 + 15 + 3 + 11 + 3,
        species: 'Ash, white',
      }),
      // From the groove's upper edge, 16, to 4 below the side's.
      expect.objectContaining({
        drawer: 'Buttons',
        part: 'back',
        count: 2,
        length: 279,
        width: 75 - 16 - 4,
        thickness: 11,
        roughLength: 279 + 2 * (11 + 3),
        species: 'Ash, white',
      }),
      // Wide: 279 - 22 + 10 - 1; deep: 408 - 20 + 5, under the back. Its species is not given.
      expect.objectContaining({
        drawer: 'Buttons',
        part: 'bottom',
        count: 2,
        length: 393,
        width: 266,
        thickness: 5,
        roughLength: 393,
        species: null,
      }),
    ]);
    expect(parts).toHaveLength(6 * 4);
  });
});
