import { DxfWriter, LWPolylineFlags, point2d, point3d, Units } from '@tarikjabiri/dxf';
import type { Layer } from '../drawing/layer.ts';
import type { Outline } from '../drawing/outline.ts';
import { CAP_HEIGHT } from '../drawing/textWidth.ts';

/** Line types: a dash above 0, a gap below, in mm. */
const LINES = {
  CONTINUOUS: [],
  HIDDEN: [3, -1],
  CENTER: [6, -1.2, 0.5, -1.2],
} as const satisfies Record<Layer['line'], readonly number[]>;

/** Colour number 7: black on white paper, white on a black screen. */
const INK = 7;

/**
 * Writes layers as a DXF file in mm, x to the right and y upward: outlines as closed polylines whose arcs are bulges.
 * @param written the program that wrote the file and its purpose, on one line
 */
export const renderDxf = (layers: readonly Layer[], written: string): string => {
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  dxf.setVariable('$MEASUREMENT', { 70: 1 });
  for (const line of new Set(layers.map((layer) => layer.line)))
    if (line !== 'CONTINUOUS') dxf.addLType(line, line, [...LINES[line]]);
  for (const { name, line, outlines = [], paths = [], texts = [] } of layers) {
    dxf.addLayer(name, INK, line === 'CONTINUOUS' ? 'Continuous' : line);
    const draw = (vertices: Outline, flags: LWPolylineFlags) =>
      dxf.addLWPolyline(
        vertices.map(({ at: [x, y], bulge }) => ({
          point: point2d(micro(x), micro(y)),
          ...(bulge !== undefined && { bulge }),
        })),
        { layerName: name, flags },
      );
    for (const outline of outlines) draw(outline, LWPolylineFlags.Closed);
    for (const { points, closed } of paths)
      draw(
        points.map((at) => ({ at })),
        closed === true ? LWPolylineFlags.Closed : LWPolylineFlags.None,
      );
    for (const {
      text,
      at: [x, y],
      size,
      turn,
    } of texts)
      dxf.addText(point3d(micro(x), micro(y)), micro(size * CAP_HEIGHT), plain(text), {
        layerName: name,
        rotation: turn,
      });
  }
  // A comment first, which every reader ignores, names the program that wrote the file.
  return `999\n${plain(written)}\n${dxf.stringify()}`;
};

/** A text on one line, without the two per cent signs that start a code in DXF. */
const plain = (text: string): string => text.replace(/\p{Cc}+/gu, ' ').replace(/%{2,}/g, '%');

/** A length rounded to a millionth of a mm, free of floating-point noise. */
const micro = (value: number): number => Math.round(value * 1e6) / 1e6;
