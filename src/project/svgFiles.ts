import { NO_SPLITS, type Piece } from '../paper/piece.ts';
import { pieceMark } from '../render/mark.ts';
import { renderSvg, type SvgTools } from '../render/svg.ts';
import { cornerPictures } from '../sheets/corners/cornerSheets.ts';
import type { NamedPicture } from './picturedCorners.ts';

/** A file's name and text; the text is drawn when it is requested. */
export interface DrawnFile {
  readonly name: string;
  text(): string;
}

/**
 * Whole pieces as SVG files at full size, one a file.
 * @param plan the name of the project, which each file's description then holds
 * @example
 * ```ts
 * const tools = { fonts, window: svgWindow() };
 * for (const { name, text } of svgFiles([...piecesOf(project), ...guidePieces(project)], tools, project.name))
 *   writeFileSync(name, text());
 * ```
 */
export const svgFiles = (pieces: readonly Piece[], tools: SvgTools, plan?: string): DrawnFile[] =>
  pieces.map((piece) => {
    const name = `${piece.name}.svg`;
    const title = `${piece.title}, quantity ${piece.count}`;
    return {
      name,
      text: () => renderSvg(piece.draw(NO_SPLITS), { title, description: pieceMark(plan, name) }, tools),
    };
  });

/** The pictures of each corner as an SVG file: closed, open and from inside. */
export const pictureFiles = (corners: readonly NamedPicture[], tools: SvgTools, plan: string): DrawnFile[] =>
  corners.map(({ name: title, joint, file }) => {
    const name = `${file}.svg`;
    const text = () => renderSvg(cornerPictures(joint), { title, description: pieceMark(plan, name) }, tools);
    return { name, text };
  });
