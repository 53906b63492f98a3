import type { CabinetFront } from '../../drawer/arrangement/cabinetFront.ts';
import { type Fittings, isRound } from '../../drawer/fittings/fittings.ts';
import type { Drawing, FillMark, Path, Point } from '../../drawing/drawing.ts';
import { PENS } from '../../drawing/pens.ts';
import { polygon, rectangle, stroke } from '../../drawing/shapes.ts';

/** Corners of a drawn circle. */
const ROUND = 36;
/** How dark pulls and keyholes are: 0 black to 1 paper. */
const TONE = 0.25;

/**
 * Fronts to scale, by their places, each with its pulls and keyhole.
 * @param fittingsOf what is fixed to a front; undefined where nothing is, or nothing is to be shown
 */
export const frontsPicture = (
  fronts: readonly CabinetFront[],
  scale: number,
  fittingsOf: (front: CabinetFront) => Fittings | undefined,
): Drawing => {
  const half = PENS.medium.width / 2;
  const x0 = Math.min(...fronts.map(({ x }) => x));
  const y0 = Math.min(...fronts.map(({ y }) => y));
  const at = (x: number, y: number): Point => [(x - x0) * scale, (y - y0) * scale];
  const box = (left: number, low: number, right: number, high: number): Path =>
    rectangle(...at(left, low), ...at(right, high));
  const shapes = fronts.flatMap((front) => {
    const { pulls = [], lock } = fittingsOf(front) ?? {};
    const { x, y } = front;
    const keyhole = lock?.keyhole;
    return [
      ...pulls.map(({ at: [px, py], outline }) =>
        isRound({ outline })
          ? circle(at(x + px, y + py), ((outline.x1 - outline.x0) / 2) * scale)
          : box(x + outline.x0, y + outline.y0, x + outline.x1, y + outline.y1),
      ),
      ...(keyhole ? [circle(at(x + keyhole.at[0], y + keyhole.at[1]), (keyhole.diameter / 2) * scale)] : []),
    ];
  });
  const fills: FillMark[] =
    shapes.length === 0 ? [] : [{ kind: 'fill', role: 'hole', tone: TONE, paths: shapes }];
  const right = Math.max(...fronts.map((front) => front.x + front.width));
  const top = Math.max(...fronts.map((front) => front.y + front.height));
  const [x1, y1] = at(right, top);
  return {
    box: { x0: -half, y0: -half, x1: x1 + half, y1: y1 + half },
    marks: [
      stroke(
        'outline',
        'medium',
        fronts.map(({ x, y, width, height }) => box(x, y, x + width, y + height)),
      ),
      ...fills,
    ],
  };
};

export const circle = ([x, y]: Point, radius: number): Path =>
  polygon(
    Array.from({ length: ROUND }, (_, i): Point => {
      const turn = (2 * Math.PI * i) / ROUND;
      return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
    }),
  );
