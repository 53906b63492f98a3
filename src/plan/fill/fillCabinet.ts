import { checkFrame, type FrameSpec, type PlannedCabinet } from '../../cabinet/frameSpec.ts';
import { type CabinetOpening, openingsOf } from '../../cabinet/openings.ts';
import { checkTenons } from '../../cabinet/tenons.ts';
import { accept, type Complaint, type Place, type Result, refuse, under } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { nameKey } from '../../units/name.ts';
import { mm, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { MM_PER_INCH, type Unit } from '../../units/unit.ts';
import { closestWord } from '../check/editDistance.ts';
import type { WrittenDrawer, WrittenPlan } from '../schema/planSchema.ts';

/** What heights of rows are rounded to, in mm. */
const MARK: Readonly<Record<Unit, number>> = { mm: 0.5, in: MM_PER_INCH / 16 };

/** Of a frame, in mm, round in the plan's unit; common practice, without a source. */
const FRAME = {
  mm: { rail: 60, runner: 30, guide: 20 },
  in: { rail: 2.5 * MM_PER_INCH, runner: 1.25 * MM_PER_INCH, guide: 0.75 * MM_PER_INCH },
} as const satisfies Record<Unit, object>;

type WrittenCabinet = NonNullable<WrittenPlan['cabinet']>;

/** A drawer as written, with the openings that a cabinet gives it. */
export interface PlacedDrawer extends WrittenDrawer {
  readonly places?: readonly CabinetOpening[];
  /** What the cabinet leaves free behind it for air. */
  readonly vent?: number;
  /** The width of the rail that it stands on. */
  readonly rail?: number;
}

/** A cabinet with its openings, and the drawers that stand in them. */
interface FilledCabinet {
  readonly cabinet: PlannedCabinet;
  readonly drawers: readonly PlacedDrawer[];
}

/** Gives each drawer the opening of its places in the cabinet; where no drawers are listed, the rows name them. */
export const fillCabinet = (
  written: WrittenCabinet,
  listed: readonly WrittenDrawer[],
  unit: Unit,
): Result<FilledCabinet> => {
  const found = openingsOf(written, MARK[unit]);
  if (!found.ok) return refuse(...under(['cabinet'], found.complaints));
  const places = new Map<string, CabinetOpening[]>();
  for (const opening of found.value) {
    const key = nameKey(opening.name);
    places.set(key, [...(places.get(key) ?? []), opening]);
  }
  const drawers: readonly WrittenDrawer[] =
    listed.length > 0
      ? listed
      : [...places.values()].flatMap(([first]) => (first ? [{ name: first.name }] : []));
  const names = drawers.map(({ name }) => name);
  const known = new Set(names.map(nameKey));
  const unknown = [...places].flatMap(([key, [first]]) =>
    known.has(key) || first === undefined ? [] : [unknownName(first, names)],
  );
  const cabinet = { ...written, frame: fillFrame(written, found.value, unit), openings: found.value };
  const { vent } = cabinet.frame;
  const wrong = [
    ...under(['cabinet'], [...checkFrame(cabinet), ...checkTenons(cabinet)]),
    ...unknown,
    ...[...places.values()].flatMap(unequal),
    ...drawers.flatMap((drawer, i) => {
      const own = places.get(nameKey(drawer.name));
      // One without a place may be the one whose name is misspelt.
      if (own === undefined) return unknown.length > 0 ? [] : placeless(drawer, ['drawers', i]);
      return contradicted(drawer, own, ['drawers', i]);
    }),
  ];
  if (wrong.length > 0) return refuse(...wrong);
  return accept({
    cabinet,
    drawers: drawers.map((drawer): PlacedDrawer => {
      const own = places.get(nameKey(drawer.name));
      const [first] = own ?? [];
      if (own === undefined || first === undefined) return drawer;
      const { width, height, depth } = first;
      return {
        ...drawer,
        count: own.length,
        opening: drawer.opening ?? { width, height, depth },
        places: own,
        ...(vent !== undefined && { vent }),
        ...(own.some((each) => isOnRail(each, cabinet)) && { rail: cabinet.frame.rails.width }),
      };
    }),
  });
};

/** Usual sizes are less where a small cabinet has no room for them. */
const fillFrame = (
  { depth, rails = {}, runners = {}, guides = {}, dividers = 'short', vent }: WrittenCabinet,
  openings: readonly CabinetOpening[],
  unit: Unit,
): FrameSpec => {
  const { rail, runner, guide } = FRAME[unit];
  const least = (side: 'width' | 'height'): number => Math.min(...openings.map((each) => each[side]));
  return {
    rails: { width: Math.min(rail, (depth - (vent ?? 0)) / 2), tenon: 0, ...rails },
    dividers,
    runners: { width: Math.min(runner, least('width') / 2), ...runners },
    guides: { height: Math.min(guide, least('height')), sides: 0, ...guides },
    ...(vent !== undefined && { vent }),
  };
};

/** Whether a rail lies under an opening, and not the cabinet's bottom. */
const isOnRail = ({ y }: CabinetOpening, { rail, frame }: PlannedCabinet): boolean =>
  y > EPSILON ? rail > 0 : frame.rails.bottom !== undefined;

const placeOf = ({ row, column }: CabinetOpening): Place => ['cabinet', 'rows', row - 1, column - 1];

const unknownName = (opening: CabinetOpening, names: readonly string[]): Complaint => {
  const near = closestWord(opening.name, names);
  return {
    at: placeOf(opening),
    says: say`there is no drawer called ${quote(opening.name)}`,
    ...(near === undefined ? { remedy: say`list it under drawers: too` } : { hint: say`${near}` }),
  };
};

/** Drawers of one name are equal, so their openings must be. */
const unequal = ([first, ...others]: readonly CabinetOpening[]): Complaint[] => {
  if (first === undefined) return [];
  const differs = (one: number, other: number): boolean => Math.abs(one - other) > EPSILON;
  const other = others.find((each) => differs(each.width, first.width) || differs(each.height, first.height));
  return other === undefined
    ? []
    : [
        {
          at: placeOf(other),
          says: say`${quote(first.name)} would have places of two sizes: ${sizeOf(first)} in row ${first.row}, ${sizeOf(other)} in row ${other.row}`,
          remedy: say`give them two names, or give their rows one height`,
        },
      ];
};

const sizeOf = ({ width, height }: CabinetOpening) => say`${mm(width)} x ${mm(height)}`;

const placeless = ({ name, opening, size }: WrittenDrawer, at: Place): Complaint[] =>
  opening === undefined && size === undefined
    ? [
        {
          at: [...at, 'opening'],
          says: say`${quote(name)} has no place in the cabinet's rows, and no opening of its own`,
          remedy: say`name it in cabinet: rows, or give it an opening`,
        },
      ]
    : [];

/** What a drawer says of itself and its places in the cabinet say otherwise. */
const contradicted = (
  { name, count, opening, size }: WrittenDrawer,
  places: readonly CabinetOpening[],
  at: Place,
): Complaint[] => {
  // A measured opening is how that place turned out.
  const own =
    opening !== undefined && opening.shape === undefined
      ? 'opening'
      : size !== undefined
        ? 'size'
        : undefined;
  return [
    ...(own === undefined
      ? []
      : [
          {
            at: [...at, own],
            says: say`${quote(name)} stands in row ${places[0]?.row ?? 0} of the cabinet, and its opening follows from that`,
            remedy: say`remove its ${own}, or leave its name out of the rows`,
          },
        ]),
    ...(count === undefined || count === places.length
      ? []
      : [
          {
            at: [...at, 'count'],
            says: say`${quote(name)} has a count of ${count}, and ${places.length} ${places.length === 1 ? 'place' : 'places'} in the cabinet's rows`,
            hint: say`${places.length}`,
            remedy: say`leave the count out`,
          },
        ]),
  ];
};
