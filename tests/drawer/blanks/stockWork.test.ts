import { describe, expect, it } from 'vitest';
import type { StockWork } from '../../../src/drawer/blanks/stockWork.ts';
import { sentence } from '../../../src/units/complaint.ts';
import { BOARDS, projectOf, SMALL_SET, wrongWith } from './boardsPlan.ts';

const workOf = (boards: string, set = SMALL_SET): StockWork => {
  const { work } = projectOf(boards + set);
  if (work === undefined) throw new Error('no boards');
  return work;
};

describe('the boards of a plan', () => {
  it('are listed with their quantity, their places in mm of the plan', () => {
    const { planks } = workOf(BOARDS);
    expect(planks.map(({ name, copy, stocks, thickness }) => [name, copy, stocks, thickness])).toEqual([
      ['Cherry', 1, ['front'], 26],
      ['Ash', 1, ['side', 'back'], 16],
      ['Ash', 2, ['side', 'back'], 16],
      ['Ash', 3, ['side', 'back'], 16],
    ]);
    expect(planks[1]?.outline).toEqual([
      [0, 0],
      [1810, 0],
      [1810, 210],
      [0, 210],
    ]);
    expect(planks[0]).toMatchObject({ clean: { left: false, right: false }, keep: false, defects: [] });
  });

  it('are counterclockwise, wherever their outline begins', () => {
    const [board] = workOf(
      `boards: [{name: A, stock: front, thickness: 26, outline: [[40, 15], [60, 240], [1900, 230], [1880, 20]], clean: both, figure: right, bow: long, keep: true}]\n`,
    ).planks;
    expect(board?.outline).toEqual([
      [1880, 20],
      [1900, 230],
      [60, 240],
      [40, 15],
    ]);
    expect(board).toMatchObject({
      clean: { left: true, right: true },
      figure: 'right',
      bow: 'long',
      keep: true,
    });
  });

  it('have defects by their middle and size, by the end they start at, or by their outline', () => {
    const [board] = workOf(`boards:
  - name: A
    stock: front
    thickness: 26
    length: 2150
    width: [228, 241]
    defects:
      - {kind: check, from: left, length: 80}
      - {kind: knot, sound: true, at: [640, 80], size: [60, 45]}
      - {kind: knot, at: [900, 0], size: [10, 10]}
      - {kind: sapwood, outline: [[0, 205], [0, 228], [2150, 241], [2150, 221]]}
`).planks;
    expect(board?.defects).toEqual([
      {
        kind: 'check',
        outline: [
          [0, 0],
          [80, 0],
          [80, 241],
          [0, 241],
        ],
      },
      {
        kind: 'sound knot',
        outline: [
          [610, 57.5],
          [670, 57.5],
          [670, 102.5],
          [610, 102.5],
        ],
      },
      {
        kind: 'loose knot',
        outline: [
          [895, -5],
          [905, -5],
          [905, 5],
          [895, 5],
        ],
      },
      {
        kind: 'sapwood',
        outline: [
          [2150, 221],
          [2150, 241],
          [0, 228],
          [0, 205],
        ],
      },
    ]);
  });

  it('may be in inches, and then a size too', () => {
    const { planks } = projectOf(
      `units: in\nboards: [{name: A, stock: front, thickness: 1, size: 84 x 7 1/2 x 2}]\nstock: {front: {thickness: 13/16}, side: {thickness: 7/16}}\ndrawers: [{name: Buttons, opening: {width: 11, height: 3, depth: 16}}]`,
    ).work ?? { planks: [] };
    expect(planks).toHaveLength(2);
    expect(planks[0]?.outline[2]).toEqual([84 * 25.4, 7.5 * 25.4]);
  });
});

describe('the blanks of a set', () => {
  const { blanks, unlisted } = workOf(BOARDS);

  it('are the parts for which boards are listed, each by its number', () => {
    expect(unlisted).toEqual(['bottom']);
    expect(blanks.map(({ drawer, part, index }) => `${drawer} ${part} ${index}`)).toEqual([
      'Buttons front 1',
      'Buttons front 2',
      'Buttons side 1',
      'Buttons side 2',
      'Buttons side 3',
      'Buttons side 4',
      'Buttons back 1',
      'Buttons back 2',
      'Cloth front 1',
      'Cloth side 1',
      'Cloth side 2',
      'Cloth back 1',
    ]);
  });

  it('are as long as parts has them rough, 3 mm wider at each edge, of boards 1 mm thicker at each face', () => {
    expect(blanks[0]).toMatchObject({ length: 279 + 36, width: 75 + 6, thickness: 22, finished: 20 });
    expect(blanks[2]).toMatchObject({ length: 403 + 18 + 14, width: 75 + 6, thickness: 13, finished: 11 });
  });

  it('have no defect within their joints and 10 mm, nor in their groove', () => {
    // Front: 15 + 3 spare, the side's 11, and 10; the groove from 3 + 11 to 3 + 16.
    expect(blanks[0]?.zones).toEqual([
      { from: [0, 0], to: [39, 81] },
      { from: [315 - 39, 0], to: [315, 81] },
      { from: [0, 14], to: [315, 19] },
    ]);
    // A left side has its front at the right: there 18 spare, tails of 15 and 10; at its back 14, 11 and 10.
    expect(blanks[2]?.zones).toEqual([
      { from: [0, 0], to: [35, 81] },
      { from: [435 - 43, 0], to: [435, 81] },
      { from: [0, 14], to: [435, 19] },
    ]);
    expect(blanks[3]?.zones.slice(0, 2)).toEqual([
      { from: [0, 0], to: [43, 81] },
      { from: [435 - 35, 0], to: [435, 81] },
    ]);
    // A back has no groove: 11 + 3, the side's 11, and 10.
    expect(blanks[6]?.zones).toEqual([
      { from: [0, 0], to: [35, 61] },
      { from: [307 - 35, 0], to: [307, 61] },
    ]);
  });

  it('lie beside each other where they are the sides of one drawer', () => {
    expect(blanks.slice(2, 6).map(({ beside }) => beside)).toEqual([
      'Buttons, 1',
      'Buttons, 1',
      'Buttons, 2',
      'Buttons, 2',
    ]);
  });

  it('of slips carry the groove in place of the sides, and those of a lipped front a higher one', () => {
    const { blanks } = workOf(`${BOARDS}bottom: {slips: {width: 10, height: 18}}\nfront: {lip: 6}\n`);
    const zones = (part: string) => blanks.find((blank) => blank.part === part)?.zones.slice(2);
    expect(zones('side')).toEqual([]);
    // Slips are trimmed by 5 mm at each end, and 18 + 6 wide.
    expect(blanks.find(({ part }) => part === 'slip')).toMatchObject({
      stock: 'side',
      width: 24,
      finished: 10,
    });
    expect(zones('slip')?.[0]?.from[1]).toBe(3 + 11);
    expect(zones('front')?.[0]?.from[1]).toBe(3 + 11 + 6);
  });

  it('of panels may lie either way, those of a solid bottom along the grain', () => {
    const panels = `${BOARDS}  - {name: Ply, stock: bottom, thickness: 7, length: 2440, width: 1220}\n`;
    const bottom = (more: string) => workOf(panels + more).blanks.find(({ part }) => part === 'bottom');
    expect(bottom('')?.eitherWay).toBe(true);
    expect(bottom('bottom: {kind: solid}\n')?.eitherWay).toBe(false);
  });

  it('may have the defects that the plan allows, knots of both kinds', () => {
    const { blanks } = workOf(`${BOARDS}breakout: {allow: {side: [sapwood, knot]}}\n`);
    expect(blanks[0]?.allows).toEqual([]);
    expect(blanks[2]?.allows).toEqual(['sapwood', 'sound knot', 'loose knot']);
  });

  it('are strips where no board is wide enough, the fewest that fit, each to 0.1 mm', () => {
    const { blanks } = workOf(BOARDS.replace('width: 230', 'width: 120, count: 2'));
    const strips = blanks.filter(({ drawer, part }) => drawer === 'Cloth' && part === 'front');
    // 189 / 2 is 94.5.
    expect(strips.map(({ index, strip, width }) => [index, strip, width])).toEqual([
      [1, 1, 100.5],
      [1, 2, 100.5],
    ]);
    // The groove is in the lower one alone; the joints are at the ends of both.
    expect(strips.map(({ zones }) => zones.length)).toEqual([3, 2]);
  });

  it('are whole where no board is long enough, as strips would be no shorter', () => {
    const { blanks } = workOf(BOARDS.replace('length: 2150, width: 230', 'length: 600, width: 230'));
    expect(blanks.find(({ drawer, part }) => drawer === 'Cloth' && part === 'front')?.strip).toBeUndefined();
  });

  it('have second tries, one of each size, that serve either hand', () => {
    const { blanks } = workOf(`${BOARDS}breakout: {spare: {front: 1, side: 2}}\n`);
    const spares = blanks.filter(({ spare }) => spare);
    expect(spares.map(({ drawer, part, index }) => [drawer, part, index])).toEqual([
      ['Buttons', 'front', undefined],
      ['Buttons', 'side', undefined],
      ['Buttons', 'side', undefined],
      ['Cloth', 'front', undefined],
      ['Cloth', 'side', undefined],
      ['Cloth', 'side', undefined],
    ]);
    expect(spares[1]?.zones).toContainEqual({ from: [0, 0], to: [43, 81] });
    expect(spares[1]?.zones).toContainEqual({ from: [435 - 43, 0], to: [435, 81] });
  });

  it('run through as they are listed, a repeated name by its copies', () => {
    const { runs, blanks } = workOf(
      `${BOARDS}breakout: {runThrough: [[buttons, Buttons], {stack: [Cloth]}]}\n`,
    );
    expect(runs.map(({ kind, drawers }) => [kind, drawers])).toEqual([
      ['row', ['Buttons', 'Buttons']],
      ['stack', ['Cloth']],
    ]);
    expect(runs.map(({ wish }) => wish?.pieces.map((i) => blanks[i]?.index))).toEqual([[1, 2], [1]]);
  });
});

describe('boards for parts of different woods', () => {
  it('are advised on, as woods are not compared', () => {
    const woods = SMALL_SET.replace(
      'front: {thickness: 20}',
      'front: {thickness: 20, species: "Cherry, black"}',
    ).replace(
      'side: {thickness: 11}',
      'side: {thickness: 11, species: "Ash, white"}\n  back: {species: Beech}',
    );
    const { set } = projectOf(BOARDS + woods);
    expect(set.advice.map((each) => sentence(each, 'mm'))).toEqual([
      '"Ash" is listed for parts of Ash, white and of Beech; woods are not compared, so any of them may come out of it',
    ]);
  });
});

describe('what is wrong with boards', () => {
  const board = (keys: string) =>
    `boards: [{name: Cherry 1, stock: front, thickness: 26, ${keys}}]\n${SMALL_SET}`;
  const defect = (keys: string) => board(`length: 2000, width: 230, defects: [{${keys}}]`);

  it.each<[string, string, string]>([
    [
      'an outline that crosses itself',
      board('outline: [[0, 0], [2000, 230], [2000, 0], [0, 230]]'),
      'boards[0].outline: the outline of "Cherry 1" crosses itself: its line from corner 1 to 2 meets that from 3 to 4; give its corners in order, each once',
    ],
    [
      'a defect that crosses itself',
      defect('kind: stain, outline: [[0, 0], [100, 100], [100, 0], [0, 100]]'),
      'boards[0].defects[0].outline: the outline of this stain crosses itself: its line from corner 1 to 2 meets that from 3 to 4; give its corners in order, each once',
    ],
    [
      'a defect wholly off its board',
      defect('kind: knot, at: [640, 300], size: [60, 45]'),
      'boards[0].defects[0]: this loose knot lies wholly off its board: it reaches from 610 mm to 670 mm along and from 277.5 mm to 322.5 mm across, the board from 0 mm to 2000 mm and from 0 mm to 230 mm; measure from the left end and from the lower edge, or remove it',
    ],
    [
      'a defect with no place',
      defect('kind: knot, at: [640, 80]'),
      'boards[0].defects[0]: the place of this knot must be given in one of three ways: at and size, from and length, or outline; try at: [640mm, 80mm], size: [60mm, 45mm]',
    ],
    [
      'a sound check',
      defect('kind: check, sound: true, from: left, length: 80'),
      'boards[0].defects[0].sound: only a knot is sound or loose; remove it',
    ],
    [
      'a kind that does not exist',
      defect('kind: crack, from: left, length: 80'),
      'boards[0].defects[0].kind: this is "crack"; it must be one of knot, check, shake, wane, sapwood, pith, wormhole, stain',
    ],
    [
      'a board thinner than all its parts',
      board('length: 2000, width: 230').replace('26', '21'),
      'boards[0].thickness: "Cherry 1" is 21 mm thick, too thin for every part that it is for: the thinnest needs 22 mm before 1 mm is planed off each face; list it for thinner parts, or remove it',
    ],
    [
      'a saw cut of less than nothing',
      `saw: {kerf: -3}\n${board('length: 2000, width: 230')}`,
      'saw.kerf: -3 mm is out of range; it must be 0 mm to 20 mm',
    ],
    [
      'a part wider than all its boards together',
      board('length: 2000, width: 90, count: 2'),
      'boards[0]: the front of "Cloth" is 189 mm wide, and all boards that it could come out of are 180 mm wide together; list more boards for it',
    ],
    [
      'more than 500 boards',
      board('length: 2000, width: 230, count: 300').replace(
        ']\n',
        ', {name: B, stock: side, thickness: 20, size: 2000 x 200 x 201}]\n',
      ),
      'boards: there are 501 boards; there may be up to 500; list those that are at hand, or divide the plan into several',
    ],
    [
      'a size in two ways',
      board('length: 2000, width: 230, size: 2000 x 230'),
      'boards[0]: the size of "Cherry 1" is given in more than one way; give length and width, or size, or outline, one of the three',
    ],
    [
      'no size',
      board('count: 2'),
      'boards[0]: "Cherry 1" has no size; it must have length and width, or size, or outline; try length: 1800mm, width: 190mm',
    ],
    ['half a size', board('length: 2000'), 'boards[0]: "Cherry 1" has no width; try width: 190mm'],
    [
      'a size that is none',
      board('size: 2000 by 230'),
      'boards[0].size: "2000 by 230" is no size of a board; it must be length x width, or length x width x quantity; try 1810mm x 190mm x 3',
    ],
    [
      'a name of two boards',
      `boards: [{name: A, stock: front, thickness: 26, size: 2000 x 230}, {name: a, stock: side, thickness: 26, size: 2000 x 230}]\n${SMALL_SET}`,
      'boards[1].name: "a" is the name of boards[0] too; every name must be different; give it another name, or give the first a count',
    ],
    [
      'a drawer that does not exist in a row',
      `breakout: {runThrough: [[Butons, Cloth]]}\n${BOARDS}${SMALL_SET}`,
      'breakout.runThrough[0][0]: "Butons" is no drawer of this plan; there are Buttons, Cloth; try Buttons',
    ],
    [
      'a drawer repeated in stacks more often than there are copies',
      `breakout: {runThrough: [[Buttons, Cloth], {stack: [Cloth]}]}\n${BOARDS}${SMALL_SET}`,
      'breakout.runThrough[1].stack[0]: "Cloth" is named 2 times, and there is one such drawer; remove it here, or give the drawer a greater count',
    ],
  ])('is said by its name and place: %s', (_what, plan, says) => {
    expect(wrongWith(plan)).toEqual([says]);
  });

  it('is said of each board together with what is wrong with the saw, and with other boards', () => {
    const crossing =
      '{name: A, stock: front, thickness: 26, outline: [[0, 0], [2000, 230], [2000, 0], [0, 230]]}';
    const marred =
      '{name: B, stock: front, thickness: 26, size: 2000 x 230, defects: [{kind: knot, at: [640, 300], size: [60, 45]}]}';
    const many = '{name: C, stock: side, thickness: 16, size: 2000 x 230, count: 600}';
    const said = wrongWith(`saw: {kerf: -3}\nboards: [${many}, ${crossing}, ${marred}]\n${SMALL_SET}`);
    expect(said.map((line) => line.split(':')[0])).toEqual([
      'saw.kerf',
      'boards[0].count',
      'boards[1].outline',
      'boards[2].defects[0]',
    ]);
  });

  it('is said of them together where they are thin or narrow, or cut otherwise than is said', () => {
    const thin = '{name: A, stock: side, thickness: 12, size: 2000 x 230}';
    const narrow = '{name: B, stock: front, thickness: 26, size: 2000 x 90}';
    const cut =
      '{name: C, stock: back, thickness: 16, size: 2000 x 230, cut: {cuts: [{kind: rip, piece: 0, at: 300}], blanks: []}}';
    const said = wrongWith(`boards: [${thin}, ${narrow}, ${cut}]\n${SMALL_SET}`);
    expect(said.map((line) => line.split(':')[0])).toEqual([
      'boards[0].thickness',
      'boards[1]',
      'boards[2].cut.cuts[0]',
    ]);
  });

  it('is said together with what is wrong elsewhere, and spoils no drawer', () => {
    expect(
      wrongWith(
        `${board('length: 2000').replace('Cloth, opening', 'Cloth, joint: {slope: "1:1"}, opening')}`,
      ).map((line) => line.split(':')[0]),
    ).toEqual(['boards[0]', 'drawers[1].joint.slope']);
  });
});
