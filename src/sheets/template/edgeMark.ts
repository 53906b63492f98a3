import type { StrokeMark } from '../../drawing/drawing.ts';
import { stroke } from '../../drawing/shapes.ts';

/** Width kept free at the lower edge for the face-edge mark, mm. */
export const EDGE_MARK_HEIGHT = 4.2;

/** The face-edge mark of the trade: an open arrow that touches the edge. */
export const edgeMark = (x: number): StrokeMark =>
  stroke('label', 'medium', [
    {
      points: [
        [x - 1.6, 3.2],
        [x, 0],
        [x + 1.6, 3.2],
      ],
    },
  ]);
