/** Corners of a polygon, in order: x at even places, y at odd ones. */
export type Polygon = Float64Array;

/** What a polygon is over a band of the plane: x of stretches from, to, from, to …, each list in rising order. */
export interface BandProfile {
  /** Where its border runs inside the band. */
  readonly border: readonly number[];
  /** Between those, where the whole width of the band is inside the polygon. */
  readonly inside: readonly number[];
}

/** The x of the stretch of an edge that lies inside a band, not counting the band's own borders. */
const edgeInBand = (
  [x0, y0, x1, y1]: readonly [number, number, number, number],
  low: number,
  high: number,
): [number, number] | undefined => {
  if (Math.max(y0, y1) <= low || Math.min(y0, y1) >= high) return undefined;
  const at = (y: number) => (y0 === y1 ? x0 : x0 + ((x1 - x0) * (y - y0)) / (y1 - y0));
  const a = y0 === y1 || (y0 >= low && y0 <= high) ? x0 : at(y0 < low ? low : high);
  const b = y0 === y1 || (y1 >= low && y1 <= high) ? x1 : at(y1 < low ? low : high);
  return [Math.min(a, b), Math.max(a, b)];
};

const contains = (polygon: Polygon, x: number, y: number): boolean => {
  let odd = false;
  for (let i = 0, j = polygon.length - 2; i < polygon.length; j = i, i += 2) {
    const [xi, yi, xj, yj] = [polygon[i] ?? 0, polygon[i + 1] ?? 0, polygon[j] ?? 0, polygon[j + 1] ?? 0];
    if (yi > y !== yj > y && x < xi + ((xj - xi) * (y - yi)) / (yj - yi)) odd = !odd;
  }
  return odd;
};

/** How a polygon lies in the band of all points with `low` < y < `high`. */
export const bandProfile = (polygon: Polygon, low: number, high: number): BandProfile => {
  const stretches: [number, number][] = [];
  for (let i = 0, j = polygon.length - 2; i < polygon.length; j = i, i += 2) {
    const edge = [polygon[j] ?? 0, polygon[j + 1] ?? 0, polygon[i] ?? 0, polygon[i + 1] ?? 0] as const;
    const stretch = edgeInBand(edge, low, high);
    if (stretch !== undefined) stretches.push(stretch);
  }
  stretches.sort((a, b) => a[0] - b[0]);
  const border: number[] = [];
  const inside: number[] = [];
  let end = Number.NEGATIVE_INFINITY;
  for (const [from, to] of stretches) {
    if (from > end) {
      // No border lies between: one point tells of the whole gap.
      if (border.length > 0 && contains(polygon, (end + from) / 2, (low + high) / 2)) inside.push(end, from);
      border.push(from, to);
    } else border[border.length - 1] = Math.max(end, to);
    end = Math.max(end, to);
  }
  return { border, inside };
};
