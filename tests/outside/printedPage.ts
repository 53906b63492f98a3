// A page that was read back from a file, as a printer that is out puts it on paper.
import type { Point } from '../../src/drawing/drawing.ts';
import type { PrinterError } from '../../src/paper/printerCorrection.ts';
import type { ReadPage, Stroke } from './readPdf.ts';

/** What a printer makes of a page: 1 mm across is `x` mm, 1 mm up `y` mm, and uprights lean. */
export const printed = ({ width, height, strokes }: ReadPage, { x, y, skew }: PrinterError): Stroke[] => {
  const at = ([px, py]: Point): Point => {
    const [dx, dy] = [px - width / 2, py - height / 2];
    return [dx * x + dy * y * skew, dy * y * Math.sqrt(1 - skew * skew)];
  };
  return strokes.map((stroke) => ({ ...stroke, from: at(stroke.from), to: at(stroke.to) }));
};

export const lengthOf = ({ from, to }: Stroke): number => Math.hypot(to[0] - from[0], to[1] - from[1]);

export const isPen = (width: number) => (stroke: Stroke) => Math.abs(stroke.width - width) < 0.003;
