import type { Drawer } from '../../drawer/drawer.ts';
import type { DrawerCut } from '../../drawer/drawerCut.ts';
import type { JointCut } from '../../router/guide/cutJoint.ts';
import { byHand } from '../../router/guide/guideBoard.ts';
import { tailsByHand } from '../../router/passes/routerCut.ts';
import { type RouterSettingName, routerSettings } from '../../router/passes/routerSettings.ts';
import { formatNumber } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';

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
  unit: Notation,
): SettingRow[] => {
  const labels: readonly (readonly [RouterSettingName, string])[] = [
    ['tailDepth', 'tails: cutter set deep'],
    ['tailBush', 'tails: guide bush'],
    ['straight', 'pins: straight cutter'],
    ['pinDepth', 'pins: cutter set deep'],
    ['pinBush', 'pins: guide bush'],
    ['stop', `pins: cutter’s centre stops from ${rebate.sides > 0 ? 'shoulder' : 'end'}`],
    ['easeFromFace', 'tails’ inside arrises: round from face'],
    ['easeAtBase', '– in at the base'],
    ['easeAtTip', '– in at the tip'],
    ['leastPin', 'least pin, narrow'],
  ];
  const dovetail = ({ guided }: JointCut): string | undefined =>
    tailsByHand(guided) ? undefined : `${formatNumber(cutter.diameter, unit)} × ${cutter.angle}°`;
  const [atFront, atBack] = [routerSettings(front), routerSettings(back)];
  return [
    { label: 'dovetail cutter', front: dovetail(front), back: dovetail(back) },
    ...labels.map(([name, label]) => ({ label, front: atFront.get(name), back: atBack.get(name) })),
  ].filter((row) => row.front !== undefined || row.back !== undefined);
};

/** The router's steps for a drawer's corners, from gauged ends to joints ready to fit. */
export const routerSteps = ({ sizes: { rebate } }: Drawer, { front, back }: DrawerCut): string[] => {
  const guided = front.guides.length > 0;
  const by = (board: string) => (guided ? `by the ${board}s’ guide` : 'at the centres that are laid out');
  const round = front.guided.pinCut.kind === 'round';
  // A lip projects under the fence, which bears on the shoulder behind it.
  const inRebate = guided && rebate.sides > 0 ? ', its fence in the rebate' : '';
  const same = front.guided.depth === back.guided.depth || tailsByHand(back.guided);
  const again = same ? '' : ' Set the depth anew for the back corners.';
  return [
    `Router unplugged: fit the dovetail cutter${guided ? ' and its bush' : ''}; set its depth.`,
    'Cut a trial joint in scrap as thick; correct by it.',
    `${byHand(back.guided).length > 1 ? 'Outer spaces' : 'Lowest space'} of the sides’ back ends: saw and chop by hand; the cutter would run on into the sides.`,
    `Tails, ${by('tail')}: score lightly first, right to left; then full depth, left to right.${again}`,
    ...(round
      ? [
          `Front’s sockets, ${by('pin')}${inRebate}, same cutter: score first, then on to the stop and across along it.`,
        ]
      : []),
    `${round ? 'Back’s pins' : 'Pins'}, ${by('pin')}: the straight cutter${guided ? ' and its bush' : ''}, its own depth; a trial in scrap first.`,
    ...(round ? ['Round the tails’ inside arrises to the front’s sockets.'] : []),
  ];
};
