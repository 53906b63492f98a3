import type { Path, Point } from '../../drawing/drawing.ts';
import type { DefectKind } from '../../stock/plank.ts';

/** Lines at these angles to the grain, in degrees, and how far apart, in mm on the paper. */
interface Hatching {
  readonly angles: readonly number[];
  readonly apart: number;
}

/** Each kind has a hatching of its own, so that it is known without its name. */
const HATCHINGS: Readonly<Record<DefectKind, Hatching>> = {
  'sound knot': { angles: [45], apart: 1 },
  'loose knot': { angles: [45, 135], apart: 1 },
  check: { angles: [0], apart: 0.7 },
  shake: { angles: [0, 90], apart: 0.9 },
  wane: { angles: [60], apart: 1.5 },
  sapwood: { angles: [135], apart: 2.6 },
  pith: { angles: [90], apart: 0.8 },
  wormhole: { angles: [0, 90], apart: 0.4 },
  stain: { angles: [120], apart: 1.8 },
};

/** The hatching of a defect inside its outline on the paper. */
export const defectHatch = (kind: DefectKind, outline: readonly Point[]): Path[] => {
  const { angles, apart } = HATCHINGS[kind];
  return angles.flatMap((angle) => hatchedAt(outline, (angle * Math.PI) / 180, apart));
};

const hatchedAt = (outline: readonly Point[], angle: number, apart: number): Path[] => {
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  // In turned axes the lines are level.
  const turned = outline.map(([x, y]): Point => [cosine * x + sine * y, cosine * y - sine * x]);
  const back = (x: number, y: number): Point => [cosine * x - sine * y, sine * x + cosine * y];
  const heights = turned.map(([, y]) => y);
  const first = Math.ceil(Math.min(...heights) / apart);
  const count = Math.max(0, Math.floor(Math.max(...heights) / apart) - first + 1);
  return Array.from({ length: count }, (_, i) => (first + i) * apart).flatMap((y) => {
    const ends = turned
      .flatMap(([ax, ay], i) => {
        const [bx, by] = turned[(i + 1) % turned.length] ?? [ax, ay];
        return ay > y === by > y ? [] : [ax + ((bx - ax) * (y - ay)) / (by - ay)];
      })
      .sort((p, q) => p - q);
    return ends.flatMap((from, i): Path[] =>
      i % 2 === 0 ? [{ points: [back(from, y), back(ends[i + 1] ?? from, y)] }] : [],
    );
  });
};
