import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Resvg } from '@resvg/resvg-js';
import type { Vec3 } from 'manifold-3d';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Point } from '../../src/drawing/drawing.ts';
import type { Interval } from '../../src/joint/joint.ts';
import { said } from '../cli/program.ts';
import { expectedBands } from '../sheets/expectedLines.ts';
import { differences, type Segment } from '../sheets/segments.ts';
import { evenJoint } from './evenJoint.ts';
import { startSolids } from './jointSolids.ts';

const folder = mkdtempSync(join(tmpdir(), 'halfpin-'));
afterAll(() => rmSync(folder, { recursive: true }));

// The same corners as in the PDF, with the defaults of common practice worked out by hand.
const CORNERS = {
  lapped: {
    known: evenJoint({ kind: 'lapped', width: 96, tailBoard: 11, pinBoard: 20, depth: 15 }, 4, 5.5, 8),
    options: ['--width', '96', '--tail-board', '11', '--pin-board', '20', '--kind', 'lapped'],
  },
  through: {
    known: evenJoint({ kind: 'through', width: 560, tailBoard: 19, pinBoard: 19, depth: 19 }, 14, 9.5, 8),
    options: ['--width', '560', '--tail-board', '19', '--pin-board', '19', '--kind', 'through'],
  },
} as const;

const PIECES = [
  ['tail', 'left', 'tail-board-a'],
  ['tail', 'right', 'tail-board-b'],
  ['pin', 'left', 'pin-board-a'],
  ['pin', 'right', 'pin-board-b'],
] as const;

const cases = Object.entries(CORNERS).flatMap(([name, { known }]) =>
  PIECES.map(([board, hand, file]) => ({ file: `${name}-${file}.svg`, known, board, hand })),
);

beforeAll(() => {
  for (const [name, { options }] of Object.entries(CORNERS))
    said('draw', '--as', 'svg', '--name', name, '--out', folder, ...options);
});

const fileOf = (name: string): string => readFileSync(join(folder, name), 'utf8');

/** The paths of each group of a role, by their class, with their attributes. */
const groupsOf = (svg: string): Map<string, string[]> =>
  new Map(
    [...svg.matchAll(/<g class="([a-z]+)">([\s\S]*?)<\/g>/g)].map(([, role = '', inside = '']) => [
      role,
      [...inside.matchAll(/<path ([^>]*)>/g)].map(([, attributes = '']) => attributes),
    ]),
  );

/** The straight lines of path data that moves, runs straight and closes. */
const segmentsOf = (paths: readonly string[]): Segment[] =>
  paths.flatMap((attributes) => {
    const data = / ?d="([^"]*)"/.exec(attributes)?.[1] ?? '';
    let start: Point = [0, 0];
    let from = start;
    return [...data.matchAll(/([MLZ])(?:([-\d.]+) ([-\d.]+))?/g)].flatMap(([, step, x, y]): Segment[] => {
      const to: Point = step === 'Z' ? start : [Number(x), Number(y)];
      const line: Segment = [from, to];
      if (step === 'M') start = to;
      from = to;
      return step === 'M' ? [] : [line];
    });
  });

describe.each(cases)('$file', ({ file, known, board, hand }) => {
  const bands = expectedBands(known, board, hand);
  const width = bands.reduce((sum, band) => sum + band.width, 0);
  const starts = bands.map((_, i) => bands.slice(0, i).reduce((sum, band) => sum + band.width, 0));
  // Three millimetres stand out all round for the folds; y runs downward from the top.
  const flipped = (x0: number, [[ax, ay], [bx, by]]: Segment): Segment => [
    [ax + x0 + 3, known.width + 3 - ay],
    [bx + x0 + 3, known.width + 3 - by],
  ];

  it('is as large as its piece, in mm, and counts from its top left corner', () => {
    const size = [width + 6, known.width + 6];
    expect(fileOf(file)).toMatch(
      new RegExp(`^<svg [^>]*width="${size[0]}mm" height="${size[1]}mm" viewBox="0 0 ${size.join(' ')}">`),
    );
  });

  it('has every line where the formulas put it, in the group of its role, within 0.01 mm', () => {
    const groups = groupsOf(fileOf(file));
    for (const role of ['slope', 'square', 'baseline', 'lap'] as const) {
      const wanted = bands.flatMap(({ lines }, i) =>
        lines.filter(([kind]) => kind === role).map(([, line]) => flipped(starts[i] ?? 0, line)),
      );
      expect(differences(segmentsOf(groups.get(role) ?? []), wanted, 0.01)).toEqual([]);
    }
    const folds = starts.slice(1).map((x) =>
      flipped(x, [
        [0, -3],
        [0, known.width + 3],
      ]),
    );
    expect(differences(segmentsOf(groups.get('fold') ?? []), folds, 0.01)).toEqual([]);
  });

  it('has its reference edge at the bottom, drawn bold', () => {
    const bold = (groupsOf(fileOf(file)).get('outline') ?? []).filter((path) =>
      path.includes('stroke-width="0.5"'),
    );
    expect(
      differences(
        segmentsOf(bold),
        [
          flipped(0, [
            [0, 0],
            [width, 0],
          ]),
        ],
        0.01,
      ),
    ).toEqual([]);
  });

  it('is painted by resvg where it is written', () => {
    const dots = 20;
    const image = new Resvg(fileOf(file), {
      fitTo: { mode: 'width', value: (width + 6) * dots },
      background: 'white',
    }).render();
    const { pixels } = image;
    const ink = (x: number, y: number) => 1 - (pixels[(y * image.width + x) * 4] ?? 0) / 255;
    // Baselines stand upright: along each, the rows where nothing else comes near.
    const baselines = bands.flatMap(({ lines }, i) =>
      lines.filter(([role]) => role === 'baseline').map(([, [[x]]]) => (starts[i] ?? 0) + x + 3),
    );
    for (const x of baselines) {
      const offs: number[] = [];
      const reach = Math.round(0.4 * dots);
      const left = Math.round(x * dots) - reach;
      for (let y = Math.round(3.5 * dots); y < (known.width + 2.5) * dots; y++) {
        let sum = 0;
        let moment = 0;
        for (let i = 0; i < 2 * reach; i++) {
          const value = ink(left + i, y);
          sum += value;
          moment += value * (left + i + 0.5);
        }
        if (Math.abs(sum / dots - 0.25) < 0.01) offs.push(moment / sum / dots - x);
      }
      expect(offs.length).toBeGreaterThan(200);
      // Half of them at least: a line that comes near may weigh on the others.
      const median = offs.sort((p, q) => p - q)[Math.floor(offs.length / 2)];
      expect(Math.abs(median ?? Number.NaN)).toBeLessThan(0.01);
    }
    expect(baselines).toHaveLength(known.kind === 'lapped' && board === 'pin' ? 1 : 2);
  });
});

describe('the SVG files of a corner', () => {
  it('are one a piece, named for what it is called, the part and the corner', () => {
    expect(readdirSync(folder).sort()).toEqual(cases.map(({ file }) => file).sort());
  });

  it('hold groups of roles with plain paths, and neither a transform nor text that a font must set', () => {
    const roles = [
      'outline',
      'fold',
      'baseline',
      'lap',
      'slope',
      'square',
      'waste',
      'groove',
      'label',
      'scale',
    ];
    for (const { file } of cases) {
      const svg = fileOf(file);
      expect(svg).not.toMatch(/transform|<text|<use|style=/);
      const elements = new Set([...svg.matchAll(/<([a-z]+)/g)].map(([, name]) => name));
      expect([...elements].sort()).toEqual(['desc', 'g', 'path', 'svg', 'title']);
      const classes = [...svg.matchAll(/<g class="([^"]*)"/g)].map(([, name]) => name ?? '');
      expect(new Set(classes).size).toBe(classes.length);
      for (const name of classes) expect(roles).toContain(name);
    }
  });

  it('keep their words where a reader of screens finds them', () => {
    const svg = fileOf('lapped-pin-board-a.svg');
    expect(svg).toContain('<title>lapped, pin board, left corner, corner A, quantity 1</title>');
    for (const words of ['lapped · pin board', 'INSIDE FACE', 'lap 5 mm', 'slope 1:8', 'END'])
      expect(svg).toMatch(new RegExp(`aria-label="[^"]*${words}`));
  });
});

describe("a stopped groove in a through-jointed drawer's sides", () => {
  // Of the plan: fronts of 19 mm with a groove 5 deep, so a bottom's front edge lies 14 mm from the sides' ends.
  const PLAN = `
stock: {front: {thickness: 19}, side: {thickness: 12}, back: {thickness: 12}}
joint: {kind: through}
groove: {offset: 10, width: 6, depth: 5}
drawers:
  - {name: early, groove: {stopped: 4}, opening: {width: 280, height: 90, depth: 320}}
  - {name: late, groove: {stopped: auto}, opening: {width: 280, height: 90, depth: 320}}
  - {name: open, opening: {width: 280, height: 90, depth: 320}}
`;
  beforeAll(() => {
    const plan = join(folder, 'stopped.yaml');
    writeFileSync(plan, PLAN);
    said('draw', '--as', 'svg', '--out', join(folder, 'stopped'), plan);
  });

  it.each([
    ['early-left-side-a', 4],
    ['late-left-side-a', 14],
    ['late-right-side-b', 14],
    ['open-left-side-a', 0],
    // Of all three, where the groove runs out as far as the back.
    ['early-left-side-d', 0],
  ])('is cut by the ink of %s from %f mm on, and is not seen on the end', async (name, stop) => {
    const groups = groupsOf(readFileSync(join(folder, 'stopped', `${name}.svg`), 'utf8'));
    const folds = segmentsOf(groups.get('fold') ?? []).map(([[x]]) => x);
    const grooves = segmentsOf(groups.get('groove') ?? []);
    const points = grooves.flat();
    const [first = Number.NaN] = points.map(([x]) => x);
    const [arris = Number.NaN] = folds.toSorted((a, b) => Math.abs(a - first) - Math.abs(b - first));
    // None is on the end, between the folds.
    for (const [x] of points) expect(x <= Math.min(...folds) || x >= Math.max(...folds)).toBe(true);
    const along = points.map(([x]) => Math.abs(x - arris));
    const heights = points.map(([, y]) => y);
    const [from, to] = [Math.min(...along), Math.max(...along)];
    const width = Math.max(...heights) - Math.min(...heights);
    expect([from, width]).toEqual([expect.closeTo(stop, 3), expect.closeTo(6, 3)]);
    // Closed by one upright line where it stops, and by none where it runs out.
    expect(grooves.filter(([a, b]) => Math.abs(a[0] - b[0]) < 1e-3)).toHaveLength(stop === 0 ? 0 : 1);

    const { Manifold } = await startSolids();
    const cut = (x0: number, x1: number) => Manifold.cube([x1 - x0, 5, 6]).translate([x0, 0, 0]);
    const groove = cut(from, to);
    expect(groove.intersect(cut(0, 1)).isEmpty()).toBe(stop > 0);
    // All of the bottom's edge that lies in the side finds its groove.
    expect(cut(14, to).subtract(groove).volume()).toBeLessThan(0.1);
  });
});

describe.each(['buttons', 'ribbon', 'notions', 'cloth'])(
  'the back corners of %s, cut by the ink alone',
  (item) => {
    const readPiece = (name: string) => {
      const groups = groupsOf(readFileSync(join('templates-out', `${item}-${name}.svg`), 'utf8'));
      const bold = (groups.get('outline') ?? []).filter((path) => path.includes('stroke-width="0.5"'));
      const [[[, bottom]] = [[0, Number.NaN]]] = segmentsOf(bold);
      const folds = segmentsOf(groups.get('fold') ?? [])
        .map(([[x]]) => x)
        .sort((a, b) => a - b);
      // Heights above the edge at the bottom, by which the paper is laid on the wood.
      const lines = (role: string) =>
        segmentsOf(groups.get(role) ?? []).map(
          ([a, b]): Segment => [
            [a[0], bottom - a[1]],
            [b[0], bottom - b[1]],
          ],
        );
      const top = Math.max(...lines('outline').flatMap(([a, b]) => [a[1], b[1]]));
      return { folds, lines, top };
    };
    /** Heights at an upright line, from the lowest, of lines that end there. */
    const levelsAt = (lines: readonly Segment[], at: number): number[] =>
      lines
        .flat()
        .flatMap(([x, y]) => (Math.abs(x - at) < 1e-3 ? [y] : []))
        .sort((a, b) => a - b);
    const pairs = (levels: readonly number[]): Interval[] =>
      levels.flatMap((from, i) => (i % 2 === 0 ? [[from, levels[i + 1] ?? Number.NaN] as const] : []));

    it.each([
      ['left-side-d', 'back-d'],
      ['right-side-c', 'back-c'],
    ])(
      'close without a gap, %s laid by its reference edge and %s 16 mm up, at the groove',
      async (sideName, backName) => {
        // Of the plan: sides and backs of 11 mm, the groove's offset of 11 and its width of 5.
        const [thickness, up] = [11, 11 + 5];
        const { Manifold } = await startSolids();
        const block = ([x0, x1]: Interval, [y0, y1]: Interval, z: Interval) =>
          Manifold.cube([x1 - x0, y1 - y0, z[1] - z[0]]).translate([x0, y0, z[0]]);
        const wedge = (near: Interval, far: Interval) =>
          Manifold.hull(
            [0, thickness].flatMap((z): Vec3[] => [
              [near[0], 0, z],
              [near[1], 0, z],
              [far[0], thickness, z],
              [far[1], thickness, z],
            ]),
          );

        const side = readPiece(sideName);
        const arris = side.folds[0] ?? Number.NaN;
        const baseline = Math.min(...side.lines('baseline').map(([[x]]) => x));
        expect(arris - baseline).toBeCloseTo(thickness, 3);
        const slopes = side.lines('slope');
        const [bases, tips] = [pairs(levelsAt(slopes, baseline)), pairs(levelsAt(slopes, arris))];
        const lowest = Math.min(...side.lines('square').flatMap(([a, b]) => [a[1], b[1]]));
        const sideBoard = Manifold.union([
          block([0, side.top], [-20, 0], [0, thickness]),
          block([0, lowest], [0, thickness], [0, thickness]),
          ...bases.map((base, i) => wedge(base, tips[i] ?? [0, 0])),
        ]);

        const back = readPiece(backName);
        const sockets = back.folds.map((at) => pairs(levelsAt(back.lines('slope'), at)));
        // Sockets are narrowest at the inside arris.
        const [inside = [], outside = []] = sockets.toSorted(
          ([[a, b] = [0, 0]], [[c, d] = [0, 0]]) => b - a - (d - c),
        );
        const cut = Manifold.union(inside.map((near, i) => wedge(near, outside[i] ?? [0, 0])));
        const backBoard = Manifold.union([
          block([0, back.top], [0, thickness], [-20, 0]),
          block([0, back.top], [0, thickness], [0, thickness]).subtract(cut),
        ]);

        const corner = block([0, side.top], [0, thickness], [0, thickness]);
        const faults = (height: number) => {
          const placed = backBoard.translate([height, 0, 0]);
          return {
            shared: sideBoard.intersect(placed).volume(),
            open: corner.subtract(sideBoard.add(placed)).volume(),
          };
        };
        // What rounding to a ten-thousandth of a mm leaves.
        expect(faults(up).shared).toBeLessThan(1);
        expect(faults(up).open).toBeLessThan(1);
        // A tenth of a mm too low shows at every tail.
        expect(faults(up - 0.1).shared).toBeGreaterThan(10);
        expect(side.top).toBeCloseTo(up + back.top, 3);
        // The groove as at the front end: its upper edge is the back's lower one.
        const grooves = new Set(
          side
            .lines('groove')
            .flat()
            .map(([, y]) => y.toFixed(3)),
        );
        expect([...grooves].sort()).toEqual(['11.000', '16.000']);
      },
    );
  },
);
