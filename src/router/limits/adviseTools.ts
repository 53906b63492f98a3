import type { Joint } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import type { Complaint } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';
import { noSocketWay, socketWay } from '../fingers/socketWay.ts';
import { adviseCutter } from './cautions.ts';
import type { TailTools } from './tailLimits.ts';

/** Advice on cutting this joint with these tools; places start with `cutter` or `fingers`. */
export const adviseTools = (joint: Joint, { cutter, fingers }: TailTools): Complaint[] => [
  ...adviseCutter(joint, cutter),
  ...(fingers !== undefined &&
  kindOf(joint).sockets !== 'open' &&
  socketWay(joint, cutter, fingers) === 'none'
    ? [
        {
          at: ['fingers', fingers.lapped === undefined ? 'together' : 'lapped'],
          says: noSocketWay(joint, cutter, fingers),
          remedy: say`cut the sockets along a guide board, or by hand`,
        },
      ]
    : []),
];
