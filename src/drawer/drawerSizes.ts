import { type ResolvedSpec, withDefaults } from '../joint/defaults.ts';
import type { JointSpec } from '../joint/jointSpec.ts';
import type { JointShape } from '../joint/kinds/kind.ts';
import { KINDS } from '../joint/kinds/kinds.ts';
import { withCutter } from '../router/limits/fitToCutter.ts';
import type { Overhang } from '../router/passes/routerCut.ts';
import { EPSILON } from '../units/epsilon.ts';
import { nextMark } from '../units/formatLength.ts';
import { sawnApart } from './box/sawnApart.ts';
import { GROOVE_SPARE } from './drawerLimits.ts';
import { BACK, type DrawerSpec, type Groove } from './drawerSpec.ts';

/** How wide the rebate is that runs round the inside of a front with a lip; all 0 where it has none. */
export interface Rebate {
  /** At the left end and at the right, each. */
  readonly sides: number;
  readonly top: number;
  readonly bottom: number;
}

/** The measures that every part follows from, in mm. */
export interface Sizes {
  /** Over the outside faces of both sides, planed flush. */
  readonly width: number;
  /** The sides' width. */
  readonly height: number;
  /** From the front's outside face to the back's. */
  readonly depth: number;
  /** The wood in front of the sides' ends: the joint's lap, and the lip's thickness where there is one; 0 where the sides reach the front's face. */
  readonly lap: number;
  /** The wood behind the sides' back ends: a box's lap at its back; 0 in a drawer. */
  readonly backLap: number;
  readonly rebate: Rebate;
  /** From the sides' outside faces to their inside faces, planed flush. */
  readonly wall: number;
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
  const fit = space.kind === 'opening' ? space.fit : { side: 0, top: 0, behind: 0 };
  const over = (space.kind === 'size' ? lip : undefined) ?? { sides: 0, top: 0, bottom: 0 };
  const width = box.width - 2 * fit.side - 2 * over.sides;
  const height = box.height - fit.top - over.top - over.bottom;
  const { setBack: lap } = frontShape(spec);
  const depth = box.depth - fit.behind + (space.kind === 'opening' && lip !== undefined ? lap : 0);
  const wall = stock.side.thickness - (joint.proud ?? 0);
  const backFrom = spec.box === undefined ? grooveTop(groove) : 0;
  return {
    width,
    height,
    depth,
    lap,
    backLap: spec.box === undefined ? 0 : frontShape(turned(spec)).setBack,
    rebate:
      lip === undefined
        ? { sides: 0, top: 0, bottom: 0 }
        : { sides: lip.sides + fit.side, top: lip.top + fit.top, bottom: lip.bottom },
    wall,
    inside: { width: width - 2 * wall, depth: depth - stock.front.thickness - stock.back.thickness },
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

/** Where the sides extend beyond the back: of a drawer always below it, and above it where it is lower than they are. */
export const sidesPastBack = ({ backDrop, box }: Pick<DrawerSpec, 'backDrop' | 'box'>): Overhang => ({
  lower: box === undefined,
  upper: backDrop > 0,
});
