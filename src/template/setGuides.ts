import { sidesPastBack } from '../drawer/sidesPastBack.ts';
import type { Cuts } from '../guided/cutCorners.ts';
import type { Joint } from '../joint/joint.ts';
import { stems, type TemplateWork } from './corners.ts';
import { type CornerGuides, guidesToMake, type NamedGuide } from './guidesToMake.ts';
import { REBATE_EDGE } from './titles.ts';

/** The guides of every corner of a set that is cut with a bush, under the names of its templates. */
export const setGuides = ({ drawers, joints, units }: TemplateWork, cuts: Cuts): NamedGuide[] => {
  const stem = stems();
  const guides = (joint: Joint) => cuts.get(joint)?.guides ?? [];
  return guidesToMake(
    [
      ...drawers.flatMap(({ spec, sizes: { rebate }, front, back }): CornerGuides[] => {
        const { name, lip } = spec;
        const own = stem(name);
        return [
          {
            item: `${name} front`,
            stem: `${own}-front`,
            end: 'front',
            ...(lip && { edges: { pin: REBATE_EDGE } }),
            ...(rebate.top > 0 ? { uppers: { pin: "rebate's edge" } } : {}),
            ...(rebate.sides > 0 ? { rebate: front.depth } : {}),
            guides: guides(front),
          },
          {
            item: `${name} back`,
            stem: `${own}-back`,
            end: 'back',
            // The back stands on the groove's top edge, so there the sides are marked from it.
            edges: { tail: ["groove's top edge", 'groove top'] },
            ...(sidesPastBack(spec).upper ? { uppers: { tail: "back's edge" } } : {}),
            guides: guides(back),
          },
        ];
      }),
      ...joints.map(
        ({ name, joint }): CornerGuides => ({
          item: name,
          stem: stem(name),
          end: 'front',
          guides: guides(joint),
        }),
      ),
    ],
    units,
  );
};
