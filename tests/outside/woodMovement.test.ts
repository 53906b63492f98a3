import { describe, expect, it } from 'vitest';
import { movement, sizeAt, widthCoefficient } from '../../src/wood/movement.ts';
import { findWood } from '../../src/wood/species.ts';

describe('worked examples in print of dD = D C (M_final - M_initial), Wood Handbook equation 13-2', () => {
  it('a board 5 in wide with the coefficient 0.00129 moves 0.019 in from 6 % to 9 %', () => {
    expect(movement(5, 0.00129, 6, 9).toFixed(3)).toBe('0.019');
  });

  it('a flatsawn red alder board 8 in wide moves 0.1248 in over 6 %, with the coefficient rounded to 0.0026', () => {
    const alder = findWood('Alder, red');
    const coefficient = alder.ok ? widthCoefficient(alder.value, 'flatsawn') : 0;
    expect(coefficient.toFixed(4)).toBe('0.0026');
    expect(movement(8, Number(coefficient.toFixed(4)), 6, 12)).toBeCloseTo(0.1248, 10);
    expect(sizeAt(8, Number(coefficient.toFixed(4)), 12, 6)).toBeCloseTo(8 - 0.1248, 10);
  });
});
