import type { Drawing } from '../drawing/drawing.ts';
import type { SvgMeta } from '../render/svg.ts';
import { loadFonts } from './loadFonts.ts';
import { writeWhole } from './writeWhole.ts';

/** Writes a drawing as an SVG file, whole or not at all. */
export const writeSvg = async (path: string, drawing: Drawing, meta: SvgMeta): Promise<void> => {
  // What draws SVG is loaded when it is needed: most commands write none.
  const [{ renderSvg }, { svgWindow }] = await Promise.all([
    import('../render/svg.ts'),
    import('../render/svgWindow.ts'),
  ]);
  const tools = { fonts: loadFonts(), window: svgWindow() };
  await writeWhole(path, (write) => write(renderSvg(drawing, meta, tools)));
};
