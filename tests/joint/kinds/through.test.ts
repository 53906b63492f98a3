import { describe, expect, it } from 'vitest';
import { kindOf } from '../../../src/joint/kinds/kinds.ts';
import { through } from '../../../src/joint/kinds/through.ts';
import { speak } from '../../../src/units/phrase.ts';
import { throughJoint } from './example.ts';

describe('a through corner', () => {
  it('is what a joint of its name is asked of', () => {
    expect(kindOf(throughJoint)).toBe(through);
  });

  it('has tails as long as its pin board is thick, no lap, and a tail board that ends at the face', () => {
    expect(through.shape({ tailBoard: 11, pinBoard: 15 })).toEqual({
      depth: 15,
      tailBoard: { thickness: 11, lap: 0 },
      pinBoard: { thickness: 15, lap: 0 },
      shoulder: { lower: 0, upper: 0 },
      setBack: 0,
    });
  });

  it('has no length of its own', () => {
    expect(through.lengths).toEqual([]);
    expect(through.wish({})).toEqual({ kind: 'through' });
  });

  it('accepts any pin board that there is, and advises on none', () => {
    const thin = { tailBoard: 20, pinBoard: 2 };
    expect(through.leastBoard).toEqual({ tail: 2, pin: 2 });
    expect(through.advise(thin, through.shape(thin))).toEqual([]);
  });

  it('lets its sockets run out at the outside face', () => {
    expect(through.sockets).toBe('open');
  });

  it('goes no deeper by a thinner pin board, down to a tenth of a millimetre', () => {
    const { wish, words } = through.noDeeper({ tailBoard: 11, pinBoard: 15 }, 12.37);
    expect(wish).toEqual({ kind: 'through', pinBoard: 12.3 });
    expect(speak(words, 'mm')).toBe('take a pin board of at most 12.37 mm');
  });

  it('is marked on both faces and the end of both boards, on the outside of the pin board at the tips', () => {
    const { tail, pin } = through.marks(throughJoint);
    expect(tail.map(({ surface }) => surface)).toEqual(['inside', 'end', 'outside']);
    expect(pin.map(({ surface }) => surface)).toEqual(['inside', 'end', 'outside']);
    const [inside, , outside] = pin;
    expect(inside?.waste[0]).toEqual([
      [0, 13],
      [0, 40],
      [10, 40],
      [10, 13],
    ]);
    expect(outside?.waste[0]).toEqual([
      [0, 10],
      [0, 43],
      [10, 43],
      [10, 10],
    ]);
    expect(outside?.lines[1]?.paths).toEqual(
      [10, 43, 53, 86].map((u) => [
        [0, u],
        [10, u],
      ]),
    );
  });

  it('has no line of a lap on its end, which is all joint', () => {
    const [, end] = through.marks(throughJoint).pin;
    expect(end?.reach).toBe(15);
    expect(end?.lines.map(({ role }) => role)).toEqual(['slope']);
  });

  it('is gauged round the tail board and on both faces of the pin board, there less what is proud', () => {
    expect(through.gauges(throughJoint)).toEqual([
      { name: 'tailBoard', board: 'tail', on: 'all round', from: 'end', length: 15 },
      { name: 'pinBoardFace', board: 'pin', on: 'both faces', from: 'end', length: 10 },
    ]);
  });

  it('shows its tails to the face of the pin board, and one line, the baseline', () => {
    const { reach, tails, uprights } = through.sideView(throughJoint);
    expect([reach, uprights]).toEqual([15, [15]]);
    expect(tails[1]).toEqual([
      [15, 56],
      [0, 53],
      [0, 86],
      [15, 83],
    ]);
  });
});
