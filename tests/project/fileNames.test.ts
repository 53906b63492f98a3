import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pdfName, pdfNames, pieceFileNames } from '../../src/project/fileNames.ts';
import { guidePieces } from '../../src/project/guidesOf.ts';
import { picturedCorners } from '../../src/project/picturedCorners.ts';
import { piecesOf } from '../../src/project/piecesOf.ts';
import type { Project } from '../../src/project/project.ts';
import { readProject } from '../../src/project/readProject.ts';

const exampleOf = (name: string) => {
  const reading = readProject(readFileSync(`examples/${name}.yaml`));
  if (!reading.ok) throw new Error(name);
  return reading.value;
};

const pictureNames = (project: Project): string[] =>
  picturedCorners(project).map(({ file }) => `${file}.svg`);

describe('the names of a plan’s files', () => {
  it.each(['haberdashery-chest', 'haberdashery-chest-guided', 'trinket-box'])(
    'are those of the pieces of every choice, of a picture for each different corner, and of no other: %s',
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
          ...pictureNames(project),
        ]),
      );
    },
  );

  it('are of a drawer’s corners under the first that has them', () => {
    expect(pictureNames(exampleOf('trinket-box'))).toEqual([
      'box-corner-boards-picture.svg',
      'tray-corner-boards-picture.svg',
    ]);
    // Thread has the corners of Buttons, and Patches those of Ribbon.
    const names = pictureNames(exampleOf('haberdashery-chest'));
    expect(names.slice(0, 3)).toEqual([
      'buttons-front-picture.svg',
      'buttons-back-picture.svg',
      'ribbon-front-picture.svg',
    ]);
    expect(names.filter((name) => /thread|patches/u.test(name))).toEqual([]);
  });

  it('are of a PDF for every kind of sheet that there is', () => {
    expect(pdfNames(exampleOf('trinket-box'))).toEqual([
      'trinket-box-templates.pdf',
      'trinket-box-bench.pdf',
      'trinket-box-corners.pdf',
    ]);
    expect(pdfNames(exampleOf('haberdashery-chest-guided'))).toEqual(
      ['templates', 'guides', 'cutting-list', 'bench', 'comparison', 'proportion', 'corners'].map(
        (kind) => `haberdashery-chest-guided-${kind}.pdf`,
      ),
    );
    expect(pdfName('Haberdashery chest', 'bench', 'only-1-')).toBe('haberdashery-chest-only-1-bench.pdf');
  });
});
