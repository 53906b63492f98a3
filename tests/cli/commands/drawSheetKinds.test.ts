import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CHEST, folder, halfpin } from '../program.ts';

const CORNER = ['--width', '96', '--tail-board', '11', '--pin-board', '20', '--lap', '5'];

const draw = (...args: string[]) => {
  const out = join(folder(), 'out');
  const result = halfpin(['draw', ...args, '--out', out]);
  return { ...result, files: existsSync(out) ? readdirSync(out).sort() : [] };
};

describe('what draw makes', () => {
  it('makes the kinds of sheet that are chosen, and no others', () => {
    const { status, files } = draw(CHEST, '--sheets', 'Comparison, bench');
    expect(status).toBe(0);
    expect(files).toEqual(['haberdashery-chest-bench.pdf', 'haberdashery-chest-comparison.pdf']);
  });

  it('leaves the contents out where they are not chosen', () => {
    const pages = (kinds: string) =>
      Number(/(\d+) sheets of A4/u.exec(draw(CHEST, '--sheets', kinds).out)?.[1]);
    expect(pages('templates')).toBeGreaterThan(0);
    expect(pages('templates')).toBeLessThan(pages('templates,contents'));
  });

  it('draws corners as pictures where they are chosen, of the hand’s paper, and as SVG beside the templates', () => {
    const { status, files, out } = draw(CHEST, '--only', 'Buttons', '--sheets', 'corners', '--as', 'pdf,svg');
    expect(status).toBe(0);
    expect(out).toMatch(/corners\.pdf: 1 page of A4, every corner as pictures/u);
    expect(files.filter((name) => /corners|picture/u.test(name))).toEqual([
      'buttons-back-picture.svg',
      'buttons-front-picture.svg',
      'haberdashery-chest-only-1-corners.pdf',
    ]);
    const usual = draw(...CORNER, '--as', 'pdf,svg');
    expect(usual.files.filter((name) => /corners|picture/u.test(name))).toEqual([]);
  });

  it('draws templates to drill by where there are pulls, and proportions where they are chosen', () => {
    const where = folder();
    const plan = join(where, 'chest.yaml');
    writeFileSync(
      plan,
      `${readFileSync(CHEST, 'utf8')}pulls: {number: 2, holes: {diameter: 4}}\n`.replace(
        'name: Haberdashery chest',
        'name: Chest',
      ),
    );
    const usual = draw(plan, '--only', 'Cloth', '--as', 'pdf,svg', '--bench-paper', 'A5');
    expect(usual.out).toMatch(/drilling\.pdf: \d pages? of A4, templates to drill the fronts by/u);
    expect(usual.files.filter((name) => /drilling|proportion/u.test(name))).toEqual([
      'chest-only-6-drilling.pdf',
      'cloth-front-drilling-left.svg',
      'cloth-front-drilling-right.svg',
    ]);
    const chosen = draw(plan, '--sheets', 'proportion', '--bench-paper', 'A5');
    expect(chosen.files).toEqual(['chest-proportion.pdf']);
    expect(chosen.out).toMatch(/proportion\.pdf: \d pages? of A5/u);
    // A side is not drilled.
    expect(draw(plan, '--only', 'Cloth/side').files).toEqual(['chest-only-6-side-templates.pdf']);
    const none = draw(CHEST, '--sheets', 'drilling');
    expect([none.status, none.files]).toEqual([2, []]);
    expect(none.err).toContain('there are no sheets of the kinds chosen here');
  });

  it('names for each file the paper that it is on', () => {
    const { out } = draw(CHEST, '--only', 'Buttons,Cloth', '--paper', 'A3', '--bench-paper', 'Letter');
    expect(out).toMatch(/templates\.pdf: \d+ pages? of A3/u);
    expect(out).toMatch(/bench\.pdf: 2 pages of Letter/u);
    expect(out).toMatch(/comparison\.pdf: 2 pages of Letter/u);
  });

  it.each([
    [
      'a drawer that is not there',
      [CHEST, '--only', 'Butons,Cloth'],
      '--only: "Butons" is no drawer and no single corner of this plan; there are Buttons, Thread, Ribbon, Patches, Notions, Cloth; try Buttons,Cloth',
    ],
    [
      'a choice of drawers without a plan',
      [...CORNER, '--only', 'Buttons'],
      '--only: it chooses drawers of a plan, and there is no plan here; remove the option',
    ],
    [
      'parts that are not of the board chosen',
      [CHEST, '--only', 'Buttons/side', '--boards', 'pin'],
      '--boards: the parts chosen by --only are not pin boards, so no template is left; leave out the option',
    ],
    [
      'a paper for bench sheets where none are drawn',
      [CHEST, '--sheets', 'templates', '--bench-paper', 'A4'],
      '--bench-paper: there are no cutting list, bench sheets, comparison, proportion or corners here to print; leave out the option',
    ],
    [
      'copies of nothing',
      [CHEST, '--copies', '0'],
      '--copies: "0" is no number of copies here; it must be one, or made for each template as often as it is made; try made',
    ],
    [
      'copies of templates that are not printed',
      [CHEST, '--copies', 'made', '--sheets', 'bench'],
      '--copies: it is about the templates of a PDF, and none are printed here; remove the option',
    ],
    [
      'a kind that does not exist',
      [CHEST, '--sheets', 'bench,labels'],
      '--sheets: "labels" is no kind of sheet; the kinds are templates, contents, drilling, guides, cutting-list, bench, comparison, proportion, corners; try templates,bench',
    ],
    [
      'a cutting list of a corner that belongs to no drawer',
      [...CORNER, '--sheets', 'cutting-list'],
      '--sheets: there are no sheets of the kinds chosen here; there are templates, bench, corners',
    ],
    [
      'the contents of templates that are not drawn',
      [CHEST, '--sheets', 'bench,contents'],
      '--sheets: the contents list the templates, which are not among the sheets chosen; try templates,contents',
    ],
    [
      'a choice of sheets where no PDF is made',
      [CHEST, '--as', 'svg', '--sheets', 'bench'],
      '--sheets: sheets are printed from a PDF; it must be among --as; try --as pdf,svg',
    ],
  ])('refuses %s and writes nothing', (_, args, line) => {
    const { status, err, files } = draw(...args);
    expect(status).toBe(2);
    expect(err.trimEnd()).toBe(line);
    expect(files).toEqual([]);
  });
});
