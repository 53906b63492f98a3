import { createHTMLWindow } from 'svgdom';

/**
 * A window to make SVG in without a browser. Like a browser's, it holds HTML and writes SVG in the same way.
 * @example
 * ```ts
 * const [first] = svgFiles(piecesOf(project), { fonts, window: svgWindow() });
 * console.log(first?.text().includes('<svg')); // true
 * ```
 */
export const svgWindow = (): Window => createHTMLWindow();
