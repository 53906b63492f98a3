import type { Path, Point } from './drawing.ts';

/** A corner of an outline, and the line or arc to the next corner. */
export interface Vertex {
  readonly at: Point;
  /** Tangent of a quarter of the arc's angle, counter-clockwise above 0; absent for a straight line. */
  readonly bulge?: number;
}

/** A closed outline of straight lines and circular arcs; it returns to its first corner. */
export type Outline = readonly Vertex[];

/** Largest distance of a chord from its arc, mm: less than a printer's dot or a laser's step. */
const CHORD_ERROR = 0.002;

/** The outline as a closed path, every arc as chords less than 0.002 mm from it. */
export const flatten = (outline: Outline): Path => ({
  points: outline.flatMap(({ at, bulge }, i) => [
    at,
    ...(bulge === undefined ? [] : between(at, outline[(i + 1) % outline.length]?.at ?? at, bulge)),
  ]),
  closed: true,
});

/** The points of an arc between its ends. */
const between = ([x0, y0]: Point, [x1, y1]: Point, bulge: number): Point[] => {
  const sweep = 4 * Math.atan(bulge);
  // The centre is beside the chord's middle by (1 - b²) / 4b of the chord.
  const aside = (1 - bulge ** 2) / (4 * bulge);
  const cx = (x0 + x1) / 2 - aside * (y1 - y0);
  const cy = (y0 + y1) / 2 + aside * (x1 - x0);
  const radius = Math.hypot(x0 - cx, y0 - cy);
  const start = Math.atan2(y0 - cy, x0 - cx);
  // A chord over an angle d is at most r (1 - cos d/2) from its arc, which is less than r d² / 8.
  const chords = Math.ceil(Math.abs(sweep) / Math.sqrt((8 * CHORD_ERROR) / radius));
  return Array.from({ length: chords - 1 }, (_, i): Point => {
    const angle = start + (sweep * (i + 1)) / chords;
    return [cx + radius * Math.cos(angle), cy + radius * Math.sin(angle)];
  });
};
