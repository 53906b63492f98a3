import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { mm, say } from '../../units/phrase.ts';
import type { DrawerSpec } from '../drawerSpec.ts';

/** Sizes that can be made but that hardly anybody means; places start in the drawer's entry. */
export const adviseSizes = ({ space, stock }: DrawerSpec): Complaint[] => {
  const { front, side } = stock;
  const { width, height } = space.kind === 'opening' ? space.opening : space.size;
  const what = space.kind === 'opening' ? 'an opening' : 'a drawer';
  return [
    ...(front.thickness < side.thickness - EPSILON
      ? [
          {
            at: ['stock', 'front', 'thickness'],
            says: say`a front of ${mm(front.thickness)} is thinner than its sides of ${mm(side.thickness)}: are the two swapped?`,
          },
        ]
      : []),
    ...(height > width + EPSILON
      ? [
          {
            at: [space.kind, 'height'],
            says: say`${what} ${mm(width)} wide and ${mm(height)} high is higher than it is wide: are the two swapped?`,
          },
        ]
      : []),
  ];
};
