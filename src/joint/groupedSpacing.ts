import type { Complaint } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import { mm, say } from '../units/phrase.ts';
import { checkRange } from '../units/range.ts';
import { LEAST_PIN, WIDTH_RANGE } from './jointLimits.ts';
import type { GroupedSpacing } from './jointSpec.ts';

/** Usual width of a pin between groups, in pins inside one. */
const GROUP_PIN_IN_PINS = 3;

/**
 * Equal tails in groups.
 * @param groups how many tails are in each, from the reference edge up
 * @param groupPin narrow width of the pins between groups, in mm; three pins unless given
 */
export const grouped = (groups: readonly number[], groupPin?: number): GroupedSpacing => ({
  kind: 'grouped',
  tails: groups.reduce((sum, tails) => sum + tails, 0),
  groups,
  ...(groupPin !== undefined && { groupPin }),
});

/** The narrow width of a pin between groups, in mm, beside pins of `pin` inside them. */
const groupPinOf = ({ groupPin }: GroupedSpacing, pin: number): number => groupPin ?? GROUP_PIN_IN_PINS * pin;

/** Every whole pin, from the reference edge up: narrow widths in mm. */
export const groupedPins = (spacing: GroupedSpacing, pin: number): number[] =>
  spacing.groups.flatMap((tails, i) => [
    ...(i === 0 ? [] : [groupPinOf(spacing, pin)]),
    ...new Array<number>(tails - 1).fill(pin),
  ]);

/** How much more the pins between groups take than those inside would in their place, in mm. */
export const groupsTake = (spacing: GroupedSpacing, pin: number): number =>
  (spacing.groups.length - 1) * (groupPinOf(spacing, pin) - pin);

/** Everything that is wrong with groups, whatever the board's width. */
export const checkGroups = ({ tails: all, groups, groupPin }: GroupedSpacing): Complaint[] => [
  ...(groups.length >= 2 && all !== grouped(groups).tails
    ? [
        {
          at: ['tails'],
          says: say`${all} tails are not as many as their groups have, ${grouped(groups).tails}`,
        },
      ]
    : []),
  ...(groups.length < 2
    ? [
        {
          at: ['groups'],
          says: say`${groups.length === 1 ? 'one group is' : 'no groups are'} listed; there must be two or more`,
          remedy: say`list the number of tails in each, such as 2, 3, 2, or choose even spacing`,
        },
      ]
    : []),
  ...groups.flatMap((tails, i) =>
    Number.isInteger(tails) && tails >= 1
      ? []
      : [
          {
            at: ['groups', i],
            says: say`group ${i + 1} has ${tails} tails; it must have a whole number of them, at least 1`,
          },
        ],
  ),
  ...checkRange(['groupPin'], 'the pin between groups', groupPin, {
    least: LEAST_PIN,
    most: WIDTH_RANGE.most,
  }),
];

/** Advice where pins between groups look like those inside them. */
export const adviseGroups = (spacing: GroupedSpacing, pin: number): Complaint[] => {
  const between = groupPinOf(spacing, pin);
  return between > pin + EPSILON
    ? []
    : [
        {
          at: ['groupPin'],
          says: say`pins of ${mm(between)} between groups are no wider than those of ${mm(pin)} inside them: the groups do not show`,
          hint: say`${mm(GROUP_PIN_IN_PINS * pin)}`,
        },
      ];
};
