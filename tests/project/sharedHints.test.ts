import { expect, it } from 'vitest';
import { formatPlanComplaint } from '../../src/plan/read/planComplaint.ts';
import { readProject } from '../../src/project/readProject.ts';

const told = (text: string): string[] => {
  const project = readProject(text);
  return project.ok ? [] : project.complaints.map((each) => formatPlanComplaint('a', each, project.units));
};

/** Sides of 12 and 9 mm must keep 2 mm behind a groove. */
const plan = (depth: number): string =>
  [
    'stock: {front: {thickness: 20}, side: {thickness: 12}}',
    `groove: {depth: ${depth}}`,
    'drawers:',
    '  - {name: A, opening: {width: 300, height: 100, depth: 400}}',
    '  - {name: B, opening: {width: 300, height: 100, depth: 400}, stock: {side: {thickness: 9}}}',
  ].join('\n');

it('a hint for a key of all drawers works for each of them, and the key is named where it is written', () => {
  expect(told(plan(11)).map((line) => line.replace(/: .*; /u, ' '))).toEqual([
    'a:2:10 groove.depth try 7mm',
    'a:2:10 groove.depth try 7mm',
  ]);
  expect(told(plan(7))).toEqual([]);
});

it('a hint for a key of one drawer is its own', () => {
  expect(told(plan(7).replace('name: A', 'groove: {depth: 11}, name: A'))).toEqual([
    expect.stringMatching(/^a:4:15 drawers\[0\]\.groove\.depth: .*; try 10mm$/u),
  ]);
});
