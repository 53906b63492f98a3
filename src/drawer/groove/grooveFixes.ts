import { LEAST_PIN } from '../../joint/jointLimits.ts';
import { EPSILON, roundDown, roundUp } from '../../units/epsilon.ts';
import type { Range } from '../../units/range.ts';
import { RUN_RANGE, rise, type Slope } from '../../units/slope.ts';
import { frontCorner } from '../drawerSizes.ts';
import type { DrawerSpec } from '../drawerSpec.ts';
import { grooveMargins, keptMargins } from './hidingChoices.ts';

/** Changes that would each hide a groove that shows; absent where no such change helps. */
export interface GrooveFixes {
  /**
   * The nearest groove offset in mm, and whether it is the least that helps or the most: one that leaves the lower half
   * pin as wished, or where there is none, one that needs another half pin.
   */
  readonly offset?: { readonly bound: 'least' | 'most'; readonly value: number };
  /** The widest pin, in mm. */
  readonly pin?: number;
  /** The steepest slope. */
  readonly slope?: Slope;
}

const withOffset = (spec: DrawerSpec, offset: number): DrawerSpec => ({
  ...spec,
  groove: { ...spec.groove, offset },
});
const withPin = (spec: DrawerSpec, pin: number): DrawerSpec => ({ ...spec, joint: { ...spec.joint, pin } });
const withSlope = (spec: DrawerSpec, slope: Slope): DrawerSpec => ({
  ...spec,
  joint: { ...spec.joint, slope },
});

/** The range of a value in which every margin is met; margins are linear in it, so two trials determine them. */
const feasible = (
  spec: DrawerSpec,
  change: (spec: DrawerSpec, value: number) => DrawerSpec,
  now: number,
  margins = grooveMargins,
): Range => {
  const marginsAt = (value: number) => {
    const changed = change(spec, value);
    return margins(frontCorner(changed), changed.groove);
  };
  const further = marginsAt(now + 1);
  let least = Number.NEGATIVE_INFINITY;
  let most = Number.POSITIVE_INFINITY;
  marginsAt(now).forEach((margin, i) => {
    const gain = (further[i] ?? margin) - margin;
    if (gain > EPSILON) least = Math.max(least, now - margin / gain);
    else if (gain < -EPSILON) most = Math.min(most, now - margin / gain);
    else if (margin < -EPSILON) most = Number.NEGATIVE_INFINITY;
  });
  return { least, most };
};

/** To the hundredth, so that what is shown works as it is shown. */
const hundredthUp = (value: number): number => roundUp(value, 100);
const hundredthDown = (value: number): number => roundDown(value, 100);

/**
 * Finds the change of offset, of pin and of slope that would each hide the groove with all else as wished.
 * @param fits whether a drawer so changed can be made
 */
export const grooveFixes = (spec: DrawerSpec, fits: (changed: DrawerSpec) => boolean): GrooveFixes => {
  const { offset } = spec.groove;
  const { pin, slope } = frontCorner(spec);
  const kept = feasible(spec, withOffset, offset, keptMargins);
  const moved = [...(kept.least <= kept.most + EPSILON ? [kept] : []), feasible(spec, withOffset, offset)]
    .map(({ least, most }) =>
      offset < least
        ? ({ bound: 'least', value: hundredthUp(least) } as const)
        : ({ bound: 'most', value: hundredthDown(most) } as const),
    )
    .find(({ value }) => value > 0 && fits(withOffset(spec, value)));
  const narrowed = hundredthDown(feasible(spec, withPin, pin).most);
  const withRise = (spec: DrawerSpec, rise: number) => withSlope(spec, { run: 1 / rise });
  const gentler: Slope = { run: hundredthUp(1 / feasible(spec, withRise, rise(slope)).most) };
  return {
    ...(moved && { offset: moved }),
    ...(narrowed >= LEAST_PIN && fits(withPin(spec, narrowed)) ? { pin: narrowed } : {}),
    ...(gentler.run > 0 && gentler.run <= RUN_RANGE.most && fits(withSlope(spec, gentler))
      ? { slope: gentler }
      : {}),
  };
};
