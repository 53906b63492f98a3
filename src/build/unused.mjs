// Replaces what pdfkit, fontkit and svgdom import and we never use: breaking lines, reading images, encryption and web
// fonts. Some of it is slower to load than a template is to draw.

export default class Unused {}
export { Unused as cbc, Unused as ecb };

/** Called when svgdom is loaded, to know where its fonts for measuring text would lie. */
const nowhere = () => '';

export { nowhere as dirname, nowhere as fileURLToPath, nowhere as join };
