import { describe, expect, it } from 'vitest';
import type { Mark, Path, Point, TextMark } from '../../src/drawing/drawing.ts';
import { CAP_HEIGHT, textWidth } from '../../src/drawing/textWidth.ts';
import { NO_SPLITS } from '../../src/paper/piece.ts';
import type { GuideBoard } from '../../src/router/guide/guideBoard.ts';
import { type GuideTitles, guideLayers, guidePiece } from '../../src/sheets/guide/drawGuide.ts';
import { GUIDE_TITLES } from './guide/guideTitles.ts';

/** A guide of the plainest shape, its numbers easy to follow: behind the fence 31 mm, in front of it 20. */
const GUIDE: GuideBoard = {
  board: 'pin',
  lies: 'upright',
  outline: [{ at: [-71, -30] }, { at: [20, -30] }, { at: [20, 130] }, { at: [-71, 130] }],
  centreLines: [
    {
      points: [
        [-13, 50],
        [23, 50],
      ],
    },
  ],
  fence: [-40, 0],
  work: [0, 14],
  width: 100,
  bush: 16,
  cutter: { kind: 'straight', diameter: 8, depth: 14 },
  byHand: [],
  fingers: [
    [-30, 40],
    [60, 130],
  ],
};
const piece = guidePiece(GUIDE, GUIDE_TITLES);
const drawing = piece.draw(NO_SPLITS);

const line = (from: Point, to: Point): Path => ({ points: [from, to] });
/** Cap letters of 2.4 mm, the least that is read on paper (ISO 3098). */
const SMALL = 2.4 / CAP_HEIGHT;
const strokes = drawing.marks.filter((mark) => mark.kind === 'stroke' && mark.role !== 'scale');
const texts = (marks: readonly Mark[]): TextMark[] => marks.filter((mark) => mark.kind === 'text');
const saidBy = (guide: GuideBoard, titles: Partial<GuideTitles> = {}): string =>
  texts(guidePiece(guide, { ...GUIDE_TITLES, ...titles }).draw(NO_SPLITS).marks)
    .map(({ text }) => text)
    .join(' ');

describe('a guide as a piece', () => {
  it('is named for its corner and its board, and may be split inside its fingers', () => {
    expect(piece).toMatchObject({
      name: 'buttons-front-guide-pins',
      title: 'Buttons, front, guide for the pins',
      count: 1,
      width: 91,
      height: 160,
      overhang: 6,
      splittable: {
        x: [],
        y: [
          [0, 70],
          [90, 160],
        ],
      },
    });
  });

  it('has its lines where the guide has them, from its lower left corner', () => {
    expect(drawing.box).toEqual({ x0: -6, y0: -6, x1: 97, y1: 166 });
    expect(strokes).toEqual([
      {
        kind: 'stroke',
        role: 'outline',
        pen: 'cut',
        paths: [
          {
            points: [
              [0, 0],
              [91, 0],
              [91, 160],
              [0, 160],
            ],
            closed: true,
          },
        ],
      },
      { kind: 'stroke', role: 'square', pen: 'fold', paths: [line([58, 80], [94, 80])] },
      {
        kind: 'stroke',
        role: 'baseline',
        pen: 'lap',
        paths: [line([31, 0], [31, 160]), line([71, 0], [71, 160])],
      },
      // The work's far face, from one end of the guide to the other.
      { kind: 'stroke', role: 'square', pen: 'thin', paths: [line([85, 0], [85, 160])] },
      { kind: 'stroke', role: 'square', pen: 'edge', paths: [line([22, 30], [85, 30])] },
      { kind: 'stroke', role: 'square', pen: 'thin', paths: [line([22, 130], [85, 130])] },
    ]);
  });

  it('names the fence and the work along them, and the edges of the work beside their lines', () => {
    const [fence, fenceLine, work, edge, upper] = texts(drawing.marks);
    const label = { kind: 'text', role: 'label', size: SMALL, anchor: 'start', weight: 'regular' };
    expect(fence).toEqual({ ...label, text: 'fence', at: [51, 3], turn: 90 });
    expect(edge).toEqual({
      ...label,
      text: 'reference edge',
      at: [23, expect.closeTo(30 - 1 - 2.4, 9)],
      turn: 0,
    });
    // The fence's face is 71 mm from the guide's back; the work, 14 mm thick, lies from there on.
    expect(fenceLine).toEqual({ ...label, text: 'fence line', at: [70, 3], turn: 90 });
    expect(work).toEqual({
      ...label,
      text: 'work 14 mm',
      at: [expect.closeTo(71 + 7 + 1.2, 9), 3],
      turn: 90,
    });
    expect(upper).toEqual({ ...label, text: 'upper edge', at: [23, 131], turn: 0 });
  });

  it('gives the instructions for its use', () => {
    for (const words of [
      'Buttons, front · guide for the pins',
      'bush 16 mm',
      'straight cutter 8 mm',
      'depth 14 mm',
      'INSIDE FACE against the fence',
      'END up',
      'reference edge on its line',
    ])
      expect(saidBy(GUIDE)).toContain(words);
    // Where there is little room the words are fewer.
    expect(saidBy(GUIDE)).toMatch(/as drawn: A; turned over(, fence on its other face)?: B/u);
  });

  it('has lapped pins flat under it, and its line named on the side of the fence', () => {
    const flat: GuideBoard = { ...GUIDE, lies: 'flat', fence: [0, 20], work: [-30, 0] };
    expect(saidBy(flat)).toContain('INSIDE FACE up, END against the fence');
    expect(saidBy(flat)).not.toContain('END up');
    expect(saidBy(flat)).not.toMatch(/work \d/u);
    const { marks } = guidePiece(flat, GUIDE_TITLES).draw(NO_SPLITS);
    expect(texts(marks).find(({ text }) => text === 'fence line')?.at).toEqual([
      expect.closeTo(72 + 2.4, 9),
      3,
    ]);
  });

  it('has the shoulder of a rebate against a fence that is clear of the lip', () => {
    const flat: GuideBoard = { ...GUIDE, lies: 'flat', fence: [0, 20], work: [-30, 0] };
    const said = texts(guidePiece(flat, { ...GUIDE_TITLES, rebate: 15 }).draw(NO_SPLITS).marks)
      .map(({ text }) => text)
      .join('; ');
    expect(said).toMatch(/INSIDE FACE up, (REBATE’S )?SHOULDER/u);
    expect(said).toMatch(/fence’s thickness (less than|under) 15 mm/u);
    expect(said).not.toContain('END');
  });

  it('names the half spaces to cut by hand', () => {
    const said = saidBy({ ...GUIDE, board: 'tail', byHand: ['lower', 'upper'] });
    expect(said).toMatch(/lower (half space )?by hand/u);
    expect(said).toMatch(/upper (half space )?by hand/u);
    expect(saidBy(GUIDE)).not.toContain('by hand');
  });

  it('leaves the word out where the thickness would come too near the reference edge', () => {
    const said = texts(
      guidePiece({ ...GUIDE, work: [0, 23456.75] }, { ...GUIDE_TITLES, units: 'mm' }).draw(NO_SPLITS).marks,
    ).map(({ text }) => text);
    expect(said).toContain('23456.75 mm');
    expect(said).not.toContain('work 23456.75 mm');
  });

  it('names for tails the face of each corner against the fence, and never turns over', () => {
    const said = saidBy({ ...GUIDE, board: 'tail' });
    expect(said).toMatch(/A: OUTSIDE FACE (against the|to) fence/u);
    expect(said).toMatch(/B: INSIDE FACE (against the|to) fence/u);
    expect(said).not.toContain('turned over');
  });

  it("has a back's letters from behind, both ends' where it serves both, and another edge by its name", () => {
    expect(saidBy(GUIDE, { ends: ['back'] })).toMatch(
      /as drawn: C; turned over(, fence on its other face)?: D/u,
    );
    expect(saidBy(GUIDE, { ends: ['front', 'back'] })).toMatch(/as drawn: A, C; turned over.*: B, D/u);
    const said = saidBy(
      { ...GUIDE, board: 'tail' },
      { ends: ['back'], edge: ["groove's upper edge", 'groove, upper'] },
    );
    expect(said).toMatch(/C: OUTSIDE FACE (against the|to) fence/u);
    expect(said).toMatch(/groove('s upper edge|, upper) on its line/);
    expect(said).not.toContain('reference');
  });

  it('names the line at the other edge for the edge of the work there', () => {
    expect(saidBy(GUIDE, { upper: "back's edge" })).toContain("back's edge");
    expect(saidBy(GUIDE, { upper: "back's edge" })).not.toContain('upper edge');
  });

  it('has its name first on both parts where it is split', () => {
    const parted = texts(piece.draw({ x: [], y: [110] }).marks);
    expect(parted.filter(({ text }) => text.startsWith('Buttons, front'))).toHaveLength(2);
    // The strip of facts is behind the fence, one part below the split and one above.
    const facts = parted.filter(({ text }) => text.includes('bush 16 mm'));
    expect(facts.map(({ at: [, y] }) => y < 110)).toEqual([true, false]);
    for (const { at } of facts) expect(at[0]).toBeLessThan(21);
  });
});

describe("a guide's layers for a DXF file", () => {
  it('are its outline, the centre lines, the fence, the reference edge, the work and its name, unshifted', () => {
    expect(guideLayers(GUIDE, GUIDE_TITLES)).toEqual([
      { name: 'OUTLINE', line: 'CONTINUOUS', outlines: [GUIDE.outline] },
      { name: 'CENTRE', line: 'CENTER', paths: GUIDE.centreLines },
      { name: 'FENCE', line: 'HIDDEN', paths: [line([-40, -30], [-40, 130]), line([0, -30], [0, 130])] },
      { name: 'REFERENCE', line: 'HIDDEN', paths: [line([-49, 0], [14, 0])] },
      { name: 'WORK', line: 'HIDDEN', paths: [line([-49, 100], [14, 100])] },
      {
        name: 'TEXT',
        line: 'CONTINUOUS',
        texts: [
          expect.objectContaining({ text: 'Buttons, front, guide for the pins', at: [-60.5, -27], turn: 90 }),
          expect.objectContaining({ text: 'reference edge', at: [-48, -1 - 2.4], turn: 0 }),
        ],
      },
    ]);
  });

  it('leave out the edge of a fence that is the edge of the guide', () => {
    const [, , fence] = guideLayers({ ...GUIDE, fence: [0, 20] }, GUIDE_TITLES);
    expect(fence?.paths).toEqual([line([0, -30], [0, 130])]);
  });

  it('have a name of any length within the guide, in fonts half as wide again as ours', () => {
    const item = 'Thread, ribbon, lace and bias binding in every colour of the rainbow'.repeat(2);
    for (const titles of [GUIDE_TITLES, { ...GUIDE_TITLES, item }]) {
      const [name] = guideLayers(GUIDE, titles).at(-1)?.texts ?? [];
      const { text, size } = name ?? { text: '', size: 0 };
      expect(text).toContain(titles.item);
      // From 3 mm above its lower end at -30 to 3 mm below its upper one at 130.
      expect(1.5 * textWidth(text, size, 'bold')).toBeLessThanOrEqual(154 + 1e-9);
      expect(size).toBeLessThanOrEqual(5);
      expect(size).toBeGreaterThan(1);
    }
  });
});
