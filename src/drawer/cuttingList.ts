import type { FramePartName } from '../cabinet/frameMembers.ts';
import type { StockName } from '../stock/plank.ts';
import type { Sawing } from '../stock/usualSawing.ts';
import type { FramePart } from './arrangement/frameParts.ts';
import type { Hand } from './cornerLetters.ts';
import { drawerOf, type Part, type PartName, partWords } from './partsList.ts';

/** Parts of one drawer, of one box, or of the cabinet's frame, in a row of the cutting list. */
export interface ListedPart {
  /** The name of the drawer, or of the box; empty for a part of the frame. */
  readonly drawer: string;
  readonly box?: true;
  readonly copies?: readonly number[];
  readonly part: PartName | FramePartName;
  readonly hand?: Hand;
  readonly count: number;
}

/** `2 Buttons side; 4 runner`. */
export const listedText = (parts: readonly ListedPart[]): string =>
  parts
    .map((listed) =>
      [listed.count, ...(listed.drawer === '' ? [] : [drawerOf(listed)]), partWords(listed)].join(' '),
    )
    .join('; ');

/** Parts of one stock and one size, as they are sawn. Lengths in mm. */
export interface CuttingRow {
  readonly stock: StockName | 'frame';
  readonly species?: string;
  /** Finished. */
  readonly thickness: number;
  /** Of the board, before its faces are planed. */
  readonly roughThickness: number;
  readonly roughLength: number;
  readonly roughWidth: number;
  readonly count: number;
  /** Of all of them at their rough size, in mm³. */
  readonly volume: number;
  readonly parts: readonly ListedPart[];
}

/** The rows of one stock, of one wood and one thickness: the widest first, then the longest. */
export interface CuttingGroup extends Pick<CuttingRow, 'stock' | 'species' | 'thickness' | 'roughThickness'> {
  readonly count: number;
  /** In mm³. */
  readonly volume: number;
  readonly rows: readonly CuttingRow[];
}

/** The stock that a part comes from: slips are sawn from that of the sides. */
export const stockOf = (part: PartName): StockName => (part === 'slip' ? 'side' : part);

/** A part's width to saw to, its edges not yet planed. */
export const roughWidth = ({ width }: Pick<Part, 'width'>, { edge }: Pick<Sawing, 'edge'>): number =>
  width + 2 * edge;

/** The least thickness of a board that a part is made from, its faces not yet planed. */
export const roughThickness = (
  { thickness }: Pick<Part, 'thickness'>,
  { face }: Pick<Sawing, 'face'>,
): number => thickness + 2 * face;

/**
 * Every part as it is sawn from its board, by stock, wood and thickness, equal sizes together; those of a cabinet's frame last.
 * @example
 * ```ts
 * for (const { stock, rows } of cuttingList(parts(project.set), project.sawing))
 *   for (const { count, roughLength, roughWidth } of rows) console.log(stock, count, roughLength, roughWidth);
 * ```
 */
export const cuttingList = (
  parts: readonly Part[],
  saw: Pick<Sawing, 'edge' | 'face'>,
  frame: readonly FramePart[] = [],
): CuttingGroup[] => {
  const rows = together(
    [
      ...parts.map((part) => rowOf(part, stockOf(part.part), saw)),
      ...frame.map((part) => rowOf({ ...part, drawer: '' }, 'frame', saw)),
    ],
    sizeKey,
    (row, more) => ({
      ...row,
      count: row.count + more.count,
      volume: row.volume + more.volume,
      parts: [...row.parts, ...more.parts],
    }),
  );
  const groups = rows.map((row) => {
    const { parts: _, roughLength: __, roughWidth: ___, ...group } = row;
    return { ...group, rows: [row] };
  });
  return together(groups, groupKey, (group, more) => ({
    ...group,
    count: group.count + more.count,
    volume: group.volume + more.volume,
    rows: [...group.rows, ...more.rows],
  }))
    .map((group) => ({
      ...group,
      rows: group.rows.toSorted((a, b) => b.roughWidth - a.roughWidth || b.roughLength - a.roughLength),
    }))
    .toSorted((a, b) => STOCKS.indexOf(a.stock) - STOCKS.indexOf(b.stock));
};

/** What the parts of a group are called: `fronts`, `rails, runners and guides`. */
export const partNames = ({ rows }: CuttingGroup): string => {
  const names = rows.flatMap(({ parts }) => parts.map(({ part }) => `${part}s`));
  const [last = '', ...others] = [...new Set(names)].reverse();
  return others.length === 0 ? last : `${others.reverse().join(', ')} and ${last}`;
};

const STOCKS: readonly CuttingRow['stock'][] = ['front', 'side', 'back', 'bottom', 'frame'];

/** What is sawn to a size, for a drawer or for the frame. */
type Sawn = Pick<Part, 'count' | 'species' | 'width' | 'thickness' | 'roughLength'> & ListedPart;

const rowOf = (part: Sawn, stock: CuttingRow['stock'], saw: Pick<Sawing, 'edge' | 'face'>): CuttingRow => {
  const { drawer, box, copies, hand, count, species, thickness, roughLength } = part;
  const width = roughWidth(part, saw);
  const rough = roughThickness(part, saw);
  return {
    stock,
    ...(species === undefined ? {} : { species }),
    thickness,
    roughThickness: rough,
    roughLength,
    roughWidth: width,
    count,
    volume: count * roughLength * width * rough,
    parts: [
      {
        drawer,
        ...(box && { box }),
        ...(copies && { copies }),
        part: part.part,
        ...(hand && { hand }),
        count,
      },
    ],
  };
};

type Group = Pick<CuttingRow, 'stock' | 'species' | 'thickness'>;

const groupKey = ({ stock, species, thickness }: Group): string =>
  JSON.stringify([stock, species, thickness.toFixed(3)]);

/** Sizes that no rule can distinguish are equal. */
const sizeKey = (row: CuttingRow): string =>
  JSON.stringify([groupKey(row), row.roughLength.toFixed(3), row.roughWidth.toFixed(3)]);

/** Entries with one key merged, in the order in which they are first met. */
const together = <T>(entries: readonly T[], keyOf: (entry: T) => string, merge: (a: T, b: T) => T): T[] => {
  const found = new Map<string, T>();
  for (const entry of entries) {
    const key = keyOf(entry);
    const before = found.get(key);
    found.set(key, before === undefined ? entry : merge(before, entry));
  }
  return [...found.values()];
};
