import { frontPlaces } from '../../drawer/arrangement/frontPlaces.ts';
import { madeOf } from '../../drawer/drawer.ts';
import type { Hole } from '../../drawer/fittings/fittings.ts';
import { setFittings } from '../../drawer/fittings/setFittings.ts';
import { entryName } from '../../drawer/made/built.ts';
import type { Project } from '../project.ts';

/**
 * What is fixed to each drawer that has fittings: mm from its front's lower left corner, lip included, seen from the front; of
 * stops, from the left side of the opening and back from the rail's front edge. Undefined where no drawer has any, or they cannot
 * be made.
 */
export const fittingsRecord = ({ set: { drawers } }: Pick<Project, 'set'>) => {
  const fitted = setFittings(drawers);
  const records = madeOf({ drawers }).flatMap((drawer) => {
    const { spec } = drawer;
    const fittings = fitted.ok ? fitted.value.of.get(drawer) : undefined;
    if (fittings === undefined) return [];
    const { pulls, lock, stops } = fittings;
    return [
      {
        drawer: entryName(spec),
        ...(spec.made && spec.name !== spec.made.name && { copies: spec.made.copies }),
        ...(pulls.length > 0 && {
          pulls: pulls.map(({ at: [x, y], outline, holes }) => ({
            x,
            y,
            width: outline.x1 - outline.x0,
            height: outline.y1 - outline.y0,
            holes: holes.map(holeRecord),
          })),
        }),
        ...(lock && {
          lock: {
            keyhole: holeRecord(lock.keyhole),
            pin: lock.pin,
            body: {
              x: lock.body.x0,
              y: lock.body.y0,
              width: lock.body.x1 - lock.body.x0,
              height: lock.body.y1 - lock.body.y0,
              depth: lock.depth,
            },
          },
        }),
        ...(stops && {
          stops: {
            fromLeft: stops.at,
            behind: stops.behind,
            width: stops.width,
            thickness: stops.thickness,
            depth: stops.depth,
            under: stops.under,
          },
        }),
      },
    ];
  });
  return records.length === 0 ? undefined : records;
};

const holeRecord = ({ at: [x, y], diameter }: Hole) => ({ x, y, diameter });

/** The middles of pulls and stops in each opening of the cabinet: mm from the lower left corner of its clear inside. */
export const placedFittings = ({ set: { drawers } }: Pick<Project, 'set'>) => {
  const fitted = setFittings(drawers);
  return new Map(
    drawers.flatMap((drawer) => {
      const fittings = fitted.ok ? fitted.value.of.get(drawer) : undefined;
      return fittings === undefined
        ? []
        : frontPlaces(drawer).map(({ x, y, opening }) => {
            const { pulls, stops } = fittings;
            return [
              opening,
              {
                ...(pulls.length > 0 && { pulls: pulls.map(({ at }) => ({ x: x + at[0], y: y + at[1] })) }),
                ...(stops && { stops: stops.at.map((at) => ({ x: opening.x + at, y: opening.y })) }),
              },
            ] as const;
          });
    }),
  );
};
