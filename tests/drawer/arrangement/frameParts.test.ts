import { describe, expect, it } from 'vitest';
import { frameParts } from '../../../src/drawer/arrangement/frameParts.ts';
import { readPlan } from '../../../src/plan/readPlan.ts';

const parts = (keys: string, unit: 'mm' | 'in' = 'mm') => {
  const size =
    unit === 'mm'
      ? 'width: 600, height: 418, depth: 420, rail: 18'
      : 'width: 24, height: 16, depth: 16, rail: 3/4';
  const reading = readPlan(`units: ${unit}
stock: {front: {thickness: 20mm}, side: {thickness: 11mm}}
cabinet: {${size}, ${keys}}
`);
  if (!reading.ok || reading.plan.cabinet === undefined) throw new Error('this cabinet can be made');
  return frameParts(reading.plan.cabinet, unit);
};

describe('frameParts', () => {
  it('puts equal parts together, with their tenons and what they are for', () => {
    const rows = 'rows: [[Buttons, Thread], [Ribbon, Patches], Cloth], heights: [100, 100, auto]';
    const wood = 'rails: {tenon: 9, species: Cherry}, runners: {species: Ash}';
    // Two rails over 600, each end 9 more; two dividers of 100; rails leave runners 360, with a tenon in front alone.
    expect(parts(`${rows}, ${wood}`)).toEqual([
      {
        part: 'rail',
        count: 2,
        length: 618,
        shoulders: 600,
        width: 60,
        thickness: 18,
        roughLength: 628,
        species: 'Cherry',
        drawers: ['Buttons', 'Thread', 'Ribbon', 'Patches'],
      },
      {
        part: 'divider',
        count: 2,
        length: 118,
        shoulders: 100,
        width: 60,
        thickness: 18,
        roughLength: 128,
        species: 'Cherry',
        drawers: ['Buttons', 'Thread', 'Ribbon', 'Patches'],
      },
      {
        part: 'runner',
        count: 4,
        length: 369,
        shoulders: 360,
        width: 30,
        thickness: 18,
        roughLength: 379,
        species: 'Ash',
        drawers: ['Buttons', 'Thread', 'Ribbon', 'Patches'],
      },
      {
        part: 'runner',
        count: 2,
        length: 369,
        shoulders: 360,
        width: 78,
        thickness: 18,
        roughLength: 379,
        species: 'Ash',
        drawers: ['Buttons', 'Thread', 'Ribbon', 'Patches'],
      },
      {
        part: 'guide',
        count: 2,
        length: 360,
        shoulders: 360,
        width: 20,
        thickness: 18,
        roughLength: 370,
        species: 'Ash',
        drawers: ['Buttons', 'Thread', 'Ribbon', 'Patches'],
      },
    ]);
  });

  it('has sizes that are round in inches in an inch plan', () => {
    const [rail, runner] = parts('rows: [Buttons, Cloth]', 'in').map(({ length, width, roughLength }) =>
      [length, width, roughLength].map((each) => each / 25.4),
    );
    // 24 x 2 1/2; 16 less 2 1/2 x 1 1/4; twice 3/16 more.
    const near = (values: readonly number[]) => values.map((each) => expect.closeTo(each, 9));
    expect(rail).toEqual(near([24, 2.5, 24.375]));
    expect(runner).toEqual(near([13.5, 1.25, 13.875]));
  });
});
