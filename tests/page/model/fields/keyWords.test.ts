import { describe, expect, it } from 'vitest';
import {
  isElsewhere,
  isOfEntry,
  KEY_GROUPS,
  keysOfGroup,
} from '../../../../src/page/model/fields/keyGroups.ts';
import { inWords, labelOf, usualWords } from '../../../../src/page/model/fields/keyWords.ts';
import { keyAt, valuesIn } from '../../../../src/page/model/fields/planKeys.ts';
import { setKeys } from '../../../../src/page/model/fields/setKeys.ts';
import { reachesSingleCorners } from '../../../../src/page/model/keepInherited.ts';
import { FIRST_SCOPE } from '../../../../src/page/model/scope.ts';
import type { Snapshot } from '../../../../src/page/model/snapshot.ts';
import { CHEST, cornerIn, FRONT, snapshotOf } from '../../chest.ts';

describe('the label of a field', () => {
  it('is no key of a plan, nor a few of them in a row', () => {
    const fields = KEY_GROUPS.flatMap((group) =>
      keysOfGroup(group)
        .flatMap(valuesIn)
        .map((key) => ({
          group,
          key,
          own: isOfEntry(group.of) ? key.at.slice(2) : key.at,
        })),
    ).filter(({ group, own }) => !isElsewhere(group, own));
    expect(fields.length).toBeGreaterThan(80);
    const raw = fields.flatMap(({ group, key, own }) => {
      const label = labelOf(group, key);
      const names = own.filter((step) => step !== '*');
      const rows = names.map((_, i) => names.slice(i).map(inWords).join(' ')).slice(0, -1);
      return /[a-z][A-Z]|[.*_[\]]/u.test(label) || rows.includes(label) ? [label] : [];
    });
    expect(raw).toEqual([]);
  });
});

describe('a choice where nothing is chosen', () => {
  it.each([
    [['joint', 'kind'], 'lapped (as usual)'],
    [['stock', 'front', 'grain'], 'flatsawn (as usual)'],
    [['joint', 'graded', 'from'], 'edge (as usual)'],
    [['joint', 'shoulder'], 'none (as usual)'],
    [['joint', 'mitre'], 'not given'],
    [['bottom', 'kind'], 'panel (as usual)'],
    [['bottom', 'slips'], 'none (as usual)'],
    [['units'], 'mm (as usual)'],
    [['fractions'], '64 (as usual)'],
  ])('%j is told as %s', (at, words) => {
    const key = keyAt(at);
    if (key === undefined) throw new Error('no such key');
    expect(usualWords(key)).toBe(words);
  });

  it('is told as what it is then', () => {
    const [drawer] = snapshotOf(CHEST.replace(/, species: [^}]*\}/gu, '}')).project.set.drawers;
    expect(drawer?.front.kind).toBe('lapped');
    expect(drawer?.spec.bottom.kind).toBe('panel');
  });
});

describe('what is given for all drawers', () => {
  const WITH_CORNER = `${CHEST.trimEnd()}
joints:
  - {name: Carcase, kind: through, width: 430, tailBoard: 20, pinBoard: 19}
`;
  const TYPED: Readonly<Record<string, string | number>> = {
    kind: 'double-lapped',
    slope: '1:8',
    pin: 6,
    halfPin: 7,
    lap: 6,
    shoulder: 'lower',
    shoulderWidth: 20,
    mitre: 'corner',
    proud: 0.5,
    chisel: 4,
  };
  const group = KEY_GROUPS.find(({ places }) => places.includes('joint'));
  const keys = (group ? keysOfGroup(group) : []).flatMap(valuesIn).map(({ at }) => String(at[1]));
  const shared = [...new Set(keys)].filter((key) => key in TYPED);

  const BEFORE: Readonly<Record<string, string>> = { shoulder: 'mitre' };
  const given = (now: Snapshot, key: string): Snapshot => {
    const setting = [{ of: 'drawers' as const, at: ['joint', key] }, TYPED[key]] as const;
    const made = setKeys(now, cornerIn(now, FRONT), [setting], FIRST_SCOPE);
    if (!made.ok) throw new Error(JSON.stringify(made.complaints));
    return made.value;
  };
  /** The single corner, and what is wished of it that its layout does not show. */
  const single = ({ project: { joints } }: Snapshot) =>
    JSON.stringify(joints.map(({ joint, spec: { chisel, mitre } }) => [joint, chisel, mitre]));

  it.each(shared)('of a corner, %s, reaches single corners where its field says so, and else not', (key) => {
    const first = BEFORE[key];
    const now = first === undefined ? snapshotOf(WITH_CORNER) : given(snapshotOf(WITH_CORNER), first);
    expect(single(given(now, key)) !== single(now)).toBe(reachesSingleCorners(['joint', key]));
  });
});
