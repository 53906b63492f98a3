import { describe, expect, it } from 'vitest';
import type { Box, TextMark } from '../../../src/drawing/drawing.ts';
import { CAP_HEIGHT, textWidth } from '../../../src/drawing/textWidth.ts';
import type { JointSpec } from '../../../src/joint/jointSpec.ts';
import { NO_SPLITS, type Piece } from '../../../src/paper/piece.ts';
import { guideBoard } from '../../../src/router/guide/guideBoard.ts';
import { guideLayers, guidePiece } from '../../../src/sheets/guide/drawGuide.ts';
import { CUTTER, cutOf, LAPPED, THROUGH } from '../../router/example.ts';
import { value } from '../../value.ts';
import { GUIDE_TITLES } from './guideTitles.ts';

const pieceOf = (spec: JointSpec, board: 'tail' | 'pin', bush: number): Piece => {
  const { joint, guided } = cutOf(spec);
  const guide = value(guideBoard(joint, CUTTER, guided, board, bush));
  return guidePiece(guide, GUIDE_TITLES);
};

/** The narrowest joint that this cutter can cut at all. */
const SMALLEST: JointSpec = {
  kind: 'lapped',
  width: 16,
  tailBoard: 6,
  pinBoard: 12,
  lap: 3,
  halfPin: { lower: 1, upper: 1 },
  spacing: { kind: 'even', tails: 1 },
};

const CASES: readonly [string, Piece][] = [
  ['lapped tails', pieceOf(LAPPED, 'tail', 16)],
  ['lapped sockets', pieceOf(LAPPED, 'pin', 16)],
  ['through tails', pieceOf(THROUGH, 'tail', 16)],
  ['through pins', pieceOf(THROUGH, 'pin', 11)],
  ['the smallest tails', pieceOf(SMALLEST, 'tail', 16)],
  ['the smallest sockets', pieceOf(SMALLEST, 'pin', 16)],
];

const textsOf = (piece: Piece, splits = NO_SPLITS): TextMark[] =>
  piece.draw(splits).marks.filter((mark) => mark.kind === 'text');

/** The letters' box, without what hangs below the line. */
const boxOf = ({ at: [x, y], text, size, turn, weight, anchor }: TextMark): Box => {
  const length = textWidth(text, size, weight);
  const start = anchor === 'middle' ? -length / 2 : 0;
  const cap = size * CAP_HEIGHT;
  return turn === 90
    ? { x0: x - cap, x1: x, y0: y + start, y1: y + start + length }
    : { x0: x + start, x1: x + start + length, y0: y, y1: y + cap };
};

const meet = (a: Box, b: Box): boolean => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;

describe('guidePiece', () => {
  it.each(CASES)('draws one closed outline at full size, and nothing else in its role: %s', (_, piece) => {
    const outlines = piece.draw(NO_SPLITS).marks.filter(({ role }) => role === 'outline');
    expect(outlines).toHaveLength(1);
    const paths = outlines[0]?.kind === 'stroke' ? outlines[0].paths : [];
    expect(paths).toHaveLength(1);
    expect(paths[0]?.closed).toBe(true);
    const xs = paths.flatMap(({ points }) => points.map(([x]) => x));
    const ys = paths.flatMap(({ points }) => points.map(([, y]) => y));
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([0, piece.width]);
    expect([Math.min(...ys), Math.max(...ys)]).toEqual([0, piece.height]);
  });

  it.each(CASES)(
    'keeps every mark in its box, letters at least 2.4 mm high and clear of each other: %s',
    (_, piece) => {
      const { box, marks } = piece.draw(NO_SPLITS);
      for (const mark of marks)
        if (mark.kind !== 'text')
          for (const [x, y] of mark.paths.flatMap(({ points }) => points)) {
            expect(x).toBeGreaterThanOrEqual(box.x0);
            expect(x).toBeLessThanOrEqual(box.x1);
            expect(y).toBeGreaterThanOrEqual(box.y0);
            expect(y).toBeLessThanOrEqual(box.y1);
          }
      const texts = textsOf(piece);
      for (const text of texts) {
        expect(text.size * CAP_HEIGHT).toBeGreaterThanOrEqual(2.4 - 1e-9);
        for (const other of texts) if (other !== text) expect(meet(boxOf(text), boxOf(other))).toBe(false);
      }
    },
  );

  it.each(CASES)('says what it is, for which bush and cutter and how deep: %s', (_, piece) => {
    const said = textsOf(piece)
      .map(({ text }) => text)
      .join(' ');
    expect(said).toMatch(/Buttons, front · .*(tails|pins)/u);
    expect(said).toMatch(/bush 1[16] mm/u);
    expect(said).toMatch(/cutter (12\.7|8) mm/u);
    expect(said).toMatch(/depth (9|14|15|16) mm below the guide/u);
    expect(said).toContain('fence');
    expect(said).toMatch(/reference/u);
    expect(said).toContain('upper edge');
    expect(said).toContain('fence line');
    expect(said).toMatch(/FACE/u);
  });

  it.each(CASES)(
    'may be parted inside any finger, and then says what it is on either part: %s',
    (_, piece) => {
      const fingers = piece.splittable.y.filter(([from, to]) => from > 60 && to < piece.height - 60);
      for (const [from, to] of fingers) {
        const texts = textsOf(piece, { x: [], y: [(from + to) / 2] });
        expect(texts.filter(({ text }) => text.includes('Buttons'))).toHaveLength(2);
      }
    },
  );
});

describe('guideLayers', () => {
  it('has the outline, the middles, the fence and the edges of the work, each on its layer', () => {
    const { joint, guided } = cutOf(LAPPED);
    const guide = value(guideBoard(joint, CUTTER, guided, 'tail', 16));
    const layers = guideLayers(guide, GUIDE_TITLES);
    expect(layers.map(({ name, line }) => [name, line])).toEqual([
      ['OUTLINE', 'CONTINUOUS'],
      ['CENTRE', 'CENTER'],
      ['FENCE', 'HIDDEN'],
      ['REFERENCE', 'HIDDEN'],
      ['WORK', 'HIDDEN'],
      ['TEXT', 'CONTINUOUS'],
    ]);
    const [outline, centre, fence, reference, work] = layers;
    expect(outline?.outlines).toEqual([guide.outline]);
    // A middle for each of the four spaces; the fence's edges at -40 and 0; the work 120 wide.
    expect(centre?.paths).toHaveLength(4);
    expect(fence?.paths?.map(({ points }) => points.map(([x]) => x))).toEqual([
      [-40, -40],
      [0, 0],
    ]);
    expect(reference?.paths?.map(({ points }) => points.map(([, y]) => y))).toEqual([[0, 0]]);
    expect(work?.paths?.map(({ points }) => points.map(([, y]) => y))).toEqual([[120, 120]]);
  });
});
