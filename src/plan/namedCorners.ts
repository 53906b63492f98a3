import type { LaidJoint, LaidOut } from './layOutPlan.ts';

/** Every corner by its name: `Buttons front`, `Buttons back`, and the names of those that belong to no drawer. */
export const namedCorners = ({ set, joints }: Pick<LaidOut, 'set' | 'joints'>): LaidJoint[] => [
  ...set.drawers.flatMap(({ spec: { name }, front, back }) => [
    { name: `${name} front`, joint: front },
    { name: `${name} back`, joint: back },
  ]),
  ...joints,
];
