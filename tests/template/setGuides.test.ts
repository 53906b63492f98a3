import { describe, expect, it } from 'vitest';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import type { DrawerSpec } from '../../src/drawer/spec.ts';
import { cutCorners } from '../../src/guided/cutCorners.ts';
import { setGuides } from '../../src/template/setGuides.ts';
import { drawer } from '../drawer/chest.ts';
import { value } from '../drawer/value.ts';
import { CUTTER } from '../guided/example.ts';

const EVEN = { kind: 'even' } as const;
const cutByRouter: Partial<DrawerSpec> = {
  joint: { kind: 'lapped', lap: 5, spacing: EVEN },
  backJoint: { spacing: EVEN },
  cutter: CUTTER,
};

const edgesOf = (change: Partial<DrawerSpec>) => {
  const { drawers } = value(layOutSet([drawer({ ...cutByRouter, ...change })]));
  const corners = drawers.flatMap(({ front, back }) =>
    [front, back].map((each) => ({ name: '', joint: each })),
  );
  const cuts = value(cutCorners(corners, { cutter: CUTTER, straight: 8, bush: 16, pinBush: 11 }));
  return setGuides({ drawers, joints: [], units: 'mm' }, cuts).map(
    ({ guide: { board }, titles: { item, ends, edge } }) => `${item}, ${ends}: ${board} ${edge[0]}`,
  );
};

describe('the guides of a drawer', () => {
  it('name the edge of each board that lies on their line as its template does', () => {
    expect(edgesOf({})).toEqual([
      'Buttons front, front: tail reference edge',
      'Buttons front, front: pin reference edge',
      "Buttons back, back: tail groove's top edge",
      'Buttons back, back: pin reference edge',
    ]);
    expect(edgesOf({ lip: { sides: 6, top: 6, bottom: 0 } })[1]).toBe(
      "Buttons front, front: pin rebate's lower edge",
    );
  });
});
