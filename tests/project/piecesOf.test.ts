import { describe, expect, it } from 'vitest';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import type { Mark } from '../../src/drawing/drawing.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { NO_SPLITS } from '../../src/paper/piece.ts';
import { piecesOf, templateCorners } from '../../src/project/piecesOf.ts';
import type { Project } from '../../src/project/project.ts';
import type { Corner } from '../../src/sheets/template/cornerPieces.ts';
import { box, drawer, inOpening } from '../drawer/chest.ts';
import { value } from '../value.ts';
import { singleCorner } from './singleCorner.ts';

const cornersOf = (specs: readonly DrawerSpec[], joints: Project['joints'] = []): Corner[] =>
  templateCorners({ set: value(layOutSet(specs)), joints, units: 'mm' });

const show = ({ letter, hand, item, count, tailBoard, pinBoard, stem }: Corner): string =>
  `${letter} ${hand} ${item} x${count} ${stem}: ${tailBoard.part}, ${tailBoard.end}; ${pinBoard.part}, ${pinBoard.end}`;

describe('the templates of a project', () => {
  it('letters a drawer clockwise from the front left corner, each end seen from before it', () => {
    // From behind, the right side stands at the left.
    expect(cornersOf([drawer({ count: 3 })]).map(show)).toEqual([
      'A left Buttons x3 buttons: left side, front end; front, left end',
      'B right Buttons x3 buttons: right side, front end; front, right end',
      'C left Buttons x3 buttons: right side, back end; back, right end',
      'D right Buttons x3 buttons: left side, back end; back, left end',
    ]);
  });

  it('draws equal corners of several drawers once, made as often as they all need', () => {
    const set = [
      drawer({ count: 2 }),
      drawer({ name: 'Thread', count: 3 }),
      // Wider and equal in height: its corners are the same.
      inOpening(574, 76, 420, { name: 'Patches' }),
      inOpening(280, 110, 420, { name: 'Ribbon' }),
    ];
    const corners = cornersOf(set);
    expect(corners.map(({ letter, item, count }) => [letter, item, count])).toEqual([
      ['A', 'Buttons, Thread, Patches', 6],
      ['B', 'Buttons, Thread, Patches', 6],
      ['C', 'Buttons, Thread, Patches', 6],
      ['D', 'Buttons, Thread, Patches', 6],
      ['A', 'Ribbon', 1],
      ['B', 'Ribbon', 1],
      ['C', 'Ribbon', 1],
      ['D', 'Ribbon', 1],
    ]);
  });

  it('of a box has the groove at all four corners, stopped at both ends of its sides', () => {
    const set = value(layOutSet([drawer()], undefined, {}, [box({ name: 'Stamps', count: 3 })]));
    const [, , , , ...corners] = templateCorners({ set, joints: [], units: 'mm' });
    expect(corners.map(show)).toEqual([
      'A left Stamps x3 stamps: left side, front end; front, left end',
      'B right Stamps x3 stamps: right side, front end; front, right end',
      'C left Stamps x3 stamps: right side, back end; back, right end',
      'D right Stamps x3 stamps: left side, back end; back, left end',
    ]);
    for (const { tailBoard, pinBoard } of corners) {
      expect(tailBoard.groove).toEqual({ offset: 8, width: 4, stopped: 5 });
      expect(pinBoard.groove).toEqual({ offset: 8, width: 4 });
      expect([tailBoard.jointFrom, tailBoard.upper]).toEqual([undefined, undefined]);
    }
  });

  it("marks the groove on front and sides, and starts the back at its upper edge, from the sides' own reference edge", () => {
    const corners = cornersOf([drawer()]);
    const groove = { offset: 11, width: 5 };
    const [a, , , d] = corners;
    expect([a?.tailBoard.groove, a?.pinBoard.groove]).toEqual([groove, groove]);
    expect([d?.tailBoard.groove, d?.pinBoard.groove]).toEqual([groove, undefined]);
    for (const board of [a?.tailBoard, a?.pinBoard, d?.tailBoard, d?.pinBoard])
      expect(board?.edge).toBeUndefined();
    // The groove's offset of 11 and its width of 5.
    expect(d?.tailBoard.jointFrom).toBe(16);
    for (const board of [a?.tailBoard, a?.pinBoard, d?.pinBoard]) expect(board?.jointFrom).toBeUndefined();
    // The opening's 76 less 1, less the groove's upper edge at 16, less the drop of 4.
    expect(d?.joint.width).toBeCloseTo(76 - 1 - 16 - 4, 9);
  });

  it('leaves the groove off the sides where slips carry it', () => {
    const slips = { kind: 'panel', slack: 0.5, hold: { kind: 'slips', width: 10, height: 20 } } as const;
    const [a, , , d] = cornersOf([drawer({ bottom: slips })]);
    expect([a?.tailBoard.groove, a?.pinBoard.groove]).toEqual([undefined, { offset: 11, width: 5 }]);
    expect([d?.tailBoard.groove, d?.tailBoard.jointFrom]).toEqual([undefined, 16]);
  });

  it('lays the template of a front against its rebate only where there is a lip', () => {
    const front = (change: Partial<DrawerSpec>) => {
      const [a] = cornersOf([drawer(change)]);
      return [a?.pinBoard.rebated, a?.pinBoard.edge];
    };
    const rebate = ["rebate's lower edge", 'rebate', 'edge'];
    expect(front({ lip: { sides: 8, top: 8, bottom: 8 } })).toEqual([true, rebate]);
    // Without a lip below, its own lower edge is the reference edge; without one at the sides, its ends are whole.
    expect(front({ lip: { sides: 8, top: 8, bottom: 0 } })).toEqual([true, undefined]);
    const space = {
      kind: 'opening',
      opening: { width: 280, height: 76, depth: 420 },
      fit: { side: 0, top: 1, behind: 12 },
    } as const;
    expect(front({ space, lip: { sides: 0, top: 8, bottom: 8 } })).toEqual([undefined, rebate]);
    expect(front({})).toEqual([undefined, undefined]);
  });

  it('draws fronts behind lips of different thickness once, where the rebate leaves equal ends', () => {
    const behind = (name: string, lap: number) =>
      drawer({
        name,
        joint: { kind: 'lapped', lap, spacing: { kind: 'even' } },
        stock: { ...drawer().stock, front: { thickness: 14 + lap } },
        lip: { sides: 8, top: 8, bottom: 8 },
      });
    const fronts = cornersOf([behind('Buttons', 5), behind('Thread', 8)]).slice(0, 2);
    expect(fronts.map(({ item, count }) => [item, count])).toEqual([
      ['Buttons, Thread', 2],
      ['Buttons, Thread', 2],
    ]);
    const { lip: _, ...first } = behind('Buttons', 5);
    const { lip: __, ...second } = behind('Thread', 8);
    expect(cornersOf([first, second]).filter(({ letter }) => letter === 'A')).toHaveLength(2);
  });

  it('gives corners of no drawer a left and a right one', () => {
    const carcase = singleCorner('Carcase', {
      kind: 'through',
      width: 430,
      tailBoard: 19,
      pinBoard: 19,
      spacing: { kind: 'even' },
    });
    expect(cornersOf([], [carcase]).map(show)).toEqual([
      'A left Carcase x1 carcase: tail board, left corner; pin board, left corner',
      'B right Carcase x1 carcase: tail board, right corner; pin board, right corner',
    ]);
  });

  it('lays a rail’s templates on its ends and on the sides’ top ends, front edges below', () => {
    const spec: JointSpec = {
      kind: 'lapped',
      width: 60,
      tailBoard: 20,
      pinBoard: 19,
      lap: 6,
      spacing: { kind: 'even', tails: 1 },
    };
    const joints = [
      { ...singleCorner('Top rail', spec), rail: { between: 574, sideWidth: 430, setBack: 0 } },
      { ...singleCorner('Back rail', spec), rail: { between: 574, sideWidth: 430, setBack: 370 } },
    ];
    const project = { set: value(layOutSet([])), joints, units: 'mm' as const };
    const pieces = piecesOf(project).map((piece) => ({ ...piece, marks: piece.draw(NO_SPLITS).marks }));
    expect(pieces.map(({ name }) => name)).toEqual(
      ['top', 'back'].flatMap((where) =>
        ['rail-a', 'left-side-a', 'rail-b', 'right-side-b'].map((part) => `${where}-rail-${part}`),
      ),
    );
    const [leftEnd, leftSide, rightEnd, rightSide, , setBack] = pieces.map(({ marks }) => marks);
    /** The leftmost x of the lines of a role, or of a word. */
    const across = (marks: readonly Mark[] = [], wanted: string): number =>
      Math.min(
        ...marks.flatMap((mark) => {
          if (mark.kind === 'text')
            return /^[A-Z]/u.test(wanted) && mark.text.startsWith(wanted) ? [mark.at[0]] : [];
          return mark.role === wanted ? mark.paths.flatMap(({ points }) => points.map(([x]) => x)) : [];
        }),
      );
    // Seen from above, the left side has its outside face, behind the lap, on the left; the right side the other way round.
    expect(across(leftSide, 'lap')).toBeLessThan(across(leftSide, 'baseline'));
    expect(across(rightSide, 'lap')).toBeGreaterThan(across(rightSide, 'baseline'));
    // Seen from the rail's left end, its upper face, the outside one, is on the right; from its right end on the left.
    expect(across(leftEnd, 'INSIDE')).toBeLessThan(across(leftEnd, 'OUTSIDE'));
    expect(across(rightEnd, 'INSIDE')).toBeGreaterThan(across(rightEnd, 'OUTSIDE'));
    const words = setBack?.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])).join(' ');
    expect(words).toMatch(/370 mm (?:behind the front edge|behind front edge|from front)/u);
  });

  it('gives each name a stem of its own, though names may come to the same', () => {
    const joints = ['A/B', 'a b', 'a-b-2', 'A.B'].map((name, i) => {
      const boards = { width: 200 + 10 * i, tailBoard: 19, pinBoard: 19 };
      return singleCorner(name, { kind: 'through', ...boards, spacing: { kind: 'even' } });
    });
    const stems = cornersOf([], joints).map(({ stem }) => stem);
    expect([...new Set(stems)]).toEqual(['a-b', 'a-b-2', 'a-b-2-2', 'a-b-3']);
  });
});
