// The example's boards, sawn again from what breakout --json prints, by the rules of the answer and another library's polygons.
import { readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import clipping, { type Polygon } from 'polygon-clipping';
import { beforeAll, describe, expect, it } from 'vitest';
import { said } from '../cli/program.ts';

const PLAN = 'examples/haberdashery-chest-boards.yaml';

type Pair = [number, number];
interface Defect {
  readonly kind: string;
  readonly sound?: boolean;
  readonly at?: Pair;
  readonly size?: Pair;
  readonly from?: string;
  readonly length?: number;
  readonly outline?: Pair[];
}
interface Listed {
  readonly name: string;
  readonly stock: string | string[];
  readonly thickness: number;
  readonly length?: number;
  readonly width?: number | Pair;
  readonly outline?: Pair[];
  readonly clean?: string;
  readonly defects: readonly Defect[];
}
interface Blank {
  readonly drawer: string;
  readonly part: string;
  readonly index?: number;
  readonly spare?: boolean;
  readonly turned: boolean;
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
  readonly piece: number;
}
interface Board {
  readonly name: string;
  readonly blanks: readonly Blank[];
  readonly cuts: readonly { readonly kind: string; readonly piece: number; readonly at: number }[];
}

/** What the example's plan says of its saw and its joints. */
const [KERF, EDGE, ENDS, FACE] = [3, 3, 25, 1];
const ALLOWED: Readonly<Record<string, readonly string[]>> = {
  front: [],
  side: ['sapwood', 'sound knot'],
  back: ['sapwood', 'sound knot', 'stain'],
};
/** Spare, joint and 10 mm: of a front 18 and the side's 11, of a back 14 and 11; of a side 18 and tails of 15, or 14 and 11. */
const REACH = { front: 39, back: 35, sideFront: 43, sideBack: 35 };
/** 11 mm above the finished lower edge, 5 wide. */
const GROOVE = [EDGE + 11, EDGE + 16] as const;

const box = (x0: number, y0: number, x1: number, y1: number): Polygon => [
  [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ],
];
const areaOf = (shape: readonly Polygon[]): number =>
  shape.reduce(
    (sum, rings) =>
      sum +
      rings.reduce((all, ring, i) => {
        const twice = ring.reduce((total, [x, y], k) => {
          const [nextX, nextY] = ring[(k + 1) % ring.length] ?? [x, y];
          return total + x * nextY - nextX * y;
        }, 0);
        return all + ((i === 0 ? 1 : -1) * Math.abs(twice)) / 2;
      }, 0),
    0,
  );
const common = (a: Polygon, b: Polygon): number => areaOf(clipping.intersection(a, b));

const outlineOf = ({ length = 0, width = 0, outline }: Listed): Polygon => {
  const [left, right] = typeof width === 'number' ? [width, width] : width;
  return [
    outline ?? [
      [0, 0],
      [length, 0],
      [length, right],
      [0, left],
    ],
  ];
};

const defectOf = ({ at, size, from, length = 0, outline }: Defect, board: Polygon): Polygon => {
  if (outline) return [outline];
  const xs = (board[0] ?? []).map(([x]) => x);
  const ys = (board[0] ?? []).map(([, y]) => y);
  const [x0, y0, x1, y1] = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
  if (at && size)
    return box(at[0] - size[0] / 2, at[1] - size[1] / 2, at[0] + size[0] / 2, at[1] + size[1] / 2);
  return from === 'left' ? box(x0, y0, x0 + length, y1) : box(x1 - length, y0, x1, y1);
};

/** Where a blank may have no defect, on the board. */
const shutOf = ({ part, index = 1, x, y, length, width, turned }: Blank): Polygon[] => {
  const isLeft = part === 'side' && index % 2 === 1;
  const ends: Pair =
    part === 'front'
      ? [REACH.front, REACH.front]
      : part === 'back'
        ? [REACH.back, REACH.back]
        : isLeft
          ? [REACH.sideBack, REACH.sideFront]
          : [REACH.sideFront, REACH.sideBack];
  const [left, right] = turned ? [ends[1], ends[0]] : ends;
  const [low, high] = turned ? [width - GROOVE[1], width - GROOVE[0]] : GROOVE;
  return [
    box(x, y, x + left, y + width),
    box(x + length - right, y, x + length, y + width),
    ...(part === 'back' ? [] : [box(x, y + low, x + length, y + high)]),
  ];
};

interface Plan {
  readonly boards: readonly Listed[];
}
interface Part {
  readonly drawer: string;
  readonly part: string;
  readonly count: number;
  readonly width: number;
  readonly thickness: number;
  readonly roughLength: number;
}

describe('the boards of the example', () => {
  let boards: readonly Board[] = [];
  let runs: readonly { drawers: string[]; board: string; met: boolean }[] = [];
  const { boards: listed } = load(readFileSync(PLAN, 'utf8')) as Plan;
  const parts: readonly Part[] = JSON.parse(
    said('parts', 'examples/haberdashery-chest.yaml', '--json'),
  ).parts;
  const listedAs = (name: string): Listed => {
    const found = listed.find((board) => board.name === name);
    if (found === undefined) throw new Error(`no board ${name}`);
    return found;
  };
  beforeAll(() => {
    ({ boards, runs } = JSON.parse(said('breakout', PLAN, '--json')));
  });

  it('are nine, with some thirty defects', () => {
    expect(listed).toHaveLength(9);
    expect(listed.reduce((sum, { defects }) => sum + defects.length, 0)).toBeGreaterThanOrEqual(28);
  });

  it('give every front, side and back once', () => {
    const wanted = parts
      .filter(({ part }) => part !== 'bottom')
      .flatMap(({ drawer, part, count }) =>
        Array.from({ length: count }, (_, i) => `${drawer} ${part} ${i + 1}`),
      );
    const given = boards.flatMap(({ blanks }) =>
      blanks.filter(({ spare }) => !spare).map(({ drawer, part, index }) => `${drawer} ${part} ${index}`),
    );
    expect(given.sort()).toEqual(wanted.sort());
  });

  it('are sawn by cuts that each end what is there, and leave each blank as it is said to be', () => {
    for (const { name, blanks, cuts } of boards) {
      const outline = outlineOf(listedAs(name));
      const wood = new Map([[0, clipping.union(outline)]]);
      cuts.forEach(({ kind, piece, at }, k) => {
        const before = wood.get(piece);
        if (before === undefined) throw new Error(`${name}: there is no ${piece} to cut`);
        wood.delete(piece);
        const far = 1e5;
        const sides =
          kind === 'crosscut'
            ? [box(-far, -far, at, far), box(at + KERF, -far, far, far)]
            : [box(-far, -far, far, at), box(-far, at + KERF, far, far)];
        sides.forEach((side, i) => {
          const left = clipping.intersection(before, side);
          if (areaOf(left) > 0.01) wood.set(2 * k + 1 + i, left);
        });
      });
      for (const { piece, x, y, length, width } of blanks) {
        const own = wood.get(piece);
        if (own === undefined) throw new Error(`${name}: ${piece} is not sawn`);
        expect(areaOf(own)).toBeCloseTo(length * width, 0);
        expect(areaOf(clipping.difference(own, box(x, y, x + length, y + width)))).toBeLessThan(0.5);
      }
    }
  });

  it('are wide, long and thick enough for each blank, with their ends cut off', () => {
    for (const { name, blanks } of boards) {
      const board = listedAs(name);
      const off = { left: board.clean === 'left' ? 0 : ENDS, right: board.clean === 'right' ? 0 : ENDS };
      for (const { drawer, part, x, y, length, width } of blanks) {
        const row = parts.find((each) => each.drawer === drawer && each.part === part);
        if (row === undefined) throw new Error(`no ${drawer} ${part}`);
        expect([board.stock].flat()).toContain(part);
        expect(board.thickness).toBeGreaterThanOrEqual(row.thickness + 2 * FACE);
        expect(length).toBeGreaterThan(row.roughLength - 0.001);
        expect(width).toBeGreaterThan(row.width + 2 * EDGE - 0.001);
        const whole = box(x - off.left, y, x + length + off.right, y + width);
        expect(areaOf(clipping.difference(whole, outlineOf(board)))).toBeLessThan(0.01);
      }
    }
  });

  it('have no defect in a blank that it may not have there', () => {
    for (const { name, blanks } of boards) {
      const board = listedAs(name);
      const outline = outlineOf(board);
      for (const blank of blanks) {
        const { part, x, y, length, width } = blank;
        for (const defect of board.defects) {
          const kind = defect.kind === 'knot' ? `${defect.sound ? 'sound' : 'loose'} knot` : defect.kind;
          const places = ALLOWED[part]?.includes(kind) ? shutOf(blank) : [box(x, y, x + length, y + width)];
          for (const place of places)
            expect(common(place, defectOf(defect, outline)), `${name}: ${kind}`).toBeLessThan(0.01);
        }
      }
    }
  });

  it('have the figure run through each row that is said to be met', () => {
    for (const { drawers, board, met } of runs.filter((run) => run.met)) {
      expect(met).toBe(true);
      const fronts = (boards.find(({ name }) => name === board)?.blanks ?? []).filter(
        ({ drawer, part, spare }) => drawers.includes(drawer) && part === 'front' && !spare,
      );
      const row = fronts.toSorted((a, b) => (a.index ?? 0) - (b.index ?? 0));
      expect(row).toHaveLength(drawers.length);
      const [first] = row;
      const inOrder = first?.turned ? row.toReversed() : row;
      inOrder.forEach(({ x, y, turned }, i) => {
        expect(y).toBeCloseTo(first?.y ?? 0, 3);
        expect(turned).toBe(first?.turned);
        const before = inOrder[i - 1];
        if (before) expect(x - before.x - before.length).toBeGreaterThanOrEqual(KERF - 0.001);
      });
    }
    expect(runs).toHaveLength(3);
  });
});
