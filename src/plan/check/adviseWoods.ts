import type { DrawerSpec } from '../../drawer/drawerSpec.ts';
import type { Complaint } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';
import { findWood, SOURCE_NOTES } from '../../wood/species.ts';
import type { Plan } from '../plan.ts';

/**
 * Advice on a plan's woods, each wood once: with a climate, whose figures are from memory; without one, which are not
 * known.
 */
export const adviseWoods = ({ drawers, climate, woods }: Plan): Complaint[] => {
  if (climate === undefined) {
    const names = new Set(drawers.flatMap(solidStocks).flatMap(({ species }) => species ?? []));
    return [...names].flatMap((name): Complaint[] => {
      const found = findWood(name, woods);
      return found.ok ? [] : found.complaints.map(({ says }) => ({ at: ['stock'], says }));
    });
  }
  const moving = drawers.flatMap(({ movement }) =>
    movement === undefined
      ? []
      : [
          movement.front,
          movement.side,
          movement.back,
          ...(movement.bottom.kind === 'solid' ? [movement.bottom] : []),
        ],
  );
  const names = new Set(moving.flatMap(({ wood }) => (wood.source === 'memory' ? [wood.name] : [])));
  return [...names].map((name) => ({
    at: ['stock'],
    says: say`the figures of ${name}, by which it moves, are ${SOURCE_NOTES.memory}`,
  }));
};

/** The boards of solid wood; a panel needs no known wood. */
const solidStocks = ({ stock: { front, side, back, bottom }, bottom: { kind } }: DrawerSpec) => [
  front,
  side,
  back,
  ...(kind === 'solid' ? [bottom] : []),
];
