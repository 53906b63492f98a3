import { describe, expect, it } from 'vitest';
import { parse } from '../../../src/plan/read/parse.ts';
import { complaintsOf } from '../complaintsOf.ts';

const read = (text: string): unknown => parse(text).value;
/** The syntax complaint alone, without the file's name. */
const slip = (text: string): string[] => complaintsOf(text).map((line) => line.replace('plan.yaml:', ''));

describe('the text of a plan', () => {
  it('is YAML 1.2: a slope is text, and so are yes and no', () => {
    expect(read('slope: 1:7\nflag: yes\ntrue: true\nempty:\nhex: 0x10\nsize: [1, 2.5, -3e2]')).toEqual({
      slope: '1:7',
      flag: 'yes',
      true: true,
      empty: null,
      hex: 16,
      size: [1, 2.5, -300],
    });
  });

  it('may be JSON, in any layout', () => {
    const plan = { name: 'Ä "x" 😀', joints: [{ width: 1.5, tails: null, flags: [true, []] }] };
    for (const text of [
      JSON.stringify(plan),
      JSON.stringify(plan, null, '\t'),
      JSON.stringify(plan, null, 2).replace(/\n/gu, '\r\n'),
    ])
      expect(read(text)).toEqual(plan);
  });

  it('knows where every key and every item is written', () => {
    const { find } = parse('name: x\njoints:\n  - name: a\n    tails: [3,\n      "4"]\n  - {"pin": 2}\n');
    expect(find(['name'])).toEqual({ line: 1, column: 1 });
    expect(find(['joints'])).toEqual({ line: 2, column: 1 });
    expect(find(['joints', 0])).toEqual({ line: 3, column: 5 });
    expect(find(['joints', 0, 'tails'])).toEqual({ line: 4, column: 5 });
    expect(find(['joints', 0, 'tails', 0])).toEqual({ line: 4, column: 13 });
    expect(find(['joints', 0, 'tails', 1])).toEqual({ line: 5, column: 7 });
    expect(find(['joints', 1, 'pin'])).toEqual({ line: 6, column: 6 });
    expect(find(['joints', 1, 'lap'])).toBeUndefined();
    expect(find(['joints', 2])).toBeUndefined();
    expect(find(['name', 'x'])).toBeUndefined();
  });

  it('may repeat what it has named, and what is repeated is placed where it was named', () => {
    const { value, find } = parse('joint: &fine\n  pin: 4\nback:\n  joint: *fine\n');
    expect(value).toEqual({ joint: { pin: 4 }, back: { joint: { pin: 4 } } });
    expect(find(['back', 'joint', 'pin'])).toEqual({ line: 2, column: 3 });
  });

  it('keeps the first of two equal keys, and says where it is', () => {
    const { value, complaints } = parse('name: x\nunits: mm\nname: y\n');
    expect(value).toEqual({ name: 'x', units: 'mm' });
    expect(complaints).toMatchObject([{ line: 3, column: 1, complaint: { at: ['name'] } }]);
    expect(slip('name: x\njoints: []\nname: y')).toContain(
      '3:1 name: this key is given twice; it is in line 1 too; remove one of them',
    );
  });

  it('cannot reach what every object has', () => {
    const { value } = parse('{"__proto__": {"units": "in"}, "constructor": 1}');
    expect(Object.keys(value as object)).toEqual(['constructor']);
    expect((value as { units?: string }).units).toBeUndefined();
    expect(slip('__proto__: {units: in}\njoints: []')).toContain(
      '1:1 __proto__: there is no such key in a plan',
    );
  });

  it.each([
    ['', '1:1 the plan is empty; begin with the plan that "halfpin start" writes'],
    [' \n# only a note\n', '1:1 the plan is empty; begin with the plan that "halfpin start" writes'],
    ['drawers:\n\t- name: A', '2:1 this line is indented with a tab; indent it with blanks'],
    ['name: "A', '1:7 the quote " that is opened here is not closed; add the closing quote'],
    [
      "name: 'A\njoints: []",
      "1:7 the quote ' that is opened here is not closed; add the closing quote, or indent the lines below that belong inside it",
    ],
    ['fit: {side: 1', '1:6 the bracket { that is opened here is not closed; add }'],
    [
      'fit: {side: 1\nname: x',
      '1:6 the bracket { that is opened here is not closed; add }, or indent the lines below that belong inside it',
    ],
    // Where it is noticed is further down than where it is.
    [
      '# Bob\'s {\nname: Bob\'s [1]\n\njoint: {slope: "1:7", pin: 5 # {\n\n# a note\njoints: []\n',
      '4:8 the bracket { that is opened here is not closed; add }, or indent the lines below that belong inside it',
    ],
    [
      'joints:\n  - {name: A, fit: {side: 1}\n  - {name: B}\n',
      '2:5 the bracket { that is opened here is not closed; add }, or indent the lines below that belong inside it',
    ],
    ...[
      'joints: []\nunits mm\n\n# a note\nfit: 1',
      'joints: []\nunits mm\n\n# a note\n\n',
      'a: 1\nunits:mm # x\nb: 2',
    ].map((text): [string, string] => [
      text,
      '2:1 a colon is missing in this line; write key: value, with a blank after the colon',
    ]),
    ['fit\nname: A', '1:1 a colon is missing in this line; write key: value, with a blank after the colon'],
    [
      'joints:\n  - name A\n\n    kind: through\n',
      '2:5 a colon is missing in this line; write key: value, with a blank after the colon',
    ],
    ['fit: {side: 1 top: 2}', '1:18 a comma is missing before this'],
    ['fit: {side: 1, , top: 2}', '1:16 there is nothing between two commas'],
    ['fit: {side: 1}}', '1:15 the bracket } closes nothing; remove it'],
    [
      'drawers:\n  - name: A\n    count 3\n',
      '3:5 a colon is missing in this line; write key: value, with a blank after the colon',
    ],
    ['"name":A', '1:8 a blank is missing after the colon'],
    [
      'name: Bob: his box',
      '1:10 there is a colon with a blank after it inside a value; put the value in quotes',
    ],
    [
      'name: A\n  units: mm',
      '2:8 this line is indented further than the one above, which has a value already; begin both in the same column',
    ],
    ['name: "A" box', '1:11 something follows after the closing quote'],
    ['name: @home', '1:7 a value cannot begin with @; put the value in quotes'],
    ['name: "C:\\drawers"', '1:11 inside double quotes a backslash begins a special sign; use single quotes'],
    [
      'drawers:\n  - name: A\n   count: 3',
      '3:4 this does not fit what is above; lines that belong together begin in the same column',
    ],
    ['['.repeat(1000), '1:40 this is nested too deeply; no plan goes down more than a few levels'],
    ['name: \u0080', '1:7 here is a character that cannot be seen; delete it and type it again'],
  ])('is refused in plain words: %j', (text, told) => expect(slip(text)).toEqual([told]));

  it.each([
    ['joints: *a', '1:9 joints: "*a" repeats "&a", which is not written above it'],
    ['joints: &a [*a]', '1:13 joints[0]: "*a" is inside what it repeats, and would never end'],
    ['joints: !!set {a}', '1:9 joints: "!!set" is a tag, and a plan has none; remove it'],
    ['? [1]\n: 2', '1:3 ["?"]: a key must be a word'],
    ['joints: []\n---\nname: b', '3:1 a second plan begins here; a file holds one; make a file for each'],
    ['joints: []\n---\n', '3:1 a second plan begins here; a file holds one; make a file for each'],
  ])('is refused for what a plan has no use for: %j', (text, told) => expect(slip(text)).toContain(told));

  it('cannot be blown up by repeating what repeats', () => {
    const bomb = [...'bcdefghi'].reduce(
      (text, name, i) => `${text}${name}: &${name} [${`*${'abcdefgh'[i]},`.repeat(10)}]\n`,
      'a: &a [1,1,1,1,1,1,1,1,1,1]\n',
    );
    const told = complaintsOf(bomb).filter((line) => line.includes('repeats itself'));
    expect(told).toEqual(['plan.yaml:5:29 e[7]: the plan repeats itself into more than 100000 values']);
  });
});
