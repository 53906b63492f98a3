import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  back,
  forward,
  type History,
  push,
  type Step,
  startHistory,
} from '../../../src/page/model/history.ts';

/** A plan whose text says what led to it. */
const step = (what: string): Step => ({ text: `name: ${what}\n`, what });

describe('history', () => {
  it('undoes and redoes one step at a time', () => {
    const third = push(push(startHistory(step('a')), step('b')), step('c'));
    expect(third.present).toEqual(step('c'));
    expect(back(third).present).toEqual(step('b'));
    expect(back(back(third)).present).toEqual(step('a'));
    expect(forward(back(back(third))).present).toEqual(step('b'));
  });

  it('stays where it is at either end', () => {
    const only = startHistory(step('a'));
    expect(back(only)).toBe(only);
    expect(forward(only)).toBe(only);
  });

  it('forgets what was undone when another change is made', () => {
    const other = push(back(push(startHistory(step('a')), step('b'))), step('c'));
    expect(forward(other)).toBe(other);
    expect(back(other).present).toEqual(step('a'));
  });

  it('returns to the start however many steps there were, and forth again to the end', () => {
    fc.assert(
      fc.property(fc.array(fc.string(), { maxLength: 300 }), (steps) => {
        let history: History = startHistory(step('first'));
        for (const each of steps) history = push(history, step(each));
        const end = history.present;
        for (const _ of steps) history = back(history);
        expect(history.present).toEqual(step('first'));
        for (const _ of steps) history = forward(history);
        expect(history.present).toEqual(end);
      }),
    );
  });
});
