/** A plan that another took the place of. */
export interface KeptPlan {
  readonly name: string;
  readonly text: string;
  readonly at: Date;
}

/** The most that are kept; the oldest go first. */
const MOST = 30;
const STORE = 'plans';

/** The last plan that is being kept. */
let keeping: Promise<boolean> = Promise.resolve(true);

/** Keeps a plan in this browser, unless it is the last that was kept; false where the browser keeps nothing. */
export const keepPlan = (text: string, name: string): Promise<boolean> => {
  keeping = keeping.then(() => addPlan(text, name));
  return keeping;
};

const addPlan = async (text: string, name: string): Promise<boolean> => {
  try {
    const plans = (await database()).transaction(STORE, 'readwrite').objectStore(STORE);
    const last = await answer(plans.openCursor(null, 'prev'));
    if (last !== null && (last.value as KeptPlan).text === text) return true;
    await answer(plans.add({ name, text, at: new Date() } satisfies KeptPlan));
    const keys = await answer(plans.getAllKeys());
    for (const key of keys.slice(0, -MOST)) await answer(plans.delete(key));
    return true;
  } catch {
    return false;
  }
};

/** The plans that are kept, the latest first, when all of them are; undefined where the browser keeps nothing. */
export const keptPlans = async (): Promise<readonly KeptPlan[] | undefined> => {
  await keeping;
  try {
    const plans = (await database()).transaction(STORE).objectStore(STORE);
    return ((await answer(plans.getAll())) as KeptPlan[]).toReversed();
  } catch {
    return undefined;
  }
};

const database = (): Promise<IDBDatabase> => {
  const opening = indexedDB.open('halfpin', 1);
  opening.addEventListener('upgradeneeded', () =>
    opening.result.createObjectStore(STORE, { autoIncrement: true }),
  );
  return answer(opening);
};

const answer = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.addEventListener('success', () => resolve(request.result));
    request.addEventListener('error', () => reject(request.error ?? new Error('refused')));
  });
