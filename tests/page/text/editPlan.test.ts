import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { copyItem, editPlan } from '../../../src/page/text/editPlan.ts';
import type { Place } from '../../../src/units/complaint.ts';
import { CHEST } from '../chest.ts';

const set = (text: string, at: Place, value: number | string | (number | string)[] | undefined) =>
  editPlan(text, [{ at, value }]);

describe('editPlan', () => {
  it('changes a number and leaves comments, order and spelling of all else', () => {
    const text = `# My chest\nname: "Tall"   \njoint: {slope: "1:7", pin: 5} # all corners\n\n# drawers\ndrawers:\n  - name: A # the first\n    count: 2\n`;
    expect(set(text, ['joint', 'pin'], 6.5)).toBe(
      `# My chest\nname: "Tall"   \njoint: {slope: "1:7", pin: 6.5} # all corners\n\n# drawers\ndrawers:\n  - name: A # the first\n    count: 2\n`,
    );
  });

  it('keeps the comment beside a value that changes', () => {
    expect(set('a: 1 # one\nb: [1, 2] # two\n', ['a'], 3)).toBe('a: 3 # one\nb: [1, 2] # two\n');
    expect(set('a: 1 # one\nb: [1, 2] # two\n', ['b'], [4, 5])).toBe('a: 1 # one\nb: [4, 5] # two\n');
  });

  it('adds keys that are missing, on one line', () => {
    expect(set('drawers:\n  - name: A\n', ['drawers', 0, 'joint', 'tails'], [12, 13.5])).toBe(
      'drawers:\n  - name: A\n    joint: {tails: [12, 13.5]}\n',
    );
    expect(set('drawers:\n  - {name: A}\n', ['drawers', 0, 'back', 'joint', 'tails'], 3)).toBe(
      'drawers:\n  - {name: A, back: {joint: {tails: 3}}}\n',
    );
  });

  it('adds an item after the last of a list, written as the list is', () => {
    const edits = (at: Place) => [
      { at: [...at, 'name'], value: 'B' },
      { at: [...at, 'sound'], value: true },
      { at: [...at, 'at'], value: [3, 4] },
    ];
    expect(editPlan('a:\n  - name: A # one\n    at: [1, 2]\nb: 1\n', edits(['a', 1]))).toBe(
      'a:\n  - name: A # one\n    at: [1, 2]\n  - {name: B, sound: true, at: [3, 4]}\nb: 1\n',
    );
    expect(editPlan('a: [{name: A}] # all\n', edits(['a', 1]))).toBe(
      'a: [{name: A}, {name: B, sound: true, at: [3, 4]}] # all\n',
    );
    expect(editPlan('a: []\n', edits(['a', 0]))).toBe('a: [{name: B, sound: true, at: [3, 4]}]\n');
    expect(editPlan('{"a": [{"name": "A"}]}', edits(['a', 1]))).toBe(
      '{"a": [{"name": "A"}, {"name": "B", "sound": true, "at": [3, 4]}]}',
    );
  });

  it('begins a list of groups with a line for each, where its neighbours have lines', () => {
    expect(editPlan('a: 1\n', [{ at: ['b', 0, 'c'], value: 2 }])).toBe('a: 1\nb:\n  - {c: 2}\n');
    expect(editPlan('a:\n  - x: 1\n', [{ at: ['a', 0, 'b', 0, 'c'], value: 2 }])).toBe(
      'a:\n  - x: 1\n    b:\n      - {c: 2}\n',
    );
    expect(editPlan('a:\n  - {x: 1}\n', [{ at: ['a', 0, 'b', 0, 'c'], value: 2 }])).toBe(
      'a:\n  - {x: 1, b: [{c: 2}]}\n',
    );
  });

  it('changes what differs in a list of lists alone', () => {
    const text = 'o:\n  - [0, 0]\n  - [9, 0] # bark\n  - [9, 3]\n';
    const o = [
      [0, 0],
      [9, 0],
      [8, 3],
    ];
    expect(editPlan(text, [{ at: ['o'], value: o }])).toBe(text.replace('[9, 3]', '[8, 3]'));
  });

  it('removes keys, and groups of keys that are then empty', () => {
    expect(set('a: 1\nb: {c: {d: 2}}\n', ['b', 'c', 'd'], undefined)).toBe('a: 1\n');
    expect(set('a: 1\nb: {c: 2, d: 3}\n', ['b', 'c'], undefined)).toBe('a: 1\nb: {d: 3}\n');
    expect(set('a: 1\n', ['b', 'c'], undefined)).toBe('a: 1\n');
  });

  it('quotes words that would be read as something else', () => {
    for (const name of ['true', '12', '# no', 'a: b', '', "it's", '<script>', 'null', '- x', '"', '١٢'])
      expect(parse(set('name: x\n', ['name'], name))).toEqual({ name });
  });

  it('keeps blanks inside braces where the plan has them', () => {
    expect(set('joint: { pin: 5 }\n', ['joint', 'pin'], 6)).toBe('joint: { pin: 6 }\n');
  });

  it('changes only the place that is meant where a plan repeats itself with *names', () => {
    const text = 'a: &j {pin: 5}\nb: *j\n';
    expect(parse(set(text, ['b', 'pin'], 6))).toEqual({ a: { pin: 5 }, b: { pin: 6 } });
  });

  it('gives what is repeated to the first that repeats it, where the one that all repeat changes', () => {
    expect(set('a: &p 5 # five\nb: *p\nc: *p\n', ['a'], 6)).toBe('a: 6 # five\nb: &p 5\nc: *p\n');
    expect(set('a: {b: &p {c: 1}}\nd: *p\n', ['a'], undefined)).toBe('d: &p {c: 1}\n');
    expect(set('a: {b: &p 1, c: &q {d: *p}}\ne: *q\nf: *p\n', ['a'], 0)).toBe(
      'a: 0\ne: &q {d: 1}\nf: &p 1\n',
    );
    expect(parse(set('a: &l [&t 12, *t]\nb: *l\n', ['a'], [13, 12]))).toEqual({ a: [13, 12], b: [12, 12] });
  });

  it('changes of a list on lines of their own those items only that change, and keeps it on lines', () => {
    const text = 'tails:\n  - 12.0 # low\n  - 13 # high\npin: 5\n';
    expect(set(text, ['tails'], [12, 14])).toBe(text.replace('13', '14'));
    expect(set(text, ['tails'], [1, 2, 3])).toBe('tails:\n  - 1\n  - 2\n  - 3 # high\npin: 5\n');
    expect(set(text, ['tails'], 4)).toBe('tails: 4\npin: 5\n');
  });

  it('adds and removes lines of a block, and leaves the notes among them', () => {
    const text = 'joint:\r\n    pin: 5 # mm\r\n    # tails: 4\r\n\r\nlist:\r\n-   lap: 3\r\n    pin: 4';
    expect(set(text, ['joint', 'lap'], 3)).toBe(text.replace('mm\r\n', 'mm\r\n    lap: 3\r\n'));
    expect(set(text, ['list', 0, 'lap'], undefined)).toBe(text.replace('-   lap: 3', '-'));
    expect(set(text, ['list', 0, 'slope'], '1:7')).toBe(`${text}\r\n    slope: "1:7"`);
    expect(set(text, ['list', 0], undefined)).toBe(text.slice(0, text.indexOf('\r\nlist')));
  });

  it('puts commas where brackets need them, and leaves the comments beside other lines', () => {
    const text = '{\n  "a": 1, # one\n  "b": 2 # two\n}\n';
    expect(set(text, ['c'], 3)).toBe('{\n  "a": 1, # one\n  "b": 2, # two\n  c: 3\n}\n');
    expect(set(text, ['b'], undefined)).toBe('{\n  "a": 1 # one\n}\n');
    expect(set(text, ['a'], undefined)).toBe('{\n  "b": 2 # two\n}\n');
    expect(set('a: { b: 1 ,c: 2, }', ['a', 'd'], 3)).toBe('a: { b: 1 ,c: 2, d: 3, }');
    expect(set('a: { b: 1 ,c: 2 }', ['a', 'c'], undefined)).toBe('a: { b: 1  }');
  });

  it('keeps the quotes of a word that changes', () => {
    expect(set(`a: 'x'\nb: "y"\nc: z\n`, ['a'], "it's")).toBe(`a: 'it''s'\nb: "y"\nc: z\n`);
    expect(set(`a: 'x'\nb: "y"\nc: z\n`, ['b'], 'new')).toBe(`a: 'x'\nb: "new"\nc: z\n`);
  });

  it('leaves JSON as JSON', () => {
    const text = '{"name": "A", "joint": {"pin": 5}}';
    expect(JSON.parse(set(text, ['joint', 'tails'], [1, 2]))).toEqual({
      name: 'A',
      joint: { pin: 5, tails: [1, 2] },
    });
  });

  it('says what was asked, whatever is changed in the example', () => {
    const place = fc.constantFrom<Place>(
      ['joint', 'lap'],
      ['groove', 'offset'],
      ['drawers', 2, 'joint', 'tails'],
      ['drawers', 5, 'joint', 'tails'],
      ['drawers', 0, 'back', 'joint', 'halfPin'],
      ['family', 'target'],
    );
    const value = fc.oneof(
      fc.double({ min: 0, max: 1e4, noNaN: true }),
      fc.array(fc.double({ min: 0, max: 1e4, noNaN: true }), { minLength: 1, maxLength: 5 }),
      fc
        .string({ unit: 'grapheme', maxLength: 20 })
        .filter((text) => !/[\p{Cc}\p{Cs}\u2028\u2029]/u.test(text)),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(place, value), { maxLength: 4 }), (changes) => {
        let text = CHEST;
        for (const [at, wanted] of changes) {
          text = set(text, at, wanted);
          const found = at.reduce<unknown>(
            (node, key) => (node as Record<string, unknown>)[String(key)],
            parse(text),
          );
          expect(found).toEqual(wanted);
        }
        expect(text).toContain('# bolder, as it is the deepest');
      }),
      { numRuns: 60 },
    );
  });
});

describe('copyItem', () => {
  it('copies an item as it is written, in a block, in braces and in JSON', () => {
    expect(
      copyItem('list:\n  - name: A # first\n    pin: 5.0\n  # B follows\n  - name: B\n', 'list', 0, 'A 2'),
    ).toBe(
      'list:\n  - name: A # first\n    pin: 5.0\n  - name: A 2 # first\n    pin: 5.0\n  # B follows\n  - name: B\n',
    );
    expect(copyItem('list: [ {name: A} ]', 'list', 0, 'C')).toBe('list: [ {name: A}, {name: C} ]');
    const json = JSON.stringify({ list: [{ name: 'A' }, { name: 'B', pins: [1, 2] }] }, null, 2);
    expect(copyItem(json, 'list', 0, 'C')).toBe(
      JSON.stringify({ list: [{ name: 'A' }, { name: 'C' }, { name: 'B', pins: [1, 2] }] }, null, 2),
    );
  });
});
