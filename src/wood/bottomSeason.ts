import type { Complaint } from '../units/complaint.ts';
import { nextMark } from '../units/formatLength.ts';
import { mm, say } from '../units/phrase.ts';
import type { Unit } from '../units/unit.ts';
import type { Climate, Seasonal } from './climate.ts';
import { largestToMake, sizesThroughYear } from './gapBand.ts';
import { type SawnWood, widthCoefficient } from './movement.ts';

/**
 * What a drawer's bottom is made of: a panel (plywood and the like, which does not move), or solid wood with its grain
 * from side to side, which moves from front to back.
 */
export type BottomStock = { readonly kind: 'panel' } | ({ readonly kind: 'solid' } & SawnWood);

/** A slot for the screw that holds a solid bottom up to the back; mm, along the drawer's depth. */
export interface ScrewSlot {
  readonly length: number;
  /** From the screw's middle, on the day of making, to the slot's front end. */
  readonly ahead: number;
  /** From the screw's middle, on the day of making, to the slot's back end. */
  readonly behind: number;
}

/** A slot as it is cut: by a rule in inches up to the next 1/16 either way, so that the screw stands where it is told to. */
export const slotToCut = (slot: ScrewSlot, unit: Unit): ScrewSlot => {
  if (unit === 'mm') return slot;
  const ahead = nextMark(slot.ahead, 'above', 'in/16');
  const behind = nextMark(slot.behind, 'above', 'in/16');
  return { length: ahead + behind, ahead, behind };
};

/** A bottom held in the front's groove and free to move at the back. */
export interface BottomSeason {
  /** mm from front to back; `making` is the depth to cut. */
  readonly depth: Seasonal<number>;
  /** None for a panel, which needs a plain hole. */
  readonly slot: ScrewSlot | null;
}

/**
 * The depth to cut a bottom to, and the slot that lets it move. It is cut flush with the back, or as much shorter as it
 * must be never to outgrow its room. The slot is as long as for a screw at the very back edge, a little longer than
 * needed.
 * @param flush mm, from the floor of the front's groove to the back's outside face
 * @param room mm, from the floor of the front's groove to where the bottom may reach when dampest, at least `flush`
 * @param screw mm, the diameter of the screw's shank
 */
export const bottomSeason = (
  stock: BottomStock,
  { flush, room }: { readonly flush: number; readonly room: number },
  climate: Climate,
  screw: number,
): BottomSeason => {
  if (stock.kind === 'panel') return { depth: { making: flush, driest: flush, dampest: flush }, slot: null };
  const coefficient = widthCoefficient(stock.wood, stock.cut);
  const made = Math.min(flush, largestToMake(room, coefficient, climate));
  const depth = sizesThroughYear(made, coefficient, climate);
  // The bottom grows backwards past the screw, so the screw nears the front end of its slot.
  const ahead = screw / 2 + Math.max(0, depth.dampest - depth.making);
  const behind = screw / 2 + Math.max(0, depth.making - depth.driest);
  return { depth, slot: { length: ahead + behind, ahead, behind } };
};

/**
 * Advice, at an empty place, where the driest bottom no longer reaches its screw.
 * @param screwAt mm, from the floor of the front's groove to the screw's middle
 */
export const adviseBottom = (bottom: BottomSeason, screwAt: number): Complaint[] =>
  bottom.depth.driest >= screwAt
    ? []
    : [
        {
          at: [],
          says: say`driest, the bottom is ${mm(bottom.depth.driest)} deep and no longer reaches its screws at ${mm(screwAt)}`,
          remedy: say`use quartersawn wood, leave more room behind the back, or use a panel`,
        },
      ];
