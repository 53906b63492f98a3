import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { KIND_NAMES, KINDS } from '../../src/joint/kinds/kinds.ts';
import { layOut } from '../../src/joint/layOut.ts';
import { readPlan } from '../../src/plan/readPlan.ts';
import { complaintsOf } from './complaintsOf.ts';

const read = (file: string) => {
  const text = readFileSync(`examples/${file}`);
  const reading = readPlan(text);
  if (!reading.ok) throw new Error(complaintsOf(text).join('\n'));
  return reading.plan;
};

describe('the haberdashery chest', () => {
  const { units, drawers, joints } = read('haberdashery-chest.yaml');
  const openings = drawers.map(({ space }) => (space.kind === 'opening' ? space.opening : undefined));

  it('has nine drawers of four heights and two widths', () => {
    expect(units).toBe('mm');
    expect(joints).toEqual([]);
    expect(drawers.reduce((sum, { count }) => sum + count, 0)).toBe(9);
    expect([...new Set(openings.map((opening) => opening?.height))]).toEqual([76, 110, 146, 190]);
    expect([...new Set(openings.map((opening) => opening?.width))]).toEqual([280, 574]);
  });

  it('is of black cherry and white ash', () => {
    for (const { stock } of drawers) {
      expect(stock.front).toEqual({ thickness: 20, species: 'Cherry, black', grain: 'flatsawn' });
      expect(stock.side).toEqual({ thickness: 11, species: 'Ash, white', grain: 'flatsawn' });
      expect(stock.back).toEqual(stock.side);
      expect(stock.bottom).toEqual({ thickness: 5 });
    }
  });

  it('overrides the tails of its deepest drawer only', () => {
    expect(drawers.map(({ joint }) => joint.spacing)).toEqual([
      ...new Array(5).fill({ kind: 'even' }),
      { kind: 'even', tails: 6 },
    ]);
  });

  it('can be set out, without a word of advice', () => {
    expect(layOutSet(drawers)).toMatchObject({ ok: true, value: { advice: [] } });
  });
});

describe('the haberdashery chest from its cabinet alone', () => {
  it('has the same openings, each in the same place', () => {
    const spaces = (file: string) => read(file).drawers.map(({ name, count, space }) => [name, count, space]);
    expect(spaces('haberdashery-chest-cabinet.yaml')).toEqual(spaces('haberdashery-chest.yaml'));
  });
});

describe('the graduated chest', () => {
  const { units, drawers, cabinet } = read('graduated-chest.yaml');

  it('has rows that are as much higher than those above as its rail is thick, to 1/16 in', () => {
    expect(units).toBe('in/32');
    const heights = ['Buttons', 'Ribbon', 'Notions', 'Cloth'].map(
      (name) => (cabinet?.openings.find((each) => each.name === name)?.height ?? 0) / 25.4,
    );
    // 27 in less three rails of 3/4 is 24 3/4 = 4 a + 6 x 3/4, so a = 5 1/16, and all are whole sixteenths.
    expect(heights).toEqual([5.0625, 5.8125, 6.5625, 7.3125].map((each) => expect.closeTo(each, 9)));
    expect(cabinet?.openings).toHaveLength(7);
  });

  it('can be set out, without a word of advice', () => {
    expect(layOutSet(drawers)).toMatchObject({ ok: true, value: { advice: [] } });
  });
});

describe('the opening out of square', () => {
  const { drawers } = read('out-of-square.yaml');

  it('makes a drawer as much narrower as its sides lean, and tells of both', () => {
    const [leaning, square] = drawers.map(({ space }) => (space.kind === 'opening' ? space : undefined));
    // Sides that lean 1.5 mm to the right leave 278.5 of 280; the diagonals were read to 0.1 mm.
    expect(leaning?.opening.width).toBeCloseTo(278.5, 1);
    expect(square?.opening.width).toBe(280);
    const set = layOutSet(drawers);
    expect(set.ok && set.value.advice.map(({ at }) => at)).toEqual([
      ['drawers', 0, 'opening'],
      ['drawers', 0, 'opening'],
    ]);
  });
});

describe('the seasonal haberdashery chest', () => {
  const plain = read('haberdashery-chest.yaml');
  const { drawers, climate } = read('haberdashery-chest-seasons.yaml');

  it('is the same chest, but for its climate and the gaps that follow from it', () => {
    const still = drawers.map(({ movement, ...drawer }) => ({
      ...drawer,
      space:
        drawer.space.kind === 'opening'
          ? { ...drawer.space, fit: { ...drawer.space.fit, top: 1 } }
          : drawer.space,
    }));
    expect(still).toEqual(plain.drawers);
  });

  it('is made at 8.5 % and kept between 6.2 % and 13.1 % (Wood Handbook, Table 4-2, 45, 30 and 70 % at 21.1 C)', () => {
    expect(climate?.making).toBeCloseTo(8.5, 1);
    expect(climate?.driest).toBeCloseTo(6.2, 1);
    expect(climate?.dampest).toBeCloseTo(13.1, 1);
  });

  it('can be set out; only its two deepest drawers move more than a gap can hide', () => {
    const set = layOutSet(drawers);
    expect(set.ok && set.value.advice.map(({ at }) => at)).toEqual([
      ['drawers', 4, 'fit', 'top'],
      ['drawers', 5, 'fit', 'top'],
    ]);
  });
});

describe('the chest for a router', () => {
  const { drawers, cutting } = read('haberdashery-chest-guided.yaml');

  it('is the same chest, all of its corners for one cutter', () => {
    const byHand = read('haberdashery-chest.yaml').drawers;
    expect(drawers.map(({ name, space, stock }) => ({ name, space, stock }))).toEqual(
      byHand.map(({ name, space, stock }) => ({ name, space, stock })),
    );
    expect(cutting?.cutter).toEqual({ diameter: 12.7, angle: 8, length: 20 });
  });

  it('can be set out, with advice only on what its cutter cannot do', () => {
    const set = layOutSet(drawers);
    expect(set.ok && set.value.advice.map(({ at }) => at)).toEqual([['cutter', 'diameter']]);
  });
});

describe('the trinket box', () => {
  it('has a through and a lapped corner, in inches, and both can be cut without a word of advice', () => {
    const { units, drawers, joints } = read('trinket-box.yaml');
    expect(units).toBe('in');
    expect(drawers).toEqual([]);
    expect(joints.map(({ spec }) => spec.kind)).toEqual(['through', 'lapped']);
    for (const { spec } of joints) expect(layOut(spec)).toMatchObject({ ok: true, value: { advice: [] } });
  });
});

describe('the corners', () => {
  const { joints } = read('corners.yaml');

  it('are of every kind, and of every kind of shoulder where that is wished', () => {
    expect([...new Set(joints.map(({ spec }) => spec.kind))]).toEqual(KIND_NAMES);
    for (const kind of KIND_NAMES.filter((name) => KINDS[name].shoulders === 'wished'))
      expect(
        new Set(joints.filter(({ spec }) => spec.kind === kind).map(({ spec }) => spec.shoulder)),
      ).toEqual(new Set([undefined, 'upper', 'both']));
  });

  it('have tails in every spacing', () => {
    expect(joints.some(({ spec }) => spec.houndsTooth !== undefined)).toBe(true);
    expect(joints.some(({ spec }) => spec.spacing?.kind === 'grouped')).toBe(true);
    expect(joints.some(({ spec }) => spec.spacing?.kind === 'closer-edges')).toBe(true);
  });

  it('can all be cut without a word of advice', () => {
    for (const { spec } of joints) expect(layOut(spec)).toMatchObject({ ok: true, value: { advice: [] } });
  });
});

describe('the button boxes', () => {
  const { drawers, boxes } = read('button-boxes.yaml');
  const set = layOutSet(drawers, undefined, {}, boxes);

  it('are five kinds, the last a lid made apart, and can be set out without a word of advice', () => {
    expect(boxes.map(({ name }) => name)).toEqual(['Buttons', 'Thread', 'Ribbon', 'Patches', 'Ribbon lid']);
    expect(set).toMatchObject({ ok: true, value: { drawers: [], advice: [] } });
  });

  it('show their grooves nowhere: in a shoulder, stopped, under laps, in a rebate under a shoulder', () => {
    expect(boxes.slice(0, 4).map(({ groove }) => [groove.stopped, groove.rebate])).toEqual([
      [undefined, undefined],
      [6, undefined],
      [undefined, undefined],
      [undefined, true],
    ]);
  });
});
