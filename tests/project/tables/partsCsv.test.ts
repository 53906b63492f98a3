import { describe, expect, it } from 'vitest';
import type { Part } from '../../../src/drawer/partsList.ts';
import { partsCsv } from '../../../src/project/tables/partsCsv.ts';
import { mm, say } from '../../../src/units/phrase.ts';

const FRONT: Part = {
  drawer: 'Buttons',
  part: 'front',
  count: 2,
  length: 279.4,
  width: 76.2,
  thickness: 19.05,
  roughLength: 317.5,
  species: 'Cherry, black',
  grain: 'along its length',
  worked: [say`grooved ${mm(5)} deep`, say`rebated`],
};
const { species: _, ...BOTTOM } = { ...FRONT, part: 'bottom' as const, worked: [] };

describe('the parts list for a spreadsheet', () => {
  it('has a line of titles with the unit of every length, and a line a part', () => {
    expect(partsCsv([FRONT, BOTTOM], 'mm').split('\r\n')).toEqual([
      'drawer,part,count,length mm,width mm,thickness mm,rough length mm,species,grain,worked',
      'Buttons,front,2,279.4,76.2,19.05,317.5,"Cherry, black",along its length,grooved 5 mm deep; rebated',
      'Buttons,bottom,2,279.4,76.2,19.05,317.5,,along its length,',
      '',
    ]);
  });

  it('reckons in decimal inches', () => {
    // 25.4 mm to the inch: 279.4 / 25.4 = 11, 76.2 / 25.4 = 3, 19.05 / 25.4 = 0.75, 317.5 / 25.4 = 12.5.
    const [titles, front] = partsCsv([FRONT], 'in').split('\r\n');
    expect(titles).toContain(',length in,width in,thickness in,rough length in,');
    expect(front).toMatch(/^Buttons,front,2,11,3,0\.75,12\.5,/u);
  });
});
