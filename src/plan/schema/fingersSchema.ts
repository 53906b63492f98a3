import type { Unit } from '../../units/unit.ts';
import { cutterAngle, group, lengths, optional, wholeNumber } from './leaves.ts';
import * as ranges from './ranges.ts';

/** A guide whose fingers slide along a bar, for every corner of a plan. */
export const fingersSchema = (unit: Unit) => {
  const length = lengths(unit);
  const channel = length(ranges.TOGETHER);
  return group('{together: 20, bush: 16}', {
    together: length(ranges.TOGETHER).describe(
      'Width of a pair of fingers that is pushed together, outer edge to outer edge.',
    ),
    ...optional({
      bush: length(ranges.TOOL).describe(
        'Outside diameter of the guide bush that runs between the pairs. That of `cutter` unless given.',
      ),
      pairs: wholeNumber(ranges.PAIRS).describe(
        'The quantity of pairs, one for each tail of a corner. Not limited unless given.',
      ),
      bar: length(ranges.BAR).describe(
        "The most from the first pair's outer edge to the last's. Not limited unless given.",
      ),
      lapped: group('{channel: 30}', {
        channel: channel.describe('Width of the channel of a pair that is pushed together.'),
      }).describe('Another end of the same fingers, for lapped sockets. None unless given.'),
      through: group('{channel: 26, taper: 8}', {
        channel: channel.describe(
          "Width of the channel at the fingers' mark, of a pair that is pushed together.",
        ),
        ...optional({
          taper: cutterAngle().describe(
            "The angle of either side to the pair's middle, in degrees: the cutter's, which it is unless given.",
          ),
        }),
      }).describe('Another end of the same fingers, tapered, for through pins. None unless given.'),
    }),
  });
};
