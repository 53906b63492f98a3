import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawer } from '../../src/drawer/drawer.ts';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import type { Drawing, Point } from '../../src/drawing/drawing.ts';
import type { Size } from '../../src/paper/printable.ts';
import { benchSheet } from '../../src/sheets/bench/benchSheet.ts';
import { gapPicture } from '../../src/sheets/gapPicture.ts';
import { gapDrawing, gapSheets } from '../../src/sheets/gapSheets.ts';
import { typeSizes } from '../../src/sheets/typeset/typeSizes.ts';
import type { Unit } from '../../src/units/unit.ts';
import { drawer } from '../drawer/chest.ts';
import { movement, moving, pear, plum } from '../drawer/year.ts';
import { value } from '../value.ts';
import { AREAS, made } from './anyDrawer.ts';
import { sheetFaults, textsOf, wordsOf } from './sheetFaults.ts';

const drawerOf = (spec: DrawerSpec): Drawer => {
  const [found] = value(layOutSet([spec])).drawers;
  if (found === undefined) throw new Error('this drawer can be made');
  return found;
};

const SIZE: Size = { width: 150, height: 66 };

const drawing = (spec: DrawerSpec, units: Unit = 'mm', size = SIZE): Drawing => {
  const block = gapPicture(drawerOf(spec), units, typeSizes(1), size);
  if (block === undefined) throw new Error('this drawer has a gap');
  return {
    box: { x0: 0, y0: 0, x1: size.width, y1: block.height },
    marks: block.marks(0, block.height),
  };
};

const topped = (top: number, change: Partial<DrawerSpec> = {}): DrawerSpec =>
  moving({
    space: {
      kind: 'opening',
      opening: { width: 280, height: 76, depth: 420 },
      fit: { side: 0.5, top, behind: 12 },
    },
    ...change,
  });

/** The longest line of a pen. */
const lineOf = ({ marks }: Drawing, pen: string): readonly Point[] =>
  marks
    .flatMap((mark) => (mark.kind === 'stroke' && mark.pen === pen ? mark.paths : []))
    .reduce<readonly Point[]>((best, { points }) => (points.length > best.length ? points : best), []);

describe('the picture of a gap through the year', () => {
  it('is not drawn for a drawer without a climate, or without an opening', () => {
    const own = moving({ space: { kind: 'size', size: { width: 279, height: 75, depth: 408 } } });
    expect(gapPicture(drawerOf(drawer()), 'mm', typeSizes(1), SIZE)).toBeUndefined();
    expect(gapPicture(drawerOf(own), 'mm', typeSizes(1), SIZE)).toBeUndefined();
  });

  it('draws both curves to the scale at its left', () => {
    const shown = drawing(topped(2));
    // Two ticks, 0.5 and 3, tell how high a gap of 1 mm is drawn; their numbers stand at their level.
    const level = (text: string) => textsOf(shown).find((each) => each.text === text)?.at[1] ?? Number.NaN;
    const scale = (level('3') - level('1')) / 2;
    // 74 high: plum loses 74 × 0.004 and gains 74 × 0.008; pear half as much again.
    for (const [pen, swing] of [
      ['edge', 74 * 0.012],
      ['lap', 74 * 0.018],
    ] as const) {
      const points = lineOf(shown, pen);
      const heights = points.map(([, y]) => y);
      expect(points[0]?.[1]).toBeCloseTo(points.at(-1)?.[1] ?? 0, 9);
      expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(scale * swing, 9);
      // Dampest half way through the year.
      expect(Math.min(...heights)).toBe(points[(points.length - 1) / 2]?.[1]);
    }
  });

  it('fills the band in which the drawer fits', () => {
    const shown = drawing(topped(2));
    const level = (text: string) => textsOf(shown).find((each) => each.text === text)?.at[1] ?? Number.NaN;
    const [band] = shown.marks.flatMap((mark) => (mark.kind === 'fill' ? mark.paths : []));
    const heights = band?.points.map(([, y]) => y) ?? [];
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(level('3') - level('0.5'), 9);
  });

  it('gives the gaps at both ends of the year, the one when made, and what each zone means', () => {
    const text = wordsOf(drawing(topped(2)));
    // 2 + 0.296 and 2 - 0.592; 2 + 0.444 and 2 - 0.888.
    expect(text).toContain('front 2.3 1.41');
    expect(text).toContain('sides 2.44 1.11');
    expect(text).toContain('when made, 2 mm');
    for (const word of ['sticks', 'fits', 'shows']) expect(text.split(' ')).toContain(word);
  });

  it('has no zone of gaps that show for a front with a lip', () => {
    const text = wordsOf(drawing(topped(5, { lip: { sides: 6, top: 6, bottom: 0 } })));
    expect(text).not.toContain('shows');
  });

  it('has nothing small, nothing over anything else and nothing outside, however wood moves', () => {
    const moisture = fc.double({ min: 0, max: 30, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({ making: fc.double({ min: 6, max: 14, noNaN: true }), a: moisture, b: moisture }),
        fc.integer({ min: 60, max: 480 }),
        fc.integer({ min: 0, max: 120 }),
        fc.boolean(),
        fc.constantFrom<Unit>('mm', 'in'),
        fc.constantFrom({ width: 71, height: 39 }, { width: 91, height: 60 }, SIZE),
        ({ making, a, b }, height, tenths, lipped, units, size) => {
          const climate = { making, driest: Math.min(a, b), dampest: Math.max(a, b) };
          const spec = moving({
            space: {
              kind: 'opening',
              opening: { width: 280, height, depth: 420 },
              fit: { side: 0.5, top: tenths / 10, behind: 12 },
            },
            ...(lipped && { lip: { sides: 6, top: 6, bottom: 0 } }),
            movement: movement({
              climate,
              front: { wood: { ...plum, tangential: 0.0077 }, cut: 'flatsawn' },
              side: { wood: pear, cut: 'quartersawn' },
            }),
          });
          expect(sheetFaults(drawing(spec, units, size))).toEqual([]);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('the pictures of a set', () => {
  const drawers = ['Buttons', 'W'.repeat(80), '縫い糸とボタン', 'Cloth', 'Ribbon'].map((name) =>
    drawerOf(moving({ name })),
  );

  it.each(Object.values(AREAS))('stand on pages of %o, each headed by its drawer', (area) => {
    const pages = gapSheets([...drawers, drawerOf(drawer())], { title: 'Chest', units: 'mm', area });
    expect(pages.flatMap(sheetFaults)).toEqual([]);
    const text = pages.map(wordsOf).join(' ');
    for (const name of ['Buttons', 'Cloth', 'Ribbon', '縫い糸とボタン']) expect(text).toContain(name);
    expect(text.match(/sticks/gu)).toHaveLength(5);
  });

  it('are drawings of their own too', () => {
    expect(gapDrawing(drawerOf(drawer()), 'mm')).toBeUndefined();
    for (const each of drawers) {
      const shown = gapDrawing(each, 'in');
      expect(shown && sheetFaults(shown)).toEqual([]);
    }
  });
});

describe('a bench sheet of a drawer with a climate', () => {
  it.each(Object.values(AREAS))('shows the gap and the moisture it is made at, on %o', (area) => {
    const found = made(topped(2));
    if (found === undefined) throw new Error('this drawer can be made');
    const pages = benchSheet(found.drawer, found.parts, { units: 'mm', area }).draw();
    expect(pages.flatMap(sheetFaults)).toEqual([]);
    const text = pages.map(wordsOf).join(' ').replaceAll('\u00A0', ' ');
    expect(text).toContain('made of wood at 8 % moisture content');
    expect(text).toContain('Gap above, through the year');
  });

  it('is still one page of A4', () => {
    const found = made(topped(2));
    expect(found && benchSheet(found.drawer, found.parts, { units: 'mm', area: AREAS.A4 }).count).toBe(1);
  });
});
