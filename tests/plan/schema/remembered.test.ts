import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { remembered } from '../../../src/plan/schema/remembered.ts';

describe('remembered', () => {
  const counted = () => {
    let reads = 0;
    const count = (width: number): number => {
      reads++;
      return width * 10;
    };
    const schema = z.array(remembered(z.strictObject({ width: z.number().transform(count) })));
    return { schema, reads: () => reads };
  };

  it('reads an entry once, and gives the same of it in another list', () => {
    const { schema, reads } = counted();
    const [first, second] = [{ width: 1 }, { width: 2 }];
    expect(schema.parse([first, second])).toEqual([{ width: 10 }, { width: 20 }]);
    expect(schema.parse([second, { width: 3 }, first])).toEqual([
      { width: 20 },
      { width: 30 },
      { width: 10 },
    ]);
    expect(reads()).toBe(3);
  });

  it('tells what is wrong with an entry each time, at its place then', () => {
    const { schema } = counted();
    const wrong = { width: 'wide' };
    const placesIn = (list: unknown) => schema.safeParse(list).error?.issues.map(({ path }) => path);
    expect(placesIn([wrong])).toEqual([[0, 'width']]);
    expect(placesIn([{ width: 1 }, wrong])).toEqual([[1, 'width']]);
    expect(placesIn(['no group'])).toEqual([[0]]);
  });
});
