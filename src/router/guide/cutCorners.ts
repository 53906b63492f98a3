import type { Joint } from '../../joint/joint.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import type { Cutting } from '../limits/cutting.ts';
import type { Overhang } from '../passes/routerCut.ts';
import { cutJoint, type JointCut } from './cutJoint.ts';

/** How each joint is cut; none without a cutter. */
export type Cuts = ReadonlyMap<Joint, JointCut>;

/** A corner by its name. */
export interface NamedCorner {
  readonly name: string;
  readonly joint: Joint;
  /** Where its tail board is wider than its pin board; nowhere unless given. */
  readonly overhang?: Overhang;
}

/** The cut of every corner, as `cutJoint` makes it; complaints of one among several name it. */
export const cutCorners = (corners: readonly NamedCorner[], cutting: Cutting | undefined): Result<Cuts> => {
  const cuts = new Map<Joint, JointCut>();
  const wrong: Complaint[] = [];
  if (cutting === undefined) return accept(cuts);
  for (const { name, joint, overhang } of corners) {
    const cut = cutJoint(joint, cutting, overhang);
    if (cut.ok) cuts.set(joint, cut.value);
    else if (corners.length === 1) wrong.push(...cut.complaints);
    else wrong.push(...cut.complaints.map((each) => ({ ...each, says: say`${quote(name)}: ${each.says}` })));
  }
  return wrong.length > 0 ? refuse(...wrong) : accept(cuts);
};
