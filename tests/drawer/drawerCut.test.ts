import { expect, it } from 'vitest';
import { drawerCut } from '../../src/drawer/drawerCut.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { cutCorners } from '../../src/router/guide/cutCorners.ts';
import { value } from '../value.ts';
import { drawer } from './chest.ts';

const cutter = { diameter: 12.7, angle: 8, length: 20 };
const free = { halfPin: { lower: 6, upper: 6 }, spacing: { kind: 'even' } } as const;
const [routed] = value(
  layOutSet([drawer({ cutter, joint: { kind: 'lapped', lap: 5, ...free }, backJoint: free })]),
).drawers;
const [byHand] = value(layOutSet([drawer()])).drawers;
if (routed === undefined || byHand === undefined) throw new Error('both drawers can be made');

const cutsOf = (...joints: readonly (typeof routed.front)[]) =>
  value(
    cutCorners(
      joints.map((joint) => ({ name: 'Buttons', joint })),
      { cutter, straight: 8 },
    ),
  );

it('a drawer is cut by its cutter, each kind of corner in its own way', () => {
  const { front, back } = routed;
  const cuts = cutsOf(front, back);
  expect(drawerCut(routed, cuts)).toEqual({ cutter, front: cuts.get(front), back: cuts.get(back) });
  expect(drawerCut(routed, cuts)?.front).not.toEqual(drawerCut(routed, cuts)?.back);
});

it('a drawer made by hand, or one of whose corners is not cut, is cut in no way', () => {
  const { front, back } = routed;
  expect(drawerCut(byHand, cutsOf(front, back))).toBeUndefined();
  expect(drawerCut({ ...byHand, front, back }, cutsOf(front, back))).toBeUndefined();
  for (const cuts of [cutsOf(front), cutsOf(back)]) expect(drawerCut(routed, cuts)).toBeUndefined();
});
