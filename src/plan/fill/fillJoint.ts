import type { Spacing } from '../../joint/jointSpec.ts';
import { KINDS, withoutKind } from '../../joint/kinds/kinds.ts';
import { widthNames } from '../../joint/widthName.ts';
import { accept, type Place, type Result, refuse } from '../../units/complaint.ts';
import type { Notation } from '../../units/notation.ts';
import { contradictions } from '../check/contradictions.ts';
import type { SingleCornerSpec } from '../plan.ts';
import type { SPACING_KEYS } from '../schema/cornerSchema.ts';
import { areListed, type WrittenJoint, type WrittenSingleCorner } from '../schema/planSchema.ts';

/**
 * A single corner, from its own keys, else those of the plan's `joint` that its kind has; but the spacing of its tails is
 * its own.
 */
export const fillJoint = (
  plan: WrittenJoint,
  written: WrittenSingleCorner,
  at: Place,
  notation: Notation,
): Result<SingleCornerSpec> => {
  const wrong = contradictions(written, at);
  if (wrong.length > 0) return refuse(...wrong);
  const { tails: _, pins: __, graded: ___, locked: ____, ...sizes } = plan;
  const merged = { ...written, ...mergeJoint(sizes, written) };
  const { name, tails, pins, locked, graded, ...own } = withoutKind(merged);
  return accept({
    name,
    spec: { notation, ...own, spacing: spacingOf(written), ...KINDS[written.kind].wish(merged) },
  });
};

/**
 * A drawer's wishes for a corner, and its plan's where the drawer has none. What would contradict the drawer's is left
 * out: a number of tails or a grade replaces a list of tails, and of the lengths that only some kinds have, those of the
 * drawer's kind remain; a shoulder, where that kind leaves it to be wished.
 */
export const mergeJoint = (outer: WrittenJoint, inner: WrittenJoint): WrittenJoint => {
  const { kind, tails, pins, locked, graded, shoulder, ...rest } = outer;
  const respaced = inner.tails !== undefined || (inner.graded !== undefined && areListed(tails));
  return {
    ...(kind === undefined ? {} : { kind }),
    ...(inner.kind === undefined ? rest : { ...withoutKind(rest), ...KINDS[inner.kind].wish(rest) }),
    ...(shoulder === undefined || (inner.kind !== undefined && KINDS[inner.kind].shoulders !== 'wished')
      ? {}
      : { shoulder }),
    ...(tails === undefined || respaced ? {} : { tails }),
    ...(pins === undefined || respaced ? {} : { pins }),
    ...(locked === undefined || respaced ? {} : { locked }),
    ...(graded === undefined || areListed(inner.tails) ? {} : { graded }),
    ...inner,
  };
};

/** The spacing of the tails: listed, graded or even. */
export const spacingOf = ({
  tails,
  pins,
  locked,
  graded,
}: Pick<WrittenJoint, (typeof SPACING_KEYS)[number]>): Spacing => {
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
