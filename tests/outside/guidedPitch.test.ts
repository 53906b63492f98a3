import { describe, expect, it } from 'vitest';
import { layOut } from '../../src/joint/layOut.ts';
import { atPitch } from '../../src/router/limits/atPitch.ts';

describe("a machine's spacing", () => {
  // Joyce, The Technique of Furniture Making, chapter on dovetailing: machine-cut pins sit at a fixed pitch, centre to
  // centre, of 1/2, 3/4 or 1 in.
  it.each([12.7, 19.05, 25.4])('has its pins %d mm apart, centre to centre', (pitch) => {
    const spec = atPitch(
      { kind: 'lapped', width: 152.4, tailBoard: 10, pinBoard: 12, pin: 5, spacing: { kind: 'even' } },
      pitch,
    );
    const joint = spec.ok ? layOut(spec.value) : spec;
    const centres = joint.ok
      ? joint.value.pins.filter(({ half }) => !half).map(({ wide: [from, to] }) => (from + to) / 2)
      : [];
    expect(centres.length).toBeGreaterThan(3);
    centres.slice(1).forEach((centre, i) => {
      expect(centre - (centres[i] ?? 0)).toBeCloseTo(pitch, 9);
    });
  });
});
