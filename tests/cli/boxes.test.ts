import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folder, halfpin } from './program.ts';

const BOXES = `boxes:
  - {name: Buttons, count: 2, size: {width: 200, height: 80, depth: 140}, stock: {front: {thickness: 9}, bottom: {thickness: 4}}}
  - {name: Patches, kind: lapped, size: {width: 240, height: 90, depth: 160}, stock: {front: {thickness: 14}, side: {thickness: 10}, back: {thickness: 12}}}
`;

const run = (...args: string[]): string => {
  const at = folder();
  writeFileSync(join(at, 'boxes.yaml'), BOXES);
  return halfpin(args, at).out;
};
const json = (command: string) => JSON.parse(run(command, 'boxes.yaml', '--json'));

describe('a plan of boxes alone', () => {
  it('gives the joints of front and back under the name of their box', () => {
    const { joints, family } = json('lay');
    const named = joints.map((joint: Record<string, unknown>) => [
      joint.box,
      joint.corner,
      joint.name,
      joint.width,
    ]);
    expect(named).toEqual([
      ['Buttons', 'front', 'Buttons front', 80],
      ['Buttons', 'back', 'Buttons back', 80],
      ['Patches', 'front', 'Patches front', 90],
      ['Patches', 'back', 'Patches back', 90],
    ]);
    expect(joints.some((joint: object) => 'drawer' in joint)).toBe(false);
    expect(family).toBe(undefined);
  });

  it('gives the parts under the name of their box', () => {
    const { parts } = json('parts');
    const told = parts.map((part: Record<string, unknown>) => [part.box, part.part, part.count, part.length]);
    // Laps of 3.5 and 3 leave sides of 160 - 6.5; the bottoms lie 4 deep in grooves of 9, and 5 in those of 10, less 0.5.
    expect(told).toEqual([
      ['Buttons', 'front', 2, 200],
      ['Buttons', 'side', 4, 140],
      ['Buttons', 'back', 2, 200],
      ['Buttons', 'bottom', 2, 140 - 18 + 9 - 1],
      ['Patches', 'front', 1, 240],
      ['Patches', 'side', 2, 153.5],
      ['Patches', 'back', 1, 240],
      ['Patches', 'bottom', 1, 160 - 26 + 10 - 1],
    ]);
    expect(parts.some((part: object) => 'drawer' in part)).toBe(false);
    const rows: { readonly parts: readonly object[] }[] = json('parts').cuttingList;
    expect(rows.flatMap((row) => row.parts).every((part) => 'box' in part && !('drawer' in part))).toBe(true);
    expect(run('parts', 'boxes.yaml', '--csv').split(',')[0]).toBe('drawer or box');
  });

  it('tells corners that are all alike once', () => {
    const headings = run('lay', 'boxes.yaml')
      .split('\n')
      .filter((line) => / corners /u.test(line));
    expect(headings.map((line) => line.replace(/:.*/u, ''))).toEqual([
      'Buttons, corners A, B, C and D',
      'Patches, front corners A and B',
      'Patches, back corners C and D',
    ]);
  });
});
