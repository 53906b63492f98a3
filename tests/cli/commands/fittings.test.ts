import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folder, halfpin, TRINKET_BOX } from '../program.ts';

const CHEST = `stock: {front: {thickness: 20}, side: {thickness: 11}}
groove: {offset: 11, width: 5, depth: 5}
fit: {side: 0.5, top: 1}
pulls: {holes: {diameter: 4}}
cabinet:
  width: 575
  height: 300
  depth: 420
  rail: 20
  divider: 15
  rows: [[Buttons, Buttons], Cloth]
  heights: [77, auto]
drawers:
- {name: Buttons}
- {name: Cloth, pulls: {lineUpWith: Buttons}, locks: {}, stops: {number: 1, thickness: 5}}
`;

const written = (plan = CHEST): string => {
  const where = folder();
  writeFileSync(join(where, 'chest.yaml'), plan);
  return where;
};

describe('pulls, locks and stops of a plan', () => {
  it('are told by lay in JSON, from the lower left corner of each front', () => {
    const { status, out, err } = halfpin(['lay', 'chest.yaml', '--json'], written());
    expect([status, err]).toEqual([0, '']);
    // Openings are 280 wide, and begin at 0 and 295; 203 are left for Cloth, whose front is 574 x 202.
    expect(JSON.parse(out).fittings).toEqual([
      {
        drawer: 'Buttons',
        pulls: [{ x: 139.5, y: 38, width: 28, height: 28, holes: [{ x: 139.5, y: 38, diameter: 4 }] }],
      },
      {
        drawer: 'Cloth',
        pulls: [
          { x: 139.5, y: 101, width: 28, height: 28, holes: [{ x: 139.5, y: 101, diameter: 4 }] },
          { x: 434.5, y: 101, width: 28, height: 28, holes: [{ x: 434.5, y: 101, diameter: 4 }] },
        ],
        lock: {
          keyhole: { x: 287, y: 182, diameter: 6 },
          pin: 20,
          body: { x: 262, y: 170, width: 50, height: 32, depth: 10 },
        },
        stops: { fromLeft: [287.5], behind: 20, width: 40, thickness: 5, depth: 25, under: 6 },
      },
    ]);
  });

  it('are told by lay in tables', () => {
    const { out } = halfpin(['lay', 'chest.yaml'], written());
    expect(out).toMatch(/^Cloth +pull 2 +434\.5 +101 +4$/mu);
    expect(out).toMatch(/^Cloth +key +287 +182 +6$/mu);
    expect(out).toMatch(/^Cloth +287\.5 +20 +40 +25 +5$/mu);
    expect(out).toContain('50 mm x 32 mm x 10 mm (width x height x depth)');
  });

  it('are told by cabinet in JSON, from the lower left corner of the cabinet', () => {
    const { out } = halfpin(['cabinet', 'chest.yaml', '--json'], written());
    const { openings } = JSON.parse(out);
    // Buttons stand 203 + 20 up; each front begins 0.5 from its opening's left side.
    expect(openings).toMatchObject([
      { name: 'Buttons', column: 1, pulls: [{ x: 140, y: 261 }] },
      { name: 'Buttons', column: 2, pulls: [{ x: 435, y: 261 }] },
      {
        name: 'Cloth',
        pulls: [
          { x: 140, y: 101 },
          { x: 435, y: 101 },
        ],
        stops: [{ x: 287.5, y: 0 }],
      },
    ]);
  });

  it('that cannot be made are refused by every command, at their line', () => {
    const wrong = CHEST.replace('{diameter: 4}', '{diameter: 4}, above: -22').replace(
      'locks: {}',
      'locks: {pin: 90}',
    );
    for (const args of [
      ['lay', 'chest.yaml'],
      ['parts', 'chest.yaml'],
      ['draw', 'chest.yaml'],
    ]) {
      const { status, out, err } = halfpin(args, written(wrong));
      expect([status, out]).toEqual([2, '']);
      // A hole of 4 keeps 3 from the groove, which ends at 16: 21 up, 17 below the middle of a front 76 high.
      expect(err.split('\n')).toEqual([
        'chest.yaml:4:31 pulls.above: "Buttons": a hole of 4 mm for a pull, 16 mm above the front\'s lower edge, would run into the groove, or come within 3 mm of it; try -17mm',
        'chest.yaml:15:55 drawers[1].locks.pin: "Cloth": the keyhole of 6 mm, 90 mm below the upper edge, would run off the lock\'s body, 32 mm high; it must be 4 mm to 28 mm below; try 28mm',
        '',
      ]);
    }
  });

  it('that extend past their rail are told of by every command, once', () => {
    // Behind a front of 20, stops of 25; Buttons stand on a rail 40 wide, Cloth on the cabinet's bottom.
    const narrow = CHEST.replace('rail: 20', 'rail: 20\n  rails: {width: 40}').replace(
      '{name: Buttons}',
      '{name: Buttons, stops: {}}',
    );
    for (const command of ['cabinet', 'parts', 'lay']) {
      const { out } = halfpin([command, 'chest.yaml'], written(narrow));
      expect(out.replaceAll(/\s+/gu, ' ').match(/"[^"]*": stops of 25 mm [^;]*; try \w+/gu)).toEqual([
        '"Buttons": stops of 25 mm from front to back, 20 mm behind the front, extend 5 mm past the rail under them, which is 40 mm wide; try 20mm',
      ]);
    }
  });

  it('add nothing to what is told of a plan without them', () => {
    expect(Object.keys(JSON.parse(halfpin(['lay', TRINKET_BOX, '--json']).out))).not.toContain('fittings');
  });
});

describe('bad input of fittings', () => {
  const told = (line: string): string[] =>
    halfpin(['lay', 'chest.yaml'], written(CHEST.replace('pulls: {holes: {diameter: 4}}', line)))
      .err.trim()
      .split('\n');

  it('is told by name, with its range', () => {
    expect(told('pulls: {number: 3}')).toEqual([
      'chest.yaml:4:9 pulls.number: 3 is out of range; it must be 0 to 2',
    ]);
    expect(told('pulls: {above: 60%, fromEnds: 1%}')).toEqual([
      'chest.yaml:4:9 pulls.above: 60% is out of range; it must be -45% to 45%',
      'chest.yaml:4:21 pulls.fromEnds: 1% is out of range; it must be 2% to 48%',
    ]);
    expect(told('pulls: {above: high}')[0]).toMatch(/pulls\.above: "high" is not a length/u);
    expect(told('pulls: {hole: 5}')).toEqual([
      'chest.yaml:4:9 pulls.hole: there is no such key here; try holes',
    ]);
    expect(told('pulls: {holes: {diameter: 0}}')).toEqual([
      'chest.yaml:4:17 pulls.holes.diameter: 0 mm is out of range; it must be 1 mm to 60 mm',
    ]);
    expect(told('pulls: {size: {width: 30}}')).toEqual([
      'chest.yaml:4:9 pulls.size.height: this is missing; it must be a length, such as 18, 18mm, 0.75in or 5-11/16in',
    ]);
  });
});
