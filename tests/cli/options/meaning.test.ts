import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { halfpin, replacing } from '../program.ts';

const HERE = mkdtempSync(join(tmpdir(), 'halfpin-meaning-'));
afterAll(() => rmSync(HERE, { recursive: true, force: true }));
const ENV = { HOME: HERE, XDG_CONFIG_HOME: HERE };
const at = (name: string): string => join(HERE, name);

/** A drawer with a back and a through corner: what a plan's tools can meet. */
const PLAN = at('plan.yaml');
const GUIDED = at('guided.yaml');
const SEASONS = at('seasons.yaml');

beforeAll(() => {
  const drawer = `name: Chest
stock: {front: {thickness: 20, species: "Cherry, black"}, side: {thickness: 11, species: "Ash, white"}}
drawers:
  - {name: Tray, count: 2, opening: {width: 280, height: 76, depth: 300}}
`;
  const corner = `joints:
  - {name: Carcase, kind: through, width: 130, tailBoard: 19, pinBoard: 19}
`;
  writeFileSync(PLAN, drawer + corner);
  writeFileSync(GUIDED, `${corner}cutter: {diameter: 12.7, angle: 8, length: 20, bush: 16}\n`);
  writeFileSync(SEASONS, `${drawer}climate: {making: 21C/45%, driest: 21C/30%, dampest: 21C/70%}\n`);
  for (const [name, x] of [
    ['office', '149.4'],
    ['home', '150.2'],
  ] as const)
    halfpin(['proof', '--measured-x', x, '--measured-y', '200.6', '--save', name], undefined, ENV);
});

/** Values of each option, the first of which may be its default in a command, or one that changes nothing there. */
const VALUES: Readonly<Record<string, readonly string[]>> = {
  ...{ 'bench-paper': ['A5'], boards: ['tail'], copies: ['made'], only: ['Tray'], sheets: ['bench'] },
  ...{
    as: ['svg', 'pdf'],
    paper: ['A5'],
    margin: ['12'],
    printer: ['office'],
    send: ['no-such-queue'],
  },
  ...{
    out: [at('other')],
    site: [at('other')],
    name: ['Ledge'],
    kind: ['lapped', 'through'],
    width: ['118'],
    lap: ['6'],
    'tail-lap': ['4'],
    shoulder: ['both'],
    'shoulder-width': ['7'],
    mitre: ['corner'],
  },
  ...{ 'tail-board': ['12.5'], 'pin-board': ['18'], slope: ['1:6', '1:3'], tails: ['2'], pin: ['11'] },
  ...{ pins: ['8,11'], 'half-pin': ['7'], graded: ['0.9'], pitch: ['30'], 'graded-from': ['middle'] },
  ...{ spacing: ['hounds-tooth', 'even'], groups: ['1,1,1'], 'group-pin': ['17'], 'small-pin': ['7.5'] },
  ...{ closer: ['0.8'], 'closer-tails': ['1'] },
  ...{ chisel: ['12'], units: ['in'], fractions: ['16'], straight: ['9'], bush: ['17'], 'pin-bush': ['18'] },
  ...{ 'cutter-diameter': ['11'], 'cutter-angle': ['9'], 'cutter-length': ['25'], 'cutter-neck': ['6'] },
  ...{ 'fingers-together': ['21'], 'fingers-bush': ['18'], 'fingers-pairs': ['1'], 'fingers-bar': ['90'] },
  ...{ widths: ['60,140'], species: ['Walnut, black'], shrinkage: ['4,8'], coefficient: ['0.001,0.002'] },
  ...{
    grain: ['quartersawn'],
    size: ['200'],
    from: ['7%'],
    to: ['13%'],
    joint: ['Tray front'],
    depth: ['9'],
  },
  font: ['node_modules/dejavu-fonts-ttf/ttf/DejaVuSerif.ttf'],
  ...{ at: ['0.3'], log: [at('log.txt')], loose: ['0.3'], tight: ['0.2'], proud: ['0.4'], shy: ['0.3'] },
  ...{ short: ['0.2'], 'measured-x': ['149.6'], 'measured-y': ['200.3'], save: ['den'] },
  ...{ 'measured-d1': ['250.1'], 'measured-d2': ['250.3'] },
};

const CORNER = ['--width', '130mm', '--tail-board', '19mm', '--pin-board', '19mm'];
const CUTTER = ['--cutter-diameter', '12.7mm', '--cutter-angle', '8', '--cutter-length', '20mm'];
const FINGERS = [...CUTTER, '--fingers-together', '12mm', '--bush', '16mm'];
const BOARD = ['--species', 'Ash, white', '--size', '180', '--from', '8%', '--to', '12%'];
const SIDES = [
  '--measured-x',
  '149.4',
  '--measured-y',
  '200.6',
  '--measured-d1',
  '250',
  '--measured-d2',
  '250.2',
];
const SECRET = ['--kind', 'secret-mitred'];
const GROUPED = ['--spacing', 'grouped', '--groups', '1,2'];
const THROUGH = ['--kind', 'through'];
const TOOTH = ['--spacing', 'hounds-tooth'];
const CLOSER = ['--spacing', 'closer-edges', '--tails', '4'];
const OUT = ['--out', at('out')];

/** Lines that work: the arguments, and then the options, two by two. */
const LINES: readonly (readonly [command: string, flags: readonly string[], options: readonly string[]])[] = [
  ['draw', [], [...CORNER, ...OUT]],
  ['draw', [], [...CORNER, ...OUT, ...CUTTER, '--pin', '18mm', '--bush', '16mm', '--as', 'dxf']],
  ['draw', [], [...CORNER, ...OUT, '--lap', '5', '--as', 'svg']],
  ['draw', [PLAN], [...OUT, '--sheets', 'templates']],
  ['draw', [PLAN], [...OUT, '--sheets', 'bench']],
  ['draw', [GUIDED], [...OUT, '--sheets', 'guides']],
  ['lay', [], CORNER],
  ['lay', [], [...CORNER, '--tails', '30mm,32mm,30mm']],
  ['lay', [], [...CORNER, ...CUTTER]],
  ['lay', [], [...CORNER, ...FINGERS, '--pin', '10mm']],
  ['lay', [], [...CORNER, '--graded', '0.8']],
  ['lay', [], [...CORNER, ...GROUPED]],
  ['lay', THROUGH, [...CORNER, ...TOOTH]],
  ['lay', [], [...CORNER, ...CLOSER]],
  ['lay', [], [...CORNER, '--units', 'in']],
  ['lay', [], [...CORNER, ...SECRET]],
  ['lay', [], [...CORNER, '--shoulder', 'upper']],
  ['lay', [PLAN], []],
  ['lay', [GUIDED], []],
  ['compare', [], ['--widths', '60mm,90mm']],
  ['compare', [], ['--widths', '60mm,90mm', ...OUT]],
  ['compare', [], ['--widths', '60mm,90mm', ...CUTTER]],
  ['compare', [], ['--widths', '70mm,90mm,130mm', ...FINGERS]],
  ['compare', [], ['--widths', '130mm', '--tails', '20,20,20', '--pin', '9.5', '--half-pin', '25.5', ...OUT]],
  ['compare', [], ['--widths', '60mm,90mm', '--units', 'in']],
  ['compare', [], ['--widths', '60mm,90mm', '--tail-board', '19mm', '--pin-board', '19mm', ...SECRET]],
  ['compare', [], ['--widths', '60mm,90mm', '--graded', '0.8', ...OUT]],
  ['compare', [], ['--widths', '90mm,130mm', ...GROUPED]],
  ['compare', THROUGH, ['--widths', '90mm,130mm', ...TOOTH, ...OUT]],
  ['compare', [], ['--widths', '130mm', ...CLOSER, ...OUT]],
  ['compare', [PLAN], []],
  ['compare', [PLAN, '--json'], []],
  ['parts', [PLAN], []],
  ['parts', [PLAN], ['--units', 'in']],
  ['parts', [PLAN, '--csv'], []],
  ['parts', [PLAN, '--json'], []],
  ['season', ['--woods'], []],
  ['season', [], BOARD],
  ['season', [SEASONS], ['--units', 'in']],
  ['season', [SEASONS], []],
  ['season', [SEASONS], OUT],
  ['trial', [], ['--cutter-angle', '14', '--depth', '9.5mm', '--loose', '0.2mm']],
  ['trial', [], ['--slope', '1:8', '--loose', '0.2mm']],
  ['trial', ['--by-hand'], ['--tight', '0.1mm']],
  ['trial', [GUIDED], ['--loose', '0.2mm']],
  ['trial', [GUIDED], ['--loose', '0.2mm', '--log', at('log.txt')]],
  ['trial', [PLAN], ['--joint', 'Carcase', '--loose', '0.2mm']],
  ['proof', [], OUT],
  ['proof', ['--json'], []],
  ['proof', [], SIDES],
  ['printers', [], []],
  ['page', [], ['--out', at('page.html')]],
  ['page', [], ['--site', at('site')]],
  ['start', [], []],
  ['schema', [], []],
];

/** What restates a default, or asks for what is so already, by its line; each with its reason. */
const RESTATED: readonly RegExp[] = [
  // Nothing is in the way, and nothing is left over.
  /^(?:draw|compare|season|trial|proof|page) .*--force$/u,
  /^draw .*--tidy$/u,
  /^draw .*--as pdf$/u,
  // One corner is made once.
  /^draw .*--copies made$/u,
  // Limits that are kept.
  /--(?:cutter-length|cutter-neck|fingers-pairs|fingers-bar) \S+$/u,
  /^trial .*--depth 9$/u,
  // The same bars fit between wider margins.
  /^proof .*--margin 12$/u,
  // The joint is known only for its depth, which limits what can be pared.
  /^trial .*--joint Tray front$/u,
  // A plan without a cutter is cut by hand.
  /^trial \S+plan\.yaml .*--by-hand$/u,
  // Boards of one thickness meet from corner to corner.
  /--(?:kind secret-mitred|shoulder upper) --mitre corner$/u,
  // Tails are even unless another spacing is given, and listed or graded ones stay so.
  /--spacing even$/u,
  // A secret mitre has its shoulders at both edges.
  /--kind secret-mitred --shoulder both$/u,
  // All names here are in letters of the sheets' own font.
  /--font \S+$/u,
  // The corner is described in full; guides depend on less, and DXF is in mm.
  /^draw .*--as dxf --units in$/u,
  /^draw .*--as dxf --proud 0\.4$/u,
];

/** Opens a browser. */
const NOT_TRIED = ['--open', '--help'];

/** What a line does: its exit status, what it says, and every byte that it writes. */
const effect = (args: readonly string[]) => {
  for (const name of ['out', 'other', 'page.html', 'log.txt'])
    rmSync(at(name), { recursive: true, force: true });
  const { status, out, err } = halfpin(args, undefined, ENV);
  const files = ['out', 'other'].flatMap((folder) =>
    statSync(at(folder), { throwIfNoEntry: false })?.isDirectory()
      ? readdirSync(at(folder))
          .sort()
          .map((name) => `${name}: ${readFileSync(join(at(folder), name), 'latin1')}`)
      : [],
  );
  return { status, err, all: JSON.stringify([status, out, err, files]) };
};

/** The options in a command's help: their names, and whether a value follows. */
const optionsOf = (command: string) =>
  [...halfpin([command, '--help']).out.matchAll(/^ {2}(?:-h, )?(--[a-z0-9-]+)( <)?/gmu)].flatMap(
    ([, name = '', value]) => (NOT_TRIED.includes(name) ? [] : [{ name, takes: value !== undefined }]),
  );

/** Those that describe a corner are read alike for draw and for lay, which is faster; but tools draw guides. */
const READ_FOR_LAY = optionsOf('lay').flatMap(({ name }) =>
  ['--bush', '--pin-bush', '--straight', '--units'].includes(name) ? [] : [name],
);

describe('an option', () => {
  /** Those that are accepted somewhere, and change what a command does. */
  const effective = new Set<string>();

  it.each(LINES)('changes what is done, is refused, or restates what is so: %s %j %j', (...line) => {
    const [command, flags, options] = line;
    const plain = [command, ...flags, ...options];
    const before = effect(plain);
    expect(before.err).toBe('');
    for (const flag of flags) effective.add(`${command} ${flag}`);
    const ignored = optionsOf(command).filter(({ name, takes }) => {
      if (flags.includes(name) || (command === 'draw' && READ_FOR_LAY.includes(name))) return false;
      const values = VALUES[name.slice(2)] ?? [];
      if (takes) expect(values, name).not.toEqual([]);
      const lines = takes
        ? values.map((value) => [command, ...flags, ...replacing(options, [name, value])])
        : [[...plain, name]];
      const others = lines.filter((words) => words.join(' ') !== plain.join(' '));
      const effects = others.map(effect);
      const changes = effects.some(({ status, all }) => status !== 2 && all !== before.all);
      const restates = others.some((words) => RESTATED.some((pattern) => pattern.test(words.join(' '))));
      if (changes || restates) effective.add(`${command} ${name}`);
      return !changes && !restates && !effects.every(({ status }) => status === 2);
    });
    expect(ignored).toEqual([]);
  });

  it('is accepted somewhere: no command refuses any of its options throughout', () => {
    const all = new Set(LINES.map(([command]) => command));
    const never = [...all].flatMap((command) =>
      optionsOf(command)
        .filter(({ name }) => !(command === 'draw' && READ_FOR_LAY.includes(name)))
        .map(({ name }) => `${command} ${name}`)
        .filter((each) => !effective.has(each)),
    );
    expect(never).toEqual([]);
  });

  it('is refused where it has no meaning beside the rest, by its name', () => {
    expect(halfpin(['draw', ...CORNER, '--as', 'svg', '--paper', 'A3', '--printer', 'office'])).toEqual({
      status: 2,
      out: '',
      err: ['--paper', '--printer']
        .map(
          (name) =>
            `${name}: an SVG or a DXF is one template at its true size, without a page; a PDF must be among --as; try --as pdf,svg\n`,
        )
        .join(''),
    });
  });

  it('is refused where it is given twice, a flag too', () => {
    const { status, err } = halfpin(['lay', ...CORNER, '--pin', '7', '--pin', '8', '--json', '--json']);
    expect({ status, err }).toEqual({
      status: 2,
      err: '--pin: this is given 2 times; give it once\n--json: this is given 2 times; give it once\n',
    });
    // A later run counts anew.
    expect(halfpin(['lay', ...CORNER, '--pin', '8', '--json']).status).toBe(0);
  });

  it('that a plan says itself is refused with the key that says it', () => {
    expect(halfpin(['lay', PLAN, '--pin', '7']).err).toBe(
      '--pin: a plan says this itself; change joint.pin there, or remove the option or the plan\n',
    );
  });
});
