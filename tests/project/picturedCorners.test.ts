import { describe, expect, it } from 'vitest';
import { picturedCorners } from '../../src/project/picturedCorners.ts';
import { readProject } from '../../src/project/readProject.ts';

const filesOf = (asBuilt: string): string[] => {
  const reading = readProject(`
stock: {front: {thickness: 20}, side: {thickness: 11}}
drawers:
  - {name: Thread, opening: {width: 280, height: 76, depth: 420}, asBuilt: ${asBuilt}}
`);
  if (!reading.ok) throw new Error('the plan is good');
  return picturedCorners(reading.value).map(({ file }) => file);
};

describe('pictures of corners', () => {
  it('are one for both ends of a board where those mirror each other, and one for each where they do not', () => {
    expect(filesOf('[]')).toEqual(['thread-front-picture', 'thread-back-picture']);
    expect(filesOf('[{part: side, hand: right, thickness: 10.4}]')).toEqual([
      'thread-front-a-picture',
      'thread-front-b-picture',
      'thread-back-c-picture',
      'thread-back-d-picture',
    ]);
  });
});
