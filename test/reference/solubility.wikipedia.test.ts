import { readTable } from '../../src/lib/core/chemistry/curve.ts';
import { bathSalts } from '../../src/lib/core/facts/salts.ts';
import { saltTables } from '../fixtures/salt-tables.ts';
import { check, near } from './check.ts';

/**
 * A second source, 3 %. Left out: copper sulfate (its row counts crystals in an unsaid mass of water) and
 * sodium sulfate at 0 and 10 °C (taken from this very source, for want of another).
 */
const compared = { NaNO3: [0, 40], KNO3: [0, 40], NaCl: [0, 40], Na2SO4: [20, 40] } as const;

for (const id of ['NaNO3', 'KNO3', 'NaCl', 'Na2SO4'] as const) {
  const [coldest, warmest] = compared[id];
  for (const [celsius, grams] of saltTables[id].wikipedia) {
    if (celsius < coldest || celsius > warmest) continue;
    check('wikipediaSolubility', `row ${id}, ${celsius} °C: ${grams} g in 100 g water (3 %)`, () => {
      near(readTable(bathSalts[id].solubility, celsius), grams, 3e-2);
    });
  }
}
