import { fileStem } from '../sheets/fileStem.ts';
import { guidePiece } from '../sheets/guide/drawGuide.ts';
import type { NamedGuide } from '../sheets/guide/guidesToMake.ts';
import { drillingOf } from './drillingOf.ts';
import { guidePieces, guidesOf } from './guidesOf.ts';
import { picturedCorners } from './picturedCorners.ts';
import { templateNames } from './piecesOf.ts';
import type { Project } from './project.ts';
import { kindsOf, type SheetKind } from './sheetsOf.ts';

/**
 * The name of the PDF that holds a plan's sheets of one kind.
 * @param chosen what stands for a choice of its drawers; nothing for the whole set
 */
export const pdfName = (plan: string, kind: SheetKind, chosen = ''): string =>
  `${fileStem(plan)}-${chosen}${kind}.pdf`;

/** The name of the DXF that holds a guide. */
export const dxfName = ({ guide, titles }: NamedGuide): string => `${guidePiece(guide, titles).name}.dxf`;

/** The names of the PDFs that a project can be drawn as. */
export const pdfNames = (project: Project): string[] =>
  kindsOf(project).map((kind) => pdfName(project.name, kind));

/** The names of the SVG and DXF files that a project can be drawn as, whatever the choice of its pieces. */
export const pieceFileNames = (project: Project): string[] => [
  ...[
    ...templateNames(project),
    ...drillingOf(project).map(({ name }) => name),
    ...guidePieces(project).map(({ name }) => name),
    ...picturedCorners(project).map(({ file }) => file),
  ].map((name) => `${name}.svg`),
  ...guidesOf(project).map(dxfName),
];
