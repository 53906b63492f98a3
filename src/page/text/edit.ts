import type { Place } from '../../units/complaint.ts';
import type { Written } from './writeValue.ts';

/** A value that the page writes into a plan; a group of keys is written by an edit for each. */
export type PlanValue = number | string | boolean | readonly PlanValue[];

/** One change of a plan's text: the value at a place; undefined removes it. After the last item of a list comes a new one. */
export interface Edit {
  readonly at: Place;
  readonly value: PlanValue | undefined;
  /** Whether a word or number that is written means a value already; then it stays as it is written. Equal ones do. */
  readonly same?: (written: unknown, value: PlanValue) => boolean;
}

/** The changes of one place, or of those inside it. */
export type Change = Edit | Tree;
export type Tree = ReadonlyMap<string | number, Change>;
export const isTree = (change: Change): change is Tree => change instanceof Map;

export const treeOf = (edits: readonly Edit[]): Tree => {
  const root = new Map<string | number, Change>();
  for (const edit of edits) {
    let tree = root;
    for (const key of edit.at.slice(0, -1)) {
      const inner = tree.get(key) ?? new Map<string | number, Change>();
      tree.set(key, inner);
      tree = inner as Map<string | number, Change>;
    }
    const last = edit.at.at(-1);
    if (last !== undefined) tree.set(last, edit);
  }
  return root;
};

/** What is new at a place where nothing is written. */
export const whole = (change: Change): Written | undefined => {
  if (!isTree(change)) return change.value;
  const entries = [...change].flatMap(([key, inner]): [string | number, Written][] => {
    const value = whole(inner);
    return value === undefined ? [] : [[key, value]];
  });
  if (entries.length === 0) return undefined;
  return entries.every(([key]) => typeof key === 'number')
    ? entries.map(([, value]) => value)
    : Object.fromEntries(entries);
};
