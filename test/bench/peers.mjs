/**
 * The same cell by general programs, where they are installed: SciPy and PyAMG on the same equal cells,
 * FreeFEM++ by linear tetrahedra. Only told, never judged: they are not needed to work on this.
 */
import { spawnSync } from 'node:child_process';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';

/** Debian's package does not tell the program where its own plugins are. */
const PLUGINS = '/usr/lib/freefem++';

/** @param {string} name */
const here = (name) => fileURLToPath(new URL(`peers/${name}`, import.meta.url));

/** @param {string} text */
const tell = (text) => {
  console.log(`beside: ${text}`);
};

/** @param {string} spacing mm */
function scipy(spacing) {
  const run = spawnSync('python3', [here('cell.py'), spacing], { encoding: 'utf8' });
  if (run.status !== 0) return tell(`python3 with scipy, ${spacing} mm: not installed`);
  for (const line of run.stdout.trim().split('\n')) {
    const [name, seconds, iterations, ohm] = line.split('\t');
    tell(seconds ? `${name}, ${spacing} mm: ${seconds} s, ${iterations} iterations, ${ohm} ohm` : line);
  }
}

function freefem() {
  const start = performance.now();
  const run = spawnSync('FreeFem++-nw', ['-v', '0', here('cell.edp')], {
    encoding: 'utf8',
    env: { ...process.env, FF_LOADPATH: PLUGINS },
  });
  const [, unknowns, ohm] = /RESULT (\S+) (\S+)/.exec(run.stdout ?? '') ?? [];
  if (!ohm) return tell('FreeFem++ with its plugins: not installed');
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  tell(`FreeFEM++, linear tetrahedra of 2 mm: ${seconds} s, ${unknowns} unknowns, ${ohm} ohm`);
}

export function peers() {
  scipy('2');
  scipy('1');
  freefem();
}
