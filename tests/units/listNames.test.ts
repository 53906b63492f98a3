import { describe, expect, it } from 'vitest';
import { LONGEST_LIST, listNames } from '../../src/units/listNames.ts';

describe('the names in a complaint', () => {
  it('are all told where there is room', () => {
    expect(listNames(['Buttons', 'Thread'])).toBe('Buttons, Thread');
  });

  it('are told as far as there is room, with how many more there are', () => {
    const names = Array.from({ length: 2000 }, (_, i) => `Drawer ${i + 1}`);
    const told = listNames(names);
    const [count = 0, more = 0] = (/, Drawer (\d+) and (\d+) more$/u.exec(told) ?? []).slice(1).map(Number);
    expect(count + more).toBe(2000);
    expect(names.slice(0, count).join('').length).toBeLessThanOrEqual(LONGEST_LIST);
    expect(names.slice(0, count + 1).join('').length).toBeGreaterThan(LONGEST_LIST);
  });

  it('tell one at least', () => {
    const long = 'x'.repeat(LONGEST_LIST + 1);
    expect(listNames([long, 'Thread'])).toBe(`${long} and 1 more`);
  });
});
