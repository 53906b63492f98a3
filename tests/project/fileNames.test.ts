import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pdfName, pdfNames, pieceFileNames } from '../../src/project/fileNames.ts';
import { guidePieces } from '../../src/project/guidesOf.ts';
import { piecesOf } from '../../src/project/piecesOf.ts';
import { readProject } from '../../src/project/readProject.ts';

const exampleOf = (name: string) => {
  const reading = readProject(readFileSync(`examples/${name}.yaml`));
  if (!reading.ok) throw new Error(name);
  return reading.value;
};

describe('the names of a plan’s files', () => {
  it.each(['haberdashery-chest', 'haberdashery-chest-guided', 'trinket-box'])(
    'are those of the pieces of every choice and of no other: %s',
    (example) => {
      const project = exampleOf(example);
      const pieces = [false, true].flatMap((flat) =>
        piecesOf(project, { boards: ['tail', 'pin'], flat, rods: true }),
      );
      const guides = guidePieces(project).map(({ name }) => name);
      expect(new Set(pieceFileNames(project))).toEqual(
        new Set([
          ...[...pieces.map(({ name }) => name), ...guides].map((name) => `${name}.svg`),
          ...guides.map((name) => `${name}.dxf`),
        ]),
      );
    },
  );

  it('are of a PDF for every kind of sheet that there is', () => {
    expect(pdfNames(exampleOf('trinket-box'))).toEqual(['trinket-box-templates.pdf']);
    expect(pdfNames(exampleOf('haberdashery-chest-guided'))).toEqual(
      ['templates', 'guides', 'cutting-list', 'bench', 'comparison'].map(
        (kind) => `haberdashery-chest-guided-${kind}.pdf`,
      ),
    );
    expect(pdfName('Haberdashery chest', 'bench', 'only-1-')).toBe('haberdashery-chest-only-1-bench.pdf');
  });
});
