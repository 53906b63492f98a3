import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { BOARDS, SMALL_SET } from '../../drawer/blanks/boardsPlan.ts';
import { halfpin } from '../program.ts';

interface Blank {
  readonly drawer: string;
  readonly part: string;
  readonly index?: number;
  readonly turned: boolean;
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
  readonly piece: number;
  readonly why: string;
}
interface Cut {
  readonly kind: string;
  readonly piece: number;
  readonly at: number;
}
interface Board {
  readonly name: string;
  readonly copy: number;
  readonly length: number;
  readonly width: number;
  readonly blanks: readonly Blank[];
  readonly cuts: readonly Cut[];
}

const where = mkdtempSync(join(tmpdir(), 'halfpin-'));
afterAll(() => rmSync(where, { recursive: true }));

const run = (plan: string, ...more: string[]) => {
  writeFileSync(join(where, 'plan.yaml'), plan);
  return halfpin(['breakout', 'plan.yaml', ...more], where);
};
const answerTo = (plan: string) => {
  const { status, out, err } = run(plan, '--json');
  return { status, err, ...JSON.parse(out) } as {
    readonly status: number;
    readonly err: string;
    readonly boards: readonly Board[];
    readonly missing: readonly { length: number; width: number; thickness: number }[];
    readonly toBuy: readonly {
      stock: string;
      count: number;
      length: number;
      width: number;
      thickness: number;
    }[];
    readonly unlisted: readonly string[];
    readonly used: number;
    readonly yield: number;
    readonly bound: number | null;
    readonly runs: readonly { drawers: readonly string[]; met: boolean; board: string | null }[];
  };
};

const PLAN = BOARDS + SMALL_SET;
const KERF = 3;

/** The boxes that cuts leave of a square board, by the rules of the answer: [left, lower, right, upper]. */
const sawn = (length: number, width: number, cuts: readonly Cut[]): Map<number, number[]> => {
  const left = new Map([[0, [0, 0, length, width]]]);
  cuts.forEach(({ kind, piece, at }, k) => {
    const box = left.get(piece);
    if (box === undefined) throw new Error(`cut ${k} ends ${piece}, which is not there`);
    left.delete(piece);
    const axis = kind === 'crosscut' ? 0 : 1;
    const low = box.with(axis + 2, Math.min(at, box[axis + 2] ?? 0));
    const high = box.with(axis, Math.max(at + KERF, box[axis] ?? 0));
    for (const [i, each] of [low, high].entries())
      if ((each[2] ?? 0) > (each[0] ?? 0) && (each[3] ?? 0) > (each[1] ?? 0)) left.set(2 * k + 1 + i, each);
  });
  return left;
};

/** Each blank is what the cuts leave under its number. */
const mustBeSawn = (boards: readonly Board[]): void => {
  for (const { length, width, blanks, cuts } of boards) {
    const left = sawn(length, width, cuts);
    for (const { piece, ...blank } of blanks) {
      const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = left.get(piece) ?? [];
      [blank.x - x0, blank.y - y0, blank.length - (x1 - x0), blank.width - (y1 - y0)].forEach((off) => {
        expect(Math.abs(off)).toBeLessThan(0.001);
      });
    }
  }
};

const namesOf = (boards: readonly Board[]): string[] =>
  boards
    .flatMap(({ blanks }) => blanks.map(({ drawer, part, index }) => `${drawer} ${part} ${index}`))
    .sort();

describe('breakout --json', () => {
  const answer = answerTo(PLAN);

  it('has every part of the listed stocks once, sawn by the cuts that it has', () => {
    expect(answer).toMatchObject({ status: 0, err: '', missing: [], toBuy: [], unlisted: ['bottom'] });
    expect(namesOf(answer.boards)).toEqual(
      [
        ...['Buttons front 1', 'Buttons front 2', 'Buttons back 1', 'Buttons back 2'],
        ...['Buttons side 1', 'Buttons side 2', 'Buttons side 3', 'Buttons side 4'],
        ...['Cloth front 1', 'Cloth back 1', 'Cloth side 1', 'Cloth side 2'],
      ].sort(),
    );
    mustBeSawn(answer.boards);
    expect(answer.used).toBe(answer.boards.length);
  });

  it('tells what share of the boards cut into becomes blanks', () => {
    const blanks = answer.boards.flatMap((board) => board.blanks);
    const area = (sizes: readonly { length: number; width: number }[]) =>
      sizes.reduce((sum, { length, width }) => sum + length * width, 0);
    expect(answer.yield).toBeCloseTo(area(blanks) / area(answer.boards), 3);
  });

  it('is the same each time', () => {
    expect(run(PLAN, '--json').out).toBe(run(PLAN, '--json').out);
  });

  it('has a reason for every place', () => {
    for (const { blanks } of answer.boards) for (const { why } of blanks) expect(why).not.toBe('');
    expect(answer.boards.flatMap(({ blanks }) => blanks).find(({ part }) => part === 'front')?.why).toBe(
      'the only board for it',
    );
  });
});

describe('breakout where boards are missing', () => {
  const few = PLAN.replace('size: 1810 x 210 x 3', 'size: 1810 x 210');
  const answer = answerTo(few);

  it('exits with 3, and names boards to buy, which do', () => {
    expect(answer.status).toBe(3);
    expect(answer.missing.length).toBeGreaterThan(0);
    expect(answer.bound).toBeNull();
    expect(answer.err).toMatch(
      /^these parts are missing: .*\none more board for sides and backs of at least [\d.]+ x [\d.]+ x 13 mm would do\n$/u,
    );
    const [, length, width] = /of at least ([\d.]+) x ([\d.]+) x 13 mm/u.exec(answer.err) ?? [];
    const bought = few.replace(
      'boards:\n',
      `boards:\n  - {name: Bought, stock: [side, back], thickness: 13, length: ${length}, width: ${width}}\n`,
    );
    expect(answerTo(bought)).toMatchObject({ status: 0, missing: [] });
  });

  it('names for one blank the blank and what is lost around it', () => {
    const one = PLAN.replace('length: 2150, width: 230', 'length: 640, width: 200');
    const { err, missing } = answerTo(one);
    expect(missing).toMatchObject([
      { drawer: 'Cloth', part: 'front', length: 609, width: 195, thickness: 20 },
    ]);
    // 609 + 2 x 25, 195 and 20 + 2 x 1.
    expect(err).toContain('one more board for fronts of at least 659 x 195 x 22 mm would do');
  });
});

describe('breakout', () => {
  it('prints the cuts of each board in order, and the board of each part', () => {
    const { status, out } = run(PLAN);
    expect(status).toBe(0);
    expect(out).toMatch(/^Cherry: 2150 x 230 x 26, for fronts$/mu);
    expect(out).toMatch(/^ {2}1 {2}(?:crosscut|rip) the board [\d.]+ from its (?:left end|lower edge)/mu);
    expect(out).toMatch(/^[A-Z]+ +Buttons left side 2 +Ash no\. \d/mu);
    expect(out).toMatch(/^\d of 4 boards are cut into/mu);
    expect(out).toContain('No board is listed for bottoms: they are left out.');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  it('is in board feet in inches', () => {
    expect(run(PLAN, '--units', 'in').out).toMatch(/[\d.]+ board\s+feet/u);
  });

  it('is a table for spreadsheets, one part a line', () => {
    const [heading, ...lines] = run(PLAN, '--csv').out.trimEnd().split('\r\n');
    expect(heading).toBe(
      'board,copy,drawer,part,index,strip,spare,turned,x mm,y mm,length mm,width mm,thickness mm,piece,letter',
    );
    expect(lines).toHaveLength(12);
  });

  it('draws board sheets, which it writes over, but nothing else', () => {
    const { status, out } = run(PLAN, '--out', 'sheets');
    expect(status).toBe(0);
    expect(out).toMatch(/^sheets\/\S*board-sheets\.pdf: the board sheets$/mu);
    const files = readdirSync(join(where, 'sheets'));
    expect(files.filter((name) => name.endsWith('-board.svg')).length).toBeGreaterThan(1);
    expect(run(PLAN, '--out', 'sheets', '--paper', 'A5').status).toBe(0);
    writeFileSync(join(where, 'sheets', 'cherry-board.svg'), 'mine');
    const refused = run(PLAN, '--out', 'sheets');
    expect(refused.status).toBe(2);
    expect(refused.err).toContain('cherry-board.svg: this file was not made by halfpin');
    expect(run(PLAN, '--out', 'sheets', '--force').status).toBe(0);
  });

  it('draws what there is where a board is missing, and exits with 3', () => {
    const { status, out } = run(PLAN.replace('length: 2150', 'length: 700'), '--out', 'short');
    expect(status).toBe(3);
    expect(out).toContain('the board sheets');
  });

  it.each(['--paper', '--margin'])('refuses %s without a folder', (option) => {
    expect(run(PLAN, option, option === '--paper' ? 'A5' : '8').err).toContain('without --out');
  });

  it.each<[string, string, string[], RegExp]>([
    ['a plan without boards', SMALL_SET, [], /^plan\.yaml: this plan lists no boards for drawers/u],
    [
      'an effort that is none',
      PLAN,
      ['--effort', '0'],
      /^--effort: "0" is no effort; it must be 0\.1 to 100/u,
    ],
    ['two formats', PLAN, ['--json', '--csv'], /^--csv: give --csv or --json, not both/u],
    [
      'a run of nobody',
      `breakout: {runThrough: [[Butons]]}\n${PLAN}`,
      [],
      /^plan\.yaml:1:\d+ breakout\.runThrough\[0\]\[0\]: .*try Buttons/u,
    ],
  ])('refuses %s', (_what, plan, options, says) => {
    const { status, out, err } = run(plan, ...options);
    expect([status, out]).toEqual([2, '']);
    expect(err).toMatch(says);
  });
});

describe('a board that is partly cut', () => {
  const { boards } = answerTo(PLAN);
  const [cherry] = boards;
  if (cherry === undefined) throw new Error('no board is cut');
  const { blanks, cuts } = cherry;
  /** What of its blanks the first cuts free. */
  const freedBy = (made: readonly Cut[]) => blanks.filter(({ piece }) => sawn(2150, 230, made).has(piece));
  const withCut = (cut: unknown) => PLAN.replace('width: 230}', `width: 230, cut: ${JSON.stringify(cut)}}`);

  it.each([1, 2, cuts.length])(
    'stays as it is, and the rest is sought from what is left: %i cuts',
    (count) => {
      const made = cuts.slice(0, count);
      const again = answerTo(withCut({ cuts: made, blanks: freedBy(made) }));
      expect(again.status).toBe(0);
      const [board] = again.boards;
      expect(board?.cuts.slice(0, count)).toEqual(made);
      mustBeSawn(again.boards);
      for (const { why: _, ...blank } of freedBy(made))
        expect(board?.blanks).toContainEqual(expect.objectContaining(blank));
      expect(namesOf(again.boards)).toEqual(namesOf(boards));
    },
  );

  it('is cut on as it was told where its places are no round figures, in inches', () => {
    const inches = (cut: string) => `units: in
stock: {front: {thickness: 13/16}, side: {thickness: 7/16}}
boards:
  - {name: Ash, stock: [front, side, back], thickness: 1, outline: [[0.1, 0.2], [72.3, 0.31], [72.1, 8.47], [0, 8.3]]${cut}}
drawers:
  - {name: Buttons, count: 2, opening: {width: 11.13, height: 3.07, depth: 16}}
`;
    const { boards } = answerTo(inches(''));
    const [{ cuts = [], blanks = [] } = {}] = boards;
    expect(cuts.length).toBeGreaterThan(8);
    const half = JSON.stringify({ cuts: cuts.slice(0, cuts.length / 2), blanks });
    const again = answerTo(inches(`, cut: ${half}`));
    expect(again.boards.map((board) => board.cuts)).toEqual([cuts]);
  });

  it('may have blanks listed that its cuts do not free yet', () => {
    expect(answerTo(withCut({ cuts: cuts.slice(0, 1), blanks })).status).toBe(0);
  });

  const last = blanks[0];
  it.each<[string, unknown, RegExp]>([
    [
      'a part beside where it is',
      { cuts, blanks: [{ ...last, x: (last?.x ?? 0) + 40 }] },
      /boards\[0\]\.cut\.blanks\[0\]: the front of "\w+", number \d, is not what the cuts leave as number \d+/u,
    ],
    [
      'a part off the board',
      { cuts, blanks: [{ ...last, x: 2000 }] },
      /does not lie inside "Cherry" with its ends cut off/u,
    ],
    [
      'a part that is too small',
      { cuts, blanks: [{ ...last, width: 60 }] },
      /is [\d.]+ mm x 60 mm, and must be at least/u,
    ],
    [
      'a part of another stock',
      { cuts, blanks: [{ ...last, part: 'side' }] },
      /does not come out of a board for front/u,
    ],
    ['a part that there is not', { cuts, blanks: [{ ...last, index: 9 }] }, /has no front of number 9/u],
    ['a part twice', { cuts, blanks: [last, last] }, /has been cut already, in another place/u],
    [
      'a drawer that there is not',
      { cuts, blanks: [{ ...last, drawer: 'Clot' }] },
      /boards\[0\]\.cut\.blanks\[0\]\.drawer: "Clot" is no drawer of this plan; there are Buttons, Cloth; try Cloth/u,
    ],
    [
      'a cut of what is not there',
      { cuts: [cuts[0], { kind: 'rip', piece: 0, at: 100 }], blanks: [] },
      /boards\[0\]\.cut\.cuts\[1\]: there is no 0 left of "Cherry" to be cut here/u,
    ],
    [
      'a cut beside the board',
      { cuts: [{ kind: 'rip', piece: 0, at: 300 }], blanks: [] },
      /boards\[0\]\.cut\.cuts\[0\]: this cut lies beside what it should cut/u,
    ],
  ])('is refused where it cannot be so: %s', (_what, cut, says) => {
    const { status, err } = run(withCut(cut), '--json');
    expect(status).toBe(2);
    expect(err).toMatch(says);
  });

  it('is refused where a part lies on a defect', () => {
    const cut = JSON.stringify({ cuts, blanks: [last] });
    const { x = 0, y = 0, length = 0 } = last ?? {};
    const knot = `{kind: knot, at: [${x + length / 2}, ${y + 40}], size: [10, 10]}`;
    const { err } = run(PLAN.replace('width: 230}', `width: 230, defects: [${knot}], cut: ${cut}}`));
    expect(err).toMatch(/lies on a defect that it may not have/u);
  });
});

describe('a part that is pinned', () => {
  const pinnedTo = (pins: string) => run(`breakout: {pinned: ${pins}}\n${PLAN}`, '--json');

  it('lies there, said to be pinned, and the layout can be sawn', () => {
    const { status, out } = pinnedTo(
      '[{part: Cloth front 1, board: Cherry, at: [700, 20]}, {part: Cloth back 1, board: Ash no. 3}]',
    );
    expect(status).toBe(0);
    const { boards }: { boards: Board[] } = JSON.parse(out);
    mustBeSawn(boards);
    const own = boards.flatMap(({ name, copy, blanks }) =>
      blanks.filter(({ why }) => why === 'pinned here').map(({ part, x, y }) => ({ name, copy, part, x, y })),
    );
    expect(own).toEqual([
      { name: 'Cherry', copy: 1, part: 'front', x: 700, y: 20 },
      { name: 'Ash', copy: 3, part: 'back', x: expect.any(Number), y: expect.any(Number) },
    ]);
  });

  it('is missing where its board has no room for it beside the rest, and no board is bought for it', () => {
    const sides = ['left side 1', 'right side 1', 'left side 2', 'right side 2'].map(
      (side) => `{part: Buttons ${side}, board: Ash no. 1}`,
    );
    const all = [
      ...sides,
      '{part: Cloth left side 1, board: Ash no. 1}',
      '{part: Cloth right side 1, board: Ash no. 1}',
      '{part: Cloth back 1, board: Ash no. 1}',
    ];
    const { status, out, err } = pinnedTo(`[${all.join()}]`);
    expect(status).toBe(3);
    expect(JSON.parse(out)).toMatchObject({ toBuy: [], bound: null });
    expect(err).toMatch(
      / is pinned to Ash no\. 1, and beside the rest there is no room for it there; set it free, or pin it to another board/u,
    );
  });

  it('is refused where it cannot be, and nothing is printed', () => {
    const { status, out, err } = pinnedTo('[{part: Cloth front 1, board: Cherry, at: [2000, 20]}]');
    expect([status, out]).toEqual([2, '']);
    expect(err).toMatch(
      /^plan\.yaml:1:\d+ breakout\.pinned\[0\]: Cloth front 1 does not lie inside "Cherry" with its ends cut off/u,
    );
  });
});
