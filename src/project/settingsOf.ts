import type { CornerEnd } from '../drawer/cornerLetters.ts';
import { drawersAndBoxes } from '../drawer/drawer.ts';
import { sidesPastBack } from '../drawer/drawerSizes.ts';
import type { Joint } from '../joint/joint.ts';
import { settingOrder } from '../router/fingers/settingOrder.ts';
import { isAlongFingers } from '../router/guide/cutJoint.ts';
import { byHand } from '../router/guide/guideBoard.ts';
import { stems } from '../sheets/fileStem.ts';
import {
  type CornerSetting,
  type NamedSetting,
  type RodSetting,
  settingsToMake,
} from '../sheets/guide/settingsToMake.ts';
import { boardsDrawn } from './only.ts';
import type { Project } from './project.ts';

/** The part of a project that settings of fingers depend on. */
export type FingeredProject = Pick<Project, 'set' | 'joints' | 'units' | 'cutting' | 'cuts' | 'only'>;

/**
 * Every setting of the fingers for a project's corners, equal ones once, in the order in which they are best set: those of one
 * depth together, so that the cutter is set once for each, and among them the order that moves the fingers least.
 */
export const settingsOf = ({ set, joints, units, cutting, cuts, only }: FingeredProject): NamedSetting[] => {
  const stem = stems();
  /** @param from height of the joint's lower edge above the tail board's reference edge, mm */
  const settingOf = (joint: Joint, from: number): RodSetting | undefined => {
    const cut = cuts.get(joint);
    if (cut?.fingers === undefined || cutting?.fingers === undefined || !isAlongFingers(cut))
      return undefined;
    const { pairs, gaps } = cut.fingers.setting;
    return {
      pairs: pairs.map((pair) => ({ ...pair, from: pair.from + from, to: pair.to + from })),
      gaps,
      from,
      to: from + joint.width,
      together: cutting.fingers.together,
      bush: cutting.fingers.bush,
      cutter: { diameter: cutting.cutter.diameter, depth: joint.depth },
      supports: byHand(cut.guided).length < 2,
    };
  };
  const corner = (
    named: Omit<CornerSetting, 'setting'>,
    joint: Joint,
    from: number,
    ...drawn: readonly [name: string, end?: CornerEnd]
  ): CornerSetting[] => {
    const setting = boardsDrawn(only, ...drawn).includes('tail') ? settingOf(joint, from) : undefined;
    return setting === undefined ? [] : [{ ...named, setting }];
  };
  const made = settingsToMake(
    [
      ...drawersAndBoxes(set).flatMap(({ spec, sizes, front, back }) => {
        const { name } = spec;
        const own = stem(name);
        const upper = sidesPastBack(spec).upper ? "back's upper edge" : 'upper edge';
        return [
          ...corner(
            { item: `${name} front`, stem: `${own}-front`, end: 'front', upper: 'upper edge' },
            front,
            0,
            name,
            'front',
          ),
          ...corner(
            { item: `${name} back`, stem: `${own}-back`, end: 'back', upper },
            back,
            sizes.backFrom,
            name,
            'back',
          ),
        ];
      }),
      ...joints.flatMap(({ name, joint }) =>
        corner({ item: name, stem: stem(name), end: 'front', upper: 'upper edge' }, joint, 0, name),
      ),
    ],
    units,
  );
  return inOrder(made);
};

const inOrder = (made: readonly NamedSetting[]): NamedSetting[] => {
  const ordered: NamedSetting[] = [];
  for (const depth of new Set(made.map(({ setting }) => setting.cutter.depth))) {
    const alike = made.filter(({ setting }) => setting.cutter.depth === depth);
    const order = settingOrder(
      alike.map(({ setting }) => setting.pairs),
      ordered.at(-1)?.setting.pairs,
    );
    ordered.push(...order.flatMap((place) => alike[place] ?? []));
  }
  return ordered;
};
