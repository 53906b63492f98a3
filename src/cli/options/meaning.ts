import type { Command } from 'commander';
import { refuseOptions } from '../../files/failure.ts';
import { OWN_LENGTH_KEYS } from '../../joint/kinds/kinds.ts';
import { KEYS_OF_SPACINGS } from '../../joint/spacingWish.ts';
import type { Complaint } from '../../units/complaint.ts';
import { type Phrase, say } from '../../units/phrase.ts';

/** What is typed after a command's name. */
interface Line {
  readonly plan: string | undefined;
  /** Whether an option is typed. */
  has(option: string): boolean;
  /** The words of an option that is a list, in small letters; undefined where it is not typed. */
  words(option: string): readonly string[] | undefined;
}

/** Options that have no meaning where a condition holds. */
interface Rule {
  readonly options: readonly string[];
  /** Everywhere in the command unless given: then they are not in its help either. */
  readonly where?: (line: Line) => boolean;
  readonly says: Phrase;
  readonly hint?: Phrase;
  readonly remedy?: Phrase;
}

/** The words between commas, in small letters. */
export const commaWords = (typed: string): string[] =>
  typed.split(',').map((word) => word.trim().toLowerCase());

/** Whether draw's PDF is made: the usual kind, and what a word that is no kind may have meant. */
const printed = (line: Line): boolean =>
  line.words('as')?.some((kind) => kind !== 'svg' && kind !== 'dxf') ?? true;

const drawnAs = (line: Line, kind: string): boolean => line.words('as')?.includes(kind) ?? false;

/** Whether draw prints a kind of sheet. */
const sheet = (line: Line, kind: string): boolean =>
  printed(line) && (line.words('sheets')?.includes(kind) ?? true);

const measured = (line: Line): boolean =>
  ['measuredX', 'measuredY', 'measuredD1', 'measuredD2'].some((option) => line.has(option));

/** Whether proof prints its lengths alone. */
const lengthsOnly = (line: Line): boolean => line.has('json') && !line.has('out') && !measured(line);

const withoutFolder = (options: readonly string[]): Rule => ({
  options,
  where: (line) => !line.has('out') && !line.has('woods'),
  says: say`this is for files, and none is written without --out`,
  remedy: say`give a folder by --out, or remove the option`,
});

const REMOVE = say`remove the option`;

const NO_GUIDES: Rule = {
  options: ['pinBush', 'bush'],
  says: say`a bush is for guides, and none are drawn here`,
  remedy: REMOVE,
};

/** The kinds of sheet that --bench-paper is for. */
export const HAND_SHEETS: readonly string[] = [
  'cutting-list',
  'bench',
  'comparison',
  'proportion',
  'corners',
];

/** Where no guides are drawn, the bush for them may be that of fingers. */
const NO_GUIDE_BUSHES: readonly Rule[] = [
  { ...NO_GUIDES, options: ['pinBush'] },
  { ...NO_GUIDES, options: ['bush'], where: (line) => !line.has('fingersTogether') },
];

/** For each command: what has no meaning beside what. */
const MEANINGLESS: Readonly<Record<string, readonly Rule[]>> = {
  draw: [
    {
      options: ['paper', 'margin', 'printer'],
      where: (line) => !printed(line),
      says: say`an SVG or a DXF is one template at its true size, without a page; a PDF must be among --as`,
      hint: say`--as pdf,svg`,
    },
    {
      options: ['send'],
      where: (line) => !printed(line),
      says: say`only a PDF goes to a queue; it must be among --as`,
      hint: say`--as pdf,svg`,
    },
    {
      options: ['sheets'],
      where: (line) => !printed(line),
      says: say`sheets are printed from a PDF; it must be among --as`,
      hint: say`--as pdf,svg`,
    },
    {
      options: ['paper'],
      where: (line) =>
        line.has('benchPaper') &&
        printed(line) &&
        (line.words('sheets')?.every((kind) => HAND_SHEETS.includes(kind)) ?? false),
      says: say`every sheet here is on the paper of --bench-paper`,
      remedy: say`remove one of them`,
    },
    {
      options: ['copies'],
      where: (line) => !sheet(line, 'templates'),
      says: say`it is about the templates of a PDF, and none are printed here`,
      remedy: REMOVE,
    },
    {
      options: ['boards', 'flat', 'rods'],
      where: (line) => !sheet(line, 'templates') && !drawnAs(line, 'svg'),
      says: say`it chooses among templates, and none are drawn here`,
      remedy: REMOVE,
    },
    {
      options: ['only'],
      where: (line) => line.plan === undefined,
      says: say`it chooses drawers of a plan, and there is no plan here`,
      remedy: REMOVE,
    },
    {
      ...NO_GUIDES,
      where: (line) =>
        !line.has('fingersTogether') &&
        !sheet(line, 'guides') &&
        !drawnAs(line, 'svg') &&
        !drawnAs(line, 'dxf'),
    },
  ],
  'set-out': NO_GUIDE_BUSHES,
  compare: [
    ...NO_GUIDE_BUSHES,
    {
      options: ['fingersBar'],
      says: say`the look of a corner does not depend on the bar that carries fingers`,
      remedy: REMOVE,
    },
    {
      options: ['straight'],
      says: say`the look of a corner does not depend on the straight cutter`,
      remedy: REMOVE,
    },
    withoutFolder(['force', 'paper', 'margin', 'font']),
    {
      options: ['widths'],
      where: (line) => line.plan !== undefined,
      says: say`a plan's corners are as wide as it says`,
      remedy: say`give a plan or widths, not both`,
    },
    {
      options: ['width'],
      says: say`the widths to compare are given by --widths`,
      remedy: REMOVE,
    },
    {
      options: ['name'],
      where: (line) => line.has('widths') && !line.has('out'),
      says: say`only a sheet has a name, and none is drawn without --out`,
      remedy: REMOVE,
    },
    {
      options: ['graded', 'gradedFrom'],
      where: (line) => line.has('widths') && !line.has('out'),
      says: say`the table shows mean widths, which a grade leaves as they are`,
      remedy: say`draw the corners by --out, or remove the option`,
    },
    {
      options: ['spacing', 'smallPin', 'closer', 'closerTails'],
      where: (line) =>
        line.has('widths') &&
        !line.has('out') &&
        ['hounds-tooth', 'closer-edges'].some((spacing) => line.words('spacing')?.includes(spacing)),
      says: say`the table shows mean widths, which this spacing leaves as they are`,
      remedy: say`draw the corners by --out, or remove the option`,
    },
    {
      options: ['units', 'fractions'],
      where: (line) => line.plan !== undefined && line.has('json') && !line.has('out'),
      says: say`the lengths of --json are in mm`,
      remedy: say`remove one of them`,
    },
  ],
  parts: [
    {
      options: ['csv'],
      where: (line) => line.has('json'),
      says: say`give --csv or --json, not both`,
    },
    {
      options: ['cuttingList'],
      where: (line) => line.has('json'),
      says: say`--json holds the cutting list in any case`,
      remedy: REMOVE,
    },
  ],
  breakout: [
    {
      options: ['csv'],
      where: (line) => line.has('json'),
      says: say`give --csv or --json, not both`,
    },
    withoutFolder(['force', 'paper', 'margin']),
  ],
  movement: [
    {
      options: [
        ...['units', 'fractions', 'out', 'force', 'paper', 'margin', 'font'],
        ...['species', 'shrinkage', 'coefficient', 'grain', 'size', 'from', 'to'],
      ],
      where: (line) => line.has('woods'),
      says: say`--woods lists every wood as it is, and nothing else`,
      remedy: say`remove one of them`,
    },
    {
      options: ['woods'],
      where: (line) => line.plan !== undefined,
      says: say`this lists every wood, and reads no plan`,
      remedy: say`remove the option, or the plan`,
    },
    {
      options: ['out'],
      where: (line) => line.plan === undefined && !line.has('woods'),
      says: say`pictures are drawn of the drawers of a plan`,
      remedy: say`give one`,
    },
    withoutFolder(['force', 'paper', 'margin', 'font']),
  ],
  trial: [
    {
      options: ['joint'],
      where: (line) => line.plan === undefined,
      says: say`there is no plan to look it up in`,
      remedy: say`give the plan too`,
    },
    {
      options: ['at'],
      where: (line) => !line.has('log') && !line.has('byHand') && !line.has('cutterAngle'),
      says: say`the guide's position is compared with earlier trials, and there is no log of them`,
      hint: say`--log trials.txt`,
      remedy: REMOVE,
    },
    withoutFolder(['force']),
  ],
  page: [
    {
      options: ['out', 'open'],
      where: (line) => line.has('site'),
      says: say`a site is a folder for a web server, not one file to open`,
      remedy: say`remove one of them`,
    },
  ],
  proof: [
    {
      options: ['out', 'force'],
      where: measured,
      says: say`no sheet is drawn where its measures are given`,
      remedy: REMOVE,
    },
    {
      options: ['printer'],
      where: measured,
      says: say`a corrected sheet does not show the printer error`,
      remedy: say`measure an uncorrected one`,
    },
    {
      options: ['force', 'printer'],
      where: lengthsOnly,
      says: say`--json without --out prints the lengths and draws no sheet`,
      remedy: say`give a folder by --out, or remove the option`,
    },
    {
      options: ['save'],
      where: (line) => !measured(line),
      says: say`there is nothing to save yet`,
      remedy: say`give what you measured, --measured-x and --measured-y`,
    },
  ],
};

/** The keys of a plan that say what these options say, and stand in their place. */
const IN_PLAN: Readonly<Record<string, string>> = {
  name: 'name',
  kind: 'joint.kind',
  width: 'the opening or size of a drawer',
  tailBoard: 'stock.side.thickness',
  pinBoard: 'stock.front.thickness',
  ...Object.fromEntries(OWN_LENGTH_KEYS.map((key) => [key, `joint.${key}`])),
  slope: 'joint.slope',
  tails: 'joint.tails',
  pin: 'joint.pin',
  pins: 'joint.pins',
  halfPin: 'joint.halfPin',
  graded: 'joint.graded',
  gradedFrom: 'joint.graded.from',
  spacing: 'joint.spacing',
  ...Object.fromEntries(KEYS_OF_SPACINGS.map((key) => [key, `joint.${key}`])),
  shoulder: 'joint.shoulder',
  shoulderWidth: 'joint.shoulderWidth',
  mitre: 'joint.mitre',
  proud: 'joint.proud',
  chisel: 'joint.chisel',
  pitch: 'joint.tails',
  cutterDiameter: 'cutter.diameter',
  cutterAngle: 'cutter.angle',
  cutterLength: 'cutter.length',
  cutterNeck: 'cutter.neck',
  fingersTogether: 'fingers.together',
  fingersBush: 'fingers.bush',
  fingersPairs: 'fingers.pairs',
  fingersBar: 'fingers.bar',
  species: 'stock.side.species',
  shrinkage: 'woods',
  coefficient: 'woods',
  grain: 'stock.side.grain',
  size: 'the opening or size of a drawer',
  from: 'climate.making',
  to: 'climate.driest and climate.dampest',
};

/** Complaints of options that are typed beside a plan, which says itself what they say. */
export const saidByPlan = (options: object): Complaint[] =>
  Object.entries(options).flatMap(([option, typed]) => {
    const key = IN_PLAN[option];
    return key === undefined || typed === undefined
      ? []
      : [
          {
            at: [option],
            says: say`a plan says this itself`,
            remedy: say`change ${key} there, or remove the option or the plan`,
          },
        ];
  });

/** What is typed of a command without a meaning beside the rest, each option once. */
const withoutMeaning = (command: Command): Complaint[] => {
  const typed: Readonly<Record<string, unknown>> = command.opts();
  const has = (option: string): boolean => command.getOptionValueSource(option) === 'cli';
  const line: Line = {
    plan: command.args[0],
    has,
    words: (option) => (has(option) ? commaWords(String(typed[option])) : undefined),
  };
  const told = new Map<string, Complaint>();
  for (const { options, where, ...complaint } of MEANINGLESS[command.name()] ?? [])
    for (const option of options)
      if (has(option) && !told.has(option) && (where?.(line) ?? true))
        told.set(option, { at: [option], ...complaint });
  return [...told.values()];
};

/** Makes a program refuse, before a command runs, each option that is typed twice, or has no meaning beside the rest. */
export const refuseMeaningless = (program: Command): void => {
  const counts = new Map<string, number>();
  for (const command of program.commands)
    for (const option of command.options) {
      const key = option.attributeName();
      command.on(`option:${option.name()}`, () => counts.set(key, (counts.get(key) ?? 0) + 1));
      if (MEANINGLESS[command.name()]?.some(({ options, where }) => !where && options.includes(key)))
        option.hideHelp();
    }
  program.hook('preAction', (_, command) => {
    const repeated = [...counts].flatMap(([option, count]): Complaint[] =>
      count < 2 ? [] : [{ at: [option], says: say`this is given ${count} times`, remedy: say`give it once` }],
    );
    const wrong = [...repeated, ...withoutMeaning(command)];
    if (wrong.length > 0) refuseOptions(wrong, 'mm');
  });
};
