import * as z from 'zod';
import { FRACTIONS, FRACTIONS_IN_WORDS } from '../../units/notation.ts';
import type { Unit } from '../../units/unit.ts';
import { boardSchema } from './boardSchema.ts';
import { boxSchema } from './boxSchema.ts';
import { breakoutSchema } from './breakoutSchema.ts';
import { cabinetSchema } from './cabinetSchema.ts';
import { climateSchema } from './climateSchema.ts';
import { cornerKeys, cornerKind, ownLengthKeys } from './cornerSchema.ts';
import { cutterSchema } from './cutterSchema.ts';
import { drawerKeys, drawerSchema } from './drawerSchema.ts';
import { familySchema } from './familySchema.ts';
import { fingersSchema } from './fingersSchema.ts';
import { choice, group, type LengthList, lengths, name, optional } from './leaves.ts';
import * as ranges from './ranges.ts';
import { remembered } from './remembered.ts';
import { sawSchema } from './sawSchema.ts';
import { woodsSchema } from './woodsSchema.ts';

/** A single corner: it belongs to no drawer. */
const namedJointSchema = (unit: Unit, corner: ReturnType<typeof cornerKeys>) => {
  const length = lengths(unit);
  const thickness = length(ranges.THICKNESS);
  return group('{name: Carcase, kind: through, width: 430, tailBoard: 19, pinBoard: 19}', {
    name: name('the name of a corner').describe('What the corner is called; no two may have one name.'),
    kind: cornerKind().describe(
      'Through; lapped: hidden at the front; double-lapped: hidden on both boards, but for a strip of end grain; or secret-mitred: hidden altogether.',
    ),
    width: length(ranges.WIDTH).describe('Width of both boards at the corner.'),
    tailBoard: thickness.describe('Thickness of the tail board.'),
    pinBoard: thickness.describe('Thickness of the pin board.'),
    ...corner,
    ...ownLengthKeys(unit),
    ...optional({
      rail: group('{between: 574, sideWidth: 430}', {
        between: length(ranges.SPACE).describe("From side to side, between the rail's shoulders."),
        sideWidth: length(ranges.WIDTH).describe('Width of the sides, from front to back.'),
        ...optional({
          setBack: length(ranges.CLEARANCE).describe(
            "How far the rail's front edge is behind those of the sides. 0 unless given.",
          ),
        }),
      }).describe(
        "Where the tail board is a rail over the drawers: each end is one lapped dovetail, let down into the top end of a side, the pin board. `width` is then the rail's, from front to back. No rail unless given.",
      ),
    }),
  });
};

/**
 * The schema of a plan. It converts lengths to mm; defaults are filled in later, when a drawer's own keys have been
 * merged with the plan's.
 * @param unit what a bare number means
 */
export const planSchema = (unit: Unit) => {
  // To make a schema takes longer than to read a small plan, so what is used in several places is made once.
  const corner = cornerKeys(unit);
  const keys = drawerKeys(unit, corner);
  return group('with keys such as drawers:, boxes: or joints:', {
    ...optional({
      name: name('the name of the plan').describe('What is being made. `Untitled` unless given.'),
      units: choice('mm', 'in').describe(
        'What a bare number means, and how lengths are shown. `mm` unless given.',
      ),
      fractions: z
        .literal(FRACTIONS, { error: FRACTIONS_IN_WORDS })
        .describe(
          'Where `units` is `in`, to what lengths are shown: the nearest 1/64, 1/32 or 1/16, or decimals to .001. 64 unless given.',
        ),
    }),
    ...keys,
    ...optional({
      font: z
        .string({ error: 'the name of a font file, as text' })
        .describe(
          'A TrueType or OpenType file, from the folder of the plan, for letters of names that the font of the sheets lacks. None unless given.',
        ),
      climate: climateSchema().describe(
        'The air in which the drawers are made, and in which they are kept. Without it the movement of their wood is not calculated.',
      ),
      woods: woodsSchema().describe(
        'Woods of your own, each by its name, in addition to those that are known.',
      ),
      family: familySchema(unit).describe('The look that all drawers of the set share.'),
      cutter: cutterSchema(unit).describe(
        'The dovetail cutter that every corner is cut with, drawers and all. Cut by hand unless given.',
      ),
      fingers: fingersSchema(unit).describe(
        'A guide beside the cutter whose fingers slide along a bar in pairs, one pair for each tail, with spacers between the fingers of a pair. None unless given.',
      ),
      cabinet: cabinetSchema(unit).describe(
        'The cabinet that the drawers stand in, from which their openings follow. None unless given.',
      ),
      saw: sawSchema(unit).describe('What is lost between the boards and the parts.'),
      boards: z
        .array(remembered(boardSchema(unit)), { error: 'a list of boards, each with a dash before it' })
        .describe('The boards that the parts are sawn from, up to 500. None unless given.'),
      breakout: breakoutSchema(unit).describe('What is wished of the parts that come out of the boards.'),
      drawers: z
        .array(remembered(drawerSchema(unit, keys)), {
          error: 'a list of drawers, each with a dash before it',
        })
        .describe(
          'Each kind of drawer. What is given above for all of them may be given for one too. Those that the rows of a cabinet name, unless given.',
        ),
      boxes: z
        .array(remembered(boxSchema(unit, corner)), { error: 'a list of boxes, each with a dash before it' })
        .describe(
          'Each kind of box: as a drawer, but that all four corners are alike, and a groove on all four sides holds the bottom. What is given above for stock, joints, groove and bottom holds for boxes too.',
        ),
      joints: z
        .array(remembered(namedJointSchema(unit, corner)), {
          error: 'a list of corners, each with a dash before it',
        })
        .describe(
          'Single corners: they belong to no drawer. The slope, pin, half pins, laps, shoulder, mitre, proud and chisel that they do not give are those of `joint`.',
        ),
    }),
  });
};

/** A plan as it was written, lengths in mm, before defaults. */
export type WrittenPlan = z.output<ReturnType<typeof planSchema>>;
export type WrittenCutter = NonNullable<WrittenPlan['cutter']>;
export type WrittenFingers = NonNullable<WrittenPlan['fingers']>;
export type WrittenBoard = NonNullable<WrittenPlan['boards']>[number];
export type WrittenBreakout = NonNullable<WrittenPlan['breakout']>;
export type WrittenDrawer = NonNullable<WrittenPlan['drawers']>[number];
export type WrittenBox = NonNullable<WrittenPlan['boxes']>[number];
export type WrittenSingleCorner = NonNullable<WrittenPlan['joints']>[number];
export type WrittenJoint = NonNullable<WrittenDrawer['joint']>;

/** Whether the tails of a corner are listed, not counted. */
export const areListed = (tails: WrittenJoint['tails']): tails is LengthList => typeof tails === 'object';
