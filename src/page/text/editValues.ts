import { type Change, type Edit, isTree, type PlanValue, type Tree, treeOf, whole } from './edit.ts';
import { withDrawersListed } from './listDrawers.ts';

/** A plan's values with some changes, as its text has them after `editPlan`. Those that are given stay as they are. */
export const editValues = (plan: unknown, edits: readonly Edit[]): unknown =>
  within(plan, treeOf(withDrawersListed(plan, edits))) ?? plan;

type Group = Readonly<Record<string | number, unknown>>;

const isGroup = (value: unknown): value is Group => typeof value === 'object' && value !== null;

/** Undefined where nothing is left in a group of keys. */
const within = (group: unknown, tree: Tree): unknown => {
  if (!isGroup(group)) return whole(tree) ?? group;
  const made = new Map(Object.entries(group));
  for (const [key, change] of tree) {
    const value = changed(group[key], change);
    if (value === undefined) made.delete(String(key));
    else made.set(String(key), value);
  }
  if (made.size === 0 && Object.keys(group).length > 0) return undefined;
  return Array.isArray(group) ? [...made.values()] : Object.fromEntries(made);
};

const changed = (written: unknown, change: Change): unknown => {
  if (isTree(change)) return within(written, change);
  const { value, same = Object.is } = change;
  return value === undefined ? undefined : kept(written, value, same);
};

/** What is written, where it means the value already; of a list as long as the one before each item that does. */
const kept = (written: unknown, value: PlanValue, same: NonNullable<Edit['same']>): unknown => {
  if (Array.isArray(written) && Array.isArray(value) && written.length === value.length)
    return written.every(isOwn)
      ? value.map((item: PlanValue, i): unknown => kept(written[i], item, same))
      : value;
  return !isGroup(written) && same(written, value) ? written : value;
};

/** Whether an item is a number, a word or a list of them. */
const isOwn = (item: unknown): boolean => (Array.isArray(item) ? item.every(isOwn) : !isGroup(item));
