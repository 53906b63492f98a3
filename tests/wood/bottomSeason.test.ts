import { describe, expect, it } from 'vitest';
import { speak } from '../../src/units/phrase.ts';
import { adviseBottom, bottomSeason } from '../../src/wood/bottomSeason.ts';
import type { Wood } from '../../src/wood/species.ts';

const plum: Wood = { name: 'Plum', radial: 0.001, tangential: 0.002, source: 'own' };
const flatsawn = { kind: 'solid', wood: plum, cut: 'flatsawn' } as const;

describe('bottomSeason', () => {
  it('cuts a solid bottom short by what it swells', () => {
    const { depth } = bottomSeason(
      flatsawn,
      { flush: 403.2, room: 403.2 },
      { making: 8, driest: 6, dampest: 12 },
      4,
    );
    expect(depth.making).toBeCloseTo(400, 10);
    expect(depth.driest).toBeCloseTo(398.4, 10);
    expect(depth.dampest).toBeCloseTo(403.2, 10);
  });

  it('cuts it flush with the back where it has room behind to swell into', () => {
    const { depth } = bottomSeason(
      flatsawn,
      { flush: 400, room: 403.2 },
      { making: 8, driest: 6, dampest: 12 },
      4,
    );
    expect(depth.making).toBeCloseTo(400, 10);
    const roomy = bottomSeason(flatsawn, { flush: 400, room: 412 }, { making: 8, driest: 6, dampest: 12 }, 4);
    expect(roomy.depth.making).toBe(400);
    expect(roomy.depth.dampest).toBeCloseTo(403.2, 10);
    const tight = bottomSeason(flatsawn, { flush: 400, room: 401 }, { making: 8, driest: 6, dampest: 12 }, 4);
    expect(tight.depth.making).toBeCloseTo(401 / 1.008, 10);
    expect(tight.depth.dampest).toBeCloseTo(401, 10);
  });

  it('makes the slot as long as the screw is thick and the bottom moves', () => {
    const { slot } = bottomSeason(
      flatsawn,
      { flush: 403.2, room: 403.2 },
      { making: 8, driest: 6, dampest: 12 },
      4,
    );
    expect(slot?.ahead).toBeCloseTo(2 + 3.2, 10);
    expect(slot?.behind).toBeCloseTo(2 + 1.6, 10);
    expect(slot?.length).toBeCloseTo(8.8, 10);
  });

  it('depends on the cut of a solid bottom', () => {
    const quartersawn = { kind: 'solid', wood: plum, cut: 'quartersawn' } as const;
    const { depth } = bottomSeason(
      quartersawn,
      { flush: 401.6, room: 401.6 },
      { making: 8, driest: 6, dampest: 12 },
      4,
    );
    expect(depth.making).toBeCloseTo(400, 10);
  });

  it('slots only one way a bottom that is made damper, or drier, than it will ever be', () => {
    const shrinks = bottomSeason(
      flatsawn,
      { flush: 400, room: 400 },
      { making: 13, driest: 6, dampest: 12 },
      4,
    );
    expect(shrinks.depth.making).toBe(400);
    expect(shrinks.slot?.ahead).toBe(2);
    expect(shrinks.slot?.behind).toBeCloseTo(2 + 400 * 0.002 * 7, 10);
    const swells = bottomSeason(
      flatsawn,
      { flush: 403.2, room: 403.2 },
      { making: 8, driest: 9, dampest: 12 },
      4,
    );
    expect(swells.slot?.ahead).toBeCloseTo(2 + 3.2, 10);
    expect(swells.slot?.behind).toBe(2);
  });

  it('keeps a panel flush with the back all year, without a slot', () => {
    expect(
      bottomSeason({ kind: 'panel' }, { flush: 403.2, room: 410 }, { making: 8, driest: 6, dampest: 12 }, 4),
    ).toEqual({
      depth: { making: 403.2, driest: 403.2, dampest: 403.2 },
      slot: null,
    });
  });
});

describe('adviseBottom', () => {
  const bottom = { depth: { making: 400, driest: 398.4, dampest: 403.2 }, slot: null };

  it('gives no advice while the driest bottom reaches its screws', () => {
    expect(adviseBottom(bottom, 398.4)).toEqual([]);
  });

  it('warns of a bottom that would slip off its screws', () => {
    expect(
      adviseBottom(bottom, 398.5).map(({ at, says, remedy }) => [
        at,
        speak(says, 'mm'),
        remedy && speak(remedy, 'mm'),
      ]),
    ).toEqual([
      [
        [],
        'driest, the bottom is 398.4 mm deep and no longer reaches its screws at 398.5 mm',
        'use quartersawn wood, leave more room behind the back, or use a panel',
      ],
    ]);
  });
});
