/** A store of the browser's, in a database of its own; rejects where the browser keeps nothing. */
export const openStore = (
  name: string,
  store: string,
  options?: IDBObjectStoreParameters,
): Promise<IDBDatabase> => {
  const opening = indexedDB.open(name, 1);
  opening.addEventListener('upgradeneeded', () => opening.result.createObjectStore(store, options));
  return answer(opening);
};

export const answer = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.addEventListener('success', () => resolve(request.result));
    request.addEventListener('error', () => reject(request.error ?? new Error('refused')));
  });
