import { describe, expect, it } from 'vitest';
import { layOut } from '../../../src/joint/layOut.ts';
import { pastTheEdges } from '../../../src/router/passes/pastTheEdges.ts';

describe('how far a cutter runs past the edges', () => {
  it('is what its half diameter takes beyond the base of a half pin', () => {
    const slope = { run: 1 / Math.tan((8 * Math.PI) / 180) };
    const laid = layOut({
      kind: 'through',
      width: 55,
      tailBoard: 11,
      pinBoard: 11,
      slope,
      pin: 9.62,
      halfPin: { lower: 6, upper: 7 },
      spacing: { kind: 'even', tails: 1 },
    });
    if (!laid.ok) throw new Error('this corner can be cut');
    const { lower, upper } = pastTheEdges(laid.value, { diameter: 12.7, angle: 8, length: 20 });
    // At the base, 11 mm from the tips, a half pin is wider by 11 tan 8 degrees = 1.546 mm; the cutter is 12.7 mm wide there.
    expect(lower).toBeCloseTo(12.7 - 6 - 1.546, 3);
    expect(upper).toBeCloseTo(12.7 - 7 - 1.546, 3);
  });
});
