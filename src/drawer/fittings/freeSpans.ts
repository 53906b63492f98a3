import type { Interval } from '../../joint/joint.ts';
import { EPSILON } from '../../units/epsilon.ts';

/** What is left of a span where others are taken out of it: none, or several, in order. */
export const freeSpans = (whole: Interval, taken: readonly Interval[]): Interval[] =>
  taken.reduce<Interval[]>(
    (left, [from, to]) =>
      left.flatMap(([a, b]): Interval[] => {
        if (to <= a || from >= b) return [[a, b]];
        const parts: Interval[] = [
          [a, from],
          [to, b],
        ];
        return parts.filter(([c, d]) => d >= c);
      }),
    whole[1] < whole[0] - EPSILON ? [] : [whole],
  );

/** Whether a value lies in one of the spans. */
export const isWithin = (value: number, spans: readonly Interval[]): boolean =>
  spans.some(([from, to]) => value >= from - EPSILON && value <= to + EPSILON);

/** The value in one of the spans that is nearest; undefined where there are none. */
export const nearestIn = (value: number, spans: readonly Interval[]): number | undefined =>
  spans
    .map(([from, to]) => Math.min(Math.max(value, from), to))
    .reduce<number | undefined>(
      (best, each) =>
        best === undefined || Math.abs(each - value) < Math.abs(best - value) - EPSILON ? each : best,
      undefined,
    );
