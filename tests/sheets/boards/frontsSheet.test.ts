import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cabinetOf } from '../../../src/drawer/arrangement/cabinetOf.ts';
import { type BrokenOut, brokenOut } from '../../../src/drawer/blanks/brokenOut.ts';
import type { Project } from '../../../src/project/project.ts';
import { frontsSheet } from '../../../src/sheets/boards/frontsSheet.ts';
import { BOARDS, projectOf, SMALL_SET } from '../../drawer/blanks/boardsPlan.ts';
import { AREAS } from '../anyDrawer.ts';
import { sheetFaults, wordsOf } from '../sheetFaults.ts';

const ROW = 'breakout: {runThrough: [[Buttons, Buttons]]}\n';
const STACK = 'breakout: {runThrough: [{stack: [Buttons, Buttons]}]}\n';
/** One board too few for the fronts. */
const SHORT = BOARDS.replace('length: 2150', 'length: 700');
/** No board wide enough for the widest front. */
const NARROW = BOARDS.replace('width: 230}', 'width: 150, count: 2}');

const broken = (plan: string): { readonly project: Project; readonly answer: BrokenOut } => {
  const project = projectOf(plan);
  if (project.work === undefined) throw new Error('this plan has boards');
  return { project, answer: brokenOut(project.work, project.sawing, { effort: 0.1 }) };
};

const CASES = {
  whole: broken(BOARDS + SMALL_SET),
  row: broken(ROW + BOARDS + SMALL_SET),
  stack: broken(STACK + BOARDS + SMALL_SET),
  short: broken(SHORT + SMALL_SET),
  narrow: broken(NARROW + SMALL_SET),
  long: broken(BOARDS + SMALL_SET.replaceAll('Buttons', 'W'.repeat(80))),
  ash: broken(BOARDS.replace(/ +- \{name: Cherry.*\n/u, '') + SMALL_SET),
};

const sheet = ({ project: { set }, answer }: (typeof CASES)['whole'], area = AREAS.A4) =>
  frontsSheet(answer, {
    title: 'Chest',
    drawers: set.drawers.map(({ spec: { name } }) => name),
    cabinet: cabinetOf(set.drawers),
    units: 'mm',
    area,
  });

const textOf = (each: (typeof CASES)['whole']): string =>
  sheet(each).map(wordsOf).join(' ').replaceAll('\u00A0', ' ');

describe('the sheet of fronts', () => {
  it('can be read on any paper', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.values(CASES)),
        fc.constantFrom(...Object.values(AREAS)),
        (each, area) => {
          for (const page of sheet(each, area)) expect(sheetFaults(page)).toEqual([]);
        },
      ),
      { numRuns: 28 },
    );
  });

  it('shows on every front its letter, its board and its place there', () => {
    const { answer } = CASES.whole;
    const text = textOf(CASES.whole);
    for (const { blanks } of answer.breakout.boards)
      for (const { wanted, x, length } of blanks)
        if (answer.blanks[wanted]?.part === 'front') expect(text).toContain(`Cherry, ${x} to ${x + length}`);
    expect(text).not.toContain('missing');
  });

  it('shows by arrows where the figure runs through', () => {
    expect(textOf(CASES.whole)).not.toContain('arrows');
    for (const each of [CASES.row, CASES.stack]) {
      expect(textOf(each)).toContain('arrows: the figure runs through');
      expect(textOf(each)).toContain('of Buttons, Buttons: the figure runs through, from Cherry');
      const [plain, met] = [CASES.whole, each].map(
        (one) =>
          sheet(one)[0]?.marks.filter((mark) => mark.kind === 'stroke' && mark.pen === 'thin').length ?? 0,
      );
      expect(met).toBe((plain ?? 0) + 2);
    }
  });

  it('says first what is missing, and the board to buy', () => {
    const text = textOf(CASES.short);
    expect(text).toMatch(/^Chest: board sheets These parts are missing: [E-Z]+ \S+ front \d/u);
    expect(text).toMatch(/One more board for fronts of at least [\d.]+ x [\d.]+ x 22 mm would do\./u);
    expect(text).toMatch(/ missing /u);
  });

  it('names the strips that a front is glued up from', () => {
    expect(textOf(CASES.narrow)).toMatch(/[E-Z]+ \+ [E-Z]+ Cherry/u);
  });

  it('has no fronts where no board is listed for them, and says so', () => {
    expect(textOf(CASES.ash)).toContain('No board is listed for fronts and bottoms: they are left out.');
    expect(textOf(CASES.ash)).not.toContain('1 : ');
  });

  it('says how to work safely', () => {
    const text = textOf(CASES.whole);
    for (const word of [/guards/u, /sharp/iu, /eye and ear/u, /dust/u, /local rules/u])
      expect(text).toMatch(word);
  });
});
