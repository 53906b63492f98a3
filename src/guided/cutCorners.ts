import { accept, type Complaint, type Result, refuse } from '../complaint.ts';
import type { Joint } from '../joint/joint.ts';
import { say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';
import { cutJoint, type JointCut } from './cutJoint.ts';
import type { Cutting } from './cutting.ts';

/** How each joint is cut; none without a cutter. */
export type Cuts = ReadonlyMap<Joint, JointCut>;

/** The cut of every corner, as `cutJoint` makes it; complaints of one among several name it. */
export const cutCorners = (
  corners: readonly { readonly name: string; readonly joint: Joint }[],
  cutting: Cutting | undefined,
): Result<Cuts> => {
  const cuts = new Map<Joint, JointCut>();
  const wrong: Complaint[] = [];
  if (cutting === undefined) return accept(cuts);
  for (const { name, joint } of corners) {
    const cut = cutJoint(joint, cutting);
    if (cut.ok) cuts.set(joint, cut.value);
    else if (corners.length === 1) wrong.push(...cut.complaints);
    else wrong.push(...cut.complaints.map((each) => ({ ...each, says: say`${quote(name)}: ${each.says}` })));
  }
  return wrong.length > 0 ? refuse(...wrong) : accept(cuts);
};
