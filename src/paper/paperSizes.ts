import { accept, type Complaint, type Result, refuse } from '../units/complaint.ts';
import { parseLength } from '../units/parseLength.ts';
import { atLeast, atMost, mm, say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';
import { shortValue } from '../units/shortValue.ts';
import { MM_PER_INCH, type Unit } from '../units/unit.ts';

/** Paper, mm, in the printer's orientation. */
export interface Paper {
  /** Name for display and input: `A4`, `610x914mm`, `610xroll`. */
  readonly name: string;
  readonly width: number;
  /** For a roll, its longest sheet. */
  readonly height: number;
  /** Whether sheets are cut to the length of their page. */
  readonly roll: boolean;
}

const SIDE_RANGE = { least: 90, most: 5000 };

const sheet = (name: string, width: number, height: number): Paper => ({ name, width, height, roll: false });

const A4 = sheet('A4', 210, 297);
const LETTER = sheet('Letter', 8.5 * MM_PER_INCH, 11 * MM_PER_INCH);
const LEGAL = sheet('Legal', 8.5 * MM_PER_INCH, 14 * MM_PER_INCH);

/** ISO 216, series A, small to large. */
export const ISO_PAPERS: readonly Paper[] = [
  sheet('A5', 148, 210),
  A4,
  sheet('A3', 297, 420),
  sheet('A2', 420, 594),
  sheet('A1', 594, 841),
  sheet('A0', 841, 1189),
];

/** ANSI, small to large. */
export const ANSI_PAPERS: readonly Paper[] = [
  LETTER,
  LEGAL,
  sheet('Tabloid', 11 * MM_PER_INCH, 17 * MM_PER_INCH),
];

const KNOWN: readonly Paper[] = [...ISO_PAPERS, ...ANSI_PAPERS];

/**
 * The paper of sheets to be held in a hand beside templates on this paper: the same up to the size of Legal; instead of
 * a larger one or a roll, A4, or Letter for inches and for ANSI papers.
 */
export const handPaper = (paper: Paper, unit: Unit): Paper => {
  const { width, height, roll } = paper;
  if (!roll && Math.min(width, height) <= LEGAL.width && Math.max(width, height) <= LEGAL.height)
    return paper;
  return unit === 'in' || ANSI_PAPERS.includes(paper) ? LETTER : A4;
};

/** Names of these papers in print queues, from PWG 5101.1, Media Standardized Names. */
const MEDIA: Readonly<Record<string, string>> = {
  A5: 'iso_a5_148x210mm',
  A4: 'iso_a4_210x297mm',
  A3: 'iso_a3_297x420mm',
  A2: 'iso_a2_420x594mm',
  A1: 'iso_a1_594x841mm',
  A0: 'iso_a0_841x1189mm',
  Letter: 'na_letter_8.5x11in',
  Legal: 'na_legal_8.5x14in',
  Tabloid: 'na_ledger_11x17in',
};

const knownOf = (width: number, height: number): Paper | undefined =>
  KNOWN.find((paper) => Math.abs(paper.width - width) < 0.01 && Math.abs(paper.height - height) < 0.01);

/** A print queue's name for a page of this size: a standard name, or `Custom.610x914mm` in the form of CUPS. */
export const mediaName = ({ width, height }: { readonly width: number; readonly height: number }): string =>
  MEDIA[knownOf(width, height)?.name ?? ''] ?? `Custom.${trim(width)}x${trim(height)}mm`;

const trim = (value: number): string => String(Number(value.toFixed(2)));

/**
 * Reads a paper: a known name, `610x914`, `24x36in`, `8 1/2 x 11 in`, or a roll, `610xroll`. A bare number means mm; one
 * unit at the end is for both.
 * @returns complaints have an empty place: not a paper, or a side outside 90 to 5000 mm
 * @example
 * ```ts
 * const paper = parsePaper('24x36in');
 * if (paper.ok) console.log(paper.value.width.toFixed(1)); // 609.6
 * ```
 */
export const parsePaper = (text: string): Result<Paper> => {
  const plain = shortValue(text);
  const named = KNOWN.find(({ name }) => name.toLowerCase() === plain.toLowerCase());
  if (named !== undefined) return accept(named);
  const roll = /^(.+?)\s*(?:[x×*]\s*)?roll$/iu.exec(plain)?.[1];
  if (roll !== undefined) return parseRoll(text, roll);
  const [, first, second] = /^(.+?)\s*[x×*]\s*([^x×*]+)$/iu.exec(plain) ?? [];
  if (first === undefined || second === undefined) return noPaper(text);
  const unit = /[a-z"″”']+$/iu.exec(second)?.[0] ?? '';
  const width = parseLength(/[a-z"″”']$/iu.test(first) ? first : `${first}${unit}`, 'mm');
  const height = parseLength(second, 'mm');
  if (!width.ok || !height.ok) return noPaper(text);
  const complaints = [...checkSide('width', width.value), ...checkSide('height', height.value)];
  if (complaints.length > 0) return refuse(...complaints);
  const name = `${trim(width.value)}x${trim(height.value)}mm`;
  return accept(knownOf(width.value, height.value) ?? sheet(name, width.value, height.value));
};

const parseRoll = (text: string, across: string): Result<Paper> => {
  const width = parseLength(across, 'mm');
  if (!width.ok) return noPaper(text);
  const complaints = checkSide('width', width.value);
  if (complaints.length > 0) return refuse(...complaints);
  return accept({
    name: `${trim(width.value)}xroll`,
    width: width.value,
    height: SIDE_RANGE.most,
    roll: true,
  });
};

const checkSide = (side: string, value: number): Complaint[] =>
  value >= SIDE_RANGE.least && value <= SIDE_RANGE.most
    ? []
    : [
        {
          at: [],
          says: say`the paper's ${side} is ${mm(value)}; it must be ${atLeast(SIDE_RANGE.least)} to ${atMost(SIDE_RANGE.most)}`,
          hint: say`A4, 610x914 or 24x36in`,
        },
      ];

const noPaper = (text: string): Result<never> =>
  refuse({
    at: [],
    says: say`${quote(text)} is not a paper; known are ${KNOWN.map(({ name }) => name).join(', ')}, sizes such as 610x914 or 24x36in, and rolls such as 610xroll`,
    hint: say`A4`,
  });
