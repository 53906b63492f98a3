import { describe, expect, it } from 'vitest';
import { contentWords, leftAt } from '../../../src/page/dialogs/keptWords.ts';
import { BOX, CHEST } from '../chest.ts';

const chest = (time: string, name = 'Chest') => ({ name, text: CHEST, at: new Date(`2031-05-06T${time}`) });

describe('an earlier plan', () => {
  it('is told to the second where another of its name was left in the same minute', () => {
    const plans = [chest('10:20:04'), chest('10:20:59'), chest('10:21:00'), chest('10:21:30', 'Table')];
    expect(plans.map((plan) => /:\d\d:\d\d/u.test(leftAt(plan, plans)))).toEqual([true, true, false, false]);
  });

  it('is told by what is in it, and by its last edit', () => {
    // Buttons 2, Thread 2, Ribbon 2, and three drawers more.
    expect(contentWords({ ...chest('10:20:04'), last: 'lap, all nine drawers' })).toBe(
      '9 drawers; last: lap, all nine drawers',
    );
    expect(contentWords({ ...chest('10:20:04'), text: BOX })).toBe('1 single corner; as opened');
  });
});
