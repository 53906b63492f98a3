/**
 * The blocks and the edges that corners are pictured by, against the same boards as solids through manifold-3d
 * (https://github.com/elalish/manifold, Apache-2.0), which are cut to the gauges' settings.
 */
import fc from 'fast-check';
import type { Manifold, Vec3 } from 'manifold-3d';
import { describe, expect, it } from 'vitest';
import type { Joint, JointBoard } from '../../src/joint/joint.ts';
import { OUTSIDE } from '../../src/sheets/corners/axonometry.ts';
import type { ConvexBlock } from '../../src/sheets/corners/convexBlock.ts';
import { cornerBlocks } from '../../src/sheets/corners/cornerBlocks.ts';
import { type Place, partWay } from '../../src/sheets/corners/space.ts';
import { type Segment, trueEdges } from '../../src/sheets/corners/trueEdges.ts';
import { visibleParts } from '../../src/sheets/corners/visibleParts.ts';
import {
  closedSpec,
  jointsOf,
  listedSpec,
  ordinarySpec,
  shoulderedSpec,
  toothedSpec,
} from '../joint/anySpec.ts';
import { near } from './cornerChecks.ts';
import { BEYOND, cornerSolids, dispose, startSolids } from './jointSolids.ts';

const solids = await startSolids();
const { Manifold: Solid } = solids;

const anyCorner = jointsOf(fc.oneof(ordinarySpec, listedSpec, shoulderedSpec, closedSpec, toothedSpec));
const RUNS = { numRuns: 40 };
const BOARDS = ['tail', 'pin'] as const;

const hull = (block: ConvexBlock): Manifold =>
  Solid.hull(block.flatMap(({ corners }) => corners.map(([x, y, z]): Vec3 => [x, y, z])));

/** Both ways of telling what a board is: by the picture's blocks, and cut by its gauges. */
const bothWays = (
  joint: Joint,
  check: (board: JointBoard, blocks: readonly ConvexBlock[], solid: Manifold) => void,
): void => {
  const blocks = cornerBlocks(joint, BEYOND);
  const cut = cornerSolids(solids, joint);
  for (const board of BOARDS) check(board, blocks[board], board === 'tail' ? cut.tailBoard : cut.pinBoard);
  dispose(cut);
};

const apart = (a: Place, b: Place): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
const lengthOf = (segments: readonly Segment[]): number =>
  segments.reduce((sum, [a, b]) => sum + apart(a, b), 0);

/** The length of all edges at which a solid's surface turns. */
const edgesOf = (solid: Manifold): number => {
  const { vertProperties, triVerts, numProp } = solid.getMesh();
  const place = (vertex: number): Place => {
    const at = vertex * numProp;
    return [vertProperties[at] ?? 0, vertProperties[at + 1] ?? 0, vertProperties[at + 2] ?? 0];
  };
  const sides = new Map<string, { readonly length: number; readonly normals: Place[] }>();
  for (let i = 0; i < triVerts.length; i += 3) {
    const vertices = [0, 1, 2].map((j) => triVerts[i + j] ?? 0);
    const [a, b, c] = vertices.map(place) as [Place, Place, Place];
    const [u, v] = [
      b.map((each, k) => each - (a[k] ?? 0)),
      c.map((each, k) => each - (a[k] ?? 0)),
    ] as unknown as [Place, Place];
    const normal: Place = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    const size = Math.hypot(...normal);
    vertices.forEach((from, j) => {
      const to = vertices[(j + 1) % 3] ?? 0;
      const key = [from, to].sort((p, q) => p - q).join();
      const side = sides.get(key) ?? { length: apart(place(from), place(to)), normals: [] };
      side.normals.push([normal[0] / size, normal[1] / size, normal[2] / size]);
      sides.set(key, side);
    });
  }
  return [...sides.values()].reduce((sum, { length, normals: [one, other] }) => {
    if (one === undefined || other === undefined) throw new Error('an edge of one face');
    return sum + (apart(one, other) > 1e-3 ? length : 0);
  }, 0);
};

describe('the blocks that a corner is pictured by', () => {
  it('fill each board, and nothing else', () => {
    fc.assert(
      fc.property(anyCorner, (joint) => {
        bothWays(joint, (_, blocks, solid) => {
          const filled = Solid.union(blocks.map(hull));
          const [more, less] = [filled.subtract(solid), solid.subtract(filled)];
          near(more.volume(), 0, joint);
          near(less.volume(), 0, joint);
          for (const each of [filled, more, less]) each.delete();
        });
      }),
      RUNS,
    );
  });

  it('are nowhere in the same place', () => {
    fc.assert(
      fc.property(anyCorner, (joint) => {
        bothWays(joint, (_, blocks, solid) => {
          near(
            blocks.reduce((sum, block) => sum + hull(block).volume(), 0),
            solid.volume(),
            joint,
          );
        });
      }),
      RUNS,
    );
  });

  it('have as much of edges where their surface turns as the solid has', () => {
    fc.assert(
      fc.property(anyCorner, (joint) => {
        bothWays(joint, (_, blocks, solid) => {
          expect(lengthOf(trueEdges(blocks)) / edgesOf(solid)).toBeCloseTo(1, 4);
        });
      }),
      RUNS,
    );
  });
});

/** How much wood there is from a place on to the eye, in mm: along a needle that starts just before the place. */
const woodBefore = (solid: Manifold, from: Place): number => {
  const half = 1e-3;
  const [x, y, z] = OUTSIDE.eye;
  const at = (far: number): Vec3[] =>
    [-half, half].flatMap((right) =>
      [-half, half].map((up): Vec3 => {
        const [r, u] = [OUTSIDE.right, OUTSIDE.up];
        const along = (axis: 0 | 1 | 2, toEye: number) =>
          from[axis] + far * toEye + right * r[axis] + up * u[axis];
        return [along(0, x), along(1, y), along(2, z)];
      }),
    );
  const needle = Solid.hull([...at(0.02), ...at(3000)]);
  const met = needle.intersect(solid);
  const wood = met.volume() / (2 * half) ** 2;
  needle.delete();
  met.delete();
  return wood;
};

describe('the lines of a picture', () => {
  it('are drawn where no wood is before them, and left out where some is', () => {
    let [seen, hidden] = [0, 0];
    fc.assert(
      fc.property(anyCorner, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (joint, share) => {
        const { tail, pin } = cornerBlocks(joint, BEYOND);
        const cut = cornerSolids(solids, joint);
        const whole = cut.tailBoard.add(cut.pinBoard);
        const all = [...tail, ...pin];
        for (const edge of trueEdges(tail)) {
          const parts = visibleParts(edge, all, OUTSIDE.eye);
          for (const [a, b] of parts) expect(woodBefore(whole, partWay(a, b, share))).toBeLessThan(0.05);
          seen += parts.length;
          if (parts.length > 0) continue;
          expect(woodBefore(whole, partWay(...edge, share))).toBeGreaterThan(0);
          hidden += 1;
        }
        whole.delete();
        dispose(cut);
      }),
      { numRuns: 10 },
    );
    expect(Math.min(seen, hidden)).toBeGreaterThan(50);
  });
});
