import { describe, expect, it } from 'vitest';
import { frameParts } from '../../../src/drawer/arrangement/frameParts.ts';
import { cuttingList } from '../../../src/drawer/cuttingList.ts';
import { type Drawer, drawersAndBoxes } from '../../../src/drawer/drawer.ts';
import { drawerSeason } from '../../../src/drawer/drawerSeason.ts';
import { setFittings } from '../../../src/drawer/fittings/setFittings.ts';
import { parts } from '../../../src/drawer/partsList.ts';
import { spacerList } from '../../../src/drawer/spacers/spacerList.ts';
import { spacerPrices } from '../../../src/drawer/spacers/spacerPrices.ts';
import { guidesOf } from '../../../src/project/guidesOf.ts';
import type { Project } from '../../../src/project/project.ts';
import { readProject } from '../../../src/project/readProject.ts';
import { speak } from '../../../src/units/phrase.ts';

type Tree = { readonly [key: string]: unknown };

const isTree = (value: unknown): value is Tree =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The dotted keys that lead to a value that is no group, each with its value. */
const leavesOf = (tree: Tree, before: readonly string[] = []): (readonly [string, unknown])[] =>
  Object.entries(tree).flatMap(([key, value]) =>
    isTree(value) ? leavesOf(value, [...before, key]) : [[[...before, key].join('.'), value] as const],
  );

const withLeaf = (tree: Tree, [key = '', ...rest]: readonly string[], value: unknown): Tree => {
  const inner = tree[key];
  return { ...tree, [key]: rest.length === 0 ? value : withLeaf(isTree(inner) ? inner : {}, rest, value) };
};

const adviceOf = ({ set, units }: Project): string[] => set.advice.map(({ says }) => speak(says, units));

/** All that is shown of a project: its corners, parts, sizes through the year, guides and advice. */
const shown = (project: Project): string => {
  const { name, units, set, joints, cuts, sawing, work, cabinet } = project;
  return JSON.stringify([
    name,
    units,
    set.family,
    drawersAndBoxes(set).map((drawer) => [
      drawer.sizes,
      drawer.boards,
      drawer.front,
      drawer.back,
      drawerSeason(drawer),
    ]),
    drawersAndBoxes(set).map(({ spec }) => [spec.name, spec.count, spec.space, spec.lip]),
    parts(set, units),
    fittingsIn(set.drawers),
    joints.map((corner) => [corner.name, corner.joint]),
    [...cuts.values()],
    guidesOf(project),
    [spacerList(set), spacerPrices(set)],
    cuttingList(parts(set, units), sawing),
    work === undefined ? [] : [sawing, work],
    cabinet === undefined ? [] : frameParts(cabinet, units),
    adviceOf(project),
  ]);
};

const fittingsIn = (drawers: readonly Drawer[]) => {
  const fitted = setFittings(drawers);
  return fitted.ok ? [...fitted.value.of.values()] : fitted.complaints;
};

const projectOf = (plan: Tree): Project => {
  const reading = readProject(JSON.stringify(plan));
  if (!reading.ok) throw new Error(JSON.stringify(reading.complaints));
  return reading.value;
};

const board = (thickness: number, species: string) => ({ thickness, species, grain: 'quartersawn' });

/** A plan that gives nearly every key. */
const FULL: Tree = {
  name: 'Chest',
  stock: {
    front: board(20, 'Cherry, black'),
    side: board(12, 'Ash, white'),
    back: board(11, 'Ash, white'),
    bottom: board(6, 'Plum'),
  },
  joint: { kind: 'lapped', slope: '1:7', pin: 6, halfPin: 7, lap: 5, proud: 0.5, chisel: 4, tails: 3 },
  groove: { offset: 11, width: 6, depth: 5, stopped: 8 },
  fit: { side: 0.6, top: 1.2, behind: 12 },
  back: { drop: 5, joint: { slope: '1:8', pin: 8, halfPin: 8, tails: 2 } },
  bottom: { kind: 'solid', slack: 0.7 },
  front: { lip: 5 },
  climate: { making: '9%', driest: '6%', dampest: '12%' },
  woods: { Plum: { shrinkage: { radial: 4, tangential: 8 } } },
  family: { target: 20 },
  drawers: [
    { name: 'A', opening: { width: 280, height: 90, depth: 300 } },
    { name: 'B', opening: { width: 280, height: 120, depth: 300 } },
  ],
};

/** Another value for each key, in its range. */
const OTHERS: Tree = {
  name: 'Box',
  stock: {
    front: { thickness: 21, species: 'Ash, white', grain: 'flatsawn' },
    side: { thickness: 13, species: 'Cherry, black', grain: 'flatsawn' },
    back: { thickness: 12, species: 'Cherry, black', grain: 'flatsawn' },
    bottom: { thickness: 7, species: 'Ash, white', grain: 'flatsawn' },
  },
  joint: { kind: 'through', slope: '1:6', pin: 7, halfPin: 8, lap: 6, proud: 0.4, chisel: 9, tails: 4 },
  groove: { offset: 12, width: 5, depth: 4, stopped: 9 },
  fit: { side: 0.7, top: 1.3, behind: 13 },
  back: { drop: 6, joint: { slope: '1:7', pin: 9, halfPin: 9, tails: 1 } },
  bottom: { kind: 'panel', slack: 0.8 },
  front: { lip: 6 },
  pulls: {
    number: 0,
    above: '2%',
    fromEnds: '30%',
    lineUpWith: 'A',
    holes: { diameter: 6, spacing: 32 },
    size: { width: 30, height: 31 },
  },
  locks: { number: 0, pin: 16, keyhole: 7, body: { width: 40, height: 30, depth: 9 } },
  stops: { number: 0, fromSides: '30%', width: 30, thickness: 5, depth: 20, behind: 18 },
  climate: { making: '8%', driest: '5%', dampest: '13%' },
  woods: { Plum: { shrinkage: { radial: 5, tangential: 9 } } },
  family: { target: 21, spacers: 3, within: 2, halfPins: [4, 8] },
  fingers: {
    together: 11,
    bush: 17,
    pairs: 1,
    bar: 60,
    lapped: { channel: 31 },
    through: { channel: 25, taper: 8 },
  },
  saw: { kerf: 2, edge: 4, ends: 20, face: 2, keep: [200, 40] },
  boards: [{ name: 'Oak', stock: ['front', 'side'], thickness: 28, size: '2100 x 210' }],
  breakout: {
    allow: { front: ['stain'], side: ['wane'], back: ['pith'], bottom: ['shake'] },
    runThrough: [['B', 'A']],
    spare: { front: 2, side: 2, back: 3, bottom: 1 },
  },
  cabinet: {
    rails: { width: 55, top: 20, bottom: 20, tenon: 9, species: 'Oak' },
    dividers: 'short',
    runners: { width: 29, species: 'Oak' },
    guides: { height: 23, sides: 11 },
    vent: 15,
  },
  cutter: { diameter: 12, angle: 7, length: 22, neck: 7, straight: 7, bush: 17, pinBush: 12 },
};

const FRAME: Tree = {
  rails: { width: 50, top: 18, bottom: 18, tenon: 8, species: 'Cherry, black' },
  dividers: 'full',
  runners: { width: 28, species: 'Ash, white' },
  guides: { height: 22, sides: 10 },
  vent: 14,
};
const SHELL: Tree = { width: 600, height: 300, depth: 420, rail: 18 };
const STOCK: Tree = { front: { thickness: 20 }, side: { thickness: 12 } };
const { rails: _rails, ...RAILLESS } = FRAME;

const BOX = { name: 'D', size: { width: 280, height: 90, depth: 300 } };
const CORNER = { name: 'C', kind: 'through', width: 90, tailBoard: 12, pinBoard: 12 };
const { joint, climate, cutter: _, ...rest } = FULL;
const { lap, kind, ...plain } = isTree(joint) ? joint : {};
const { woods, ...unmoved } = rest;

/** How large a pull is. */
const PULL = { width: 80, height: 12 };
/** Two drawers, one over the other, to fix fittings to. */
const FITTED: Tree = {
  stock: { front: { thickness: 20 }, side: { thickness: 12 } },
  cabinet: { width: 300, height: 230, depth: 300, rail: 18, rows: ['A', 'B'] },
  drawers: [{ name: 'A' }, { name: 'B', pulls: { fromEnds: 70 } }],
};

/** What a plan has beside, or has in another's place. */
const PLANS: readonly (readonly [string, Tree])[] = [
  ['drawers of solid wood, with a climate', FULL],
  ['drawers without a climate', { ...rest, joint }],
  ['panels', { ...FULL, bottom: { kind: 'panel', slack: 0.7 } }],
  [
    'drawers of their own size, and a lapped corner',
    {
      ...FULL,
      drawers: [{ name: 'A', size: { width: 280, height: 90, depth: 300 } }],
      joints: [{ ...CORNER, kind: 'lapped' }],
    },
  ],
  [
    'drawers of their own kind, their own number of tails and their own boards',
    {
      ...unmoved,
      joint,
      drawers: [
        {
          name: 'A',
          opening: { width: 280, height: 90, depth: 300 },
          joint: { kind: 'through', tails: 3 },
          stock: { front: { thickness: 18 } },
          fit: { side: 0.4, top: 1 },
          front: { lip: 0 },
        },
      ],
    },
  ],
  ['single corners alone', { ...FULL, drawers: [], joints: [CORNER] }],
  ['boxes alone', { ...FULL, drawers: [], boxes: [{ ...BOX, kind: 'lapped' }] }],
  [
    'a box with boards of its own, beside a drawer',
    { ...rest, boxes: [{ ...BOX, stock: { front: { thickness: 14 }, side: { thickness: 10 } } }] },
  ],
  [
    'boxes out of boards',
    {
      stock: { front: { thickness: 12 } },
      saw: { kerf: 3, edge: 3, ends: 25, face: 1, keep: [300, 50] },
      boards: [{ name: 'Ash', stock: ['front', 'side', 'back'], thickness: 26, size: '2000 x 200 x 4' }],
      breakout: { allow: { front: ['sapwood'] }, spare: { front: 1 } },
      boxes: [BOX],
    },
  ],
  ['a lapped corner alone', { joint, joints: [{ ...CORNER, kind: 'lapped' }] }],
  ['a corner with all keys of its own', { joint: plain, joints: [{ ...CORNER, ...plain }] }],
  [
    'a lapped corner cut with a router',
    {
      joints: [{ ...CORNER, kind: 'lapped', pinBoard: 20, tails: 2 }],
      cutter: { diameter: 12.7, angle: 8, length: 20, neck: 6, straight: 6, bush: 16, pinBush: 11 },
    },
  ],
  [
    'drawers cut along fingers',
    {
      stock: { front: { thickness: 20 }, side: { thickness: 12 } },
      joint: { pin: 8.5, halfPin: 7, lap: 5 },
      back: { joint: { pin: 10 } },
      cutter: { diameter: 12.7, angle: 8, length: 20, straight: 6, bush: 16, pinBush: 11 },
      fingers: {
        together: 12,
        pairs: 9,
        bar: 400,
        lapped: { channel: 30 },
        through: { channel: 26, taper: 8 },
      },
      family: { spacers: 2, within: 0.1, halfPins: [5, 12] },
      drawers: [
        { name: 'A', opening: { width: 280, height: 101, depth: 300 } },
        { name: 'B', opening: { width: 280, height: 163, depth: 300 } },
        { name: 'C', opening: { width: 280, height: 87, depth: 300 } },
        { name: 'D', opening: { width: 280, height: 127, depth: 300 } },
      ],
    },
  ],
  [
    'drawers out of boards, but for their bottoms',
    {
      stock: { front: { thickness: 20 }, side: { thickness: 12 } },
      saw: { kerf: 3, edge: 3, ends: 25, face: 1, keep: [300, 50] },
      boards: [{ name: 'Ash', stock: ['front', 'side', 'back'], thickness: 26, size: '2000 x 200 x 4' }],
      breakout: {
        allow: { front: ['sapwood'], side: ['sapwood'], back: ['knot'], bottom: ['knot'] },
        runThrough: [['A', 'B']],
        spare: { front: 1, side: 1, back: 1, bottom: 2 },
      },
      drawers: [
        { name: 'A', opening: { width: 280, height: 90, depth: 300 } },
        { name: 'B', opening: { width: 280, height: 120, depth: 300 } },
      ],
    },
  ],
  [
    'drawers in a cabinet with all of a frame',
    { stock: STOCK, cabinet: { ...SHELL, ...FRAME, rows: [['A', 'B'], 'C'] } },
  ],
  [
    'drawers in a cabinet without rails and dividers',
    {
      stock: STOCK,
      cabinet: {
        ...SHELL,
        ...RAILLESS,
        rails: { width: 50, tenon: 8, species: 'Oak' },
        rail: 0,
        rows: ['A', 'C'],
      },
    },
  ],
  [
    'drawers beside rows inside a place, whose divider reaches back',
    {
      stock: STOCK,
      cabinet: { ...SHELL, ...FRAME, guides: { height: 22 }, rows: [['A', { rows: ['B', 'C'] }]] },
    },
  ],
  [
    'wishes for boards, and none listed',
    {
      stock: { front: { thickness: 20 }, side: { thickness: 12 } },
      saw: { kerf: 3, edge: 3, ends: 25, face: 1, keep: [300, 50] },
      breakout: { spare: { front: 1 } },
      drawers: [{ name: 'A', opening: { width: 280, height: 90, depth: 300 } }],
    },
  ],
  [
    'drawers of a given tail width along fingers',
    {
      stock: { front: { thickness: 20 }, side: { thickness: 12 } },
      joint: { pin: 8.5, halfPin: 7, lap: 5 },
      back: { joint: { pin: 9.7 } },
      cutter: { diameter: 12.7, angle: 8, length: 20, bush: 16 },
      fingers: { together: 12 },
      family: { target: 30, halfPins: [5, 12] },
      drawers: [{ name: 'A', opening: { width: 280, height: 101, depth: 300 } }],
    },
  ],
  [
    'drawers with fittings',
    {
      ...FITTED,
      pulls: { number: 2, above: '1%', fromEnds: 60, holes: { diameter: 5, spacing: 64 }, size: PULL },
      locks: { number: 1, pin: 15, keyhole: 6, body: { width: 50, height: 24, depth: 8 } },
      stops: { number: 2, fromSides: 60, width: 40, thickness: 6, depth: 25, behind: 20 },
    },
  ],
  [
    'drawers with one pull and one stop in the middle',
    { ...FITTED, pulls: { fromEnds: 60, above: 2 }, stops: { number: 1, fromSides: 60 } },
  ],
  [
    'drawers without the fittings that are described',
    {
      ...FITTED,
      pulls: { number: 0, above: 2, fromEnds: 60, lineUpWith: 'B', holes: { diameter: 5 }, size: PULL },
      locks: { number: 0, pin: 15, keyhole: 5, body: { width: 50, height: 24, depth: 8 } },
      stops: { number: 0, fromSides: 60, width: 40, thickness: 6, depth: 25, behind: 20 },
    },
  ],
  [
    'pulls in line with those of another drawer, and so far from the ends',
    { ...FITTED, pulls: { above: 2, fromEnds: 60, lineUpWith: 'B' } },
  ],
  [
    'a through corner cut without guides',
    {
      joints: [{ ...CORNER, tails: 2 }],
      cutter: { diameter: 12.7, angle: 8, length: 20, neck: 6, straight: 6, pinBush: 10 },
    },
  ],
];

/** Limits that are kept, and change nothing within them. */
const LIMITS = [
  'cutter.length',
  'cutter.neck',
  'joint.chisel',
  'fingers.pairs',
  'fingers.bar',
  'fingers.through.taper',
];

describe('a key of a plan', () => {
  it.each(PLANS)('changes what is shown, or advice names it: %s', (_name, plan) => {
    const before = projectOf(plan);
    const advice = adviceOf(before);
    const ignored = leavesOf(plan).filter(([key, value]) => {
      const place = key.split('.');
      const other = place.reduce<unknown>((inner, each) => (isTree(inner) ? inner[each] : undefined), OTHERS);
      if (other === undefined || LIMITS.includes(key)) return false;
      // What is so already is a kind, and there are two.
      const changed = other === value ? 'solid' : other;
      if (
        advice.some((line) =>
          place.some((_each, i) => line.startsWith(`${place.slice(0, i + 1).join('.')} `)),
        )
      )
        return false;
      const reading = readProject(JSON.stringify(withLeaf(plan, place, changed)));
      return reading.ok && shown(reading.value) === shown(before);
    });
    expect(ignored).toEqual([]);
  });

  const unused = (plan: Tree) => adviceOf(projectOf(plan)).filter((line) => line.includes('has no effect'));

  it('is not told of where it has an effect', () => {
    expect(unused({ ...FULL, family: undefined })).toEqual([]);
    expect(unused({ joint, joints: [{ ...CORNER, kind: 'lapped' }] })).toEqual([
      'joint.kind has no effect: it is for the front corners of drawers, and this plan has no drawers',
      'joint.tails has no effect: it is for the front corners of drawers, and this plan has no drawers',
    ]);
  });

  it('is told of with the reason, a group once', () => {
    expect(unused({ stock: FULL.stock, fit: FULL.fit, climate, woods, joints: [CORNER] })).toEqual([
      'stock has no effect: this plan has no drawers and no boxes',
      'fit has no effect: this plan has no drawers',
      'climate has no effect: this plan has no drawers',
      'woods has no effect: this plan has no drawers',
    ]);
    expect(
      unused({
        ...FULL,
        woods: { ...(FULL.woods as Tree), Yew: { shrinkage: { radial: 4, tangential: 8 } } },
      }),
    ).toEqual([
      'family.target has no effect: every drawer has its own number of tails',
      'woods.Yew has no effect: no board that moves is made of it',
    ]);
  });

  it('is told of where boxes take only some of what drawers would', () => {
    expect(
      unused({
        stock: {
          front: { thickness: 14, grain: 'quartersawn' },
          side: { thickness: 12 },
          back: { thickness: 11 },
        },
        joint: { pin: 5, lap: 3, tails: 3 },
        groove: { offset: 9, stopped: 4 },
        fit: { side: 1 },
        bottom: { slack: 1 },
        boxes: [{ ...BOX, stock: { side: { thickness: 10 } } }],
      }),
    ).toEqual([
      'fit has no effect: this plan has no drawers',
      'stock.back has no effect: this plan has no drawers',
      'groove.stopped has no effect: this plan has no drawers',
      'joint.tails has no effect: it is for the front corners of drawers, and this plan has no drawers',
      'stock.front.grain has no effect: no box here takes it',
      'stock.side.thickness has no effect: no box here takes it',
      'joint.lap has no effect: no corner here takes its lap from it',
    ]);
  });

  it('of every drawer, and a lap that no corner has, is named', () => {
    const through = { joint: { kind: 'through', pin: 6 } };
    const drawers = [{ name: 'A', opening: { width: 280, height: 90, depth: 300 }, ...through }];
    expect(
      unused({
        stock: { front: { thickness: 20 }, side: { thickness: 11 } },
        joint: { lap: 5, pin: 7 },
        drawers,
      }),
    ).toEqual([
      'joint.pin has no effect: every corner that it is for has its own in its place',
      'joint.lap has no effect: no corner here takes its lap from it',
    ]);
  });

  it('of a mitre is named where no corner has a shoulder, and only there', () => {
    const drawers = [{ name: 'A', opening: { width: 280, height: 90, depth: 300 } }];
    const stock = { front: { thickness: 20 }, side: { thickness: 11 } };
    const mitred = { mitre: 'corner', shoulderWidth: 17 };
    const back = (keys: Tree) => ({ stock, drawers, joint: mitred, back: { joint: keys } });
    expect(unused(back({ shoulderWidth: 5 }))).toEqual([
      'joint.mitre has no effect: no corner here is mitred',
      'joint.shoulderWidth has no effect: no corner here has a mitred shoulder of its width',
      'back.joint.shoulderWidth has no effect: no back here has a mitred shoulder',
    ]);
    expect(unused(back({ shoulder: 'upper', shoulderWidth: 5 }))).toEqual([
      'joint.shoulderWidth has no effect: no corner here has a mitred shoulder of its width',
    ]);
    expect(unused({ stock, drawers, joint: { ...mitred, shoulder: 'lower' } })).toEqual([]);
  });

  it('leaves its shoulder to corners of a kind that can have one, and to no back', () => {
    const { set, joints } = projectOf({
      stock: { front: { thickness: 12 }, side: { thickness: 12 } },
      joint: { shoulder: 'lower', shoulderWidth: 17 },
      drawers: [
        { name: 'A', opening: { width: 280, height: 90, depth: 300 } },
        { name: 'B', opening: { width: 280, height: 90, depth: 300 }, joint: { kind: 'double-lapped' } },
      ],
      joints: [
        { ...CORNER, kind: 'through', pinBoard: 18, tailBoard: 18 },
        { ...CORNER, name: 'D', kind: 'double-lapped', pinBoard: 18, tailBoard: 18 },
      ],
    });
    const lower = 17;
    expect(set.drawers.map(({ front }) => front.shoulder.lower)).toEqual([lower, 0]);
    expect(set.drawers.map(({ back }) => back.shoulder.lower)).toEqual([0, 0]);
    expect(joints.map(({ joint: { shoulder } }) => shoulder.lower)).toEqual([lower, 0]);
  });

  it('of one drawer is named with its place', () => {
    const drawers = [
      {
        name: 'A',
        opening: { width: 280, height: 90, depth: 300 },
        stock: { bottom: { thickness: 5, grain: 'quartersawn' } },
      },
    ];
    expect(unused({ stock: { front: { thickness: 20 }, side: { thickness: 11 } }, drawers })).toEqual([
      'drawers[0].stock.bottom.grain has no effect: a panel does not move',
    ]);
  });
});
