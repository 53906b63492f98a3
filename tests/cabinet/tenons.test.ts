import { describe, expect, it } from 'vitest';
import { frameParts } from '../../src/drawer/arrangement/frameParts.ts';
import { readPlan } from '../../src/plan/readPlan.ts';
import { complaintsOf } from '../plan/complaintsOf.ts';

const text = (
  rows: string,
  tenon: number,
  keys = '',
) => `stock: {front: {thickness: 20}, side: {thickness: 11}}
cabinet: {width: 600, height: 420, depth: 420, rail: 20, divider: 18, rows: ${rows}, rails: {tenon: ${tenon}${keys}}}
`;

const said = (...given: Parameters<typeof text>): string[] =>
  complaintsOf(text(...given)).map((each) => each.replace(/^plan\.yaml:\d+:\d+ /u, ''));

const CROSSED = '[[Buttons, Thread], [Ribbon, Patches]]';

describe('tenons', () => {
  it('of dividers in line may be half the rail that parts them, and else all of it', () => {
    // Two of 10 fill a rail of 20.
    expect(said(CROSSED, 10)).toEqual([]);
    expect(said(CROSSED, 12)).toEqual([
      'cabinet.rails.tenon: tenons of 12 mm on dividers at both sides of one rail would meet in it: it is 20 mm thick; try 10mm',
    ]);
    // A divider over Ribbon, 18 thick from 291, and one at its end, from 200: they miss each other.
    const staggered = '[[Buttons, Thread], [{name: Ribbon, width: 200}, Patches]]';
    expect(said(staggered, 20)).toEqual([]);
    expect(said(staggered, 21)).toEqual([
      'cabinet.rails.tenon: tenons of 21 mm on dividers are longer than the rail that they go into is thick, 20 mm; try 20mm',
    ]);
  });

  it('of rails at both sides of a divider may be half of that', () => {
    const rows = '[[{rows: [Buttons, Thread]}, {rows: [Ribbon, Patches]}]]';
    expect(said(rows, 9)).toEqual([]);
    expect(said(rows, 9.5)).toEqual([
      'cabinet.rails.tenon: tenons of 9.5 mm on rails at both sides of one divider would meet in it: it is 18 mm thick; try 9mm',
    ]);
  });

  it('of runners may be as long as a rail is wide, and into a cabinet 60 mm', () => {
    expect(said('[Buttons, Cloth]', 40, ', width: 30')).toEqual([
      'cabinet.rails.tenon: tenons of 40 mm on runners are longer than the rail that they go into is wide, 30 mm; try 30mm',
    ]);
    expect(said('[Buttons, Cloth]', 200)[0]).toContain('60');
  });
});

describe('the tenons of dividers', () => {
  const parted = (rows: string) => {
    const written = text(rows, 12).replace('rail: 20', 'rail: 0');
    const reading = readPlan(written);
    if (!reading.ok || reading.plan.cabinet === undefined) throw new Error(complaintsOf(written).join('\n'));
    return {
      lengths: frameParts(reading.plan.cabinet, 'mm')
        .filter(({ part }) => part === 'divider')
        .map(({ length, shoulders, count }) => [count, shoulders, length]),
      told: reading.advice.map(({ at }) => at.join('.')),
    };
  };

  it('are left out where no rail lies between rows', () => {
    // Two rows of 210: each divider enters the cabinet's top, or its bottom, by 12.
    expect(parted(CROSSED)).toEqual({ lengths: [[2, 210, 222]], told: [] });
    // Three rows of 140: the divider in the middle meets no wood, which is told.
    expect(parted('[Buttons, [Thread, Ribbon], Cloth]')).toEqual({
      lengths: [[1, 140, 140]],
      told: ['cabinet.rails.tenon'],
    });
  });
});
