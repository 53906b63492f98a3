import { type Interval, shoulderWidth } from '../../joint/joint.ts';
import { kindOf, OWN_LENGTHS } from '../../joint/kinds/kinds.ts';
import type { Place } from '../../units/complaint.ts';
import type { CornerRef, EditedCorner } from './editedCorner.ts';

/** A measure of a corner or of its drawer that can be changed. */
export interface Quantity {
  readonly key: string;
  /** What it belongs to, and what it is called there. */
  readonly group: string;
  readonly label: string;
  /** What it is called in a sentence: `pin`, `sides' thickness`. */
  readonly name: string;
  readonly kind: 'length' | 'slope';
  /** Where it is written: in a drawer's entry, or among the plan's keys for all drawers; in the entry of a single corner. */
  readonly at: Place;
  /** Which corners of a drawer it belongs to: front and back each have their own, both have one, or only one has it. */
  readonly ends: 'each' | 'both' | 'front' | 'back';
  /** Whether all drawers may share it. */
  readonly shared: boolean;
  /** What it is now, in mm; of a slope, its run. Undefined where the corner has no such measure. */
  readonly get: (corner: EditedCorner) => number | undefined;
  /** Whether a corner with listed tails has not one, but its values among theirs. */
  readonly isListed?: boolean;
}

const measure = (
  key: string,
  [group, label, name]: readonly [group: string, label: string, name: string],
  at: Place,
  get: (corner: EditedCorner) => number | undefined,
  {
    kind = 'length',
    ends = 'both',
    shared = true,
    ...rest
  }: Partial<Pick<Quantity, 'kind' | 'ends' | 'shared' | 'isListed'>> = {},
): Quantity => ({ key, group, label, name, kind, at, ends, shared, get, ...rest });

/** Lengths that only some kinds of corner have; a drawer's are those of its front corners. */
const own = (within: Place): Quantity[] =>
  OWN_LENGTHS.map(({ key, word }) =>
    measure(
      key,
      ['Corner', word, word],
      [...within, key],
      ({ joint, drawer }) => {
        const front = drawer?.front ?? joint;
        return kindOf(front)
          .lengths.find((length) => length.key === key)
          ?.of(front);
      },
      { ends: 'front' },
    ),
  );

/** The width of mitred shoulders: of a drawer's front corners and of its back ones, or of a single corner. */
const SHOULDER = ['Corner', 'shoulder', 'shoulder'] as const;
const shoulders = (within: Place): Quantity =>
  measure(
    'shoulderWidth',
    SHOULDER,
    [...within, 'shoulderWidth'],
    ({ joint, drawer }) => shoulderWidth(drawer?.front ?? joint),
    { ends: 'front' },
  );

/**
 * Where tails are listed, so are the pins; where they are grouped, one that is inside a group. One tail has no pin, but a pin
 * that is given stays: one that is too wide leaves room for no more tails, and has to be put right there.
 */
const pin = ({ joint, listed, groups = [2], pin: given }: EditedCorner): number | undefined => {
  if (listed) return undefined;
  // Every group before it has one tail, and so no pin.
  const inside = groups.findIndex((tails) => tails > 1);
  // The one over the saw cut of a lid is wider.
  const [cut = -1] = joint.sawCut ?? [];
  const whole = joint.pins.filter(({ half, narrow }) => !half && !(cut > narrow[0] && cut < narrow[1]))[
    inside
  ];
  return whole === undefined ? given : widthOf(whole.narrow);
};

/** The pins between groups, from the reference edge up: from where to where they reach; none where tails are not grouped. */
export const groupPins = ({ joint, listed, groups = [] }: EditedCorner): Interval[] => {
  if (listed) return [];
  const whole = joint.pins.filter(({ half }) => !half);
  let tails = 0;
  return groups.slice(0, -1).flatMap((count) => {
    tails += count;
    const between = whole[tails - 1];
    return between === undefined ? [] : [between.narrow];
  });
};

const widthOf = ([from, to]: Interval): number => to - from;

/** A measure of the spacing, which is a corner's own: a back's lies among those of backs. */
const spacingMeasure = (
  { ref }: EditedCorner,
  key: 'smallPin' | 'groupPin',
  name: string,
  get: Quantity['get'],
): Quantity => {
  const isBack = ref.of === 'drawer' && ref.end === 'back';
  const at = ref.of === 'joint' ? [key] : isBack ? ['back', 'joint', key] : ['joint', key];
  return measure(key, ['Corner', name, name], at, get, { ends: isBack ? 'back' : 'front', shared: false });
};

/** The width of a hound's tooth's small pins. */
export const smallPinMeasure = (corner: EditedCorner): Quantity =>
  spacingMeasure(corner, 'smallPin', 'small pin', ({ joint: { smallPins: [first] = [] } }) =>
    first === undefined ? undefined : widthOf(first.narrow),
  );

/** The width of the pins between groups. */
export const groupPinMeasure = (corner: EditedCorner): Quantity =>
  spacingMeasure(corner, 'groupPin', 'pin between groups', (each) => {
    const [first] = groupPins(each);
    return first === undefined ? undefined : widthOf(first);
  });

const DIMENSIONS = [
  ['width', 'sizeWidth'],
  ['height', 'sizeHeight'],
  ['depth', 'sizeDepth'],
] as const;
const GROOVE = [
  ['grooveOffset', 'from edge', 'offset'],
  ['grooveWidth', 'width', 'width'],
  ['grooveDepth', 'depth', 'depth'],
] as const;
const BOARDS = [
  ['front', 'front', 'front'],
  ['side', 'sides', 'both'],
  ['back', 'back', 'back'],
] as const;

const DRAWER: readonly Quantity[] = [
  ...DIMENSIONS.map(([side]) =>
    measure(
      side,
      ['Opening', side, `opening's ${side}`],
      ['opening', side],
      ({ drawer }) => (drawer?.spec.space.kind === 'opening' ? drawer.spec.space.opening[side] : undefined),
      { shared: false },
    ),
  ),
  ...DIMENSIONS.map(([side, key]) =>
    measure(
      key,
      ['Drawer', side, `drawer's ${side}`],
      ['size', side],
      ({ drawer }) => (drawer?.spec.space.kind === 'size' ? drawer.spec.space.size[side] : undefined),
      { shared: false },
    ),
  ),
  measure('slope', ['Corner', 'slope', 'slope'], ['joint', 'slope'], ({ joint }) => joint.slope.run, {
    kind: 'slope',
    ends: 'each',
  }),
  measure('pin', ['Corner', 'pin', 'pin'], ['joint', 'pin'], pin, { ends: 'each', isListed: true }),
  ...own(['joint']),
  shoulders(['joint']),
  measure(
    'backShoulderWidth',
    SHOULDER,
    ['back', 'joint', 'shoulderWidth'],
    ({ drawer }) => drawer && shoulderWidth(drawer.back),
    { ends: 'back' },
  ),
  ...GROOVE.map(([key, label, of]) =>
    measure(key, ['Groove', label, `groove ${label}`], ['groove', of], ({ drawer }) =>
      drawer?.spec.groove.rebate && of !== 'depth' ? undefined : drawer?.spec.groove[of],
    ),
  ),
  ...BOARDS.map(([part, label, ends]) =>
    measure(
      part,
      ['Thickness', label, `thickness of the ${label}`],
      ['stock', part, 'thickness'],
      ({ drawer }) => drawer?.spec.stock[part].thickness,
      { ends },
    ),
  ),
];

/** All that a box has is its own; its joints are alike at front and back. */
const BOX: readonly Quantity[] = [
  ...DIMENSIONS.map(([side, key]) =>
    measure(
      key,
      ['Box', side, `box's ${side}`],
      ['size', side],
      ({ drawer }) => (drawer?.spec.space.kind === 'size' ? drawer.spec.space.size[side] : undefined),
      { shared: false },
    ),
  ),
  ...DRAWER.filter(
    ({ at: [group], key }) =>
      ['joint', 'groove', 'stock'].includes(String(group)) && key !== 'backShoulderWidth',
  ).map(
    (each): Quantity => ({
      ...each,
      shared: false,
      ...((each.ends === 'each' || each.at[0] === 'stock') && { ends: 'both' }),
    }),
  ),
];

const JOINT: readonly Quantity[] = [
  measure('jointWidth', ['Boards', 'width', 'width of both boards'], ['width'], ({ joint }) => joint.width),
  measure(
    'tailBoard',
    ['Boards', 'tail board', 'thickness of the tail board'],
    ['tailBoard'],
    ({ joint }) => joint.tailBoard.thickness,
  ),
  measure(
    'pinBoard',
    ['Boards', 'pin board', 'thickness of the pin board'],
    ['pinBoard'],
    ({ joint }) => joint.pinBoard.thickness,
  ),
  measure('slope', ['Corner', 'slope', 'slope'], ['slope'], ({ joint }) => joint.slope.run, {
    kind: 'slope',
  }),
  measure('pin', ['Corner', 'pin', 'pin'], ['pin'], pin, { isListed: true }),
  ...own([]),
  shoulders([]),
];

/** All measures of drawers, of boxes, or of single corners. */
export const measuresOf = (of: CornerRef['of']): readonly Quantity[] =>
  ({ drawer: DRAWER, box: BOX, joint: JOINT })[of];

/** Where the measures of a drawer, a box or a single corner are written, their keys with points between. */
export const measuredPlaces = (of: CornerRef['of']): ReadonlySet<string> =>
  new Set(measuresOf(of).map(({ at }) => at.join('.')));

/** The measures of a drawer's front or back, without those that only the other has; or of a single corner. */
const measuresAt = ({ ref }: EditedCorner): readonly Quantity[] =>
  ref.of === 'joint' ? JOINT : AT[ref.of][ref.end];

const atEnds = (all: readonly Quantity[]) => ({
  front: all.filter(({ ends }) => ends !== 'back'),
  back: all.filter(({ ends }) => ends !== 'front'),
});
const AT = { drawer: atEnds(DRAWER), box: atEnds(BOX) };

/** Every measure that a corner has. */
export const quantitiesOf = (corner: EditedCorner): readonly Quantity[] =>
  measuresAt(corner).filter(({ get }) => get(corner) !== undefined);

/** The same, and those whose values are among the listed widths. */
export const quantitiesShown = (corner: EditedCorner): readonly Quantity[] =>
  measuresAt(corner).filter(
    ({ get, isListed }) => get(corner) !== undefined || (corner.listed && isListed === true),
  );

/** One of them; undefined where the corner has none of that key. */
export const quantity = (corner: EditedCorner, key: string): Quantity | undefined =>
  measuresAt(corner).find((each) => each.key === key && each.get(corner) !== undefined);
