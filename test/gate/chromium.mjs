/**
 * Finds a Chromium that starts: Playwright's own, the system's, a fresh download, or Debian's package.
 * Nothing is written to the tree. Run alone it prints the path.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';

/** The headless shell comes first: the same engine, a third quicker. */
const systemNames = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
];
const systemPaths = [
  ...systemNames.map((name) => `/usr/bin/${name}`),
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/**
 * A file may exist and yet not start, for want of a shared library or because it is a stub.
 * @param {string} path
 */
function starts(path) {
  if (!existsSync(path)) return false;
  if (process.platform === 'win32') return true;
  return spawnSync(path, ['--version'], { stdio: 'ignore', timeout: 20_000 }).status === 0;
}

/**
 * Playwright keeps the headless shell beside the browser, under the same number. Without windows it takes half of
 * the time that the browser takes.
 * @param {string} browser
 */
function shellBeside(browser) {
  const [, home, number] = /^(.*[\\/])chromium-(\d+)[\\/]/.exec(browser) ?? [];
  const folder = `${home}chromium_headless_shell-${number}`;
  if (!home || !existsSync(folder)) return undefined;
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => /headless[-_]shell(\.exe)?$/.test(path))
    .map((path) => join(folder, path))
    .find(starts);
}

function playwrightOwn() {
  const path = chromium.executablePath();
  return path ? (shellBeside(path) ?? [path].find(starts)) : undefined;
}

function system() {
  const onPath = (process.env.PATH ?? '')
    .split(delimiter)
    .flatMap((folder) => systemNames.map((name) => join(folder, name)));
  return [...systemPaths, ...onPath].find(starts);
}

/** Without this look first, an unreachable host costs minutes of retries. Behind a proxy it cannot tell. */
function hostAnswers() {
  if (process.env.HTTPS_PROXY || process.env.https_proxy) return true;
  const host = process.env.PLAYWRIGHT_DOWNLOAD_HOST ?? 'https://cdn.playwright.dev';
  const look = `fetch(${JSON.stringify(host)}, { method: 'HEAD', signal: AbortSignal.timeout(5000) })
    .then(() => process.exit(0), () => process.exit(1))`;
  return spawnSync(process.execPath, ['-e', look], { stdio: 'ignore', timeout: 10_000 }).status === 0;
}

function download() {
  if (!hostAnswers()) return undefined;
  const cli = createRequire(import.meta.url).resolve('@playwright/test/cli');
  spawnSync(process.execPath, [cli, 'install', 'chromium'], { stdio: 'ignore', timeout: 300_000 });
  return playwrightOwn();
}

function debianPackage() {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) {
    return undefined;
  }
  const options = {
    stdio: /** @type {const} */ ('ignore'),
    timeout: 300_000,
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  };
  spawnSync('apt-get', ['update'], options);
  for (const name of ['chromium-headless-shell', 'chromium']) {
    spawnSync('apt-get', ['install', '-y', '--no-install-recommends', name], options);
    const path = system();
    if (path) return path;
  }
  return undefined;
}

/**
 * The path of a Chromium that starts, or undefined when none can be had.
 * @returns {string | undefined}
 */
export function findChromium() {
  const given = process.env.ETCHWRIGHT_CHROMIUM;
  if (given) return given;
  return playwrightOwn() ?? system() ?? download() ?? debianPackage();
}

export const noChromium =
  'No Chromium found. Install one, or run "npx playwright install chromium", or set ETCHWRIGHT_CHROMIUM to its path.';

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const path = findChromium();
  console.log(path ?? noChromium);
  process.exitCode = path ? 0 : 1;
}
