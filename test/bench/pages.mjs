/**
 * Opens the built app in a browser as a phone would, and times what a maker waits for: the first visit, and
 * opening again with the network off. Then asks Lighthouse, fetched by npx, for its two scores.
 */
import { spawnSync } from 'node:child_process';
import { chromium } from '@playwright/test';
import { findChromium, noChromium } from '../gate/chromium.mjs';
import { serve } from '../gate/serve.mjs';

const RUNS = 5;
/** a phone four times slower than this machine, on 9 Mbit/s with 100 ms to the host */
const SLOW = 4;
const network = { offline: false, latency: 100, downloadThroughput: 9e6 / 8, uploadThroughput: 9e6 / 8 };
const lighthouse = 'lighthouse@12.2.3';

/** @typedef {{ name: string, value: number, bound: number, unit: string, atLeast?: boolean }} Measured */

/** @param {number[]} times */
const median = (times) => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? Infinity;

/**
 * Largest contentful paint of a page that is opened now, s.
 * @param {import('@playwright/test').Page} page
 * @param {string} address
 */
async function paint(page, address) {
  await page.goto(address, { waitUntil: 'load' });
  return page.evaluate(
    () =>
      new Promise((resolve) => {
        new PerformanceObserver((list) => {
          resolve((list.getEntries().at(-1)?.startTime ?? Infinity) / 1000);
        }).observe({ type: 'largest-contentful-paint', buffered: true });
      }),
  );
}

/**
 * @param {import('@playwright/test').Browser} browser
 * @param {string} address
 * @returns {Promise<{ first: number, again: number }>}
 */
async function visit(browser, address) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  const control = await context.newCDPSession(page);
  await control.send('Network.enable');
  await control.send('Network.emulateNetworkConditions', network);
  await control.send('Emulation.setCPUThrottlingRate', { rate: SLOW });
  const first = await paint(page, address);
  await control.send('Network.emulateNetworkConditions', { ...network, latency: 0, downloadThroughput: -1 });
  await control.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.close();
  await context.setOffline(true);
  const later = await context.newPage();
  const slowed = await context.newCDPSession(later);
  await slowed.send('Emulation.setCPUThrottlingRate', { rate: SLOW });
  const again = await paint(later, address);
  await context.close();
  return { first, again };
}

/**
 * @param {string} executablePath
 * @param {string} address
 * @returns {Measured[]}
 */
function scores(executablePath, address) {
  const { status, stdout, stderr } = spawnSync(
    'npx',
    [
      '--yes',
      lighthouse,
      address,
      '--quiet',
      '--output=json',
      '--only-categories=accessibility,best-practices',
      '--chrome-flags=--headless --no-sandbox --disable-gpu',
    ],
    {
      encoding: 'utf8',
      maxBuffer: 1e8,
      env: { ...process.env, CHROME_PATH: executablePath },
      shell: process.platform === 'win32',
    },
  );
  if (status !== 0) throw new Error(`${lighthouse} did not run: ${stderr.slice(-400)}`);
  /** @type {{ categories: Record<string, { title: string, score: number }> }} */
  const report = JSON.parse(stdout);
  return Object.values(report.categories).map(({ title, score }) => ({
    name: title,
    value: 100 * score,
    bound: 100,
    unit: 'of 100',
    atLeast: true,
  }));
}

/**
 * @param {string} app root of a tree that has been built
 * @returns {Promise<Measured[]>}
 */
export async function pages(app) {
  const executablePath = findChromium();
  if (!executablePath) throw new Error(noChromium);
  const { address, stop } = await serve(app);
  try {
    const browser = await chromium.launch({ executablePath });
    const visits = [];
    for (let i = 0; i < RUNS; i += 1) visits.push(await visit(browser, address));
    await browser.close();
    return [
      { name: 'first visit', value: median(visits.map(({ first }) => first)), bound: 1.2, unit: 's' },
      { name: 'again, offline', value: median(visits.map(({ again }) => again)), bound: 0.8, unit: 's' },
      ...scores(executablePath, address),
    ];
  } finally {
    stop();
  }
}
