import type { Joint } from '../joint/joint.ts';
import { stems, type TemplateWork } from '../template/corners.ts';
import type { Cuts } from './cutCorners.ts';
import { guidesToMake, type NamedGuide } from './guidesToMake.ts';

/** The guides of every corner of a set that is cut with a bush, under the names of its templates. */
export const setGuides = ({ drawers, joints, units }: TemplateWork, cuts: Cuts): NamedGuide[] => {
  const stem = stems();
  const guides = (joint: Joint) => cuts.get(joint)?.guides ?? [];
  return guidesToMake(
    [
      ...drawers.flatMap(({ spec: { name }, front, back }) => {
        const own = stem(name);
        return [
          { item: `${name} front`, stem: `${own}-front`, guides: guides(front) },
          { item: `${name} back`, stem: `${own}-back`, guides: guides(back) },
        ];
      }),
      ...joints.map(({ name, joint }) => ({ item: name, stem: stem(name), guides: guides(joint) })),
    ],
    units,
  );
};
