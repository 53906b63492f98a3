import { mm, say } from '../../units/phrase.ts';
import { rise, type Slope } from '../../units/slope.ts';
import type { FingersAfter } from './correction.ts';

/**
 * What becomes of the fingers where one cutter cuts both boards, and its depth changes by e. Left where they are, they
 * leave every tail as wide at its base, and 2 e tan a wider at its end. Tails as wide as in the plan have a base narrower by
 * that, so pairs too, and spacers (P = t + D - 2 L tan a - B).
 * @param change e, in mm
 */
export const fingersAfterDepth = (change: number, slope: Slope): FingersAfter => {
  const wider = 2 * change * rise(slope);
  const by = mm(Math.abs(wider));
  const [more, less] = wider > 0 ? ['wider', 'narrower'] : ['narrower', 'wider'];
  const thinner = wider > 0 ? 'thinner' : 'thicker';
  return wider === 0
    ? { tails: 0, spacers: 0, because: say`Leave the fingers and their spacers where they are.` }
    : {
        tails: wider,
        spacers: -wider,
        because: say`Leave the fingers and their spacers where they are: every tail is then ${by} ${more}, and every pin as much ${less}. Or change the lap in the plan for the tail widths that it has now: every spacer is then ${by} ${thinner}, and every pair is set again by a new rod.`,
      };
};

/**
 * What becomes of tapered fingers where the pin board moves along them: by e, every socket changes by 2 e tan a.
 * @param beyond how far the inside face was beyond their mark, in mm
 * @param move how far the fingers move over the board towards its outside face, in mm
 */
export const fingersAfterMove = (beyond: number, move: number): FingersAfter => {
  const next = beyond - move;
  const place = say`${mm(Math.abs(next))} ${next < 0 ? 'short of' : 'beyond'} their mark`;
  return {
    beyond: next,
    because:
      move === 0
        ? say`Leave the fingers, their spacers and the pin board where they are, its inside face ${place}.`
        : say`Leave the fingers and their spacers where they are. Move the pin board ${mm(Math.abs(move))} towards their ${move > 0 ? 'narrow' : 'wide'} end: its inside face is then ${place}.`,
  };
};
