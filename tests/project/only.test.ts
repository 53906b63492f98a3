import { describe, expect, it } from 'vitest';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { guidesOf } from '../../src/project/guidesOf.ts';
import { chooseOnly, wholeDrawers } from '../../src/project/only.ts';
import { templateCorners } from '../../src/project/piecesOf.ts';
import { type Project, withCuts } from '../../src/project/project.ts';
import { USUAL_SAWING } from '../../src/stock/usualSawing.ts';
import { sentence } from '../../src/units/complaint.ts';
import { drawer, inOpening } from '../drawer/chest.ts';
import { CUTTER } from '../router/example.ts';
import { value } from '../value.ts';
import { singleCorner } from './singleCorner.ts';

const carcase = singleCorner('Carcase', {
  kind: 'through',
  width: 430,
  tailBoard: 19,
  pinBoard: 19,
  spacing: { kind: 'even' },
});

const projectOf = (...names: string[]): Project => ({
  name: 'Chest',
  units: 'mm',
  set: value(layOutSet(names.map((name, i) => drawer({ name, count: i + 1 })))),
  joints: [carcase],
  sawing: USUAL_SAWING.mm,
  cuts: new Map(),
});

/** The boards that are drawn of each corner: `Buttons x1 A: tail, pin`. */
const drawn = (project: Project): string[] =>
  templateCorners(project).map(
    ({ item, count, letter, boards }) => `${item} x${count} ${letter}: ${boards.join(', ')}`,
  );
const items = (project: Project, typed: string): string[] => [
  ...new Set(templateCorners(value(chooseOnly(project, typed))).map(({ item }) => item)),
];
const complaints = (project: Project, typed: string): string[] => {
  const chosen = chooseOnly(project, typed);
  return chosen.ok ? [] : chosen.complaints.map((each) => sentence(each, 'mm'));
};

describe('what is drawn of a project', () => {
  const chest = projectOf('Buttons', 'Thread', 'Ribbon');

  it('is the drawers and single corners chosen, in any capitals and with any blanks', () => {
    expect(items(chest, ' carcase,THREAD')).toEqual(['Thread', 'Carcase']);
  });

  it('counts of equal drawers those chosen alone', () => {
    // Buttons is made once, Thread twice, Ribbon three times.
    expect(drawn(value(chooseOnly(chest, 'Ribbon,Buttons'))).slice(0, 1)).toEqual([
      'Buttons, Ribbon x4 A: tail, pin',
    ]);
  });

  it('is of a drawer all parts or those chosen, and a part chosen twice is drawn once', () => {
    expect(drawn(value(chooseOnly(chest, 'Buttons/side, Thread/front, Thread/front, Ribbon/Back')))).toEqual([
      'Buttons x1 A: tail',
      'Buttons x1 B: tail',
      'Buttons x1 C: tail',
      'Buttons x1 D: tail',
      'Thread x2 A: pin',
      'Thread x2 B: pin',
      'Ribbon x3 C: pin',
      'Ribbon x3 D: pin',
    ]);
    const parts = chooseOnly(chest, 'Thread/back,Thread/front,Thread/side,Buttons/side');
    expect(wholeDrawers(value(parts)).map(({ spec }) => spec.name)).toEqual(['Thread']);
  });

  it('keeps the file names of the whole', () => {
    const alike = projectOf('Odds & ends', 'Odds, ends');
    const stems = (project: Project, item: string) =>
      templateCorners(project).find((corner) => corner.item.startsWith(item))?.stem;
    expect(stems(value(chooseOnly(alike, 'Odds, ends')), 'Odds, ends')).toBe('odds-ends-2');
  });

  it('takes the longest text that is a name, so that names may hold commas and slashes', () => {
    const odd = projectOf('Nuts, bolts', 'Nuts', 'Bits/back', 'Bits');
    expect(items(odd, 'Nuts, bolts')).toEqual(['Nuts, bolts']);
    expect(drawn(value(chooseOnly(odd, 'Nuts, bolts/back')))).toEqual([
      'Nuts, bolts x1 C: pin',
      'Nuts, bolts x1 D: pin',
    ]);
    expect(items(odd, 'Nuts,Bits')).toEqual(['Nuts, Bits']);
    expect(items(odd, 'Bits/back')).toEqual(['Bits/back']);
    expect(drawn(value(chooseOnly(odd, 'Bits/back/side'))).slice(0, 1)).toEqual(['Bits/back x3 A: tail']);
    expect(drawn(value(chooseOnly(odd, 'Bits/front')))).toEqual(['Bits x4 A: pin', 'Bits x4 B: pin']);
  });

  it('has the guides of the boards that are drawn', () => {
    const EVEN = { kind: 'even' } as const;
    const byRouter = (name: string, height: number) =>
      inOpening(280, height, 420, {
        name,
        joint: { kind: 'lapped', lap: 5, spacing: EVEN },
        backJoint: { spacing: EVEN },
        cutter: CUTTER,
      });
    const set = value(layOutSet([byRouter('Buttons', 110), byRouter('Thread', 140)]));
    const cutting = { cutter: CUTTER, straight: 8, bush: 16, pinBush: 11 };
    const project = value(
      withCuts({ name: 'Chest', units: 'mm', set, joints: [], sawing: USUAL_SAWING.mm, cutting }),
    );
    const guides = (typed: string) =>
      guidesOf(value(chooseOnly(project, typed))).map(
        ({ guide: { board }, titles: { item } }) => `${item}: ${board}`,
      );
    expect(guides('Thread')).toEqual([
      'Thread front: tail',
      'Thread front: pin',
      'Thread back: tail',
      'Thread back: pin',
    ]);
    expect(guides('Buttons/side, Thread/front')).toEqual([
      'Buttons front: tail',
      'Buttons back: tail',
      'Thread front: pin',
    ]);
  });
});

describe('a choice of what is not there', () => {
  const chest = projectOf('Buttons', 'Nuts, bolts');
  const there = 'there are Buttons, "Nuts, bolts", Carcase';

  it.each([
    ['Butons', [`"Butons" is no drawer and no single corner of this plan; ${there}; try Buttons`]],
    ['', [`"" is no drawer and no single corner of this plan; ${there}`]],
    ['Buttons,', [`"" is no drawer and no single corner of this plan; ${there}`]],
    [
      'Nuts bolts,Butons/sides',
      [
        `"Nuts bolts" is no drawer and no single corner of this plan; ${there}; try "Nuts, bolts,Buttons/side"`,
        `"Butons/sides" is no drawer and no single corner of this plan; ${there}; try "Nuts, bolts,Buttons/side"`,
      ],
    ],
    [
      'Buttons/bak',
      ['Buttons has no templates of a part "bak"; it has those of front, side, back; try Buttons/back'],
    ],
    ['Carcase/side', ['Carcase is a single corner, which is drawn whole; try Carcase']],
  ])('refuses %j, names the nearest and lists what is there', (typed, lines) => {
    expect(complaints(chest, typed)).toEqual(lines);
  });

  it('suggests what is taken', () => {
    const [line = ''] = complaints(chest, 'Nuts bolts,Butons/sides');
    const [, hint = ''] = /; try "(.*)"$/u.exec(line) ?? [];
    expect(items(chest, hint)).toEqual(['Buttons', 'Nuts, bolts']);
  });

  it('lists the first of many', () => {
    // 9 of 8 letters are 72 letters, and 25 of 9 are 225: 297 of 300.
    const many = projectOf(...Array.from({ length: 40 }, (_, i) => `Drawer ${i + 1}`));
    expect(complaints(many, 'Cloth')[0]).toMatch(/Drawer 33, Drawer 34 and 7 more$/u);
  });
});
