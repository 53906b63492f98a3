import { EPSILON } from '../units/epsilon.ts';
import type { PlannedCabinet } from './frameSpec.ts';
import type { CabinetOpening } from './openings.ts';

/** A kind of part of a cabinet's frame. */
export type FramePartName = 'rail' | 'divider' | 'runner' | 'kicker' | 'guide';

/**
 * One part of a frame, between the shoulders of its tenons. Corners are in mm: x from the left and z up from the lower left
 * of the cabinet's clear inside, y back from its front.
 */
export interface FrameMember {
  readonly part: FramePartName;
  readonly from: readonly [x: number, y: number, z: number];
  readonly to: readonly [x: number, y: number, z: number];
  /** The drawers that it carries, holds down, guides or parts, from the left. */
  readonly drawers: readonly string[];
}

/** What a row holds in one place: an opening, or rows of them. */
interface Cell {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly openings: readonly CabinetOpening[];
}

/** From left to right, or from the lower to the upper end. */
type Span = readonly [from: number, to: number];

/** A level of the frame, as high as its rail: runners lie there for the openings above it, kickers for those under it. */
interface Level {
  readonly x: Span;
  readonly z: Span;
}

/** What lies along the sides of one opening, or of two beside each other, from rail to back. */
interface Band {
  readonly x: Span;
  /** What of it carries a drawer, one for each. */
  readonly strips: readonly Span[];
  readonly drawers: readonly string[];
}

/**
 * Every part that carries and guides a cabinet's drawers, from the top down: rails and dividers in front; behind a rail a
 * runner at each side of a drawer, flush with it, one for two drawers where a divider parts them; kickers, that keep a
 * drawer from tipping, where no runner lies over its side; and guides behind short dividers, and at the sides of a cabinet
 * that do not guide by themselves (common practice).
 */
export const frameOf = (cabinet: PlannedCabinet): FrameMember[] => {
  const { width, height, frame, openings } = cabinet;
  const { top, bottom, width: deep } = frame.rails;
  const rows = rowsOf(openings, ({ row, column }) => [row, column]);
  const { levels: between, dividers } = divisions(rows, [0, width], cabinet);
  const levels: readonly Level[] = [
    ...(top === undefined ? [] : [{ x: [0, width] as const, z: [height, height + top] as const }]),
    ...between,
    ...(bottom === undefined ? [] : [{ x: [0, width] as const, z: [-bottom, 0] as const }]),
  ];
  return [
    ...levels.map((level): FrameMember => {
      const { above, under } = meeting(level, openings);
      return {
        part: 'rail',
        from: [level.x[0], 0, level.z[0]],
        to: [level.x[1], deep, level.z[1]],
        drawers: namesOf(above.length > 0 ? above : under),
      };
    }),
    ...dividers,
    ...levels.flatMap((level) => carriers(level, cabinet)),
    ...guidesOf(dividers, cabinet),
  ];
};

const isSame = (one: number, other: number): boolean => Math.abs(one - other) < EPSILON;

const namesOf = (openings: readonly CabinetOpening[]): string[] => [
  ...new Set(openings.map(({ name }) => name)),
];

/** Where frame and drawers end behind. */
const backOf = ({ depth, frame: { vent = 0 } }: PlannedCabinet): number => depth - vent;

/** The cells of openings by the row and column that each has. */
const rowsOf = (
  openings: readonly CabinetOpening[],
  placeOf: (opening: CabinetOpening) => readonly [row: number, column: number],
): Cell[][] => {
  const most = (axis: 0 | 1, some: readonly CabinetOpening[]): number =>
    Math.max(...some.map((each) => placeOf(each)[axis]));
  const parted = (axis: 0 | 1, some: readonly CabinetOpening[]): CabinetOpening[][] =>
    Array.from({ length: most(axis, some) }, (_, i) => some.filter((each) => placeOf(each)[axis] === i + 1));
  return parted(0, openings).map((row) => parted(1, row).map(cellOf));
};

const cellOf = (openings: readonly CabinetOpening[]): Cell => {
  const x = Math.min(...openings.map((each) => each.x));
  const y = Math.min(...openings.map((each) => each.y));
  return {
    x,
    y,
    width: Math.max(...openings.map((each) => each.x + each.width)) - x,
    height: Math.max(...openings.map((each) => each.y + each.height)) - y,
    openings,
  };
};

/** The rails between rows and the dividers between places, those inside a place too. */
const divisions = (
  rows: readonly (readonly Cell[])[],
  x: Span,
  cabinet: PlannedCabinet,
): { levels: Level[]; dividers: FrameMember[] } => {
  const inner = rows.flat().flatMap((cell) => {
    const within = rowsOf(cell.openings, ({ inner: place = [1, 1] }) => place);
    return cell.openings.length > 1 ? [divisions(within, [cell.x, cell.x + cell.width], cabinet)] : [];
  });
  const levels = rows.slice(1).flatMap((row, i): Level[] => {
    const [upper, lower] = [rows[i]?.[0], row[0]];
    if (upper === undefined || lower === undefined) return [];
    const z = [lower.y + lower.height, upper.y] as const;
    return isSame(...z) ? [] : [{ x, z }];
  });
  const dividers = rows.flatMap((row) =>
    row.slice(1).flatMap((right, i) => {
      const left = row[i];
      return left === undefined || isSame(left.x + left.width, right.x)
        ? []
        : [dividerBetween(left, right, cabinet)];
    }),
  );
  return {
    levels: [...levels, ...inner.flatMap((each) => each.levels)],
    dividers: [...dividers, ...inner.flatMap((each) => each.dividers)],
  };
};

/** One beside rows inside a place reaches back, as their runners have nothing else to be fixed to. */
const dividerBetween = (left: Cell, right: Cell, cabinet: PlannedCabinet): FrameMember => {
  const { dividers, rails } = cabinet.frame;
  const isFull = dividers === 'full' || [left, right].some(({ openings }) => openings.length > 1);
  return {
    part: 'divider',
    from: [left.x + left.width, 0, left.y],
    to: [right.x, isFull ? backOf(cabinet) : rails.width, left.y + left.height],
    drawers: namesOf([...left.openings, ...right.openings]),
  };
};

/** The openings right above a level and right under it. */
const meeting = ({ x, z }: Level, openings: readonly CabinetOpening[]) => {
  const within = openings.filter((each) => each.x > x[0] - EPSILON && each.x + each.width < x[1] + EPSILON);
  return {
    above: within.filter(({ y }) => isSame(y, z[1])),
    under: within.filter(({ y, height }) => isSame(y + height, z[0])),
  };
};

/** The runners and kickers of one level. */
const carriers = (level: Level, cabinet: PlannedCabinet): FrameMember[] => {
  const { rails, runners: usual } = cabinet.frame;
  const { above, under } = meeting(level, cabinet.openings);
  const member = (part: FramePartName, x: Span, drawers: readonly string[]): FrameMember => ({
    part,
    from: [x[0], rails.width, level.z[0]],
    to: [x[1], backOf(cabinet), level.z[1]],
    drawers,
  });
  const runners = bandsOf(above, cabinet);
  const taken = runners.map(({ x }) => x);
  // A runner over half of the strip holds the drawer down as well as a kicker would.
  const isOpen = (strip: Span): boolean => lengthOf(without(strip, taken)) > usual.width / 2 + EPSILON;
  return [
    ...runners.map(({ x, drawers }) => member('runner', x, drawers)),
    ...bandsOf(under, cabinet).flatMap(({ x, strips, drawers }) =>
      strips.some(isOpen) ? [member('kicker', widest(without(x, taken)), drawers)] : [],
    ),
  ];
};

/** What lies along the sides of openings that stand beside each other, or at one level: one for both where a divider parts two. */
const bandsOf = (openings: readonly CabinetOpening[], cabinet: PlannedCabinet): Band[] => {
  const { width, divider, frame } = cabinet;
  const { sides } = frame.guides;
  const inOrder = [...openings].sort((one, other) => one.x - other.x);
  return inOrder.flatMap((opening, i): Band[] => {
    const { name, x } = opening;
    const end = x + opening.width;
    const left: Span = [x, x + frame.runners.width];
    const right: Span = [end - frame.runners.width, end];
    const isBeside = (one: CabinetOpening | undefined, other: CabinetOpening | undefined): boolean =>
      one !== undefined && other !== undefined && isSame(one.x + one.width + divider, other.x);
    const next = inOrder[i + 1];
    return [
      ...(isBeside(inOrder[i - 1], opening)
        ? []
        : [
            {
              x: [isSame(x, 0) ? -sides : x, left[1]] as const,
              strips: [left],
              drawers: [name],
            },
          ]),
      next !== undefined && isBeside(opening, next)
        ? {
            x: [right[0], next.x + frame.runners.width],
            strips: [right, [next.x, next.x + frame.runners.width]],
            drawers: namesOf([opening, next]),
          }
        : { x: [right[0], isSame(end, width) ? width + sides : end], strips: [right], drawers: [name] },
    ];
  });
};

/** What is left of a span beside others. */
const without = (span: Span, others: readonly Span[]): Span[] =>
  others.reduce<Span[]>(
    (left, [from, to]) =>
      left.flatMap((each): Span[] =>
        [[each[0], Math.min(each[1], from)] as const, [Math.max(each[0], to), each[1]] as const].filter(
          ([a, b]) => b - a > EPSILON,
        ),
      ),
    [span],
  );

const lengthOf = (spans: readonly Span[]): number => spans.reduce((sum, [from, to]) => sum + to - from, 0);

const widest = (spans: readonly Span[]): Span =>
  spans.reduce(
    (best, each) => (each[1] - each[0] > best[1] - best[0] + EPSILON ? each : best),
    spans[0] ?? [0, 0],
  );

/** Behind short dividers, and along the cabinet's sides where those lie outside the openings. */
const guidesOf = (dividers: readonly FrameMember[], cabinet: PlannedCabinet): FrameMember[] => {
  const { width, frame, openings } = cabinet;
  const { height, sides } = frame.guides;
  const back = backOf(cabinet);
  const guide = (x: Span, z: number, drawers: readonly string[]): FrameMember => ({
    part: 'guide',
    from: [x[0], frame.rails.width, z],
    to: [x[1], back, z + height],
    drawers,
  });
  return [
    ...dividers.flatMap(({ from, to, drawers }) =>
      to[1] < back - EPSILON ? [guide([from[0], to[0]], from[2], drawers)] : [],
    ),
    ...(sides > EPSILON ? openings : []).flatMap(({ name, x, y, width: wide }) => [
      ...(isSame(x, 0) ? [guide([-sides, 0], y, [name])] : []),
      ...(isSame(x + wide, width) ? [guide([width, width + sides], y, [name])] : []),
    ]),
  ];
};
