import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOut } from '../../src/joint/layOut.ts';
import { tailOutline } from '../../src/joint/tailOutline.ts';
import { ordinarySpec } from './anySpec.ts';

describe('the outline of a tail', () => {
  it('goes from the base up to the tip, across, and back to the base', () => {
    expect(tailOutline({ tip: [5, 25], base: [6.5, 23.5] }, { depth: 12 })).toEqual([
      [6.5, 0],
      [5, 12],
      [25, 12],
      [23.5, 0],
    ]);
  });

  it('is the outline of its socket: the pins on either side meet it at every corner', () => {
    fc.assert(
      fc.property(ordinarySpec, (spec) => {
        const result = layOut(spec);
        if (!result.ok) return;
        const { tails, pins, depth } = result.value;
        tails.forEach((tail, i) => {
          const [below, above] = [pins[i], pins[i + 1]];
          expect(tailOutline(tail, { depth })).toEqual([
            [below?.wide[1], 0],
            [below?.narrow[1], depth],
            [above?.narrow[0], depth],
            [above?.wide[0], 0],
          ]);
        });
      }),
    );
  });
});
