import { describe, expect, it } from 'vitest';
import { readPlan } from '../../src/plan/readPlan.ts';
import { readProject } from '../../src/project/readProject.ts';
import { told } from '../value.ts';
import { complaintsOf } from './complaintsOf.ts';

/** A plan whose fronts, backs and single corner have these keys, and whose second drawer has its own. */
const planOf = (keys: { joint?: string; back?: string; own?: string; single?: string }): string => `
stock: {front: {thickness: 20}, side: {thickness: 11}}
joint: {kind: through, ${keys.joint ?? 'pin: 5'}}
groove: {stopped: auto}
back: {joint: {${keys.back ?? 'pin: 5'}}}
drawers:
  - {name: Buttons, opening: {width: 280, height: 120, depth: 420}}
  - {name: Thread, opening: {width: 280, height: 120, depth: 420}, joint: {${keys.own ?? 'slope: "1:8"'}}}
joints:
  - {name: Carcase, kind: through, width: 430, tailBoard: 19, pinBoard: 19, ${keys.single ?? 'pin: 9'}}
`;

const specsOf = (keys: Parameters<typeof planOf>[0]) => {
  const reading = readPlan(planOf(keys));
  if (!reading.ok) throw new Error(complaintsOf(planOf(keys)).join('\n'));
  const { drawers, joints } = reading.plan;
  return {
    fronts: drawers.map(({ joint: { spacing, houndsTooth } }) => ({ spacing, houndsTooth })),
    backs: drawers.map(({ backJoint: { spacing, houndsTooth } }) => ({ spacing, houndsTooth })),
    single: joints.map(({ spec: { spacing, houndsTooth } }) => ({ spacing, houndsTooth }))[0],
  };
};

const EVEN = { spacing: { kind: 'even' }, houndsTooth: undefined };
const GROUPED = { spacing: { kind: 'grouped', tails: 4, groups: [2, 2] }, houndsTooth: undefined };

describe('the spacing in a plan', () => {
  it('is that of the front corners alone, as is a number of tails: backs and single corners have their own', () => {
    expect(specsOf({ joint: 'spacing: grouped, groups: [2, 2]' })).toEqual({
      fronts: [GROUPED, GROUPED],
      backs: [EVEN, EVEN],
      single: EVEN,
    });
    expect(specsOf({ back: 'spacing: hounds-tooth, smallPin: 4' }).backs[1]).toEqual({
      spacing: { kind: 'even' },
      houndsTooth: { smallPin: 4 },
    });
    expect(specsOf({ single: 'spacing: grouped, groups: [2, 3, 2], groupPin: 30' }).single?.spacing).toEqual({
      kind: 'grouped',
      tails: 7,
      groups: [2, 3, 2],
      groupPin: 30,
    });
  });

  it('may be graded too, from the edge or both ways, and count or list its tails', () => {
    const graded = specsOf({ joint: 'spacing: hounds-tooth, graded: {ratio: 0.9, from: middle}' }).fronts[0];
    expect(graded).toEqual({ spacing: { kind: 'graded', ratio: 0.9, from: 'middle' }, houndsTooth: {} });
    const listed = specsOf({ single: 'spacing: hounds-tooth, tails: [200, 203], pins: [9]' }).single;
    expect(listed).toMatchObject({ spacing: { kind: 'listed' }, houndsTooth: {} });
  });

  it('of one drawer takes the place of the plan’s, and what would contradict it is left out', () => {
    const second = (joint: string, own: string) => specsOf({ joint, own }).fronts[1];
    const groups = 'spacing: grouped, groups: [2, 2]';
    expect(second(groups, 'spacing: even')).toEqual(EVEN);
    expect(second(groups, 'tails: 3')).toEqual({ ...EVEN, spacing: { kind: 'even', tails: 3 } });
    expect(second(groups, 'tails: [55, 48]')).toMatchObject({ spacing: { kind: 'listed' } });
    expect(second(groups, 'graded: {ratio: 0.9}')).toMatchObject({ spacing: { kind: 'graded' } });
    expect(second(groups, 'groups: [1, 3]')).toMatchObject({ spacing: { groups: [1, 3], tails: 4 } });
    expect(second(groups, 'spacing: hounds-tooth')).toEqual({ ...EVEN, houndsTooth: {} });
    expect(second('tails: 3, graded: {ratio: 0.9}', groups)).toEqual(GROUPED);
    // Small pins stay in tails that are counted otherwise.
    expect(second('spacing: hounds-tooth, smallPin: 4', 'tails: 3')).toEqual({
      spacing: { kind: 'even', tails: 3 },
      houndsTooth: { smallPin: 4 },
    });
  });

  it('may be closer at the edges, which takes the place of a list or a grade, and gives way to one', () => {
    const closer = { kind: 'closer-edges', ratio: 0.7, each: 2 };
    const second = (joint: string, own: string) => specsOf({ joint, own }).fronts[1]?.spacing;
    const keys = 'spacing: closer-edges, closerTails: 1';
    expect(specsOf({ single: 'spacing: closer-edges, tails: 9' }).single?.spacing).toEqual({
      ...closer,
      tails: 9,
    });
    expect(second(keys, 'closer: 0.8')).toEqual({ ...closer, ratio: 0.8, each: 1 });
    expect(second(keys, 'tails: 3')).toEqual({ ...closer, each: 1, tails: 3 });
    expect(second(keys, 'tails: [55, 48]')).toMatchObject({ kind: 'listed' });
    expect(second(keys, 'graded: {ratio: 0.9}')).toMatchObject({ kind: 'graded' });
    expect(second(keys, 'spacing: even')).toEqual({ kind: 'even' });
    expect(second('tails: [55, 48]', 'spacing: closer-edges')).toEqual(closer);
    expect(second('tails: 3, graded: {ratio: 0.9}', 'spacing: closer-edges')).toEqual({
      ...closer,
      tails: 3,
    });
    expect(second('spacing: grouped, groups: [1, 2]', 'spacing: closer-edges')).toEqual(closer);
    expect(complaintsOf(planOf({ single: 'spacing: closer-edges, tails: [50, 60]' }))[0]).toContain(
      'joints[0].spacing: the tails are listed width by width',
    );
    expect(
      complaintsOf(planOf({ single: 'spacing: closer-edges, closer: 1.5, closerTails: 0' })),
    ).toHaveLength(2);
  });

  it('is refused where it contradicts itself, with the place of what is wrong', () => {
    expect(complaintsOf(planOf({ joint: 'spacing: grouped' }))[0]).toContain(
      'plan.yaml:3:24 joint.spacing: the tails are grouped, but their groups are missing; list',
    );
    expect(complaintsOf(planOf({ single: 'spacing: grouped, groups: [2, 2], tails: 5' }))).toEqual([
      'plan.yaml:10:111 joints[0].tails: grouped tails are as many as their groups say; remove it, or choose another spacing',
    ]);
    expect(
      complaintsOf(planOf({ back: 'spacing: grouped, groups: [2, 2], graded: {ratio: 0.9}' }))[0],
    ).toContain('or, both ways, from the middle');
    expect(complaintsOf(planOf({ joint: 'spacing: graded' }))).toEqual([
      'plan.yaml:3:24 joint.spacing: this is "graded"; it must be even, hounds-tooth, grouped or closer-edges; to grade tails there is graded, and for both ways its from: middle',
    ]);
    expect(complaintsOf(planOf({ joint: 'spacing: grouped, groups: [2]' }))[0]).toContain(
      'joint.groups: this is a list of 1; it must be two groups or more',
    );
    expect(complaintsOf(planOf({ joint: 'spacing: grouped, groups: 2' }))[0]).toContain(
      'it must be a list of whole numbers of tails, one for each group, such as [2, 3, 2]',
    );
    expect(complaintsOf(planOf({ joint: 'spacing: grouped, groups: [2, 0.5]' }))[0]).toContain(
      'joint.groups[1]: 0.5 is not whole',
    );
  });

  it('tells of keys that have no effect beside it', () => {
    const unused = (keys: Parameters<typeof planOf>[0]): string[] => {
      const reading = readProject(planOf(keys));
      if (!reading.ok) throw new Error(JSON.stringify(reading.complaints));
      return told(reading.value.set.advice).flatMap((each) => (each.includes('no effect') ? [each] : []));
    };
    expect(unused({ joint: 'groupPin: 9', back: 'smallPin: 4', single: 'groups: [2, 2]' })).toEqual([
      'joint.groupPin: joint.groupPin has no effect: it is for spacing: grouped',
      'back.joint.smallPin: back.joint.smallPin has no effect: it is for spacing: hounds-tooth',
      'joints.0.groups: joints[0].groups has no effect: it is for spacing: grouped',
    ]);
    expect(unused({ joint: 'groupPin: 9', own: 'spacing: grouped, groups: [2, 1]' })).toEqual([]);
    expect(unused({ own: 'smallPin: 4' })).toEqual([
      'drawers.1.joint.smallPin: drawers[1].joint.smallPin has no effect: it is for spacing: hounds-tooth',
    ]);
    expect(
      unused({ joint: 'spacing: hounds-tooth, smallPin: 4', back: 'spacing: grouped, groups: [1, 1]' }),
    ).toEqual([]);
  });
});
