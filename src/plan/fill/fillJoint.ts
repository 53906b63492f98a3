import type { CornerWish, Spacing } from '../../joint/jointSpec.ts';
import { KINDS, withoutKind } from '../../joint/kinds/kinds.ts';
import { wishedSpacing } from '../../joint/spacingWish.ts';
import { widthNames } from '../../joint/widthName.ts';
import { accept, type Place, type Result, refuse } from '../../units/complaint.ts';
import type { Notation } from '../../units/notation.ts';
import { contradictions } from '../check/contradictions.ts';
import type { SingleCornerSpec } from '../plan.ts';
import type { SPACING_KEYS } from '../schema/cornerSchema.ts';
import {
  areListed,
  type WrittenJoint,
  type WrittenPlan,
  type WrittenSingleCorner,
} from '../schema/planSchema.ts';
import { fillRail } from './fillRail.ts';

/**
 * A single corner, from its own keys, else those of the plan's `joint` that its kind has; but the spacing of its tails is
 * its own.
 */
export const fillJoint = (
  { joint: plan = {}, cabinet }: Pick<WrittenPlan, 'joint' | 'cabinet'>,
  written: WrittenSingleCorner,
  at: Place,
  notation: Notation,
): Result<SingleCornerSpec> => {
  const wrong = contradictions(written, at);
  if (wrong.length > 0) return refuse(...wrong);
  const filled = fillRail(written, cabinet, at);
  if (!filled.ok) return filled;
  const one = filled.value && written.tails === undefined ? { ...written, tails: 1 } : written;
  const shared = withoutSpacing(filled.value ? withoutShoulder(plan) : plan);
  const merged = { ...written, ...mergeJoint(shared, written) };
  const { name, rail: _, ...own } = withoutSpacing(withoutKind(merged));
  return accept({
    name,
    spec: { notation, ...own, ...spacingOf(one), ...KINDS[written.kind].wish(merged) },
    ...(filled.value && { rail: filled.value }),
  });
};

/**
 * A drawer's wishes for a corner, and its plan's where the drawer has none. What would contradict the drawer's is left
 * out: a number of tails or a grade replaces a list of tails and groups of them, groups replace all these, tails that are
 * closer at the edges a list and a grade, and of the lengths that only some kinds have, those of the
 * drawer's kind remain; a shoulder, where that kind leaves it to be wished.
 */
export const mergeJoint = (outer: WrittenJoint, inner: WrittenJoint): WrittenJoint => {
  const { kind, tails, pins, locked, graded, shoulder, spacing, ...rest } = outer;
  const isGrouped = inner.spacing === 'grouped';
  const isCloser = inner.spacing === 'closer-edges';
  const respaced =
    inner.tails !== undefined || isGrouped || ((inner.graded !== undefined || isCloser) && areListed(tails));
  const ungrouped = spacing === 'grouped' && (inner.tails !== undefined || inner.graded !== undefined);
  const evened = spacing === 'closer-edges' && (areListed(inner.tails) || inner.graded !== undefined);
  return {
    ...(kind === undefined ? {} : { kind }),
    ...(inner.kind === undefined ? rest : { ...withoutKind(rest), ...KINDS[inner.kind].wish(rest) }),
    ...(shoulder === undefined || (inner.kind !== undefined && KINDS[inner.kind].shoulders !== 'wished')
      ? {}
      : { shoulder }),
    ...(tails === undefined || respaced ? {} : { tails }),
    ...(pins === undefined || respaced ? {} : { pins }),
    ...(locked === undefined || respaced ? {} : { locked }),
    ...(graded === undefined || areListed(inner.tails) || isGrouped || isCloser ? {} : { graded }),
    ...(spacing === undefined || ungrouped || evened ? {} : { spacing }),
    ...inner,
  };
};

/** A wish without the shoulders that a rail between two sides cannot have. */
const withoutShoulder = ({ shoulder, shoulderWidth, mitre, ...rest }: WrittenJoint): WrittenJoint => rest;

/** A wish without how its tails are spaced. */
export const withoutSpacing = <T extends WrittenSpacing>({
  tails,
  pins,
  locked,
  graded,
  spacing,
  groups,
  groupPin,
  smallPin,
  closer,
  closerTails,
  ...sizes
}: T): Omit<T, keyof WrittenSpacing> => sizes;

type WrittenSpacing = Pick<WrittenJoint, (typeof SPACING_KEYS)[number]>;

/** How the tails are spaced: listed, graded or even, with small pins in them, or in groups. */
export const spacingOf = (written: WrittenSpacing): Pick<CornerWish, 'spacing' | 'houndsTooth'> =>
  wishedSpacing(written, plainSpacing(written));

const plainSpacing = ({ tails, pins, locked, graded }: WrittenSpacing): Spacing => {
  if (areListed(tails)) {
    const { lengths, notation } = tails;
    return {
      kind: 'listed',
      tails: lengths,
      ...(pins && { pins: pins.lengths }),
      ...(locked && { locked: numbersOf(locked, lengths.length) }),
      ...(notation && { notation }),
    };
  }
  const count = tails === undefined ? {} : { tails };
  return graded === undefined
    ? { kind: 'even', ...count }
    : { kind: 'graded', ...count, ratio: graded.ratio, from: graded.from ?? 'edge' };
};

const numbersOf = (names: readonly string[], tails: number): number[] =>
  widthNames(tails).flatMap((name, i) => (names.includes(name) ? i : []));
