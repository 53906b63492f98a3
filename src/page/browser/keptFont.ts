import { answer, openStore } from './database.ts';

const STORE = 'fonts';
const KEY = 'chosen';

const fonts = async (mode: IDBTransactionMode): Promise<IDBObjectStore> =>
  (await openStore('halfpin font', STORE)).transaction(STORE, mode).objectStore(STORE);

/** The font file that was chosen on an earlier visit; undefined where there is none, or the browser keeps nothing. */
export const keptFont = async (): Promise<File | undefined> => {
  try {
    const found: unknown = await answer((await fonts('readonly')).get(KEY));
    return found instanceof File ? found : undefined;
  } catch {
    return undefined;
  }
};

/** Keeps a font file for the next visit, or forgets the one that is kept; where the browser keeps nothing, it does nothing. */
export const keepFont = async (font: File | undefined): Promise<void> => {
  try {
    const store = await fonts('readwrite');
    if (font === undefined) await answer(store.delete(KEY));
    else await answer(store.put(font, KEY));
  } catch {
    // Until the page is left, it is used all the same.
  }
};
