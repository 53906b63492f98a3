import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cabinetOf } from '../../../src/drawer/arrangement/cabinetOf.ts';
import { setFittings } from '../../../src/drawer/fittings/setFittings.ts';
import { layOutSet } from '../../../src/drawer/layOutSet.ts';
import { readProject } from '../../../src/project/readProject.ts';
import { proportionSheets } from '../../../src/sheets/fittings/proportionSheet.ts';
import { value } from '../../value.ts';
import { AREAS, anySpec } from '../anyDrawer.ts';
import { sheetFaults, wordsOf } from '../sheetFaults.ts';

const planOf = (heights: string, pulls = 'pulls: {}') => `
stock: {front: {thickness: 20}, side: {thickness: 11}}
fit: {side: 0.5, top: 1}
${pulls}
cabinet:
  width: 600
  height: 760
  depth: 420
  rail: 18
  rows: [[Buttons, Thread], [Ribbon, Ribbon], Patches, Notions, Cloth]
  heights: ${heights}
`;

const sheetsOf = (plan: string) => {
  const reading = readProject(plan);
  if (!reading.ok) throw new Error(JSON.stringify(reading.complaints));
  const { set, units } = reading.value;
  const { drawers } = set;
  return proportionSheets({
    title: 'Chest',
    drawers,
    cabinet: cabinetOf(drawers),
    fittings: value(setFittings(drawers)).of,
    units,
    area: AREAS.A4,
  });
};

const said = (plan: string): string => sheetsOf(plan).map(wordsOf).join(' ').replaceAll('\u00A0', ' ');

describe('the proportions of a set', () => {
  it('tell the progression of the rows, and what each is to the one above', () => {
    // 760 less 4 rails is 688: from 76, with steps of (688 - 380)/10 = 30.8, rounded: 76, 107, 137.5, 168.5, 199.
    const arithmetic = said(planOf('{progression: arithmetic, first: 76}'));
    expect(arithmetic).toContain(
      'Each row is 30.75 mm higher than the one above it: an arithmetic progression, rounded to 0.5 mm. The bottom row is 2.62 times as high as the top row.',
    );
    // 107/76 and 137.5/107.
    expect(arithmetic).toMatch(/2 107 mm 1\.41 times Ribbon .* 3 137\.5 mm 1\.29 times Patches/u);
    expect(said(planOf('{progression: geometric, ratio: 1.25}'))).toMatch(
      /Each row is 1\.25 times as high as the one above it: a geometric progression, rounded/u,
    );
    expect(said(planOf('[100, 100, 188, 150, 150]'))).toContain(
      'The heights of the rows follow neither an arithmetic nor a geometric progression. The bottom row is 1.5 times as high as the top row.',
    );
    expect(said(planOf('equal'))).toContain('All rows are equally high.');
  });

  it('show the narrowest front beside the widest', () => {
    // (600 - 18)/2 - 1 = 290 and 600 - 1 = 599.
    expect(said(planOf('equal'))).toMatch(
      /narrowest front beside the widest, 1 : \d+: Buttons, 290 mm x .*; Patches, 599 mm x .* The widest is 2\.07 times as wide\./u,
    );
  });

  it('show the fronts without pulls and with them, to one scale', () => {
    const [sheet] = sheetsOf(planOf('equal'));
    const outlines = sheet?.marks.flatMap((mark) =>
      mark.kind === 'stroke' && mark.role === 'outline' ? [mark.paths.length] : [],
    );
    const pulls = sheet?.marks.flatMap((mark) => (mark.kind === 'fill' ? [mark.paths.length] : []));
    // Seven fronts twice, the narrowest and the widest.
    expect(outlines).toEqual([7, 7, 1, 1]);
    expect(pulls).toEqual([7, 1, 1]);
    expect(said(planOf('equal', ''))).toContain('This plan gives no pulls.');
  });

  it('are legible, with nothing over anything else, on any paper', () => {
    fc.assert(
      fc.property(
        fc.array(anySpec, { minLength: 1, maxLength: 6 }),
        fc.constantFrom(...Object.values(AREAS)),
        (specs, area) => {
          const named = specs.map((spec, i) => ({
            ...spec,
            name: `${spec.name} ${i}`,
            fittings: { pulls: {} },
          }));
          const set = layOutSet(named);
          if (!set.ok) return;
          const { drawers } = set.value;
          const fitted = setFittings(drawers);
          if (!fitted.ok) return;
          const sheets = proportionSheets({
            title: 'Chest',
            drawers,
            cabinet: cabinetOf(drawers),
            fittings: fitted.value.of,
            units: 'mm',
            area,
          });
          for (const sheet of sheets) expect(sheetFaults(sheet)).toEqual([]);
        },
      ),
      { numRuns: 20 },
    );
  });
});
