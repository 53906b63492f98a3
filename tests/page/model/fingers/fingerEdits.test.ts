import { describe, expect, it } from 'vitest';
import {
  limitSpacers,
  listedFronts,
  releaseFronts,
  removeFingers,
  setFingers,
} from '../../../../src/page/model/fingers/fingerEdits.ts';
import { dragSharedSpacer } from '../../../../src/page/model/fingers/sharedSpacer.ts';
import { type Snapshot, snapshot } from '../../../../src/page/model/snapshot.ts';
import { widthsOf } from '../../../../src/page/model/widths.ts';
import type { Result } from '../../../../src/units/complaint.ts';
import { speak } from '../../../../src/units/phrase.ts';
import { openChest } from '../../../openChest.ts';
import { BACK, cornerIn, FRONT, inInches, snapshotOf } from '../../chest.ts';

const GUIDED = openChest('guided');
const FINGERS = openChest('fingers');
const made = (result: Result<Snapshot>): Snapshot => {
  if (!result.ok) throw new Error(result.complaints.map(({ says }) => speak(says, 'mm')).join());
  return result.value;
};
const words = (result: Result<Snapshot>): string =>
  result.ok ? '' : result.complaints.map(({ says }) => speak(says, 'mm')).join('; ');
const fingersIn = ({ project }: Snapshot) => project.cutting?.fingers;

describe('the fingers of a plan', () => {
  it('are begun with a pair, in the bush of the guides unless another is given', () => {
    const guided = snapshotOf(GUIDED);
    expect(fingersIn(made(setFingers(guided, { together: 14, bush: undefined })))).toEqual({
      together: 14,
      bush: 16,
    });
    expect(fingersIn(made(setFingers(guided, { together: 14, bush: 17 })))).toEqual({
      together: 14,
      bush: 17,
    });
  });

  it('are refused in the words of the plan where they will not do', () => {
    const plan = snapshotOf(FINGERS);
    expect(words(setFingers(plan, { bush: 10 }))).toMatch(/bush/u);
    expect(words(setFingers(plan, { together: 200 }))).not.toBe('');
    expect(words(setFingers(plan, { pairs: 0.5 }))).not.toBe('');
    expect(words(setFingers(plan, { bar: 100 }))).toMatch(/bar/u);
    expect(words(setFingers(plan, { together: undefined }))).not.toBe('');
  });

  it('are written in the unit of the plan, and a limit is removed where none is given', () => {
    const plan = snapshotOf(inInches(GUIDED));
    const limited = made(setFingers(plan, { together: 15.875, pairs: 9, bar: 254 }));
    expect(limited.text).toContain('{together: 5/8, pairs: 9, bar: 10}');
    const free = made(setFingers(limited, { pairs: undefined, bar: undefined }));
    expect(fingersIn(free)).toEqual({ together: 15.875, bush: 16 });
  });

  it('take with them what was asked of their spacers', () => {
    const plain = made(removeFingers(snapshotOf(FINGERS)));
    expect(fingersIn(plain)).toBeUndefined();
    expect(plain.text).not.toMatch(/fingers:|family:/u);
    expect(plain.project.set.advice.filter(({ at }) => at[0] === 'family')).toEqual([]);
  });
});

describe('the number of different spacers', () => {
  it('is written where a plan has it, and removed where there is no limit', () => {
    const plan = snapshotOf(FINGERS);
    expect(made(limitSpacers(plan, 3)).text).toBe(FINGERS.replace('spacers: 2', 'spacers: 3'));
    expect(made(limitSpacers(plan, undefined)).text).toBe(FINGERS.replace('spacers: 2, ', ''));
  });

  it('is refused where the set cannot do with so few', () => {
    expect(words(limitSpacers(snapshotOf(FINGERS.replace('[6, 10]', '[5, 8]')), 1))).toMatch(
      /the front corners cannot do with 1 different spacer/u,
    );
  });
});

describe('fronts that are listed', () => {
  it('are as the set has them again when they are released, and their backs as they were', () => {
    const plan = snapshotOf(FINGERS);
    const { snapshot: moved } = dragSharedSpacer(plan, cornerIn(plan, FRONT), 0, 6.5);
    expect(listedFronts(moved)).toHaveLength(6);
    const released = made(releaseFronts(moved));
    expect(listedFronts(released)).toEqual([]);
    released.project.set.drawers.forEach(({ front, back }, i) => {
      expect(widthsOf(front)).toEqual(widthsOf(plan.project.set.drawers[i]?.front ?? front));
      expect(widthsOf(back)).toEqual(widthsOf(plan.project.set.drawers[i]?.back ?? back));
    });
  });

  it('stay where a width is locked', () => {
    const listed = snapshot(
      FINGERS.replace(
        '{name: Buttons, count: 2,',
        '{name: Buttons, count: 2, joint: {tails: [27.25, 27.25], pins: [8.5], halfPin: 6, locked: [tail 1]},',
      ).replace('spacers: 2', 'spacers: 3'),
    );
    if (!listed.ok) throw new Error(words(listed));
    expect(cornerIn(listed.value, FRONT).locked.size).toBe(1);
    expect(made(releaseFronts(listed.value)).text).toBe(listed.value.text);
    expect(cornerIn(listed.value, BACK).listed).toBe(false);
  });
});
