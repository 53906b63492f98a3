import { type ResolvedSpec, withDefaults } from '../joint/defaults.ts';
import type { JointSpec } from '../joint/jointSpec.ts';
import type { JointShape } from '../joint/kinds/kind.ts';
import { KINDS } from '../joint/kinds/kinds.ts';
import { withCutter } from '../router/limits/fitToCutter.ts';
import type { Overhang } from '../router/passes/routerCut.ts';
import { EPSILON } from '../units/epsilon.ts';
import { nextMark } from '../units/formatLength.ts';
import { depthLimit } from './arrangement/depthLimit.ts';
import { sawnApart } from './box/sawnApart.ts';
import type { Hand } from './cornerLetters.ts';
import { GROOVE_SPARE } from './drawerLimits.ts';
import { BACK, type DrawerSpec, type Groove, type Handed, type SideSize } from './drawerSpec.ts';

/** How wide the rebate is that runs round the inside of a front with a lip; all 0 where it has none. */
export interface Rebate {
  /** At the left end and at the right, each. */
  readonly sides: number;
  readonly top: number;
  readonly bottom: number;
}

/** The measures that every part follows from, in mm. */
export interface Sizes {
  /** Over the outside faces of both sides, planed flush, at the front. */
  readonly width: number;
  /** The same at the back. */
  readonly backWidth: number;
  /** From the reference edge to the front's upper edge, or to that of what lies behind its lip. */
  readonly height: number;
  /** Each side's width: the same where they did not come out otherwise. */
  readonly sideHeight: Handed<number>;
  /** From the front's outside face to the back's. */
  readonly depth: number;
  /** The wood in front of the sides' ends: the joint's lap, and the lip's thickness where there is one; 0 where the sides reach the front's face. */
  readonly lap: number;
  /** The wood behind the sides' back ends: a box's lap at its back; 0 in a drawer. */
  readonly backLap: number;
  readonly rebate: Rebate;
  /** From each side's outside face to its inside face, planed flush. */
  readonly wall: Handed<number>;
  /** Clear space inside, between the sides and from front to back. */
  readonly inside: { readonly width: number; readonly depth: number };
  /** From the reference edge to the back's lower edge: the groove's upper edge, or in a box 0. */
  readonly backFrom: number;
  readonly backHeight: number;
}

/** What the kind of a drawer's front corners makes of its boards. */
export const frontShape = ({ joint, stock }: FrontBoards): JointShape =>
  KINDS[joint.kind].shape({
    ...joint,
    tailBoard: stock.side.thickness,
    pinBoard: stock.front.thickness,
  });

/** What a drawer's front corners are made of. */
export interface FrontBoards extends Pick<DrawerSpec, 'joint'> {
  readonly stock: Pick<DrawerSpec['stock'], 'front' | 'side'>;
}

/** Both sides of a drawer, as planned or as they came out. */
export const sidesOf = ({ made, stock }: Pick<DrawerSpec, 'made' | 'stock'>): Handed<SideSize> =>
  made?.sides ?? { left: stock.side, right: stock.side };

/** A box as it is from behind: its back for its front, as both are joined alike. */
export const turned = <Box extends { readonly stock: { readonly front: unknown; readonly back: unknown } }>(
  box: Box,
): Box => ({ ...box, stock: { ...box.stock, front: box.stock.back, back: box.stock.front } });

/** A drawer from its front, or a box from either end: what is its front there. */
export interface GroovedEnd {
  readonly spec: DrawerSpec;
  readonly end: 'front' | 'back';
}

/** The ends whose boards carry the groove for the bottom: a drawer's front, and a box's back too. */
export const groovedEnds = (spec: DrawerSpec): readonly GroovedEnd[] => [
  { spec, end: 'front' },
  ...(spec.box === undefined ? [] : [{ spec: turned(spec), end: 'back' } as const]),
];

/** Whether a box's front and back are equally thick, so that all its corners are alike. */
export const hasEqualEnds = ({ box, stock }: DrawerSpec): boolean =>
  box !== undefined && Math.abs(stock.front.thickness - stock.back.thickness) < EPSILON;

/**
 * A drawer's measures, unchecked: a wish that cannot be made gives measures that make no sense.
 *
 * An inset front lies in the opening, flush with its edges, so the depth is the opening's less the clearance behind.
 * A front with a lip lies before the opening by the lip's thickness, so the depth is that much more: behind the lip lies
 * the box that the opening asks for. Where a drawer has its own size, that is its outside size, lip included.
 */
export const sizesOf = (spec: DrawerSpec): Sizes => {
  const { space, lip, stock, joint, groove } = spec;
  const box = space.kind === 'opening' ? space.opening : space.size;
  const fit = space.kind === 'opening' ? space.fit : { side: 0, top: 0 };
  const over = (space.kind === 'size' ? lip : undefined) ?? { sides: 0, top: 0, bottom: 0 };
  const width = box.width - 2 * fit.side - 2 * over.sides;
  const height = box.height - fit.top - over.top - over.bottom;
  const { setBack: lap } = frontShape(spec);
  const behind = space.kind === 'opening' ? depthLimit(space).left : 0;
  const depth = box.depth - behind + (space.kind === 'opening' && lip !== undefined ? lap : 0);
  const { left, right } = sidesOf(spec);
  const proud = joint.proud ?? 0;
  const wall = { left: left.thickness - proud, right: right.thickness - proud };
  const sideHeight = { left: left.height ?? height, right: right.height ?? height };
  const backFrom = spec.box === undefined ? grooveTop(groove) : 0;
  return {
    width,
    backWidth: width - (spec.made?.taper ?? 0),
    height,
    sideHeight,
    depth,
    lap,
    backLap: spec.box === undefined ? 0 : frontShape(turned(spec)).setBack,
    rebate:
      lip === undefined
        ? { sides: 0, top: 0, bottom: 0 }
        : { sides: lip.sides + fit.side, top: lip.top + fit.top, bottom: lip.bottom },
    wall,
    inside: {
      width: width - wall.left - wall.right,
      depth: depth - stock.front.thickness - stock.back.thickness,
    },
    backFrom,
    backHeight: height - spec.backDrop - backFrom,
  };
};

/** From the reference edge to the groove's upper edge. */
export const grooveTop = ({ offset, width }: Groove): number => offset + width;

/** The wish for both front corners: the sides carry the tails, their lower edge is the reference edge. */
export const frontJointSpec = ({ joint, stock, groove }: DrawerSpec, height: number): JointSpec => ({
  ...joint,
  ...(joint.shoulder !== undefined && {
    // To a mark of the rule, as a shoulder is gauged from the edge.
    lowerShoulder: nextMark(grooveTop(groove) + GROOVE_SPARE, 'above', joint.notation ?? 'mm'),
  }),
  width: height,
  tailBoard: stock.side.thickness,
  pinBoard: stock.front.thickness,
});

/** The wish for both back corners, over the back's width: the back's lower edge is the reference edge. */
export const backJointSpec = (spec: DrawerSpec, backHeight: number): JointSpec =>
  spec.box === undefined
    ? {
        ...spec.backJoint,
        kind: BACK,
        width: backHeight,
        tailBoard: spec.stock.side.thickness,
        pinBoard: spec.stock.back.thickness,
      }
    : frontJointSpec(turned(spec), backHeight);

/** The wish for a drawer's front corners, unchecked, with its cutter's slope and pins and every default filled in. */
export const wholeCorner = (spec: DrawerSpec): ResolvedSpec => {
  const wish = frontJointSpec(spec, sizesOf(spec).height);
  return withDefaults(spec.cutter === undefined ? wish : withCutter(wish, spec.cutter));
};

/** The same, as far as it holds the groove: of a box whose lid is sawn off, what is below the saw cut, where no number of tails is wished. */
export const frontCorner = (spec: DrawerSpec): ResolvedSpec => {
  const whole = wholeCorner(spec);
  const lid = spec.box?.lid;
  if (lid === undefined || whole.spacing.kind === 'listed') return whole;
  return { ...sawnApart(whole, lid).box, spacing: { kind: 'even' } };
};

/** Where a side extends beyond the back: of a drawer always below it, and above it where it is lower than the side is. */
export const sidePastBack = ({ sideHeight, backFrom, backHeight }: Sizes, hand: Hand): Overhang => ({
  lower: backFrom > EPSILON,
  upper: sideHeight[hand] - backFrom - backHeight > EPSILON,
});

/** How far a side extends beyond the front's upper edge, in mm; under 0 where the front extends beyond it. */
export const sidePastFront = ({ height, sideHeight }: Sizes, hand: Hand): number => sideHeight[hand] - height;
