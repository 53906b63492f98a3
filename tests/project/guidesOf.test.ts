import { describe, expect, it } from 'vitest';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { NO_SPLITS } from '../../src/paper/piece.ts';
import { guidePieces, guidesOf } from '../../src/project/guidesOf.ts';
import { withCuts } from '../../src/project/project.ts';
import { USUAL_SAWING } from '../../src/stock/usualSawing.ts';
import { inOpening } from '../drawer/chest.ts';
import { CUTTER } from '../router/example.ts';
import { wordsOf } from '../sheets/pieces.ts';
import { value } from '../value.ts';

const EVEN = { kind: 'even' } as const;
const cutByRouter: Partial<DrawerSpec> = {
  joint: { kind: 'lapped', lap: 5, spacing: EVEN },
  backJoint: { spacing: EVEN },
  cutter: CUTTER,
};

const CUTTING = { cutter: CUTTER, straight: 8, bush: 16, pinBush: 11 };

const guidesOfDrawer = (change: Partial<DrawerSpec>) => {
  const { drawers } = value(layOutSet([inOpening(280, 110, 420, { ...cutByRouter, ...change })]));
  const set = { drawers, advice: [] };
  return guidesOf(
    value(
      withCuts({ name: 'Chest', units: 'mm', set, joints: [], sawing: USUAL_SAWING.mm, cutting: CUTTING }),
    ),
  );
};

const edgesOf = (change: Partial<DrawerSpec>) =>
  guidesOfDrawer(change).map(
    ({ guide: { board }, titles: { item, ends, edge } }) => `${item}, ${ends}: ${board} ${edge[0]}`,
  );

it('guides of drawers with long and nearly equal names each bear a name of their own', () => {
  const name = (which: string) => `Letters and papers of the ${which} drawers on the left side`;
  const { drawers } = value(
    layOutSet([
      inOpening(280, 110, 420, { ...cutByRouter, name: name('upper') }),
      inOpening(280, 110, 420, { ...cutByRouter, name: name('lower') }),
      inOpening(280, 76, 420, { ...cutByRouter, name: name('middle') }),
    ]),
  );
  const set = { drawers, advice: [] };
  const pieces = guidePieces(
    value(
      withCuts({ name: 'Chest', units: 'mm', set, joints: [], sawing: USUAL_SAWING.mm, cutting: CUTTING }),
    ),
  );
  const names = pieces.map((piece) =>
    wordsOf(piece.draw(NO_SPLITS)).filter((word) => /· (guide for the )?(tails|pins)$/.test(word)),
  );
  expect(pieces.length).toBeGreaterThan(6);
  expect(names.map(({ length }) => length)).toEqual(pieces.map(() => 1));
  expect(new Set(names.flat()).size).toBe(pieces.length);
});

describe('the guides of a drawer', () => {
  it('name the edge of each board that lies on their line as its template does', () => {
    expect(edgesOf({})).toEqual([
      'Buttons front, front: tail reference edge',
      'Buttons front, front: pin reference edge',
      "Buttons back, back: tail groove's upper edge",
      'Buttons back, back: pin reference edge',
    ]);
    // Slips carry the groove, so the sides have none to be marked from.
    const hold = { kind: 'slips', width: 12, height: 20 } as const;
    expect(edgesOf({ bottom: { kind: 'panel', slack: 0.5, hold } })[2]).toBe(
      "Buttons back, back: tail back's lower edge",
    );
    const ofFront = (bottom: number) => edgesOf({ lip: { sides: 6, top: 6, bottom } })[1];
    expect(ofFront(6)).toBe("Buttons front, front: pin rebate's lower edge");
    expect(ofFront(0)).toBe('Buttons front, front: pin reference edge');
  });

  it('name the line of the other edge for what lies there, which need not be the board’s own', () => {
    const uppers = (change: Partial<DrawerSpec>) =>
      guidesOfDrawer(change).map(({ titles: { upper } }) => upper);
    // The sides go on 4 mm above the back; its own edges are the pins' lines.
    expect(uppers({})).toEqual(['upper edge', 'upper edge', "back's edge", 'upper edge']);
    expect(uppers({ backDrop: 0 })[2]).toBe('upper edge');
    expect(uppers({ lip: { sides: 6, top: 6, bottom: 0 } }).slice(0, 2)).toEqual([
      'upper edge',
      "rebate's edge",
    ]);
  });

  it('have no slot for the half spaces at the back, where the sides go on past it', () => {
    const tailGuides = (change: Partial<DrawerSpec>) =>
      guidesOfDrawer(change)
        .filter(({ guide: { board } }) => board === 'tail')
        .map(({ guide: { byHand, fingers } }) => [byHand, fingers.length - 1]);
    // Both are as many tails wide as the program finds; of n tails there are n + 1 spaces, the half ones included.
    const [only] = value(layOutSet([inOpening(280, 110, 420, cutByRouter)])).drawers;
    const [front, back] = [only?.front.tails.length ?? 0, only?.back.tails.length ?? 0];
    expect(back).toBeGreaterThan(1);
    expect(tailGuides({})).toEqual([
      [[], front + 1],
      [['lower', 'upper'], back - 1],
    ]);
    // A back as high as the sides may have another number of tails.
    expect(tailGuides({ backDrop: 0 })[1]?.[0]).toEqual(['lower']);
  });

  it('tell of a rebate whose shoulder the fence must bear on, where a lip stands out beyond it', () => {
    const rebates = (lip: DrawerSpec['lip']) =>
      guidesOfDrawer(lip === undefined ? {} : { lip }).map(({ titles: { rebate } }) => rebate);
    // As deep as the tails are long: 20 mm less a lap of 5.
    expect(rebates({ sides: 6, top: 6, bottom: 0 })).toEqual([undefined, 15, undefined, undefined]);
    expect(rebates(undefined)).toEqual(new Array(4).fill(undefined));
  });
});
