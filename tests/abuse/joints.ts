import fc from 'fast-check';
import { blockPicture } from '../../src/joint/blockPicture.ts';
import type { Joint } from '../../src/joint/joint.ts';
import { jointRecord } from '../../src/joint/jointRecord.ts';
import { layOut } from '../../src/joint/layOut.ts';
import { listedSpec, ordinarySpec, wildSpec } from '../joint/anySpec.ts';
import { abuse, must, mustBeFinite, refused } from './abuse.ts';

const DUST = 1e-6;
const same = (a: number, b: number): boolean => Math.abs(a - b) <= DUST * Math.max(1, Math.abs(b));

/** What holds of every joint that can be cut: it fills its board, its tails narrow to their bases by the slope. */
export const mustBeSound = (joint: Joint): void => {
  const { width, depth, slope, tails, pins, pinBoard } = joint;
  mustBeFinite(jointRecord('any', joint, 'mm'));
  must(same(depth, pinBoard.thickness - pinBoard.lap), 'the depth is not what the lap leaves');
  must(pins.length === tails.length + 1, 'there is not one pin more than tails');
  must(
    pins.every(({ half }, i) => half === (i === 0 || i === tails.length)),
    'the half pins are not the outermost',
  );
  let mark = 0;
  pins.forEach(({ narrow, wide }, i) => {
    must(same(narrow[0], mark), `pin ${i} does not begin where the tail before it ends`);
    must(narrow[1] - narrow[0] >= 1 - 0.06, `pin ${i} is too narrow`);
    must(wide[0] <= narrow[0] + DUST && wide[1] >= narrow[1] - DUST, `pin ${i} is not wide at the bases`);
    mark = narrow[1];
    const tail = tails[i];
    if (tail === undefined) return;
    const { tip, base } = tail;
    must(same(tip[0], mark), `tail ${i} does not begin where the pin before it ends`);
    must(same(base[0] - tip[0], depth / slope.run), `tail ${i} does not follow the slope below`);
    must(same(tip[1] - base[1], depth / slope.run), `tail ${i} does not follow the slope above`);
    must(base[1] - base[0] >= 3 - DUST, `tail ${i} has too narrow a base`);
    mark = tip[1];
  });
  // Listed widths may miss the board's by what rounding to the hundredth leaves.
  must(Math.abs(mark - width) <= 0.05 + DUST, 'tails and pins do not fill the board');
  must(
    blockPicture(joint, 64).every((row) => [...row].length === 64),
    'the block drawing is not rectangular',
  );
  if (joint.advice.length > 0) refused(joint.advice);
};

export const joints = abuse(
  'wishes for one corner',
  1,
  fc.oneof(wildSpec, ordinarySpec, listedSpec),
  (spec) => {
    const laid = layOut(spec);
    if (!laid.ok) return refused(laid.complaints, 'numbers');
    mustBeSound(laid.value);
    return 'valid';
  },
);
