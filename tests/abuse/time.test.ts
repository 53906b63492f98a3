import { deflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { optionReader } from '../../src/cli/options/optionReader.ts';
import { parseAngle } from '../../src/cli/options/readCutterOptions.ts';
import { parsePrinters } from '../../src/files/printerStore.ts';
import { linkOf, planInLink } from '../../src/page/browser/link.ts';
import { parsePaper } from '../../src/paper/paperSizes.ts';
import { isPrinterName } from '../../src/paper/printerName.ts';
import { finenessOf } from '../../src/paper/proofAccuracy.ts';
import { readPlan } from '../../src/plan/readPlan.ts';
import { chooseOnly } from '../../src/project/only.ts';
import type { Project } from '../../src/project/project.ts';
import { parseTrialLog } from '../../src/router/trial/trialLog.ts';
import { nameKey, parseName } from '../../src/units/name.ts';
import { parseFractions } from '../../src/units/notation.ts';
import { inchesMeant, parseLength } from '../../src/units/parseLength.ts';
import { quote } from '../../src/units/quote.ts';
import { parseSlope } from '../../src/units/slope.ts';
import { parseMoisture } from '../../src/wood/moisture.ts';
import { parseCut } from '../../src/wood/movement.ts';
import { findWood } from '../../src/wood/species.ts';

type Shape = (letters: number) => string;
const each =
  (part: string): Shape =>
  (letters) =>
    part.repeat(Math.ceil(letters / part.length));
const numbered =
  (before: string, part: (i: number) => string, after = ''): Shape =>
  (letters) =>
    `${before}${Array.from({ length: letters / 40 }, (_, i) => part(i)).join('')}${after}`;
/** Blanks and figures before something wrong: what makes an expression try every way to part them. */
const UNMATCHED: readonly Shape[] = [
  (n) => `1${' '.repeat(n)}z`,
  (n) => `1${' '.repeat(n / 2)}C${' '.repeat(n / 4)}/${' '.repeat(n / 4)}z`,
  (n) => `1${' '.repeat(n / 2)}x${' '.repeat(n / 2)}z`,
  (n) => `1:${'1'.repeat(n)}z`,
  (n) => `1x1${"'".repeat(n)}1`,
  (n) => `1x1${'a'.repeat(n)}1`,
  each('½ '),
  each('x'),
  each('roll '),
];
const PRINTER = { error: { x: 1, y: 1, skew: 0 }, paper: 'A4', measured: '2026-05-31' };
/** A file of one printer. */
const printer = (changed: Partial<Record<keyof typeof PRINTER, string>>, name = 'a'): string =>
  JSON.stringify({ [name]: { ...PRINTER, ...changed } });
const packed = (text: string): string => `#plan=${deflateRawSync(text).toString('base64url')}`;
const PROJECT = { set: { drawers: [] }, joints: [{ name: 'a,b/c' }] } as unknown as Project;
const CORNER = 'name: a, kind: through, width: 100, tailBoard: 10, pinBoard: 10';

const PARSERS: Readonly<
  Record<string, readonly [parse: (text: string) => unknown, shapes: readonly Shape[]]>
> = {
  'a length': [(text) => parseLength(text, 'mm'), UNMATCHED],
  'a length that may be meant in inches': [(text) => inchesMeant(text, 'mm'), UNMATCHED],
  'a slope': [parseSlope, UNMATCHED],
  'an angle': [parseAngle, UNMATCHED],
  'a climate': [parseMoisture, UNMATCHED],
  'a paper': [parsePaper, UNMATCHED],
  'fractions of an inch': [parseFractions, UNMATCHED],
  'a cut of wood': [parseCut, UNMATCHED],
  'a wood': [findWood, [...UNMATCHED, each('ab '), each('abc'), each('oak ')]],
  'a name': [parseName, [...UNMATCHED, each('a')]],
  'a name to compare': [nameKey, [...UNMATCHED, each('a')]],
  "a printer's name": [isPrinterName, [...UNMATCHED, each('a'), each('a ')]],
  'a quotation': [quote, [...UNMATCHED, each('\u0001')]],
  'a list of lengths': [(a) => optionReader({ a }, 'mm').lengths('a'), [each('1,'), each('z,')]],
  'a log of trials': [
    parseTrialLog,
    [each('{"angle":14,"depth":9.5,"loose":0.2}\n'), each('z\n'), each('\r'), each(' ')],
  ],
  'a file of printers, with the day of each': [
    parsePrinters,
    [
      (n) => `{${Array.from({ length: n / 100 }, (_, i) => printer({}, `a${i}`).slice(1, -1)).join(',')}}`,
      (n) => printer({ measured: '1'.repeat(n) }),
      (n) => printer({ measured: `2026-05-31${' '.repeat(n)}` }),
      (n) => printer({ paper: `1${' '.repeat(n)}x` }),
      (n) => printer({}, 'a '.repeat(n / 2)),
      each('{"a":'),
      each(' '),
    ],
  ],
  'a link': [
    planInLink,
    [
      (n) => packed(numbered('', (i) => `k${i * i}: ${i}\n`)(n)),
      (n) => packed('a'.repeat(100 * n)),
      (n) => `#plan=${'A'.repeat(n)}`,
      (n) => `#plan=${'='.repeat(n)}`,
      (n) => `#plan=${'-_%'.repeat(n / 3)}`,
      each('#'),
    ],
  ],
  'a plan as a link': [linkOf, [each('a'), numbered('', (i) => `k${i * i}: ${i}\n`)]],
  'the readings of a proof': [
    (text) => finenessOf(text.split(','), 'mm'),
    [...UNMATCHED, each('149.5,'), each('6-47/64in,')],
  ],
  'a choice of what is drawn': [
    (text) => chooseOnly(PROJECT, text),
    [...UNMATCHED, each(','), each('a,b/c,'), each('/'), each('b')],
  ],
  'a plan': [
    readPlan,
    [
      numbered(
        'stock: {front: {thickness: 18}, side: {thickness: 12}}\ndrawers:\n',
        (i) => `- {name: D${i}, size: {width: 300, height: 100, depth: 400}}\n`,
      ),
      numbered('', (i) => `k${i}: 1\n`),
      numbered('a: &x 1\n', (i) => `k${i}: *x\n`),
      numbered('woods: {', (i) => `w${i}: {shrinkage: {radial: 3.7, tangential: 7.1}}, `, '}'),
      (n) => `joints:\n- {${CORNER}, tails: [${'z,'.repeat(n / 20)}]}`,
      (n) => `climate: {making: "${UNMATCHED[0]?.(n)}"}`,
      (n) => `units: "${' '.repeat(n)}z"`,
      (n) => `a: 1\n${' '.repeat(n)}b ${' '.repeat(n)}c: 1`,
      (n) => `${'a'.repeat(n)}:1: 1`,
      each('- {}\n'),
      each('['),
      each('"'),
      each('\n'),
    ],
  ],
};

const SHORT = 2_000;
/** The longest short text, where shorter ones are read in no time. */
const LONGEST_SHORT = 16 * SHORT;
/** In milliseconds: a text read in less is too short, as ten times as much of it may still hide in the floor. */
const MEASURABLE = 1;
/** In milliseconds; less is not measured well. */
const FLOOR = 5;
/** Where other things empty the processor's caches, one run may take several times as long as another. */
const MOST_RUNS = 60;

/** What this process has had of the processor, in milliseconds: what else the machine does is not in it. */
const processor = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** The fastest of several runs, in milliseconds of the processor. */
const time = async (work: () => unknown, runs = 1): Promise<number> => {
  let fastest = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs; run++) {
    const start = processor();
    await work();
    fastest = Math.min(fastest, processor() - start);
  }
  return fastest;
};

/** How many times as long a text ten times as long takes: of several runs the fastest count. */
const growth = async (parse: (text: string) => unknown, shape: Shape): Promise<number> => {
  let letters = SHORT;
  while (letters < LONGEST_SHORT && (await time(() => parse(shape(letters)), 3)) < MEASURABLE) letters *= 4;
  const [text, longText] = [shape(letters), shape(10 * letters)];
  let [short, long] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let run = 0; run < MOST_RUNS; run++) {
    short = Math.min(short, await time(() => parse(text)));
    long = Math.min(long, await time(() => parse(longText)));
    if (long <= 11 * Math.max(FLOOR, short)) break;
  }
  return long / Math.max(FLOOR, short);
};

describe('a text ten times as long takes at most eleven times as long to read', () => {
  it.each(Object.entries(PARSERS))('%s', async (_, [parse, shapes]) => {
    for (const shape of shapes)
      expect(await growth(parse, shape), `${shape(SHORT).slice(0, 60)}…`).toBeLessThanOrEqual(11);
  });
});
