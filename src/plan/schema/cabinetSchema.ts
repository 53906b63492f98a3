import * as z from 'zod';
import type { FixedBy, HeightRule } from '../../cabinet/heightRule.ts';
import type { Complaint } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';
import type { Unit } from '../../units/unit.ts';
import { choice, complainOfAll, group, lengths, name, number, optional, type Sink } from './leaves.ts';
import * as ranges from './ranges.ts';

/** A cabinet, from which the openings of its drawers follow. */
export const cabinetSchema = (unit: Unit) => {
  const length = lengths(unit);
  const size = length(ranges.SPACE);
  const between = length(ranges.BETWEEN);
  const heights = heightsSchema(unit);
  const wide = optional({ width: size.describe('Alike with the others of its row unless given.') });
  const called = name('the name of a drawer');
  const drawer = called.transform((one) => ({ name: one }));
  const narrow = group('{name: Thread, width: 200}', {
    name: called.describe("The drawer's name."),
    ...wide,
  });
  const innerPlace = z.union([drawer, narrow], {
    error: 'the name of a drawer, or {name: Thread, width: 200}',
  });
  const divided = group('{rows: [Buttons, Thread], width: 200}', {
    rows: rowsOf(innerPlace).describe(
      'Rows inside this place, from the top; its neighbours stand as high as all of them.',
    ),
    ...optional({ heights: heights.describe('How high these rows are. `equal` unless given.') }),
    ...wide,
  }).transform(({ heights: rule = EQUAL, ...rest }) => ({ heights: rule, ...rest }));
  const place = z.union([drawer, narrow, divided], {
    error: 'the name of a drawer, {name: Thread, width: 200}, or {rows: [Buttons, Thread]}',
  });
  return group('{width: 600, height: 760, depth: 420, rail: 18, rows: [[Buttons, Thread], Cloth]}', {
    width: size.describe('Clear width inside, from side to side.'),
    height: size.describe('Clear height inside.'),
    depth: size.describe('Depth of every opening.'),
    rail: between.describe('Thickness of a rail between two rows.'),
    ...optional({
      divider: between.describe(
        "Thickness of a divider between two drawers of a row. The rail's unless given.",
      ),
      ...frameKeys(unit),
      heights: heights.describe(
        'How high the rows are, rounded to 0.5 mm, or 1/16 in: `equal`; a list from the top, `auto` for rows that share what is left; or a progression. `equal` unless given.',
      ),
    }),
    rows: rowsOf(place).describe(
      'The rows from the top: a drawer by its name, or a list of those side by side. A name stands once for each of its places.',
    ),
  }).transform(({ divider, heights: rule = EQUAL, ...rest }) => ({
    ...rest,
    divider: divider ?? rest.rail,
    heights: rule,
  }));
};

/** What carries the drawers and guides them. */
const frameKeys = (unit: Unit) => {
  const length = lengths(unit);
  const thickness = length(ranges.THICKNESS);
  const width = length(ranges.FRAME);
  const wood = name('the name of a wood');
  return {
    rails: group(
      '{width: 60, top: 18}',
      optional({
        width: width.describe(
          'Width of rails and of short dividers, from front to back. 60 mm, or 2 1/2 in, or less in a small cabinet, unless given.',
        ),
        top: thickness.describe(
          "Thickness of a rail over the top row, if there is one. The cabinet's top is there unless given.",
        ),
        bottom: thickness.describe(
          "Thickness of a rail under the lowest row, if there is one. Its drawers run on the cabinet's bottom unless given.",
        ),
        tenon: length(ranges.TENON).describe(
          'What enters the wood at each end of a rail or a divider, and at the front end of a runner or a kicker: at most what is there, or half of that where tenons enter from both sides. None unless given.',
        ),
        species: wood.describe('Wood of rails and dividers. Not named unless given.'),
      }),
    ).describe('The rails in front, and one over or under all drawers.'),
    dividers: choice('short', 'full').describe(
      'short: as wide as a rail, with a guide behind each; full: from front to back, as one beside rows inside a place always is. `short` unless given.',
    ),
    runners: group(
      '{width: 30}',
      optional({
        width: width.describe(
          'How much of a runner lies under a drawer at each side; kickers are as wide, and both as thick as their rail. 30 mm, or 1 1/4 in, or less under a narrow drawer, unless given.',
        ),
        species: wood.describe('Wood of runners, kickers and guides. Not named unless given.'),
      }),
    ).describe('What the drawers run on, behind the rails.'),
    guides: group(
      '{height: 20, sides: 12}',
      optional({
        height: width.describe(
          'Height of a guide. 20 mm, or 3/4 in, or less beside a low drawer, unless given.',
        ),
        sides: length(ranges.BETWEEN).describe(
          "How far the cabinet's sides lie outside its openings, between posts: guides fill that. 0, where the sides guide the drawers, unless given.",
        ),
      }),
    ).describe('What keeps the drawers straight, behind dividers and at the sides.'),
    vent: length(ranges.CLEARANCE).describe(
      "What frame and drawers leave free before the cabinet's back, for air. None but the clearance behind unless given.",
    ),
  };
};

/** Rows from the top: each one place, or a list of places side by side. */
const rowsOf = <Place extends z.ZodType>(place: Place) => {
  const row = 'the name of a drawer, or a list of those side by side';
  const one = place.transform((only): z.output<Place>[] => [only]);
  const several = z.array(place, { error: row }).min(1, { error: row });
  return z
    .array(z.union([one, several], { error: row }), { error: 'a list of rows from the top' })
    .min(1, { error: 'a list of at least one row' });
};

const EQUAL: HeightRule = { kind: 'equal' };

/** How high rows are. */
const heightsSchema = (unit: Unit) => {
  const length = lengths(unit);
  const height = length(ranges.SPACE);
  const what = 'equal, a list of heights from the top, or {progression: arithmetic, first: 76}';
  const listed = z
    .array(z.union([height, z.literal('auto').transform(() => undefined)], { error: 'a height, or auto' }), {
      error: what,
    })
    .transform((heights): HeightRule => ({ kind: 'listed', heights }));
  const fixed = {
    first: height.describe('Height of the top row.'),
    overall: number(ranges.PROPORTION).describe('Height of the bottom row over that of the top row.'),
  };
  const arithmetic = group('{progression: arithmetic, first: 76}', {
    progression: z.literal('arithmetic').describe('Heights that grow downwards by an equal step.'),
    ...optional({
      ...fixed,
      step: length(ranges.STEP).describe(
        'How much higher each row is than the one above it; less than 0 for lower. The rail unless `first` or `overall` is given.',
      ),
    }),
  }).transform(({ progression: kind, ...given }, sink): HeightRule => {
    const by = onlyOne(given, sink);
    return { kind, ...(by && { by }) };
  });
  const geometric = group('{progression: geometric, ratio: 1.2}', {
    progression: z.literal('geometric').describe('Heights that grow downwards by an equal ratio.'),
    ...optional({
      ...fixed,
      ratio: number(ranges.PROPORTION).describe("Each row's height over that of the one above."),
    }),
  }).transform(({ progression: kind, ...given }, sink): HeightRule => {
    const by = onlyOne(given, sink);
    return by === undefined ? complainOfAll(sink, given, [NOTHING_FIXES]) : { kind, by };
  });
  const progression = z.discriminatedUnion('progression', [arithmetic, geometric], {
    error: 'arithmetic or geometric',
  });
  return z.union([choice('equal').transform(() => EQUAL), listed, progression], { error: what });
};

const NOTHING_FIXES: Complaint = {
  at: [],
  says: say`nothing fixes this progression; give first, ratio or overall`,
  hint: say`ratio: 1.2`,
};

/** The one key that fixes a progression; as the heights fill the cabinet, a second would contradict it. */
const onlyOne = <Key extends 'first' | 'step' | 'ratio' | 'overall'>(
  given: Readonly<Partial<Record<Key, number>>>,
  sink: Sink,
): FixedBy<Key> | undefined => {
  const [one, second] = (Object.entries(given) as [Key, number][]).map(([key, value]) => ({ key, value }));
  return second === undefined || one === undefined
    ? one
    : complainOfAll(sink, given, [
        {
          at: [second.key],
          says: say`${one.key} fixes the progression already, as the heights fill the cabinet`,
          remedy: say`remove one of them`,
        },
      ]);
};
