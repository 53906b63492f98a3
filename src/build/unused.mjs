// Replaces what pdfkit, fontkit and svgdom import and we never use: breaking lines, reading images, encryption, web
// fonts, and the shaping of scripts. Some of it is slower to load than a template is to draw.

export default class Unused {}
export {
  Unused as cbc,
  Unused as ecb,
  Unused as getCategory,
  Unused as getCombiningClass,
  Unused as getScript,
  Unused as isDigit,
};

/** Called for every glyph, but only the shaping of text needs it. */
export const isMark = () => false;

/** Called when svgdom is loaded, to know where its fonts for measuring text would lie. */
const nowhere = () => '';

export { nowhere as dirname, nowhere as fileURLToPath, nowhere as join };
