import { describe, expect, it } from 'vitest';
import { sentence, under } from '../../src/units/complaint.ts';
import { mm, say } from '../../src/units/phrase.ts';

describe('complaints seen from a level further out', () => {
  it('stand under its place, but those of the cutter at the one cutter', () => {
    const places = under(
      ['drawers', 1],
      [
        { at: ['joint', 'pin'], says: [] },
        { at: ['cutter', 'length'], says: [] },
      ],
    ).map(({ at }) => at);
    expect(places).toEqual([
      ['drawers', 1, 'joint', 'pin'],
      ['cutter', 'length'],
    ]);
  });
});

describe('a complaint on one line', () => {
  const at = ['lap'];
  const says = say`the lap is ${mm(0)}`;

  it('tries what can be typed, and orders what must be done', () => {
    const hint = say`${mm(5)}`;
    const remedy = say`remove one of them`;
    expect(sentence({ at, says }, 'mm')).toBe('the lap is 0 mm');
    expect(sentence({ at, says, hint }, 'mm')).toBe('the lap is 0 mm; try 5mm');
    expect(sentence({ at, says, remedy }, 'mm')).toBe('the lap is 0 mm; remove one of them');
    expect(sentence({ at, says, hint, remedy }, 'mm')).toBe(
      'the lap is 0 mm; try 5mm, or remove one of them',
    );
  });
});
