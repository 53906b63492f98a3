import { refuseOptions } from '../../files/failure.ts';
import { printJson } from '../../render/json.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { formatLength } from '../../units/formatLength.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { parseLength } from '../../units/parseLength.ts';
import { atLeast, atMost, mm, say, speak } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import type { Unit } from '../../units/unit.ts';
import { parseMaking } from '../../wood/climate.ts';
import { formatPercent, parseMoisture } from '../../wood/moisture.ts';
import { adviseMoisture, movement, parseCut, type SawnWood, widthCoefficient } from '../../wood/movement.ts';
import { ownWood } from '../../wood/ownWood.ts';
import { findWood, SOURCE_NOTES, type Wood } from '../../wood/species.ts';
import type { SeasonOptions } from '../commands/season.ts';
import { readNotation } from '../options/notationOptions.ts';
import { optionReader } from '../options/optionReader.ts';
import { adviceText, terminalLines } from '../report/jointText.ts';

/** One board, and the conditions that it goes from and to, as moisture contents in percent. */
interface Journey extends SawnWood {
  readonly size: number;
  readonly from: number;
  readonly to: number;
}

/** Prints the movement of one board. Throws a Failure with every complaint. */
export const seasonOfBoard = (options: SeasonOptions): void => {
  const unit = readNotation(options, 'mm');
  const journey = readJourney(options, unit);
  process.stdout.write(
    options.json ? printJson(record(journey, unit)) : `${text(journey, options, unit).join('\n')}\n`,
  );
};

/** The range of a board's width, in mm. */
const SIZE = { least: 1, most: 5000 };

const readJourney = (options: SeasonOptions, unit: Notation): Journey => {
  const read = optionReader(options, unitOf(unit));
  const wood = readWood(options, read.complain);
  const cut = read.value('grain', parseCut, 'flatsawn');
  read.need('size', say`the board's width is missing`, say`--size ${mm(180)}`);
  const size = read.value('size', (typed) => readSize(typed, unitOf(unit)));
  read.need('from', say`the conditions in which it was measured are missing`, say`--from 21C/45%`);
  const from = read.value('from', parseMaking);
  read.need('to', say`the conditions that it comes to are missing`, say`--to 21C/70%`);
  const to = read.value('to', parseMoisture);
  if (
    wood === undefined ||
    cut === undefined ||
    size === undefined ||
    from === undefined ||
    to === undefined ||
    read.complaints.length > 0
  )
    return refuseOptions(read.complaints, unit);
  return { wood, cut, size, from, to };
};

const readSize = (typed: string, unit: Unit): Result<number> => {
  const size = parseLength(typed, unit);
  if (!size.ok || (size.value >= SIZE.least && size.value <= SIZE.most)) return size;
  return refuse({
    at: [],
    says: say`a board ${mm(size.value)} wide is out of range; it must be ${atLeast(SIZE.least)} to ${atMost(SIZE.most)}`,
  });
};

/** A pair of figures of a wood of one's own, as it may be typed. */
const PAIRS = { shrinkage: '3.7,7.1', coefficient: '0.00126,0.00248' } as const;

const readWood = (options: SeasonOptions, complain: (complaint: Complaint) => void): Wood | undefined => {
  const { species, shrinkage, coefficient } = options;
  const wrong = (complaint: Complaint): undefined => {
    complain(complaint);
  };
  if (shrinkage !== undefined && coefficient !== undefined)
    return wrong({
      at: ['coefficient'],
      says: say`a wood of your own is given by its shrinkage or by its coefficient, not both`,
    });
  const way = shrinkage === undefined ? 'coefficient' : 'shrinkage';
  const typed = options[way];
  if (typed === undefined) {
    if (species === undefined)
      return wrong({
        at: ['species'],
        says: say`the wood is missing`,
        hint: say`--species "Cherry, black"`,
        remedy: say`give your own wood's shrinkage: --shrinkage ${PAIRS.shrinkage}`,
      });
    const found = findWood(species);
    if (found.ok) return found.value;
    for (const { says, hint } of found.complaints)
      wrong({
        at: ['species'],
        says,
        ...(hint && { hint }),
        remedy: say`${hint ? 'choose' : 'choose one of these,'} one that --woods lists, or give your own wood's shrinkage, radial and tangential: --shrinkage ${PAIRS.shrinkage}`,
      });
    return undefined;
  }
  const pair = readPair(typed, PAIRS[way]);
  const own = pair.ok
    ? ownWood(
        species ?? 'Your own wood',
        way === 'shrinkage' ? { shrinkage: pair.value } : { coefficient: pair.value },
      )
    : pair;
  if (own.ok) return own.value;
  for (const { says } of own.complaints) wrong({ at: [way], says, hint: say`${PAIRS[way]}` });
  return undefined;
};

const readPair = (typed: string, example: string): Result<{ radial: number; tangential: number }> => {
  const parts = typed.split(',').map((part) => (part.trim() === '' ? Number.NaN : Number(part)));
  const [radial, tangential] = parts;
  return radial !== undefined &&
    tangential !== undefined &&
    parts.length === 2 &&
    parts.every(Number.isFinite)
    ? accept({ radial, tangential })
    : refuse({
        at: [],
        says: say`${quote(typed)} is not a pair of figures; it must be radial,tangential, with decimal points`,
        hint: say`${example}`,
      });
};

const changeOf = ({ wood, cut, size, from, to }: Journey): number =>
  movement(size, widthCoefficient(wood, cut), from, to);

/** The change for 1 % of moisture content, in percent of the width. */
const percentOf = ({ wood, cut }: SawnWood): number => 100 * widthCoefficient(wood, cut);

const record = (journey: Journey, unit: Notation) => {
  const { wood, cut, size, from, to } = journey;
  const change = changeOf(journey);
  return {
    from: { mc: from },
    to: { mc: to },
    change,
    size: size + change,
    species: wood.name,
    grain: cut,
    percentPerPercent: percentOf(journey),
    source: SOURCE_NOTES[wood.source],
    advice: adviseMoisture(to, ['to']).map(({ says }) => speak(says, unit)),
  };
};

const text = (journey: Journey, options: SeasonOptions, unit: Notation): string[] => {
  const { wood, cut, size, from, to } = journey;
  const change = changeOf(journey);
  const length = (value: number): string => formatLength(value, unit);
  const moisture = (percent: number, typed = ''): string =>
    `${formatPercent(percent)} moisture content${typed.includes('/') ? ` (${typed.trim()})` : ''}`;
  const outcome =
    change === 0 ? 'no change' : `${length(Math.abs(change))} ${change > 0 ? 'wider' : 'narrower'}`;
  return [
    ...terminalLines(`${wood.name}, ${cut}: ${length(size)} wide at ${moisture(from, options.from)}.`),
    ...terminalLines(`At ${moisture(to, options.to)}: ${length(size + change)}, ${outcome}.`),
    ...terminalLines(
      `Each 1 % of moisture content makes ${Number(percentOf(journey).toFixed(3))} % of the width, a coefficient of ${Number(widthCoefficient(wood, cut).toFixed(5))}: ${SOURCE_NOTES[wood.source]}.`,
    ),
    ...(options.grain === undefined
      ? terminalLines(
          'Taken as flatsawn, which moves more across its width; add --grain quartersawn if it is that.',
        )
      : []),
    ...adviceText(adviseMoisture(to, ['to']), unit),
  ];
};
