import { describe, expect, it } from 'vitest';
import { NO_SPLITS } from '../../../src/paper/piece.ts';
import { type Corner, cornerPieces } from '../../../src/sheets/template/cornerPieces.ts';
import { jointOf } from '../../joint/told.ts';
import { cornerOf, pieceOf, textsOf, wordsOf } from '../pieces.ts';
import { segmentsOf } from '../segments.ts';

const lapped = jointOf({
  kind: 'lapped',
  width: 96,
  tailBoard: 11,
  pinBoard: 20,
  lap: 5,
  spacing: { kind: 'even' },
});
const through = jointOf({
  kind: 'through',
  width: 96,
  tailBoard: 11,
  pinBoard: 11,
  spacing: { kind: 'even' },
});

const namesOf = (corner: Corner, choice: Partial<Parameters<typeof cornerPieces>[1]> = {}): string[] =>
  cornerPieces(corner, { boards: ['tail', 'pin'], flat: false, rods: false, ...choice }).map(
    ({ name }) => name,
  );

describe('the pieces of a corner', () => {
  it('are a folded template for each board, or for the board asked for', () => {
    const corner = cornerOf({ joint: lapped });
    expect(namesOf(corner)).toEqual(['buttons-left-side-c', 'buttons-front-c']);
    expect(namesOf(corner, { boards: ['tail'] })).toEqual(['buttons-left-side-c']);
    expect(namesOf(corner, { boards: ['pin'] })).toEqual(['buttons-front-c']);
  });

  it('are a flat template for each band where the boards are of uneven thickness', () => {
    expect(namesOf(cornerOf({ joint: lapped }), { flat: true })).toEqual([
      'buttons-left-side-c-inside',
      'buttons-left-side-c-end',
      'buttons-left-side-c-outside',
      'buttons-front-c-inside',
      'buttons-front-c-end',
    ]);
    expect(namesOf(cornerOf({ joint: through }), { flat: true }).slice(3)).toEqual([
      'buttons-front-c-inside',
      'buttons-front-c-end',
      'buttons-front-c-outside',
    ]);
  });

  it('have one rod for both boards where rods are asked for', () => {
    expect(namesOf(cornerOf({ joint: lapped }), { rods: true })).toEqual([
      'buttons-left-side-c',
      'buttons-front-c',
      'buttons-left-side-c-rod',
    ]);
  });

  it('have a title, a caption in parts, and a quantity', () => {
    const { title, caption, count } = cornerPieces(cornerOf({ joint: lapped }), {
      boards: ['pin'],
      flat: false,
      rods: false,
    })[0] ?? { title: '', caption: [], count: 0 };
    expect([title, caption, count]).toEqual([
      'Buttons, front, left end, corner C',
      ['Buttons', 'front · C', 'left end'],
      2,
    ]);
  });

  it('name the edge that aligns them where it is not the reference edge', () => {
    const corner = cornerOf(
      { joint: through },
      {
        tailBoard: { part: 'left side', end: 'front end', edge: ["rebate's lower edge", 'rebate'] },
      },
    );
    expect(wordsOf(pieceOf(corner, 'tail').draw(NO_SPLITS))).toContain("← rebate's lower edge");
    expect(wordsOf(pieceOf(corner, 'pin').draw(NO_SPLITS))).toContain('← reference edge');
  });

  it('name the end, level or between the sockets where those are too short for the word', () => {
    const end = (width: number, tails: number, thickness: number, halfPin: number) => {
      const joint = jointOf({
        kind: 'lapped',
        width,
        tailBoard: 8,
        pinBoard: thickness,
        lap: 3.175,
        halfPin: { lower: halfPin, upper: halfPin },
        spacing: { kind: 'even', tails },
      });
      const words = textsOf(pieceOf(cornerOf({ joint }), 'pin').draw(NO_SPLITS));
      return words.filter(({ text }) => text === 'END').map(({ turn }) => turn);
    };
    expect(end(96, 3, 20, 4)).toEqual([90]);
    // Half-inch wood: the lap leaves 9.5 mm for the word, and sockets of 7 mm are too short for it upright.
    expect(end(44.45, 3, 12.7, 4)).toEqual([0]);
  });

  it('name the lap, and draw it, only where there is one', () => {
    const lap = (joint: typeof lapped, rebated = false) => {
      const pinBoard = { part: 'front', end: 'left end', rebated };
      const drawing = pieceOf(cornerOf({ joint }, { pinBoard }), 'pin').draw(NO_SPLITS);
      return [wordsOf(drawing).filter((word) => word.startsWith('lap')), segmentsOf(drawing, 'lap').length];
    };
    expect(lap(lapped)).toEqual([['lap', 'lap 5 mm'], 1]);
    expect(lap(through)).toEqual([[], 0]);
    // A rebated front: its template goes round the shoulder, and the lip stands beyond it.
    expect(lap(lapped, true)).toEqual([[], 0]);
  });

  it('give lengths in the maker’s unit', () => {
    const words = wordsOf(pieceOf(cornerOf({ joint: lapped }, { units: 'in' }), 'pin').draw(NO_SPLITS));
    // 5 mm is 0.19685 in: 13/64 is 0.203.
    expect(words).toContain('lap 13/64"');
    expect(words).toContain('½"');
  });
});
