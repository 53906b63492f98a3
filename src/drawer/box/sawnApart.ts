import type { ResolvedSpec } from '../../joint/defaults.ts';
import type { Interval, Joint } from '../../joint/joint.ts';
import type { SawnLid } from '../drawerSpec.ts';

/** Where a lid is sawn off a box of this height, from and to in mm from the reference edge. */
export const sawCut = (height: number, { height: lid, kerf }: SawnLid): Interval => [
  height - lid - kerf,
  height - lid,
];

/** A box and its lid as two corners, one above the other: each has half pins of its own at its edges, and where it is sawn. */
export const sawnApart = (
  corner: ResolvedSpec,
  lid: SawnLid,
): { readonly box: ResolvedSpec; readonly lid: ResolvedSpec } => {
  const { shape } = corner;
  const { lower, upper } = shape.shoulder;
  const part = (width: number, shoulder: Joint['shoulder']): ResolvedSpec => ({
    ...corner,
    width,
    shape: { ...shape, shoulder },
  });
  return {
    box: part(sawCut(corner.width, lid)[0], { lower, upper: 0 }),
    lid: part(lid.height, { lower: 0, upper }),
  };
};
