import type { ResolvedSpec } from '../../joint/defaults.ts';
import type { Complaint } from '../../units/complaint.ts';
import { atLeast, atMost, mm, type Phrase, say } from '../../units/phrase.ts';
import { formatSlope } from '../../units/slope.ts';
import { GROOVE_SPARE } from '../drawerLimits.ts';
import { frontCorner } from '../drawerSizes.ts';
import type { DrawerSpec, Groove } from '../drawerSpec.ts';
import type { GrooveFixes } from './grooveFixes.ts';
import { grooveMiss, hidingChoices, reachesSmallPins } from './hidingChoices.ts';

/** The complaint about a groove that shows: by how much it misses the lowest tail, and what would help. */
export const grooveComplaint = (spec: DrawerSpec, fixes: GrooveFixes): Complaint => {
  const { groove } = spec;
  const { offset } = fixes;
  const corner = frontCorner(spec);
  const crosses = reachesSmallPins(corner, groove);
  if (groove.rebate)
    return {
      at: ['joint', 'halfPin'],
      says: say`the rebate for the bottom, ${mm(groove.width)} high, would cut the lowest tail: it must lie inside the lower half pin with ${mm(GROOVE_SPARE)} to spare, and such a half pin leaves too little for the tails`,
      remedy: say`choose a thinner bottom, fewer tails, or a mitred shoulder over it (joint: {shoulder: lower})`,
    };
  const { low, high } = grooveMiss(corner, groove);
  const where = spec.box === undefined ? 'the front' : 'a corner';
  const misses = [
    ...(low > 0 ? [say`lies ${mm(low)} too low`] : []),
    ...(high > 0 ? [say`reaches ${mm(high)} too high`] : []),
  ];
  return {
    at: ['groove', 'offset'],
    says: say`the groove, ${mm(groove.offset)} to ${mm(groove.offset + groove.width)} up, would ${crosses ? `show at ${where} or cross a small pin` : `show at ${where}`}: it must lie inside the base of ${lowestTail(corner)}${crosses ? ', on one side of its small pin,' : ''} with ${mm(GROOVE_SPARE)} to spare, but it ${join(misses, ' and ')}`,
    ...(offset && { hint: say`${offset.bound === 'least' ? atLeast(offset.value) : atMost(offset.value)}` }),
    remedy: remedy(spec, fixes, mostHiding(corner, groove), crosses),
  };
};

const lowestTail = ({ spacing }: ResolvedSpec): string => {
  if (spacing.kind === 'listed') return 'the lowest tail listed';
  if (spacing.tails === undefined) return 'the lowest tail, however many there are,';
  return spacing.tails === 1 ? 'the single tail' : `the lowest of ${spacing.tails} tails`;
};

const remedy = (
  { box, joint }: DrawerSpec,
  { offset, pin, slope }: GrooveFixes,
  tails: number | undefined,
  crosses: boolean,
): Phrase => {
  const help: Phrase[] = [];
  if (pin !== undefined) help.push(say`a pin width of ${atMost(pin)} or less`);
  if (slope !== undefined) help.push(say`a slope of ${formatSlope(slope)} or gentler`);
  if (tails !== undefined) help.push(say`${tails} ${tails === 1 ? 'tail' : 'tails'}`);
  if (crosses) help.push(say`a groove that stops short of the small pins (groove.stopped)`);
  if (help.length === 0)
    help.push(say`a narrower groove`, say`a higher ${box === undefined ? 'drawer' : 'box'}`);
  if (box !== undefined && joint.shoulder === undefined)
    help.push(say`a mitred shoulder over it (joint: {shoulder: lower})`);
  const useless = [
    ...(offset === undefined ? ['only the groove offset'] : []),
    ...(pin === undefined ? ['only the pin width'] : []),
    ...(slope === undefined ? ['only the slope'] : []),
  ];
  const choose = say`choose ${listed(help)}`;
  return useless.length === 0
    ? choose
    : say`${choose} (changing ${listed(useless.map((each) => [each]))} is not enough)`;
};

/** `a, b or c`. */
const listed = (phrases: readonly Phrase[]): Phrase =>
  phrases.length < 2
    ? phrases.flat()
    : join([join(phrases.slice(0, -1), ', '), phrases.at(-1) ?? []], ' or ');

const join = (phrases: readonly Phrase[], between: string): Phrase =>
  phrases.flatMap((phrase, i) => (i === 0 ? phrase : [between, ...phrase]));

/**
 * The most tails that would hide the groove, where fewer than were wished do: with every tail more the lowest one gets
 * narrower, so that the wished number, which does not hide it, is greater than any that does.
 */
const mostHiding = (corner: ResolvedSpec, groove: Groove): number | undefined =>
  corner.spacing.kind === 'listed' ? undefined : hidingChoices(corner, corner.spacing, groove).at(-1)?.tails;
