import { describe, expect, it } from 'vitest';
import { IDENTITY } from '../../../src/drawing/affine.ts';
import { PENS } from '../../../src/drawing/pens.ts';
import { ISO_PAPERS } from '../../../src/paper/paperSizes.ts';
import { sheetsOf } from '../../../src/project/sheetsOf.ts';
import { cornerPieces, type PieceChoice } from '../../../src/sheets/template/cornerPieces.ts';
import { legend, type Sign } from '../../../src/sheets/template/legend.ts';
import { USUAL_SAWING } from '../../../src/stock/usualSawing.ts';
import { jointOf } from '../../joint/told.ts';
import { inkBox, segmentsOf } from '../../paper/ink.ts';
import { singleCorner } from '../../project/singleCorner.ts';
import { cornerOf } from '../pieces.ts';
import { sheetFaults, wordsOf } from '../sheetFaults.ts';

const FOLDED: ReadonlySet<Sign> = new Set<Sign>(['waste', 'fold', 'edge', 'lap']);
const ALL: ReadonlySet<Sign> = new Set<Sign>(['waste', 'fold', 'edge', 'lap', 'tips', 'bases']);

const signsOf = (kind: 'through' | 'lapped', choice: Partial<PieceChoice>): Sign[][] => {
  const common = { width: 96, tailBoard: 11, spacing: { kind: 'even', tails: 3 } } as const;
  const joint = jointOf(
    kind === 'through' ? { kind, pinBoard: 12, ...common } : { kind, pinBoard: 20, lap: 5, ...common },
  );
  const pieces = cornerPieces(cornerOf({ joint }), {
    boards: ['tail', 'pin'],
    flat: false,
    rods: false,
    ...choice,
  });
  return pieces.map(({ signs }) => signs.toSorted());
};

describe('the legend', () => {
  it('explains on A4 the hatching, the fold, the arrow and the lap, and with rods the names of their edges', () => {
    expect(wordsOf(legend(FOLDED, 193))).toBe(
      'hatched = waste, cut away fold line up here: reference edge = lower edge lap: stop here',
    );
    expect(wordsOf(legend(ALL, 193))).toBe(
      'waste fold reference = lower edge lap: stop TIPS: at the end BASES: at the baseline',
    );
  });

  it('is on the contents and on every page with templates', () => {
    const joints = [201, 202].map((width) => {
      const boards = { width, tailBoard: 11, pinBoard: 20 };
      return singleCorner(`Corner ${width}`, {
        kind: 'lapped',
        ...boards,
        lap: 5,
        spacing: { kind: 'even' },
      });
    });
    const set = { drawers: [], advice: [] };
    const paper = ISO_PAPERS.find(({ name }) => name === 'A4');
    if (paper === undefined) throw new Error('no A4');
    const project = {
      name: 'Corners',
      units: 'mm',
      set,
      joints,
      sawing: USUAL_SAWING.mm,
      cuts: new Map(),
    } as const;
    const sheets = sheetsOf(project, { paper });
    const templates = sheets.ok ? sheets.value.filter(({ kind }) => kind === 'templates') : [];
    const pages = templates.flatMap((each) => [...each.pages()]);
    expect(pages.length).toBeGreaterThan(2);
    for (const { placed } of pages)
      expect(placed.map(({ drawing }) => wordsOf(drawing))).toContain(
        'hatched = waste, cut away fold line up here: reference edge = lower edge lap: stop here',
      );
  });

  it('draws each sign with the pen that the templates draw it with', () => {
    const pens = legend(ALL, 193).marks.flatMap((mark) => (mark.kind === 'stroke' ? [mark.pen] : []));
    expect(pens).toEqual(['hatch', 'thin', 'fold', 'medium', 'lap']);
  });

  it('shows at least one whole dash and dot of a fold, and two dashes of a lap', () => {
    for (const [sign, least] of [
      ['fold', (PENS.fold.dash ?? []).reduce((sum, part) => sum + part, 0) + 6],
      ['lap', 3 + 1 + 3],
    ] as const) {
      const lines = legend(new Set([sign]), 193).marks.flatMap((mark) =>
        mark.kind === 'stroke' ? mark.paths.flatMap(segmentsOf) : [],
      );
      expect(lines).toHaveLength(1);
      for (const [a, b] of lines) expect(b[0] - a[0]).toBeGreaterThanOrEqual(least);
    }
  });

  it('explains only the signs on the templates', () => {
    expect(wordsOf(legend(new Set<Sign>(['edge']), 193))).toBe('line up here: reference edge = lower edge');
    expect(signsOf('through', {})).toEqual([
      ['edge', 'fold', 'waste'],
      ['edge', 'fold', 'waste'],
    ]);
    expect(signsOf('lapped', { boards: ['pin'] })).toEqual([['edge', 'fold', 'lap', 'waste']]);
    // The inside face and the end of the pin board; a rod.
    expect(signsOf('lapped', { boards: ['pin'], flat: true, rods: true })).toEqual([
      ['edge', 'waste'],
      ['edge', 'fold', 'lap', 'waste'],
      ['bases', 'edge', 'tips', 'waste'],
    ]);
  });

  it('has room for every sign on any paper, on one row as long as it can, nothing over anything else', () => {
    const rows = (signs: ReadonlySet<Sign>, width: number): number => {
      const levels = legend(signs, width).marks.flatMap((mark) => (mark.kind === 'text' ? [mark.at[1]] : []));
      expect(levels).toHaveLength(signs.size);
      return new Set(levels).size;
    };
    for (let width = 40; width <= 300; width += 0.5) {
      const drawing = legend(ALL, width);
      expect([width, ...sheetFaults(drawing)]).toEqual([width]);
      const { y1 } = inkBox(drawing.marks, IDENTITY);
      // Clear of what the page is for.
      expect(drawing.box.y1 - y1).toBeGreaterThan(1.5);
    }
    // However narrow, each says which edge the reference edge is.
    for (let width = 40; width <= 300; width += 5)
      expect(wordsOf(legend(ALL, width))).toMatch(/reference (edge )?= lower edge/);
    // A5 and larger, or A4 and larger with rods; the narrowest that is allowed.
    expect(rows(FOLDED, 131)).toBe(1);
    expect(rows(ALL, 193)).toBe(1);
    expect(rows(FOLDED, 40)).toBeGreaterThan(1);
    expect(rows(ALL, 40)).toBeGreaterThan(rows(FOLDED, 40));
  });
});
