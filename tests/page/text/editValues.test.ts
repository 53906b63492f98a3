import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Edit, PlanValue } from '../../../src/page/text/edit.ts';
import { editPlan } from '../../../src/page/text/editPlan.ts';
import { editValues } from '../../../src/page/text/editValues.ts';
import { parse } from '../../../src/plan/read/parse.ts';
import type { Place } from '../../../src/units/complaint.ts';
import { anyJson, anyLayout } from './anyLayout.ts';

type Group = Readonly<Record<string | number, unknown>>;
const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Every key of a plan that can be edited: those of groups of keys, also inside lists, and one in each that is not there. */
const placesIn = (value: unknown, at: Place = []): Place[] => {
  if (Array.isArray(value)) return value.flatMap((item, i) => placesIn(item, [...at, i]));
  if (!isGroup(value)) return [];
  return [
    [...at, 'new'],
    [...at, 'group', 'new'],
    ...Object.entries(value).flatMap(([key, item]) => [[...at, key], ...placesIn(item, [...at, key])]),
  ];
};

const wish: fc.Arbitrary<PlanValue | undefined> = fc.oneof(
  fc.integer({ min: 0, max: 50 }),
  fc.double({ min: 0, max: 99, noNaN: true }).map((value) => Number(value.toFixed(4))),
  fc.constantFrom('1:6', '3/4', 'Cherry, black', "'", 'true', '12'),
  fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 4 }),
  fc.constant(undefined),
);

/** A text, and changes of it, of which none is inside another. */
const anyChanges = fc
  .tuple(fc.oneof(anyLayout, anyJson), fc.array(fc.tuple(fc.nat(), wish), { minLength: 1, maxLength: 4 }))
  .map(([text, picks]) => {
    const places = placesIn(parse(text).value);
    const edits: Edit[] = [];
    const isWithin = (a: Place, b: Place): boolean => a.every((key, i) => b[i] === key);
    for (const [pick, value] of picks) {
      const at = places[pick % places.length] ?? ['new'];
      if (!edits.some((other) => isWithin(at, other.at) || isWithin(other.at, at))) edits.push({ at, value });
    }
    return { text, edits };
  });

describe('the values of a plan with some changes', () => {
  it('are those that its text has after the same changes', () => {
    fc.assert(
      fc.property(anyChanges, ({ text, edits }) => {
        const before = parse(text).value;
        const copy: unknown = structuredClone(before);
        expect(editValues(before, edits)).toEqual(parse(editPlan(text, edits)).value);
        expect(before).toEqual(copy);
      }),
      { numRuns: 300 },
    );
  });

  it('stay as they are written where that means the value already', () => {
    const same = (written: unknown, value: PlanValue): boolean => String(written) === `${value} mm`;
    const text = 'a: 3 mm\nb: [1, 2 mm]\n';
    const edits: Edit[] = [
      { at: ['a'], value: 3, same },
      { at: ['b'], value: [5, 2], same },
    ];
    expect(editValues(parse(text).value, edits)).toEqual({ a: '3 mm', b: [5, '2 mm'] });
    expect(editPlan(text, edits)).toBe('a: 3 mm\nb: [5, 2 mm]\n');
  });
});
