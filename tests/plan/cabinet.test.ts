import { describe, expect, it } from 'vitest';
import { gapsOf } from '../../src/drawer/gaps.ts';
import { readPlan } from '../../src/plan/readPlan.ts';
import { readProject } from '../../src/project/readProject.ts';
import { complaintsOf } from './complaintsOf.ts';

const plan = ({
  rows = '[[Buttons, Thread], [Ribbon, Ribbon], Cloth]',
  heights = 'equal',
  units = 'mm',
  size = 'width: 600, height: 760, depth: 420, rail: 18',
  drawers = '',
}): string => `units: ${units}
stock: {front: {thickness: 20mm}, side: {thickness: 11mm}}
cabinet: {${size}, rows: ${rows}, heights: ${heights}}
${drawers}
`;

const spaces = (text: string) => {
  const reading = readPlan(text);
  if (!reading.ok) throw new Error(complaintsOf(text).join('\n'));
  return reading.plan.drawers.map(({ name, count, space }) => [
    name,
    count,
    space.kind === 'opening' ? space.opening.width : undefined,
    space.kind === 'opening' ? space.opening.height : undefined,
  ]);
};

describe('a cabinet in a plan', () => {
  it('names the drawers where none are listed, and gives each the opening of its places', () => {
    // 760 less two rails of 18 is 724: 241.33 each, and what rounding down loses goes to the lower two.
    expect(spaces(plan({}))).toEqual([
      ['Buttons', 1, 291, 241],
      ['Thread', 1, 291, 241],
      ['Ribbon', 2, 291, 241.5],
      ['Cloth', 1, 600, 241.5],
    ]);
  });

  it('leaves a listed drawer its own keys, its count and its opening following from the rows', () => {
    const drawers = `drawers:
  - {name: Cloth, joint: {tails: 6}}
  - {name: ribbon}
  - {name: Buttons, count: 1}
  - {name: Thread}
  - {name: Loose, opening: {width: 200, height: 90, depth: 300}}`;
    expect(spaces(plan({ drawers }))).toEqual([
      ['Cloth', 1, 600, 241.5],
      ['ribbon', 2, 291, 241.5],
      ['Buttons', 1, 291, 241],
      ['Thread', 1, 291, 241],
      ['Loose', 1, 200, 90],
    ]);
  });

  it('rounds heights in inch plans to 1/16 in', () => {
    const text = plan({
      units: 'in',
      size: 'width: 24, height: 20, depth: 16, rail: 3/4',
      rows: '[Buttons, Thread, Cloth]',
    });
    // 18 1/2 in is 296 sixteenths: 98, 99 and 99.
    expect(spaces(text).map(([, , , height]) => Number(height) / 25.4)).toEqual(
      [6.125, 6.1875, 6.1875].map((each) => expect.closeTo(each, 9)),
    );
  });

  it.each<[string, Parameters<typeof plan>[0], string[]]>([
    [
      'a name that no drawer has, with the nearest',
      { rows: '[Buttns, Cloth]', drawers: 'drawers: [{name: Buttons}, {name: Cloth}]' },
      ['cabinet.rows[0][0]: there is no drawer called "Buttns"; try Buttons'],
    ],
    [
      'a drawer that has neither place nor opening',
      { rows: '[Cloth]', drawers: 'drawers: [{name: Cloth}, {name: Thread}]' },
      [
        'drawers[1].opening: "Thread" has no place in the cabinet\'s rows, and no opening of its own; name it in cabinet: rows, or give it an opening',
      ],
    ],
    [
      'an opening or a count of its own beside the rows',
      {
        rows: '[Cloth, Cloth]',
        drawers: 'drawers: [{name: Cloth, count: 3, opening: {width: 200, height: 90, depth: 300}}]',
      },
      [
        'drawers[0].count: "Cloth" has a count of 3, and 2 places in the cabinet\'s rows; try 2, or leave the count out',
        'drawers[0].opening: "Cloth" stands in row 1 of the cabinet, and its opening follows from that; remove its opening, or leave its name out of the rows',
      ],
    ],
    [
      'equal drawers in places of two sizes',
      { rows: '[[Cloth, Buttons], Cloth]' },
      [
        'cabinet.rows[1][0]: "Cloth" would have places of two sizes: 291 mm x 371 mm in row 1, 600 mm x 371 mm in row 2; give them two names, or give their rows one height',
      ],
    ],
    [
      'two keys that both fix a progression',
      { heights: '{progression: arithmetic, first: 76, step: 10}' },
      [
        'cabinet.heights.step: first fixes the progression already, as the heights fill the cabinet; remove one of them',
      ],
    ],
    [
      'a geometric progression that nothing fixes',
      { heights: '{progression: geometric}' },
      ['cabinet.heights: nothing fixes this progression; give first, ratio or overall; try ratio: 1.2'],
    ],
    [
      'a key of the other progression',
      { heights: '{progression: arithmetic, ratio: 2}' },
      ['cabinet.heights.ratio: this does not go with the other keys here; remove it'],
    ],
    [
      'a progression of another name',
      { heights: '{progression: upward}' },
      ['cabinet.heights.progression: this is "upward"; it must be arithmetic or geometric'],
    ],
    ['no rows', { rows: '[]' }, ['cabinet.rows: this is a list of 0; it must be a list of at least one row']],
  ])('refuses %s', (_, part, says) => {
    expect(complaintsOf(plan(part)).map((each) => each.replace(/^plan\.yaml:\d+:\d+ /u, ''))).toEqual(says);
  });

  it('tells where in the text a misspelt name stands', () => {
    const text = plan({ rows: '[Cloth, Buttns]', drawers: 'drawers: [{name: Buttons}, {name: Cloth}]' });
    const column = (text.split('\n')[2] ?? '').indexOf('Buttns') + 1;
    expect(complaintsOf(text)[0]).toMatch(`plan.yaml:3:${column} `);
  });

  it('leaves above each drawer what the height of its own row needs through the year', () => {
    const text = `${plan({ rows: '[Buttons, Cloth]', heights: '[100, auto]' })}
fit: {top: auto}
climate: {making: 8%, driest: 6%, dampest: 12%}
woods: {Plum: {coefficient: {radial: 0.002, tangential: 0.002}}}
`
      .replace('thickness: 20mm}', 'thickness: 20mm, species: Plum}')
      .replace('thickness: 11mm}', 'thickness: 11mm, species: Plum}');
    const reading = readProject(text);
    if (!reading.ok) throw new Error(complaintsOf(text).join('\n'));
    const found = reading.value.set.drawers.map(({ spec, sizes }) => ({
      top: spec.space.kind === 'opening' ? spec.space.fit.top : 0,
      dampest: gapsOf(spec, sizes)?.front.gap.dampest,
    }));
    // From 8 % to 12 % wood grows by 4 x 0.002; 0.5 mm is to be left of each row: 100, and 760 less a rail of 18 and that.
    const gap = (height: number) => height - (height - 0.5) / 1.008;
    expect(found).toEqual(
      [100, 642].map((height) => ({ top: expect.closeTo(gap(height), 6), dampest: expect.closeTo(0.5, 6) })),
    );
    expect(found[0]?.top).toBeLessThan(2);
    expect(found[1]?.top).toBeGreaterThan(5);
  });

  const boards = 'boards: [{name: Oak, stock: front, thickness: 26, size: 2000 x 200}]';

  it.each([
    [
      'rows',
      [
        { kind: 'row', drawers: ['Buttons', 'Thread'] },
        { kind: 'row', drawers: ['Ribbon', 'Ribbon'] },
      ],
    ],
    [
      'stacks',
      [
        { kind: 'stack', drawers: ['Ribbon', 'Buttons'] },
        { kind: 'stack', drawers: ['Ribbon', 'Thread'] },
      ],
    ],
  ])('lets the figure run through all of its %s', (along, runs) => {
    const reading = readPlan(`${plan({})}${boards}\nbreakout: {runThrough: ${along}}\n`);
    expect(reading.ok && reading.plan.boards?.runs).toEqual(runs);
  });

  it('is needed for rows and stacks to run through, and must have some', () => {
    const wish = `${boards}\nbreakout: {runThrough: rows}\n`;
    const told = (text: string) => complaintsOf(text).map((each) => each.replace(/^\S+ /u, ''));
    const or = 'list the drawers, as in [[Buttons, Thread], {stack: [Cloth, Notions]}], or remove it';
    expect(told(plan({ rows: '[Cloth, Buttons]' }) + wish)).toEqual([
      `breakout.runThrough: no two drawers of one height stand side by side in the cabinet; ${or}`,
    ]);
    const none = 'drawers: [{name: A, opening: {width: 280, height: 90, depth: 300}}]\n';
    expect(told(`stock: {front: {thickness: 20}, side: {thickness: 11}}\n${none}${wish}`)).toEqual([
      `breakout.runThrough: the rows of a cabinet are meant, and this plan has none; ${or}`,
    ]);
    // Of a cabinet that is at fault nothing more is said.
    expect(told(plan({ rows: '[Cloth, Buttons]', heights: '[76]' }) + wish)).toHaveLength(1);
  });
});
