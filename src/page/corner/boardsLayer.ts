import type { Interval } from '../../joint/joint.ts';
import { addSvg, drawPath, px } from '../browser/dom.ts';
import type { CornerSheet, FaceOutline } from './cornerSheet.ts';

/** Draws both boards of a corner: wood, tails, waste, and every line that is marked on them. */
export const boardsLayer = (group: SVGGElement): ((sheet: CornerSheet) => void) => {
  const path = (name: string): SVGPathElement => addSvg(group, 'path', name);
  const boards = path('board');
  const wood = path('tail-wood');
  const waste = path('waste');
  const groove = path('groove-lines');
  const outline = path('outline');
  const marks = path('marks');
  const edge = path('edge');

  return (sheet) => {
    const { tailFace, tailEnd, pinEnd, pinFace, boardWidth, y } = sheet;
    const line = (points: FaceOutline): string =>
      `M${points.map(([x, u]) => `${px(x)} ${px(y(u))}`).join('L')}`;
    const areas = (outlines: readonly FaceOutline[]): string =>
      outlines.map((points) => `${line(points)}Z`).join('');
    const level = (x0: number, x1: number, u: number): string => `M${px(x0)} ${px(y(u))}H${px(x1)}`;
    const upright = (x: number, [from, to]: Interval = [0, boardWidth]): string =>
      `M${px(x)} ${px(y(from))}V${px(y(to))}`;
    const board = (x0: number, x1: number): string => `${upright(x0)}H${px(x1)}V${px(y(0))}Z`;

    drawPath(boards, board(tailFace.x0, tailEnd.x1) + board(pinEnd.x0, pinFace.x1));
    drawPath(wood, areas([...sheet.tails, ...sheet.tips]));
    drawPath(waste, areas([...sheet.tailWaste, ...sheet.sockets, ...sheet.faceSockets, ...sheet.mitred]));
    drawPath(groove, sheet.groove === undefined ? '' : groovePath(sheet, sheet.groove, level));
    drawPath(
      outline,
      [
        level(tailFace.x0, tailEnd.x1, boardWidth),
        level(pinEnd.x0, pinFace.x1, boardWidth),
        ...[tailFace.x1, tailEnd.x1, pinEnd.x0, pinEnd.x1].map((x) => upright(x)),
        ...[tailFace.x0, pinFace.x1].map((x) => breakLine(x, y(0), y(boardWidth))),
      ].join(''),
    );
    drawPath(
      marks,
      [
        ...sheet.lines.flatMap((way) => [line(way.slice(0, 3)), line(way.slice(3))]),
        ...sheet.smallLines.map(line),
        ...sheet.shoulders.flatMap((u) => [
          level(sheet.tailBaseline, sheet.tailLapLine, u),
          level(sheet.mitredFrom, sheet.pinBaseline, u),
        ]),
        ...[
          sheet.tailBaseline,
          sheet.tailLapLine,
          sheet.lapLine,
          ...(sheet.tailTip < tailFace.x1 ? [sheet.tailTip] : []),
        ].map((x) => upright(x, sheet.between)),
        upright(sheet.pinBaseline),
      ].join(''),
    );
    drawPath(edge, level(tailFace.x0, tailEnd.x1, 0) + level(pinEnd.x0, pinFace.x1, 0));
  };
};

/**
 * The groove's edges: on the inside of the side they are hidden, on the front's inside and in both ends they are seen. A
 * groove that stops short of the side's end is closed there and not seen in it.
 */
const groovePath = (
  { tailFace, tailFaceIs, tailEnd, pinEnd, pinFace, y }: CornerSheet,
  { from, to, depth, stop }: NonNullable<CornerSheet['groove']>,
  level: (x0: number, x1: number, u: number) => string,
): string => {
  // From the arris with the inside face.
  const inTail = tailFaceIs === 'inside' ? tailEnd.x0 : tailEnd.x1 - depth;
  return [
    ...[from, to].flatMap((u) => [
      level(tailFace.x0, stop ?? tailFace.x1, u),
      ...(stop === undefined ? [level(inTail, inTail + depth, u)] : []),
      level(pinEnd.x1 - depth, pinEnd.x1, u),
      level(pinFace.x0, pinFace.x1, u),
    ]),
    ...(stop === undefined ? [] : [`M${px(stop)} ${px(y(from))}V${px(y(to))}`]),
  ].join('');
};

/** The break line where a board extends beyond the drawing. */
const breakLine = (x: number, from: number, to: number): string =>
  `M${px(x)} ${px(from)}V${px((from + to) / 2 + 9)}l-5 -6l10 -6l-5 -6V${px(to)}`;
