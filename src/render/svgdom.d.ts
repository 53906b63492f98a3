/** The part of svgdom that the SVG renderer uses. */
declare module 'svgdom' {
  export function createHTMLWindow(): Window;
}
