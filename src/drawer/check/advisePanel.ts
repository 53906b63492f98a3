import type { Complaint } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { isSolidWood } from '../../wood/species.ts';
import type { DrawerSpec } from '../drawerSpec.ts';

/** Where a bottom that is laid in as a panel is of a wood that moves; the place starts in the drawer's entry. */
export const advisePanel = ({ bottom, stock }: DrawerSpec): Complaint[] => {
  const { species } = stock.bottom;
  return bottom.kind === 'solid' || species === undefined || !isSolidWood(species)
    ? []
    : [
        {
          at: ['bottom', 'kind'],
          says: say`a panel is taken not to move, but ${quote(species)} is solid wood: held on all sides, with its grain from front to back, it would burst the drawer`,
          hint: say`kind: solid, with its grain from side to side and room to move at the back`,
        },
      ];
};
