/**
 * Halfpin as a library: sets out dovetailed drawers, and draws full-size templates for them. Everything here is pure: it
 * reads no files, no clock and no environment, and the same input gives the same result, to the byte.
 *
 * Lengths are mm throughout. What can be wrong comes back as a {@link Result}: a value, or every {@link Complaint} about
 * the input at once; {@link sentence} turns one into a line of text in the reader's unit.
 *
 * From a plan's text to paper: {@link readProject} → {@link sheetsOf} → {@link renderPdf}. From one corner:
 * {@link projectOfCorner}, and then the same. Pieces one by one: {@link piecesOf} and {@link guidePieces} →
 * {@link svgFiles}, or {@link dxfFiles} for guides. Parts out of a plan's boards: {@link breakOutProject} →
 * {@link breakoutRecord}, or {@link boardSheets}. A program that draws for itself has all numbers of a corner from
 * {@link layOut}.
 *
 * @example One corner, its tails from the reference edge up
 * ```ts
 * import { layOut, sentence } from 'halfpin';
 *
 * const corner = layOut({
 *   kind: 'lapped', width: 96, tailBoard: 11, pinBoard: 20, slope: { run: 7 }, spacing: { kind: 'even' },
 * });
 * if (corner.ok) for (const { tip, base } of corner.value.tails) console.log(tip, base);
 * else for (const complaint of corner.complaints) console.error(complaint.at.join('.'), sentence(complaint, 'mm'));
 * ```
 *
 * A whole set, from its plan to a PDF: `examples/library.mjs`.
 *
 * @packageDocumentation
 */

// A set of drawers.
export { type CuttingGroup, type CuttingRow, cuttingList } from './drawer/cuttingList.ts';
export type { Drawer, DrawerSet, Family } from './drawer/drawer.ts';
export { type DrawerSeason, drawerSeason } from './drawer/drawerSeason.ts';
export { setFittings } from './drawer/fittings/setFittings.ts';
export { type Part, parts, stockTotals } from './drawer/partsList.ts';
// What a drawing and a page are.
export type { Drawing } from './drawing/drawing.ts';
export type { PrintPage } from './drawing/printPage.ts';
export { dividers, gauges } from './joint/gauges.ts';
// One corner.
export type { Joint, JointBoard, Pin, Tail } from './joint/joint.ts';
export { jointRecord } from './joint/jointRecord.ts';
export type { JointSpec, Spacing } from './joint/jointSpec.ts';
export { layOut } from './joint/layOut.ts';
export { type Paper, parsePaper } from './paper/paperSizes.ts';
export type { Piece } from './paper/piece.ts';
// Paper, and printers that err.
export type { Correction, PrinterError } from './paper/printerCorrection.ts';
export type { ProofLengths } from './paper/proofLengths.ts';
export { drawProof, type Proof } from './paper/proofSheet.ts';
export { type MeasuredProof, readProof } from './paper/readProof.ts';
export { planJsonSchema } from './plan/planJsonSchema.ts';
// Plans.
export { formatPlanComplaint, type PlanComplaint } from './plan/read/planComplaint.ts';
export { starterPlan } from './plan/starterPlan.ts';
// From a plan, or one corner, to sheets.
export { boardSheets } from './project/boardSheets.ts';
export { breakOutProject } from './project/breakOutProject.ts';
export { dxfFiles } from './project/dxfFiles.ts';
export { guidePieces } from './project/guidesOf.ts';
export { chooseOnly } from './project/only.ts';
export { piecesOf } from './project/piecesOf.ts';
export { type CornerSpec, type Project, projectOfCorner, type SingleCorner } from './project/project.ts';
export type { PlanResult } from './project/readerWith.ts';
export { readProject } from './project/readProject.ts';
export { type SheetKind, type SheetOptions, type SheetSet, sheetsOf } from './project/sheetsOf.ts';
export { type DrawnFile, svgFiles } from './project/svgFiles.ts';
export { breakoutRecord } from './project/tables/breakoutRecord.ts';
export { partsCsv } from './project/tables/partsCsv.ts';
// Files.
export type { Fonts } from './render/fonts.ts';
export { renderPdf } from './render/pdf.ts';
export { svgWindow } from './render/svgWindow.ts';
// Cutting with a router, and the next setting after a trial joint.
export type { Fingers } from './router/fingers/fingers.ts';
export type { JointCut } from './router/guide/cutJoint.ts';
export type { Cutter } from './router/limits/cutter.ts';
export type { Cutting } from './router/limits/cutting.ts';
export type { Measured } from './router/trial/checkTrial.ts';
export { correctDepth, type DepthMove, type OneCutterSetting } from './router/trial/depthCorrection.ts';
export { correctGuide, type GuideMove, type GuideSetting } from './router/trial/guideCorrection.ts';
export { correctByHand, type HandCorrection } from './router/trial/handCorrection.ts';
// Which templates are drawn.
export { BOTH_BOARDS, type PieceChoice } from './sheets/template/cornerPieces.ts';
// What can be wrong.
export type { Complaint, Result } from './units/complaint.ts';
// What is wrong, on one line.
export { sentence } from './units/complaint.ts';
// Lengths, slopes and words.
export { formatLength } from './units/formatLength.ts';
export { parseName } from './units/name.ts';
export type { Notation } from './units/notation.ts';
export { parseLength } from './units/parseLength.ts';
export { speak } from './units/phrase.ts';
export { formatSlope, parseSlope, type Slope } from './units/slope.ts';
export type { Unit } from './units/unit.ts';
// Wood that moves.
export { equilibriumMoisture, parseMoisture } from './wood/moisture.ts';
export { movement, sizeAt } from './wood/movement.ts';
export { findWood, type Wood } from './wood/species.ts';
