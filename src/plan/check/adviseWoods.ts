import type { DrawerSpec } from '../../drawer/drawerSpec.ts';
import type { Complaint } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';
import { findWood, SOURCE_NOTES } from '../../wood/species.ts';
import type { Plan } from '../plan.ts';

/**
 * What is to be said of a plan's woods: whose figures are from memory, where sizes or gaps follow from them; and which
 * are not known at all, where no climate asks for their figures yet. Each wood once.
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

/** A panel may be of anything. */
const solidStocks = ({ stock: { front, side, back, bottom }, bottom: { kind } }: DrawerSpec) => [
  front,
  side,
  back,
  ...(kind === 'solid' ? [bottom] : []),
];
