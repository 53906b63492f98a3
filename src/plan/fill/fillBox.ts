import { type DrawerSpec, USUAL_BOX } from '../../drawer/drawerSpec.ts';
import type { Cutting } from '../../router/limits/cutting.ts';
import { type Place, type Result, refuse } from '../../units/complaint.ts';
import type { Notation } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import type { WrittenBox, WrittenPlan } from '../schema/planSchema.ts';
import { fillDrawer } from './fillDrawer.ts';
import { withoutSpacing } from './fillJoint.ts';

/** The keys that a plan gives for its drawers and boxes. */
type BoxDefaults = Pick<WrittenPlan, 'stock' | 'joint' | 'groove' | 'bottom'>;

/**
 * A box's spec, from its own keys, else what the plan gives for drawers: its boards, its bottom and its groove, unless that
 * is stopped; and of the plan's `joint` what a single corner takes. No climate moves it, as it has no opening to fit.
 */
export const fillBox = (
  { stock = {}, joint = {}, groove: { stopped: _, ...groove } = {}, bottom = {} }: BoxDefaults,
  { kind = USUAL_BOX, stock: own = {}, joint: ownJoint = {}, ...box }: WrittenBox,
  at: Place,
  notation: Notation,
  cutting: Pick<Cutting, 'cutter' | 'fingers'> | undefined,
): Result<DrawerSpec> => {
  const front = { ...stock.front, ...own.front };
  if (front.thickness === undefined)
    return refuse({
      at: [...at, 'stock', 'front', 'thickness'],
      says: say`the thickness of the front is missing; without it no box can be sized`,
      hint: say`stock: {front: {thickness: 9mm}}`,
    });
  const { slips: __, ...bottomOfAll } = bottom;
  return fillDrawer(
    {
      stock: {
        ...(stock.bottom && { bottom: stock.bottom }),
        front,
        side: stock.side?.thickness === undefined ? { ...front, ...stock.side } : stock.side,
      },
      joint: withoutSpacing(joint),
      groove,
      bottom: bottomOfAll,
    },
    { ...box, stock: own, joint: { kind, ...ownJoint }, box: {} },
    at,
    notation,
    cutting,
  );
};
