import type { BottomSeason } from '../wood/bottomSeason.ts';
import type { Climate, Seasonal } from '../wood/climate.ts';
import { type CornerSteps, cornerSteps } from '../wood/cornerSteps.ts';
import { sizesThroughYear } from '../wood/gapBand.ts';
import { type SawnWood, thicknessCoefficient, widthCoefficient } from '../wood/movement.ts';
import { bottomThroughYear } from './bottomDepth.ts';
import type { Hand } from './cornerLetters.ts';
import type { Drawer } from './drawer.ts';
import type { Movement } from './drawerSpec.ts';
import { type Gaps, gapsOf } from './gaps.ts';
import { type PartName, parts } from './partsList.ts';

/** One kind of part through the year. Lengths in mm; along the grain nothing moves. */
export interface PartSeason {
  readonly part: PartName;
  /** Which side it is, where a drawer's two differ. */
  readonly hand?: Hand;
  readonly count: number;
  readonly length: number;
  readonly width: Seasonal<number>;
  readonly thickness: Seasonal<number>;
  /** What it is made of; none for a panel, which does not move. */
  readonly stock: SawnWood | null;
}

/** A drawer through the year after its making. */
export interface DrawerSeason {
  readonly climate: Climate;
  readonly parts: readonly PartSeason[];
  /** Absent for a drawer without an opening. */
  readonly gaps?: Gaps;
  readonly bottom: BottomSeason;
  /** Steps at the front corners, planed flush when made; absent where a lip hides them. */
  readonly corners?: Pick<Seasonal<CornerSteps>, 'driest' | 'dampest'>;
}

/**
 * A drawer through the year after its making; absent where no climate is given.
 * @example
 * ```ts
 * for (const drawer of project.set.drawers) console.log(drawer.spec.name, drawerSeason(drawer)?.gaps?.leave);
 * ```
 */
export const drawerSeason = (drawer: Drawer): DrawerSeason | undefined => {
  const { spec, sizes } = drawer;
  const { movement } = spec;
  const bottom = bottomThroughYear(spec, sizes);
  if (movement === undefined || bottom === undefined) return undefined;
  const { climate } = movement;
  const gaps = gapsOf(spec, sizes);
  const steps = (to: number): CornerSteps =>
    cornerSteps(
      { ...movement.front, thickness: spec.stock.front.thickness },
      { ...movement.side, thickness: Math.max(sizes.wall.left, sizes.wall.right) },
      sizes.height,
      climate.making,
      to,
    );
  return {
    climate,
    parts: partSeasons(drawer, movement),
    ...(gaps && { gaps }),
    bottom,
    ...(spec.lip === undefined && {
      corners: { driest: steps(climate.driest), dampest: steps(climate.dampest) },
    }),
  };
};

const partSeasons = (drawer: Drawer, movement: Movement): PartSeason[] =>
  parts({ drawers: [drawer], advice: [] }).map(({ part, hand, count, length, width, thickness }) => {
    const stock = stockOf(part, movement);
    const through = (made: number, coefficient: typeof widthCoefficient) =>
      sizesThroughYear(made, stock === null ? 0 : coefficient(stock.wood, stock.cut), movement.climate);
    return {
      part,
      ...(hand && { hand }),
      count,
      length,
      width: through(width, widthCoefficient),
      thickness: through(thickness, thicknessCoefficient),
      stock,
    };
  });

const stockOf = (part: PartName, { front, side, back, bottom }: Movement): SawnWood | null => {
  switch (part) {
    case 'front':
      return front;
    case 'side':
    case 'slip':
      return side;
    case 'back':
      return back;
    case 'bottom':
      return bottom.kind === 'panel' ? null : bottom;
  }
};
