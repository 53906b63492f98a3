import type { CabinetPlace } from '../../cabinet/cabinetSpec.ts';
import { USUAL_BOX, USUAL_FRONT } from '../../drawer/drawerSpec.ts';
import { hasLength, kindOf, OWN_LENGTH_KEYS } from '../../joint/kinds/kinds.ts';
import { KEYS_OF_SPACINGS, SPACING_OF, strayKeys } from '../../joint/spacingWish.ts';
import type { StockName } from '../../stock/plank.ts';
import type { Complaint, Place } from '../../units/complaint.ts';
import { nameKey } from '../../units/name.ts';
import { type Phrase, say } from '../../units/phrase.ts';
import { findWood } from '../../wood/species.ts';
import { mergeJoint } from '../fill/fillJoint.ts';
import { STOCKS } from '../schema/boardSchema.ts';
import { SPACING_KEYS } from '../schema/cornerSchema.ts';
import type { WrittenBox, WrittenDrawer, WrittenJoint, WrittenPlan } from '../schema/planSchema.ts';
import { isGroup } from './checkWhole.ts';

/** Keys that are written, and have no effect under a condition. */
interface Row<In> {
  readonly keys: readonly string[];
  where(plan: In): boolean;
  readonly because: Phrase;
}

type WrittenCabinet = NonNullable<WrittenPlan['cabinet']>;

/** The groups of keys that a plan gives for every drawer. */
const DRAWER_GROUPS = [
  'stock',
  'joint',
  'groove',
  'fit',
  'back',
  'bottom',
  'front',
  'pulls',
  'locks',
  'stops',
] as const;

const NO_DRAWERS = say`this plan has no drawers`;
const NO_CLIMATE = say`the movement of wood is calculated only where a climate is given`;

/** Drawers that only the rows of a cabinet name have no keys of their own. */
const drawersOf = ({ drawers = [], cabinet }: WrittenPlan): readonly WrittenDrawer[] =>
  drawers.length === 0 && cabinet !== undefined ? [{ name: '' }] : drawers;

/** A box's corners, its kind among their keys. */
const jointOf = ({ kind = USUAL_BOX, joint }: WrittenBox): WrittenJoint => ({ ...joint, kind });

/** Every corner that takes a plan's `joint` as a single one does: of boxes, and the single ones. */
const ownCorners = ({ boxes = [], joints = [] }: WrittenPlan): readonly WrittenJoint[] => [
  ...boxes.map(jointOf),
  ...joints,
];

/** Whether a straight cutter cuts any of a plan's pins: those of through corners, which every drawer has at its back. */
const cutsStraight = (plan: WrittenPlan): boolean =>
  drawersOf(plan).length > 0 ||
  ownCorners(plan).some(({ kind = USUAL_BOX }) => kindOf({ kind }).sockets === 'open');

/** Whether any of a plan's corners has stopped sockets. */
const cutsLapped = (plan: WrittenPlan): boolean =>
  drawersOf(plan).some((own) => isStopped(mergeJoint(plan.joint ?? {}, own.joint ?? {}))) ||
  ownCorners(plan).some(isStopped);

/** Whether any corner that takes a plan's `joint` has shoulders: a front, a box's, or a single one. */
const isShouldered = (plan: WrittenPlan): boolean =>
  [...drawersOf(plan), ...ownCorners(plan).map((joint) => ({ joint }))].some((own) =>
    hasShoulder(mergeJoint(plan.joint ?? {}, own.joint ?? {})),
  );

/** Whether any back has. */
const hasShoulderedBack = (plan: WrittenPlan): boolean =>
  drawersOf(plan).some((own) => (own.back?.joint?.shoulder ?? plan.back?.joint?.shoulder) !== undefined);

const hasShoulder = ({ kind = USUAL_FRONT, shoulder }: WrittenJoint): boolean => {
  const { shoulders } = kindOf({ kind });
  return shoulders === 'always' || (shoulders === 'wished' && shoulder !== undefined);
};

const isStopped = ({ kind = USUAL_FRONT }: Pick<WrittenJoint, 'kind'>): boolean =>
  kindOf({ kind }).sockets === 'stopped';

const hasTailCount = ({ tails, spacing }: WrittenJoint): boolean =>
  tails !== undefined || spacing === 'grouped';

const hasBoardsFor = ({ boards = [] }: WrittenPlan, stock: StockName): boolean =>
  boards.some(({ stock: stocks }) => stocks.includes(stock));

/** All rows of a cabinet, those inside its places too. */
const rowsIn = ({ rows }: WrittenCabinet): readonly (readonly CabinetPlace[])[] => [
  ...rows,
  ...rows.flat().flatMap((place) => ('rows' in place ? place.rows : [])),
];

const hasRails = (cabinet: WrittenCabinet): boolean =>
  cabinet.rails?.top !== undefined ||
  cabinet.rails?.bottom !== undefined ||
  (cabinet.rail > 0 &&
    [cabinet.rows, ...cabinet.rows.flat().flatMap((place) => ('rows' in place ? [place.rows] : []))].some(
      (rows) => rows.length > 1,
    ));

const hasDividers = (cabinet: WrittenCabinet): boolean =>
  cabinet.divider > 0 && rowsIn(cabinet).some((row) => row.length > 1);

/** Dividers that end at the cabinet's top (0) or its bottom (-1), those in rows inside a place too. */
const hasDividersAt = (end: 0 | -1, rows: readonly (readonly CabinetPlace[])[]): boolean => {
  const row = rows.at(end) ?? [];
  return row.length > 1 || row.some((place) => 'rows' in place && hasDividersAt(end, place.rows));
};

/** Wood that rails or dividers enter: a rail, or the cabinet. */
const hasTenons = (cabinet: WrittenCabinet): boolean =>
  hasRails(cabinet) ||
  (cabinet.divider > 0 && ([0, -1] as const).some((end) => hasDividersAt(end, cabinet.rows)));

/** Dividers that may be short: beside rows inside a place they reach back. */
const hasShortDividers = (cabinet: WrittenCabinet): boolean =>
  cabinet.divider > 0 &&
  rowsIn(cabinet).some((row) =>
    row.slice(1).some((place, i) => [row[i], place].every((each) => each !== undefined && !isDivided(each))),
  );

const isDivided = (place: CabinetPlace): boolean =>
  'rows' in place && (place.rows.length > 1 || place.rows.some((row) => row.length > 1));

/** A row for keys of a plan's cabinet. */
const ofCabinet = (
  keys: readonly string[],
  where: (cabinet: WrittenCabinet) => boolean,
  because: Phrase,
): Row<WrittenPlan> => ({
  keys: keys.map((key) => `cabinet.${key}`),
  where: ({ cabinet }) => cabinet !== undefined && where(cabinet),
  because,
});

/** Keys of the plan. */
const OF_PLAN: readonly Row<WrittenPlan>[] = [
  {
    keys: ['stock', 'groove', 'bottom', 'saw', 'boards', 'breakout'],
    where: (plan) => drawersOf(plan).length === 0 && (plan.boxes ?? []).length === 0,
    because: say`this plan has no drawers and no boxes`,
  },
  {
    keys: [
      'fit',
      'back',
      'front',
      'climate',
      'woods',
      'family',
      'stock.back',
      'groove.stopped',
      'bottom.slips',
    ],
    where: (plan) => drawersOf(plan).length === 0,
    because: NO_DRAWERS,
  },
  {
    keys: ['joint.kind', ...SPACING_KEYS.map((key) => `joint.${key}`)],
    where: (plan) => drawersOf(plan).length === 0,
    because: say`it is for the front corners of drawers, and this plan has no drawers`,
  },
  { keys: ['woods'], where: ({ climate }) => climate === undefined, because: NO_CLIMATE },
  {
    keys: ['family.target'],
    where: (plan) =>
      (plan.fingers === undefined || plan.family?.spacers === undefined) &&
      drawersOf(plan).every((own) => hasTailCount(mergeJoint(plan.joint ?? {}, own.joint ?? {}))),
    because: say`every drawer has its own number of tails`,
  },
  {
    keys: ['family.spacers', 'family.within', 'family.halfPins'],
    where: ({ fingers }) => fingers === undefined,
    because: say`spacers are for fingers, and this plan names none`,
  },
  {
    keys: ['family.halfPins'],
    where: ({ family }) => family?.target !== undefined,
    because: say`the set's tail width is given, so half pins stay as wished`,
  },
  {
    keys: ['joint.mitre'],
    where: (plan) => !isShouldered(plan) && !hasShoulderedBack(plan),
    because: say`no corner here is mitred`,
  },
  {
    keys: ['joint.shoulderWidth'],
    where: (plan) => !isShouldered(plan),
    because: say`no corner here has a mitred shoulder of its width`,
  },
  {
    keys: ['back.joint.shoulderWidth'],
    where: (plan) => !hasShoulderedBack(plan),
    because: say`no back here has a mitred shoulder`,
  },
  {
    keys: ['fingers.lapped'],
    where: (plan) => !cutsLapped(plan),
    because: say`no corner here is lapped`,
  },
  {
    keys: ['fingers.through'],
    where: (plan) => !cutsStraight(plan),
    because: say`no corner here is through`,
  },
  {
    keys: ['saw.kerf', 'saw.ends', 'saw.keep', 'breakout'],
    where: ({ boards = [] }) => boards.length === 0,
    because: say`the plan lists no boards`,
  },
  {
    keys: ['breakout.runThrough'],
    where: (plan) => !hasBoardsFor(plan, 'front'),
    because: say`no board is listed for fronts`,
  },
  ofCabinet(['runners.width'], (cabinet) => !hasRails(cabinet), say`no rail here has runners behind it`),
  ofCabinet(
    ['rails', 'runners.species'],
    (cabinet) => !hasRails(cabinet) && !hasDividers(cabinet),
    say`this cabinet has no rails and no dividers`,
  ),
  ofCabinet(
    ['rails.tenon'],
    (cabinet) => !hasTenons(cabinet),
    say`rails of 0 take no tenons, and no divider here meets the cabinet's top or bottom`,
  ),
  ofCabinet(['dividers'], (cabinet) => !hasShortDividers(cabinet), say`no divider here could be short`),
  ofCabinet(
    ['guides.height'],
    (cabinet) =>
      (cabinet.guides?.sides ?? 0) === 0 && (cabinet.dividers === 'full' || !hasShortDividers(cabinet)),
    say`no drawer here needs a guide`,
  ),
  ...STOCKS.map(
    (stock): Row<WrittenPlan> => ({
      keys: [`breakout.allow.${stock}`, `breakout.spare.${stock}`],
      where: (plan) => !hasBoardsFor(plan, stock),
      because: say`no board is listed for ${stock}s`,
    }),
  ),
  {
    keys: ['cutter.straight', 'cutter.pinBush'],
    where: (plan) => !cutsStraight(plan),
    because: say`no pins here are cut with a straight cutter`,
  },
];

/** A drawer, and the plan's keys with its own in their place. */
interface Case {
  readonly plan: WrittenPlan;
  readonly own: WrittenDrawer;
}

const isPanel = ({ plan, own }: Case): boolean =>
  (own.bottom?.kind ?? plan.bottom?.kind ?? 'panel') === 'panel';

const mergedAt = ({ plan, own }: Case, within: 'joint' | 'back.joint'): WrittenJoint => {
  const [outer = {}, inner = {}] =
    within === 'joint' ? [plan.joint, own.joint] : [plan.back?.joint, own.back?.joint];
  return mergeJoint(outer, inner);
};

const isFor = (key: keyof typeof SPACING_OF): Phrase => say`it is for spacing: ${SPACING_OF[key]}`;

const numberOf = (group: keyof typeof FITTING_KEYS, { plan, own }: Case): number | undefined =>
  own[group]?.number ?? plan[group]?.number;

/** What is said of fittings beside their number. */
const FITTING_KEYS = {
  pulls: ['above', 'fromEnds', 'lineUpWith', 'holes', 'size'],
  locks: ['pin', 'keyhole', 'body'],
  stops: ['fromSides', 'width', 'thickness', 'depth', 'behind'],
} as const;

/** Keys that a plan or one of its drawers may give. */
const OF_DRAWER: readonly Row<Case>[] = [
  {
    keys: ['fit.side', 'fit.top', 'fit.behind'],
    where: ({ own }) => own.size !== undefined,
    because: say`a drawer that is given its own size has no opening to fit`,
  },
  {
    keys: ['stock.bottom.grain'],
    where: isPanel,
    because: say`a panel does not move`,
  },
  {
    keys: ['stock.front.grain', 'stock.side.grain', 'stock.back.grain', 'stock.bottom.grain'],
    where: ({ plan }) => plan.climate === undefined,
    because: NO_CLIMATE,
  },
  ...(['pulls', 'locks', 'stops'] as const).map(
    (group): Row<Case> => ({
      keys: FITTING_KEYS[group].map((key) => `${group}.${key}`),
      where: (drawer) => numberOf(group, drawer) === 0,
      because: say`a number of 0 leaves this drawer without`,
    }),
  ),
  ...(['pulls.fromEnds', 'stops.fromSides'] as const).map(
    (key): Row<Case> => ({
      keys: [key],
      where: (drawer) =>
        (key === 'stops.fromSides' ? numberOf('stops', drawer) : (numberOf('pulls', drawer) ?? 1)) === 1,
      because: say`one alone is in the middle`,
    }),
  ),
  {
    keys: ['pulls.fromEnds'],
    where: ({ plan, own }) =>
      (own.pulls?.fromEnds === undefined ? plan : own).pulls?.lineUpWith !== undefined,
    because: say`lineUpWith says where the pulls are`,
  },
  {
    keys: ['pulls.lineUpWith'],
    where: ({ plan, own }) =>
      nameKey(own.pulls?.lineUpWith ?? plan.pulls?.lineUpWith ?? '') === nameKey(own.name),
    because: say`a drawer does not line up with itself`,
  },
  ...(['joint', 'back.joint'] as const).flatMap((within) =>
    KEYS_OF_SPACINGS.map(
      (key): Row<Case> => ({
        keys: [`${within}.${key}`],
        where: ({ plan, own }) => strayKeys(mergedAt({ plan, own }, within)).includes(key),
        because: isFor(key),
      }),
    ),
  ),
];

/** What restates a default is not told of. */
const DEFAULTS: Readonly<Record<string, unknown>> = {
  'stock.front.grain': 'flatsawn',
  'stock.side.grain': 'flatsawn',
  'stock.back.grain': 'flatsawn',
  'stock.bottom.grain': 'flatsawn',
};

const valueAt = (value: unknown, place: Place): unknown =>
  place.reduce<unknown>((inner, key) => (isGroup(inner) ? inner[key] : undefined), value);

/** The places of the keys that are written of those for drawers, each a value by itself. */
const leavesOf = (written: WrittenPlan | WrittenDrawer): readonly (readonly string[])[] =>
  DRAWER_GROUPS.flatMap((group) => keysIn(written, [group])).flatMap((place) =>
    place[0] === 'stock' || place.join('.') === 'back.joint' ? keysIn(written, place) : [place],
  );

const keysIn = (written: unknown, place: readonly string[]): string[][] => {
  const group = valueAt(written, place);
  return isGroup(group)
    ? Object.keys(group).flatMap((key) => (group[key] === undefined ? [] : [[...place, key]]))
    : [];
};

const ofCorner = (place: Place): boolean => place.at(-2) === 'joint';

const ALONG = ['fromEnds', 'lineUpWith'];

/** Whether a drawer has a value of its own in the place of the plan's. */
const overrides = ({ plan, own }: Case, place: readonly string[]): boolean => {
  if (valueAt(own, place) !== undefined) return true;
  // What says where a drawer's pulls are replaces the plan's way of saying it.
  if (place[0] === 'pulls' && ALONG.includes(place[1] ?? ''))
    return ALONG.some((key) => valueAt(own, ['pulls', key]) !== undefined);
  if (!ofCorner(place)) return false;
  // A number of tails replaces a list of them, and a kind the lengths of another.
  const merged = mergedAt({ plan, own }, place[0] === 'back' ? 'back.joint' : 'joint');
  return valueAt(merged, place.slice(-1)) === undefined;
};

/** Whether a single corner or a box takes a value from the plan's `joint`. */
const heldByCorner = (plan: WrittenPlan, place: readonly string[]): boolean => {
  const [group, key = ''] = place;
  if (group !== 'joint' || key === 'kind' || SPACING_KEYS.some((own) => own === key)) return false;
  const length = OWN_LENGTH_KEYS.find((own) => own === key);
  return ownCorners(plan).some(
    (corner) =>
      valueAt(corner, [key]) === undefined &&
      (length === undefined || hasLength(corner.kind ?? USUAL_BOX, length)),
  );
};

/** Whether a box takes a value from what the plan gives for the boards, the groove and the bottom of drawers. */
const heldByBox = ({ boxes = [] }: WrittenPlan, place: readonly string[]): boolean =>
  TAKEN_BY_BOXES.test(place.join('.')) && boxes.some((box) => valueAt(box, place) === undefined);

const TAKEN_BY_BOXES =
  /^(?:stock\.(?:front|side|bottom)\.(?:thickness|species)|groove\.(?:offset|width|depth)|bottom\.(?:kind|slack))$/u;

const tell = (at: Place, because: Phrase): Complaint => ({
  at,
  says: say`${at.join('.').replace(/\.(\d+)/u, '[$1]')} has no effect: ${because}`,
});

/** Why a leaf has no effect on one drawer, if it is written there; undefined where it has one. */
const uselessFor = (drawer: Case, place: readonly string[], value: unknown): Phrase | undefined => {
  const key = place.join('.');
  return OF_DRAWER.find((row) => row.keys.includes(key) && value !== DEFAULTS[key] && row.where(drawer))
    ?.because;
};

/** Why a plan's leaf has no effect on any of its drawers; undefined where it has one. */
const uselessForAll = (
  drawers: readonly Case[],
  place: readonly string[],
  value: unknown,
): Phrase | undefined => {
  let reason: Phrase | undefined;
  for (const drawer of drawers) {
    if (overrides(drawer, place)) continue;
    const because = uselessFor(drawer, place, value);
    if (because === undefined) return undefined;
    reason ??= because;
  }
  if (reason !== undefined) return reason;
  if (OWN_LENGTH_KEYS.some((key) => key === place.at(-1)))
    return say`no corner here takes its ${place.at(-1) ?? ''} from it`;
  return drawers.length === 0 && place[0] !== 'joint'
    ? say`no box here takes it`
    : say`every ${place[0] === 'joint' ? 'corner' : 'drawer'} that it is for has its own in its place`;
};

/** Advice on each key that is written, and has no effect on anything that this plan makes. */
export const unusedKeys = (plan: WrittenPlan): Complaint[] => {
  const told: Complaint[] = [];
  const isTold = (place: Place): boolean => told.some(({ at }) => at.every((key, i) => place[i] === key));
  for (const { keys, where, because } of OF_PLAN)
    for (const key of keys) {
      const place = key.split('.');
      if (valueAt(plan, place) !== undefined && !isTold(place) && where(plan))
        told.push(tell(place, because));
    }
  const drawers = drawersOf(plan).map((own): Case => ({ plan, own }));
  for (const place of leavesOf(plan)) {
    const because = uselessForAll(drawers, place, valueAt(plan, place));
    if (because !== undefined && !isTold(place) && !heldByCorner(plan, place) && !heldByBox(plan, place))
      told.push(tell(place, because));
  }
  drawers.forEach((drawer, i) => {
    for (const place of leavesOf(drawer.own)) {
      const because = uselessFor(drawer, place, valueAt(drawer.own, place));
      if (because !== undefined) told.push(tell(['drawers', i, ...place], because));
    }
  });
  plan.boxes?.forEach((box, i) => {
    for (const key of strayKeys(box.joint ?? {})) told.push(tell(['boxes', i, 'joint', key], isFor(key)));
  });
  plan.joints?.forEach((corner, i) => {
    for (const key of strayKeys(corner)) told.push(tell(['joints', i, key], isFor(key)));
  });
  return [...told, ...(isTold(['woods']) ? [] : unusedWoods(plan, drawers))];
};

/** Woods of a plan that no board is made of that moves. */
const unusedWoods = ({ woods = [], stock }: WrittenPlan, drawers: readonly Case[]): Complaint[] => {
  const species = drawers.flatMap((drawer) =>
    (['front', 'side', 'back', 'bottom'] as const).flatMap((part) =>
      part === 'bottom' && isPanel(drawer)
        ? []
        : (drawer.own.stock?.[part]?.species ?? stock?.[part]?.species ?? []),
    ),
  );
  const used = new Set(
    [...new Set(species)].flatMap((name) => {
      const found = findWood(name, woods);
      return found.ok ? [found.value] : [];
    }),
  );
  return woods
    .filter((wood) => !used.has(wood))
    .map(({ name }) => tell(['woods', name], say`no board that moves is made of it`));
};
