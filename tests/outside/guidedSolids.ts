import Module, { type Manifold, type Vec2, type Vec3 } from 'manifold-3d';
import type { Cutter } from '../../src/router/limits/cutter.ts';

export const wasm = await Module();
wasm.setup();
export const { Manifold: Solid, CrossSection } = wasm;

/** Enough that a circle's chords miss it by less than 0.001 mm. */
const SEGMENTS = 256;

/**
 * The space a dovetail cutter takes on its way from one point to another, its axis along z and its end at a level: an
 * independent statement of its shape, as a frustum that narrows by the tangent of its angle.
 */
export const sweep = (
  { diameter, angle }: Pick<Cutter, 'diameter' | 'angle'>,
  end: number,
  height: number,
  points: readonly Vec2[],
): Manifold => {
  const top = diameter / 2 - height * Math.tan((angle * Math.PI) / 180);
  const cutter = Solid.cylinder(height, diameter / 2, top, SEGMENTS);
  return Solid.hull(points.map(([x, y]) => cutter.translate([x, y, end])));
};

export const box = (from: Vec3, to: Vec3): Manifold =>
  Solid.cube([to[0] - from[0], to[1] - from[1], to[2] - from[2]]).translate(from);

/** A solid between polygons of one plane each, all of the same convex kind. */
export const hullOf = (points: readonly Vec3[]): Manifold => Solid.hull([...points]);

/** Whether one solid reaches into another by more than float dust. */
export const overlaps = (a: Manifold, b: Manifold): boolean => a.intersect(b).volume() > 1e-6;
