import type { Complaint } from '../units/complaint.ts';
import { say } from '../units/phrase.ts';
import { closerEdges } from './closerSpacing.ts';
import { grouped } from './groupedSpacing.ts';
import type { CornerWish, Spacing } from './jointSpec.ts';

/** How a corner's tails may be spaced, by name; even ones may be graded or listed, and so may those of a hound's tooth. */
export const SPACINGS = ['even', 'hounds-tooth', 'grouped', 'closer-edges'] as const;

/** What is said where another word stands for a spacing. */
export const SPACING_WORDS =
  'even, hounds-tooth, grouped or closer-edges; to grade tails there is graded, and for both ways its from: middle';

/** How a corner's tails are to be spaced, as it is written; lengths in mm. */
export interface SpacingWish {
  readonly spacing?: (typeof SPACINGS)[number];
  /** How many tails are in each group, from the reference edge up. */
  readonly groups?: readonly number[];
  /** Narrow width of the pins between groups. */
  readonly groupPin?: number;
  /** Narrow width of a hound's tooth's small pins. */
  readonly smallPin?: number;
  /** Width of each tail that is closer to the edge as a part of its inner neighbour's. */
  readonly closer?: number;
  /** How many tails at either edge are closer. */
  readonly closerTails?: number;
}

/**
 * The spacing that is wished.
 * @param plain the tails as they are without: even, graded or listed
 */
export const wishedSpacing = (
  { spacing, groups, groupPin, smallPin, closer, closerTails }: SpacingWish,
  plain: Spacing,
): Pick<CornerWish, 'spacing' | 'houndsTooth'> => ({
  spacing:
    spacing === 'grouped' && groups !== undefined
      ? grouped(groups, groupPin)
      : spacing === 'closer-edges' && plain.kind === 'even'
        ? closerEdges(plain, closer, closerTails)
        : plain,
  ...(spacing === 'hounds-tooth' && { houndsTooth: smallPin === undefined ? {} : { smallPin } }),
});

/** A wished spacing, and the keys beside it. */
interface WishWithTails extends SpacingWish {
  /** Their number, or their widths. */
  readonly tails?: unknown;
  readonly graded?: unknown;
}

/**
 * What contradicts a wished spacing; places are its keys.
 * @param isListed whether the tails are listed width by width
 */
export const checkSpacingWish = (wish: WishWithTails, isListed: boolean): Complaint[] => {
  const { spacing, groups, tails, graded } = wish;
  if (spacing === 'closer-edges')
    return [
      ...(isListed
        ? [
            {
              at: ['spacing'],
              says: say`the tails are listed width by width, so they cannot be closer at the edges too`,
              remedy: say`give the number of tails, or list narrower ones at the edges and choose even spacing`,
            },
          ]
        : []),
      ...(graded === undefined
        ? []
        : [
            {
              at: ['graded'],
              says: say`tails that are closer at the edges cannot be graded too; graded from the middle, all of them narrow to both edges`,
              remedy: say`choose even spacing, or remove the grade`,
            },
          ]),
    ];
  if (spacing !== 'grouped') return [];
  return [
    ...(groups === undefined
      ? [
          {
            at: ['spacing'],
            says: say`the tails are grouped, but their groups are missing`,
            remedy: say`list the number of tails in each group (groups), such as 2, 3, 2`,
          },
        ]
      : []),
    ...(tails === undefined
      ? []
      : [
          {
            at: ['tails'],
            says: say`grouped tails are as many as their groups say`,
            remedy: say`remove it, or choose another spacing`,
          },
        ]),
    ...(graded === undefined
      ? []
      : [
          {
            at: ['graded'],
            says: say`grouped tails are equal, so they cannot be graded too; even ones and those of a hound's tooth can, from the edge or, both ways, from the middle`,
            remedy: say`choose even or hounds-tooth spacing, or remove the grade`,
          },
        ]),
  ];
};

/** The spacing that each key is for, and has no effect without. */
export const SPACING_OF = {
  groups: 'grouped',
  groupPin: 'grouped',
  smallPin: 'hounds-tooth',
  closer: 'closer-edges',
  closerTails: 'closer-edges',
} as const;

export const KEYS_OF_SPACINGS = ['groups', 'groupPin', 'smallPin', 'closer', 'closerTails'] as const;

/** Such keys that are written beside another spacing. */
export const strayKeys = (wish: SpacingWish): (keyof typeof SPACING_OF)[] =>
  KEYS_OF_SPACINGS.filter((key) => wish[key] !== undefined && wish.spacing !== SPACING_OF[key]);
