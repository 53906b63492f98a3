import { describe, expect, it } from 'vitest';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { parts } from '../../src/drawer/partsList.ts';
import { gauges } from '../../src/joint/gauges.ts';
import { drawer, inOpening, joint } from '../drawer/chest.ts';
import { value } from '../value.ts';

const inch = 25.4;

const made = (spec: DrawerSpec) => {
  const set = value(layOutSet([spec]));
  const [first] = set.drawers;
  if (first === undefined) throw new Error('a set of one has a drawer');
  return { ...first, parts: parts(set) };
};

describe('drawers as handbooks make them', () => {
  // Household mechanics' manual, "Tables", figs. 577-583.
  describe('sides 5/8 in thick, a back 1 in narrower than the front that stands level with the groove', () => {
    const spec = inOpening(16 * inch, 5 * inch, 18 * inch, {
      stock: {
        front: { thickness: (7 / 8) * inch },
        side: { thickness: (5 / 8) * inch },
        back: { thickness: (1 / 2) * inch },
        bottom: { thickness: (3 / 8) * inch },
      },
      joint: { kind: 'lapped', spacing: { kind: 'even' }, proud: 0.2 },
      backJoint: { spacing: { kind: 'even' }, proud: 0.2 },
      groove: { offset: (5 / 8) * inch, width: (3 / 8) * inch, depth: (1 / 4) * inch },
      backDrop: 0,
    });
    const { boards, front, parts: list } = made(spec);

    it('makes the back 1 in narrower, and cuts no groove in it', () => {
      expect(boards.front.width - boards.back.width).toBeCloseTo(inch, 9);
      expect(list.find(({ part }) => part === 'back')?.worked).toEqual([]);
    });

    it('lets the bottom slide in under the back', () => {
      const [back] = boards.back.boxes;
      const [bottom] = boards.bottom.boxes;
      // The bottom's upper face lies at the back's lower edge, and it reaches from the front's groove to behind the back.
      expect(bottom?.to[2]).toBeCloseTo(back?.from[2] ?? Number.NaN, 9);
      expect(bottom?.to[1]).toBe(back?.to[1]);
      expect(bottom?.from[1]).toBeCloseTo((7 / 8) * inch - (1 / 4) * inch, 9);
    });

    it("sets the gauge for the front a shaving under the sides' thickness, so that they stand proud", () => {
      expect(gauges(front).pinBoardFace).toBeCloseTo((5 / 8) * inch - 0.2, 9);
    });
  });

  // Building Furniture (2007), the article on drawers.
  it('leaves a lap of 3/16 in where a front of 3/4 in is gauged at 9/16 in', () => {
    const { front, boards, sizes } = made(
      drawer({
        stock: { ...drawer().stock, front: { thickness: (3 / 4) * inch } },
        joint: { ...joint, lap: (3 / 16) * inch },
      }),
    );
    expect(gauges(front).pinBoardEnd).toBeCloseTo((9 / 16) * inch, 9);
    expect(gauges(front).tailBoard).toBeCloseTo((9 / 16) * inch, 9);
    expect(sizes.depth - boards.side.length).toBeCloseTo((3 / 16) * inch, 9);
  });

  // Common practice.
  it("cuts the sockets for a side of 14 mm to exactly the side's thickness", () => {
    const { front } = made(drawer({ stock: { ...drawer().stock, side: { thickness: 14 } } }));
    expect(gauges(front).pinBoardFace).toBe(14);
  });

  // Common practice.
  it('leaves between a quarter and a third of a front of 18 to 25 mm as its lap, where none is wished', () => {
    const { lap: _, ...noLap } = joint;
    for (let thickness = 18; thickness <= 25; thickness += 0.5) {
      const { front } = made(drawer({ joint: noLap, stock: { ...drawer().stock, front: { thickness } } }));
      // To the half millimetre.
      expect(front.pinBoard.lap).toBeGreaterThanOrEqual(thickness / 4 - 0.25);
      expect(front.pinBoard.lap).toBeLessThanOrEqual(thickness / 3);
    }
  });

  // G. A. Ross, An Elementary Course in Woodwork, figs. 101-102.
  it('cuts stock long enough for a poor joint to be cut off and made again', () => {
    const { parts: list, front, back } = made(drawer());
    const spare = Object.fromEntries(
      list.map(({ part, length, roughLength }) => [part, roughLength - length]),
    );
    // Cutting one joint off every jointed end takes the joint's depth from each.
    expect(spare.front).toBeGreaterThan(2 * front.depth);
    expect(spare.side).toBeGreaterThan(front.depth + back.depth);
    expect(spare.back).toBeGreaterThan(2 * back.depth);
    expect(spare.bottom).toBe(0);
  });

  // Common practice: tails two to four times as wide as the pins are narrow.
  it('keeps the tails of a set from narrow to tall between two and four pins', () => {
    const heights = [70, 85, 100, 120, 150, 190];
    const { family } = value(
      layOutSet(heights.map((height, i) => inOpening(280, height, 420, { name: `Drawer ${i}` }))),
    );
    expect(family?.tips).toHaveLength(heights.length);
    for (const tip of family?.tips ?? []) {
      expect(tip).toBeGreaterThanOrEqual(2 * 5);
      expect(tip).toBeLessThanOrEqual(4 * 5);
    }
  });
});
