import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { begin, goOn, type History, stepBack, stepForward } from '../../../src/page/model/history.ts';

describe('history', () => {
  it('takes back and brings back one step at a time', () => {
    const third = goOn(goOn(begin('a'), 'b'), 'c');
    expect(third.present).toBe('c');
    expect(stepBack(third).present).toBe('b');
    expect(stepBack(stepBack(third)).present).toBe('a');
    expect(stepForward(stepBack(stepBack(third))).present).toBe('b');
  });

  it('stays where it is at either end', () => {
    const only = begin('a');
    expect(stepBack(only)).toBe(only);
    expect(stepForward(only)).toBe(only);
  });

  it('forgets what was taken back when the work goes another way', () => {
    const other = goOn(stepBack(goOn(begin('a'), 'b')), 'c');
    expect(stepForward(other)).toBe(other);
    expect(stepBack(other).present).toBe('a');
  });

  it('returns to the start however many steps there were, and forth again to the end', () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { maxLength: 300 }), (steps) => {
        let history: History<number> = begin(-1);
        for (const step of steps) history = goOn(history, step);
        const end = history.present;
        for (const _ of steps) history = stepBack(history);
        expect(history.present).toBe(-1);
        for (const _ of steps) history = stepForward(history);
        expect(history.present).toBe(end);
      }),
    );
  });
});
