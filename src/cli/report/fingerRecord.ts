import type { DrawerSet } from '../../drawer/drawer.ts';
import { spacerList } from '../../drawer/spacers/spacerList.ts';
import { spacerPrices } from '../../drawer/spacers/spacerPrices.ts';
import type { FingerCut } from '../../router/fingers/fingerCut.ts';

/** How a corner is cut along fingers, as other programs read it: lengths in mm from the reference edge. */
export const fingerRecord = ({ setting, pins }: FingerCut) =>
  pins.kind === 'round'
    ? {
        fingers: { ...setting, sockets: pins.channels.map(([from, to]) => ({ from, to })) },
        way: pins.way,
      }
    : { fingers: setting, beyond: pins.beyond ?? null };

/** The spacers of a set, and its look with few of them; nothing without fingers. */
export const spacerRecord = (set: DrawerSet) =>
  set.asked === undefined
    ? {}
    : {
        spacers: spacerList(set),
        prices: spacerPrices(set).map(({ spacers, look }) => ({
          spacers,
          met: look !== undefined,
          spread: look?.spread ?? null,
          sum: look?.sum ?? null,
          changed: look?.changed ?? [],
        })),
      };
