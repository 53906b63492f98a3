import type { Drawing, TextMark } from '../../src/drawing/drawing.ts';
import type { JointBoard } from '../../src/joint/joint.ts';
import type { Piece } from '../../src/paper/piece.ts';
import { type Corner, cornerPieces } from '../../src/sheets/template/cornerPieces.ts';
import type { GrooveMark } from '../../src/sheets/template/grooveMark.ts';
import { groupNames } from '../../src/units/shortNames.ts';
import type { KnownJoint } from './anyCorner.ts';

/** A front corner of a drawer for buttons. */
export const cornerOf = (
  { joint }: Pick<KnownJoint, 'joint'>,
  { item = 'Buttons', ...more }: Partial<Corner> = {},
): Corner => ({
  joint,
  ...groupNames([item], [])([item]),
  letter: 'C',
  hand: 'left',
  count: 2,
  tailBoard: { part: 'left side', end: 'front end' },
  pinBoard: { part: 'front', end: 'left end' },
  units: 'mm',
  stem: 'buttons',
  ...more,
});

/** The same with a groove in both boards; it may stop short of the tail board's end. */
export const grooved = (corner: Corner, groove: GrooveMark): Corner => {
  const { stopped: _, ...through } = groove;
  return {
    ...corner,
    tailBoard: { ...corner.tailBoard, groove },
    pinBoard: { ...corner.pinBoard, groove: through },
  };
};

export const pieceOf = (corner: Corner, board: JointBoard): Piece => {
  const [piece] = cornerPieces(corner, { boards: [board], flat: false, rods: false });
  if (piece === undefined) throw new Error('no piece');
  return piece;
};

export const everyPiece = (corner: Corner, flat: boolean): Piece[] =>
  cornerPieces(corner, { boards: ['tail', 'pin'], flat, rods: true });

export const textsOf = ({ marks }: Drawing): TextMark[] =>
  marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));

export const wordsOf = (drawing: Drawing): string[] => textsOf(drawing).map(({ text }) => text);
