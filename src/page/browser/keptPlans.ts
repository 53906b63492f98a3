import { answer, openStore } from './database.ts';
import { type KeptPlan, type PlanText, storedPending, storePending } from './storage.ts';

/** The most that are kept; the oldest go first. */
const MOST = 30;
const STORE = 'plans';

/** The last plan that is being kept. */
let keeping: Promise<unknown> = Promise.resolve();

/** Keeps a plan in this browser, unless it is the last that was kept; false where the browser keeps nothing. */
export const keepPlan = (plan: Omit<KeptPlan, 'at'>): Promise<boolean> => {
  const kept: KeptPlan = { ...plan, at: new Date() };
  // The page may be left before the database has it.
  const isPending = storePending([...storedPending(), kept].slice(-MOST));
  return keepLater(kept).then((isKept) => isKept || isPending);
};

/** Keeps what the page was left with before it was kept. */
export const keepPending = (): void => storedPending().forEach((plan) => void keepLater(plan));

const keepLater = (plan: KeptPlan): Promise<boolean> => {
  const isKept = keeping.then(() => addPlan(plan));
  keeping = isKept;
  return isKept;
};

const addPlan = async (plan: KeptPlan): Promise<boolean> => {
  const isAlike = (other: PlanText | undefined): boolean =>
    other?.text === plan.text && other.draft === plan.draft;
  const isSame = (other: KeptPlan): boolean => isAlike(other) && other.at.getTime() === plan.at.getTime();
  try {
    const transaction = (await database()).transaction(STORE, 'readwrite');
    // A full disk is told of at the end.
    const isWritten = new Promise<boolean>((resolve) => {
      transaction.addEventListener('complete', () => resolve(true));
      transaction.addEventListener('abort', () => resolve(false));
    });
    const plans = transaction.objectStore(STORE);
    const before: KeptPlan[] = await answer(plans.getAll());
    if (!isAlike(before.at(-1)) && !before.some(isSame)) plans.add(plan);
    const keys = await answer(plans.getAllKeys());
    for (const key of keys.slice(0, -MOST)) plans.delete(key);
    if (!(await isWritten)) return false;
    storePending(storedPending().filter((other) => !isSame(other)));
    return true;
  } catch {
    return false;
  }
};

/** The plans that are kept, the latest first, when all of them are; undefined where the browser keeps nothing. */
export const keptPlans = async (): Promise<readonly KeptPlan[] | undefined> => {
  await keeping;
  const pending = storedPending().toReversed();
  try {
    const plans = (await database()).transaction(STORE).objectStore(STORE);
    const kept: KeptPlan[] = await answer(plans.getAll());
    return [...pending, ...kept.toReversed()];
  } catch {
    return pending.length > 0 ? pending : undefined;
  }
};

const database = (): Promise<IDBDatabase> => openStore('halfpin', STORE, { autoIncrement: true });
