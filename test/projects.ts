import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import type { TestProjectConfiguration } from 'vitest/config';

const rooms = ['unit', 'reference', 'verification', 'property', 'procedure', 'architecture'];

/** A suite that swaps a module or the browser's storage, or counts what other suites register. */
const swaps = /\bvi\.(mock|doMock|resetModules)\(|'fake-indexeddb|\bonlyCount\b/;

const apart = readdirSync('test', { recursive: true, encoding: 'utf8' })
  .map((path) => join('test', path).split(sep).join('/'))
  .filter((path) => path.endsWith('.test.ts') && swaps.test(readFileSync(path, 'utf8')));

/**
 * Loading the app's modules anew for each suite takes as long as half of the tests, so suites share them. The few
 * that must not are found by what they call, and get modules of their own.
 */
export const projects: TestProjectConfiguration[] = [
  {
    extends: true,
    test: {
      name: 'shared',
      isolate: false,
      include: [`test/{${rooms.join()}}/**/*.test.ts`],
      exclude: apart,
    },
  },
  { extends: true, test: { name: 'apart', include: apart } },
];
