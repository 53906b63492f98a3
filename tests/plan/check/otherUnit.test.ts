import { describe, expect, it } from 'vitest';
import { complaintsOf } from '../complaintsOf.ts';

const plan = (units: string, lengths: Readonly<Record<'front' | 'side' | 'deep' | 'wide', string>>): string =>
  [
    units,
    `stock: {front: {thickness: ${lengths.front}}, side: {thickness: ${lengths.side}}}`,
    'drawers:',
    `  - {name: Buttons, opening: {width: ${lengths.wide}, height: ${lengths.wide}, depth: ${lengths.deep}}}`,
  ].join('\n');

const MM = { front: '18', side: '10', wide: '280', deep: '420' };

describe('a plan whose numbers are in the other unit', () => {
  it('is complained of once, not at every length', () => {
    // Boards up to 200 mm thick, openings up to 5000 mm: 18, 10, 280 (twice) and 420 inches are out of range.
    expect(complaintsOf(plan('units: in', MM))).toEqual([
      'plan.yaml:1:1 units: 5 lengths of this plan are out of range in inches and right in mm: these look like mm; try units: mm',
    ]);
    expect(complaintsOf(plan('units: mm', MM))).toEqual([]);
  });

  it('is complained of in mm too, whether mm is given or not', () => {
    const joints = (units: string, size: string) =>
      `${units}\njoints: [{name: Lid, kind: through, width: 4, tailBoard: ${size}, pinBoard: ${size}, pin: 0.25}]`;
    for (const units of ['units: mm', ''])
      expect(complaintsOf(joints(units, '0.5')).join()).toMatch(
        /units: \d lengths of this plan are out of range in mm and right in inches: these look like inches; try units: in$/u,
      );
    expect(complaintsOf(joints('units: in', '0.5'))).toEqual([]);
  });

  it('is complained of with what would be wrong in either unit', () => {
    const [unit, key, ...more] = complaintsOf(`${plan('units: in', MM)}\nfitt: {}`);
    expect(unit).toContain('these look like mm');
    expect(key).toContain('fitt: there is no such key here');
    expect(more).toEqual([]);
  });

  it('is complained of length by length where only two are out of range, or all are in neither unit', () => {
    expect(complaintsOf(plan('units: in', { ...MM, wide: '11', deep: '16' }))).toHaveLength(2);
    expect(complaintsOf(plan('units: in', { front: '-1', side: '-1', wide: '-1', deep: '-1' }))).toHaveLength(
      5,
    );
  });
});

it('a bare fraction among millimetres is asked about as one of an inch', () => {
  const lengths = { ...MM, side: '7/16' };
  expect(complaintsOf(plan('units: mm', lengths))).toEqual([
    expect.stringMatching(/stock\.side\.thickness: 0\.44 mm is out of range; .*; try 7\/16in$/u),
  ]);
  expect(complaintsOf(plan('units: mm', { ...lengths, side: '0.44' }))).toEqual([
    expect.stringMatching(/2 mm to 200 mm$/u),
  ]);
});
