import { draftDrawer } from '../../drawer/draftDrawer.ts';
import type { Drawer, DrawerSet } from '../../drawer/drawer.ts';
import { hasEqualEnds } from '../../drawer/drawerSizes.ts';
import type { Groove } from '../../drawer/drawerSpec.ts';
import { listedFront } from '../../drawer/frontJoint.ts';
import type { Joint } from '../../joint/joint.ts';
import type { JointSpec, Spacing } from '../../joint/jointSpec.ts';
import { layOutSingle } from '../../project/layOutSingle.ts';
import type { Project } from '../../project/project.ts';
import { type FingerSetting, fingerSetting } from '../../router/fingers/fingerSetting.ts';
import type { Cutting } from '../../router/limits/cutting.ts';
import { toolingOf } from '../../router/limits/layOutWith.ts';
import { accept, type Place, type Result } from '../../units/complaint.ts';
import { type Locked, listed, lockedIn, type TipWidths } from './widths.ts';

/** Which of a plan's corners is meant. */
export type CornerRef =
  | { readonly of: 'drawer' | 'box'; readonly index: number; readonly end: 'front' | 'back' }
  | { readonly of: 'joint'; readonly index: number };

/** The corner of a drawer or box that is at the end which is looked at: at the front, where a single corner is. */
export const cornerOfDrawer = (
  shown: CornerRef,
  index: number,
  of: 'drawer' | 'box' = 'drawer',
): CornerRef => ({ of, index, end: shown.of === 'joint' ? 'front' : shown.end });

/** The list of a plan that a corner's drawer or box, or the corner itself, is an entry of. */
export const listOf = ({ of }: Pick<CornerRef, 'of'>) =>
  (({ drawer: 'drawers', box: 'boxes', joint: 'joints' }) as const)[of];

/** One corner of a plan, shown and edited. */
export interface EditedCorner {
  readonly ref: CornerRef;
  /** The drawer's or box's name, or the corner's own. */
  readonly name: string;
  readonly joint: Joint;
  /** The drawer, or the box. */
  readonly drawer?: Drawer;
  /** Where the groove crosses the tail board, from the joint's reference edge. */
  readonly groove?: Groove;
  /** The fingers over its tails; none without a guide of fingers. */
  readonly fingers?: CornerFingers;
  /** Where in a plan its tails are written. */
  readonly at: Place;
  /** The pin that it is given, in mm. */
  readonly pin?: number;
  /** Whether its tails are listed, width by width. */
  readonly listed: boolean;
  readonly locked: Locked;
  /** How many tails are in each group of grouped ones. */
  readonly groups?: readonly number[];
  /** Whether its tails are closer at the edges. */
  readonly closer: boolean;
  /** The corner with these widths; complaints where it cannot be cut. The rest of the set is not considered. */
  readonly judge: (widths: TipWidths) => Result<EditedCorner>;
}

/** Movable fingers over the tails of a corner. */
export interface CornerFingers {
  readonly setting: FingerSetting;
  /** Width of a pair that is pushed together, in mm. */
  readonly together: number;
}

const fingersOf = (joint: Joint, { cutter, fingers }: Partial<Cutting>): Pick<EditedCorner, 'fingers'> =>
  cutter && fingers
    ? { fingers: { setting: fingerSetting(joint, cutter, fingers), together: fingers.together } }
    : {};

/** The boxes that are entries of a plan: lids that are made apart come after them, and have no entry of their own. */
export const boxesIn = ({ boxes = [] }: DrawerSet): readonly Drawer[] =>
  boxes.filter(({ spec }) => spec.box?.isLid === undefined);

/** Every corner of a plan, in the order of work. */
export const cornersOf = ({ set, joints }: Project): CornerRef[] => [
  ...set.drawers.flatMap((_, index): CornerRef[] => [
    { of: 'drawer', index, end: 'front' },
    { of: 'drawer', index, end: 'back' },
  ]),
  ...boxesIn(set).flatMap(({ spec }, index): CornerRef[] => [
    { of: 'box', index, end: 'front' },
    ...(hasEqualEnds(spec) ? [] : [{ of: 'box', index, end: 'back' } as const]),
  ]),
  ...joints.map((_, index): CornerRef => ({ of: 'joint', index })),
];

/** The drawer or box that a corner is of. */
const bodyOf = ({ set }: Project, { of, index }: CornerRef): Drawer | undefined =>
  (of === 'drawer' ? set.drawers : of === 'box' ? boxesIn(set) : [])[index];

/** Those with locked widths. */
export const lockedCorners = (project: Project): CornerRef[] =>
  cornersOf(project).filter((ref) => {
    const spacing = spacingOf(project, ref);
    return spacing !== undefined && lockedIn(spacing).size > 0;
  });

const spacingOf = (project: Project, ref: CornerRef): Spacing | undefined =>
  ref.of === 'joint'
    ? project.joints[ref.index]?.spec.spacing
    : bodyOf(project, ref)?.spec[ref.of === 'drawer' && ref.end === 'back' ? 'backJoint' : 'joint'].spacing;

/** The corner; undefined where the plan has none of that index. */
export const cornerOf = (project: Project, ref: CornerRef): EditedCorner | undefined => {
  const { joints, cutting } = project;
  if (ref.of === 'joint') {
    const lone = joints[ref.index];
    if (lone === undefined) return undefined;
    const { name, joint, spec, rail } = lone;
    return edited({ ref, name, ...spacedAs(spec) }, joint, cutting ?? {}, (widths) =>
      layOutSingle({ spec: { ...spec, ...listed(widths) }, ...(rail && { rail }) }, toolingOf(cutting)),
    );
  }
  const drawer = bodyOf(project, ref);
  if (drawer === undefined) return undefined;
  const { spec } = drawer;
  const { name, joint, backJoint } = spec;
  const common = { ref, name, drawer };
  const atBack = ref.end === 'back';
  if (atBack && ref.of === 'drawer')
    return edited({ ...common, ...spacedAs(backJoint) }, drawer.back, spec, (widths) => {
      const draft = draftDrawer({ ...spec, backJoint: { ...backJoint, ...listed(widths) } });
      return draft.ok ? accept(draft.value.back) : draft;
    });
  const groove = spec.bottom.hold.kind === 'groove' && { groove: spec.groove };
  const shown = atBack ? drawer.back : drawer.front;
  return edited({ ...common, ...groove, ...spacedAs(joint) }, shown, spec, (widths) => {
    const draft = draftDrawer({ ...spec, joint: { ...joint, ...listed(widths) } });
    if (!draft.ok) return draft;
    return atBack ? accept(draft.value.back) : listedFront(draft.value);
  });
};

/** @param layOut lays out the corner alone, its widths listed */
const edited = (
  corner: Omit<EditedCorner, 'at' | 'joint' | 'fingers' | 'judge'>,
  joint: Joint,
  tools: Partial<Cutting>,
  layOut: (widths: TipWidths) => Result<Joint>,
): EditedCorner => ({
  ...corner,
  joint,
  ...fingersOf(joint, tools),
  at: placeOfTails(corner.ref),
  judge: (widths) => {
    const laid = layOut(widths);
    return laid.ok ? accept(edited({ ...corner, listed: true }, laid.value, tools, layOut)) : laid;
  },
});

const spacedAs = ({
  spacing,
  pin,
}: Pick<JointSpec, 'spacing' | 'pin'>): Pick<
  EditedCorner,
  'pin' | 'listed' | 'locked' | 'groups' | 'closer'
> => ({
  ...(pin !== undefined && { pin }),
  listed: spacing.kind === 'listed',
  locked: lockedIn(spacing),
  closer: spacing.kind === 'closer-edges',
  ...(spacing.kind === 'grouped' && { groups: spacing.groups }),
});

/** The start of a back corner's measures, the groove's upper edge, in mm above the sides' reference edge. */
export const startOnSides = ({ ref, drawer }: EditedCorner): number | undefined =>
  ref.of === 'drawer' && ref.end === 'back' ? drawer?.sizes.backFrom : undefined;

/** Where in a plan a corner's tails are written. */
export const placeOfTails = (ref: CornerRef): Place => {
  if (ref.of === 'joint') return ['joints', ref.index];
  return [listOf(ref), ref.index, ...(ref.of === 'drawer' && ref.end === 'back' ? ['back'] : []), 'joint'];
};
