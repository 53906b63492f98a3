import type { StockName } from '../../stock/plank.ts';
import type { Sawing } from '../../stock/usualSawing.ts';
import type { Wanted, Zone } from '../../stock/wanted.ts';
import { EPSILON } from '../../units/epsilon.ts';
import type { Unit } from '../../units/unit.ts';
import { roughThickness, stockOf } from '../cuttingList.ts';
import type { Drawer } from '../drawer.ts';
import { indicesOf, type Part, type PartName } from '../partsList.ts';
import type { BoardsSpec } from './boardSpec.ts';
import { type PartEnd, partEnds } from './partEnds.ts';
import { type Strip, stripsOf } from './strips.ts';

/** Clear wood beyond a joint, in mm (common practice). */
const BEYOND_JOINT = 10;
/** The most strips that a part is glued up from. */
const MOST_STRIPS = 20;
/** Strips are sawn to the next 0.1 mm. */
const STRIP_STEP = 0.1;

/** A blank, and the part or the strip of one that it becomes. */
export interface PartBlank extends Wanted {
  readonly drawer: string;
  readonly part: PartName;
  /** Which of the equal parts, from 1: of sides the odd ones are left; absent for a spare. */
  readonly index?: number;
  /** Which strip of an edge-jointed part, from 1 at the reference edge up. */
  readonly strip?: number;
  /** The part's thickness when finished. */
  readonly finished: number;
}

/** A blank's size: its length along the grain, and its width, in mm. */
export interface BlankSize {
  readonly stock: StockName;
  readonly length: number;
  readonly width: number;
  /** Of the board. */
  readonly thickness: number;
  readonly eitherWay: boolean;
}

/** What all blanks of a set have in common. */
export interface BlankRules {
  readonly unit: Unit;
  readonly saw: Pick<Sawing, 'edge' | 'face'>;
  readonly allow: BoardsSpec['allow'];
  /** Whether some board has room for a blank, defects apart. */
  fits(blank: BlankSize): boolean;
}

/** The blanks of every equal part of a row of the parts list: one each, or the strips of one that no board is wide enough for. */
export const partBlanks = (drawer: Drawer, part: Part, rules: BlankRules): PartBlank[] => {
  const stripsOfPart = stripsThatFit(drawer, part, rules);
  return indicesOf(part).flatMap((index) => blanksOf(drawer, part, rules, stripsOfPart, index));
};

/** A second try of a part: what serves either of its hands. */
export const spareBlanks = (drawer: Drawer, part: Part, rules: BlankRules): PartBlank[] => {
  const strips = stripsThatFit(drawer, part, rules);
  const hands = part.hand === undefined ? [1, 2] : part.hand === 'left' ? [1, 1] : [2, 2];
  const [left = [], right = []] = hands.map((index) => blanksOf(drawer, part, rules, strips, index));
  return left.map(({ index: _, beside: __, ...blank }, i) => ({
    ...blank,
    zones: part.part === 'side' ? [...blank.zones, ...(right[i]?.zones ?? [])] : blank.zones,
    spare: true,
  }));
};

const sizeOf = (part: Part, width: number, { saw }: BlankRules): BlankSize => ({
  stock: stockOf(part.part),
  length: part.roughLength,
  width: width + 2 * saw.edge,
  thickness: roughThickness(part, saw),
  eitherWay: part.part === 'bottom' && part.grain === 'either way',
});

/** The whole width, or the fewest strips for which there is a board; the whole width where there is none for any. */
const stripsThatFit = (drawer: Drawer, part: Part, rules: BlankRules): readonly Strip[] => {
  const whole: readonly Strip[] = [[0, part.width]];
  for (let count = 1; count <= MOST_STRIPS; count++) {
    const strips = count === 1 ? whole : stripsOf(part.width, count, grooveOf(drawer, part));
    if (strips?.every((strip) => rules.fits(sizeOf(part, sawnWidth(strip, count), rules)))) return strips;
  }
  return whole;
};

const sawnWidth = ([from, to]: Strip, count: number): number =>
  count === 1 ? to - from : Math.ceil((to - from) / STRIP_STEP - EPSILON) * STRIP_STEP;

/** The groove that a part carries, from and to in mm above its reference edge. */
const grooveOf = (
  { spec: { groove, bottom, box }, sizes: { rebate } }: Drawer,
  { part }: Part,
): readonly [number, number] | undefined => {
  const carries =
    part === 'front' ||
    (part === 'back' && box !== undefined) ||
    part === (bottom.hold.kind === 'slips' ? 'slip' : 'side');
  const from = groove.offset + (part === 'front' ? rebate.bottom : 0);
  return carries ? [from, from + groove.width] : undefined;
};

const blanksOf = (
  drawer: Drawer,
  part: Part,
  rules: BlankRules,
  strips: readonly Strip[],
  index: number,
): PartBlank[] =>
  strips.map((strip, i) => {
    const size = sizeOf(part, sawnWidth(strip, strips.length), rules);
    return {
      ...size,
      drawer: part.drawer,
      part: part.part,
      index,
      ...(strips.length > 1 && { strip: i + 1 }),
      finished: part.thickness,
      allows: rules.allow[size.stock],
      zones: zonesOf(drawer, part, rules, size, strip, index),
      spare: false,
      ...(part.part === 'side' && { beside: `${part.drawer}, ${Math.ceil(index / 2)}` }),
    };
  });

/**
 * Where a blank may hold no defect at all, seen from its show face with the reference edge below. So a left side has its front
 * end at the right, and a right side at the left.
 */
const zonesOf = (
  drawer: Drawer,
  part: Part,
  { unit, saw }: BlankRules,
  { length, width }: BlankSize,
  [from, to]: Strip,
  index: number,
): Zone[] => {
  const [first, second] = partEnds(drawer, unit, part.hand)[part.part];
  const [left, right] = part.part === 'side' && index % 2 === 1 ? [second, first] : [first, second];
  // What a rough length is rounded up by is shared by both ends.
  const over = (part.roughLength - part.length - first.spare - second.spare) / 2;
  const reach = ({ spare, joint }: PartEnd) => spare + over + joint + BEYOND_JOINT;
  const groove = grooveOf(drawer, part);
  return [
    { from: [0, 0], to: [reach(left), width] },
    { from: [length - reach(right), 0], to: [length, width] },
    ...(groove === undefined || groove[1] <= from || groove[0] >= to
      ? []
      : [
          {
            from: [0, saw.edge + groove[0] - from],
            to: [length, saw.edge + groove[1] - from],
          } satisfies Zone,
        ]),
  ];
};
