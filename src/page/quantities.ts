import type { Place } from '../complaint.ts';
import type { Corner } from './corner.ts';

/** A measure of a corner or of its drawer that can be changed. */
export interface Quantity {
  readonly key: string;
  readonly label: string;
  readonly kind: 'length' | 'slope';
  /** Where it is written: in a drawer's entry, or among the plan's keys for all drawers; in the entry of a lone corner. */
  readonly at: Place;
  /** Whether all drawers may share it. */
  readonly shared: boolean;
  /** What it is now, in mm; of a slope, its run. Undefined where the corner has no such measure. */
  readonly get: (corner: Corner) => number | undefined;
}

const ofDrawer = (
  key: string,
  label: string,
  at: Place,
  get: (corner: Corner) => number | undefined,
  { kind = 'length', shared = true }: Partial<Pick<Quantity, 'kind' | 'shared'>> = {},
): Quantity => ({ key, label, kind, at, shared, get });

const lap = ({ joint, drawer }: Corner): number | undefined => {
  const front = drawer?.front ?? joint;
  return front.kind === 'lapped' ? front.pinBoard.lap : undefined;
};

const pin = ({ joint }: Corner): number | undefined => {
  const whole = joint.pins.find(({ half }) => !half);
  return whole && whole.narrow[1] - whole.narrow[0];
};

const DRAWER: readonly Quantity[] = [
  ofDrawer('width', 'Opening, width', ['opening', 'width'], ({ drawer }) => opening(drawer)?.width, {
    shared: false,
  }),
  ofDrawer('height', 'Opening, height', ['opening', 'height'], ({ drawer }) => opening(drawer)?.height, {
    shared: false,
  }),
  ofDrawer('depth', 'Opening, depth', ['opening', 'depth'], ({ drawer }) => opening(drawer)?.depth, {
    shared: false,
  }),
  ofDrawer('sizeWidth', 'Drawer, width', ['size', 'width'], ({ drawer }) => ownSize(drawer)?.width, {
    shared: false,
  }),
  ofDrawer('sizeHeight', 'Drawer, height', ['size', 'height'], ({ drawer }) => ownSize(drawer)?.height, {
    shared: false,
  }),
  ofDrawer('sizeDepth', 'Drawer, depth', ['size', 'depth'], ({ drawer }) => ownSize(drawer)?.depth, {
    shared: false,
  }),
  ofDrawer('slope', 'Slope', ['joint', 'slope'], ({ joint }) => joint.slope.run, { kind: 'slope' }),
  ofDrawer('pin', 'Pin, narrow', ['joint', 'pin'], pin),
  ofDrawer('lap', 'Lap', ['joint', 'lap'], lap),
  ofDrawer(
    'grooveOffset',
    'Groove, from the edge',
    ['groove', 'offset'],
    ({ drawer }) => drawer?.spec.groove.offset,
  ),
  ofDrawer('grooveWidth', 'Groove, width', ['groove', 'width'], ({ drawer }) => drawer?.spec.groove.width),
  ofDrawer('grooveDepth', 'Groove, depth', ['groove', 'depth'], ({ drawer }) => drawer?.spec.groove.depth),
  ofDrawer(
    'front',
    'Front, thickness',
    ['stock', 'front', 'thickness'],
    ({ drawer }) => drawer?.spec.stock.front.thickness,
  ),
  ofDrawer(
    'side',
    'Sides, thickness',
    ['stock', 'side', 'thickness'],
    ({ drawer }) => drawer?.spec.stock.side.thickness,
  ),
  ofDrawer(
    'back',
    'Back, thickness',
    ['stock', 'back', 'thickness'],
    ({ drawer }) => drawer?.spec.stock.back.thickness,
  ),
];

const opening = (drawer: Corner['drawer']) =>
  drawer?.spec.space.kind === 'opening' ? drawer.spec.space.opening : undefined;
const ownSize = (drawer: Corner['drawer']) =>
  drawer?.spec.space.kind === 'size' ? drawer.spec.space.size : undefined;

const JOINT: readonly Quantity[] = [
  ofDrawer('jointWidth', 'Boards, width', ['width'], ({ joint }) => joint.width),
  ofDrawer('tailBoard', 'Tail board, thickness', ['tailBoard'], ({ joint }) => joint.tailBoard.thickness),
  ofDrawer('pinBoard', 'Pin board, thickness', ['pinBoard'], ({ joint }) => joint.pinBoard.thickness),
  ofDrawer('slope', 'Slope', ['slope'], ({ joint }) => joint.slope.run, { kind: 'slope' }),
  ofDrawer('pin', 'Pin, narrow', ['pin'], pin),
  ofDrawer('lap', 'Lap', ['lap'], lap),
];

/** Every measure that a corner has. */
export const quantitiesOf = (corner: Corner): readonly Quantity[] =>
  (corner.ref.of === 'drawer' ? DRAWER : JOINT).filter(({ get }) => get(corner) !== undefined);

export const quantity = (corner: Corner, key: string): Quantity | undefined =>
  quantitiesOf(corner).find((each) => each.key === key);
