import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Cutter,
  checkCutter,
  cutterSlope,
  diameterAt,
  leastPin,
} from '../../../src/router/limits/cutter.ts';
import { speak } from '../../../src/units/phrase.ts';

const HALF_INCH: Cutter = { diameter: 12.7, angle: 14, length: 12 };

const placesOf = (cutter: Cutter): unknown[] => {
  const checked = checkCutter(cutter);
  return checked.ok ? [] : checked.complaints.map(({ at }) => at.join('.'));
};

describe('a dovetail cutter', () => {
  it('cuts a slope of 1 in 1/tan of its angle', () => {
    // tan 45° = 1 and tan 26.565° = 1/2 (trigonometry); 1 in 7 is 8.13° (common practice).
    expect(cutterSlope({ angle: 26.56505117707799 }).run).toBeCloseTo(2, 12);
    expect(cutterSlope({ angle: 8.13 }).run).toBeCloseTo(7, 2);
  });

  it('cuts its whole diameter at its end and less by twice the slope for every mm above', () => {
    const steep = { diameter: 20, angle: 45 };
    expect(diameterAt(steep, 0)).toBe(20);
    expect(diameterAt(steep, 6)).toBeCloseTo(8, 12);
    expect(leastPin({ diameter: 12.7, angle: 8, length: 20 }, 15)).toBeCloseTo(
      12.7 - 30 * Math.tan((8 * Math.PI) / 180),
      12,
    );
  });

  it('is accepted with every key that is known of it', () => {
    expect(checkCutter({ ...HALF_INCH, neck: 6.35 })).toEqual({
      ok: true,
      value: { ...HALF_INCH, neck: 6.35 },
    });
  });

  it.each([0, 90, -8, 2.8, 22, Number.NaN])('is refused at an angle of %d degrees, by name', (angle) => {
    expect(placesOf({ ...HALF_INCH, angle })).toEqual(['angle']);
  });

  it('is refused for every wrong key at once', () => {
    expect(placesOf({ diameter: 0, angle: 0, length: 0 })).toEqual(['diameter', 'angle', 'length']);
  });

  it('is refused where it would run to a point before its cutting length ends', () => {
    // 12.7 mm at 14° narrows to 1 mm over (12.7 - 1) / (2 tan 14°) = 23.46 mm.
    expect(placesOf({ ...HALF_INCH, length: 23.46 })).toEqual([]);
    const long = checkCutter({ ...HALF_INCH, length: 23.5 });
    expect(long.ok ? [] : long.complaints.map(({ at, says }) => [at, speak(says, 'mm')])).toEqual([
      [
        ['length'],
        'a cutter of 12.7 mm at 14 degrees runs to a point: its cutting length is 23.5 mm, but may be at most 23.46 mm',
      ],
    ]);
  });

  it.each([0, 0.9, 12.7, 15, Number.NaN])('is refused with a neck of %d mm', (neck) => {
    expect(placesOf({ ...HALF_INCH, neck })).toEqual(['neck']);
  });

  it('says what the angle may be, where it is asked of nonsense', () => {
    const nonsense = checkCutter({ ...HALF_INCH, angle: 90 });
    // atan(1 / 20) is 2.8624 degrees, atan(1 / 2.5) 21.8014: the hundredths inside.
    expect(nonsense.ok ? '' : nonsense.complaints.map(({ says }) => speak(says, 'mm')).join()).toBe(
      "the cutter's angle is 90 degrees; it must be 2.87 to 21.80 degrees off its axis, such as 8 for a slope near 1:7 or 14 for 1:4",
    );
  });

  it('narrows towards its neck and never to nothing', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 70, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (diameter, angle, length) => {
          const cutter = { diameter, angle, length };
          if (checkCutter(cutter).ok) {
            expect(diameterAt(cutter, length)).toBeGreaterThanOrEqual(1 - 1e-6);
            expect(diameterAt(cutter, length / 2)).toBeLessThan(diameter);
          }
        },
      ),
    );
  });
});
