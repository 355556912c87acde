import { expect, test } from '@playwright/test';
import type { BrowserContext, Page } from '@playwright/test';
import type { JobRecord } from '../../src/lib/notebook/records.ts';

type Listed = Awaited<ReturnType<BrowserContext['storageState']>>;
/** With its databases, which the types leave out. */
interface State {
  readonly cookies: Listed['cookies'];
  readonly origins: readonly (Listed['origins'][number] & {
    readonly indexedDB: readonly { readonly stores: readonly { readonly name: string }[] }[];
  })[];
}
type Store = 'jobs' | 'baths';

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

/** Waits until the app has made its store: opened by hand before that, it would stay without its parts. */
export async function storeIsMade(page: Page): Promise<void> {
  await page.waitForFunction(async () =>
    (await indexedDB.databases()).some(({ name }) => name === 'etchwright'),
  );
}

/** An empty notebook as the app makes it. */
async function freshNotebook(page: Page): Promise<State> {
  const { baseURL } = test.info().project.use;
  const context = await page
    .context()
    .browser()
    ?.newContext({ baseURL: baseURL ?? '', serviceWorkers: 'block' });
  if (!context) throw new Error('the page has no browser');
  const fresh = await context.newPage();
  await fresh.goto('/');
  await storeIsMade(fresh);
  // listed while it is being made, the store may still be without its parts
  const look = async (): Promise<State> =>
    (await context.storageState({ indexedDB: true })) as unknown as State;
  let state = await look();
  await expect
    .poll(async () => {
      state = await look();
      return state.origins.flatMap(({ indexedDB: kept }) => kept.flatMap(({ stores }) => stores)).length;
    })
    .toBeGreaterThan(1);
  await context.close();
  return state;
}

/** Made by the first test of a worker that needs one: the shape of the store is the app's own business. */
let empty: Promise<State> | null = null;

/** Hands the notebook over before any page is open, so that none has to be opened for it. */
async function handOver(page: Page, store: Store, records: readonly object[]): Promise<void> {
  const { cookies, origins } = await (empty ??= freshNotebook(page));
  await page.context().setStorageState({
    cookies,
    origins: origins.map((origin) => ({
      ...origin,
      indexedDB: origin.indexedDB.map((db) => ({
        ...db,
        stores: db.stores.map((one) =>
          one.name === store ? { ...one, records: records.map((value) => ({ value })) } : one,
        ),
      })),
    })),
  });
}

/** Puts values into a store of the notebook past the app, once the app has made it. */
async function put(page: Page, store: Store, records: readonly object[]): Promise<void> {
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

const fill = (page: Page, store: Store, records: readonly object[]): Promise<void> =>
  page.url() === 'about:blank' ? handOver(page, store, records) : put(page, store, records);

/** Fills the notebook; with no page open yet, it holds nothing else. */
export const seed = (page: Page, jobs: readonly object[]): Promise<void> => fill(page, 'jobs', jobs);

/** One of an older shape is raised when it is read. */
export const seedBaths = (page: Page, baths: readonly object[]): Promise<void> => fill(page, 'baths', baths);

/** Opens a job of this notebook at a question of the state it stands at. */
export async function openJob(page: Page, job: JobRecord, question = ''): Promise<void> {
  await seed(page, [job]);
  await page.goto(`/job/?id=${job.id}${question === '' ? '' : `&at=${question}`}`);
}
