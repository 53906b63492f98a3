import { guidesToMake, type NamedGuide } from '../guided/guidesToMake.ts';
import type { Joint } from '../joint/joint.ts';
import { stems } from '../template/corners.ts';
import type { Work } from './work.ts';

/** The guides of every corner that is cut with a bush, under the names of its templates. */
export const guidesOf = ({
  set,
  joints,
  units,
  cuts,
}: Pick<Work, 'set' | 'joints' | 'units' | 'cuts'>): NamedGuide[] => {
  const stem = stems();
  const guides = (joint: Joint) => cuts.get(joint)?.guides ?? [];
  return guidesToMake(
    [
      ...set.drawers.flatMap(({ spec: { name }, front, back }) => {
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
