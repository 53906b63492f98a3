// What the bench runs in process, bundled as the program is.
export { layOutSet } from '../../src/drawer/layOutSet.ts';
export { parts } from '../../src/drawer/partsList.ts';
export { type Affine, apply, compose } from '../../src/drawing/affine.ts';
export { PENS } from '../../src/drawing/pens.ts';
export { layOut } from '../../src/joint/layOut.ts';
export { parsePaper } from '../../src/paper/paperSizes.ts';
export { NO_SPLITS } from '../../src/paper/piece.ts';
export { readPlan } from '../../src/plan/readPlan.ts';
export { piecesOf } from '../../src/project/piecesOf.ts';
export { sheetsOf } from '../../src/project/sheetsOf.ts';
export { renderPdf } from '../../src/render/pdf.ts';
export { POINTS_PER_MM } from '../../src/render/pdfContent.ts';
export { renderSvg } from '../../src/render/svg.ts';
export { svgWindow } from '../../src/render/svgWindow.ts';
export { textMatrix } from '../../src/render/textMatrix.ts';
