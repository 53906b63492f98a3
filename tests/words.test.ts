import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Paper } from '../src/paper/paperSizes.ts';
import { planJsonSchema } from '../src/plan/planJsonSchema.ts';
import { starterPlan } from '../src/plan/starterPlan.ts';
import { boardSheets } from '../src/project/boardSheets.ts';
import { breakOutProject } from '../src/project/breakOutProject.ts';
import { readProject } from '../src/project/readProject.ts';
import { sheetsOf } from '../src/project/sheetsOf.ts';
import { halfpin } from './cli/program.ts';
import { value } from './value.ts';

/** What is never said, as one thing has one name, and what is said instead. Plan keys and options keep their names. */
const NEVER: readonly (readonly [words: RegExp, instead: string])[] = [
  [/\b(?:bottom|top|base|ref\.) edges?\b/iu, 'lower edge, upper edge, reference edge'],
  [/\bgroove'?’?s? top\b/iu, "groove's upper edge"],
  [/\bunder side\b/iu, 'underside'],
  [/\binner face\b/iu, 'inside face'],
  [/\b(?:a|each|the|its) tail's edges?\b/iu, 'side of a tail'],
  [/\bsockets?'?’? bottoms?\b/iu, 'floor of a socket'],
  [/\bat (?:its|their) narrow(?:est)?(?: end)?\b|\bnarrow width\b|\bpin, narrow\b/iu, 'pin width'],
  [/\bat (?:its|their) tips?\b|\btip width\b/iu, 'tail width'],
  [/\boutermost pins?\b/iu, 'half pin'],
  [/\bouter spaces?\b/iu, 'half space'],
  [/(?<!sliding )\bbevel\b/iu, 'slope'],
  [/\bshallower than 1:|\bat (?:most|least) 1:\d/iu, 'gentler, steeper'],
  [/\bset deep\b|\bset \S+ mm deep\b/iu, 'joint depth'],
  [/\boverlaps?\b/iu, 'lip'],
  [/\bleft free\b|\bfree \d|\bfree at\b/iu, 'clearance'],
  [/\bstands? (?:out|proud|over)\b|(?<!--)\bshy\b/iu, 'proud, below flush'],
  [/\bhow many\b|\bmake [\d×…]|(?<![\d.…] )×\s?\d(?! ×)/u, 'quantity'],
  [/(?<!-)\bpieces?\b(?!:)/iu, 'part, template'],
  [/\bstrips? alone\b|\bseparate strip\b|\bface as a strip\b/iu, 'flat template'],
  [/\bpages? of (?:A\d|Letter)/u, 'sheet'],
  [/\btarget\b(?!:)/iu, "set's tail width"],
  [/\bkeeps? to\b/iu, 'matched to'],
  [/\bthe family\b/iu, 'set'],
  [/\bcorner of its own\b/iu, 'single corner'],
  [/\bcut length\b/iu, 'finished length'],
  [/(?:^| {2})thick(?: {2}|$)/u, 'thickness'],
  [/(?<!-)\bspecies\b(?!:)/iu, 'wood'],
  [/\berrs?\b|\bleans?\b|\baskew\b|\bprint true\b/iu, 'printer error, skew'],
  [/\bstraight strips\b|\bno wind\b/iu, 'twist, winding sticks'],
  [/\blaid out\b|\blay out\b|\blayouts?\b/iu, 'set out, setting-out'],
  [/\btake (?:it )?(?:out|away)\b|\banother like it\b/iu, 'remove, copy'],
  [/\bcomplaints?\b/iu, 'fault'],
  [/\bbase l\.|\bp\. \d|(?<![-.\w"])d[12]\b(?!:| <|")/u, 'written out'],
  [/; try (?:at (?:most|least)|leaving|taking|another|other|a |an |more|fewer|less)/iu, 'what can be typed'],
  [/\bgo(?:es)? on\b|\banew\b|\btold\b|\btells?\b|\bmend(?:ing|ed|s)?\b/iu, 'a literal verb'],
];

/** A text, and where a user reads it. */
type Said = readonly [where: string, text: string];

const faults = (texts: readonly Said[]): string[] =>
  texts.flatMap(([where, text]) =>
    NEVER.flatMap(([words, instead]) => {
      const found = words.exec(text);
      if (found === null) return [];
      const around = text.slice(Math.max(0, found.index - 40), found.index + 60);
      return [`${where}: "${around}" -> ${instead}`];
    }),
  );

const lines = (where: string, text: string): Said[] => text.split('\n').map((line) => [where, line]);

/** The sentences in a program's text: literals with a blank, values in them left out. Comments are not read. */
const literals = (text: string): string[] =>
  [
    ...text
      .replaceAll(/\/\*[\s\S]*?\*\//gu, '')
      .replaceAll(/^\s*\/\/.*$/gmu, '')
      .matchAll(/'((?:[^'\\\n]|\\.)*)'|"((?:[^"\\\n]|\\.)*)"|`((?:[^`\\]|\\.)*)`/gu),
  ]
    .map(([, single, double, template]) => single ?? double ?? template ?? '')
    .map(withoutValues)
    .filter((literal) => literal.includes(' '));

/** From the inside out, as a value may hold braces of its own. */
const withoutValues = (literal: string): string => {
  const left = literal.replaceAll(/\$?\{[^{}]*\}/gu, '…');
  return left === literal ? left : withoutValues(left);
};

const EXAMPLES = readdirSync('examples')
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => join('examples', name));
const projectOf = (plan: string) => {
  const project = readProject(readFileSync(plan, 'utf8'));
  if (!project.ok) throw new Error(`${plan} cannot be made`);
  return project.value;
};
const A4: Paper = { name: 'A4', width: 210, height: 297, roll: false };

describe('what is never said is not said', () => {
  it('in messages and labels, as the program holds them', () => {
    const files = readdirSync('src', { withFileTypes: true, recursive: true })
      .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
      .map((entry) => join(entry.parentPath, entry.name));
    expect(files.length).toBeGreaterThan(200);
    expect(
      faults(files.flatMap((file) => literals(readFileSync(file, 'utf8')).map((text): Said => [file, text]))),
    ).toEqual([]);
  });

  it('in the page', () => {
    expect(faults(lines('page.html', readFileSync('src/page/page.html', 'utf8')))).toEqual([]);
  });

  it('in the help of any command', () => {
    const commands = [...halfpin(['--help']).out.matchAll(/^ {2}([a-z][a-z-]+)/gmu)].map(
      ([, name]) => name ?? '',
    );
    expect(commands.length).toBeGreaterThan(9);
    const helps = ['', ...commands].map(
      (name) => [name, halfpin(name === '' ? ['--help'] : [name, '--help']).out] as const,
    );
    expect(faults(helps.flatMap(([name, text]) => lines(`${name} --help`, text)))).toEqual([]);
  });

  it('in what is printed of the examples', () => {
    expect(
      faults(
        EXAMPLES.flatMap((plan) =>
          ['lay', 'parts', 'compare', 'season'].flatMap((command) =>
            lines(`${command} ${plan}`, halfpin([command, plan]).out),
          ),
        ),
      ),
    ).toEqual([]);
  });

  it('in what is printed of boards', () => {
    const plan = 'examples/haberdashery-chest-boards.yaml';
    const short = readFileSync(plan, 'utf8').replace(
      / {2}- name: Cherry 2[\s\S]*?(?= {2}- name: Ash 1)/u,
      '',
    );
    const at = mkdtempSync(join(tmpdir(), 'halfpin-'));
    writeFileSync(join(at, 'short.yaml'), short);
    const hasty = ['--effort', '0.1'];
    const lacking = halfpin(['breakout', 'short.yaml', ...hasty], at);
    rmSync(at, { recursive: true });
    expect(lacking.status).toBe(3);
    const printed = [halfpin(['breakout', plan, ...hasty]).out, lacking.out, lacking.err];
    expect(faults(printed.flatMap((text) => lines('breakout', text)))).toEqual([]);
  });

  it('in the starter plan, or beside a key of the schema', () => {
    const described: Said[] = [];
    JSON.stringify(planJsonSchema(), (key, each: unknown) => {
      if (key === 'description') described.push(['schema', String(each)]);
      return each;
    });
    expect(described.length).toBeGreaterThan(40);
    expect(
      faults([...described, ...(['mm', 'in'] as const).flatMap((unit) => lines('start', starterPlan(unit)))]),
    ).toEqual([]);
  });

  it('on any sheet of the examples', () => {
    const texts = EXAMPLES.flatMap((plan) => {
      const project = projectOf(plan);
      const broken = breakOutProject(project, { effort: 0.1 });
      return [
        ...value(sheetsOf(project, { paper: A4 })).map((set) => ({
          kind: set.kind,
          pages: set.pages(),
        })),
        ...(broken === undefined
          ? []
          : [{ kind: 'board sheets', pages: value(boardSheets(project, broken, { paper: A4 })).pages() }]),
      ].flatMap(({ kind, pages }) =>
        [...pages].flatMap(({ placed }) =>
          placed.flatMap(({ drawing }) =>
            drawing.marks.flatMap((mark): Said[] =>
              mark.kind === 'text' ? [[`${plan}, ${kind}`, mark.text]] : [],
            ),
          ),
        ),
      );
    });
    expect(texts.length).toBeGreaterThan(1000);
    expect(texts.some(([where]) => where.endsWith('board sheets'))).toBe(true);
    expect(faults(texts)).toEqual([]);
  });
});
