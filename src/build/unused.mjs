// Stands in for what pdfkit, fontkit and svgdom ask for and we never use: breaking lines, reading images, encryption, web
// fonts, and the shaping of scripts. Some of it takes longer to load than a template takes to draw.

export default class Unused {}
export {
  Unused as cbc,
  Unused as ecb,
  Unused as getCategory,
  Unused as getCombiningClass,
  Unused as getScript,
  Unused as isDigit,
};

/** Asked of every glyph, but only the shaping of text acts on it. */
export const isMark = () => false;
