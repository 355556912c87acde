/**
 * The whole gate. Every stage runs even when an earlier one failed, and the last line is always
 * `N passed, N failed`. Format, lint, types and build count as one each; tests count themselves.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findChromium, noChromium } from './chromium.mjs';
import { freePort } from './serve.mjs';
import { sourcesDigest } from './sources-digest.mjs';
import { tallyPlaywright, tallyVitest } from './tally.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const reports = mkdtempSync(join(tmpdir(), 'etchwright-gate-'));
const caches = 'node_modules/.cache';

/** @typedef {import('./tally.mjs').Tally} Tally */
/** @typedef {Tally & { name: string, seconds: number }} Stage */

/**
 * Runs a package's own script with this Node, without a shell, so that it is the same on every system.
 * @param {string} script path under node_modules
 * @param {string[]} args
 * @param {{ beside?: boolean, env?: Record<string, string> }} [how] beside others: what it says is kept until it ends
 * @returns {Promise<boolean>}
 */
function run(script, args, { beside = false, env = {} } = {}) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [join(root, 'node_modules', script), ...args], {
      cwd: root,
      stdio: beside ? 'pipe' : 'inherit',
      env: { ...process.env, ...env },
    });
    /** @type {Buffer[]} */
    const said = [];
    child.stdout?.on('data', (/** @type {Buffer} */ part) => said.push(part));
    child.stderr?.on('data', (/** @type {Buffer} */ part) => said.push(part));
    child.on('error', () => {
      resolve(false);
    });
    child.on('close', (code) => {
      process.stdout.write(Buffer.concat(said));
      resolve(code === 0);
    });
  });
}

/**
 * @param {boolean} ok
 * @returns {Tally}
 */
const one = (ok) => (ok ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 });

/**
 * @param {string} file
 * @returns {unknown}
 */
function readReport(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}

async function format() {
  const cache = ['--cache', '--cache-strategy', 'content', '--cache-location', `${caches}/prettier-gate`];
  return one(await run('prettier/bin/prettier.cjs', ['--check', ...cache, '.'], { beside: true }));
}

async function lint() {
  // what a rule finds in a file may hang on the types of another: the cache is good for exactly these sources
  const cache = join(caches, 'eslint/gate', sourcesDigest(root));
  if (!existsSync(join(root, cache)))
    rmSync(join(root, caches, 'eslint/gate'), { recursive: true, force: true });
  const args = ['-c', 'test/lint/eslint.config.js', '--max-warnings', '0', '.'];
  const cached = ['--cache', '--cache-strategy', 'content', '--cache-location', cache];
  return one(await run('eslint/bin/eslint.js', [...args, ...cached], { beside: true }));
}

async function types() {
  const strict = ['--tsconfig', './tsconfig.json', '--fail-on-warnings'];
  const app = await run('svelte-check/bin/svelte-check', strict, { beside: true });
  const core = await run('typescript/bin/tsc', ['-p', 'src/lib/core'], { beside: true });
  return one(app && core);
}

const build = async () =>
  one(await run('vite/bin/vite.js', ['build', '--logLevel', 'warn'], { beside: true }));

async function tests() {
  const file = join(reports, 'vitest.json');
  const args = ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  const ok = await run('vitest/vitest.mjs', args);
  return tallyVitest(readReport(file), ok);
}

async function browser() {
  const chromium = findChromium();
  if (!chromium) {
    console.log(noChromium);
    return one(false);
  }
  console.log(`Chromium: ${chromium}`);
  const file = join(reports, 'playwright.json');
  const ok = await run('@playwright/test/cli.js', ['test', '-c', 'test/e2e', '--reporter=list,json'], {
    env: {
      ETCHWRIGHT_CHROMIUM: chromium,
      ETCHWRIGHT_PORT: String(await freePort(4173)),
      PLAYWRIGHT_JSON_OUTPUT_FILE: file,
    },
  });
  return tallyPlaywright(readReport(file), ok);
}

/**
 * @param {string} name
 * @param {() => Promise<Tally>} work
 * @returns {Promise<Stage>}
 */
async function stage(name, work) {
  console.log(`\n=== ${name} ===`);
  const start = Date.now();
  const tally = await work();
  const seconds = (Date.now() - start) / 1000;
  console.log(`--- ${name}: ${tally.passed} passed, ${tally.failed} failed (${seconds.toFixed(1)} s)`);
  return { name, seconds, ...tally };
}

/**
 * @param {...readonly [string, () => Promise<Tally>]} stages
 * @returns {Promise<Stage[]>}
 */
async function oneAfterAnother(...stages) {
  /** @type {Stage[]} */
  const done = [];
  for (const [name, work] of stages) done.push(await stage(name, work));
  return done;
}

const began = Date.now();
// The compiler, the linter and the tests read what this writes; it is not a stage of its own.
await run('@sveltejs/kit/svelte-kit.js', ['sync']);

// Two cores: linting takes as long as these three together. Tests and browser take both cores by themselves.
const results = (
  await Promise.all([
    oneAfterAnother(['lint', lint]),
    oneAfterAnother(['build', build], ['format', format], ['types', types]),
  ])
).flat();
results.push(await stage('tests', tests));
if (results.some(({ name, failed }) => name === 'build' && failed === 0))
  results.push(await stage('browser', browser));
else console.log('\n=== browser === left out: there is no build to open');

rmSync(reports, { recursive: true, force: true });

const sum = (/** @type {(stage: Stage) => number} */ of) => results.reduce((all, each) => all + of(each), 0);
const [passed, failed] = [sum((each) => each.passed), sum((each) => each.failed)];
const ran = sum((each) => (['tests', 'browser'].includes(each.name) ? each.passed + each.failed : 0));

/** @param {readonly (string | number)[]} cells */
const row = ([name = '', ...numbers]) =>
  console.log(`${name}`.padEnd(10) + numbers.map((each) => `${each}`.padStart(10)).join(''));
console.log('');
row(['stage', 'seconds', 'passed', 'failed']);
for (const each of results) row([each.name, each.seconds.toFixed(1), each.passed, each.failed]);
row(['all', ((Date.now() - began) / 1000).toFixed(1), passed, failed]);
if (ran === 0) console.log('No test ran.');
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 || ran === 0 ? 1 : 0;
