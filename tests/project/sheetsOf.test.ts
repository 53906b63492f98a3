import { expect, it } from 'vitest';
import { type Paper, parsePaper } from '../../src/paper/paperSizes.ts';
import { projectOfCorner } from '../../src/project/project.ts';
import { sheetsOf } from '../../src/project/sheetsOf.ts';
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

it('a corner of no drawer has templates alone, and their title names it', () => {
  const sheets = value(sheetsOf(carcase, { paper: paper('A4') }));
  expect(sheets.map(({ kind, title }) => [kind, title])).toEqual([['templates', 'Carcase: templates']]);
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
