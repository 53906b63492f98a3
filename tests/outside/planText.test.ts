import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isMap, isScalar, LineCounter, parseDocument, stringify } from 'yaml';
import { parse } from '../../src/plan/read/parse.ts';

// Held against the package `yaml`, which shares nothing with the parser that plans are read with.

const key = fc.oneof(
  fc.constantFrom('name', 'drawers', 'joint', 'tails', '5', 'true', 'null', '~', 'a b', 'ö'),
  fc.string({ unit: 'grapheme', maxLength: 8 }).filter((name) => name !== '__proto__'),
);
const leaf = fc.oneof(
  fc.constant(null),
  fc.boolean(),
  fc.integer(),
  fc.double({ noNaN: true, noDefaultInfinity: true }).filter((value) => !Object.is(value, -0)),
  fc.constantFrom('1:7', '5 11/16in', '3/4', '1e3', '0x10', '.5', 'yes', 'null', '-', '# x', ' a ', '7', '"'),
  fc.string({ unit: 'grapheme', maxLength: 12 }),
);
const { value: anyValue } = fc.letrec((tie) => ({
  value: fc.oneof(
    { maxDepth: 4 },
    leaf,
    fc.array(tie('value'), { maxLength: 4 }),
    fc.dictionary(key, tie('value'), { maxKeys: 4, noNullPrototype: true }),
  ),
}));
const layout = fc.record({
  defaultStringType: fc.constantFrom<'PLAIN' | 'QUOTE_DOUBLE' | 'QUOTE_SINGLE' | 'BLOCK_LITERAL'>(
    'PLAIN',
    'QUOTE_DOUBLE',
    'QUOTE_SINGLE',
    'BLOCK_LITERAL',
  ),
  collectionStyle: fc.constantFrom<'any' | 'block' | 'flow'>('any', 'block', 'flow'),
  indent: fc.integer({ min: 1, max: 4 }),
  aliasDuplicateObjects: fc.constant(false),
});

describe('the text of a plan, read by another library', () => {
  it('holds the same values, however it is laid out', () => {
    fc.assert(
      fc.property(anyValue, layout, (value, how) => {
        const text = stringify({ value }, how);
        const ours = parse(text);
        expect(ours.complaints).toEqual([]);
        expect(ours.value).toEqual(parseDocument(text).toJS());
      }),
      { numRuns: 400 },
    );
  });

  it('holds the same values as JSON', () => {
    fc.assert(
      fc.property(anyValue, fc.integer({ min: 0, max: 3 }), (value, indent) => {
        expect(parse(JSON.stringify(value, null, indent)).value).toEqual(JSON.parse(JSON.stringify(value)));
      }),
      { numRuns: 200 },
    );
  });

  it('has its keys in the same lines and columns', () => {
    fc.assert(
      fc.property(
        fc.dictionary(key, anyValue, { minKeys: 1, maxKeys: 5, noNullPrototype: true }),
        layout,
        (map, how) => {
          const text = stringify({ drawers: [map] }, how);
          const lines = new LineCounter();
          const theirs = parseDocument(text, { lineCounter: lines }).getIn(['drawers', 0]);
          const { find } = parse(text);
          if (!isMap(theirs)) throw new Error('a map was written');
          for (const { key: name } of theirs.items) {
            if (!isScalar(name) || !name.range) throw new Error('a key was written');
            const { line, col } = lines.linePos(name.range[0]);
            // What `yaml` reads as another kind of key than text, a plan reads as text.
            expect(
              find(['drawers', 0, text.slice(name.range[0], name.range[1])]) ??
                find(['drawers', 0, String(name.value)]),
            ).toEqual({ line, column: col });
          }
        },
      ),
      { numRuns: 200 },
    );
  });
});
