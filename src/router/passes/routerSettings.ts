import type { JointCut } from '../guide/cutJoint.ts';
import type { GuideBoard } from '../guide/guideBoard.ts';
import { tailsByHand } from './routerCut.ts';

/** Settings of a router for one corner, and how the tails are rounded to fit its round sockets. */
export type RouterSettingName =
  /** How deep the dovetail cutter is set for the tails, from the tail board's end. */
  | 'tailDepth'
  /** Outside diameter of the guide bush for the tails. */
  | 'tailBush'
  /** Diameter of the straight cutter that cuts the pins. */
  | 'straight'
  /** How deep the cutter is set for the pins: a straight one from the pin board's end, a dovetail one from its inside face. */
  | 'pinDepth'
  /** Outside diameter of the guide bush for the pins. */
  | 'pinBush'
  /** How far from the pin board's end, or from its rebate's shoulder, the cutter's centre stops. */
  | 'stop'
  /** Where on the tails' inside arrises the round begins, from the inside face, and how far in it ends at base and tip. */
  | 'easeFromFace'
  | 'easeAtBase'
  | 'easeAtTip'
  /** The least narrow width of a pin. */
  | 'leastPin';

/** The settings for one corner in mm, in the order of work; those that it does not need are left out. */
export const routerSettings = ({ guided, guides }: JointCut): ReadonlyMap<RouterSettingName, number> => {
  const { depth, leastPin, pinCut } = guided;
  const byHand = tailsByHand(guided);
  const bush = (board: GuideBoard['board']) => guides.find((guide) => guide.board === board)?.bush;
  const round = pinCut.kind === 'round' ? pinCut.socket : undefined;
  const straight = pinCut.kind === 'straight' ? pinCut : undefined;
  const settings: readonly (readonly [RouterSettingName, number | undefined])[] = [
    ['tailDepth', byHand ? undefined : depth],
    ['tailBush', bush('tail')],
    ['straight', straight?.diameter],
    ['pinDepth', straight?.depth ?? depth],
    ['pinBush', bush('pin')],
    ['stop', round?.stop],
    ['easeFromFace', round?.ease.fromFace],
    ['easeAtBase', round?.ease.atBase],
    ['easeAtTip', round?.ease.atTip],
    ['leastPin', byHand ? undefined : leastPin],
  ];
  return new Map(
    settings.flatMap(([name, value]): [RouterSettingName, number][] =>
      value === undefined ? [] : [[name, value]],
    ),
  );
};
