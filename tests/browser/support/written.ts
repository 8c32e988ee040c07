import type { Page } from 'playwright-core';

/** Waits until what the app has begun to write is on the disk: a change that wants every store comes after all of it. */
export const written = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('tapetrue');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const last = db.transaction([...db.objectStoreNames], 'readwrite');
          last.onabort = () => reject(last.error);
          last.oncomplete = () => {
            db.close();
            resolve();
          };
        };
      }),
  );
