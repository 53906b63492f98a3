import type { ConvexBlock, Face } from './convexBlock.ts';
import { between, dot, isSame, type Place, partWay, SAME_PLACE } from './space.ts';

/** A straight line in space. */
export type Segment = readonly [from: Place, to: Place];

/**
 * The edges of a solid that is given as blocks side by side: of the blocks' edges those where its surface turns, and not
 * the seams in a flat surface or within. Each edge is whole between the blocks' corners on it, and there once.
 */
export const trueEdges = (blocks: readonly ConvexBlock[]): Segment[] => {
  const corners = distinct(blocks.flatMap((block) => block.flatMap((face) => face.corners)));
  const edges: Segment[] = [];
  for (const segment of blocks.flatMap(edgesOf).flatMap((edge) => splitAt(edge, corners)))
    if (!edges.some((other) => isOne(other, segment)) && turns(blocks, segment)) edges.push(segment);
  return edges;
};

const distinct = (places: readonly Place[]): Place[] =>
  places.filter((place, i) => places.findIndex((other) => isSame(place, other)) === i);

const isOne = ([a, b]: Segment, [c, d]: Segment): boolean =>
  (isSame(a, c) && isSame(b, d)) || (isSame(a, d) && isSame(b, c));

const edgesOf = (block: ConvexBlock): Segment[] =>
  block.flatMap(({ corners }) => corners.map((a, i): Segment => [a, corners[(i + 1) % corners.length] ?? a]));

/** The stretches of an edge between the places that lie on it. */
const splitAt = ([a, b]: Segment, places: readonly Place[]): Segment[] => {
  const way = between(a, b);
  const length2 = dot(way, way);
  const shares = places.flatMap((place) => {
    const share = dot(between(a, place), way) / length2;
    return share > 0 && share < 1 && isSame(place, partWay(a, b, share)) ? [share] : [];
  });
  const stops = [a, ...shares.sort((p, q) => p - q).map((share) => partWay(a, b, share)), b];
  return stops
    .slice(1)
    .flatMap((to, i): Segment[] => (isSame(stops[i] ?? to, to) ? [] : [[stops[i] ?? to, to]]));
};

/** How far a sum of angles may be out and still be a flat or a full one. */
const SAME_ANGLE = 1e-6;

/**
 * Whether the solid's surface turns at an edge: what its blocks take of a small turn round the edge's middle is neither the
 * half that a flat surface leaves nor all of it.
 */
const turns = (blocks: readonly ConvexBlock[], [a, b]: Segment): boolean => {
  const middle = partWay(a, b, 0.5);
  const taken = blocks.reduce((sum, block) => sum + angleAt(block, middle), 0);
  return Math.abs(taken - Math.PI) > SAME_ANGLE && Math.abs(taken - 2 * Math.PI) > SAME_ANGLE;
};

/** How much of a turn round a place a block takes: all within it, half on a face, and on an edge the angle of its faces. */
const angleAt = (block: ConvexBlock, place: Place): number => {
  const touched: Face[] = [];
  for (const face of block) {
    const above = dot(face.outward, place) - face.level;
    if (above > SAME_PLACE) return 0;
    if (above > -SAME_PLACE) touched.push(face);
  }
  const [one, other] = touched;
  if (one === undefined) return 2 * Math.PI;
  if (other === undefined) return Math.PI;
  return Math.PI - Math.acos(Math.min(1, Math.max(-1, dot(one.outward, other.outward))));
};
