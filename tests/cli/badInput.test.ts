import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CHEST, halfpin, TRINKET_BOX } from './program.ts';

const BOARDS = ['--tail-board', '11', '--pin-board', '20'];
const CORNER = ['--width', '96', ...BOARDS];

/** Plans that no one should write, by their names. */
const PLANS: Readonly<Record<string, string | Uint8Array>> = {
  'photo.yaml': new Uint8Array([
    0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0, 1, 1, 0, 0, 1, 0, 1,
  ]),
  'recursive.yaml': 'joints: &list\n  - *list\n',
  'broken.json': '{"joints": [{"name": "Box"',
  'empty.yaml': '',
  'list.yaml': '- a\n- b\n',
  'utf16.yaml': new Uint8Array([0xff, 0xfe, 0x6a, 0, 0x6f, 0]),
  'wrong.yaml': [
    'units: mm',
    'joints:',
    '  - {name: Box, kind: through, width: 96, tailBoard: 11, pinBoard: 11, slope: "1:0"}',
    '  - name: Tray',
    '    kind: lapped',
    '    width: 0',
    '    tailBoard: 11',
    '    pinBoard: 20',
    '    colour: red',
    '  - {name: Lid, kind: lapped, width: 96, tailBoard: 11, pinBoard: 20, lap: 25}',
    '',
  ].join('\n'),
};

let where = '';
beforeAll(() => {
  where = mkdtempSync(join(tmpdir(), 'halfpin-'));
  mkdirSync(join(where, 'folder'));
  for (const [name, content] of Object.entries(PLANS)) writeFileSync(join(where, name), content);
});
afterAll(() => rmSync(where, { recursive: true }));

const cases: readonly (readonly [
  what: string,
  args: readonly string[],
  says: readonly (string | RegExp)[],
])[] = [
  [
    'a width of 0',
    ['lay', '--width', '0', ...BOARDS],
    ["--width: the boards' width is 0 mm; it must be 5 mm to 5000 mm"],
  ],
  [
    'a width under 0',
    ['lay', '--width=-96', ...BOARDS],
    ["--width: the boards' width is -96 mm; it must be 5 mm to 5000 mm"],
  ],
  [
    'a slope of 1:0',
    ['lay', ...CORNER, '--slope', '1:0'],
    ['--slope: "1:0" is outside what can be cut; a slope must be 1:2.5 to 1:20; try 1:7'],
  ],
  [
    'a thousand million tails',
    ['lay', ...CORNER, '--tails', '1000000000'],
    // Each takes a base of 3, twice 15/8 for its slopes, and a pin of 5.5: (96 - 5.5) / 12.25 is 7.4 less the last half pin.
    [
      /^--tails: 1000000000 tails are too many for 96 mm: each base must be at least 3 mm, so there may be 1 to [67]; try 4$/,
    ],
  ],
  [
    'a lap thicker than the front',
    ['draw', ...CORNER, '--lap', '25'],
    ['--lap: the lap is 25 mm; it must be 1 mm to 17 mm; try 5mm'],
  ],
  [
    'a length with a blank in it',
    ['lay', '--width', '5', '11/16in', '--tail-board', '1/2in', '--pin-board', '3/4in'],
    ['--width: "11/16in" was read as a plan; try 5-11/16in'],
  ],
  [
    'two lengths, one with a blank in it',
    ['lay', '--width', '5', '11/16in', '--tail-board', '12', '--pin-board', '20'],
    ['"11/16in" was read as a plan; write a hyphen before the fraction of a length, as in 5-11/16in'],
  ],
  [
    'more tails than the one that there is room for',
    ['lay', '--width', '20', '--tail-board', '11', '--pin-board', '20', '--tails', '3'],
    [
      '--tails: 3 tails are too many for 20 mm: each base must be at least 3 mm, so there may be only one; try 1',
    ],
  ],
  [
    'pins that leave no tails',
    ['lay', ...CORNER, '--pin', '48'],
    [/^--width: half pins of 48 mm and 48 mm leave 0 mm of 96 mm; .*; use narrower half pins/],
  ],
  [
    'half a tail',
    ['lay', ...CORNER, '--tails', '2.5'],
    [/^--tails: "2\.5" is not a number of tails; .*; try 5$/],
  ],
  [
    'a length that is none',
    ['lay', '--width', '1,234', ...BOARDS],
    ['--width: "1,234" can be read in two ways; try 1234 or 1.234'],
  ],
  ['no sizes', ['lay'], [/^--width: /, /^--tail-board: /, /^--pin-board: /]],
  [
    'listed tails that do not fill the width',
    ['lay', ...CORNER, '--tails', '20,20'],
    [
      /^--tails: tails, pins and half pins together are 56\.5 mm, 39\.5 mm less than the board's 96 mm; make the half pins 25\.25 mm/,
    ],
  ],
  [
    'everything at once',
    [
      'draw',
      '--width',
      'wide',
      ...BOARDS,
      '--slope',
      'x',
      '--lap',
      'y',
      '--as',
      'gif',
      '--paper',
      'A9',
      '--margin',
      '1',
      '--boards',
      'both',
    ],
    [
      /^--width: /,
      /^--lap: /,
      /^--slope: /,
      /^--as: /,
      /^--paper: /,
      /^--margin: the margin is 1 mm; it must be 5 mm to 20 mm; try 6mm$/,
      /^--boards: /,
    ],
  ],
  [
    'a kind of file that is not made',
    ['draw', ...CORNER, '--as', 'gif'],
    ['--as: "gif" is no kind of file; it must be pdf, svg or dxf, or several of them; try pdf,svg'],
  ],
  [
    'a paper that is not made',
    ['draw', ...CORNER, '--paper', 'A9'],
    [/^--paper: "A9" is not a paper; known are A5, .*; try A4$/],
  ],
  [
    'a paper too small to print on',
    ['draw', ...CORNER, '--paper', '60x60'],
    [
      /^--paper: the paper's width is 60 mm; it must be 90 mm to 5000 mm; try /,
      /^--paper: the paper's height /,
    ],
  ],
  [
    'options beside a plan',
    ['lay', CHEST, '--width', '96', '--tails', '4'],
    [/^--width: a plan says this itself; /, /^--tails: a plan says this itself; /],
  ],
  [
    'a plan that is not there',
    ['lay', 'nowhere.yaml'],
    ['nowhere.yaml: there is no such file to read as a plan; try halfpin start to begin one'],
  ],
  [
    'a folder as a plan',
    ['draw', 'folder'],
    ['folder: this is a folder, not a plan; try halfpin start to begin one'],
  ],
  ['a photograph as a plan', ['draw', 'photo.yaml'], [/^photo\.yaml:1:1 this is not text, so it is no plan/]],
  [
    'a plan that never ends',
    ['lay', '/dev/zero'],
    ['/dev/zero: this is a device, not a plan; try halfpin start to begin one'],
  ],
  ['a plan that breaks off', ['lay', 'broken.json'], [/^broken\.json:1:\d+ /]],
  ['an empty plan', ['parts', 'empty.yaml'], [/^empty\.yaml:1:1 the plan is empty; begin with /]],
  ['a list as a plan', ['draw', 'list.yaml'], [/^list\.yaml:1:1 this is a list of 2; /]],
  ['a plan in UTF-16', ['draw', 'utf16.yaml'], [/^utf16\.yaml:1:1 this text is saved as UTF-16; /]],
  [
    'a plan with faults in many places',
    ['draw', 'wrong.yaml'],
    [
      /^wrong\.yaml:3:\d+ joints\[0\]\.slope: "1:0" .* must be 1:2\.5 to 1:20; try 1:7$/,
      /^wrong\.yaml:6:\d+ joints\[1\]\.width: /,
      /^wrong\.yaml:9:5 joints\[1\]\.colour: /,
      /^wrong\.yaml:10:\d+ joints\[2\]\.lap: the lap is 25 mm; it must be 1 mm to 17 mm; try 5mm$/,
    ],
  ],
  [
    'parts of a plan without drawers',
    ['parts', TRINKET_BOX],
    [`${TRINKET_BOX}: there are no drawers and no boxes in this plan, so there are no parts to list`],
  ],
  ['an unknown option', ['lay', '--widht', '96'], ["halfpin: unknown option '--widht'; try --width"]],
  ['an unknown command', ['lai'], ["halfpin: unknown command 'lai'; try lay"]],
  [
    'an option without its value',
    ['draw', '--width'],
    ["halfpin: option '--width <length>' argument missing"],
  ],
  ['a command without its plan', ['parts'], ['halfpin: a plan file is missing; give its name']],
  ['two forms at once', ['parts', CHEST, '--csv', '--json'], ['--csv: give --csv or --json, not both']],
  [
    'an unknown unit',
    ['parts', CHEST, '--units', 'cm'],
    ['--units: "cm" is not a unit; it must be mm or in; try mm'],
  ],
  [
    'a plan to begin from over a file',
    ['start', 'list.yaml'],
    ['list.yaml: there is a file of this name already; choose another name'],
  ],
];

describe('bad input', () => {
  it.each(cases)(
    '%s is refused with exit 2, one line for each fault, and nothing is written',
    (_, args, says) => {
      const before = readdirSync(where);
      const { status, out, err } = halfpin(args, where);
      expect(err.endsWith('\n')).toBe(true);
      const lines = err.slice(0, -1).split('\n');
      expect(lines).toEqual(
        says.map((line) => (typeof line === 'string' ? line : expect.stringMatching(line))),
      );
      expect(err).not.toMatch(/\bat .*:\d+:\d+|node:|Error/);
      expect(out).toBe('');
      expect(status).toBe(2);
      expect(readdirSync(where)).toEqual(before);
    },
  );

  it('a plan that repeats itself without end is refused at the place where it does', () => {
    const { status, err } = halfpin(['draw', 'recursive.yaml'], where);
    expect(err.split('\n')[0]).toBe(
      'recursive.yaml:2:5 joints[0]: "*list" is inside what it repeats, and would never end',
    );
    expect(status).toBe(2);
  });
});

describe('a bare fraction as an option', () => {
  it('is asked about as one of an inch, but a slope is none', () => {
    const told = (...args: string[]): string =>
      halfpin(['lay', '--width', '96', '--pin-board', '20', '--kind', 'through', ...args]).err;
    expect(told('--tail-board', '7/16')).toMatch(/^--tail-board: .*; try 7\/16in\n$/u);
    expect(told('--tail-board', '0.44')).not.toContain('7/16');
    expect(told('--tail-board', '11', '--slope', '1/90')).not.toContain('1/90in');
  });
});
