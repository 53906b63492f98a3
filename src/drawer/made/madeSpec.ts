import type { Hand } from '../cornerLetters.ts';
import type { Drawer } from '../drawer.ts';
import { boardsOf } from '../drawerParts.ts';
import { sizesOf } from '../drawerSizes.ts';
import type { BuiltMeasure, DrawerSpec, Lip, MadeOf, SideSize } from '../drawerSpec.ts';
import { type BuiltAt, builtAt, longSide } from './built.ts';
import { type BuiltCopies, copyNumbers } from './builtCopies.ts';

/**
 * The spec of some of a plan's equal drawers, named by their numbers where there are several, with their boards as they came out,
 * unchecked: what follows from a board follows from it as it is.
 *
 * Inset, a front sets the drawer's width and height, and so the clearances that are left; with a lip it sets how far that overlaps,
 * as its rebate is cut to the opening. The sides' length sets the depth. A side is as wide as the front, a back as long, and
 * a back is as wide as the narrower side leaves it, unless they came out otherwise.
 * @param planned the drawer as planned
 */
export const madeSpec = (planned: Drawer, { copies, boards, entries }: BuiltCopies): DrawerSpec => {
  const plan = planned.spec;
  const made: MadeOf = {
    name: plan.name,
    copies,
    boards,
    entries,
    sides: { left: plan.stock.side, right: plan.stock.side },
    taper: 0,
  };
  const named: DrawerSpec = {
    ...plan,
    name: plan.count > 1 ? `${plan.name} ${copyNumbers(copies)}` : plan.name,
    count: copies.length,
    space: placed(plan.space, copies),
    made,
  };
  const front = builtAt(named, 'front');
  const back = builtAt(named, 'back');
  const bottom = builtAt(named, 'bottom');
  const more = (built: BuiltAt | undefined, measure: BuiltMeasure): number =>
    built?.board[measure] === undefined
      ? 0
      : built.board[measure] - planned.boards[built.board.part][measure];
  const side = (hand: Hand): SideSize => {
    const { thickness = plan.stock.side.thickness, width } = builtAt(named, 'side', hand)?.board ?? {};
    return { thickness, ...(width !== undefined && { height: width }) };
  };
  const { stock } = plan;
  const thickness = (built: BuiltAt | undefined, usual: number): number => built?.board.thickness ?? usual;
  const outside: DrawerSpec = {
    ...withFront(named, more(front, 'length'), more(front, 'width'), more(longSide(named), 'length')),
    stock: {
      ...stock,
      front: { ...stock.front, thickness: thickness(front, stock.front.thickness) },
      back: { ...stock.back, thickness: thickness(back, stock.back.thickness) },
      bottom: { ...stock.bottom, thickness: thickness(bottom, stock.bottom.thickness) },
    },
    made: { ...made, sides: { left: side('left'), right: side('right') } },
  };
  return withBottom(withBack(outside, back), bottom);
};

/** Where they stand in a planned cabinet. */
const placed = (space: DrawerSpec['space'], copies: readonly number[]): DrawerSpec['space'] =>
  space.kind === 'opening' && space.places !== undefined
    ? { ...space, places: copies.flatMap((copy) => space.places?.[copy - 1] ?? []) }
    : space;

/** The space that a front so much longer and wider leaves, and sides so much longer, in mm. */
const withFront = (spec: DrawerSpec, longer: number, wider: number, deeper: number): DrawerSpec => {
  const { space, lip } = spec;
  const over: Lip | undefined = lip && { ...lip, sides: lip.sides + longer / 2, top: lip.top + wider };
  if (space.kind === 'size') {
    const { width, height, depth } = space.size;
    return {
      ...spec,
      ...(over && { lip: over }),
      space: {
        ...space,
        size: { width: width + longer, height: height + wider, depth: depth + deeper },
      },
    };
  }
  const { side, top, behind } = space.fit;
  const inset = over === undefined;
  return {
    ...spec,
    ...(over && { lip: over }),
    space: {
      ...space,
      fit: {
        side: inset ? side - longer / 2 : side,
        top: inset ? top - wider : top,
        behind: behind - deeper,
      },
    },
  };
};

/** How wide and how long the back is. */
const withBack = (spec: DrawerSpec, back: BuiltAt | undefined): DrawerSpec => {
  const { height, sideHeight, width, backFrom } = sizesOf(spec);
  const narrower = Math.min(height, sideHeight.left, sideHeight.right);
  const { made } = spec;
  const { width: wide, length = width } = back?.board ?? {};
  return {
    ...spec,
    backDrop: wide === undefined ? spec.backDrop + height - narrower : height - backFrom - wide,
    ...(made && { made: { ...made, taper: width - length } }),
  };
};

/** What of the bottom's own measures is given. */
const withBottom = (spec: DrawerSpec, built: BuiltAt | undefined): DrawerSpec => {
  const solid = spec.bottom.kind === 'solid';
  const { board } = built ?? {};
  const across = solid ? board?.length : board?.width;
  const depth = solid ? board?.width : board?.length;
  const { bottom } = boardsOf(spec, sizesOf(spec));
  const needed = solid ? bottom.length : bottom.width;
  return {
    ...spec,
    bottom: {
      ...spec.bottom,
      ...(across !== undefined && { slack: spec.bottom.slack + (needed - across) / 2 }),
      ...(depth !== undefined && { depth }),
    },
  };
};
