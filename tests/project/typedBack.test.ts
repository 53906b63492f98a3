import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import { readPlan } from '../../src/plan/readPlan.ts';
import { starterPlan } from '../../src/plan/starterPlan.ts';
import { withCuts } from '../../src/project/project.ts';
import { layOutPlan } from '../../src/project/readProject.ts';
import type { Complaint, Place } from '../../src/units/complaint.ts';
import { formatLength } from '../../src/units/formatLength.ts';
import { halfMark } from '../../src/units/notation.ts';
import { type LengthWord, speak, typeOut } from '../../src/units/phrase.ts';
import { formatSlope, RUN_RANGE } from '../../src/units/slope.ts';
import { formatPercent, parseMoisture } from '../../src/wood/moisture.ts';
import { beyond, rangeOf } from '../toldRange.ts';
import { value } from '../value.ts';

/** What is put into a plan's text letter by letter. */
class Typed {
  constructor(readonly text: string) {}
}

type Group = Readonly<Record<string, unknown>>;
const groupOf = (value: unknown): Group =>
  typeof value === 'object' && value !== null && !(value instanceof Typed) ? (value as Group) : {};

/** A plan's text; what is typed has no quotes round it, as those who type leave them out. */
const textOf = (value: unknown): string => {
  if (value instanceof Typed) return value.text;
  if (Array.isArray(value)) return `[${value.map(textOf).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  return `{${Object.entries(value)
    .map(([key, inner]) => `${JSON.stringify(key)}: ${textOf(inner)}`)
    .join(', ')}}`;
};

const at = (plan: unknown, place: Place): unknown => place.reduce((inner, key) => groupOf(inner)[key], plan);

/** The plan with a value at a place. */
const put = (plan: unknown, [key, ...rest]: Place, value: unknown): unknown => {
  if (key === undefined) return value;
  const inner = put(groupOf(plan)[key], rest, value);
  return Array.isArray(plan)
    ? plan.map((each, i) => (i === key ? inner : each))
    : { ...groupOf(plan), [key]: inner };
};

const complaintsAbout = (plan: unknown): Complaint[] => {
  const reading = layOutPlan(textOf(plan));
  if (!reading.ok) return reading.complaints.map(({ complaint }) => complaint);
  const cut = withCuts(reading.value);
  return cut.ok ? [] : cut.complaints.map((each) => reading.locate(each).complaint);
};

const UNKNOWN = 'there is no such key here';

/** The plan with a hint typed where its complaint is: as a key, as a line `key: value`, or as a value. */
const typing = (plan: unknown, complaint: Complaint, hint: string): unknown => {
  const outer = complaint.at.slice(0, -1);
  const [, key, value] = /^(\w+): (.*)$/u.exec(hint) ?? [];
  if (key !== undefined) return put(plan, [...outer, key], new Typed(value ?? ''));
  if (speak(complaint.says, 'mm') !== UNKNOWN) return put(plan, complaint.at, new Typed(hint));
  const { [complaint.at.at(-1) ?? '']: renamed, ...others } = groupOf(at(plan, outer));
  return put(plan, outer, { ...others, [hint]: renamed });
};

/** `8% or 21C/45%` are two things to type; a line `key: value` is one. */
const choicesOf = (hint: string): string[] => (/^\w+: /u.test(hint) ? [hint] : hint.split(/, or | or |, /u));

const isWithin = (inner: Place, outer: Place): boolean => outer.every((key, i) => inner[i] === key);

/** What a complaint is about, whatever its figures and names. */
const kindOf = ({ says }: Complaint): string =>
  speak(says, 'mm')
    .replace(/"(?:[^"\\]|\\.)*"/gu, '""')
    .replace(/[\d.]+/gu, '0');

/**
 * Hints that say how something is read, before anything is known about what fits there: what is typed is read, and may
 * be refused for its size.
 */
const READ_ONLY: readonly RegExp[] = [
  /is not a length$/u, // examples of how a length is written
  /can be read in two ways$/u, // both readings, of which one is absurd
  /which no rule is marked in$/u, // the length as it was typed, in marks of a rule
  /is out of range; it must be/u, // a bare fraction in inches, where that is in range
  /must pass through it/u, // a bush for the straight cutter, before the slots are known
  /runs to a point/u, // the longest cutter that does not, before the joints are known
  /at this depth the cutter removes/u, // a pin for one corner, where another has no room for it
];

/** What is still wrong about the place of a complaint when its hint has been typed there. */
const leftOf = (
  plan: unknown,
  complaint: Complaint,
  before: readonly Complaint[],
  hint: string,
): string[] => {
  const untold = before.filter((each) => each.hint === undefined).map(kindOf);
  const readOnly = READ_ONLY.some((says) => says.test(speak(complaint.says, 'mm')));
  return complaintsAbout(typing(plan, complaint, hint))
    .filter((each) => each.at.length === 0 || isWithin(each.at, complaint.at))
    .map(kindOf)
    .filter((kind) => (readOnly ? kind === kindOf(complaint) : !untold.includes(kind)));
};

const read = (text: string): unknown => load(text);
const example = (name: string): unknown => read(readFileSync(`examples/${name}.yaml`, 'utf8'));
const starter = read(starterPlan('mm'));
const PLANS: readonly unknown[] = [
  example('haberdashery-chest'),
  example('haberdashery-chest-guided'),
  example('trinket-box'),
  starter,
  read(starterPlan('in')),
  put(starter, ['bottom', 'slips'], { width: 10, height: 18 }),
  put(starter, ['front', 'lip'], 6),
  put(starter, ['cutter'], { diameter: 12.7, angle: 8, length: 20, neck: 7, straight: 8, bush: 16 }),
  put(
    put(example('haberdashery-chest-guided'), ['fingers'], { together: 14, through: { channel: 20 } }),
    ['family'],
    { spacers: 2 },
  ),
];

/** The places of a plan, and others that it could have. */
const placesOf = (value: unknown, place: Place = []): Place[] =>
  typeof value !== 'object' || value === null
    ? [place]
    : Object.entries(value).flatMap(([key, inner]) =>
        placesOf(inner, [...place, Array.isArray(value) ? Number(key) : key]),
      );
const OTHERS = [
  'joint.tails joint.pins joint.graded joint.proud joint.lap joint.kind joint.jiont joint.offset jiont slope offset',
  'groove.stopped groove.width back.drop back.joint back.joint.tails back.joint.pin back.joint.slope back.joint.kind',
  'bottom.slack bottom.slips bottom.slips.height front.lip family.target units fractions climate.making stock.frnt',
  'cutter.diameter cutter.angle cutter.length cutter.bush cutter.pinBush cutter.straight',
  'fingers.together fingers.bush fingers.pairs fingers.bar fingers.through.taper family.spacers family.halfPins',
]
  .flatMap((line) => line.split(' '))
  .map((place): Place => place.split('.'));

/** No value fits everywhere. */
const VALUES: readonly unknown[] = [
  ...[0, -1, 0.5, 1, 2, 3, 4.2, 5.37, 6.61, 7.9, 9.333, 11.1, 14.7, 19.987, 25, 40, 77.31, 130, 555.5, 6000],
  ...[
    '7/16',
    '13/16',
    '1,234',
    '3/7in',
    '5 11',
    'oak',
    'cherry, blck',
    '1:0',
    '1:3',
    '1:18',
    '40C/200%',
    '45%',
  ],
  ...['in', 'none', 'auto', 'lapped', 'through', 'solid', 'quartered', '64', 32, 'decimal', '', true, null],
  ...[[5, 5], [20, 20, 20], {}, { ratio: 0.3 }],
];

const NOTATIONS = ['mm', 'in', 'in/32', 'in/16', 'in/1000'] as const;

/** Every so many of the faulty plans; a prime, so that every place, value and notation gets its turn. */
const STEP = Number(process.env.TYPED_STEP ?? 61);

describe('what a complaint about a plan says to try', () => {
  it('is accepted when it is typed there, in any notation, and nothing new is wrong about it', () => {
    let faulty = 0;
    let hints = 0;
    for (const plan of PLANS)
      for (const place of [...placesOf(plan), ...OTHERS])
        for (const faultyValue of VALUES) {
          faulty += 1;
          if (faulty % STEP !== 0) continue;
          const wrong = put(plan, place, faultyValue);
          const complaints = complaintsAbout(wrong);
          for (const complaint of complaints)
            if (complaint.hint !== undefined) {
              const notation = NOTATIONS[hints % NOTATIONS.length] ?? 'mm';
              hints += 1;
              const hint = typeOut(complaint.hint, notation);
              for (const typed of choicesOf(hint))
                expect(
                  leftOf(wrong, complaint, complaints, typed),
                  `${place.join('.')} is ${JSON.stringify(faultyValue)}: ${speak(complaint.says, notation)}; try ${typed}`,
                ).toEqual([]);
            }
        }
    expect(hints).toBeGreaterThan(100);
  });
});

/** What a complaint is about, whatever its figures; drawers by their names. */
const aboutOf = ({ says }: Complaint): string => speak(says, 'mm').replace(/[\d.]+/gu, '0');

describe('a range that a complaint about a plan tells', () => {
  it('holds the bounds as they are shown, in any notation, and nothing a mark beyond', () => {
    let faulty = 0;
    let bounds = 0;
    for (const plan of PLANS)
      for (const place of [...placesOf(plan), ...OTHERS])
        for (const faultyValue of VALUES) {
          faulty += 1;
          if (faulty % (2 * STEP + 1) !== 0) continue;
          const wrong = put(plan, place, faultyValue);
          const complaints = complaintsAbout(wrong).filter(({ at }) => at.join() === place.join());
          // Of several corners that take a value from one place another may have less room.
          for (const complaint of complaints.length === 1 ? complaints : []) {
            for (const word of rangeOf(complaint)) {
              const notation = NOTATIONS[bounds % NOTATIONS.length] ?? 'mm';
              bounds += 1;
              const told = `${place.join('.')} is ${JSON.stringify(faultyValue)}: ${speak(complaint.says, notation)}`;
              const typed = (length: LengthWord): Complaint[] =>
                complaintsAbout(put(wrong, place, new Typed(typeOut([length], notation)))).filter(
                  ({ at }) => at.join() === place.join(),
                );
              expect(typed(word).map(aboutOf), told).not.toContain(aboutOf(complaint));
              expect(typed(beyond(word, notation)), told).not.toEqual([]);
            }
          }
        }
    expect(bounds).toBeGreaterThan(20);
  });
});

describe('what is printed is typed into a plan as it is', () => {
  const lengths = fc.double({ min: 20, max: 400, noNaN: true });
  const notations = fc.constantFrom(...NOTATIONS);
  const runs = fc.double({ min: RUN_RANGE.least, max: RUN_RANGE.most, noNaN: true });
  /** A single corner in each of the two ways of YAML, in a plan of either unit, its values without quotes. */
  const cornersOf = (units: string, width: string, slope: string) =>
    [
      `joints: [{name: Box, kind: through, width: ${width}, tailBoard: 12mm, pinBoard: 12mm, slope: ${slope}}]`,
      `joints:\n  - name: Box\n    kind: through\n    width: ${width}\n    tailBoard: 12mm\n    pinBoard: 12mm\n    slope: ${slope}`,
    ].map((text) => {
      const reading = readPlan(`units: ${units}\n${text}\n`);
      return reading.ok ? reading.plan.joints[0]?.spec : undefined;
    });

  it('and means what it shows: lengths and slopes', () => {
    fc.assert(
      fc.property(lengths, runs, notations, fc.constantFrom('mm', 'in'), (length, run, notation, units) => {
        const width = formatLength(length, notation);
        const slope = formatSlope({ run });
        for (const spec of cornersOf(units, width, slope)) {
          expect(formatLength(spec?.width ?? 0, notation)).toBe(width);
          expect(Math.abs((spec?.width ?? 0) - length)).toBeLessThanOrEqual(halfMark(notation) + 1e-6);
          expect(formatSlope(spec?.slope ?? { run: 0 })).toBe(slope);
        }
      }),
    );
  });

  it('and means what it shows: moisture contents', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 30, noNaN: true }), (percent) => {
        const shown = formatPercent(percent);
        expect(formatPercent(value(parseMoisture(shown)))).toBe(shown);
      }),
    );
  });
});
