import type { Complaint } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import { mm, type Phrase, say } from '../units/phrase.ts';
import { withDefaults } from './defaults.ts';
import { gauges } from './gauges.ts';
import type { Joint } from './joint.ts';
import type { JointSpec } from './jointSpec.ts';

/**
 * A rail over the drawers: each end is one lapped dovetail, let down into the top end of a carcase's side. The rail is the
 * tail board, its front edge the reference edge and its underside the inside face; the sides are the pin boards. Lengths in mm.
 */
export interface TopRail {
  /** From side to side, between the rail's shoulders. */
  readonly between: number;
  /** Of the sides, from front to back. */
  readonly sideWidth: number;
  /** How far the rail's front edge is behind those of the sides. */
  readonly setBack: number;
}

/** What a rail's boards are called. */
export const RAIL_BOARDS = { tail: 'rail', pin: 'side' } as const;

/** Wood in front of a tail that is less than this, in mm, breaks as its socket is chopped (common practice, from memory). */
const LEAST_FRONT = 6;

/** A rail's length, its tails and all. */
export const railLength = ({ between }: Pick<TopRail, 'between'>, { depth }: Pick<Joint, 'depth'>): number =>
  between + 2 * depth;

/** What keeps a rail that is laid out from being made; places are keys of its corner. */
export const checkRail = ({ sideWidth, setBack }: TopRail, joint: Joint, spec: JointSpec): Complaint[] => {
  const { chisel } = withDefaults(spec);
  const bases = joint.tails.map(({ base: [from, to] }) => to - from);
  const narrowest = Math.min(...bases);
  return [
    ...(setBack + joint.width <= sideWidth + EPSILON
      ? []
      : [
          {
            at: ['width'],
            says: say`a rail ${mm(joint.width)} wide${setBack > 0 ? say`, ${mm(setBack)} behind the sides' front edges,` : []} is wider than the sides, which are ${mm(sideWidth)} from front to back`,
            ...(sideWidth - setBack > EPSILON && { hint: say`${mm(sideWidth - setBack)}` }),
          },
        ]),
    ...(narrowest >= chisel - EPSILON
      ? []
      : [
          {
            at: ['width'],
            says: say`the rail's tail is ${mm(narrowest)} wide at its base, so the narrowest chisel, ${mm(chisel)} wide, does not enter its socket`,
            remedy: say`use a wider rail, narrower half pins or a gentler slope`,
          },
        ]),
  ];
};

/** Advice on a rail's proportions (from memory, common practice). */
export const adviseRail = ({ setBack }: TopRail, { pins: [front] }: Joint): Complaint[] => {
  const wood = setBack + (front === undefined ? 0 : front.narrow[1] - front.narrow[0]);
  return wood >= LEAST_FRONT - EPSILON
    ? []
    : [
        {
          at: ['halfPin'],
          says: say`only ${mm(wood)} of the sides are left in front of the rail's tails: they may break as the sockets are chopped`,
          hint: say`${mm(LEAST_FRONT - setBack)}`,
        },
      ];
};

/**
 * How a rail is cut and fitted, in the order of work.
 * @param routed whether a router cuts its tails and sockets
 */
export const railWork = (rail: TopRail, joint: Joint, routed = false): Phrase[] => [
  say`Cut the rail ${mm(railLength(rail, joint))} long: ${mm(rail.between)} between its shoulders, and a tail of ${mm(joint.depth)} at each end.`,
  say`Mark its front edge as the reference edge, and its underside as the inside face. Mark the sides’ front edges too.`,
  ...(routed ? byRouter(rail) : byHand(rail, joint)),
  say`The rail goes in from above only, both ends at once. Press it half way, pare what shines, and press it home.`,
  say`Nothing of the joint shows at the sides or in front. From above the tails show, unless a top covers them.`,
];

const byRouter = ({ setBack }: TopRail): Phrase[] => [
  say`Cut the rail’s tails and the sides’ sockets with the router, at its settings.`,
  ...(setBack > 0
    ? [
        say`On the sides every measure starts ${mm(setBack)} behind their front edges: lay the guide from a line squared there.`,
      ]
    : []),
];

const byHand = (rail: TopRail, joint: Joint): Phrase[] => {
  const { tailBoard, pinBoardFace } = gauges(joint);
  const back = rail.setBack > 0 ? say`, ${mm(rail.setBack)} behind the sides’ front edges` : [];
  return [
    say`Gauge the rail ${mm(tailBoard)} from its ends, all round. Saw both sides of each tail, then its shoulders.`,
    say`Clamp the carcase together, dry. Lay the rail on the sides’ top ends${back}. Set its shoulders at their inside faces.`,
    say`Scribe each socket from its own tail, or use the templates. Gauge the inside faces ${mm(pinBoardFace)} down from the top ends.`,
    say`Clamp a block against the outside face, to back up the lap of ${mm(joint.pinBoard.lap)}. Saw at a slant inside the lines.`,
    say`Chop from the top and from the inside face by turns, down to the gauge line. Stop at the lap.`,
  ];
};
