import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DrawerSpec } from '../../../src/drawer/drawerSpec.ts';
import { benchSheet } from '../../../src/sheets/bench/benchSheet.ts';
import { box } from '../../drawer/chest.ts';
import { AREAS, anyBox, made } from '../anyDrawer.ts';
import { sheetFaults, textsOf, wordsOf } from '../sheetFaults.ts';

const sheet = (spec: DrawerSpec) => {
  const found = made(spec);
  if (found === undefined) throw new Error('this box can be made');
  return benchSheet(found.drawer, found.parts, { units: 'mm', area: AREAS.A4 }).draw();
};
const words = (spec: DrawerSpec) => sheet(spec).map(wordsOf).join(' ');

describe('the bench sheet of a box', () => {
  it('is one page, with the order of work of a box', () => {
    expect(sheet(box())).toHaveLength(1);
    const text = words(box());
    for (const line of [
      'outside size: 200 × 80 × 140 mm',
      'All four corners are alike: front and back are their pin boards.',
      'Groove front, back and sides. Stop the sides’ groove 5\u00A0mm from both ends.',
      'Glue, with the bottom dry in its grooves on all four sides; clamp, check again.',
      'Plane the joints flush.',
    ])
      expect(text).toContain(line);
    for (const word of ['opening', 'screw', 'from behind', 'joint, above reference edge'])
      expect(text).not.toContain(word);
  });

  it('tells once how closed corners that are alike are made', () => {
    const joint = { kind: 'secret-mitred', spacing: { kind: 'even' } } as const;
    const text = words(box({ joint, groove: { offset: 8, width: 4, depth: 4 } }));
    expect(text.match(/Mitre the laps/gu)).toHaveLength(1);
    expect(text).not.toContain('Then the back corners');
  });

  it('names heights that a box has, and the length of a side between its laps', () => {
    const joint = { kind: 'lapped', spacing: { kind: 'even' } } as const;
    const stock = {
      front: { thickness: 14 },
      side: { thickness: 10 },
      back: { thickness: 12 },
      bottom: { thickness: 4 },
    };
    const text = words(box({ joint, stock, groove: { offset: 8, width: 4, depth: 4 } }));
    // 140 less laps of 3.5 and 3.
    expect(text).toContain('133.5');
    expect(text).toContain('upper edge');
    expect(text).not.toContain('back’s');
  });

  it('shows the groove between both its ends where they are stopped', () => {
    const { marks } = sheet(box())[0] ?? { marks: [] };
    const grooves = marks.flatMap((mark) =>
      mark.kind === 'stroke' && mark.role === 'groove' ? mark.paths : [],
    );
    // From above one outline; from the right two lines along it and two across its ends.
    expect(grooves.map(({ points }) => points.length).toSorted()).toEqual([2, 2, 2, 2, 4]);
  });

  it('has no text over another or over a line, whatever the box', () => {
    fc.assert(
      fc.property(anyBox, fc.constantFrom(...Object.values(AREAS)), ({ drawer, parts }, area) => {
        const pages = benchSheet(drawer, parts, { units: 'mm', area }).draw();
        expect(pages.flatMap(sheetFaults)).toEqual([]);
        expect(pages.flatMap(textsOf).length).toBeGreaterThan(30);
      }),
      { numRuns: 40 },
    );
  });
});
