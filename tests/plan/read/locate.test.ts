import { describe, expect, it } from 'vitest';
import { readPlan } from '../../../src/plan/readPlan.ts';
import type { Place } from '../../../src/units/complaint.ts';

const PLAN = `stock:
  front: {thickness: 20}
  side: {thickness: 11}
joint:
  slope: "1:7"
  tails: 3
groove:
  width: 5
back:
  drop: 4
front:
  lip: 6
family:
  target: 18
drawers:
  - name: A
    opening:
      width: 280
      height: 76
      depth: 420
    joint:
      pin: 5
  - name: B
    opening: {width: 280, height: 76, depth: 420}
    joint:
      slope: "1:6"
    back:
      joint:
        slope: "1:8"
joints:
  - name: C
    kind: through
    width: 90
    tailBoard: 12
    pinBoard: 12
    tails: [30, 38]
`;

const lineOf = (...at: Place): number => {
  const reading = readPlan(PLAN);
  if (!reading.ok) throw new Error('this plan must be read');
  return reading.locate({ at, says: [] }).line;
};

describe("a later step's complaint", () => {
  it('is placed where the drawer gives the value', () => {
    expect(lineOf('drawers', 0, 'joint', 'pin')).toBe(22);
    expect(lineOf('drawers', 0, 'opening', 'height')).toBe(19);
    expect(lineOf('drawers', 1, 'joint', 'slope')).toBe(26);
    expect(lineOf('drawers', 1, 'back', 'joint', 'slope')).toBe(29);
  });

  it('is placed where the plan gives the value for all drawers, if the drawer does not', () => {
    expect(lineOf('drawers', 0, 'joint', 'slope')).toBe(5);
    expect(lineOf('drawers', 1, 'stock', 'front', 'thickness')).toBe(2);
    expect(lineOf('drawers', 1, 'groove', 'width')).toBe(8);
    expect(lineOf('drawers', 1, 'back', 'drop')).toBe(10);
  });

  it('is placed where the value comes from, if neither gives it', () => {
    expect(lineOf('drawers', 0, 'back', 'joint', 'slope')).toBe(5);
    expect(lineOf('drawers', 0, 'back', 'joint', 'pin')).toBe(22);
    expect(lineOf('drawers', 0, 'stock', 'back', 'thickness')).toBe(3);
    expect(lineOf('drawers', 0, 'stock', 'bottom', 'thickness')).toBe(8);
    expect(lineOf('drawers', 0, 'front', 'lip', 'top')).toBe(12);
  });

  it("does not place the back's tails at the front's", () => {
    expect(lineOf('drawers', 0, 'back', 'joint', 'tails')).toBe(16);
  });

  it('is placed as near as possible in the drawer, if the value is a default', () => {
    expect(lineOf('drawers', 0, 'joint', 'lap')).toBe(21);
    expect(lineOf('drawers', 1, 'groove', 'offset')).toBe(23);
    expect(lineOf('drawers', 1)).toBe(23);
  });

  it('is placed in its corner, if it is about a single corner', () => {
    expect(lineOf('joints', 0, 'tails', 1)).toBe(36);
    expect(lineOf('joints', 0, 'pin')).toBe(31);
  });

  it("is placed at the plan's joint, if a single corner takes the value from it", () => {
    expect(lineOf('joints', 0, 'slope')).toBe(5);
    expect(lineOf('joints', 0, 'pins')).toBe(31);
  });

  it('is placed at the key that it names, if it is about the whole set', () => {
    expect(lineOf('family', 'target')).toBe(14);
    expect(lineOf('climate')).toBe(1);
  });
});
