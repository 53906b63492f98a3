import { kindOf, OWN_LENGTHS } from '../../joint/kinds/kinds.ts';
import type { Place } from '../../units/complaint.ts';
import type { EditedCorner } from './editedCorner.ts';

/** A measure of a corner or of its drawer that can be changed. */
export interface Quantity {
  readonly key: string;
  /** What it belongs to, and what it is called there. */
  readonly group: string;
  readonly label: string;
  readonly kind: 'length' | 'slope';
  /** Where it is written: in a drawer's entry, or among the plan's keys for all drawers; in the entry of a single corner. */
  readonly at: Place;
  /** Whether all drawers may share it. */
  readonly shared: boolean;
  /** What it is now, in mm; of a slope, its run. Undefined where the corner has no such measure. */
  readonly get: (corner: EditedCorner) => number | undefined;
}

const measure = (
  key: string,
  [group, label]: readonly [string, string],
  at: Place,
  get: (corner: EditedCorner) => number | undefined,
  { kind = 'length', shared = true }: Partial<Pick<Quantity, 'kind' | 'shared'>> = {},
): Quantity => ({ key, group, label, kind, at, shared, get });

/** Lengths that only some kinds of corner have; a drawer's are those of its front corners. */
const own = (within: Place): Quantity[] =>
  OWN_LENGTHS.map(({ key, word }) =>
    measure(key, ['Corner', word], [...within, key], ({ joint, drawer }) => {
      const front = drawer?.front ?? joint;
      return kindOf(front)
        .lengths.find((length) => length.key === key)
        ?.of(front);
    }),
  );

/** Where tails are listed, so are the pins. */
const pin = ({ joint, listed }: EditedCorner): number | undefined => {
  if (listed) return undefined;
  const whole = joint.pins.find(({ half }) => !half);
  return whole && whole.narrow[1] - whole.narrow[0];
};

const DRAWER: readonly Quantity[] = [
  measure('width', ['Opening', 'width'], ['opening', 'width'], ({ drawer }) => opening(drawer)?.width, {
    shared: false,
  }),
  measure('height', ['Opening', 'height'], ['opening', 'height'], ({ drawer }) => opening(drawer)?.height, {
    shared: false,
  }),
  measure('depth', ['Opening', 'depth'], ['opening', 'depth'], ({ drawer }) => opening(drawer)?.depth, {
    shared: false,
  }),
  measure('sizeWidth', ['Drawer', 'width'], ['size', 'width'], ({ drawer }) => ownSize(drawer)?.width, {
    shared: false,
  }),
  measure('sizeHeight', ['Drawer', 'height'], ['size', 'height'], ({ drawer }) => ownSize(drawer)?.height, {
    shared: false,
  }),
  measure('sizeDepth', ['Drawer', 'depth'], ['size', 'depth'], ({ drawer }) => ownSize(drawer)?.depth, {
    shared: false,
  }),
  measure('slope', ['Corner', 'slope'], ['joint', 'slope'], ({ joint }) => joint.slope.run, {
    kind: 'slope',
  }),
  measure('pin', ['Corner', 'pin'], ['joint', 'pin'], pin),
  ...own(['joint']),
  measure(
    'grooveOffset',
    ['Groove', 'from edge'],
    ['groove', 'offset'],
    ({ drawer }) => drawer?.spec.groove.offset,
  ),
  measure('grooveWidth', ['Groove', 'width'], ['groove', 'width'], ({ drawer }) => drawer?.spec.groove.width),
  measure('grooveDepth', ['Groove', 'depth'], ['groove', 'depth'], ({ drawer }) => drawer?.spec.groove.depth),
  measure(
    'front',
    ['Thickness', 'front'],
    ['stock', 'front', 'thickness'],
    ({ drawer }) => drawer?.spec.stock.front.thickness,
  ),
  measure(
    'side',
    ['Thickness', 'sides'],
    ['stock', 'side', 'thickness'],
    ({ drawer }) => drawer?.spec.stock.side.thickness,
  ),
  measure(
    'back',
    ['Thickness', 'back'],
    ['stock', 'back', 'thickness'],
    ({ drawer }) => drawer?.spec.stock.back.thickness,
  ),
];

const opening = (drawer: EditedCorner['drawer']) =>
  drawer?.spec.space.kind === 'opening' ? drawer.spec.space.opening : undefined;
const ownSize = (drawer: EditedCorner['drawer']) =>
  drawer?.spec.space.kind === 'size' ? drawer.spec.space.size : undefined;

const JOINT: readonly Quantity[] = [
  measure('jointWidth', ['Boards', 'width'], ['width'], ({ joint }) => joint.width),
  measure('tailBoard', ['Boards', 'tail board'], ['tailBoard'], ({ joint }) => joint.tailBoard.thickness),
  measure('pinBoard', ['Boards', 'pin board'], ['pinBoard'], ({ joint }) => joint.pinBoard.thickness),
  measure('slope', ['Corner', 'slope'], ['slope'], ({ joint }) => joint.slope.run, { kind: 'slope' }),
  measure('pin', ['Corner', 'pin'], ['pin'], pin),
  ...own([]),
];

/** Every measure that a corner has. */
export const quantitiesOf = (corner: EditedCorner): readonly Quantity[] =>
  (corner.ref.of === 'drawer' ? DRAWER : JOINT).filter(({ get }) => get(corner) !== undefined);

export const quantity = (corner: EditedCorner, key: string): Quantity | undefined =>
  quantitiesOf(corner).find((each) => each.key === key);
