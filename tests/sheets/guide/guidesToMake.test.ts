import { describe, expect, it } from 'vitest';
import { cutJoint } from '../../../src/router/guide/cutJoint.ts';
import { guidePiece } from '../../../src/sheets/guide/drawGuide.ts';
import { guidesToMake } from '../../../src/sheets/guide/guidesToMake.ts';
import { CUTTER, cutOf, LAPPED } from '../../router/example.ts';

const guidesOf = (width: number) => {
  const cut = cutJoint(cutOf({ ...LAPPED, width }).joint, { cutter: CUTTER, bush: 16 });
  return cut.ok ? cut.value.guides : [];
};

describe('guidesToMake', () => {
  it('makes equal guides once, named for all their corners and filed under the first', () => {
    const made = guidesToMake(
      [
        { item: 'Buttons front', stem: 'buttons-front', end: 'front', guides: guidesOf(120) },
        { item: 'Cloth front', stem: 'cloth-front', end: 'front', guides: guidesOf(150) },
        { item: 'Thread front', stem: 'thread-front', end: 'front', guides: guidesOf(120) },
      ],
      'mm',
    );
    expect(made.map(({ guide, titles }) => [guidePiece(guide, titles).name, titles.item])).toEqual([
      ['buttons-front-guide-tails', 'Buttons front, Thread front'],
      ['buttons-front-guide-pins', 'Buttons front, Thread front'],
      ['cloth-front-guide-tails', 'Cloth front'],
      ['cloth-front-guide-pins', 'Cloth front'],
    ]);
  });

  it('names the ends of an equal guide, but separates guides aligned with another edge', () => {
    const guides = guidesOf(120);
    const groove = ["groove's upper edge", 'groove, upper'] as const;
    const made = guidesToMake(
      [
        { item: 'Tray front', stem: 'tray-front', end: 'front', guides },
        { item: 'Tray back', stem: 'tray-back', end: 'back', edges: { tail: groove }, guides },
      ],
      'mm',
    );
    expect(made.map(({ guide, titles }) => [guide.board, titles.item, titles.ends, titles.edge])).toEqual([
      ['tail', 'Tray front', ['front'], ['reference edge', 'reference', 'edge']],
      ['pin', 'Tray front, Tray back', ['front', 'back'], ['reference edge', 'reference', 'edge']],
      ['tail', 'Tray back', ['back'], groove],
    ]);
  });

  it('separates guides whose other edge has another name', () => {
    const guides = guidesOf(120);
    const uppers = { pin: "rebate's edge" } as const;
    const made = guidesToMake(
      [
        { item: 'Tray front', stem: 'tray-front', end: 'front', guides },
        { item: 'Lid front', stem: 'lid-front', end: 'front', uppers, guides },
      ],
      'mm',
    );
    expect(made.map(({ guide, titles }) => [guide.board, titles.item, titles.upper])).toEqual([
      ['tail', 'Tray front, Lid front', 'upper edge'],
      ['pin', 'Tray front', 'upper edge'],
      ['pin', 'Lid front', "rebate's edge"],
    ]);
  });

  it('makes none where no corner has any', () => {
    expect(
      guidesToMake([{ item: 'Buttons front', stem: 'buttons-front', end: 'front', guides: [] }], 'mm'),
    ).toEqual([]);
  });
});
