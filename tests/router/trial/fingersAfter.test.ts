import { describe, expect, it } from 'vitest';
import { withoutKind } from '../../../src/joint/kinds/kinds.ts';
import { fingerSetting } from '../../../src/router/fingers/fingerSetting.ts';
import { pinsBeyond } from '../../../src/router/fingers/pinsBeyond.ts';
import { layOutForCutter } from '../../../src/router/limits/layOutForCutter.ts';
import { correctDepth } from '../../../src/router/trial/depthCorrection.ts';
import { fingersAfterDepth, fingersAfterMove } from '../../../src/router/trial/fingersAfter.ts';
import { correctGuide } from '../../../src/router/trial/guideCorrection.ts';
import { say, speak } from '../../../src/units/phrase.ts';
import { slopeOfDegrees } from '../../../src/units/slope.ts';
import { value } from '../../value.ts';
import { CUTTER, LAPPED } from '../example.ts';

const TAN = Math.tan((8 * Math.PI) / 180);
const SLOPE = slopeOfDegrees(8);

describe('after a trial joint, fingers and spacers', () => {
  it('left where they are, make every tail wider by 2 e tan a at a depth greater by e', () => {
    expect(fingersAfterDepth(0.7, SLOPE).tails).toBeCloseTo(1.4 * TAN, 12);
    expect(fingersAfterDepth(-0.7, SLOPE).tails).toBeCloseTo(-1.4 * TAN, 12);
    expect(fingersAfterDepth(0, SLOPE)).toMatchObject({ tails: 0, spacers: 0 });
  });

  it('are as much thinner where the plan with its new lap keeps its tails', () => {
    const spacerAt = (lap: number): number =>
      fingerSetting(value(layOutForCutter({ ...withoutKind(LAPPED), kind: 'lapped', lap }, CUTTER)), CUTTER, {
        together: 14,
        bush: 16,
      }).pairs[0]?.spacer ?? Number.NaN;
    expect(fingersAfterDepth(0.7, SLOPE).spacers).toBeCloseTo(spacerAt(4.3) - spacerAt(5), 9);
  });

  it('leave loose pins to the board, which moves towards the narrow end of the fingers', () => {
    const move = value(correctGuide({ slope: SLOPE, beyond: 1.35 }, { looseness: 0.2 }));
    // Every socket narrower by 0.2 mm: 2 e tan a.
    expect(move.fingers?.beyond).toBeCloseTo(1.35 - 0.1 / TAN, 9);
    expect(speak(move.fingers?.because ?? say``, 'mm')).toMatch(
      /^Leave the fingers .* Move the pin board 0\.71 mm towards their narrow end: its inside face is then 0\.64 mm beyond their mark\.$/u,
    );
    expect(fingersAfterMove(0.5, 0.8).beyond).toBeCloseTo(-0.3, 12);
    expect(speak(fingersAfterMove(0.5, 0.8).because, 'mm')).toContain('0.3 mm short of their mark');
  });

  it('stand for a channel that is narrower by what the sockets were too wide', () => {
    const fingers = { together: 14, bush: 16, through: { channel: 25 } };
    const before = pinsBeyond(fingers, CUTTER, 8, 16) ?? Number.NaN;
    const { fingers: after } = value(correctGuide({ slope: SLOPE, beyond: before }, { looseness: 0.2 }));
    const channelAt = (beyond: number): number => 25 + 2 * beyond * TAN;
    expect(channelAt(before) - channelAt(after?.beyond ?? Number.NaN)).toBeCloseTo(0.2, 9);
  });

  it('are not spoken of without fingers', () => {
    expect(value(correctDepth({ angle: 8, depth: 15 }, { looseness: 0.2 })).fingers).toBeUndefined();
    expect(value(correctGuide({ slope: SLOPE }, { looseness: 0.2 })).fingers).toBeUndefined();
  });
});
