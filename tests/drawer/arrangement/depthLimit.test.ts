import { describe, expect, it } from 'vitest';
import { readProject } from '../../../src/project/readProject.ts';

const drawer = ({ behind = 12, vent = 'vent: 6', front = '', depth = 420 }) => {
  const reading = readProject(`
stock: {front: {thickness: 20}, side: {thickness: 11}}
${front}
fit: {behind: ${behind}}
cabinet: {width: 300, height: 100, depth: ${depth}, rail: 18, rows: [Buttons], ${vent}}
`);
  if (!reading.ok) throw new Error('this drawer can be made');
  const [only] = reading.value.set.drawers;
  if (only === undefined) throw new Error('there is one drawer');
  return only;
};

describe('the depth of a drawer', () => {
  it('leaves the clearance behind where the vent needs no more', () => {
    expect(drawer({}).sizes.depth).toBe(408);
    expect(drawer({ vent: 'vent: 12' }).sizes.depth).toBe(408);
  });

  it('leaves the vent where that is more', () => {
    expect(drawer({ vent: 'vent: 15' }).sizes.depth).toBe(405);
  });

  it('is more by its thickness where a lip lies before the opening', () => {
    // 22 less a lap of 5.5 or so lies in the opening: the box there is as deep as without a lip.
    const { sizes } = drawer({ vent: 'vent: 15', front: 'front: {lip: 6}' });
    expect(sizes.depth - sizes.lap).toBe(405);
  });
});
