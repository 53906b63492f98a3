import type { Box } from '../../../drawing/drawing.ts';
import type { DefectKind } from '../../../stock/plank.ts';
import { extentsOf } from '../../../stock/polygon.ts';
import { accept, type Place, type Result } from '../../../units/complaint.ts';
import type { Edit } from '../../text/edit.ts';
import { editPlan } from '../../text/editPlan.ts';
import { type Snapshot, snapshot } from '../snapshot.ts';
import { isWritten, valueAt, writtenPlan } from '../writtenPlan.ts';
import { boardsIn } from './boardEdits.ts';
import { fittedInto } from './boardShape.ts';
import { cornersAt, lengthEdit } from './writtenLengths.ts';

const change = ({ text }: Snapshot, edits: readonly Edit[]): Result<Snapshot> =>
  snapshot(editPlan(text, edits));

/** A knot is sound or loose; the plan has one word for both. */
const kindEdits = (at: Place, kind: DefectKind): Edit[] => {
  const isKnot = kind === 'sound knot' || kind === 'loose knot';
  return [
    { at: [...at, 'kind'], value: isKnot ? 'knot' : kind },
    { at: [...at, 'sound'], value: kind === 'sound knot' ? true : undefined },
  ];
};

/** Its middle, and its extent. */
const boxEdits = (now: Snapshot, at: Place, { x0, y0, x1, y1 }: Box): Edit[] => [
  lengthEdit(now, [...at, 'at'], [(x0 + x1) / 2, (y0 + y1) / 2]),
  lengthEdit(now, [...at, 'size'], [x1 - x0, y1 - y0]),
];

/** Adds a defect after the last of a board; its place in mm, in the board's coordinates. */
export const addDefect = (now: Snapshot, board: number, kind: DefectKind, box: Box): Result<Snapshot> => {
  const defects = boardsIn(now)[board]?.plank.defects ?? [];
  const at: Place = ['boards', board, 'defects', defects.length];
  return change(now, [...kindEdits(at, kind), ...boxEdits(now, at, box)]);
};

export const removeDefect = (now: Snapshot, board: number, defect: number): Result<Snapshot> =>
  change(now, [{ at: ['boards', board, 'defects', defect], value: undefined }]);

/** Says that a defect is of another kind. */
export const setDefectKind = (
  now: Snapshot,
  board: number,
  defect: number,
  kind: DefectKind,
): Result<Snapshot> => change(now, kindEdits(['boards', board, 'defects', defect], kind));

/**
 * Moves and stretches a defect to other extents, in the way in which the plan gives it. What is told by how far it reaches
 * from an end stays so while it starts at that end and takes the full width.
 */
export const setDefectBox = (now: Snapshot, board: number, defect: number, box: Box): Result<Snapshot> => {
  const plank = boardsIn(now)[board]?.plank;
  if (plank === undefined) return accept(now);
  const at: Place = ['boards', board, 'defects', defect];
  const plan = writtenPlan(now.text);
  const outline = cornersAt(now, plan, [...at, 'outline']);
  if (outline !== undefined)
    return change(now, [lengthEdit(now, [...at, 'outline'], fittedInto(outline, box))]);
  if (!isWritten(plan, [...at, 'from'])) return change(now, boxEdits(now, at, box));
  const on = extentsOf(plank.outline);
  const isLeft = valueAt(plan, [...at, 'from']) === 'left';
  const isAtEnd = isLeft ? box.x0 === on.x0 : box.x1 === on.x1;
  if (isAtEnd && box.y0 <= on.y0 && box.y1 >= on.y1)
    return change(now, [lengthEdit(now, [...at, 'length'], box.x1 - box.x0)]);
  return change(now, [
    { at: [...at, 'from'], value: undefined },
    { at: [...at, 'length'], value: undefined },
    ...boxEdits(now, at, box),
  ]);
};
