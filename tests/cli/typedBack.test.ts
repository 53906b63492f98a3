import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutOptions } from '../../src/cli/loadProject.ts';
import type { JointOptions } from '../../src/cli/options/jointOptions.ts';
import { readTrialOptions } from '../../src/cli/options/trialOptions.ts';
import { jointText } from '../../src/cli/report/jointText.ts';
import type { Joint } from '../../src/joint/joint.ts';
import { type Complaint, sentence } from '../../src/units/complaint.ts';
import { formatLength, nearestMark } from '../../src/units/formatLength.ts';
import type { Notation } from '../../src/units/notation.ts';
import { type LengthWord, speak, typeOut } from '../../src/units/phrase.ts';
import { parseMaking } from '../../src/wood/climate.ts';
import { parseMoisture } from '../../src/wood/moisture.ts';
import { beyond, rangeOf } from '../toldRange.ts';

type Options = JointOptions & Readonly<Record<string, unknown>>;

const complaintsAbout = (options: Options): readonly Complaint[] => {
  const { project } = layOutOptions(options);
  return project.ok ? [] : project.complaints;
};
const at = ({ at: [option] }: Complaint): string => String(option);

/** What a complaint is about, whatever its figures and names. */
const kindOf = ({ says }: Complaint): string =>
  speak(says, 'mm')
    .replace(/"(?:[^"\\]|\\.)*"/gu, '""')
    .replace(/[\d.]+/gu, '0');

/** Words as options: `--kind lapped --lap 5mm`. */
const optionsIn = (text: string): Options =>
  Object.fromEntries(
    Array.from(text.matchAll(/--([\w-]+) (\S+)/gu), ([, name = '', typed = '']) => [
      name.replace(/-[a-z]/gu, (letter) => letter.slice(1).toUpperCase()),
      typed,
    ]),
  );

/** The options with a text typed where a complaint is, one of a list in its place. */
const typing = (options: Options, { at: [option = '', index] }: Complaint, text: string): Options => {
  if (text.startsWith('--')) return { ...options, ...optionsIn(text) };
  if (typeof index !== 'number') return { ...options, [option]: text };
  const list = String(options[option]).split(',');
  return { ...options, [option]: list.map((each, i) => (i === index ? text : each)).join(',') };
};

const BOARDS = { width: '120mm', tailBoard: '11mm', pinBoard: '18mm' };
const CUTTER = { cutterDiameter: '12.7mm', cutterAngle: '8', cutterLength: '20mm' };
const BASES: readonly Options[] = [
  BOARDS,
  { ...BOARDS, kind: 'lapped', lap: '4mm' },
  { ...BOARDS, tails: '25,26,25', pins: '8.5,8.5', halfPin: '13,14mm' },
  { ...BOARDS, tails: '4', graded: '0.9', gradedFrom: 'middle' },
  { ...BOARDS, ...CUTTER, kind: 'lapped' },
  { ...BOARDS, ...CUTTER, bush: '16mm', straight: '8mm' },
  { ...BOARDS, ...CUTTER, pitch: '25mm' },
];
const NOTATIONS: readonly Options[] = [
  {},
  { units: 'mm' },
  { units: 'in' },
  { units: 'in', fractions: '32' },
  { units: 'in', fractions: '16' },
  { units: 'in', fractions: 'decimal' },
];
const KEYS = [
  'width tailBoard pinBoard kind lap slope pin halfPin tails pins graded gradedFrom proud chisel pitch units fractions',
  'cutterDiameter cutterAngle cutterLength cutterNeck straight bush pinBush',
].flatMap((line) => line.split(' '));
const VALUES = [
  ...['0', '0mm', '0.5mm', '1mm', '2.3mm', '3mm', '5.37mm', '7.9mm', '8.4mm', '11.1mm', '14.7mm', '19.987mm'],
  ...['25mm', '40mm', '130mm', '6000mm', '7/16', '1,234', '3/7in', '5 11', 'oak', '1:0', '1:3', '1:18'],
  ...['2.8deg', '22deg', '64', '32', 'in', 'lapped', 'through', '', '5,5', '20mm,20mm,20mm', '3', '8', '30'],
];

/** What is read, before anything is known about what fits there: it may be refused for its size. */
const READ_ONLY: readonly RegExp[] = [
  /is not a length$/u,
  /can be read in two ways$/u,
  /which no rule is marked in$/u,
  /is out of range; it must be/u,
  /must pass through it/u,
  /runs to a point/u,
  /outside; it must be more than/u, // the same, before there is a cutter for it
  /listed pins need listed tails$/u, // how a list is written
  /no dovetail cutter for it to go with$/u, // a cutter, before the other tool is judged
];

/** Every so many of the faulty options; a prime, so that every option, value and notation gets its turn. */
const STEP = Number(process.env.TYPED_STEP ?? 17);

const faulty = (): Options[] =>
  BASES.flatMap((base, b) =>
    KEYS.flatMap((key, k) =>
      VALUES.map((wrong, v) => ({ ...base, ...NOTATIONS[(b + k + v) % NOTATIONS.length], [key]: wrong })),
    ),
  ).filter((_, i) => i % STEP === 0);

describe('what a complaint about options says to try', () => {
  it('is accepted when it is typed there, and nothing new is wrong about it', () => {
    let hints = 0;
    for (const options of faulty()) {
      const complaints = complaintsAbout(options);
      const { units } = layOutOptions(options);
      const untold = complaints.filter((each) => each.hint === undefined).map(kindOf);
      for (const complaint of complaints) {
        if (complaint.hint === undefined) continue;
        const readOnly = READ_ONLY.some((says) => says.test(speak(complaint.says, 'mm')));
        for (const typed of typeOut(complaint.hint, units).split(/, or | or |, /u)) {
          hints += 1;
          const left = complaintsAbout(typing(options, complaint, typed))
            .filter((each) => at(each) === at(complaint))
            .map(kindOf)
            .filter((kind) => (readOnly ? kind === kindOf(complaint) : !untold.includes(kind)));
          expect(left, `${JSON.stringify(options)} ${at(complaint)}: ${sentence(complaint, units)}`).toEqual(
            [],
          );
          // A command line takes it as it is.
          if (!typed.startsWith('--')) expect(typed).toMatch(/^[^\s"'`$*?;&|<>()]+$/u);
        }
      }
    }
    expect(hints).toBeGreaterThan(50);
  });
});

describe('a range that a complaint about options tells', () => {
  it('holds the bounds as they are shown, and nothing a mark beyond', () => {
    let bounds = 0;
    for (const options of faulty()) {
      const { units } = layOutOptions(options);
      for (const complaint of complaintsAbout(options)) {
        const isSame = (each: Complaint) =>
          each.at.join() === complaint.at.join() && kindOf(each) === kindOf(complaint);
        // A default that a cutter or a machine makes too wide is in no range that could be typed.
        if (options[at(complaint)] === undefined) continue;
        for (const word of rangeOf(complaint)) {
          bounds += 1;
          const told = `${JSON.stringify(options)} ${at(complaint)}: ${sentence(complaint, units)}`;
          const typed = (length: LengthWord): readonly Complaint[] =>
            complaintsAbout(typing(options, complaint, typeOut([length], units)));
          expect(typed(word).filter(isSame), told).toEqual([]);
          expect(typed(beyond(word, units)).map(at), told).toContain(at(complaint));
        }
      }
    }
    expect(bounds).toBeGreaterThan(50);
  });

  it('of angles and slopes holds its bounds too', () => {
    const angle = (typed: string) => complaintsAbout({ ...BOARDS, ...CUTTER, cutterAngle: typed }).map(at);
    const [told] = complaintsAbout({ ...BOARDS, ...CUTTER, cutterAngle: '1' });
    const [, least = '', most = ''] =
      /must be ([\d.]+) to ([\d.]+) degrees/u.exec(speak(told?.says ?? [], 'mm')) ?? [];
    for (const bound of [least, most]) expect(angle(bound)).not.toContain('cutterAngle');
    expect(angle((Number(least) - 0.01).toFixed(2))).toContain('cutterAngle');
    expect(angle((Number(most) + 0.01).toFixed(2))).toContain('cutterAngle');
  });
});

describe('what is shown of a corner', () => {
  const notations = fc.constantFrom<Notation[]>('mm', 'in', 'in/32', 'in/16', 'in/1000');
  const FRACTIONS = { 'in/32': '32', 'in/16': '16', 'in/1000': 'decimal' } as const;
  const inNotation = (notation: Notation): Options =>
    notation === 'mm' || notation === 'in'
      ? { units: notation }
      : { units: 'in', fractions: FRACTIONS[notation] };
  const sizes = fc.record({
    width: fc.double({ min: 80, max: 300, noNaN: true }),
    tailBoard: fc.double({ min: 6, max: 20, noNaN: true }),
    pinBoard: fc.double({ min: 9, max: 25, noNaN: true }),
    run: fc.double({ min: 4, max: 20, noNaN: true }),
    lap: fc.option(fc.double({ min: 2, max: 5, noNaN: true }), { nil: undefined }),
  });
  const jointOf = (options: Options): Joint | undefined => {
    const { project } = layOutOptions(options);
    return project.ok ? project.value.joints[0]?.joint : undefined;
  };
  const heading = (joint: Joint, notation: Notation): string =>
    jointText('Corner', joint, notation).join(' ').replace(/\s+/gu, ' ').split('°')[0] ?? '';
  /** The figures of the heading as options. */
  const typedHeading = (text: string): Options => {
    const [, width, tailBoard, pinBoard, lap, slope] =
      /joint, (.+) wide, tail board (.+), pin board (.+?)(?: with a lap of (.+))?, slope (\S+) /u.exec(
        text,
      ) ?? [];
    return { width, tailBoard, pinBoard, slope, ...(lap !== undefined && { lap }) } as Options;
  };

  it('is shown the same when it is typed back: boards, lap, slope and every tail', () => {
    let shown = 0;
    fc.assert(
      fc.property(
        sizes,
        notations,
        fc.boolean(),
        ({ width, tailBoard, pinBoard, run, lap }, notation, inMm) => {
          const first = jointOf({
            ...inNotation(notation),
            width: `${width}mm`,
            tailBoard: `${tailBoard}mm`,
            pinBoard: `${pinBoard}mm`,
            slope: `1:${run.toFixed(6)}`,
            ...(lap !== undefined && { lap: `${lap}mm` }),
          });
          if (first === undefined) return;
          const boards = { ...inNotation(notation), ...typedHeading(heading(first, notation)) };
          const again = jointOf(boards);
          // Wide enough that no rounded tail is narrower than can be cut, which is another matter.
          if (again?.tails.every(({ base: [from, to] }) => to - from > 5) !== true) return;
          shown += 1;
          expect(heading(again, notation).split(' (')[0]).toBe(heading(first, notation).split(' (')[0]);
          const width2 = ([from, to]: readonly [number, number]): string =>
            formatLength(nearestMark(to, notation) - nearestMark(from, notation), notation);
          const tails = again.tails.map(({ tip }) => width2(tip));
          const pins = again.pins.map(({ narrow }) => width2(narrow));
          const listed = jointOf({
            ...boards,
            ...(inMm ? { units: 'mm', fractions: undefined } : {}),
            tails: `${tails.join(',')}${tails.length === 1 ? ',' : ''}`.replace(/,$/u, ''),
            ...(tails.length > 1 && { pins: pins.slice(1, -1).join(',') }),
            halfPin: `${pins[0]},${pins.at(-1)}`,
          } as Options);
          if (tails.length === 1) return;
          expect(listed?.tails.map(({ tip }) => width2(tip))).toEqual(tails);
        },
      ),
      { numRuns: 150 },
    );
    expect(shown).toBeGreaterThan(50);
  });

  it('is the same slope by its ratio and by its angle', () => {
    fc.assert(
      fc.property(fc.double({ min: 2.5, max: 20, noNaN: true }), (run) => {
        const text = (slope: string): string | undefined => {
          const joint = jointOf({ ...BOARDS, width: '200mm', pinBoard: '12mm', tails: '3', slope });
          return joint && jointText('Corner', joint, 'mm').join(' ').replace(/\s+/gu, ' ');
        };
        const [, ratio = '', angle = ''] =
          /slope (\S+) \((\S+)\)/u.exec(text(`1:${run.toFixed(4)}`) ?? '') ?? [];
        expect(text(ratio)).toContain(`slope ${ratio} `);
        expect(text(angle)).toContain(`(${angle})`);
      }),
    );
  });
});

describe('a trial joint', () => {
  it('is corrected by what it shows, typed back', () => {
    const lengths = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(
        lengths,
        lengths,
        fc.constantFrom<Notation[]>('mm', 'in/1000'),
        (depth, loose, notation) => {
          const [typedDepth, typedLoose] = [formatLength(depth, notation), formatLength(loose, notation)];
          const { trial, measured } = readTrialOptions(
            { cutterAngle: '14', depth: typedDepth, loose: typedLoose },
            notation,
            undefined,
          );
          expect(trial.kind === 'depth' && formatLength(trial.setting.depth, notation)).toBe(typedDepth);
          expect(formatLength(measured.looseness, notation)).toBe(typedLoose);
        },
      ),
    );
  });
});

describe('the conditions of a season', () => {
  it.each<
    [
      string,
      (typed: string) => { readonly ok: boolean; readonly complaints?: readonly Complaint[] },
      string,
      RegExp,
      (bound: string) => string,
    ]
  >([
    [
      'temperatures in Celsius',
      parseMoisture,
      '200C/45%',
      /must be (\S+) °C \(.*\) to (\S+) °C/u,
      (bound) => `${bound} °C/45 %`,
    ],
    [
      'temperatures in Fahrenheit',
      parseMoisture,
      '900F/45%',
      /must be .*?\((\S+) °F\) to .*\((\S+) °F\)/u,
      (bound) => `${bound} °F/45 %`,
    ],
    ['humidities', parseMoisture, '21C/99%', /must be (\S+) % to (\S+) %/u, (bound) => `21C/${bound} %`],
    ['moisture contents', parseMoisture, '31%', /must be (\S+) % to (\S+) %/u, (bound) => `${bound} %`],
    [
      'moisture contents when made',
      parseMaking,
      '20%',
      /must be (\S+) % to (\S+) %/u,
      (bound) => `${bound} %`,
    ],
  ])('hold the bounds of %s as they are shown, and nothing beyond', (_, parse, wrong, range, typed) => {
    const told = parse(wrong);
    const [, least = '', most = ''] = range.exec(speak(told.complaints?.[0]?.says ?? [], 'mm')) ?? [];
    expect(parse(typed(least)).ok, least).toBe(true);
    expect(parse(typed(most)).ok, most).toBe(true);
    expect(parse(typed((Number(least) - 0.2).toFixed(1))).ok).toBe(false);
    expect(parse(typed((Number(most) + 0.2).toFixed(1))).ok).toBe(false);
  });
});
