import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import type { Plan } from '../../src/lib/core/plan/plan.ts';

export interface Kept {
  readonly draft: Record<string, string>;
  readonly events: readonly { readonly type: string }[];
  readonly snapshot: { readonly context?: { readonly answers?: object } } | null;
  readonly planAtStart: Plan | null;
}

/** A job as this browser keeps it. */
export const kept = (page: Page, id: string): Promise<Kept> =>
  page.evaluate(
    (key) =>
      new Promise<Kept>((done, failed) => {
        const opening = indexedDB.open('etchwright');
        opening.onerror = () => {
          failed(new Error('the notebook does not open'));
        };
        opening.onsuccess = () => {
          const asking = opening.result.transaction('jobs').objectStore('jobs').get(key);
          asking.onsuccess = () => {
            opening.result.close();
            done(JSON.parse((asking.result as { text: string }).text) as Kept);
          };
        };
      }),
    id,
  );

export const idIn = (page: Page): string => new URL(page.url()).searchParams.get('id') ?? '';

/** Makes what the panel offers and reads the file; tells how long the making took. */
export async function makePapers(page: Page): Promise<{ bytes: Uint8Array; ms: number }> {
  const button = page.getByRole('button', { name: 'Make the papers' });
  await button.scrollIntoViewIfNeeded();
  const ms = await button.evaluate(async (element: HTMLButtonElement) => {
    const start = performance.now();
    element.click();
    while (!document.body.innerText.includes('The papers are ready.')) {
      await new Promise((next) => requestAnimationFrame(next));
      if (performance.now() - start > 20_000) throw new Error('no papers in 20 s');
    }
    return performance.now() - start;
  });
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Save the file' }).click(),
  ]);
  return { bytes: new Uint8Array(await readFile(await saved.path())), ms };
}
