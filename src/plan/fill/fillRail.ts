import { KIND_NAMES, kindOf } from '../../joint/kinds/kinds.ts';
import type { TopRail } from '../../joint/topRail.ts';
import { accept, type Complaint, type Place, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { mm, say } from '../../units/phrase.ts';
import { areListed, type WrittenPlan, type WrittenSingleCorner } from '../schema/planSchema.ts';

/** A rail over the drawers; undefined where the corner has none. */
export const fillRail = (
  corner: WrittenSingleCorner,
  cabinet: WrittenPlan['cabinet'],
  at: Place,
): Result<TopRail | undefined> => {
  const { rail } = corner;
  if (rail === undefined) return accept(undefined);
  const filled = { ...rail, setBack: rail.setBack ?? 0 };
  const wrong = [...contradicted(corner, at), ...besideCabinet(filled, cabinet, [...at, 'rail'])];
  return wrong.length > 0 ? refuse(...wrong) : accept(filled);
};

/** What a cabinet of the same plan says otherwise. */
const besideCabinet = (
  { between, setBack }: TopRail,
  cabinet: WrittenPlan['cabinet'],
  at: Place,
): Complaint[] =>
  cabinet === undefined
    ? []
    : [
        ...(Math.abs(between - cabinet.width) < EPSILON
          ? []
          : [
              {
                at: [...at, 'between'],
                says: say`the rail is ${mm(between)} between its shoulders, and the cabinet is ${mm(cabinet.width)} wide inside`,
                hint: say`${mm(cabinet.width)}`,
              },
            ]),
        ...(cabinet.rails?.top === undefined || setBack > 0
          ? []
          : [
              {
                at,
                says: say`the cabinet has a rail over its top row already (cabinet.rails.top), with tenons`,
                remedy: say`remove one of them`,
              },
            ]),
      ];

/** What a rail's end, one lapped dovetail, leaves no room for. */
const contradicted = (
  { kind, tails, graded, spacing = 'even', shoulder }: WrittenSingleCorner,
  at: Place,
): Complaint[] => {
  const count = areListed(tails) ? tails.lengths.length : (tails ?? 1);
  return [
    ...(kindOf({ kind }).sockets === 'stopped'
      ? []
      : [
          {
            at: [...at, 'kind'],
            says: say`a rail over the drawers is let into the sides' top ends behind a lap, so its corners are not ${kind}`,
            hint: say`${KIND_NAMES.find((name) => kindOf({ kind: name }).sockets === 'stopped') ?? ''}`,
          },
        ]),
    ...(count === 1
      ? []
      : [
          {
            at: [...at, 'tails'],
            says: say`a rail has one tail at each end, not ${count}`,
            hint: say`1`,
          },
        ]),
    ...(spacing === 'even' && graded === undefined
      ? []
      : [
          {
            at: [...at, spacing === 'even' ? 'graded' : 'spacing'],
            says: say`a rail has one tail at each end, which leaves nothing to space`,
            remedy: say`remove it`,
          },
        ]),
    ...(shoulder === undefined
      ? []
      : [
          {
            at: [...at, 'shoulder'],
            says: say`a rail's shoulders are square: it goes down between the sides' inside faces`,
            remedy: say`remove it`,
          },
        ]),
  ];
};
