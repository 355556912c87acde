import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { findChromium, noChromium } from '../gate/chromium.mjs';

// Found once: the workers read this file again and inherit the answer.
const chromium = findChromium();
if (!chromium) throw new Error(noChromium);
process.env.ETCHWRIGHT_CHROMIUM = chromium;

const root = fileURLToPath(new URL('../..', import.meta.url));
const port = process.env.ETCHWRIGHT_PORT ?? '4173';
const address = `http://localhost:${port}/`;

export default defineConfig({
  testDir: '.',
  testMatch: '**/*.e2e.ts',
  timeout: 90_000,
  // two cores carry two browsers and what they wait for
  expect: { timeout: 15_000 },
  outputDir: `${root}test-results`,
  workers: 2,
  fullyParallel: true,
  forbidOnly: true,
  reporter: 'list',
  use: {
    baseURL: address,
    // storing the whole app anew for each test is half of what a short one takes; where it matters, it is let
    serviceWorkers: 'block',
    trace: 'on-first-retry',
    launchOptions: {
      executablePath: chromium,
      args: [
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  webServer: {
    // Started directly, so that stopping it leaves nothing on the port.
    command: `node node_modules/vite/bin/vite.js preview --port ${port}`,
    // the bench serves a build of its own
    cwd: process.env.ETCHWRIGHT_APP ?? root,
    url: address,
    reuseExistingServer: false,
    timeout: 60_000,
  },
});
