import { describe, expect, it } from 'vitest';
import { parseAngle } from '../../src/cli/options/cutterOptions.ts';
import { optionReader } from '../../src/cli/options/optionReader.ts';
import { isPrinterName } from '../../src/files/printerStore.ts';
import { parsePaper } from '../../src/paper/paperSizes.ts';
import { readPlan } from '../../src/plan/readPlan.ts';
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
/** In milliseconds; less is not measured well. */
const FLOOR = 5;
/** On a machine that is busy with other things one run may take many times as long as another. */
const MOST_RUNS = 60;

const time = (work: () => unknown): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

/** How many times as long a text ten times as long takes: of several runs the fastest count. */
const growth = (parse: (text: string) => unknown, shape: Shape): number => {
  const [text, longText] = [shape(SHORT), shape(10 * SHORT)];
  let [short, long] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let run = 0; run < MOST_RUNS; run++) {
    short = Math.min(
      short,
      time(() => parse(text)),
    );
    long = Math.min(
      long,
      time(() => parse(longText)),
    );
    if (long <= 11 * Math.max(FLOOR, short)) break;
  }
  return long / Math.max(FLOOR, short);
};

describe('a text ten times as long takes at most eleven times as long to read', () => {
  it.each(Object.entries(PARSERS))('%s', (_, [parse, shapes]) => {
    for (const shape of shapes)
      expect(growth(parse, shape), `${shape(SHORT).slice(0, 60)}…`).toBeLessThanOrEqual(11);
  });
});
