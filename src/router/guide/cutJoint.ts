import type { Joint } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { accept, type Complaint, type Result, refuse, under } from '../../units/complaint.ts';
import { roundDown } from '../../units/epsilon.ts';
import { checkBar, type FingerCut, fingerCut } from '../fingers/fingerCut.ts';
import { BUSH_ROOM } from '../limits/checkBush.ts';
import type { Cutting } from '../limits/cutting.ts';
import { NO_OVERHANG, type Overhang, type RouterCut, routerCut, tailsByHand } from '../passes/routerCut.ts';
import { checkStraight, defaultStraight } from '../passes/straightPasses.ts';
import { type GuideBoard, guideBoard } from './guideBoard.ts';

/** How one corner is cut, and the guides to make for it. */
export interface JointCut {
  readonly guided: RouterCut;
  /** One for each board; none where no bush is given, nor for a board that is cut by hand throughout. */
  readonly guides: readonly GuideBoard[];
  /** How it is cut along fingers; absent without those. */
  readonly fingers?: FingerCut;
}

/**
 * The passes and the guides for a joint that was laid out for a cutter.
 * @param cutting one that `checkCutting` accepts
 * @param overhang where the tail board is wider than the pin board
 * @returns the cut, or which of the tools do not suit this joint; places start with `cutter` or `fingers`
 */
export const cutJoint = (
  joint: Joint,
  cutting: Cutting,
  overhang: Overhang = NO_OVERHANG,
): Result<JointCut> => {
  const { cutter, fingers } = cutting;
  const open = kindOf(joint).sockets === 'open';
  const pinKey = open && cutting.pinBush !== undefined ? 'pinBush' : 'bush';
  const straight = cutting.straight ?? straightFor(joint, cutting);
  const wrong: Complaint[] = open ? checkStraight(joint, straight) : [];
  if (wrong.length > 0) return refuse(...under(['cutter'], wrong));
  const guided = routerCut(joint, cutter, straight, overhang);
  /** The least bush to try: it passes all that runs in it, and a straight cutter that is not named stays as it is. */
  const leastBush = {
    bush: Math.max(cutter.diameter, open && pinKey === 'bush' ? straight : 0),
    pinBush: cutting.straight ?? defaultStraight(joint, cutter) + BUSH_ROOM,
  };
  const guides: GuideBoard[] = [];
  for (const [board, key] of [
    ['tail', 'bush'],
    ['pin', pinKey],
  ] as const) {
    const size = cutting[key];
    if (size === undefined || (board === 'tail' && tailsByHand(guided))) continue;
    const guide = guideBoard(joint, cutter, guided, board, size, key, leastBush[key]);
    if (guide.ok) guides.push(guide.value);
    else wrong.push(...guide.complaints);
  }
  const along = fingers && fingerCut(joint, cutter, fingers, straight, cutting.pinBush ?? cutting.bush);
  const complaints = [
    ...under(['cutter'], wrong),
    ...(fingers && along ? checkBar(along.setting, fingers) : []),
  ];
  return complaints.length > 0
    ? refuse(...complaints)
    : accept({ guided, guides, ...(along && { fingers: along }) });
};

/** The straight cutter that is taken where none is named: one that passes the sockets, and its bush. */
const straightFor = (joint: Joint, { cutter, pinBush }: Cutting): number =>
  pinBush === undefined
    ? defaultStraight(joint, cutter)
    : Math.min(defaultStraight(joint, cutter), Math.max(1, roundDown(pinBush - BUSH_ROOM, 1)));
