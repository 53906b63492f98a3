import { describe, expect, it } from 'vitest';
import { cutJoint } from '../../../src/router/guide/cutJoint.ts';
import { type Cutting, checkCutting } from '../../../src/router/limits/cutting.ts';
import { speak } from '../../../src/units/phrase.ts';
import { value } from '../../value.ts';
import { CUTTER, cutOf, LAPPED, THROUGH } from '../example.ts';

const cut = (spec: typeof LAPPED, tools: Omit<Cutting, 'cutter'>) =>
  cutJoint(cutOf(spec).joint, { cutter: CUTTER, ...tools });

const made = (spec: typeof LAPPED, tools: Omit<Cutting, 'cutter'>) => value(cut(spec, tools));

const places = (spec: typeof LAPPED, tools: Omit<Cutting, 'cutter'>): string[] => {
  const result = cut(spec, tools);
  return result.ok ? [] : result.complaints.map(({ at }) => at.join('.'));
};

describe('cutJoint', () => {
  it('makes no guides without a bush, and one for each board with it', () => {
    expect(made(LAPPED, {}).guides).toEqual([]);
    expect(made(LAPPED, { bush: 16 }).guides.map(({ board, bush }) => [board, bush])).toEqual([
      ['tail', 16],
      ['pin', 16],
    ]);
  });

  it('makes no guide for tails whose only spaces are half ones that are cut by hand', () => {
    const one = { ...THROUGH, spacing: { kind: 'even', tails: 1 } } as const;
    const boards = (lower: boolean, upper: boolean) => {
      const cut = cutJoint(cutOf(one).joint, { cutter: CUTTER, bush: 16 }, { lower, upper });
      return cut.ok ? cut.value.guides.map(({ board, byHand }) => [board, byHand]) : [];
    };
    expect(boards(true, true)).toEqual([['pin', []]]);
    expect(boards(false, true)).toEqual([
      ['tail', ['upper']],
      ['pin', []],
    ]);
    expect(boards(true, false)[0]).toEqual(['tail', ['lower']]);
    expect(boards(false, false)[0]).toEqual(['tail', []]);
  });

  it('has the other bush for the straight cutter alone', () => {
    const bushes = (spec: typeof LAPPED) =>
      made(spec, { bush: 16, pinBush: 11 }).guides.map(({ bush }) => bush);
    expect(bushes(THROUGH)).toEqual([16, 11]);
    expect(bushes(LAPPED)).toEqual([16, 16]);
    expect(made(THROUGH, { pinBush: 11 }).guides.map(({ board }) => board)).toEqual(['pin']);
  });

  it('chooses a straight cutter that passes its own bush, where none is named', () => {
    const straight = (tools: Omit<Cutting, 'cutter'>) => {
      const { pinCut } = made(THROUGH, tools).guided;
      return pinCut.kind === 'straight' ? pinCut.diameter : undefined;
    };
    expect(straight({})).toBe(12.7);
    expect(straight({ bush: 16, pinBush: 11 })).toBe(8);
    expect(straight({ straight: 6 })).toBe(6);
  });

  it('blames the tool that will not do by its key', () => {
    expect(places(THROUGH, { straight: 90 })).toEqual(['cutter.straight']);
    expect(places(THROUGH, { bush: 34 })).toContain('cutter.bush');
    // The tails' bush is at fault, the pins' is not.
    expect(places(THROUGH, { bush: 46, pinBush: 11 })).toEqual(['cutter.bush']);
    expect(places(LAPPED, { bush: 22, pinBush: 11 })).toEqual(['cutter.bush']);
    expect(places(THROUGH, { bush: 16, pinBush: 34 })).toEqual(['cutter.pinBush']);
    // A lapped joint has no use for a straight cutter.
    expect(places(LAPPED, { straight: 90 })).toEqual([]);
  });
});

describe('checkCutting', () => {
  const wrong = (tools: Omit<Cutting, 'cutter'>, cutter = CUTTER): string[] =>
    checkCutting({ cutter, ...tools }).map(({ at }) => at.join('.'));

  it('lets a bush be as wide as the cutter, or wider', () => {
    expect(wrong({ bush: 12.7, straight: 8, pinBush: 8 })).toEqual([]);
    expect(wrong({ bush: 12.6, straight: 8, pinBush: 7.9 })).toEqual(['cutter.bush', 'cutter.pinBush']);
  });

  it('asks for sizes that are sizes', () => {
    expect(wrong({ bush: Number.NaN, straight: 0, pinBush: Number.POSITIVE_INFINITY })).toEqual([
      'cutter.straight',
      'cutter.bush',
      'cutter.pinBush',
    ]);
    expect(wrong({ pinBush: 0 })).toEqual(['cutter.pinBush']);
  });

  it('says what must pass through what', () => {
    const said = (tools: Omit<Cutting, 'cutter'>): string[] =>
      checkCutting({ cutter: CUTTER, ...tools }).map(({ says }) => speak(says, 'mm'));
    expect(said({ straight: -1 })).toEqual(['the straight cutter is -1 mm; it must be more than 0 mm']);
    expect(said({ bush: 12, straight: 8, pinBush: 7 })).toEqual([
      'the guide bush is 12 mm outside; the dovetail cutter of 12.7 mm must pass through it, so it must be 12.7 mm or more',
      'the guide bush is 7 mm outside; the straight cutter of 8 mm must pass through it, so it must be 8 mm or more',
    ]);
    expect(said({})).toEqual([]);
  });

  it('does not judge the tools round a cutter that is itself wrong', () => {
    expect(wrong({ bush: 3 }, { ...CUTTER, angle: 0 })).toEqual(['cutter.angle']);
  });
});
