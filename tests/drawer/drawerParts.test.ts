import { describe, expect, it } from 'vitest';
import { boardsOf, type DrawerPart } from '../../src/drawer/drawerParts.ts';
import { sizesOf } from '../../src/drawer/drawerSizes.ts';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import { drawer, joint } from './chest.ts';

const boards = (change: Partial<DrawerSpec> = {}) => {
  const spec = drawer(change);
  return boardsOf(spec, sizesOf(spec));
};
const finished = ({ length, width, thickness }: DrawerPart) => [length, width, thickness];
const lip = { sides: 6, top: 5, bottom: 4 };
const slips = { kind: 'slips', width: 12, height: 20 } as const;

describe('the boards of a drawer', () => {
  // Opening 280 x 76 x 420; fit 0.5 each side, 1 above, 12 behind; front 20, sides and back 11, bottom 5; lap 5.
  it('fill the opening less its clearances, with an inset front', () => {
    const { front, side, back, bottom, slip } = boards();
    expect(finished(front)).toEqual([280 - 1, 76 - 1, 20]);
    expect(finished(side)).toEqual([420 - 12 - 5, 75, 11]);
    expect(finished(back)).toEqual([279, 75 - 4 - 16, 11]);
    expect(finished(bottom)).toEqual([408 - 20 + 5, 279 - 22 + 10 - 1, 5]);
    expect(slip).toBeUndefined();
  });

  it('lie in the drawer from the left, from the front and from the reference edge', () => {
    const { front, side, back, bottom } = boards();
    expect(front.boxes).toEqual([{ from: [0, 0, 0], to: [279, 20, 75] }]);
    expect(side.boxes).toEqual([
      { from: [0, 5, 0], to: [11, 408, 75] },
      { from: [268, 5, 0], to: [279, 408, 75] },
    ]);
    expect(back.boxes).toEqual([{ from: [0, 397, 16], to: [279, 408, 71] }]);
    expect(bottom.boxes).toEqual([{ from: [6.5, 15, 11], to: [272.5, 408, 16] }]);
  });

  it('have sides of the full depth behind a front with through corners', () => {
    const { lap: _, ...noLap } = joint;
    expect(finished(boards({ joint: { ...noLap, kind: 'through' } }).side)).toEqual([408, 75, 11]);
  });

  it('leave a quarter of the front before the sides where no lap is wished', () => {
    const { lap: _, ...noLap } = joint;
    expect(boards({ joint: noLap, stock: { ...drawer().stock, front: { thickness: 24 } } }).side.length).toBe(
      402,
    );
  });

  it('keep the same box behind a lip, which lies before the opening', () => {
    const { front, side, back, bottom } = boards({ lip });
    expect(finished(front)).toEqual([280 + 2 * 6, 76 + 5 + 4, 20]);
    // The rebate is the lip and the clearance wide; below, where nothing is clear, the lip alone.
    expect(front.boxes).toEqual([{ from: [-6.5, 0, -4], to: [285.5, 20, 81] }]);
    expect(sizesOf(drawer({ lip })).rebate).toEqual({ sides: 6.5, top: 6, bottom: 4 });
    // The lip, 5 thick, lies before the opening; behind it 12 are left free of 420.
    expect(side.boxes[0]).toEqual({ from: [0, 5, 0], to: [11, 413, 75] });
    expect(back.boxes[0]?.to[1]).toBe(413);
    expect(finished(bottom)).toEqual([413 - 20 + 5, 266, 5]);
  });

  it('follow from a size of its own where no opening is given', () => {
    const space = { kind: 'size', size: { width: 300, height: 90, depth: 400 } } as const;
    const plain = boards({ space });
    expect(finished(plain.front)).toEqual([300, 90, 20]);
    expect(finished(plain.side)).toEqual([395, 90, 11]);
    const lipped = boards({ space, lip });
    // The size is that of the front with its lip, so the sides are 5 and 4 less wide.
    expect(finished(lipped.front)).toEqual([300, 90, 20]);
    expect(finished(lipped.side)).toEqual([395, 90 - 9, 11]);
    expect(finished(lipped.back)).toEqual([288, 90 - 9 - 4 - 16, 11]);
  });

  it('have a bottom narrower by their slips, which reach from the front to the back', () => {
    const { bottom, slip } = boards({ bottom: { kind: 'panel', slack: 0.5, hold: slips } });
    expect(finished(bottom)).toEqual([393, 266 - 24, 5]);
    expect(slip && finished(slip)).toEqual([397 - 20, 20, 12]);
    expect(slip?.boxes).toEqual([
      { from: [11, 20, 0], to: [23, 397, 20] },
      { from: [256, 20, 0], to: [268, 397, 20] },
    ]);
  });

  it('give a solid bottom its length along the grain, from side to side', () => {
    const solid = boards({ bottom: { kind: 'solid', slack: 0.5, hold: { kind: 'groove' } } }).bottom;
    expect(finished(solid)).toEqual([266, 393, 5]);
    expect(solid.boxes).toEqual(boards().bottom.boxes);
  });

  it('let a bottom in with its upper face at the upper edge of a groove that is narrower', () => {
    const thick = boards({ stock: { ...drawer().stock, bottom: { thickness: 8 } } }).bottom;
    expect([thick.boxes[0]?.from[2], thick.boxes[0]?.to[2]]).toEqual([8, 16]);
  });

  it('measure proud sides from where they are planed to', () => {
    const proud = boards({ joint: { ...joint, proud: 0.5 } });
    expect(proud.side.thickness).toBe(11);
    expect(proud.side.boxes[0]?.to[0]).toBe(10.5);
    expect(proud.bottom.width).toBe(266 + 1);
  });
});
