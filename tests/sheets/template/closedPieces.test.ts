import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOut } from '../../../src/joint/layOut.ts';
import { NO_SPLITS } from '../../../src/paper/piece.ts';
import { cornerPieces } from '../../../src/sheets/template/cornerPieces.ts';
import { closedSpec } from '../../joint/anySpec.ts';
import { doubleJoint, secretJoint } from '../../joint/kinds/example.ts';
import { faults } from '../faults.ts';
import { cornerOf, everyPiece, pieceOf, wordsOf } from '../pieces.ts';
import { segmentsOf } from '../segments.ts';

/** Where lines of a role lie across a piece, each once, rounded. */
const across = (piece: ReturnType<typeof pieceOf>, role: 'baseline' | 'lap' | 'fold') => [
  ...new Set(segmentsOf(piece.draw(NO_SPLITS), role).map(([[x]]) => Math.round(1e6 * x) / 1e6)),
];

describe('the templates of a double-lapped corner, 11 and 20 mm thick with laps of 4 and 5', () => {
  const left = cornerOf({ joint: doubleJoint }, { hand: 'left' });
  const tail = pieceOf(left, 'tail');
  const pin = pieceOf(left, 'pin');

  it('are on the inside face and the end of either board', () => {
    const names = cornerPieces(left, { boards: ['tail', 'pin'], flat: true, rods: false });
    expect(names.map(({ name }) => name.split('-').at(-1))).toEqual(['inside', 'end', 'inside', 'end']);
  });

  it('wrap the whole end of the tail board, with the lap’s line 7 mm from the inside arris', () => {
    // Before the left side's front end its inside face is at the right: a grip of 12, 15 of joint, then the end.
    expect(tail.width).toBe(11 + 15 + 12);
    expect(across(tail, 'fold')).toEqual([11]);
    expect(across(tail, 'lap')).toEqual([11 - 7]);
    expect(across(tail, 'baseline')).toEqual([11 + 15]);
  });

  it('end at the rebate’s step on the pin board, whose inside face is 7 mm long to the baseline', () => {
    expect(pin.width).toBe(12 + 7 + 15);
    expect(across(pin, 'fold')).toEqual([12 + 7]);
    expect(across(pin, 'lap')).toEqual([]);
    expect(across(pin, 'baseline')).toEqual([12]);
  });

  it('are mirrored at the right corner', () => {
    const right = cornerOf({ joint: doubleJoint }, { hand: 'right' });
    expect(across(pieceOf(right, 'tail'), 'lap')).toEqual([12 + 15 + 7]);
    expect(across(pieceOf(right, 'pin'), 'baseline')).toEqual([15 + 7]);
  });

  it('tell each board its own lap', () => {
    expect(wordsOf(tail.draw(NO_SPLITS))).toContain('tail lap 4 mm');
    expect(wordsOf(pin.draw(NO_SPLITS))).toContain('lap 5 mm');
  });
});

describe('the templates of a secret-mitred corner, 20 mm thick with laps and shoulders of 5', () => {
  it.each(['tail', 'pin'] as const)('end at the rebate’s step of the %s board', (board) => {
    const piece = pieceOf(cornerOf({ joint: secretJoint }, { hand: 'left' }), board);
    expect(piece.width).toBe(12 + 15 + 15);
    expect(across(piece, 'lap')).toEqual([]);
  });

  it.each(['tail', 'pin'] as const)('draw the shoulders right over the %s board', (board) => {
    const piece = pieceOf(cornerOf({ joint: secretJoint }, { hand: 'left' }), board);
    const level = segmentsOf(piece.draw(NO_SPLITS), 'square').filter(([[, y]]) => y === 5 || y === 101);
    const reach = level.reduce((sum, [[a], [b]]) => sum + Math.abs(b - a), 0);
    // Two shoulders, each 15 on the face and 15 on the end.
    expect(reach).toBeCloseTo(2 * 30, 6);
  });
});

describe('the labels on templates of any closed corner', () => {
  it('are inside the outline, off every line and off each other', () => {
    fc.assert(
      fc.property(
        closedSpec,
        fc.boolean(),
        fc.constantFrom('left' as const, 'right' as const),
        fc.constantFrom('mm' as const, 'in' as const),
        (spec, flat, hand, units) => {
          const laid = layOut(spec);
          fc.pre(laid.ok);
          for (const piece of everyPiece(cornerOf({ joint: laid.value }, { hand, units }), flat))
            expect([piece.name, ...faults(piece)]).toEqual([piece.name]);
        },
      ),
      { numRuns: 40 },
    );
  });
});
