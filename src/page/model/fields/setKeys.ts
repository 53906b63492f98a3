import { accept, type Place, type Result, refuse } from '../../../units/complaint.ts';
import { say } from '../../../units/phrase.ts';
import type { Edit, PlanValue } from '../../text/edit.ts';
import { editPlan } from '../../text/editPlan.ts';
import type { Written } from '../../text/writeValue.ts';
import { adjustAt } from '../adjust.ts';
import type { CornerRef, EditedCorner } from '../editedCorner.ts';
import { measureEdits } from '../measureEdits.ts';
import type { Quantity } from '../quantities.ts';
import type { Scope } from '../scope.ts';
import type { Snapshot } from '../snapshot.ts';
import { valueAt, type WrittenPlan, writtenPlan } from '../writtenPlan.ts';
import { cabinetEdits } from './cabinetEdits.ts';
import type { Owner } from './keyGroups.ts';
import { ANY, keyAt, type PlanKey } from './planKeys.ts';
import { unitEdits } from './unitEdits.ts';

/** A key by its owner, and its place there. */
export interface KeyRef {
  readonly of: Owner;
  readonly at: Place;
}

/** What a key is set to; undefined leaves it to its default, or to what is given for all drawers. */
export type Setting = readonly [key: KeyRef, value: Written | undefined];

/** What goes where another takes its place. */
const INSTEAD: Readonly<Record<string, readonly string[]>> = {
  opening: ['size'],
  size: ['opening', 'fit'],
  'pulls.fromEnds': ['lineUpWith'],
  'pulls.lineUpWith': ['fromEnds'],
  'woods.*.shrinkage': ['coefficient'],
  'woods.*.coefficient': ['shrinkage'],
};

/** How many keys lead to what one drawer has in place of all, as a whole. */
const depthOf = ({ of, at }: KeyRef): number => {
  if (of !== 'drawers') return 1;
  return at[0] === 'stock' || (at[0] === 'back' && at[1] === 'joint') ? 3 : 2;
};

/** Whether the keys of a group are to be set together, as one without the others is nothing. */
export const isTogether = ({ required, at }: PlanKey): boolean =>
  required.length > 1 || at.at(-1) === 'heights';

const entryOf = ({ of, index }: CornerRef): Place => [of === 'drawer' ? 'drawers' : 'joints', index];

/** What is written for a key that the selected corner has: its own, else what is given for all. */
export const writtenFor = (plan: WrittenPlan, ref: CornerRef, { of, at }: KeyRef): unknown => {
  if (of === 'plan') return valueAt(plan, at);
  const depth = depthOf({ of, at });
  const [base, rest] = [at.slice(0, depth), at.slice(depth)];
  const own = valueAt(plan, [...entryOf(ref), ...base]);
  return valueAt(own ?? (of === 'drawers' ? valueAt(plan, base) : undefined), rest);
};

/** The key of a plan that is meant. */
export const keyOf = ({ of, at }: KeyRef): PlanKey | undefined =>
  of === 'drawer' || of === 'joint' ? keyAt([of === 'drawer' ? 'drawers' : 'joints', ANY, ...at]) : keyAt(at);

/**
 * Sets some keys of one group together, each a step of one edit; listed tails are scaled where that changes their boards. Of
 * what is given for all drawers, those of the scope are changed.
 */
export const setKeys = (
  now: Snapshot,
  corner: EditedCorner,
  settings: readonly Setting[],
  scope: Scope,
): Result<Snapshot> => {
  const [first] = settings;
  if (first === undefined) return accept(now);
  const [{ of, at }] = first;
  if (of === 'plan' && at[0] === 'units') return adjustAt(now, unitEdits(now, first[1]));
  const plan = writtenPlan(now.text);
  const depth = depthOf(first[0]);
  const base = at.slice(0, Math.min(depth, at.length));
  const key = { of, at: base };
  const old = writtenFor(plan, corner.ref, key);
  const made = settings.reduce<unknown>(
    (value, [{ at: each }, wanted]) => put(keyOf(key), value, each.slice(base.length), wanted),
    old,
  );
  const changes = changesOf(base, old, made);
  const edits =
    of === 'drawers'
      ? sharedEdits(now, corner, base, changes, scope)
      : changes.map((edit) => ({
          ...edit,
          at: of === 'plan' ? edit.at : [...entryOf(corner.ref), ...edit.at],
        }));
  const more =
    of === 'plan' && base[0] === 'cabinet' ? cabinetEdits(now, made) : insteadOf(key, corner.ref, made);
  // A list of groups of keys is written anew.
  const emptied = edits.filter(({ value, at }) => value === undefined && isRewritten(at, edits));
  const text = editPlan(now.text, emptied);
  const result = adjustAt({ ...now, text }, [...edits.filter((edit) => !emptied.includes(edit)), ...more]);
  return result.ok && result.value.text === now.text && old !== undefined && made === undefined
    ? refuse({
        at: base,
        says: say`this is given for all drawers`,
        remedy: say`choose all of them, and clear it there`,
      })
    : result;
};

/** The keys of a drawer's entry that go where another takes their place. */
const insteadOf = ({ of, at }: KeyRef, ref: CornerRef, made: unknown): Edit[] =>
  of !== 'drawer' || made === undefined
    ? []
    : (INSTEAD[at.join('.')] ?? []).map((key) => ({ at: [...entryOf(ref), key], value: undefined }));

const isRewritten = (at: Place, edits: readonly Edit[]): boolean =>
  edits.some((edit) => edit.at.length > at.length && at.every((step, i) => edit.at[i] === step));

/** The same changes of what drawers share: at the place of the scope, for each value by itself. */
const sharedEdits = (
  now: Snapshot,
  corner: EditedCorner,
  base: Place,
  changes: readonly Edit[],
  scope: Scope,
): Edit[] => {
  const { ref } = corner;
  const shown: EditedCorner =
    ref.of === 'drawer' && base[0] === 'joint' ? { ...corner, ref: { ...ref, end: 'front' } } : corner;
  const isBackToo = base[0] === 'joint';
  return changes.flatMap(({ at, value }) =>
    measureEdits(
      now,
      shown,
      { at, ends: isBackToo ? 'each' : base[1] === 'joint' ? 'back' : 'both', shared: true, get: () => 0 },
      value,
      scope,
    ),
  );
};

/** Leaves a measure to its default, or to what is given for all drawers. */
export const unsetMeasure = (
  now: Snapshot,
  corner: EditedCorner,
  { at, shared }: Quantity,
  scope: Scope,
): Result<Snapshot> => {
  const { ref } = corner;
  const isBack = ref.of === 'drawer' && ref.end === 'back' && at[0] === 'joint' && scope.ends === 'shown';
  const of: Owner = ref.of === 'joint' ? 'joint' : shared ? 'drawers' : 'drawer';
  return setKeys(now, corner, [[{ of, at: isBack ? ['back', ...at] : at }, undefined]], scope);
};

type Group = Readonly<Record<string | number, unknown>>;
const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A value with another inside it. One length in the place of a group of them stands for each. */
const put = (key: PlanKey | undefined, old: unknown, [step, ...rest]: Place, value: unknown): unknown => {
  if (step === undefined) return value;
  const group = groupOf(key, old);
  const { [step]: before, ...others } = group;
  const inner = put(key && keyAt([step], key), before, rest, value);
  const instead = value === undefined ? [] : (INSTEAD[[...(key?.at ?? []), step].join('.')] ?? []);
  const kept = Object.fromEntries(Object.entries(others).filter(([name]) => !instead.includes(name)));
  const made = inner === undefined ? kept : { ...kept, [step]: inner };
  return Object.keys(made).length === 0 ? undefined : made;
};

const groupOf = (key: PlanKey | undefined, old: unknown): Group => {
  if (isGroup(old)) return old;
  const isLength =
    (typeof old === 'number' || typeof old === 'string') && key?.value?.words.includes(old) !== true;
  if (!isLength || key === undefined) return {};
  const names = key.required.length > 0 ? key.required : key.keys.map(({ at }) => at.at(-1) ?? '');
  return Object.fromEntries(names.map((name) => [name, old]));
};

/** The edits that make one value of another. */
const changesOf = (at: Place, old: unknown, made: unknown): Edit[] => {
  if (isGroup(made)) {
    const before = isGroup(old) ? old : {};
    return [...new Set([...Object.keys(before), ...Object.keys(made)])].flatMap((key) =>
      changesOf([...at, key], before[key], made[key]),
    );
  }
  if (JSON.stringify(old) === JSON.stringify(made)) return [];
  if (!Array.isArray(made) || !holdsGroups(made)) return [{ at, value: made as PlanValue | undefined }];
  const items = made.flatMap((item, i) => changesOf([...at, i], undefined, item));
  return old === undefined ? items : [{ at, value: undefined }, ...items];
};

const holdsGroups = (list: readonly unknown[]): boolean =>
  list.some((item) => isGroup(item) || (Array.isArray(item) && holdsGroups(item)));
