import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nameKey } from '../../src/units/name.ts';
import { groupNames, type ShortName, shortNames } from '../../src/units/shortNames.ts';

/** The wordings of names that each stand alone. */
const alone = (...names: readonly string[]) =>
  shortNames(names.map((name) => [name])).map(({ names: _, ...wordings }) => wordings);

const wordingsOf = ({ item, shorter }: Omit<ShortName, 'names'>): string[] => [item, ...shorter];

describe('the short wordings of names', () => {
  it('are cut at the end where that tells them apart', () => {
    expect(alone('Haberdashery, ribbons and thread', 'Cloth')).toEqual([
      {
        item: 'Haberdashery, ribbons and thread',
        shorter: [
          'Haberdashery, ribbons and thr…',
          'Haberdashery, ribbo…',
          'Haberdasher…',
          'Haberda…',
          'Habe…',
        ],
      },
      { item: 'Cloth', shorter: ['Cloth', 'Cloth', 'Cloth', 'Cloth', 'Cloth'] },
    ]);
  });

  it('keep the last word where that tells them apart', () => {
    const [upper, lower] = alone('Letters and papers upper', 'Letters and papers lower');
    expect(upper?.shorter).toEqual([
      'Letters and papers upper',
      'Letters and pa…upper',
      'Letter…upper',
      'Le…upper',
    ]);
    expect(lower?.shorter.at(-1)).toBe('Le…lower');
  });

  it('have their place in the list as a number where neither does', () => {
    expect(alone('Drawer 1 of the left pedestal', 'Drawer 2 of the left pedestal')).toEqual(
      [1, 2].map((n) => ({
        item: `Drawer ${n} of the left pedestal`,
        shorter: [
          `Drawer ${n} of the left pedestal`,
          `Drawer ${n} of the lef…`,
          `Drawer ${n} of…`,
          `no. ${n}`,
        ],
        number: `no. ${n}`,
      })),
    );
  });

  it('have another number where a name looks like it', () => {
    const [first, second, third] = alone(
      'Drawer 1 of the left pedestal',
      'Drawer 2 of the left pedestal',
      'No. 1',
    );
    expect([first?.number, second?.number, third]).toEqual([
      'no. 4',
      'no. 2',
      { item: 'No. 1', shorter: Array(5).fill('No. 1') },
    ]);
  });

  it('tell a drawer from the several drawers whose equal corners are drawn once', () => {
    const [upper, lower] = ['Letters upper', 'Letters lower'];
    expect(shortNames([[upper], [lower], [upper, lower]])).toEqual([
      {
        names: [upper],
        item: 'Letters upper',
        shorter: ['Letters upper', 'Letters upper', 'Letters upp…', 'Le…upper'],
      },
      {
        names: [lower],
        item: 'Letters lower',
        shorter: ['Letters lower', 'Letters lower', 'Letters low…', 'Le…lower'],
      },
      {
        names: [upper, lower],
        item: 'Letters upper, Letters lower',
        shorter: [
          'Letters upper, Letters lower',
          'Letters up… + 1 more',
          'Letters u…+1',
          'Lette…+1',
          'Le…+1',
        ],
      },
    ]);
    const nameOf = groupNames([upper, lower, `${upper}, ${lower}`], [[upper, lower]]);
    expect([nameOf([`${upper}, ${lower}`]).item, nameOf([upper, lower]).item]).toEqual([
      'Letters upper, Letters lower no. 3',
      'Letters upper, Letters lower no. 4',
    ]);
  });

  it('are never those of another name, whatever the names', () => {
    const hostile = fc.oneof(
      fc.string({ unit: 'grapheme', minLength: 1, maxLength: 80 }),
      fc.string({
        unit: fc.constantFrom('a', 'A', ' ', '…', ',', '1', 'no. ', '\u200E', '\uFF21', '\u0301'),
        minLength: 1,
        maxLength: 40,
      }),
      fc
        .tuple(fc.nat(39), fc.constantFrom('a', 'b', 'B', ' ', '\uFF57', '漢'))
        .map(([at, letter]) => `${'w'.repeat(at)}${letter}${'w'.repeat(39 - at)}`),
      fc.nat(30).map((n) => `no. ${n}`),
      fc.nat(30).map((n) => `Drawer ${n} of the left pedestal`),
    );
    fc.assert(
      fc.property(fc.array(hostile, { maxLength: 24 }), (names) => {
        const owners = new Map<string, number>();
        for (const [i, name] of alone(...names).entries())
          for (const key of wordingsOf(name).map(nameKey)) {
            expect([key, owners.get(key) ?? i]).toEqual([key, i]);
            owners.set(key, i);
          }
      }),
    );
  });
});
