import { readTable } from '../../src/lib/core/chemistry/curve.ts';
import { undercutOf } from '../../src/lib/core/cell/undercut.ts';
import type { Regime } from '../../src/lib/core/cell/undercut.ts';
import { undercutTable } from '../../src/lib/core/facts/undercut.ts';
import { check, near } from './check.ts';

// Boundary-element runs of a masked slot, printed to two digits.

for (const regime of Object.keys(undercutTable) as Regime[])
  for (const [mask, table] of undercutTable[regime]) {
    check('undercutRuns', `${regime}, resist ${String(mask)} of the opening: every printed value`, () => {
      table.x.forEach((depth, n) => {
        near(undercutOf(regime, depth, 1, mask), table.y[n] ?? NaN, 1e-9);
        // whatever the unit
        near(undercutOf(regime, 0.3 * depth, 0.3, 0.3 * mask), table.y[n] ?? NaN, 1e-6);
      });
    });
    check('undercutRuns', `${regime}, resist ${String(mask)}: each value from its neighbours (10 %)`, () => {
      for (let n = 1; n + 1 < table.x.length; n += 1) {
        const without = <T>(all: readonly T[]) => all.filter((_, m) => m !== n);
        const less = { ...table, x: without(table.x), y: without<number>(table.y) };
        near(readTable(less, table.x[n] ?? NaN, 'log'), table.y[n] ?? NaN, 0.1);
      }
    });
  }

for (const [n, depth] of undercutTable.ohmic[0][1].x.entries())
  check(
    'undercutRuns',
    `ohmic, depth ${String(depth)}: each thickness of resist from its neighbours (10 %)`,
    () => {
      const rows = undercutTable.ohmic;
      for (let m = 1; m + 1 < rows.length; m += 1) {
        const [before, own, after] = [rows[m - 1], rows[m], rows[m + 1]];
        if (!before || !own || !after) throw new Error('no row');
        const part = Math.log(own[0] / before[0]) / Math.log(after[0] / before[0]);
        const between = (1 - part) * (before[1].y[n] ?? NaN) + part * (after[1].y[n] ?? NaN);
        near(between, own[1].y[n] ?? NaN, 0.1);
      }
    },
  );
