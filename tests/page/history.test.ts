import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { begin, goOn, type History, redo, undo } from '../../src/page/history.ts';

describe('history', () => {
  it('takes back and brings back one step at a time', () => {
    const third = goOn(goOn(begin('a'), 'b'), 'c');
    expect(third.present).toBe('c');
    expect(undo(third).present).toBe('b');
    expect(undo(undo(third)).present).toBe('a');
    expect(redo(undo(undo(third))).present).toBe('b');
  });

  it('stays where it is at either end', () => {
    const only = begin('a');
    expect(undo(only)).toBe(only);
    expect(redo(only)).toBe(only);
  });

  it('forgets what was taken back when the work goes another way', () => {
    const other = goOn(undo(goOn(begin('a'), 'b')), 'c');
    expect(redo(other)).toBe(other);
    expect(undo(other).present).toBe('a');
  });

  it('returns to the start however many steps there were, and forth again to the end', () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { maxLength: 300 }), (steps) => {
        let history: History<number> = begin(-1);
        for (const step of steps) history = goOn(history, step);
        const end = history.present;
        for (const _ of steps) history = undo(history);
        expect(history.present).toBe(-1);
        for (const _ of steps) history = redo(history);
        expect(history.present).toBe(end);
      }),
    );
  });
});
