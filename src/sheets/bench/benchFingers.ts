import type { Drawer } from '../../drawer/drawer.ts';
import type { DrawerCut } from '../../drawer/drawerCut.ts';
import type { FingerCut } from '../../router/fingers/fingerCut.ts';
import type { SocketWay } from '../../router/fingers/socketWay.ts';
import { isAlongFingers, type JointCut } from '../../router/guide/cutJoint.ts';
import { tailsByHand } from '../../router/passes/routerCut.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { finest, type Notation } from '../../units/notation.ts';
import type { SettingRow } from './benchRouter.ts';

/** The places of a drawer's settings in the order in which the fingers of its set are set, the first of them 1. */
export interface SettingPlaces {
  readonly front?: number;
  readonly back?: number;
  /** How many settings the set has. */
  readonly of: number;
}

/** Settings of the fingers for a drawer; none without them. */
export const fingerRows = (
  { spec: { fingers } }: Drawer,
  { front, back }: DrawerCut,
  places: SettingPlaces | undefined,
  unit: Notation,
): SettingRow[] => {
  if (fingers === undefined) return [];
  const row = <T extends number | string>(
    label: string,
    value: (cut: FingerCut, corner: 'front' | 'back') => T | undefined,
  ): SettingRow => {
    const of = (cut: JointCut, corner: 'front' | 'back') =>
      cut.fingers !== undefined && isAlongFingers(cut) ? value(cut.fingers, corner) : undefined;
    return { label, front: of(front, 'front'), back: of(back, 'back') };
  };
  return [
    row('fingers: place in the order', (_, corner) => {
      const place = places?.[corner];
      return place === undefined ? undefined : `${place} of ${places?.of}`;
    }),
    row('– pairs', ({ setting: { pairs } }) => String(pairs.length)),
    row('– spacers', ({ setting: { pairs } }) => spacersOf(pairs, unit)),
    row('– guide bush for tails', () => fingers.bush),
    row('– guide bush for pins', ({ pins }) => pinsBush(pins, fingers.bush)),
    row('– inside face beyond their mark', ({ pins }) =>
      pins.kind === 'straight' ? pins.beyond : undefined,
    ),
  ].filter((each) => each.front !== undefined || each.back !== undefined);
};

const spacersOf = (pairs: FingerCut['setting']['pairs'], unit: Notation): string => {
  const shown = new Set(
    pairs.map(({ spacer }) => (spacer > 0 ? formatNumber(spacer, finest(unit)) : 'none')),
  );
  return shown.size === 1 ? [...shown].join() : 'by the rod';
};

const pinsBush = (pins: FingerCut['pins'], bush: number): number | undefined =>
  pins.kind === 'round'
    ? pins.way === 'none'
      ? undefined
      : bush
    : pins.beyond === undefined
      ? undefined
      : pins.bush;

/** What guides the cutter for a board of a corner along fingers; undefined where they do not. */
export const alongFingers = (
  board: 'tail' | 'pin',
  { fingers, guided }: JointCut,
  unit: Notation,
): string | undefined => {
  if (fingers === undefined || (board === 'tail' && tailsByHand(guided))) return undefined;
  if (board === 'tail') return 'along the fingers';
  const { pins } = fingers;
  if (pins.kind === 'round') return WAYS[pins.way];
  if (pins.beyond === undefined) return undefined;
  return `along the fingers’ tapered ends, inside face ${formatLength(Math.abs(pins.beyond), unit)} ${pins.beyond < 0 ? 'short of' : 'beyond'} their mark`;
};

const WAYS: Readonly<Record<SocketWay, string | undefined>> = {
  pairs: 'along pairs that are set over the pins',
  'half pitch': 'along the fingers as set for the tails, the front half a pitch along',
  channel: 'along the fingers’ channels, with the same spacers',
  none: undefined,
};

/** Setting the fingers, before anything is cut along them. */
export const FINGER_STEP =
  'Set the fingers by their rod, each pair from the reference edge, with its spacer. Put a support beyond the half spaces.';
