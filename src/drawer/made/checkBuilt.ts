import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, atMost, mm, type Phrase, say } from '../../units/phrase.ts';
import { deepestBottom, screwPlace } from '../bottomDepth.ts';
import { HANDS } from '../cornerLetters.ts';
import { LEAST_HELD, TAPER_RANGE } from '../drawerLimits.ts';
import { type Sizes, sizesOf } from '../drawerSizes.ts';
import type { BuiltMeasure, DrawerSpec } from '../drawerSpec.ts';
import { type BuiltAt, builtAt, longSide } from './built.ts';

/**
 * What can no longer be made of boards as they came out, each with the nearest that can; joints apart.
 * @param spec the drawer with these boards
 * @returns complaints at a measure of the plan's list: `['asBuilt', 0, 'length']`
 */
export const checkBuilt = (spec: DrawerSpec): Complaint[] => {
  const sizes = sizesOf(spec);
  return [
    ...checkPair(spec),
    ...checkFit(spec, sizes),
    ...checkBack(spec, sizes),
    ...checkBottom(spec, sizes),
  ];
};

/** A measure that is too much for what takes at most so much, or too little for what needs at least so much. */
const bound = (
  built: BuiltAt | undefined,
  measure: BuiltMeasure,
  { least = 0, most = Number.POSITIVE_INFINITY }: { readonly least?: number; readonly most?: number },
  why: Phrase,
): Complaint[] => {
  const value = built?.board[measure];
  if (built === undefined || value === undefined || (value >= least - EPSILON && value <= most + EPSILON))
    return [];
  const { board, at } = built;
  const whose = board.part === 'side' ? `${board.hand} side` : board.part;
  const nearest = value > most ? atMost(most) : atLeast(least);
  return [
    {
      at: [...at, measure],
      says: say`the ${measure} of the ${whose} came out ${mm(value)}; ${why}, so it ${value > most ? 'may be at most' : 'must be at least'} ${nearest}`,
      hint: say`${nearest}`,
    },
  ];
};

/** Sides of two lengths. */
const checkPair = (spec: DrawerSpec): Complaint[] => {
  const [left, right] = HANDS.map((hand) => builtAt(spec, 'side', hand));
  const [one, other] = [left?.board.length, right?.board.length];
  return one === undefined || other === undefined || Math.abs(one - other) < EPSILON
    ? []
    : bound(
        one > other ? left : right,
        'length',
        { most: Math.min(one, other) },
        say`the other is ${mm(Math.min(one, other))} long, and unless both are alike no drawer is square`,
      );
};

const checkFit = (spec: DrawerSpec, { depth }: Sizes): Complaint[] => {
  const { space, lip } = spec;
  const front = builtAt(spec, 'front');
  const { length = 0, width = 0 } = front?.board ?? {};
  const side = longSide(spec);
  const lips =
    lip === undefined
      ? []
      : [
          ...bound(
            front,
            'length',
            { least: length - 2 * lip.sides },
            say`its lip would not reach over the opening's sides`,
          ),
          ...bound(
            front,
            'width',
            { least: width - lip.top },
            say`its lip would not reach over the opening's upper edge`,
          ),
        ];
  if (space.kind === 'size') return lips;
  const { opening, fit } = space;
  return [
    ...lips,
    ...(lip === undefined
      ? [
          ...bound(front, 'length', { most: opening.width }, say`the opening is ${mm(opening.width)} wide`),
          ...bound(front, 'width', { most: opening.height }, say`the opening is ${mm(opening.height)} high`),
        ]
      : []),
    ...HANDS.flatMap((hand) =>
      bound(
        builtAt(spec, 'side', hand),
        'width',
        { most: opening.height },
        say`the opening is ${mm(opening.height)} high`,
      ),
    ),
    ...bound(
      side,
      'length',
      { most: (side?.board.length ?? 0) + fit.behind },
      say`the drawer would be ${mm(depth)} deep, and the opening takes ${mm(depth + fit.behind)}`,
    ),
  ];
};

const checkBack = (spec: DrawerSpec, { width, height, sideHeight, backFrom }: Sizes): Complaint[] => {
  const back = builtAt(spec, 'back');
  const most = Math.min(height, sideHeight.left, sideHeight.right) - backFrom;
  return [
    ...bound(back, 'width', { most }, say`above the groove front and sides leave it ${mm(most)}`),
    ...bound(
      back,
      'length',
      { least: width - TAPER_RANGE.most, most: width - TAPER_RANGE.least },
      say`the drawer is ${mm(width)} wide in front, and behind it may be no wider, and no more than ${mm(TAPER_RANGE.most)} narrower`,
    ),
  ];
};

const checkBottom = (spec: DrawerSpec, sizes: Sizes): Complaint[] => {
  const { bottom, groove } = spec;
  const built = builtAt(spec, 'bottom');
  const [across, along] =
    bottom.kind === 'solid' ? (['length', 'width'] as const) : (['width', 'length'] as const);
  const value = built?.board[across] ?? 0;
  const most = value + 2 * bottom.slack;
  const deepest = deepestBottom(spec, sizes);
  return [
    ...bound(
      built,
      across,
      { least: most - 2 * (groove.depth - LEAST_HELD), most },
      say`the grooves' floors are ${mm(most)} apart, and each side must hold ${mm(LEAST_HELD)} of it`,
    ),
    ...bound(
      built,
      along,
      { least: screwPlace(spec, sizes), most: deepest },
      say`from the front's groove it must reach under the back's middle, ${mm(screwPlace(spec, sizes))} behind, and the space ends ${mm(deepest)} behind`,
    ),
  ];
};
