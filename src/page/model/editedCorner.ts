import { draftDrawer } from '../../drawer/draftDrawer.ts';
import type { Drawer } from '../../drawer/drawer.ts';
import type { Groove } from '../../drawer/drawerSpec.ts';
import { listedFront } from '../../drawer/familyFronts.ts';
import type { Joint } from '../../joint/joint.ts';
import type { Spacing } from '../../joint/jointSpec.ts';
import type { Project } from '../../project/project.ts';
import { type FingerSetting, fingerSetting } from '../../router/fingers/fingerSetting.ts';
import type { Cutting } from '../../router/limits/cutting.ts';
import { layOutWith, toolingOf } from '../../router/limits/layOutWith.ts';
import { accept, type Place, type Result } from '../../units/complaint.ts';
import { type Locked, listed, lockedIn, type TipWidths } from './widths.ts';

/** Which of a plan's corners is meant. */
export type CornerRef =
  | { readonly of: 'drawer'; readonly index: number; readonly end: 'front' | 'back' }
  | { readonly of: 'joint'; readonly index: number };

/** The corner of a drawer that is at the end which is looked at: at the front, where a single corner is. */
export const cornerOfDrawer = (shown: CornerRef, index: number): CornerRef => ({
  of: 'drawer',
  index,
  end: shown.of === 'drawer' ? shown.end : 'front',
});

/** One corner of a plan, shown and edited. */
export interface EditedCorner {
  readonly ref: CornerRef;
  /** The drawer's name, or the corner's own. */
  readonly name: string;
  readonly joint: Joint;
  readonly drawer?: Drawer;
  /** Where the groove crosses the tail board, from the joint's reference edge. */
  readonly groove?: Groove;
  /** The fingers over its tails; none without a guide of fingers. */
  readonly fingers?: CornerFingers;
  /** Where in a plan its tails are written. */
  readonly at: Place;
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

/** Every corner of a plan, in the order of work. */
export const cornersOf = ({ set, joints }: Project): CornerRef[] => [
  ...set.drawers.flatMap((_, index): CornerRef[] => [
    { of: 'drawer', index, end: 'front' },
    { of: 'drawer', index, end: 'back' },
  ]),
  ...joints.map((_, index): CornerRef => ({ of: 'joint', index })),
];

/** Those with locked widths. */
export const lockedCorners = (project: Project): CornerRef[] =>
  cornersOf(project).filter((ref) => {
    const spacing = spacingOf(project, ref);
    return spacing !== undefined && lockedIn(spacing).size > 0;
  });

const spacingOf = ({ set, joints }: Project, ref: CornerRef): Spacing | undefined =>
  ref.of === 'joint'
    ? joints[ref.index]?.spec.spacing
    : set.drawers[ref.index]?.spec[ref.end === 'front' ? 'joint' : 'backJoint'].spacing;

/** The corner; undefined where the plan has none of that index. */
export const cornerOf = ({ set, joints, cutting }: Project, ref: CornerRef): EditedCorner | undefined => {
  if (ref.of === 'joint') {
    const lone = joints[ref.index];
    if (lone === undefined) return undefined;
    const { name, joint, spec } = lone;
    return edited({ ref, name, ...spacedAs(spec.spacing) }, joint, cutting ?? {}, (widths) =>
      layOutWith({ ...spec, ...listed(widths) }, toolingOf(cutting)),
    );
  }
  const drawer = set.drawers[ref.index];
  if (drawer === undefined) return undefined;
  const { spec } = drawer;
  const { name, joint, backJoint } = spec;
  const common = { ref, name, drawer };
  if (ref.end === 'back')
    return edited({ ...common, ...spacedAs(backJoint.spacing) }, drawer.back, spec, (widths) => {
      const draft = draftDrawer({ ...spec, backJoint: { ...backJoint, ...listed(widths) } });
      return draft.ok ? accept(draft.value.back) : draft;
    });
  const groove = spec.bottom.hold.kind === 'groove' && { groove: spec.groove };
  return edited({ ...common, ...groove, ...spacedAs(joint.spacing) }, drawer.front, spec, (widths) => {
    const draft = draftDrawer({ ...spec, joint: { ...joint, ...listed(widths) } });
    return draft.ok ? listedFront(draft.value) : draft;
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

const spacedAs = (spacing: Spacing): Pick<EditedCorner, 'listed' | 'locked' | 'groups' | 'closer'> => ({
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
  return ['drawers', ref.index, ...(ref.end === 'front' ? [] : ['back']), 'joint'];
};
