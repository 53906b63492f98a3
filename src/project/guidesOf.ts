import type { CornerEnd } from '../drawer/cornerLetters.ts';
import { type Drawer, madeOf } from '../drawer/drawer.ts';
import { sidePastFront } from '../drawer/drawerSizes.ts';
import { entryName } from '../drawer/made/built.ts';
import { type DrawerCorner, drawerCorners } from '../drawer/made/drawerCorners.ts';
import type { Joint } from '../joint/joint.ts';
import type { Piece } from '../paper/piece.ts';
import { stems } from '../sheets/fileStem.ts';
import { guidePiece } from '../sheets/guide/drawGuide.ts';
import { type CornerGuides, guidesToMake, type NamedGuide } from '../sheets/guide/guidesToMake.ts';
import { settingRod } from '../sheets/guide/settingRod.ts';
import { REBATE_EDGE } from '../sheets/template/titles.ts';
import { boardsDrawn } from './only.ts';
import { hasGuides, type Project } from './project.ts';
import { type FingeredProject, settingsOf } from './settingsOf.ts';

/**
 * The guides of every corner that is cut with a bush, under the names of its templates, as full-size drawings, and the
 * setting rods of fingers; equal ones once.
 * @example
 * ```ts
 * for (const { title, width, height } of guidePieces(project)) console.log(title, width, height);
 * ```
 */
export const guidePieces = (project: FingeredProject): Piece[] => [
  ...guidesOf(project).map(({ guide, titles }) => guidePiece(guide, titles)),
  ...settingsOf(project).map((each, i) => settingRod(each, i + 1)),
];

/** The part of a project that guides depend on. */
type GuidedProject = Pick<Project, 'set' | 'joints' | 'units' | 'cuts' | 'only'>;

/** Each guide with the text on it. */
export const guidesOf = ({ set, joints, units, cuts, only }: GuidedProject): NamedGuide[] => {
  if (!hasGuides({ cuts })) return [];
  const stem = stems();
  const guides = (joint: Joint, ...corner: readonly [name: string, end?: CornerEnd]) => {
    const boards = boardsDrawn(only, ...corner);
    return (cuts.get(joint)?.guides ?? []).filter(({ board }) => boards.includes(board));
  };
  return guidesToMake(
    [
      ...madeOf(set).flatMap((drawer): CornerGuides[] => {
        const { spec, sizes } = drawer;
        const { rebate } = sizes;
        const own = stem(spec.name);
        return drawerCorners(drawer).map((corner): CornerGuides => {
          const { name, end, letters, joint, overhang } = corner;
          const letter = letters.length > 1 ? '' : `-${letters.join('').toLowerCase()}`;
          const common = {
            item: name,
            stem: `${own}-${end}${letter}`,
            end,
            guides: guides(joint, entryName(spec), end),
          };
          return end === 'front'
            ? {
                ...common,
                ...(rebate.bottom > 0 ? { edges: { pin: REBATE_EDGE } } : {}),
                ...frontUppers(drawer, corner),
                ...(rebate.sides > 0 ? { rebate: joint.depth } : {}),
              }
            : {
                ...common,
                // A drawer's back starts at the groove's upper edge, so there the sides are marked from it; slips leave them without a groove.
                ...(spec.box === undefined && {
                  edges: {
                    tail:
                      spec.bottom.hold.kind === 'groove'
                        ? ["groove's upper edge", 'groove, upper']
                        : ["back's lower edge", 'back, lower'],
                  },
                }),
                ...(overhang?.upper ? { uppers: { tail: "back's edge" } } : {}),
              };
        });
      }),
      ...joints.map(
        ({ name, joint }): CornerGuides => ({
          item: name,
          stem: stem(name),
          end: 'front',
          guides: guides(joint, name),
        }),
      ),
    ],
    units,
  );
};

/** What the joint ends at on boards that extend beyond it. */
const frontUppers = (
  { sizes }: Drawer,
  { hands: [hand = 'left'], overhang }: DrawerCorner,
): Pick<CornerGuides, 'uppers'> => {
  const tail = overhang?.upper ? { tail: "front's edge" } : {};
  const pin =
    sidePastFront(sizes, hand) < 0
      ? { pin: "side's edge" }
      : sizes.rebate.top > 0
        ? { pin: "rebate's edge" }
        : {};
  const uppers = { ...tail, ...pin };
  return Object.keys(uppers).length > 0 ? { uppers } : {};
};
