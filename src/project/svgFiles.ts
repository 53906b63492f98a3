import { NO_SPLITS, type Piece } from '../paper/piece.ts';
import { renderSvg, type SvgTools } from '../render/svg.ts';

/** A file's name and text; the text is drawn when it is requested. */
export interface DrawnFile {
  readonly name: string;
  text(): string;
}

/**
 * Whole pieces as SVG files at full size, one a file.
 * @example
 * ```ts
 * const tools = { fonts, window: svgWindow() };
 * for (const { name, text } of svgFiles([...piecesOf(project), ...guidePieces(project)], tools))
 *   writeFileSync(name, text());
 * ```
 */
export const svgFiles = (pieces: readonly Piece[], tools: SvgTools): DrawnFile[] =>
  pieces.map((piece) => ({
    name: `${piece.name}.svg`,
    text: () =>
      renderSvg(
        piece.draw(NO_SPLITS),
        {
          title: `${piece.title}, make ${piece.count}`,
          description: 'Drawn at full size by Halfpin: print at 100 %.',
        },
        tools,
      ),
  }));
