import { describe, expect, it } from 'vitest';
import { CORNERS, type CornerLetter } from '../../src/drawer/cornerLetters.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { NO_SPLITS } from '../../src/paper/piece.ts';
import { guideBoard } from '../../src/router/guide/guideBoard.ts';
import { guidePiece } from '../../src/sheets/guide/drawGuide.ts';
import { CUTTER, cutOf, LAPPED, THROUGH } from '../router/example.ts';
import { value } from '../value.ts';

/** Across a drawer to the right, from its front to its back, and up. */
type Way = readonly [number, number, number];

const opposite = ([x, y, z]: Way): Way => [-x, -y, -z];
/** How a frame of three ways is handed: 1 as the right hand's thumb and fingers, -1 in a mirror. */
const handed = ([a, b, c]: Way, [d, e, f]: Way, [g, h, i]: Way): number =>
  a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);

/** Out of the drawer at a corner: beyond its left or right side, and before its front or behind its back. */
const outward = (letter: CornerLetter): { side: Way; end: Way } => {
  const { end, hand } = CORNERS[letter];
  return { side: [hand === 'left' ? -1 : 1, 0, 0], end: [0, end === 'front' ? -1 : 1, 0] };
};
const UP: Way = [0, 0, 1];

const saidOn = (spec: JointSpec, board: 'tail' | 'pin', end: 'front' | 'back'): string => {
  const { joint, guided } = cutOf(spec);
  const guide = value(guideBoard(joint, CUTTER, guided, board, 14));
  return guidePiece(guide, {
    names: ['Tray'],
    item: 'Tray',
    shorter: [],
    stem: 'tray',
    units: 'mm',
    ends: [end],
    edge: ['reference edge', 'reference'],
    upper: 'upper edge',
  })
    .draw(NO_SPLITS)
    .marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))
    .join(' | ');
};

const found = (text: string, pattern: RegExp): string => {
  const [, what] = pattern.exec(text) ?? [];
  if (what === undefined) throw new Error(`${text} says nothing of ${pattern}`);
  return what;
};
const letterIn = (text: string, pattern: RegExp) => found(text, pattern) as CornerLetter;

/**
 * The guide's own frame is right-handed to one who looks down on it: from the fence to the slots' mouths (for work that
 * lies flat: towards its end), from the reference edge up the work's width, and up out of the guide. The ways of the work
 * that the words lay along these must be handed alike, or the corner cut is a mirror's.
 */
describe('what a guide says of how the work lies, in the drawer that the corners belong to', () => {
  it.each(['front', 'back'] as const)(
    'lays through pins so that they come out for their corner: %s',
    (end) => {
      const said = saidOn(THROUGH, 'pin', end);
      // The taper of its slots, narrow at the fence and wide at the mouths, is stated in the tests of the guides' shape.
      expect(said).toContain('INSIDE FACE against the fence');
      expect(said).toContain('END up');
      const lies = (letter: CornerLetter) => {
        const { side, end: outside } = outward(letter);
        return handed(outside, UP, side);
      };
      expect(lies(letterIn(said, /as drawn: ([A-D])/u))).toBe(1);
      expect(lies(letterIn(said, /turned over.*: ([A-D])/u))).toBe(-1);
    },
  );

  it.each(['front', 'back'] as const)(
    'lays lapped pins so that they come out for their corner: %s',
    (end) => {
      const said = saidOn(LAPPED, 'pin', end);
      expect(said).toContain('INSIDE FACE up, END against the fence');
      const lies = (letter: CornerLetter) => {
        const { side, end: outside } = outward(letter);
        return handed(side, UP, opposite(outside));
      };
      expect(lies(letterIn(said, /as drawn: ([A-D])/u))).toBe(1);
      expect(lies(letterIn(said, /turned over.*: ([A-D])/u))).toBe(-1);
    },
  );

  it.each([
    [LAPPED, 'front'],
    [THROUGH, 'back'],
  ] as const)('lays tails with either face to the fence, each for its own corner: %#', (spec, end) => {
    const said = saidOn(spec, 'tail', end);
    const outside = outward(letterIn(said, /([A-D]): OUTSIDE FACE against the fence/u));
    expect(handed(opposite(outside.side), UP, outside.end)).toBe(1);
    const inside = outward(letterIn(said, /([A-D]): INSIDE FACE against the fence/u));
    expect(handed(inside.side, UP, inside.end)).toBe(1);
    expect(said).toContain('END up');
  });
});
