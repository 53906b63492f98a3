import { describe, expect, it } from 'vitest';
import { type FrameMember, frameOf } from '../../src/cabinet/frameMembers.ts';
import { readPlan } from '../../src/plan/readPlan.ts';
import { complaintsOf } from '../plan/complaintsOf.ts';

const text = (rows: string, keys = '') => `stock: {front: {thickness: 20}, side: {thickness: 11}}
cabinet: {width: 600, height: 418, depth: 420, rail: 18, divider: 12, rows: ${rows}${keys}}
`;

const frame = (rows: string, keys = ''): FrameMember[] => {
  const reading = readPlan(text(rows, keys));
  if (!reading.ok || reading.plan.cabinet === undefined)
    throw new Error(complaintsOf(text(rows, keys)).join('\n'));
  return frameOf(reading.plan.cabinet);
};

/** Where each of a kind lies, `x0-x1 y0-y1 z0-z1`, and what it is for. */
const where = (members: readonly FrameMember[], part: FrameMember['part']): string[] =>
  members
    .filter((each) => each.part === part)
    .map(
      ({ from, to, drawers }) => `${from.map((at, i) => `${at}-${to[i]}`).join(' ')} ${drawers.join('+')}`,
    );

const refused = (rows: string, keys: string): string[] =>
  complaintsOf(text(rows, keys)).map((each) => each.replace(/^plan\.yaml:\d+:\d+ /u, ''));

describe('frameOf', () => {
  it('lays a rail in front between rows, and behind it a runner under each side of the drawer above', () => {
    // Two rows of 200 in 418; a rail 60 from front to back leaves 360 of 420.
    const members = frame('[Buttons, Cloth]');
    expect(where(members, 'rail')).toEqual(['0-600 0-60 200-218 Buttons']);
    expect(where(members, 'runner')).toEqual([
      '0-30 60-420 200-218 Buttons',
      '570-600 60-420 200-218 Buttons',
    ]);
    // Under both sides of Cloth's top edge lies a runner of Buttons; it runs on the cabinet's bottom.
    expect(members).toHaveLength(3);
  });

  it('carries two drawers on one runner behind a short divider, with a guide between them', () => {
    // 600 less a divider of 12: two openings of 294.
    const members = frame('[[Buttons, Thread], Cloth]');
    expect(where(members, 'divider')).toEqual(['294-306 0-60 218-418 Buttons+Thread']);
    expect(where(members, 'runner')).toEqual([
      '0-30 60-420 200-218 Buttons',
      '264-336 60-420 200-218 Buttons+Thread',
      '570-600 60-420 200-218 Thread',
    ]);
    expect(where(members, 'guide')).toEqual(['294-306 60-420 218-238 Buttons+Thread']);
    expect(where(members, 'kicker')).toEqual([]);
  });

  it('holds drawers down by a kicker where no runner lies over their sides', () => {
    const members = frame('[Cloth, [Buttons, Thread]]');
    expect(where(members, 'kicker')).toEqual(['264-336 60-420 200-218 Buttons+Thread']);
    // The lowest row stands on the cabinet's bottom, its guide too.
    expect(where(members, 'guide')).toEqual(['294-306 60-420 0-20 Buttons+Thread']);
  });

  it('takes from a kicker what a runner covers, and leaves it out where that is half of a side', () => {
    const widths = (first: number, second: number) =>
      frame(`[[{name: Buttons, width: ${first}}, Cloth], [{name: Thread, width: ${second}}, Ribbon]]`);
    // Runner 190 to 262; kicker wished 208 to 280, of which 262 to 280 is free: 18 of Ribbon's 30.
    expect(where(widths(220, 238), 'kicker')).toEqual(['262-280 60-420 200-218 Thread+Ribbon']);
    // Runner 190 to 262; kicker wished 200 to 272: but 10 of Ribbon's 30 are free, and none of Thread's.
    expect(where(widths(220, 230), 'kicker')).toEqual([]);
  });

  it('has rails, kickers and runners over and under all rows where those are asked for', () => {
    const members = frame('[Buttons]', ', rails: {top: 20, bottom: 16}');
    expect(where(members, 'rail')).toEqual(['0-600 0-60 418-438 Buttons', '0-600 0-60 -16-0 Buttons']);
    expect(where(members, 'kicker')).toEqual([
      '0-30 60-420 418-438 Buttons',
      '570-600 60-420 418-438 Buttons',
    ]);
    expect(where(members, 'runner')).toEqual(['0-30 60-420 -16-0 Buttons', '570-600 60-420 -16-0 Buttons']);
  });

  it('ends before the back by the vent, a full divider too, which needs no guide', () => {
    const members = frame('[[Buttons, Thread], Cloth]', ', dividers: full, vent: 15');
    expect(where(members, 'divider')).toEqual(['294-306 0-405 218-418 Buttons+Thread']);
    expect(where(members, 'guide')).toEqual([]);
    expect(where(members, 'runner')[1]).toBe('264-336 60-405 200-218 Buttons+Thread');
  });

  it('fills with guides what sides lie outside the openings, on runners as much wider', () => {
    const members = frame('[Buttons, Cloth]', ', guides: {sides: 14, height: 25}');
    expect(where(members, 'runner')).toEqual([
      '-14-30 60-420 200-218 Buttons',
      '570-614 60-420 200-218 Buttons',
    ]);
    expect(where(members, 'guide')).toEqual([
      '-14-0 60-420 218-243 Buttons',
      '600-614 60-420 218-243 Buttons',
      '-14-0 60-420 0-25 Cloth',
      '600-614 60-420 0-25 Cloth',
    ]);
  });

  it('lets a divider beside rows inside a place reach back, as their runners have nothing else to hold them', () => {
    // 600 less 12 and 200 leaves 388; 418 less 18 is twice 200 on the right, at 400.
    const members = frame('[[Buttons, {rows: [Thread, Ribbon], width: 200}]]');
    expect(where(members, 'divider')).toEqual(['388-400 0-420 0-418 Buttons+Thread+Ribbon']);
    expect(where(members, 'rail')).toEqual(['400-600 0-60 200-218 Thread']);
    expect(where(members, 'runner')).toEqual([
      '400-430 60-420 200-218 Thread',
      '570-600 60-420 200-218 Thread',
    ]);
  });

  it('has nothing where rails have no thickness', () => {
    expect(frame('[Buttons, Cloth]').length).toBe(3);
    const none = text('[Buttons, Cloth]').replace('rail: 18', 'rail: 0');
    const reading = readPlan(none);
    expect(reading.ok && reading.plan.cabinet && frameOf(reading.plan.cabinet)).toEqual([]);
  });

  it('is less than usual where there is no room for it', () => {
    // 100 high, two rows of 11 beside the rail; 50 wide; 80 deep.
    const small = text('[[Buttons, Thread], Cloth]')
      .replace('width: 600, height: 418, depth: 420', 'width: 52, height: 40, depth: 80')
      .replace('front: {thickness: 20}', 'front: {thickness: 20}');
    const reading = readPlan(small);
    const found = reading.ok ? reading.plan.cabinet?.frame : undefined;
    // Openings of (52 - 12)/2 by (40 - 18)/2, 80 deep.
    expect(found).toMatchObject({ rails: { width: 40 }, runners: { width: 10 }, guides: { height: 11 } });
  });

  it.each([
    [
      'rails that leave runners nothing',
      'rails: {width: 420}',
      'cabinet.rails.width: rails 420 mm wide leave runners nothing of the 420 mm from front to back; they must be less',
    ],
    [
      'a vent as deep as the cabinet',
      'vent: 420',
      "cabinet.vent: a vent of 420 mm leaves the drawers nothing of the cabinet's depth of 420 mm",
    ],
    [
      'runners that meet under a drawer',
      'runners: {width: 150}',
      'cabinet.runners.width: two runners 150 mm wide do not fit side by side under "Buttons", whose opening is 294 mm wide; try 147mm',
    ],
    [
      'guides higher than an opening',
      'guides: {height: 201}',
      'cabinet.guides.height: guides 201 mm high are higher than the opening of "Buttons", which is 200 mm high; try 200mm',
    ],
  ])('is refused with %s', (_, keys, says) => {
    expect(refused('[[Buttons, Thread], Cloth]', `, ${keys}`)).toEqual([says]);
  });
});
