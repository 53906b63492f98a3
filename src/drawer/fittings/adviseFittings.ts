import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atMost, mm, say } from '../../units/phrase.ts';
import type { Fittings } from './fittings.ts';
import type { FittedDrawer } from './fittingsOf.ts';
import { homeOf } from './stopsOf.ts';

/**
 * Advice on fittings that can be made; places start in the drawer's entry.
 * @param rail from front to back, in mm, where a cabinet is planned
 */
export const adviseFittings = (fittings: Fittings, drawer: FittedDrawer, rail?: number): Complaint[] => [
  ...beforeFlush(fittings, drawer),
  ...pastTheRail(fittings, drawer, rail),
];

/** Stops that do not leave the front flush, or its lip home. */
const beforeFlush = ({ stops }: Fittings, { spec, sizes }: FittedDrawer): Complaint[] => {
  if (stops === undefined) return [];
  const isLipped = spec.lip !== undefined;
  const home = homeOf(spec, sizes);
  const off = stops.behind - home;
  if (Math.abs(off) < EPSILON) return [];
  return [
    {
      at: ['stops', 'behind'],
      says:
        off > 0
          ? isLipped
            ? say`the front's lip meets the cabinet ${mm(off)} before the front meets these stops, so they do nothing`
            : say`the front lies ${mm(off)} behind the rail's front edge when it meets these stops`
          : isLipped
            ? say`the front's lip stays ${mm(-off)} off the cabinet when the front meets these stops`
            : say`the front stands ${mm(-off)} proud of the rail when it meets these stops`,
      hint: say`${mm(home)}`,
    },
  ];
};

/** Stops that the rail under them does not carry whole. */
const pastTheRail = (
  { stops }: Fittings,
  { spec: { space } }: FittedDrawer,
  rail: number | undefined,
): Complaint[] => {
  const isPlaced = space.kind === 'opening' && (space.places ?? []).length > 0;
  if (stops === undefined || rail === undefined || !isPlaced) return [];
  const past = stops.behind + stops.depth - rail;
  return past > EPSILON
    ? [
        {
          at: ['stops', 'depth'],
          says: say`stops of ${mm(stops.depth)} from front to back, ${mm(stops.behind)} behind the front, extend ${mm(past)} past the rail under them, which is ${mm(rail)} wide`,
          ...(stops.depth - past > LEAST_DEPTH
            ? { hint: say`${atMost(stops.depth - past)}` }
            : { remedy: say`make the rail wider (cabinet: rails)` }),
        },
      ]
    : [];
};

/** The least of a stop from front to back that holds a screw, in mm. */
const LEAST_DEPTH = 10;
