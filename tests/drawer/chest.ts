import type { DrawerSpec, JointWish } from '../../src/drawer/drawerSpec.ts';

/** Its front corners. */
export const joint = {
  kind: 'lapped',
  slope: { run: 7 },
  pin: 5,
  halfPin: { lower: 6, upper: 6 },
  lap: 5,
  spacing: { kind: 'even' },
} satisfies JointWish;

/** A drawer of the haberdashery chest: cherry front, ash sides, a panel in a groove. */
export const drawer = (change: Partial<DrawerSpec> = {}): DrawerSpec => ({
  name: 'Buttons',
  count: 1,
  space: {
    kind: 'opening',
    opening: { width: 280, height: 76, depth: 420 },
    fit: { side: 0.5, top: 1, behind: 12 },
  },
  stock: {
    front: { thickness: 20, species: 'Cherry, black', grain: 'flatsawn' },
    side: { thickness: 11, species: 'Ash, white' },
    back: { thickness: 11, species: 'Ash, white' },
    bottom: { thickness: 5 },
  },
  joint,
  backJoint: { slope: { run: 7 }, pin: 5, halfPin: { lower: 6, upper: 6 }, spacing: { kind: 'even' } },
  groove: { offset: 11, width: 5, depth: 5 },
  backDrop: 4,
  bottom: { kind: 'panel', slack: 0.5, hold: { kind: 'groove' } },
  ...change,
});

/** The same in an opening of another size. */
export const inOpening = (
  width: number,
  height: number,
  depth: number,
  change: Partial<DrawerSpec> = {},
): DrawerSpec =>
  drawer({
    space: { kind: 'opening', opening: { width, height, depth }, fit: { side: 0.5, top: 1, behind: 12 } },
    ...change,
  });

/** A button box of 9 mm boards, its grooves stopped where its bottom begins. */
export const box = (change: Partial<DrawerSpec> = {}): DrawerSpec => ({
  name: 'Buttons',
  count: 2,
  space: { kind: 'size', size: { width: 200, height: 80, depth: 140 } },
  stock: {
    front: { thickness: 9 },
    side: { thickness: 9 },
    back: { thickness: 9 },
    bottom: { thickness: 4 },
  },
  joint: { kind: 'through', spacing: { kind: 'even' } },
  backJoint: { spacing: { kind: 'even' } },
  groove: { offset: 8, width: 4, depth: 4, stopped: 5 },
  backDrop: 0,
  bottom: { kind: 'panel', slack: 0.5, hold: { kind: 'groove' } },
  box: {},
  ...change,
});
