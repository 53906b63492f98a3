import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CHEST, folder, GUIDED_CHEST, halfpin, replacing } from './program.ts';

const CORNER = ['--width', '96', '--tail-board', '14', '--pin-board', '20', '--kind', 'lapped', '--lap', '5'];
const CUTTER = ['--cutter-diameter', '12.7', '--cutter-angle', '8', '--cutter-length', '20'];
/** What the cutter leaves of itself 15 mm up: 12.7 - 30 tan 8°. */
const LEAST = 12.7 - 30 * Math.tan((8 * Math.PI) / 180);

const joint = (...args: string[]) => {
  const { status, out, err } = halfpin(['lay', ...args, '--json']);
  expect([status, err]).toEqual([0, '']);
  return JSON.parse(out).joints[0];
};

const refusals = (...args: string[]): string[] => {
  const { status, out, err } = halfpin(args);
  expect([status, out]).toEqual([2, '']);
  return err.trimEnd().split('\n');
};

describe('a corner laid out for a cutter', () => {
  it('has its slope and its least pin, and lists the passes', () => {
    const { slope, pins, depth, guided } = joint(...CORNER, ...CUTTER);
    expect(slope.degrees).toBe(8);
    for (const { narrow } of pins) expect(narrow[1] - narrow[0]).toBeCloseTo(LEAST, 3);
    expect(guided).toMatchObject({ depth, socketRadius: 6.35 });
    expect(guided.leastPin).toBeCloseTo(LEAST, 3);
    expect(guided.passes).toHaveLength(pins.length);
    // One pass a space: in the middle of a pin as wide as the cut, and half in the half ones.
    const middles = pins.map(({ narrow }: { narrow: [number, number] }) => (narrow[0] + narrow[1]) / 2);
    guided.passes.forEach((centres: number[], i: number) => {
      expect(centres).toEqual([expect.closeTo(middles[i], 3)]);
    });
    expect(guided.pinCut).toMatchObject({ kind: 'round', socket: { length: 14 } });
  });

  it('is cut with a straight cutter too where it goes through', () => {
    const through = ['--width', '96', '--tail-board', '14', '--pin-board', '15', ...CUTTER];
    const { guided } = joint(...through, '--straight', '6');
    expect(guided).toMatchObject({ socketRadius: 0, pinCut: { kind: 'straight', diameter: 6, depth: 14 } });
    expect(refusals('lay', ...through, '--straight', '60')[0]).toMatch(
      /^--straight: the straight cutter is 60 mm; to pass the narrowest socket it must be 1 mm to [\d.]+ mm; try /u,
    );
  });

  it('is described in words: every centre, where to stop, what to ease, and the cautions', () => {
    const { out } = halfpin(['lay', ...CORNER, ...CUTTER]);
    expect(out).toContain('Cut with the dovetail cutter of 12.7 mm at 8°, its depth 15 mm');
    expect(out).toMatch(/^lower half space +4\.24$/mu);
    expect(out).toMatch(/^socket 1 +[\d.]+ +[\d.]+/mu);
    // 14 less what the cut is wide at the surface, 8.4838 / 2.
    expect(out).toContain("A socket is 14 mm long: stop the cutter's centre 9.76 mm from the pin board's");
    expect(out).toContain('Round both inside arrises');
    expect(out).toContain('- Score the grain first');
  });

  it('is cut by it only in its sockets where the tails are sawn, and the rest is told', () => {
    const closed = [...CORNER.with(CORNER.indexOf('lapped'), 'double-lapped'), '--tail-lap', '4', ...CUTTER];
    const { guided } = joint(...closed);
    expect(guided.passes.flat()).toEqual([]);
    // From the whole end: the rebate comes after the sockets.
    expect(guided.pinCut).toMatchObject({ kind: 'round', socket: { length: 14 } });
    const { out } = halfpin(['lay', ...closed]);
    const text = out.replaceAll(/\s+/gu, ' ');
    expect(text).toContain(
      "the sockets only, and while the pin board's end is whole. Saw and chop the tails",
    );
    expect(text).toContain('Order of work, after the router: 1. Gauge the pin board. Rebate its end');
    expect(text).not.toContain('Cut the pins first');
  });

  it('is cut by it between its mitred shoulders, and by hand beside them', () => {
    const shouldered = [
      '--width',
      '96',
      '--tail-board',
      '14',
      '--pin-board',
      '14',
      '--shoulder',
      'lower',
      ...CUTTER,
    ];
    const { guided } = joint(...shouldered);
    expect(guided.passes[0]).toEqual([]);
    expect(guided.passes.slice(1).every((centres: number[]) => centres.length > 0)).toBe(true);
    const text = halfpin(['lay', ...shouldered]).out.replaceAll(/\s+/gu, ' ');
    expect(text).toContain('lower half space by hand');
    expect(text).toContain(
      'Saw the tail board’s shoulder line down to the baseline. Saw and chop the half space beside it.',
    );
  });

  it('has no passes without a cutter', () => {
    expect(joint(...CORNER).guided).toBeUndefined();
    expect(halfpin(['lay', ...CORNER]).out).not.toContain('At the router');
    expect(halfpin(['draw', ...CORNER, '--out', folder()]).out).not.toMatch(/router/u);
  });

  it('can have the fixed spacing of a machine, centre to centre', () => {
    // Joyce, The Technique of Furniture Making: machine-cut pins at a pitch of 1 in.
    const { pins } = joint(...CORNER, ...CUTTER, '--pitch', '1in');
    const centres = pins.slice(1, -1).map(({ wide }: { wide: [number, number] }) => (wide[0] + wide[1]) / 2);
    expect(centres).toHaveLength(2);
    expect(centres[1] - centres[0]).toBeCloseTo(25.4, 3);
  });

  it('is advised where a deeper setting would be more than the cutter cuts, or its neck rubs', () => {
    const { advice } = joint(
      ...[...CORNER, '--cutter-diameter', '12.7', '--cutter-angle', '8'],
      ...['--cutter-length', '15.5', '--cutter-neck', '9'],
    );
    expect(advice).toEqual([
      expect.stringMatching(/^set 15 mm deep, the cutter has 0\.5 mm of its cutting length to spare/u),
      expect.stringMatching(/^a neck of 9 mm is wider than the cut at the surface \(8\.48 mm\)/u),
    ]);
  });
});

describe('what a cutter does not allow', () => {
  it.each([
    [
      ['--cutter-angle', '0'],
      /^--cutter-angle: the cutter's angle is 0 degrees; it must be 2\.87 to 21\.80/u,
    ],
    [['--cutter-angle', '90'], /^--cutter-angle: the cutter's angle is 90 degrees; it must be 2\.87/u],
    [['--cutter-angle', 'steep'], /^--cutter-angle: "steep" is not an angle in degrees; try 8$/u],
    [
      ['--cutter-length', '12'],
      /^--cutter-length: the cutter cuts 12 mm deep; the joint is 15 mm deep; .*the nearest that works: \d tails .* lap 8 mm$/u,
    ],
    [
      ['--bush', '12'],
      /^--bush: the guide bush is 12 mm outside; the dovetail cutter of 12\.7 mm must pass/u,
    ],
    [
      ['--pin-bush', '5', '--straight', '6'],
      /^--pin-bush: the guide bush is 5 mm outside; the straight cutter/u,
    ],
    [['--pin', '5'], /^--pin: a pin is 5 mm .* removes 8\.48 mm.*; the nearest that works: 3 tails/u],
    [['--tails', '5'], /^--tails: a tail is 9\.02 mm wide; the cutter of 12\.7 mm cannot enter its socket/u],
    [['--slope', '1:4'], /^--slope: a slope of 1:4 is not the cutter's: at 8 degrees it cuts 1:7\.12; try/u],
    [['--pitch', '20'], /^--pitch: a pitch of 20 mm leaves tails of 11\.52 mm .* it must be 21\.19 mm to /u],
    [['--pitch', '30', '--tails', '3'], /^--pitch: the pitch sets the tails .*; remove --tails$/u],
    [['--cutter-neck', '13'], /^--cutter-neck: the cutter's neck is 13 mm; it must be 1 mm or more/u],
  ])('is refused by name, and nothing is written: %j', (args, says) => {
    const where = folder();
    const given = replacing(CUTTER, args);
    const lines = refusals('draw', ...CORNER, ...given, '--out', join(where, 'out'));
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(says);
    expect(existsSync(join(where, 'out'))).toBe(false);
  });

  it('is complained of once for every option that is missing or goes with none', () => {
    expect(refusals('lay', ...CORNER, '--cutter-angle', '8').map((line) => line.split(':')[0])).toEqual([
      '--cutter-diameter',
      '--cutter-length',
    ]);
    expect(refusals('draw', ...CORNER, '--bush', '16')[0]).toMatch(/^--bush: there is no dovetail cutter/u);
    expect(refusals('draw', CHEST, '--bush', '16')[0]).toMatch(/^--bush: the plan names no cutter/u);
    expect(refusals('lay', CHEST, ...CUTTER).map((line) => line.split(':')[0])).toEqual([
      '--cutter-diameter',
      '--cutter-angle',
      '--cutter-length',
    ]);
  });
});

describe('compare, for a cutter', () => {
  it('keeps every width within its limits', () => {
    const { status, out } = halfpin([
      ...['compare', '--widths', '60,96,140', '--tail-board', '14', '--pin-board', '20', '--lap', '5'],
      ...[...CUTTER, '--json'],
    ]);
    expect(status).toBe(0);
    for (const { pin, tail } of JSON.parse(out).corners) {
      expect(pin).toBeCloseTo(LEAST, 3);
      expect(tail).toBeGreaterThanOrEqual(12.7);
    }
  });

  it('shows the chest for a router with wider pins than the one cut by hand', () => {
    const pins = (plan: string): number[] =>
      JSON.parse(halfpin(['compare', plan, '--json']).out).corners.map(({ pin }: { pin: number }) => pin);
    expect(pins(CHEST)).toEqual(new Array(6).fill(5));
    expect(pins(GUIDED_CHEST)).toEqual(new Array(6).fill(8.5));
  });
});

describe('guides', () => {
  it('are drawn with a bush: a PDF of their own, an SVG and a DXF each, equal ones once', () => {
    const where = folder();
    const { status, out } = halfpin(['draw', GUIDED_CHEST, '--as', 'pdf,svg,dxf', '--out', where]);
    // What is said last is how to stay whole at the router.
    expect(out.replaceAll(/\n +/gu, ' ')).toMatch(
      /Print at 100 %.*\nUnplug the router to change.*\nKeep the guards on.* manual comes before these words\.\n$/u,
    );
    expect(status).toBe(0);
    const files = readdirSync(where);
    expect(files).toContain('haberdashery-chest-guided-guides.pdf');
    // Buttons and Thread are alike, and so are the corners of Ribbon and Patches: four drawers, two corners, two boards.
    const guides = ['buttons', 'cloth', 'notions', 'ribbon']
      .flatMap((drawer) =>
        ['back', 'front'].flatMap((corner) =>
          ['pins', 'tails'].map((board) => `${drawer}-${corner}-guide-${board}`),
        ),
      )
      // The one tail at the back of Buttons has only half spaces beside it, which are cut by hand.
      .filter((name) => name !== 'buttons-back-guide-tails');
    expect(files.filter((file) => file.endsWith('.dxf'))).toEqual(guides.map((name) => `${name}.dxf`));
    for (const name of guides) expect(files).toContain(`${name}.svg`);
    expect(out).toContain('15 guides as DXF, in mm, one a file');
    // The outline is closed, as a cutting machine needs it.
    const svg = readFileSync(join(where, 'cloth-front-guide-tails.svg'), 'utf8');
    const outline = /<g class="outline">(.*?)<\/g>/su.exec(svg)?.[1] ?? '';
    expect(outline.match(/<path/gu)).toHaveLength(1);
    expect(outline).toMatch(/ d="M[^M]*Z"/u);
  });

  it('go with a bush that is typed beside the plan', () => {
    const where = folder();
    const draw = ['draw', GUIDED_CHEST, '--as', 'dxf', '--out', where];
    expect(halfpin([...draw, '--bush', '15']).status).toBe(0);
    const before = readFileSync(join(where, 'cloth-front-guide-tails.dxf'), 'utf8');
    expect(halfpin([...draw, '--bush', '17']).status).toBe(0);
    expect(readFileSync(join(where, 'cloth-front-guide-tails.dxf'), 'utf8')).not.toBe(before);
    const lines = refusals(...draw, '--bush', '40');
    expect(lines[0]).toMatch(/^--bush: "Buttons front": a guide bush of 40 mm leaves a finger of 0 mm/u);
  });

  it('are never written over what others made', () => {
    const where = folder();
    const path = join(where, 'cloth-front-guide-tails.dxf');
    writeFileSync(path, '0\nSECTION\n');
    expect(refusals('draw', GUIDED_CHEST, '--as', 'dxf', '--out', where)[0]).toContain(path);
    expect(readdirSync(where)).toHaveLength(1);
  });

  it('are missed by name where DXF is asked for without them', () => {
    expect(refusals('draw', CHEST, '--as', 'dxf')[0]).toMatch(/^--as: dxf is for guides/u);
  });
});

describe('a plan with a cutter', () => {
  const plan = (change: (text: string) => string): string => {
    const path = join(folder(), 'plan.yaml');
    writeFileSync(path, change(readFileSync(GUIDED_CHEST, 'utf8')));
    return path;
  };
  /** The line of the plan that the cutter stands on. */
  const LINE =
    readFileSync(GUIDED_CHEST, 'utf8')
      .split('\n')
      .findIndex((line) => line.startsWith('cutter:')) + 1;

  it.each([
    [
      'angle: 8',
      'angle: 0',
      "cutter.angle: the cutter's angle is 0 degrees; it must be 2.87 to 21.80 degrees",
    ],
    ['bush: 16', 'bush: 10', 'cutter.bush: the guide bush is 10 mm outside'],
    [
      'length: 20',
      'length: 12',
      'cutter.length: "Buttons" and "Thread": front corners: the cutter cuts 12 mm deep; the joint is 15',
    ],
    [
      'straight: 8',
      'straight: 60',
      'cutter.pinBush: the guide bush is 11 mm outside; the straight cutter of 60 mm',
    ],
  ])('is refused at its own line where %s becomes %s', (from, to, says) => {
    const path = plan((text) => text.replace(from, to));
    const [first] = refusals('lay', path);
    expect(first?.startsWith(`${path}:${LINE}:`)).toBe(true);
    expect(first).toContain(says);
  });

  it('lays its corners that belong to no drawer out for it too', () => {
    const path = plan(
      (text) =>
        `${text}joints:\n  - {name: Carcase, kind: through, width: 300, tailBoard: 15, pinBoard: 15}\n`,
    );
    const { joints } = JSON.parse(halfpin(['lay', path, '--json']).out);
    expect(joints.at(-1)).toMatchObject({ name: 'Carcase', slope: { degrees: 8 }, guided: { depth: 15 } });
    const thick = plan(
      (text) =>
        `${text}joints:\n  - {name: Carcase, kind: through, width: 300, tailBoard: 15, pinBoard: 25}\n`,
    );
    expect(refusals('lay', thick)[0]).toContain(
      `${thick}:${LINE}:${'cutter: {diameter: 12.7, angle: 8, '.length + 1} cutter.length: the cutter cuts 20 mm deep; the joint is 25 mm deep`,
    );
  });
});
