/**
 * Halfpin as a library: sets out dovetailed drawers, and draws full-size templates for them. Everything here is pure: it
 * reads no files, no clock and no environment, and the same input gives the same result, to the byte.
 *
 * Lengths are mm throughout. What can be wrong comes back as a {@link Result}: a value, or every {@link Complaint} about
 * the input at once; {@link sentence} turns one into a line of text in the reader's unit.
 *
 * The way from a plan to paper: {@link layOutPlan} → {@link setPieces} and {@link setLayouts} → {@link layPages} →
 * {@link renderPdf}, or {@link renderSvg} for one piece. Without a plan it begins at {@link layOutSet} for drawers, and at
 * {@link layOut} or {@link layOutWith} for one corner. With a cutter, {@link cutJoint} gives a corner's passes and guides,
 * {@link guidesToMake} equal ones once, and {@link guidePiece} and {@link guideLayers} draw them.
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

// What can be wrong.
export type { Complaint, Place, Result } from './complaint.ts';
// A set of drawers.
export type { Board, Boards, Box as BoardBox, Place3 } from './drawer/boards.ts';
export type { Drawer, DrawerSet, Family } from './drawer/drawer.ts';
export type { GapSeason, Gaps } from './drawer/gaps.ts';
export type { Choice } from './drawer/groove.ts';
export { layOutSet } from './drawer/layOutSet.ts';
export { layOutWidths, type Widths } from './drawer/layOutWidths.ts';
export { type Part, type PartName, parts, type StockTotal, stockTotals } from './drawer/parts.ts';
export { type DrawerSeason, drawerSeason, type PartSeason } from './drawer/season.ts';
export type { Rebate, Sizes } from './drawer/sizes.ts';
export type {
  BottomHold,
  BottomSpec,
  DrawerSpec,
  Fit,
  Groove,
  JointWish,
  Lip,
  Movement,
  Opening,
  Stock,
} from './drawer/spec.ts';
// What a drawing and a page are.
export type { Affine } from './drawing/affine.ts';
export type {
  Box,
  Drawing,
  FillMark,
  Mark,
  Path,
  PenName,
  Point,
  Role,
  StrokeMark,
  TextMark,
} from './drawing/drawing.ts';
export { flatten, type Outline, type Vertex } from './drawing/outline.ts';
export type { Page, Placed } from './drawing/page.ts';
export { PENS } from './drawing/pens.ts';
// Cutting with a router and a guide.
export { adviseCutter, CAUTIONS } from './guided/cautions.ts';
export { type Cuts, cutCorners } from './guided/cutCorners.ts';
export { cutJoint, type JointCut } from './guided/cutJoint.ts';
export { type Cutter, checkCutter, cutterSlope, diameterAt, leastPin } from './guided/cutter.ts';
export { type Cutting, checkCutting } from './guided/cutting.ts';
export { type GuideBoard, guideBoard } from './guided/guideBoard.ts';
export { type Guided, guidedCut, type PinCut } from './guided/guided.ts';
export { layOutForCutter } from './guided/layOutForCutter.ts';
export { layOutWith, type Tooling } from './guided/layOutWith.ts';
export { atPitch } from './guided/pitch.ts';
export type { RoundSocket } from './guided/roundSocket.ts';
export { checkStraight, defaultStraight, type StraightPass } from './guided/straightPasses.ts';
export {
  correctDepth,
  correctTemplate,
  type DepthMove,
  type Measured,
  type Move,
  type OneCutterSetting,
  type SideMoves,
  type SlopedSetting,
  type TemplateMove,
} from './guided/trial.ts';
export {
  type Convergence,
  convergence,
  formatTrial,
  parseTrialLog,
  type Trial,
  type TrialLog,
} from './guided/trialLog.ts';
export { depthPicture, templatePicture } from './guided/trialPicture.ts';
// One corner.
export type { Count, Interval, Joint, JointBoard, Pin, Tail } from './joint/joint.ts';
export type { JointKind, KindWish } from './joint/kinds/kinds.ts';
export { layOut } from './joint/layOut.ts';
export { blockPicture } from './joint/picture.ts';
export { meanPin, meanTail } from './joint/proportion.ts';
export { jointRecord } from './joint/record.ts';
export { type Dividers, dividers, type Gauges, gauges, glueArea } from './joint/settings.ts';
export type { CommonSpec, CornerWish, HalfPins, JointSpec, Spacing } from './joint/spec.ts';
export { tailOutline } from './joint/tailOutline.ts';
// Paper, and printers that err.
export type { Correction, PrinterError } from './paper/correction.ts';
export { NO_SPLITS, type Piece, type Splits } from './paper/piece.ts';
export { DEFAULT_MARGIN, type Size } from './paper/printable.ts';
export { drawProof, type Proof } from './paper/proof.ts';
export { type ProofLengths, proofLengths } from './paper/proofLengths.ts';
export { type MeasuredProof, readProof } from './paper/readProof.ts';
export {
  type Layout,
  type LeadingPages,
  layPages,
  type PagesOfPieces,
  type Sheets,
  sheetCounts,
} from './paper/sheets.ts';
export { ANSI_PAPERS, ISO_PAPERS, mediaName, type Paper, parsePaper } from './paper/sizes.ts';
// Plans.
export { type LaidJoint, type LaidOut, layOutPlan, type Reading } from './plan/layOutPlan.ts';
export type { NamedJoint, Plan } from './plan/plan.ts';
export { formatPlace, formatPlanComplaint, type PlanComplaint } from './plan/planComplaint.ts';
export { type JsonSchema, planJsonSchema } from './plan/planJsonSchema.ts';
export type { Position } from './plan/position.ts';
export { type Locate, type PlanReading, readPlan } from './plan/readPlan.ts';
export { starterPlan } from './plan/starterPlan.ts';
// Files.
export { type DxfLayer, renderDxf } from './render/dxf.ts';
export type { Fonts } from './render/fonts.ts';
export { type PdfOptions, renderPdf } from './render/pdf.ts';
export { renderSvg, type SvgMeta, type SvgTools } from './render/svg.ts';
export { svgWindow } from './render/svgWindow.ts';
// What is wrong, on one line.
export { sentence } from './sentence.ts';
// Templates.
export { BOTH_BOARDS, type PieceChoice } from './template/corner.ts';
export { stems, type TemplateWork } from './template/corners.ts';
export { type GuideTitles, guideLayers, guidePiece } from './template/drawGuide.ts';
export { fileStem } from './template/fileStem.ts';
export { type CornerGuides, guidesToMake, type NamedGuide } from './template/guidesToMake.ts';
export { setGuides } from './template/setGuides.ts';
export {
  comparisonLayout,
  type SetLayout,
  type SheetWish,
  type SheetWork,
  setLayouts,
  setPieces,
} from './template/setLayouts.ts';
export { drawDepthMove, drawTemplateMove } from './template/trialDrawing.ts';
export type { TemplatePiece } from './template/wrap.ts';
// Lengths, slopes and words.
export { formatLength, formatNumber } from './units/formatLength.ts';
export { parseName } from './units/name.ts';
export { parseLength } from './units/parseLength.ts';
export { type LengthWord, mm, type Phrase, say, speak } from './units/phrase.ts';
export { degrees, formatSlope, parseSlope, rise, type Slope, slopeOfDegrees } from './units/slope.ts';
export { MM_PER_INCH, type Unit } from './units/unit.ts';
// Wood that moves.
export {
  adviseBottom,
  type BottomSeason,
  type BottomStock,
  bottomSeason,
  type Slot as ScrewSlot,
} from './wood/bottomSeason.ts';
export { adviseClimate, type Climate, checkYear, parseMaking, type Through } from './wood/climate.ts';
export { type CornerBoard, type CornerSteps, cornerSteps } from './wood/flushCorner.ts';
export { type GapPoint, gapYear } from './wood/gapYear.ts';
export { type Air, equilibriumMoisture, formatPercent, parseMoisture } from './wood/moisture.ts';
export {
  adviseMoisture,
  type Cut,
  checkMaking,
  movement,
  parseCut,
  type SawnWood,
  sizeAt,
  thicknessCoefficient,
  widthCoefficient,
} from './wood/movement.ts';
export { coefficientOfShrinkage, type OwnFigures, ownWood, type Pair } from './wood/ownWood.ts';
export {
  GAP_BAND,
  type GapBand,
  type GapVerdict,
  gapsThroughYear,
  gapToLeave,
  judgeGaps,
  largestToMake,
  sizesThroughYear,
} from './wood/season.ts';
export { findWood, SOURCE_NOTES, WOODS, type Wood, type WoodSource } from './wood/species.ts';
