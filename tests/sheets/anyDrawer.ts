import fc from 'fast-check';
import { type Drawer, drawersAndBoxes } from '../../src/drawer/drawer.ts';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import { comesOut } from '../../src/drawer/groove/hidingChoices.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { type Part, parts } from '../../src/drawer/partsList.ts';
import { grouped } from '../../src/joint/groupedSpacing.ts';
import type { Size } from '../../src/paper/printable.ts';
import { drawer } from '../drawer/chest.ts';

const size = (least: number, most: number) =>
  fc.integer({ min: 100 * least, max: 100 * most }).map((hundredths) => hundredths / 100);

/** One word, many, letters of any script, and none that can be parted at a space. */
const name = fc.oneof(
  fc.constantFrom('Buttons', 'W'.repeat(80), 'Ausgleichsgewindebohrer und Feilen, große', '縫い糸とボタン'),
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }),
);

/** Wishes of ordinary and less ordinary sizes, most of which can be made. */
export const anySpec: fc.Arbitrary<DrawerSpec> = fc
  .record({
    name,
    count: fc.integer({ min: 1, max: 120 }),
    opening: fc.record({ width: size(60, 1400), height: size(42, 480), depth: size(80, 1100) }),
    lip: fc.option(fc.record({ sides: size(0, 15), top: size(0, 15), bottom: size(0, 15) }), {
      nil: undefined,
    }),
    own: fc.boolean(),
    front: size(14, 32),
    side: size(8, 20),
    run: fc.integer({ min: 5, max: 12 }),
    pin: size(2, 9),
    proud: fc.constantFrom(0, 0.3),
    kind: fc.constantFrom('lapped', 'lapped', 'through', 'double-lapped', 'secret-mitred'),
    graded: fc.boolean(),
    offset: size(6, 13),
    bottom: size(3, 8),
    solid: fc.boolean(),
    slips: fc.option(fc.record({ width: size(8, 14), height: size(18, 26) }), { nil: undefined }),
    backDrop: size(0, 8),
    shoulder: fc.constantFrom(undefined, undefined, 'lower', 'both'),
    toothed: fc.boolean(),
    groups: fc.constantFrom(undefined, undefined, undefined, [1, 1], [1, 2, 1]),
  })
  .map((wish): DrawerSpec => {
    const { opening, lip, own, side, run, pin, proud, kind, graded, slips } = wish;
    // Pins that end behind a lap can be proud of nothing.
    const isOpen = kind === 'lapped' || kind === 'through';
    const shoulder = isOpen && lip === undefined ? wish.shoulder : undefined;
    const flush = isOpen && shoulder === undefined ? proud : 0;
    const plain = graded
      ? ({ kind: 'graded', ratio: 1.15, from: 'middle' } as const)
      : ({ kind: 'even' } as const);
    const spacing = wish.groups === undefined ? plain : grouped(wish.groups);
    return drawer({
      name: wish.name,
      count: wish.count,
      space: own
        ? { kind: 'size', size: opening }
        : { kind: 'opening', opening, fit: { side: 0.4, top: 0.8, behind: 10 } },
      ...(lip === undefined || kind !== 'lapped' ? {} : { lip }),
      stock: {
        front: { thickness: wish.front, species: 'Cherry, black' },
        side: { thickness: side, species: 'Ash, white' },
        back: { thickness: side },
        bottom: { thickness: wish.bottom },
      },
      joint: {
        kind,
        slope: { run },
        pin,
        proud: flush,
        spacing,
        mitre: 'corner',
        ...(shoulder && { shoulder }),
        ...(kind === 'through' && wish.toothed && { houndsTooth: {} }),
      },
      backJoint: {
        slope: { run },
        pin,
        proud: flush,
        spacing: { kind: 'even' },
        ...(shoulder && { shoulder: 'upper' }),
        ...(wish.toothed && { houndsTooth: {} }),
      },
      groove: { offset: wish.offset, width: wish.bottom, depth: 4 },
      backDrop: wish.backDrop,
      bottom: {
        kind: wish.solid ? 'solid' : 'panel',
        slack: 0.5,
        hold: slips === undefined ? { kind: 'groove' } : { kind: 'slips', ...slips },
      },
    });
  });

export interface MadeDrawer {
  readonly drawer: Drawer;
  readonly parts: readonly Part[];
}

/** A drawer or box set out, with its parts; nothing where it cannot be made. */
export const made = (spec: DrawerSpec): MadeDrawer | undefined => {
  const set = spec.box === undefined ? layOutSet([spec]) : layOutSet([], undefined, {}, [spec]);
  const [first] = set.ok ? drawersAndBoxes(set.value) : [];
  return set.ok && first !== undefined ? { drawer: first, parts: parts(set.value) } : undefined;
};

/** A box of a drawer's wishes, as far as a box has them. */
const boxed = ({ lip: _, fingers: __, ...spec }: DrawerSpec, back: number): DrawerSpec => {
  const { space, stock, joint, bottom, groove } = spec;
  const box: DrawerSpec = {
    ...spec,
    space: { kind: 'size', size: space.kind === 'size' ? space.size : space.opening },
    stock: { ...stock, back: { thickness: back } },
    backJoint: joint,
    backDrop: 0,
    bottom: { ...bottom, hold: { kind: 'groove' } },
    box: {},
  };
  return comesOut(box) ? { ...box, groove: { ...groove, stopped: 2 } } : box;
};

/** Boxes of equal ends and of others. */
export const anyBoxSpec: fc.Arbitrary<DrawerSpec> = fc
  .record({
    spec: anySpec,
    back: fc.option(size(8, 24), { nil: undefined }),
    lid: fc.option(fc.record({ height: size(14, 80), kerf: size(0, 3) }), { nil: undefined }),
  })
  .map(({ spec, back, lid }) => {
    const box = boxed(spec, back ?? spec.stock.front.thickness);
    return lid === undefined || box.joint.spacing.kind !== 'even' ? box : { ...box, box: { lid } };
  });

const making = (specs: fc.Arbitrary<DrawerSpec>): fc.Arbitrary<MadeDrawer> =>
  specs.map(made).filter((drawn) => drawn !== undefined);

/** Drawers that can be made. */
export const anyDrawer = making(anySpec);

/** Boxes that can be made. */
export const anyBox = making(anyBoxSpec);

/** What the sheets' frame leaves of common papers, in mm. */
export const AREAS: Readonly<Record<'A5' | 'A4' | 'Letter' | 'A3', Size>> = {
  A5: { width: 131, height: 188.4 },
  A4: { width: 193, height: 275.4 },
  Letter: { width: 198.9, height: 257.8 },
  A3: { width: 280, height: 398.4 },
};
