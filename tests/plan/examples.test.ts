import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { layOut } from '../../src/joint/layOut.ts';
import { readPlan } from '../../src/plan/readPlan.ts';
import { complaintsOf } from './complaintsOf.ts';

const read = (file: string) => {
  const text = readFileSync(`examples/${file}`);
  const reading = readPlan(text);
  if (!reading.ok) throw new Error(complaintsOf(text).join('\n'));
  return reading.plan;
};

describe('the haberdashery chest', () => {
  const { units, drawers, joints } = read('haberdashery-chest.yaml');
  const openings = drawers.map(({ space }) => (space.kind === 'opening' ? space.opening : undefined));

  it('has nine drawers of four heights and two widths', () => {
    expect(units).toBe('mm');
    expect(joints).toEqual([]);
    expect(drawers.reduce((sum, { count }) => sum + count, 0)).toBe(9);
    expect([...new Set(openings.map((opening) => opening?.height))]).toEqual([76, 110, 146, 190]);
    expect([...new Set(openings.map((opening) => opening?.width))]).toEqual([280, 574]);
  });

  it('is of black cherry and white ash', () => {
    for (const { stock } of drawers) {
      expect(stock.front).toEqual({ thickness: 20, species: 'Cherry, black', grain: 'flatsawn' });
      expect(stock.side).toEqual({ thickness: 11, species: 'Ash, white', grain: 'flatsawn' });
      expect(stock.back).toEqual(stock.side);
      expect(stock.bottom).toEqual({ thickness: 5 });
    }
  });

  it('overrides the tails of its deepest drawer only', () => {
    expect(drawers.map(({ joint }) => joint.spacing)).toEqual([
      ...new Array(5).fill({ kind: 'even' }),
      { kind: 'even', tails: 6 },
    ]);
  });

  it('can be set out, without a word of advice', () => {
    expect(layOutSet(drawers)).toMatchObject({ ok: true, value: { advice: [] } });
  });
});

describe('the trinket box', () => {
  it('has a through and a lapped corner, in inches, and both can be cut without a word of advice', () => {
    const { units, drawers, joints } = read('trinket-box.yaml');
    expect(units).toBe('in');
    expect(drawers).toEqual([]);
    expect(joints.map(({ spec }) => spec.kind)).toEqual(['through', 'lapped']);
    for (const { spec } of joints) expect(layOut(spec)).toMatchObject({ ok: true, value: { advice: [] } });
  });
});
