import type { Mark } from '../../drawing/drawing.ts';
import type { Interval } from '../../joint/joint.ts';
import { EDGE_MARK_HEIGHT } from './edgeMark.ts';
import { type GrooveMark, grooveZone } from './grooveMark.ts';
import { type LabelArea, type Lettering, setLettering } from './lettering.ts';
import type { PlacedBand } from './placedBand.ts';

/** The grip's labels between two heights, clear of the face-edge mark and the groove; undefined where they do not fit. */
export const gripLettering = (
  { band, at, sense }: PlacedBand,
  lettering: Lettering,
  groove: GrooveMark | undefined,
  [from, to]: Interval,
): Mark[] | undefined => {
  const low = Math.max(from, EDGE_MARK_HEIGHT);
  const zone = band.name === 'inside' && groove !== undefined ? grooveZone(groove) : ([to, to] as const);
  const free = [
    [low, Math.min(zone[0], to)],
    [Math.max(zone[1], low), to],
  ] as const;
  const [a, b] = [at(band.reach), at(band.width)];
  const strips = free
    .filter(([y0, y1]) => y1 > y0)
    .sort((p, q) => q[1] - q[0] - (p[1] - p[0]))
    .map(
      ([y0, y1]): LabelArea => ({
        box: { x0: Math.min(a, b), x1: Math.max(a, b), y0, y1 },
        turn: 90,
        nameFirst: sense === -1,
      }),
    );
  const [first, ...more] = strips;
  return first && setLettering(first, lettering, more);
};
