/** IndexedDB with promises: only what the journal needs. */

/** The answer to one request. */
export function answered<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((settle, refuse) => {
    request.addEventListener('success', () => settle(request.result));
    request.addEventListener('error', () => refuse(request.error ?? new Error('The browser refused to read.')));
  });
}

/** Settles once everything in a transaction is on disk. */
export function settled(transaction: IDBTransaction): Promise<void> {
  return new Promise((settle, refuse) => {
    transaction.addEventListener('complete', () => settle());
    const failed = () => refuse(transaction.error ?? new Error('The browser refused to keep it.'));
    transaction.addEventListener('abort', failed);
    transaction.addEventListener('error', failed);
  });
}

/** Opens a database, laying out its stores when it is new or of an older version. */
export function opened(name: string, version: number, layOut: (database: IDBDatabase) => void): Promise<IDBDatabase> {
  const request = indexedDB.open(name, version);
  request.addEventListener('upgradeneeded', () => layOut(request.result));
  return answered(request);
}
