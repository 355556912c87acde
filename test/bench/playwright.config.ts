import { defineConfig } from '@playwright/test';
import base from '../e2e/playwright.config.ts';

/** What is timed has the machine to itself; a quarter of a gigabyte of jobs leaves the disk busy, so they come last. */
export default defineConfig({
  ...base,
  testMatch: '**/*.bench.ts',
  workers: 1,
  fullyParallel: false,
  timeout: 120_000,
  projects: [
    { name: 'pages', testIgnore: '**/many-jobs.bench.ts' },
    { name: 'many', testMatch: '**/many-jobs.bench.ts', dependencies: ['pages'] },
  ],
});
