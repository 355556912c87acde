import type { Page } from '@playwright/test';

/** Puts many copies of a record into the notebook past the app: each of its own name, title and day. */
export const seedMany = (page: Page, record: object, count: number): Promise<void> =>
  page.evaluate(
    async ({ one, most }) => {
      const db = await new Promise<IDBDatabase>((done, failed) => {
        const opening = indexedDB.open('etchwright');
        opening.onerror = () => {
          failed(new Error('the notebook does not open'));
        };
        opening.onsuccess = () => {
          done(opening.result);
        };
      });
      const DAY = 86_400_000;
      for (let from = 0; from < most; from += 200) {
        await new Promise<void>((done) => {
          const transaction = db.transaction('jobs', 'readwrite', { durability: 'relaxed' });
          for (let n = from; n < Math.min(most, from + 200); n += 1) {
            const copy = structuredClone(one) as { draft: Record<string, string>; updatedAt: number };
            copy.updatedAt -= n * DAY;
            copy.draft = { ...copy.draft, title: `Piece ${String(n)}` };
            const id = `job-${String(n).padStart(5, '0')}`;
            // as the app keeps a job: its JSON as one text
            transaction.objectStore('jobs').put({ id, text: JSON.stringify({ ...copy, id }) });
          }
          transaction.oncomplete = () => {
            done();
          };
        });
      }
      db.close();
    },
    { one: record, most: count },
  );
