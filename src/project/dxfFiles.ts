import { renderDxf } from '../render/dxf.ts';
import { guideMark } from '../render/mark.ts';
import { guideLayers, guidePiece } from '../sheets/guide/drawGuide.ts';
import { dxfName } from './fileNames.ts';
import { guidesOf } from './guidesOf.ts';
import type { Project } from './project.ts';
import type { DrawnFile } from './svgFiles.ts';

/**
 * A project's guides as DXF files in mm, one a file, for a machine to cut: the origin lies where the fence's face meets
 * the reference edge. What is cut is on the layer `OUTLINE`; the line of the reference edge is on `REFERENCE`, and the
 * guide's name on `TEXT`.
 * @example
 * ```ts
 * for (const { name, text } of dxfFiles(project)) writeFileSync(name, text());
 * ```
 */
export const dxfFiles = (project: Project): DrawnFile[] =>
  guidesOf(project).map((named) => {
    const { guide, titles } = named;
    const name = dxfName(named);
    const { title } = guidePiece(guide, titles);
    return { name, text: () => renderDxf(guideLayers(guide, titles), guideMark(project.name, name, title)) };
  });
