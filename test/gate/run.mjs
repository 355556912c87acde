/**
 * The whole gate. Every stage runs even when an earlier one failed, and the last line is always
 * `N passed, N failed`. Format, lint, types and build count as one each; tests count themselves.
 */
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findChromium, noChromium } from './chromium.mjs';
import { tallyPlaywright, tallyVitest } from './tally.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const reports = mkdtempSync(join(tmpdir(), 'etchwright-gate-'));

/** @typedef {import('./tally.mjs').Tally} Tally */

/**
 * Runs a package's own script with this Node, without a shell, so that it is the same on every system.
 * @param {string} script path under node_modules
 * @param {string[]} args
 * @param {Record<string, string>} [env]
 */
function run(script, args, env = {}) {
  const result = spawnSync(process.execPath, [join(root, 'node_modules', script), ...args], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...env },
  });
  return result.status === 0;
}

/**
 * The same beside others: what it says is kept until it has ended.
 * @param {string} script
 * @param {string[]} args
 * @returns {Promise<boolean>}
 */
function runBeside(script, args) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [join(root, 'node_modules', script), ...args], { cwd: root });
    /** @type {Buffer[]} */
    const said = [];
    child.stdout.on('data', (/** @type {Buffer} */ part) => said.push(part));
    child.stderr.on('data', (/** @type {Buffer} */ part) => said.push(part));
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

/**
 * The usual port if it is free, else any free one, so that a running preview is no obstacle.
 * @param {number} wanted
 * @returns {Promise<number>}
 */
function freePort(wanted) {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', (error) => {
      if (wanted === 0) reject(error);
      else resolve(freePort(0));
    });
    server.listen(wanted, 'localhost', () => {
      const address = server.address();
      const port = address && typeof address === 'object' ? address.port : wanted;
      server.close(() => {
        resolve(port);
      });
    });
  });
}

const prettier = async () => one(await runBeside('prettier/bin/prettier.cjs', ['--check', '.']));

const lint = async () =>
  one(
    await runBeside('eslint/bin/eslint.js', ['-c', 'test/lint/eslint.config.js', '--max-warnings', '0', '.']),
  );

async function types() {
  const strict = ['--tsconfig', './tsconfig.json', '--fail-on-warnings'];
  const app = await runBeside('svelte-check/bin/svelte-check', strict);
  const core = await runBeside('typescript/bin/tsc', ['-p', 'src/lib/core']);
  return one(app && core);
}

function unit() {
  const file = join(reports, 'vitest.json');
  const ok = run('vitest/vitest.mjs', [
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
  ]);
  return tallyVitest(readReport(file), ok);
}

const build = () => one(run('vite/bin/vite.js', ['build', '--logLevel', 'warn']));

async function browser() {
  const chromium = findChromium();
  if (!chromium) {
    console.log(noChromium);
    return one(false);
  }
  console.log(`Chromium: ${chromium}`);
  const file = join(reports, 'playwright.json');
  const ok = run('@playwright/test/cli.js', ['test', '--reporter=list,json'], {
    ETCHWRIGHT_CHROMIUM: chromium,
    ETCHWRIGHT_PORT: String(await freePort(4173)),
    PLAYWRIGHT_JSON_OUTPUT_FILE: file,
  });
  return tallyPlaywright(readReport(file), ok);
}

/**
 * @param {string} name
 * @param {() => Tally | Promise<Tally>} work
 */
async function stage(name, work) {
  console.log(`\n=== ${name} ===`);
  const start = Date.now();
  const tally = await work();
  const seconds = ((Date.now() - start) / 1000).toFixed(1);
  console.log(`--- ${name}: ${tally.passed} passed, ${tally.failed} failed (${seconds} s)`);
  return { name, ...tally };
}

// The compiler, the linter and the tests read what this writes; it is not a stage of its own.
run('@sveltejs/kit/svelte-kit.js', ['sync']);

/** Format and types, one after the other, on the core that the linter leaves free. */
async function read() {
  return [await stage('format', prettier), await stage('types', types)];
}

const [linted, checked] = await Promise.all([stage('lint', lint), read()]);
const results = [...checked, linted];
results.push(await stage('tests', unit));
const built = await stage('build', build);
results.push(built);
if (built.failed === 0) results.push(await stage('browser', browser));
else console.log('\n=== browser === left out: there is no build to open');

rmSync(reports, { recursive: true, force: true });

const passed = results.reduce((sum, result) => sum + result.passed, 0);
const failed = results.reduce((sum, result) => sum + result.failed, 0);
const tests = results
  .filter(({ name }) => name === 'tests' || name === 'browser')
  .reduce((sum, result) => sum + result.passed + result.failed, 0);

const broken = results.filter((result) => result.failed > 0).map(({ name }) => name);
if (broken.length > 0) console.log(`\nFailed in: ${broken.join(', ')}`);
if (tests === 0) console.log('\nNo test ran.');
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 || tests === 0 ? 1 : 0;
