import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { atHeading, finger, pendantBite, pendantJob, startJob, walk } from '../e2e/job-walk.ts';
import { openJob } from '../e2e/notebook-seed.ts';
import { jobAt } from '../fixtures/job-at.ts';
import { slowness } from './slowness.ts';

test.describe.configure({ timeout: 300_000 });

interface Interaction {
  readonly id: number;
  /** from the tap to the next frame, ms */
  readonly ms: number;
  readonly what: string;
}

/** Collects every tap and keystroke with its time to the next frame, ms. */
const watch = async (page: Page): Promise<void> => {
  await page.addInitScript(() => {
    const seen: Interaction[] = [];
    Object.assign(globalThis, { seenInteractions: seen });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as (PerformanceEntry & {
        interactionId: number;
        target: Element | null;
      })[]) {
        if (entry.interactionId === 0) continue;
        const what = `${entry.name} on ${(entry.target?.textContent ?? '').trim().slice(0, 40)}`;
        seen.push({ id: entry.interactionId, ms: entry.duration, what });
      }
    }).observe({ type: 'event', buffered: true, ...{ durationThreshold: 16 } });
  });
};

/**
 * Interaction to next paint: the slowest interaction, leaving out the very slowest one of every fifty, as the
 * metric is defined (web.dev/articles/inp).
 */
async function nextPaint(page: Page): Promise<{ slow: Interaction; count: number }> {
  const seen = await page.evaluate(
    () => (globalThis as unknown as { seenInteractions: Interaction[] }).seenInteractions,
  );
  const slowest = new Map<number, Interaction>();
  for (const one of seen) if (one.ms > (slowest.get(one.id)?.ms ?? -1)) slowest.set(one.id, one);
  const inOrder = [...slowest.values()].toSorted((a, b) => b.ms - a.ms);
  const slow = inOrder[Math.floor(inOrder.length / 50)];
  if (!slow) throw new Error('no interaction was seen');
  return { slow, count: inOrder.length };
}

/** A machine busy with something else may spoil one walk, hardly three. */
const WALKS = 3;

test('no tap of a whole job waits longer than 100 ms for the next paint on a phone four times slower', async ({
  browser,
}) => {
  const slow: Interaction[] = [];
  let slower = 1;
  for (let i = 0; i < WALKS && !slow.some(({ ms }) => ms <= 100 * slower); i += 1) {
    const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    await watch(page);
    await startJob(page);
    slower = await slowness(page);
    const throttle = await page.context().newCDPSession(page);
    await throttle.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    await walk(page, finger(page), [...pendantJob, ...pendantBite]);
    await atHeading(page, 'What was done');
    const seen = await nextPaint(page);
    expect(seen.count, 'interactions were seen').toBeGreaterThan(40);
    slow.push(seen.slow);
    await page.close();
  }
  const best = slow.toSorted((a, b) => a.ms - b.ms)[0];
  console.log(
    `next paint after ${String(best?.ms)} ms, ${slower.toFixed(1)} times slower: ${best?.what ?? ''}`,
  );
  expect((best?.ms ?? NaN) / slower, best?.what).toBeLessThanOrEqual(100);
});

test('a change is redrawn with 16 ms of work on a phone four times slower', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openJob(page, jobAt('pendant', 'metal'), 'metal.depth');
  await atHeading(page, 'How deep should it bite?');
  const slower = await slowness(page);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Performance.enable');
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  /** What the page itself has worked so far: script, style and layout, ms. */
  const worked = async (): Promise<number> => {
    const { metrics } = await devtools.send('Performance.getMetrics');
    return metrics
      .filter(({ name }) => ['ScriptDuration', 'LayoutDuration', 'RecalcStyleDuration'].includes(name))
      .reduce((sum, { value }) => sum + 1e3 * value, 0);
  };
  const caption = page.locator('figure figcaption').first();
  const costs: number[] = [];
  const changes = [
    ['To hold resin', '0.4 mm down'],
    ['To feel by finger', '0.15 mm down'],
    ['To hold enamel', '0.3 mm down'],
  ] as const;
  // a machine busy with something else may spoil some, hardly all
  for (const [label, says] of Array.from({ length: 24 }, () => changes).flat()) {
    if (costs.some((ms) => ms / slower <= 16)) break;
    const before = await worked();
    // changed from within, so that the hand of the test costs nothing
    await page.evaluate((name) => {
      [...document.querySelectorAll<HTMLInputElement>('input[type=radio]')]
        .find((one) => one.closest('label')?.textContent.includes(name))
        ?.click();
    }, label);
    await page.waitForTimeout(300);
    costs.push((await worked()) - before);
    await expect(caption).toContainText(says);
  }
  console.log(
    `redrawn with ${costs.map((ms) => ms.toFixed(0)).join(', ')} ms of work, ${slower.toFixed(1)} times slower`,
  );
  expect(Math.min(...costs) / slower).toBeLessThanOrEqual(16);
});
