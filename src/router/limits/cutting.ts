import { type Complaint, under } from '../../units/complaint.ts';
import { mm, say } from '../../units/phrase.ts';
import { lengthOrNaN } from '../../units/range.ts';
import { checkFingers, type Fingers } from '../fingers/fingers.ts';
import { checkBush } from './checkBush.ts';
import { type Cutter, checkCutter } from './cutter.ts';

/** What a maker cuts with. Lengths in mm. */
export interface Cutting {
  readonly cutter: Cutter;
  /** Diameter of the straight cutter for through pins; as thick as passes their sockets unless given. */
  readonly straight?: number;
  /** Outside diameter of the guide bush; without one there are no guides to be made. */
  readonly bush?: number;
  /** That of the bush for the straight cutter, where it is another. */
  readonly pinBush?: number;
  /** A guide whose fingers slide along a bar; without one there is none. */
  readonly fingers?: Fingers;
}

/**
 * Everything that can be judged of the tools before any joint; places lie under `cutter`: `diameter`, `angle`,
 * `length`, `neck`, `straight`, `bush` and `pinBush`; of fingers, under `fingers`.
 */
export const checkCutting = ({ cutter, straight, bush, pinBush, fingers }: Cutting): Complaint[] => {
  const checked = checkCutter(cutter);
  if (!checked.ok) return under(['cutter'], checked.complaints);
  const tools = under(
    ['cutter'],
    [
      ...(straight === undefined || (straight > 0 && Number.isFinite(straight))
        ? []
        : [
            {
              at: ['straight'],
              says: say`the straight cutter is ${lengthOrNaN(straight)}; it must be more than ${mm(0)}`,
            },
          ]),
      ...(bush === undefined ? [] : checkBush('bush', bush, 'dovetail', cutter.diameter)),
      ...(pinBush === undefined ? [] : checkBush('pinBush', pinBush, 'straight', straight ?? 0)),
    ],
  );
  const onFingers = fingers === undefined ? [] : checkFingers(fingers, cutter);
  // A bush that both share is complained of once.
  const shared = tools.some(({ at }) => at[1] === 'bush') && bush === fingers?.bush;
  return [...tools, ...(shared ? onFingers.filter(({ at }) => at[1] !== 'bush') : onFingers)];
};
