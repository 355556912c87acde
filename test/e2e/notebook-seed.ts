import type { Page } from '@playwright/test';

/** A job as the notebook stores it, in a few words. */
export const storedJob = (id: string, title: string, change: object = {}): object => ({
  version: 1,
  id,
  createdAt: 1_764_000_000_000,
  updatedAt: 1_764_000_000_000,
  appVersion: '0.1.0',
  draft: { title, 'piece.metal': 'C11000' },
  at: '',
  procedureVersion: 1,
  snapshot: null,
  events: [],
  planAtStart: null,
  readings: [],
  result: null,
  ...change,
});

/** Puts values into a store of the notebook past the app, once the app has made it. */
async function put(
  page: Page,
  store: 'jobs' | 'baths' | 'photos',
  records: readonly object[],
): Promise<void> {
  await page.evaluate(
    ({ name, values }) =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open('etchwright');
        opening.onerror = () => {
          failed(new Error('the notebook does not open'));
        };
        opening.onsuccess = () => {
          const transaction = opening.result.transaction(name, 'readwrite');
          for (const value of values) transaction.objectStore(name).put(value);
          transaction.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
    { name: store, values: records },
  );
}

export const seed = (page: Page, jobs: readonly object[]): Promise<void> => put(page, 'jobs', jobs);

/** One of an older shape is raised when it is read. */
export const seedBaths = (page: Page, baths: readonly object[]): Promise<void> => put(page, 'baths', baths);
