import * as z from 'zod';
import * as limits from '../joint/limits.ts';
import type { Unit } from '../units/length.ts';
import { choice, group, length as lengthIn, name, number, slope, wholeNumber } from './leaves.ts';

/** Generous, but such that every sum stays finite: what lies outside is a slip of the pen. */
const GAP = { least: 0, most: 1000 };
const GROOVE = { least: 0.5, most: 100 };
const LAP = { least: limits.LEAST_LAP, most: limits.THICKNESS_RANGE.most };
const PIN = { least: limits.LEAST_PIN, most: limits.WIDTH_RANGE.most };
const COUNT = { least: 1, most: 1000 };
/** The layout says how many tails a board has room for; this only keeps the number finite. */
const TAILS = { least: 1, most: 1e9 };

/**
 * A plan as it is written, every key of it. Reading turns lengths into mm and leaves out what is not given: defaults
 * are filled in later, once a drawer's own keys lie over the plan's.
 * @param unit what a bare number means
 */
export const planSchema = (unit: Unit) => {
  const length = (range: { least: number; most: number }) => lengthIn(unit, range);
  const size = () => length(limits.WIDTH_RANGE);
  const thickness = () => length(limits.THICKNESS_RANGE);
  const gap = () => length(GAP);
  const pin = () => length(PIN);

  /** The keys of a corner that front and back share. */
  const corner = {
    slope: slope()
      .describe("How far a tail's side leans: 1:7, 1 in 7 or 8.13deg. 1:8 unless given.")
      .exactOptional(),
    pin: pin()
      .describe("Narrow width of a pin. Half the tail board's thickness, at least 3 mm, unless given.")
      .exactOptional(),
    halfPin: z
      .union(
        [
          pin().transform((both) => ({ lower: both, upper: both })),
          z
            .tuple([pin(), pin()], { error: 'one width, or two: [lower, upper]' })
            .transform(([lower, upper]) => ({ lower, upper })),
        ],
        { error: 'one width, or two: [lower, upper]' },
      )
      .describe('Narrow width of the outermost pins, both or [lower, upper]. As wide as a pin unless given.')
      .exactOptional(),
    tails: z
      .union(
        [
          wholeNumber(TAILS, 'a whole number of tails'),
          z.array(size()).min(1, { error: 'a list of at least one width' }),
        ],
        { error: 'a whole number of tails, or a list of their widths from the reference edge up' },
      )
      .describe(
        'How many tails, or the width of each at its tip from the reference edge up. Chosen for the look unless given.',
      )
      .exactOptional(),
    pins: z
      .array(pin(), { error: 'a list of widths, one between every two tails' })
      .describe('Narrow widths of the pins between listed tails. All `pin` wide unless given.')
      .exactOptional(),
    graded: group('{ratio: 0.9, from: edge}', {
      ratio: number(limits.RATIO_RANGE).describe("Each tail's width as a part of its neighbour's."),
      from: choice('edge', 'middle')
        .describe('From the reference edge up, or from the middle out to both edges. `edge` unless given.')
        .exactOptional(),
    })
      .describe('Tails that grow or shrink evenly. All equal unless given.')
      .exactOptional(),
    proud: gap()
      .describe("How far the tail board stands out beyond the pins' end, to be planed flush. 0 unless given.")
      .exactOptional(),
    chisel: length(limits.CHISEL_RANGE)
      .describe('Width of the narrowest chisel in the rack. 3 mm unless given.')
      .exactOptional(),
  };
  const lap = {
    lap: length(LAP)
      .describe(
        'The wood left in front of the tails of a lapped joint. A quarter of the pin board to the half millimetre, at least 3 mm, unless given.',
      )
      .exactOptional(),
  };
  const kind = choice('through', 'lapped');

  const wood = {
    species: name('the name of a wood').describe('The wood, by its name.').exactOptional(),
    grain: choice('flatsawn', 'quartersawn')
      .describe('How the boards were cut from the log: which way they move most.')
      .exactOptional(),
  };
  const board = (what: string) =>
    group('{thickness: 11, species: "Ash, white"}', {
      thickness: thickness().describe(what).exactOptional(),
      ...wood,
    }).exactOptional();

  /** What every drawer of a plan may have, and any drawer may have instead. */
  const drawerKeys = {
    stock: group('{front: {thickness: 20}, side: {thickness: 11}}', {
      front: board('Thickness of the fronts. Must be given where there are drawers.'),
      side: board('Thickness of the sides. Must be given where there are drawers.'),
      back: board("Thickness of the backs. The sides' unless given."),
      bottom: board("Thickness of the bottoms. The groove's width unless given."),
    })
      .describe('What the parts are made of.')
      .exactOptional(),
    joint: group('{slope: "1:7", pin: 5}', {
      kind: kind.describe('The kind of the front corners. `lapped` unless given.').exactOptional(),
      ...corner,
      ...lap,
    })
      .describe('The front corners.')
      .exactOptional(),
    groove: group('{offset: 10, width: 5, depth: 5}', {
      offset: gap()
        .describe("From the bottom edge to the groove's lower edge. 10 mm unless given.")
        .exactOptional(),
      width: length(GROOVE).describe("The groove's width. 5 mm unless given.").exactOptional(),
      depth: length(GROOVE)
        .describe("The groove's depth. Half the side's thickness, down to the half millimetre, unless given.")
        .exactOptional(),
    })
      .describe('The groove for the bottom, in the front and the sides.')
      .exactOptional(),
    fit: group('{side: 0.5, top: 1, behind: 10}', {
      side: gap().describe('Left free on each side. 0.5 mm unless given.').exactOptional(),
      top: gap().describe('Left free above. 1 mm unless given.').exactOptional(),
      behind: gap().describe('Left free behind. 10 mm unless given.').exactOptional(),
    })
      .describe('What is left free round a drawer in its opening.')
      .exactOptional(),
    back: group('{drop: 4, joint: {pin: 6}}', {
      drop: gap()
        .describe("How far the back's top edge lies under the sides'. 4 mm unless given.")
        .exactOptional(),
      joint: group('{pin: 6, tails: 3}', corner)
        .describe("The back corners, always through joints. As the front's, but for the tails, unless given.")
        .exactOptional(),
    })
      .describe('The back and its corners.')
      .exactOptional(),
    bottom: group('{kind: panel, slack: 0.5}', {
      kind: choice('panel', 'solid')
        .describe(
          'A panel that does not move, or solid wood with its grain from side to side. `panel` unless given.',
        )
        .exactOptional(),
      slack: gap().describe('Left free at each side, in the groove. 0.5 mm unless given.').exactOptional(),
      slips: z
        .union(
          [
            group('{width: 10, height: 15}', {
              width: size().describe("A slip's width, from the side inwards."),
              height: size().describe("A slip's height, from the side's bottom edge up."),
            }),
            z.literal('none'),
          ],
          { error: 'written {width: 10, height: 15}, or none' },
        )
        .describe('Strips glued inside the sides, which carry the groove instead. `none` unless given.')
        .exactOptional(),
    })
      .describe('The bottom.')
      .exactOptional(),
    front: group('{lip: 6}', {
      lip: z
        .union(
          [
            gap().transform((all) => ({ sides: all, top: all, bottom: all })),
            group('{sides: 6, top: 6, bottom: 0}', {
              sides: gap().describe('On the left and on the right, each. 0 unless given.').exactOptional(),
              top: gap().describe('0 unless given.').exactOptional(),
              bottom: gap().describe('0 unless given.').exactOptional(),
            }).transform(({ sides = 0, top = 0, bottom = 0 }) => ({ sides, top, bottom })),
          ],
          { error: 'one length all round, or written {sides: 6, top: 6, bottom: 0}' },
        )
        .describe("How far the front overlaps its opening's edges. 0, for an inset front, unless given.")
        .exactOptional(),
    })
      .describe('The front.')
      .exactOptional(),
  };

  const box = (what: string) =>
    group('{width: 280, height: 76, depth: 420}', { width: size(), height: size(), depth: size() })
      .describe(what)
      .exactOptional();
  const drawer = group('{name: Buttons, opening: {width: 280, height: 76, depth: 420}}', {
    name: name('the name of a drawer').describe('What the drawer is called; no two may have one name.'),
    count: wholeNumber(COUNT).describe('How many equal ones are made. 1 unless given.').exactOptional(),
    opening: box('The clear hole that the drawer slides into. Give this or `size`.'),
    size: box("The drawer's own outer size, in place of `opening`."),
    ...drawerKeys,
  });
  const joint = group('{name: Carcase, kind: through, width: 430, tailBoard: 19, pinBoard: 19}', {
    name: name('the name of a corner').describe('What the corner is called; no two may have one name.'),
    kind: kind.describe('Through, or lapped: hidden at the front.'),
    width: size().describe('Width of both boards at the joint.'),
    tailBoard: thickness().describe('Thickness of the board that carries the tails.'),
    pinBoard: thickness().describe('Thickness of the board that carries the pins.'),
    ...corner,
    ...lap,
  });

  return group('with keys such as drawers: or joints:', {
    name: name('the name of the plan')
      .describe('What is being made. `Untitled` unless given.')
      .exactOptional(),
    units: choice('mm', 'in')
      .describe('What a bare number means, and how lengths are shown. `mm` unless given.')
      .exactOptional(),
    ...drawerKeys,
    family: group('{target: 18}', {
      target: size()
        .describe(
          "The width at the tip that the whole set's tails should keep to. Found from the set unless given.",
        )
        .exactOptional(),
    })
      .describe('The look that all drawers share.')
      .exactOptional(),
    drawers: z
      .array(drawer, { error: 'a list of drawers, each with a dash before it' })
      .describe('Each kind of drawer. Any of the keys above may be given for one drawer too.')
      .exactOptional(),
    joints: z
      .array(joint, { error: 'a list of corners, each with a dash before it' })
      .describe('Corners that belong to no drawer.')
      .exactOptional(),
  });
};

/** A plan as it was written, lengths in mm, before defaults. */
export type WrittenPlan = z.output<ReturnType<typeof planSchema>>;
export type WrittenDrawer = NonNullable<WrittenPlan['drawers']>[number];
export type WrittenNamedJoint = NonNullable<WrittenPlan['joints']>[number];
export type WrittenJoint = NonNullable<WrittenDrawer['joint']>;
