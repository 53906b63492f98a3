import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { back, forward, type History, push, startHistory } from '../../../src/page/model/history.ts';

describe('history', () => {
  it('undoes and redoes one step at a time', () => {
    const third = push(push(startHistory('a'), 'b'), 'c');
    expect(third.present).toBe('c');
    expect(back(third).present).toBe('b');
    expect(back(back(third)).present).toBe('a');
    expect(forward(back(back(third))).present).toBe('b');
  });

  it('stays where it is at either end', () => {
    const only = startHistory('a');
    expect(back(only)).toBe(only);
    expect(forward(only)).toBe(only);
  });

  it('forgets what was undone when another change is made', () => {
    const other = push(back(push(startHistory('a'), 'b')), 'c');
    expect(forward(other)).toBe(other);
    expect(back(other).present).toBe('a');
  });

  it('returns to the start however many steps there were, and forth again to the end', () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { maxLength: 300 }), (steps) => {
        let history: History<number> = startHistory(-1);
        for (const step of steps) history = push(history, step);
        const end = history.present;
        for (const _ of steps) history = back(history);
        expect(history.present).toBe(-1);
        for (const _ of steps) history = forward(history);
        expect(history.present).toBe(end);
      }),
    );
  });
});
