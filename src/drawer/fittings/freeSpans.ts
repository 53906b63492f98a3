import type { Interval } from '../../joint/joint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { parseLength } from '../../units/parseLength.ts';
import { atLeast, atMost, type LengthWord, mm, typeOut } from '../../units/phrase.ts';

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

/** A mark of the reader's rule: as a word to be typed, and the length that is then read, in mm. */
export interface TypedMark {
  readonly word: LengthWord;
  readonly typed: number;
}

/** Of a value that lies in none of the spans, the nearest mark of the reader's rule that does; undefined where none does. */
export const nearestMarkIn = (
  value: number,
  spans: readonly Interval[],
  notation: Notation,
): TypedMark | undefined =>
  spans
    .flatMap((span): TypedMark[] => {
      // Nothing is a mark too, and where a span is less than one mark wide no other may be.
      const words = [value < span[0] ? atLeast(span[0]) : atMost(span[1]), mm(0)];
      return words.flatMap((word) => {
        const read = parseLength(typeOut([word], notation), unitOf(notation));
        return read.ok && isWithin(read.value, [span]) ? [{ word, typed: read.value }] : [];
      });
    })
    .reduce<TypedMark | undefined>(
      (best, each) =>
        best === undefined || Math.abs(each.typed - value) < Math.abs(best.typed - value) - EPSILON
          ? each
          : best,
      undefined,
    );
