import type { DrawerSet } from '../../drawer/drawer.ts';
import { spacerList } from '../../drawer/spacers/spacerList.ts';
import type { SpacerPrice } from '../../drawer/spacers/spacerPrices.ts';
import { gapBlock, SPACER_TOLERANCE, spacersToCut } from '../../drawer/spacers/spacersToCut.ts';
import type { FingerCut } from '../../router/fingers/fingerCut.ts';

/** How a corner is cut along fingers, as other programs read it: lengths in mm from the reference edge. */
export const fingerRecord = ({ setting, pins }: FingerCut) =>
  pins.kind === 'round'
    ? {
        fingers: { ...setting, sockets: pins.channels.map(([from, to]) => ({ from, to })) },
        way: pins.way,
      }
    : { fingers: setting, beyond: pins.beyond ?? null };

/** The spacers of a set, and its look with few of them, which `spacerPrices` finds; nothing without fingers. */
export const spacerRecord = (set: DrawerSet, prices: readonly SpacerPrice[]) =>
  set.asked === undefined
    ? {}
    : {
        spacers: spacerList(set),
        prices: prices.map(({ spacers, look }) => ({
          spacers,
          met: look !== undefined,
          spread: look?.spread ?? null,
          sum: look?.sum ?? null,
          changed: look?.changed ?? [],
        })),
      };

/** The spacers of a set as parts to cut, one spare among them, and its gap block; nothing without fingers. */
export const spacerPartsRecord = (set: DrawerSet) => {
  if (set.asked === undefined) return {};
  const block = gapBlock(set);
  return {
    spacers: spacersToCut(set).map((group) => ({ ...group, tolerance: SPACER_TOLERANCE })),
    ...(block !== undefined && { gapBlock: block }),
  };
};
