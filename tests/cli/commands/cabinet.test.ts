import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folder, halfpin, TRINKET_BOX } from '../program.ts';

const CABINET = `stock: {front: {thickness: 20}, side: {thickness: 11}}
cabinet:
  width: 600
  height: 760
  depth: 420
  rail: 18
  rows: [[Buttons, {rows: [Thread, Ribbon], width: 200}], Cloth]
`;

const written = (): string => {
  const where = folder();
  writeFileSync(join(where, 'chest.yaml'), CABINET);
  return where;
};

describe('cabinet', () => {
  it('tells each opening in JSON, one for each place from the top and the left', () => {
    const { status, out, err } = halfpin(['cabinet', 'chest.yaml', '--json'], written());
    expect([status, err]).toEqual([0, '']);
    // 760 less a rail is 742, 371 a row; 371 less a rail is 353: 176.5 each. 600 less 18 and 200 is 382.
    expect(JSON.parse(out)).toMatchObject({
      openings: [
        { name: 'Buttons', row: 1, column: 1, x: 0, y: 389, width: 382, height: 371, depth: 420 },
        {
          name: 'Thread',
          row: 1,
          column: 2,
          inner: [1, 1],
          x: 400,
          y: 583.5,
          width: 200,
          height: 176.5,
          depth: 420,
        },
        {
          name: 'Ribbon',
          row: 1,
          column: 2,
          inner: [2, 1],
          x: 400,
          y: 389,
          width: 200,
          height: 176.5,
          depth: 420,
        },
        { name: 'Cloth', row: 2, column: 1, x: 0, y: 0, width: 600, height: 371, depth: 420 },
      ],
    });
  });

  it('tells in JSON what limits the depth of each drawer, and where every part of the frame lies', () => {
    const where = folder();
    writeFileSync(join(where, 'chest.yaml'), `${CABINET}  vent: 15\nfit: {behind: 12}\n`);
    const { out } = halfpin(['cabinet', 'chest.yaml', '--json'], where);
    const { depths, frame } = JSON.parse(out);
    expect(depths[0]).toEqual({ name: 'Buttons', depth: 405, limit: 'vent', behind: 15 });
    // The rail over Cloth, behind it a runner at the left side of Buttons as far as the vent.
    expect(frame).toContainEqual({
      part: 'rail',
      from: [0, 0, 371],
      to: [600, 60, 389],
      drawers: ['Buttons', 'Ribbon'],
    });
    expect(frame).toContainEqual({
      part: 'runner',
      from: [0, 60, 371],
      to: [30, 405, 389],
      drawers: ['Buttons'],
    });
  });

  it.each([
    ['', '410 mm deep, limited by the clearance behind, 10 mm.'],
    ['  vent: 6\n', '410 mm deep, limited by the clearance behind, 10 mm, which leaves the vent its 6 mm.'],
    ['  vent: 15\n', '405 mm deep, limited by the vent, 15 mm, which is more than the clearance behind.'],
    // The front is 20: it goes in 3 mm farther than flush.
    [
      '  vent: 8\nstops: {behind: 23}\n',
      '410 mm deep, limited by its stops, which leave 7 mm behind, less than the vent of 8 mm.',
    ],
    ['stops: {behind: 20}\n', '410 mm deep, limited by the clearance behind, 10 mm.'],
    ['fit: {behind: 0}\n', "420 mm deep, nothing is left behind, and the cabinet's back is the stop."],
  ])('says what limits the depth: %j', (more, says) => {
    const where = folder();
    writeFileSync(join(where, 'chest.yaml'), CABINET + more);
    const { out } = halfpin(['cabinet', 'chest.yaml'], where);
    expect(out.replaceAll(/\s+/gu, ' ')).toContain(`Buttons, Thread, Ribbon, Cloth: ${says}`);
  });

  it('lists them in a table, rows inside a place after a point', () => {
    const { out } = halfpin(['cabinet', 'chest.yaml'], written());
    expect(out).toMatch(/^Ribbon +1\.2 +2\.1 +400 +389 +200 +176\.5 +420$/mu);
  });

  it('is how compare arranges the set, with nothing assumed', () => {
    const { out } = halfpin(['compare', 'chest.yaml'], written());
    expect(out).toContain('Rows from the top:\n  Buttons | Thread | Ribbon\n  Cloth\n');
  });

  it('refuses a plan without a cabinet', () => {
    const { status, out, err } = halfpin(['cabinet', TRINKET_BOX]);
    expect([status, out]).toEqual([2, '']);
    expect(err).toContain('this plan gives no cabinet');
  });
});
