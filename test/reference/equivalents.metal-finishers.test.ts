import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { chargeToDissolve, dissolvedMass, layerMass } from '../../src/lib/core/chemistry/faraday.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { thicknessRows } from '../fixtures/thickness-tables.ts';
import { check, near } from './check.ts';

const MIL = 25.4e-6;
const SQUARE_FOOT = 0.3048 ** 2;

for (const { metal, electrons, density, gramsPerAh, ahPerFt2 } of thicknessRows) {
  const perElectron = equivalentWeight({ [metal]: 100 }, { [metal]: electrons });
  check('equivalentsTable', `${metal}, n = ${electrons}: ${gramsPerAh} g/Ah (0.5 %)`, () => {
    near(dissolvedMass(si<'charge'>(3600), perElectron) * 1e3, gramsPerAh, 5e-3);
  });
  if (ahPerFt2 === null) continue;
  check('equivalentsTable', `${metal}, n = ${electrons}: ${ahPerFt2} Ah/ft² for 0.001 in (1.5 %)`, () => {
    const layer = layerMass(si<'length'>(MIL), density * 1e3, si<'area'>(SQUARE_FOOT));
    near(chargeToDissolve(layer, perElectron) / 3600, ahPerFt2, 1.5e-2);
  });
}
