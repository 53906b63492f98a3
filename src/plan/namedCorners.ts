import { sidesPastBack } from '../drawer/sidesPastBack.ts';
import type { NamedCorner } from '../guided/cutCorners.ts';
import type { LaidOut } from './layOutPlan.ts';

/** Every corner by its name: `Buttons front`, `Buttons back`, and the names of those that belong to no drawer. */
export const namedCorners = ({ set, joints }: Pick<LaidOut, 'set' | 'joints'>): NamedCorner[] => [
  ...set.drawers.flatMap(({ spec, front, back }) => [
    { name: `${spec.name} front`, joint: front },
    { name: `${spec.name} back`, joint: back, goesOn: sidesPastBack(spec) },
  ]),
  ...joints,
];
