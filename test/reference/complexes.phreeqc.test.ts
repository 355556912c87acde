import { expect } from 'vitest';
import { carryAway, neededAtMetal } from '../../src/lib/core/cell/carry-away.ts';
import { check, near } from './check.ts';

/** Total dissolved metal over its chloride at 1 mol/L Cl-, mol/L, ideal: worked out from each database. */
check('phreeqc', 'silver over AgCl at 1 mol/L chloride: 6.8e-5 mol/L by wateq4f (15 %)', () => {
  near((carryAway('silver', 'chloride')?.share ?? NaN) * neededAtMetal(), 6.8e-5, 0.15);
});
// WATEQ4F 0.14, LLNL 0.086, MINTEQ v4 0.059, Thermoddem 0.017: the databases differ by ten
check('phreeqc', 'copper(I) over CuCl at 1 mol/L chloride: between 0.017 and 0.14 mol/L', () => {
  const found = (carryAway('copper', 'chloride')?.share ?? NaN) * neededAtMetal();
  expect(found).toBeGreaterThanOrEqual(0.017);
  expect(found).toBeLessThanOrEqual(0.14);
});
