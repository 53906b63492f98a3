import { describe, expect, it } from 'vitest';
import { checkSpacingWish, strayKeys, wishedSpacing } from '../../src/joint/spacingWish.ts';
import { told } from '../value.ts';

const even = { kind: 'even' } as const;

describe('a wished spacing', () => {
  it('leaves the tails as they are where it is even or none is written', () => {
    expect(wishedSpacing({}, even)).toEqual({ spacing: even });
    expect(wishedSpacing({ spacing: 'even' }, even)).toEqual({ spacing: even });
  });

  it("puts small pins in the tails of a hound's tooth, however those are spaced", () => {
    const graded = { kind: 'graded', ratio: 0.9, from: 'middle' } as const;
    expect(wishedSpacing({ spacing: 'hounds-tooth' }, graded)).toEqual({ spacing: graded, houndsTooth: {} });
    expect(wishedSpacing({ spacing: 'hounds-tooth', smallPin: 4 }, even)).toEqual({
      spacing: even,
      houndsTooth: { smallPin: 4 },
    });
  });

  it('groups the tails', () => {
    expect(wishedSpacing({ spacing: 'grouped', groups: [2, 3, 2], groupPin: 15 }, even)).toEqual({
      spacing: { kind: 'grouped', tails: 7, groups: [2, 3, 2], groupPin: 15 },
    });
  });

  it('is contradicted by groups that are missing, and by tails that are counted or graded beside groups', () => {
    expect(checkSpacingWish({ spacing: 'hounds-tooth', tails: 4, graded: {} }, false)).toEqual([]);
    expect(checkSpacingWish({ spacing: 'even', tails: 4, graded: {} }, false)).toEqual([]);
    expect(told(checkSpacingWish({ spacing: 'grouped', tails: 4, graded: {} }, false))).toEqual([
      'spacing: the tails are grouped, but their groups are missing; list the number of tails in each group (groups), such as 2, 3, 2',
      'tails: grouped tails are as many as their groups say; remove it, or choose another spacing',
      "graded: grouped tails are equal, so they cannot be graded too; even ones and those of a hound's tooth can, from the edge or, both ways, from the middle; choose even or hounds-tooth spacing, or remove the grade",
    ]);
  });

  it('closes tails in at the edges, as many as are given', () => {
    expect(wishedSpacing({ spacing: 'closer-edges' }, { kind: 'even', tails: 9 })).toEqual({
      spacing: { kind: 'closer-edges', tails: 9, ratio: 0.7, each: 2 },
    });
    expect(wishedSpacing({ spacing: 'closer-edges', closer: 0.8, closerTails: 3 }, even)).toEqual({
      spacing: { kind: 'closer-edges', ratio: 0.8, each: 3 },
    });
    expect(told(checkSpacingWish({ spacing: 'closer-edges', tails: 5 }, false))).toEqual([]);
    expect(told(checkSpacingWish({ spacing: 'closer-edges', tails: [20], graded: {} }, true))).toEqual([
      'spacing: the tails are listed width by width, so they cannot be closer at the edges too; give the number of tails, or list narrower ones at the edges and choose even spacing',
      'graded: tails that are closer at the edges cannot be graded too; graded from the middle, all of them narrow to both edges; choose even spacing, or remove the grade',
    ]);
  });

  it('has no use for the keys of another', () => {
    const all = { groups: [2, 2], groupPin: 9, smallPin: 4 };
    expect(strayKeys(all)).toEqual(['groups', 'groupPin', 'smallPin']);
    expect(strayKeys({ ...all, spacing: 'grouped' })).toEqual(['smallPin']);
    expect(strayKeys({ closer: 0.7, closerTails: 2 })).toEqual(['closer', 'closerTails']);
    expect(strayKeys({ closer: 0.7, spacing: 'closer-edges' })).toEqual([]);
    expect(strayKeys({ ...all, spacing: 'hounds-tooth' })).toEqual(['groups', 'groupPin']);
  });
});
