import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atMost, mm, say } from '../../units/phrase.ts';
import type { Fittings } from './fittings.ts';
import type { FittedDrawer } from './fittingsOf.ts';
import { homeOf, LEAST_STOP_DEPTH } from './stopsOf.ts';

/** Advice on fittings that can be made; places start in the drawer's entry. */
export const adviseFittings = (fittings: Fittings, drawer: FittedDrawer): Complaint[] => [
  ...beforeFlush(fittings, drawer),
  ...pastTheRail(fittings, drawer),
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
const pastTheRail = ({ stops }: Fittings, { spec: { space } }: FittedDrawer): Complaint[] => {
  const rail = space.kind === 'opening' ? space.rail : undefined;
  if (stops === undefined || rail === undefined) return [];
  const past = stops.behind + stops.depth - rail;
  return past > EPSILON
    ? [
        {
          at: ['stops', 'depth'],
          says: say`stops of ${mm(stops.depth)} from front to back, ${mm(stops.behind)} behind the front, extend ${mm(past)} past the rail under them, which is ${mm(rail)} wide`,
          ...(stops.depth - past > LEAST_STOP_DEPTH - EPSILON
            ? { hint: say`${atMost(stops.depth - past)}` }
            : { remedy: say`make the rail wider (cabinet: rails)` }),
        },
      ]
    : [];
};
