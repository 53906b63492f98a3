import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import type { Drawing } from '../../src/drawing/drawing.ts';
import { NO_SPLITS } from '../../src/paper/piece.ts';
import { splitToFit } from '../../src/paper/split.ts';
import { drawPart, joinCount, partsOf } from '../../src/paper/tile.ts';
import { piecesOf } from '../../src/project/piecesOf.ts';
import { nameKey } from '../../src/units/name.ts';
import { inOpening } from '../drawer/chest.ts';
import { textsOf } from '../sheets/pieces.ts';
import { value } from '../value.ts';
import { singleCorner } from './singleCorner.ts';

/** Names that are hard to tell apart once they are cut. */
const closeNames = fc.uniqueArray(
  fc.oneof(
    fc.constantFrom('upper', 'lower', 'middle').map((which) => `Letters and papers ${which}`),
    fc.nat(9).map((n) => `Drawer ${n} of the left-hand pedestal under the bench`),
    fc.nat(60).map((at) => `${'w'.repeat(at)}m${'w'.repeat(60 - at)}`),
    fc.constantFrom(
      'No. 1',
      'no. 2',
      'Lett…',
      'Letters and papers upper, Letters and papers lower',
      'Wwww',
      '漢字',
    ),
  ),
  { minLength: 2, maxLength: 6, selector: nameKey },
);

/** Low drawers, whose names are cut, and some that are equal. */
const anyPlan = fc
  .record({
    names: closeNames,
    heights: fc.array(fc.constantFrom(50, 52, 60, 76), { minLength: 6, maxLength: 6 }),
  })
  .map(({ names, heights }) => ({
    specs: names.map((name, i): DrawerSpec => inOpening(200, heights[i] ?? 76, 300, { name })),
    names,
  }));

/** What tells a piece from others: its bold words, but those on wood to cut away. */
const identity = (drawing: Drawing): string =>
  textsOf(drawing)
    .flatMap(({ text, weight }) => (weight === 'bold' && text !== 'WASTE' ? [nameKey(text)] : []))
    .sort()
    .join('|');

const repeated = (all: readonly (readonly [piece: string, words: string])[]): string[] =>
  all.flatMap(([piece, words], i) => {
    const other = all.findIndex(([, each]) => each === words);
    return other < i ? [`${piece} = ${all[other]?.[0]}: ${words}`] : [];
  });

describe('the words on the pieces of a plan', () => {
  it('are those of no other piece, nor are its title and its file’s name', () => {
    fc.assert(
      fc.property(
        anyPlan,
        fc.boolean(),
        fc.constantFrom('mm' as const, 'in' as const),
        ({ specs, names }, flat, units) => {
          const set = layOutSet(specs);
          const joints = names.slice(0, 1).map((name) =>
            singleCorner(name, {
              kind: 'through',
              width: 40,
              tailBoard: 9,
              pinBoard: 9,
              spacing: { kind: 'even' },
            }),
          );
          const pieces = piecesOf(
            { set: value(set), joints, units },
            { boards: ['tail', 'pin'], flat, rods: true },
          );
          expect(repeated(pieces.map((piece) => [piece.name, identity(piece.draw(NO_SPLITS))]))).toEqual([]);
          expect(repeated(pieces.map((piece) => [piece.name, nameKey(piece.title)]))).toEqual([]);
          expect(new Set(pieces.map(({ name }) => name)).size).toBe(pieces.length);
        },
      ),
      { numRuns: 12 },
    );
  });

  it('are those of no other part of a divided piece', () => {
    const set = value(
      layOutSet([inOpening(280, 330, 420, {}), inOpening(280, 331, 420, { name: 'Thread' })]),
    );
    for (const flat of [false, true]) {
      let joins = 0;
      const parts = piecesOf(
        { set, joints: [], units: 'mm' },
        { boards: ['tail', 'pin'], flat, rods: true },
      ).flatMap((piece) => {
        const splits = splitToFit(piece, { width: 131, height: 188.4 }) ?? NO_SPLITS;
        const whole = piece.draw(splits);
        const drawn = partsOf(piece, splits, joins).map((part) => drawPart(part, whole, 'mm'));
        joins += joinCount(splits);
        return drawn.map((part): [string, string] => [
          piece.name,
          textsOf(part)
            .map(({ text }) => text)
            .sort()
            .join('|'),
        ]);
      });
      expect(joins).toBeGreaterThan(10);
      expect(repeated(parts)).toEqual([]);
    }
  });
});
