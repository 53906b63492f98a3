import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parsePaper } from '../src/paper/paperSizes.ts';
import { planJsonSchema } from '../src/plan/planJsonSchema.ts';
import { starterPlan } from '../src/plan/starterPlan.ts';
import { readProject } from '../src/project/readProject.ts';
import { sheetsOf } from '../src/project/sheetsOf.ts';
import { halfpin } from './cli/program.ts';
import { value } from './value.ts';

/** Words that are not said, and what is said instead: one thing has one name. */
const NEVER: readonly (readonly [word: RegExp, instead: string])[] = [
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
  [/\bstands? (?:out|proud|over)\b|\bshy\b(?! <)/iu, 'proud, below flush'],
  [/\bhow many\b|\bmake [\d×]|(?<![\d.] )×\s?\d(?! ×)/u, 'quantity'],
  [/\bpieces?\b/iu, 'part, template'],
  [/\bstrips? alone\b|\bseparate strip\b|\bface as a strip\b/iu, 'flat template'],
  [/\bpages? of (?:A\d|Letter)|\bpages: templates/u, 'sheet'],
  [/\btarget\b/iu, "set's tail width"],
  [/\bkeeps? to\b/iu, 'matched to'],
  [/\bcut length\b/iu, 'finished length'],
  [/\bthick\b(?=\s*$|\s{2})/iu, 'thickness'],
  [/\bspecies\b/iu, 'wood'],
  [/\berrs?\b|\bleans?\b|\baskew\b|\bprint true\b/iu, 'printer error, skew'],
  [/\bstraight strips\b|\bno wind\b/iu, 'twist, winding sticks'],
  [/\blaid out\b|\blay out\b|\blayouts?\b/iu, 'set out, setting-out'],
  [/\btake (?:it )?(?:out|away)\b|\banother like it\b/iu, 'remove, copy'],
  [/\bcomplaints?\b/iu, 'fault'],
  [/\bbase l\.|\bp\. \d|\bd[12]\b/u, 'written out'],
  [/; try (?:at (?:most|least)|leaving|taking|another|other|a |an |more|fewer|less)/iu, 'what to type'],
  [/\bgo(?:es)? on\b|\banew\b|\btold\b|\btells?\b|\bmend(?:ing|ed|s)?\b/iu, 'a literal verb'],
];

const sources = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => join(entry.parentPath, entry.name));

/** Literals of a program's text that are sentences: those with a blank. Comments are left out. */
const literals = (text: string): string[] =>
  [
    ...text
      .replaceAll(/\/\*[\s\S]*?\*\//gu, '')
      .replaceAll(/^\s*\/\/.*$/gmu, '')
      .matchAll(/'((?:[^'\\\n]|\\.)*)'|"((?:[^"\\\n]|\\.)*)"|`((?:[^`\\]|\\.)*)`/gu),
  ]
    .map((match) => (match[1] ?? match[2] ?? match[3] ?? '').replaceAll(/\$\{[^{}]*\}/gu, '…'))
    .filter((literal) => / /u.test(literal));

const said = (texts: Iterable<readonly [where: string, text: string]>): string[] =>
  [...texts].flatMap(([where, text]) =>
    NEVER.flatMap(([word, instead]) => {
      const found = word.exec(text);
      return found === null
        ? []
        : [`${where}: "${text.slice(Math.max(0, found.index - 40), found.index + 60)}" -> ${instead}`];
    }),
  );

describe('what a user reads', () => {
  it('in messages and labels', () => {
    const texts = sources('src')
      .filter((file) => !file.includes('/build/'))
      .flatMap((file) => literals(readFileSync(file, 'utf8')).map((text) => [file, text] as const));
    expect(said(texts)).toEqual([]);
  });
  it('in the page', () => {
    expect(
      said(
        readFileSync('src/page/page.html', 'utf8')
          .split('\n')
          .map((l, i) => [`page.html:${i + 1}`, l] as const),
      ),
    ).toEqual([]);
  });
  it('in help', () => {
    const commands = [
      'lay',
      'draw',
      'compare',
      'parts',
      'proof',
      'trial',
      'season',
      'start',
      'schema',
      'printers',
      'page',
    ];
    expect(
      said(
        ['', ...commands]
          .map((c) => [c, halfpin([...(c ? [c] : []), '--help']).out] as const)
          .flatMap(([c, t]) => t.split('\n').map((l) => [c, l] as const)),
      ),
    ).toEqual([]);
  });
  it('in output', () => {
    const ex = readdirSync('examples')
      .filter((n) => n.endsWith('.yaml'))
      .map((n) => join('examples', n));
    const t = ex.flatMap((e) =>
      ['lay', 'parts', 'compare', 'season'].map((c) => [`${c} ${e}`, halfpin([c, e]).out] as const),
    );
    expect(said(t.flatMap(([c, x]) => x.split('\n').map((l) => [c, l] as const)))).toEqual([]);
  });
  it('in schema and starter', () => {
    const d: string[] = [];
    JSON.stringify(planJsonSchema(), (k, v) => {
      if (k === 'description') d.push(v);
      return v;
    });
    expect(
      said([
        ...d.map((x) => ['schema', x] as const),
        ...(['mm', 'in'] as const).flatMap((u) =>
          starterPlan(u)
            .split('\n')
            .map((l) => ['starter', l] as const),
        ),
      ]),
    ).toEqual([]);
  });
  it('on sheets', () => {
    const ex = readdirSync('examples')
      .filter((n) => n.endsWith('.yaml'))
      .map((n) => join('examples', n));
    const t = ex.flatMap((e) => {
      const project = value(readProject(readFileSync(e, 'utf8')) as never) as never;
      const paper = value(parsePaper('A4', 'mm') as never) as never;
      return (
        value(sheetsOf(project, { paper }) as never) as {
          pages(): Iterable<{
            placed: readonly { drawing: { marks: readonly { kind: string; text?: string }[] } }[];
          }>;
        }[]
      ).flatMap((set) =>
        [...set.pages()].flatMap((p) =>
          p.placed.flatMap(({ drawing }) =>
            drawing.marks.flatMap((m) => (m.text ? [[e, m.text] as const] : [])),
          ),
        ),
      );
    });
    expect(said(t)).toEqual([]);
  });
});
