import type { Unit } from '../../units/unit.ts';
import { cutterAngle, group, lengths, optional } from './leaves.ts';
import * as ranges from './ranges.ts';

/** What every corner of a plan is cut with. */
export const cutterSchema = (unit: Unit) => {
  const length = lengths(unit);
  const tool = length(ranges.TOOL);
  return group('{diameter: 12.7, angle: 8, length: 20}', {
    diameter: length(ranges.CUTTER).describe('Of the dovetail cutter at its end, where it is widest.'),
    angle: cutterAngle().describe('The angle of its side to its axis, in degrees: the slope of every tail.'),
    length: tool.describe('How far up its side it cuts: no joint may be deeper.'),
    ...optional({
      neck: tool.describe('Its diameter above the cutting length. Not checked unless given.'),
      straight: tool.describe(
        'Diameter of the straight cutter for through pins. As wide as their sockets allow unless given.',
      ),
      bush: tool.describe('Outside diameter of the guide bush. No guides are drawn unless given.'),
      pinBush: tool.describe(
        'Outside diameter of the guide bush for the straight cutter, if different. As `bush` unless given.',
      ),
    }),
  });
};
