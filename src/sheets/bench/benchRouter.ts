import type { Drawer } from '../../drawer/drawer.ts';
import type { DrawerCut } from '../../drawer/drawerCut.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import type { JointCut } from '../../router/guide/cutJoint.ts';
import { byHand } from '../../router/guide/guideBoard.ts';
import { tailsByHand } from '../../router/passes/routerCut.ts';
import { type RouterSettingName, routerSettings } from '../../router/passes/routerSettings.ts';
import type { Notation } from '../../units/notation.ts';
import { speak } from '../../units/phrase.ts';
import { alongFingers, FINGER_STEP } from './benchFingers.ts';

/** A setting for the front corners and for the back corners: a length in mm, or text. */
export interface SettingRow {
  readonly label: string;
  readonly front: number | string | undefined;
  readonly back: number | string | undefined;
}

/** Settings of router, cutters and guide bushes for a drawer; guide bushes only with guides. */
export const routerRows = (
  { sizes: { rebate } }: Drawer,
  { cutter, front, back }: DrawerCut,
): SettingRow[] => {
  const labels: readonly (readonly [RouterSettingName, string])[] = [
    ['tailDepth', 'tails: dovetail cutter’s depth'],
    ['tailBush', 'tails: guide bush'],
    ['straight', 'pins: straight cutter'],
    ['pinDepth', 'pins: cutter’s depth'],
    ['pinBush', 'pins: guide bush'],
    ['stop', `pins: cutter’s centre stops from ${rebate.sides > 0 ? 'shoulder' : 'end'}`],
    ['easeFromFace', 'tails’ inside arrises: round from inside face'],
    ['easeAtBase', '– in at the base'],
    ['easeAtTip', '– in at the tip'],
    ['leastPin', 'least pin width'],
  ];
  const ofDovetail = <T>({ guided }: JointCut, value: T): T | undefined =>
    tailsByHand(guided) && guided.pinCut.kind !== 'round' ? undefined : value;
  const dovetail = <T>(label: string, value: T) => ({
    label,
    front: ofDovetail(front, value),
    back: ofDovetail(back, value),
  });
  const [atFront, atBack] = [routerSettings(front), routerSettings(back)];
  return [
    dovetail('dovetail cutter', cutter.diameter),
    dovetail('– its angle', `${cutter.angle}°`),
    ...labels.map(([name, label]) => ({ label, front: atFront.get(name), back: atBack.get(name) })),
  ].filter((row) => row.front !== undefined || row.back !== undefined);
};

const EASE = 'Round the tails’ inside arrises to the front’s sockets';

/** The router's steps for a drawer's corners, from gauged ends to joints ready to fit. */
export const routerSteps = (drawer: Drawer, { front, back }: DrawerCut, unit: Notation): string[] => {
  const { rebate } = drawer.sizes;
  const guided = front.guides.length > 0;
  const fingered = front.fingers !== undefined;
  const by = (board: 'tail' | 'pin', cut: JointCut): string =>
    alongFingers(board, cut, unit) ??
    (cut.guides.length > 0 ? `by the ${board}s’ guide` : 'at the centres that are set out');
  const round = front.guided.pinCut.kind === 'round';
  // A lip projects under the fence, which bears on the shoulder behind it.
  const inRebate = guided && rebate.sides > 0 ? ', its fence in the rebate' : '';
  const alike = !round && front.guided.depth === back.guided.depth;
  const bush = guided || fingered ? ' and its guide bush' : '';
  const frontByHand = tailsByHand(front.guided);
  /** What is left of corners with an order of work of their own. */
  const rest = (end: 'front' | 'back'): string[] => {
    const work = kindOf(drawer[end]).work(drawer[end], {
      tail: 'side',
      pin: end,
      routed: true,
    });
    return work.length === 0
      ? []
      : [
          `Then the ${end} corners by hand.${end === 'front' && round ? ` ${EASE} before you fit them.` : ''}`,
          ...work.map((phrase) => speak(phrase, unit)),
        ];
  };
  return [
    ...(guided ? [`Make the guides, one for each board of a corner${fingered ? ' that has one' : ''}.`] : []),
    ...(fingered ? [FINGER_STEP] : []),
    `Unplug the router. Fit the dovetail cutter${bush}; set its depth.`,
    'Cut a trial joint in scrap of the same thickness. Correct the settings by it.',
    'Cut every part to its finished length.',
    `Saw and chop the ${byHand(back.guided).length > 1 ? 'half spaces' : 'lower half space'} of the sides’ back ends by their templates: the cutter would cut into the sides.`,
    ...(frontByHand
      ? []
      : [
          `${alike ? 'Tails' : 'Tails of the front corners'}, ${by('tail', front)}: score lightly first, right to left; then full depth, left to right.`,
        ]),
    ...(round
      ? [
          `Front’s sockets, ${by('pin', front)}${inRebate}, ${frontByHand ? 'while its end is whole' : 'same cutter and depth'}: score first, then in to the stop and across along it.`,
        ]
      : []),
    ...(alike || tailsByHand(back.guided)
      ? []
      : [
          `${fingered ? 'Set the fingers, and the' : 'Set the'} dovetail cutter’s depth for the back. Its tails, ${by('tail', back)}.`,
        ]),
    `${round ? 'Back’s pins' : 'Pins'}, ${by('pin', back)}: fit the straight cutter${bush}; set its own depth. Cut a trial in scrap first.`,
    ...(round && rest('front').length === 0 ? [`${EASE}.`] : rest('front')),
    ...rest('back'),
  ];
};
