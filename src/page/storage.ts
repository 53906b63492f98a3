import type { Work } from './snapshot.ts';

const KEY = 'halfpin';

/** The work kept from an earlier visit; undefined where there is none, or the browser keeps nothing. */
export const kept = (): Work | undefined => {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null');
    return isWork(found) ? found : undefined;
  } catch {
    return undefined;
  }
};

const isWork = (value: unknown): value is Work => {
  if (typeof value !== 'object' || value === null || !('text' in value) || !('locks' in value)) return false;
  const { text, locks } = value;
  return (
    typeof text === 'string' &&
    typeof locks === 'object' &&
    locks !== null &&
    Object.values(locks).every((list) => Array.isArray(list) && list.every(Number.isInteger))
  );
};

/** Keeps the work for the next visit; false where the browser does not, because it is full or is told not to. */
export const keep = (work: Work): boolean => {
  try {
    localStorage.setItem(KEY, JSON.stringify(work));
    return true;
  } catch {
    return false;
  }
};
