import type { StrokeMark, TextMark } from '../../drawing/drawing.ts';
import { line, stroke } from '../../drawing/shapes.ts';
import type { Interval } from '../../joint/joint.ts';
import { EDGE_MARK_HEIGHT } from './edgeMark.ts';
import type { PlacedBand } from './placedBand.ts';
import { centredWord, WORD_ROOM } from './word.ts';

/** A groove on a template, mm; `offset` from the template's lower edge. */
export interface GrooveMark {
  readonly offset: number;
  readonly width: number;
  /** Distance from the board's end to where the groove stops short of it, on the joint, mm; absent where it runs through. */
  readonly stopped?: number;
  /** Whether it is a rebate along the lower edge. */
  readonly rebate?: true;
}

/** What it is called on a template. */
export const grooveName = ({ rebate }: GrooveMark): 'groove' | 'rebate' => (rebate ? 'rebate' : 'groove');

/** Heights of the groove's name: within the groove, or above a groove that is too narrow, and clear of the face-edge mark. */
const nameRoom = ({ offset, width }: GrooveMark): readonly [from: number, to: number] => {
  const top = offset + width;
  const within = Math.max(offset, EDGE_MARK_HEIGHT);
  if (top - within >= WORD_ROOM) return [within, top];
  const over = Math.max(top, EDGE_MARK_HEIGHT);
  return [over, over + WORD_ROOM];
};

/** Heights of the groove and its name together. */
export const grooveZone = (groove: GrooveMark): readonly [from: number, to: number] => [
  groove.offset,
  nameRoom(groove)[1],
];

/** The groove's edges across the inside face, and its end where it stops there: thin dashed lines. */
export const grooveLines = ({ offset, width, stopped }: GrooveMark, { band, at }: PlacedBand): StrokeMark => {
  const top = offset + width;
  const from = at(stopped ?? 0);
  return stroke('groove', 'groove', [
    ...[offset, top].map((y) => line(from, y, at(band.width), y)),
    ...(stopped === undefined ? [] : [line(from, offset, from, top)]),
  ]);
};

/**
 * The groove's name in the grip.
 * @param parts heights of the parts that the piece is split into; the word is left out unless one of them holds it whole
 */
export const grooveWord = (
  groove: GrooveMark,
  { band, at }: PlacedBand,
  parts: readonly Interval[],
): TextMark[] => {
  const [from, to] = nameRoom(groove);
  const whole = parts.some(([start, end]) => from >= start && to <= end);
  return whole
    ? [centredWord(grooveName(groove), 'regular', 0, [at((band.reach + band.width) / 2), (from + to) / 2])]
    : [];
};
