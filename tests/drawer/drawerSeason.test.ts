import { describe, expect, it } from 'vitest';
import { drawerSeason } from '../../src/drawer/drawerSeason.ts';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import { gapsOf } from '../../src/drawer/gaps.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { parts } from '../../src/drawer/partsList.ts';
import { speak } from '../../src/units/phrase.ts';
import { told, value } from '../value.ts';
import { drawer } from './chest.ts';
import { movement, moving, pear, plum } from './year.ts';

const setOf = (spec: DrawerSpec) => value(layOutSet([spec]));

const seasonOf = (spec: DrawerSpec) => setOf(spec).drawers.map(drawerSeason)[0];

const adviceOn = (spec: DrawerSpec): string[] => told(setOf(spec).advice);

const solid = (behind: number, change: Partial<DrawerSpec> = {}): DrawerSpec =>
  moving({
    space: {
      kind: 'opening',
      opening: { width: 280, height: 76, depth: 396 + behind },
      fit: { side: 0.5, top: 2, behind },
    },
    bottom: { kind: 'solid', slack: 0.5, hold: { kind: 'groove' } },
    movement: movement({ bottom: { kind: 'solid', wood: plum, cut: 'flatsawn' } }),
    ...change,
  });

describe('a drawer through the year', () => {
  it('is not known without a climate', () => {
    expect(seasonOf(drawer())).toBeUndefined();
  });

  it('has every part: lengths stay, widths and thicknesses move by wood and cut, a panel does not', () => {
    const quartered = movement({ back: { wood: pear, cut: 'quartersawn' } });
    const found = seasonOf(moving({ count: 3, movement: quartered }));
    expect(found?.parts.map(({ part, count, length }) => [part, count, length])).toEqual([
      ['front', 3, 279],
      ['side', 6, 403],
      ['back', 3, 279],
      ['bottom', 3, 393],
    ]);
    const [front, side, back, bottom] = found?.parts ?? [];
    expect(front?.width.making).toBe(75);
    expect(front?.width.driest).toBeCloseTo(75 * (1 - 0.002 * 2), 10);
    expect(front?.width.dampest).toBeCloseTo(75 * (1 + 0.002 * 4), 10);
    expect(front?.thickness.dampest).toBeCloseTo(20 * (1 + 0.001 * 4), 10);
    expect(side?.width.dampest).toBeCloseTo(75 * (1 + 0.003 * 4), 10);
    expect(back?.width.dampest).toBeCloseTo(55 * (1 + 0.0015 * 4), 10);
    expect(back?.thickness.dampest).toBeCloseTo(11 * (1 + 0.003 * 4), 10);
    expect(bottom).toMatchObject({
      width: { making: 266, driest: 266, dampest: 266 },
      thickness: { making: 5, driest: 5, dampest: 5 },
      stock: null,
    });
  });

  it('has the gaps of its opening, and none without one', () => {
    const spec = moving();
    const [made] = setOf(spec).drawers;
    expect(seasonOf(spec)?.gaps).toEqual(made && gapsOf(spec, made.sizes));
    // 76 - 75 above a front that moves by 75 x 0.002 x 4 till it is dampest.
    expect(seasonOf(spec)?.gaps?.front.gap.dampest).toBeCloseTo(1 - 0.6, 10);
    const sized = moving({ space: { kind: 'size', size: { width: 279, height: 75, depth: 403 } } });
    expect(seasonOf(sized)).not.toHaveProperty('gaps');
  });

  it('says of a solid bottom which wood it is', () => {
    const bottom = seasonOf(solid(12))?.parts.find(({ part }) => part === 'bottom');
    expect(bottom?.stock).toMatchObject({ wood: plum, cut: 'flatsawn' });
  });

  it('names the board that sticks first', () => {
    // A pear front grows by 75 x 0.003 x 4 = 0.9 and plum sides by 0.6, in a gap of 1.
    const pearFront = movement({
      front: { wood: pear, cut: 'flatsawn' },
      side: { wood: plum, cut: 'flatsawn' },
    });
    expect(adviceOn(moving({ movement: pearFront }))[0]).toContain('the gap above the front is 0.1 mm');
    expect(adviceOn(moving())[0]).toContain('the gap above the sides is 0.1 mm');
  });

  it('makes slips of the wood of the sides', () => {
    const hold = { kind: 'slips', width: 12, height: 22 } as const;
    const found = seasonOf(moving({ bottom: { kind: 'panel', slack: 0.5, hold } }));
    expect(found?.parts.find(({ part }) => part === 'slip')?.width.dampest).toBeCloseTo(22 * 1.012, 10);
  });

  it('moves the whole width of a front that has a lip', () => {
    const found = seasonOf(moving({ lip: { sides: 6, top: 6, bottom: 4 } }));
    // 75 and the lip's 6 and 4 and the 1 that is left free above.
    expect(found?.parts[0]?.width.dampest).toBeCloseTo(86 * (1 + 0.002 * 4), 10);
    expect(found?.corners).toBeUndefined();
  });

  it('lifts the edge of the side over that of the front, and sinks the ends of the pins, where it is damp', () => {
    const { driest, dampest } = seasonOf(moving())?.corners ?? {};
    expect(dampest?.topEdge).toBeCloseTo(75 * (0.003 - 0.002) * 4, 10);
    expect(driest?.topEdge).toBeCloseTo(-75 * (0.003 - 0.002) * 2, 10);
    expect(dampest?.pinEnds).toBeCloseTo(-11 * 0.0015 * 4, 10);
    expect(driest?.tailEnds).toBeCloseTo(20 * 0.001 * 2, 10);
  });
});

describe('a solid bottom', () => {
  // 396 deep, so 396 - 20 + 5 = 381 from the groove's bottom to the back's face; plum moves 0.002 for 1 %.
  it('is cut flush with the back where there is room to swell behind it', () => {
    const found = seasonOf(solid(12))?.bottom;
    expect(found?.depth.making).toBe(381);
    expect(found?.depth.dampest).toBeCloseTo(381 * 1.008, 10);
    expect(found?.depth.driest).toBeCloseTo(381 * 0.996, 10);
    // A screw of 4 mm, and what the bottom moves past it either way.
    expect(found?.slot?.ahead).toBeCloseTo(2 + 381 * 0.008, 10);
    expect(found?.slot?.behind).toBeCloseTo(2 + 381 * 0.004, 10);
    expect(found?.slot?.length).toBeCloseTo(4 + 381 * 0.012, 10);
  });

  it('is cut shorter where there is none, to leave 1 mm when dampest; the parts list says so', () => {
    const spec = solid(2);
    expect(seasonOf(spec)?.bottom.depth.dampest).toBeCloseTo(382, 10);
    const part = parts(setOf(spec)).find(({ part: name }) => name === 'bottom');
    expect(part?.width).toBeCloseTo(382 / 1.008, 10);
    expect(part?.worked.map((phrase) => speak(phrase, 'mm'))).toEqual([
      "at the back: a slot 8.55 mm long for each screw, its front end 5.03 mm ahead of the screw's middle",
    ]);
  });

  it('has slots that are open at its edge where its screws are near it', () => {
    const { stock } = solid(12);
    const worked = parts(setOf(solid(12, { stock: { ...stock, back: { ...stock.back, thickness: 6 } } })))
      .filter(({ part }) => part === 'bottom')
      .flatMap((part) => part.worked.map((phrase) => speak(phrase, 'mm')));
    // The screw is 3 mm from the edge, and the slot runs 2 + 381 × 0.004 mm behind it.
    expect(worked).toEqual([
      "at the back: a slot for each screw, open at the edge, its front end 5.05 mm ahead of the screw's middle",
    ]);
  });

  it('ends, in space, where it is cut', () => {
    const [found] = setOf(solid(2)).drawers;
    const [box] = found?.boards.bottom.boxes ?? [];
    expect(box?.from[1]).toBe(15);
    expect(box?.to[1]).toBeCloseTo(15 + 382 / 1.008, 10);
  });

  it('of a drawer with its own size has no room behind', () => {
    const spec = solid(12, { space: { kind: 'size', size: { width: 279, height: 75, depth: 396 } } });
    expect(seasonOf(spec)?.bottom.depth.dampest).toBeCloseTo(381, 10);
  });
});

describe('what is advised of the year', () => {
  const topped = (top: number, change: Partial<DrawerSpec> = {}) =>
    moving({
      space: {
        kind: 'opening',
        opening: { width: 280, height: 76, depth: 420 },
        fit: { side: 0.5, top, behind: 12 },
      },
      ...change,
    });

  it('is nothing for a drawer that fits all the year', () => {
    expect(adviceOn(topped(1.5))).toEqual([]);
  });

  it('is a wider gap, rounded up, where the drawer will stick', () => {
    expect(adviceOn(topped(1))).toEqual([
      'drawers.0.fit.top: "Buttons": when dampest, the gap above the sides is 0.1 mm, so the drawer will stick; it should be at least 0.5 mm; try auto, or 1.4mm',
    ]);
  });

  it('is a narrower gap where one shows, or calmer wood where that would not help', () => {
    expect(adviceOn(topped(3))).toEqual([
      'drawers.0.fit.top: "Buttons": when driest, the gap above the front is 3.29 mm and will show; it should be at most 3 mm; try auto, or 1.4mm',
    ]);
    const wild = movement({ climate: { making: 12, driest: 0, dampest: 12 } });
    expect(adviceOn(topped(1.3, { movement: wild, count: 1 }))).toEqual([
      expect.stringContaining('try auto, or 0.5mm'),
    ]);
    const wilder = movement({
      climate: { making: 12, driest: 0, dampest: 12 },
      front: { wood: { ...plum, tangential: 0.006 }, cut: 'flatsawn' },
    });
    expect(adviceOn(topped(0.5, { movement: wilder }))).toEqual([
      expect.stringContaining('use quartersawn stock, or a wood that moves less'),
    ]);
  });

  it('is both, where a front swells tight when dampest and shrinks wide when driest', () => {
    // 75 x 0.004 x 4 = 1.2 over a gap of 1, and 75 x 0.004 x 8 = 2.4 beside it; 76 - 75.5 / 1.016 = 1.69 would be left.
    const restless = movement({
      climate: { making: 8, driest: 0, dampest: 12 },
      front: { wood: { ...plum, tangential: 0.004 }, cut: 'flatsawn' },
    });
    expect(adviceOn(topped(1, { movement: restless }))).toEqual([
      'drawers.0.fit.top: "Buttons": when dampest, the gap above the front is -0.2 mm, so the drawer will stick; it should be at least 0.5 mm; try auto, or 1.7mm',
      'drawers.0.fit.top: "Buttons": when driest, the gap above the front is 3.4 mm and will show; it should be at most 3 mm; use quartersawn stock, or a wood that moves less',
    ]);
  });

  it('names the front where front and sides are of one wood', () => {
    const alike = movement({ side: { wood: plum, cut: 'flatsawn' } });
    expect(adviceOn(topped(1, { movement: alike }))).toEqual([
      expect.stringContaining('when dampest, the gap above the front is 0.4 mm'),
    ]);
  });

  it('is more room beside sides that swell against the case', () => {
    const tight = moving({
      space: {
        kind: 'opening',
        opening: { width: 280, height: 76, depth: 420 },
        fit: { side: 0.1, top: 1.5, behind: 12 },
      },
    });
    expect(adviceOn(tight)).toEqual([
      'drawers.0.fit.side: "Buttons": when dampest, the gap beside each side is 0.03 mm, so the drawer will stick; it should be at least 0.1 mm; try 0.2mm',
    ]);
  });

  it('warns of a bottom that shrinks off its screws', () => {
    const shrinking = movement({
      climate: { making: 12, driest: 3, dampest: 12 },
      bottom: { kind: 'solid', wood: plum, cut: 'flatsawn' },
    });
    // It shrinks by 381 × 0.018 to 374.14, and the screws stand 5.5 within 381.
    const told = adviceOn(solid(12, { movement: shrinking })).filter((line) => line.includes('bottom'));
    expect(told).toEqual([
      expect.stringMatching(
        /^drawers\.0\.bottom: "Buttons": driest, the bottom is 374.14 mm deep and no longer reaches its screws at 375.5 mm;/u,
      ),
    ]);
  });
});
