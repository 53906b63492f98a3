import { NO_SPLITS, type Piece } from '../paper/piece.ts';
import { renderSvg, type SvgTools } from './svg.ts';

/** A whole piece as an SVG file at full size. */
export const pieceSvg = (piece: Piece, tools: SvgTools): string =>
  renderSvg(
    piece.draw(NO_SPLITS),
    {
      title: `${piece.title}, make ${piece.count}`,
      description: 'Drawn at full size by Halfpin: print at 100 %.',
    },
    tools,
  );
