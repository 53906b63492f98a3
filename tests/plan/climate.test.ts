import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/plan/plan.ts';
import { readPlan } from '../../src/plan/readPlan.ts';
import { complaintsOf } from './complaintsOf.ts';

const STOCK =
  'stock: {front: {thickness: 20, species: cherry}, side: {thickness: 11, species: Ash, grain: quartersawn}}';
const CLIMATE = 'climate: {making: 8%, driest: 6%, dampest: 12%}';
const DRAWERS = 'drawers:\n  - {name: A, opening: {width: 280, height: 76, depth: 420}}';

const planOf = (...lines: string[]): Plan => {
  const text = lines.join('\n');
  const reading = readPlan(text);
  if (!reading.ok) throw new Error(complaintsOf(text).join('\n'));
  return reading.plan;
};

/** What is told of a plan, without the file's name. */
const told = (...lines: string[]): string[] =>
  complaintsOf(lines.join('\n')).map((line) => line.replace(/^plan.yaml:/u, ''));

const movementOf = (...lines: string[]) => planOf(...lines).drawers[0]?.movement;

const topOf = (...lines: string[]): number | undefined => {
  const space = planOf(...lines).drawers[0]?.space;
  return space?.kind === 'opening' ? space.fit.top : undefined;
};

describe('a climate', () => {
  it('is read from moisture contents and from air', () => {
    expect(planOf(STOCK, CLIMATE, DRAWERS).climate).toEqual({ making: 8, driest: 6, dampest: 12 });
    const { climate } = planOf(
      STOCK,
      'climate: {making: 70F/45%, driest: 21C/30%, dampest: "21 °C / 70 %"}',
      DRAWERS,
    );
    expect(climate?.making).toBeCloseTo(8.5, 1);
    expect(climate?.dampest).toBeCloseTo(13.1, 1);
  });

  it('gives every drawer its woods, by the names in the table, flatsawn unless a grain is given', () => {
    const movement = movementOf(STOCK, CLIMATE, DRAWERS);
    expect(movement?.front).toMatchObject({ wood: { name: 'Cherry, black' }, cut: 'flatsawn' });
    expect(movement?.side).toMatchObject({ wood: { name: 'Ash, white' }, cut: 'quartersawn' });
    expect(movement?.back).toEqual(movement?.side);
    expect(movement?.bottom).toEqual({ kind: 'panel' });
  });

  it('needs the wood of a bottom only where that is solid', () => {
    const stock = STOCK.replace(/\}$/u, ', bottom: {species: teak}}');
    expect(movementOf(stock, CLIMATE, 'bottom: {kind: solid}', DRAWERS)?.bottom).toMatchObject({
      kind: 'solid',
      wood: { name: 'Teak' },
      cut: 'flatsawn',
    });
    expect(told(STOCK, CLIMATE, 'bottom: {kind: solid}', DRAWERS)).toEqual([
      expect.stringMatching(
        /^1:1 stock\.bottom\.species: a climate is given, but not the wood of the bottom, /u,
      ),
    ]);
  });

  it('is not needed: without it woods may have any name, or none', () => {
    expect(movementOf(STOCK.replace('cherry', 'driftwood'), DRAWERS)).toBeUndefined();
  });

  it('says everything that is wrong with it at once, each at its place', () => {
    expect(
      told(STOCK, 'climate: {making: 21C/90%, driest: 300C/120%, dampest: 8}', DRAWERS).map(
        (line) => line.split(';')[0],
      ),
    ).toEqual([
      expect.stringMatching(/^2:11 climate\.making: wood of \d\d.* is too wet to work to a size$/u),
      '2:28 climate.driest: 300 °C (572 °F) is outside the published table',
      '2:28 climate.driest: a relative humidity of 120 % is outside the published table',
      '2:47 climate.dampest: this is 8',
    ]);
  });

  it('is refused where the year is turned round, or not whole', () => {
    expect(told(STOCK, 'climate: {making: 8%, driest: 12%, dampest: 6%}', DRAWERS)).toEqual([
      '2:23 climate.driest: driest (12 % moisture content) is damper than dampest (6 %); driest must be the drier of the two; exchange the two',
    ]);
    expect(told(STOCK, 'climate: {making: 8%, driest: 6%}', DRAWERS)).toEqual([
      expect.stringContaining('climate.dampest: this is missing; it must be air, such as 21C/45%'),
    ]);
  });

  it('asks for the wood of fronts and sides once for all drawers, or in the drawer that misspells it', () => {
    const two = `${DRAWERS}\n  - {name: B, opening: {width: 280, height: 76, depth: 420}, stock: {back: {species: ook}}}`;
    expect(
      told('stock: {front: {thickness: 20, species: chery}, side: {thickness: 11}}', CLIMATE, two),
    ).toEqual([
      '1:32 stock.front.species: "chery" is not a wood that is known here; the closest names are "Cherry, black"; "Chestnut, American"; "Elm, slippery"; choose one of these, or give its own movement: woods: {chery: {shrinkage: {radial: 3.7, tangential: 7.1}}}',
      '1:49 stock.side.species: a climate is given, but not the wood of the sides, so its movement cannot be calculated; try "Cherry, black", or remove the climate',
      expect.stringMatching(/^5:77 drawers\[1\]\.stock\.back\.species: "ook" is not a wood /u),
    ]);
  });
});

describe('woods of one’s own', () => {
  it('are named like everything else', () => {
    const text = 'woods: {"a\u202Eb": {shrinkage: {radial: 3, tangential: 6}}}\njoints: []';
    expect(complaintsOf(text)).toContain(
      'plan.yaml:1:9 woods["a\\u202eb"]: this holds a character that cannot be printed, U+202E; try letters, figures, blanks and signs only',
    );
  });

  const stock = STOCK.replace('cherry', 'plum');

  it('go by their names, before those of the table', () => {
    const own =
      'woods: {Plum: {shrinkage: {radial: 3, tangential: 6}}, ash: {coefficient: {radial: 0.001, tangential: 0.002}}}';
    const movement = movementOf(stock, CLIMATE, own, DRAWERS);
    expect(movement?.front.wood).toMatchObject({ name: 'Plum', source: 'own' });
    // 6 / (30 (100 - 4)).
    expect(movement?.front.wood.tangential).toBeCloseTo(1 / 480, 12);
    expect(movement?.side.wood).toEqual({ name: 'ash', radial: 0.001, tangential: 0.002, source: 'own' });
  });

  it('show everything that is wrong with each, at its place', () => {
    const own =
      'woods: {A: {shrinkage: {radial: 37, tangential: 7.1}}, B: {}, C: {coefficient: {radial: x}, shrinkag: 3}}';
    expect(told(stock, own, DRAWERS).map((line) => line.split(';')[0])).toEqual([
      '2:25 woods.A.shrinkage.radial: no wood has a radial shrinkage of 37',
      '2:56 woods.B: a wood of your own is given by its shrinkage or by its coefficient, one of the two',
      expect.stringContaining('woods.C.coefficient.tangential: this is missing'),
      expect.stringContaining('woods.C.coefficient.radial: this is "x"'),
      expect.stringContaining('woods.C.shrinkag: there is no such key here'),
    ]);
  });
});

describe('a gap above that is found', () => {
  const AUTO = 'fit: {top: auto}';

  it('is the larger of what front and sides ask for', () => {
    // Flatsawn cherry moves 0.00248 for 1 %, quartersawn ash 0.00169: (1 + 0.00248 × 4) h = 75.5.
    expect(topOf(STOCK, CLIMATE, AUTO, DRAWERS)).toBeCloseTo(76 - 75.5 / 1.00992, 10);
    // Flatsawn ash moves 0.00274.
    expect(topOf(STOCK.replace(', grain: quartersawn', ''), CLIMATE, AUTO, DRAWERS)).toBeCloseTo(
      76 - 75.5 / 1.01096,
      10,
    );
  });

  it('may be wished for one drawer only, or given up in one', () => {
    expect(topOf(STOCK, CLIMATE, DRAWERS.replace(/\}$/u, ', fit: {top: auto}}'))).toBeCloseTo(
      76 - 75.5 / 1.00992,
      10,
    );
    expect(topOf(STOCK, CLIMATE, AUTO, DRAWERS.replace(/\}$/u, ', fit: {top: 2}}'))).toBe(2);
  });

  it('is 1 mm where nothing is wished, climate or not', () => {
    expect(topOf(STOCK, CLIMATE, DRAWERS)).toBe(1);
  });

  it('needs a climate, where it is wished', () => {
    const line =
      'fit.top: the gap above a drawer can be found only where a climate is given; try 1mm, or give a climate: {making: 21C/45%, driest: 21C/30%, dampest: 21C/70%}';
    expect(told(STOCK, AUTO, DRAWERS)).toEqual([`2:7 ${line}`]);
    expect(told(STOCK, DRAWERS.replace(/\}$/u, ', fit: {top: auto}}'))).toEqual([`3:68 drawers[0].${line}`]);
  });

  it('is offered where its word is misspelt, and lengths where no such word is near', () => {
    expect(told(STOCK, CLIMATE, 'fit: {top: atuo}', DRAWERS)).toEqual([
      '3:7 fit.top: "atuo" is not a length; try auto',
    ]);
    expect(told(STOCK, CLIMATE, 'fit: {top: little}', DRAWERS)).toEqual([
      '3:7 fit.top: "little" is not a length; try 18, 18mm, 0.75in, 3/4in or 5-11/16in',
    ]);
  });

  it('needs the woods of front and sides', () => {
    expect(told('stock: {front: {thickness: 20}, side: {thickness: 11}}', CLIMATE, AUTO, DRAWERS)).toEqual([
      expect.stringContaining('stock.front.species: a climate is given, but not the wood of the front,'),
      expect.stringContaining('stock.side.species: a climate is given, but not the wood of the sides,'),
    ]);
  });
});
