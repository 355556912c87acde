/**
 * Pictures of every prerendered page of the build, in each look a reader may have, for people to look at.
 * They go to the folder named on the command line, by default one in the system's temporary folder.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { findChromium, noChromium } from './chromium.mjs';
import { freePort, serve } from './serve.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = process.argv[2] ?? join(tmpdir(), 'etchwright-shots');
const looks = [
  { name: 'phone', width: 390, height: 844, colorScheme: /** @type {const} */ ('light') },
  { name: 'phone-dark', width: 390, height: 844, colorScheme: /** @type {const} */ ('dark') },
  { name: 'desk', width: 1280, height: 900, colorScheme: /** @type {const} */ ('light') },
];

const executablePath = findChromium();
if (!executablePath) throw new Error(noChromium);

const build = join(root, 'build');
const pages = readdirSync(build, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('index.html'))
  .map((file) =>
    relative(build, dirname(join(build, file)))
      .split(sep)
      .join('/'),
  );

const { address, stop } = await serve(root);
try {
  mkdirSync(folder, { recursive: true });
  const browser = await chromium.launch({ executablePath });
  for (const { name, width, height, colorScheme } of looks) {
    const page = await browser.newPage({ viewport: { width, height }, colorScheme });
    for (const path of pages) {
      await page.goto(`${address}${path ? `${path}/` : ''}`, { waitUntil: 'networkidle' });
      const file = join(folder, `${path.replaceAll('/', '-') || 'start'}.${name}.png`);
      await page.screenshot({ path: file, fullPage: true });
      console.log(file);
    }
    await page.close();
  }
  await browser.close();
} finally {
  stop();
}

// the screens of a job come from a walk through it
const walk = spawnSync(
  process.execPath,
  [join(root, 'node_modules/@playwright/test/cli.js'), 'test', '-c', 'test/e2e', 'job', '-g', 'pictures: '],
  {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ETCHWRIGHT_SHOTS: folder, ETCHWRIGHT_PORT: String(await freePort()) },
  },
);
process.exitCode = walk.status ?? 1;
