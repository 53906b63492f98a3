import { describe, expect, it } from 'vitest';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { type Paper, parsePaper } from '../../src/paper/paperSizes.ts';
import { chooseOnly } from '../../src/project/only.ts';
import { type Project, projectOfCorner } from '../../src/project/project.ts';
import { sheetsOf } from '../../src/project/sheetsOf.ts';
import { USUAL_SAWING } from '../../src/stock/usualSawing.ts';
import type { Notation } from '../../src/units/notation.ts';
import { drawer, inOpening } from '../drawer/chest.ts';
import { wordsOf } from '../sheets/sheetFaults.ts';
import { value } from '../value.ts';

const paper = (name: string): Paper => value(parsePaper(name));

const cornerOf = (pinBoard: number) =>
  value(
    projectOfCorner({
      name: 'Carcase',
      units: 'mm',
      spec: { kind: 'through', width: 430, tailBoard: 19, pinBoard, spacing: { kind: 'even' } },
    }),
  );
const carcase = cornerOf(19);

it('a corner of no drawer has templates and a bench sheet, and their titles name it', () => {
  const sheets = value(sheetsOf(carcase, { paper: paper('A4') }));
  expect(sheets.map(({ kind, title }) => [kind, title])).toEqual([
    ['templates', 'Carcase: templates'],
    ['bench', 'Carcase: bench'],
  ]);
});

it('pages are as many as were counted', () => {
  const [templates] = value(sheetsOf(carcase, { paper: paper('A4') }));
  expect([...(templates?.pages() ?? [])]).toHaveLength(templates?.count ?? 0);
});

it('papers are compared by the pages that they would take', () => {
  const [templates] = value(sheetsOf(carcase, { paper: paper('A4') }));
  // 430 mm high: in parts on A4; four pieces of under 100 mm stand side by side on A2.
  const [a4 = 0, a2 = 0] = ['A4', 'A2'].map((name) => templates?.countOn(paper(name)));
  expect(a4).toBe(templates?.count);
  expect(a2).toBe(1);
  expect(a4).toBeGreaterThan(a2);
});

it('a paper that no part of a piece fits has no number of pages', () => {
  const [templates] = value(sheetsOf(cornerOf(120), { paper: paper('A2') }));
  // The band round the pin board's end is 120 mm wide, and is never parted.
  expect(templates?.countOn(paper('90x100'))).toBeUndefined();
});

const chest = (units: Notation = 'mm'): Project => ({
  name: 'Chest',
  units,
  set: value(
    layOutSet([
      drawer(),
      inOpening(280, 110, 420, { name: 'Thread' }),
      inOpening(574, 190, 420, { name: 'Cloth' }),
    ]),
  ),
  joints: [],
  sawing: USUAL_SAWING.mm,
  cuts: new Map(),
});

describe('bench sheets and comparison', () => {
  const papersOf = (name: string, units: Notation = 'mm', bench?: string) =>
    value(
      sheetsOf(chest(units), {
        paper: paper(name),
        kinds: ['guides', 'bench', 'comparison'],
        ...(bench && { benchPaper: paper(bench) }),
      }),
    ).map((set) => [set.kind, set.paper.name]);

  it.each<[string, Notation, string]>([
    ['A4', 'mm', 'A4'],
    ['A5', 'in', 'A5'],
    ['Legal', 'mm', 'Legal'],
    ['297x210', 'mm', '297x210mm'],
    ['A3', 'mm', 'A4'],
    ['610xroll', 'mm', 'A4'],
    ['24x36in', 'mm', 'A4'],
    ['A3', 'in/32', 'Letter'],
    ['610xroll', 'in', 'Letter'],
    ['Tabloid', 'mm', 'Letter'],
  ])('are of a size to hold in a hand beside templates on %s in %s: %s', (name, units, held) => {
    expect(papersOf(name, units)).toEqual([
      ['bench', held],
      ['comparison', held],
    ]);
  });

  it('are on the paper given where there are no others', () => {
    const sheets = value(sheetsOf(chest(), { paper: paper('A3'), kinds: ['bench'] }));
    expect(sheets.map((set) => set.paper.name)).toEqual(['A3']);
  });

  it('are drawn on the paper that they are said to be on, which can be chosen', () => {
    expect(papersOf('A3', 'in', 'A3').at(-1)).toEqual(['comparison', 'A3']);
    for (const set of value(sheetsOf(chest(), { paper: paper('A3'), benchPaper: paper('A5') })))
      for (const { width, height } of set.pages())
        expect([width, height]).toEqual(set.kind === 'templates' ? [297, 420] : [148, 210]);
  });

  it('are refused at their own paper, once for all of them', () => {
    const lean = { printer: 'office', error: { x: 1, y: 1, skew: 0.03 } };
    const sheets = sheetsOf(chest(), {
      paper: paper('A4'),
      benchPaper: paper('90xroll'),
      correction: lean,
    });
    expect(sheets.ok || sheets.complaints.map(({ at }) => at)).toEqual([['benchPaper']]);
  });
});

describe('sheets of some drawers', () => {
  const textOf = (project: Project, kind: string): string =>
    value(sheetsOf(project, { paper: paper('A4') }))
      .filter((set) => set.kind === kind)
      .flatMap((set) => [...set.pages()])
      .flatMap(({ placed }) => placed.map(({ drawing }) => wordsOf(drawing)))
      .join(' ');

  it('say so in their titles and at the foot of every page', () => {
    const some = value(chooseOnly(chest(), 'Cloth,Buttons'));
    const [templates, cuttingList, bench] = value(sheetsOf(some, { paper: paper('A4') }));
    expect(templates?.title).toBe('Chest, only Cloth, Buttons: templates');
    expect(cuttingList?.title).toBe('Chest, only Cloth, Buttons: cutting list');
    expect(bench?.count).toBe(2);
    expect(textOf(some, 'templates')).toContain('Chest, only Cloth, Buttons page');
  });

  it("compare those drawers alone, to the whole set's tail width", () => {
    const whole = chest();
    const [target] = /tails of [\d.]+\s?mm/u.exec(textOf(whole, 'comparison')) ?? [];
    // Both have two tails of their own widths.
    const text = textOf(value(chooseOnly(whole, 'Buttons,Thread')), 'comparison');
    expect(target).toBeDefined();
    expect(text.replaceAll('\u00A0', ' ')).toContain(target?.replaceAll('\u00A0', ' '));
    expect(text).not.toContain('Cloth');
    expect(text).toMatch(/(\d\.\d\d) times/u);
  });

  it('compare none where one is left', () => {
    const one = value(chooseOnly(chest(), 'Buttons'));
    expect(value(sheetsOf(one, { paper: paper('A4') })).map(({ kind }) => kind)).toEqual([
      'templates',
      'cutting-list',
      'bench',
    ]);
  });

  it('have no bench sheet of a drawer that is drawn in part, and no comparison with it', () => {
    const some = value(chooseOnly(chest(), 'Cloth/side,Buttons'));
    expect(value(sheetsOf(some, { paper: paper('A4') }))[1]?.count).toBe(1);
    const part = value(chooseOnly(chest(), 'Cloth/side'));
    expect(value(sheetsOf(part, { paper: paper('A4') })).map(({ kind }) => kind)).toEqual(['templates']);
  });
});

describe('the contents', () => {
  const leaves = (project: Project, name: string): number => {
    const [templates] = value(sheetsOf(project, { paper: paper(name), kinds: ['templates', 'contents'] }));
    return Math.min(...[...(templates?.pagesOf.values() ?? [])].flat()) - 1;
  };

  it('are left out where all templates share a page', () => {
    const one = value(chooseOnly(chest(), 'Buttons'));
    expect(leaves(one, 'A4')).toBe(0);
    expect(leaves(chest(), 'A4')).toBe(1);
  });

  it('of sixty templates are one page of A4, and of forty one page of Letter', () => {
    const many = (drawers: number): Project => ({
      ...chest(),
      set: value(
        layOutSet(
          Array.from({ length: drawers }, (_, i) =>
            inOpening(280, 76 + 9 * i, 420, { name: `Drawer ${i}`, count: i + 1 }),
          ),
        ),
      ),
    });
    // Eight templates a drawer, and four of a single corner.
    expect(leaves({ ...many(7), joints: carcase.joints }, 'A4')).toBe(1);
    expect(leaves(many(5), 'Letter')).toBe(1);
  });
});
