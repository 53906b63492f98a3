import { unitOf } from '../../units/notation.ts';
import { MM_PER_INCH, type Unit } from '../../units/unit.ts';
import type { DrawerSpec } from '../drawerSpec.ts';
import type { FittingsWish, LockSpec, OneOrTwo, PullSpec, StopSpec } from './fittingSpec.ts';

/** Usual sizes in mm, round in the plan's unit (from memory). */
const USUAL = {
  mm: {
    hole: 5,
    /** A pull with one hole each way, and how much wider than its holes one with two is. */
    pull: 28,
    beyondHoles: 14,
    lock: { pin: 20, keyhole: 6, body: { width: 50, height: 32, depth: 10 } },
    stop: { width: 40, thickness: 6, depth: 25 },
  },
  in: {
    hole: (MM_PER_INCH * 3) / 16,
    pull: MM_PER_INCH * 1.125,
    beyondHoles: MM_PER_INCH / 2,
    lock: {
      pin: MM_PER_INCH * 0.75,
      keyhole: MM_PER_INCH / 4,
      body: { width: MM_PER_INCH * 2, height: MM_PER_INCH * 1.25, depth: MM_PER_INCH * 0.375 },
    },
    stop: { width: MM_PER_INCH * 1.5, thickness: MM_PER_INCH / 4, depth: MM_PER_INCH },
  },
} as const satisfies Record<Unit, object>;

const FROM_ENDS = { share: 0.25 };
const FROM_SIDES = { share: 0.2 };

/** The fittings of one drawer, every usual size filled in. */
export interface FittingSpecs {
  readonly pulls?: PullSpec;
  readonly lock?: LockSpec;
  readonly stops?: StopSpec;
}

/** What a drawer is to have fixed to it, with the usual sizes where none are given. */
export const usualFittings = ({ joint, fittings = {} }: DrawerSpec): FittingSpecs => {
  const unit = unitOf(joint.notation ?? 'mm');
  const pulls = pullSpec(fittings.pulls, unit);
  const lock = lockSpec(fittings.locks, unit);
  const stops = stopSpec(fittings.stops, unit);
  return { ...(pulls && { pulls }), ...(lock && { lock }), ...(stops && { stops }) };
};

const isOneOrTwo = (number: number | undefined): number is OneOrTwo => number === 1 || number === 2;

const pullSpec = (wish: FittingsWish['pulls'], unit: Unit): PullSpec | undefined => {
  if (wish === undefined || wish.number === 0) return undefined;
  const { number, above = 0, fromEnds = FROM_ENDS, lineUpWith, holes, size } = wish;
  const { hole, pull, beyondHoles } = USUAL[unit];
  const spacing = holes?.spacing ?? 0;
  return {
    across: {
      ...(isOneOrTwo(number) && { number }),
      fromEnds,
      ...(lineUpWith !== undefined && { with: lineUpWith }),
    },
    above,
    holes: { diameter: holes?.diameter ?? hole, spacing },
    size:
      size ??
      (spacing > 0 ? { width: spacing + beyondHoles, height: pull / 2 } : { width: pull, height: pull }),
  };
};

const lockSpec = (wish: FittingsWish['locks'], unit: Unit): LockSpec | undefined => {
  if (wish === undefined || wish.number === 0) return undefined;
  const { number: _, ...given } = wish;
  return { ...USUAL[unit].lock, ...given };
};

const stopSpec = (wish: FittingsWish['stops'], unit: Unit): StopSpec | undefined => {
  if (wish === undefined || wish.number === 0) return undefined;
  const { number, ...given } = wish;
  return {
    fromSides: FROM_SIDES,
    ...USUAL[unit].stop,
    ...given,
    number: isOneOrTwo(number) ? number : 2,
  };
};
