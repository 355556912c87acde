import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import {
  chargeToDissolve,
  dissolvedMass,
  layerMass,
  meanDepth,
} from '../../src/lib/core/chemistry/faraday.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

// Worked out independently of this code, 100 % efficiency. Tolerance: the last digit given.

for (const [metal, electrons, grams] of [
  ['Ag', 1, 4.0247],
  ['Cu', 2, 1.1855],
  ['Cu', 1, 2.371],
] as const) {
  check('anchors', `1 A·h removes ${grams} g of ${metal} at n = ${electrons}`, () => {
    const perElectron = equivalentWeight({ [metal]: 100 }, { [metal]: electrons });
    near(dissolvedMass(si<'charge'>(3600), perElectron) * 1e3, grams, 3e-5);
  });
}

const brass = { Cu: 70, Zn: 30 };
const anchors = [
  ['silver', { Ag: 100 }, { Ag: 1 }, 10.49, 107.87, 6.395, 93.8, 26.06],
  ['sterling, Cu(II)', { Ag: 92.5, Cu: 7.5 }, { Ag: 1, Cu: 2 }, 10.36, 91.44, 5.489, 109.3, 30.36],
  ['copper, n = 2', { Cu: 100 }, { Cu: 2 }, 8.96, 31.77, 2.205, 272.1, 75.58],
  ['copper, n = 1', { Cu: 100 }, { Cu: 1 }, 8.96, 63.55, 4.41, 136.0, 37.79],
  ['brass, Cu(II)', brass, { Cu: 2, Zn: 2 }, 8.53, 32.04, 2.336, 256.9, 71.35],
  ['brass, Cu(I)', brass, { Cu: 1, Zn: 2 }, 8.53, 49.52, 3.61, 166.2, 46.16],
  ['nickel', { Ni: 100 }, { Ni: 2 }, 8.91, 29.35, 2.048, 292.9, 81.37],
  ['zinc', { Zn: 100 }, { Zn: 2 }, 7.14, 32.69, 2.847, 210.7, 58.54],
  ['tin', { Sn: 100 }, { Sn: 2 }, 7.29, 59.36, 5.063, 118.5, 32.92],
  ['iron', { Fe: 100 }, { Fe: 2 }, 7.87, 27.92, 2.206, 271.9, 75.54],
  ['304', { Cr: 19, Ni: 9.25, Fe: 71.75 }, { Cr: 3, Ni: 2, Fe: 2 }, 7.94, 25.12, 1.967, 305.0, 84.71],
  ['aluminium', { Al: 100 }, { Al: 3 }, 2.7, 8.994, 2.071, 289.7, 80.46],
] as const;

for (const [name, massPercent, valences, density, ew, perMinute, coulombs, milliampHours] of anchors) {
  const perElectron = equivalentWeight(massPercent, valences);
  const oneCm2 = si<'area'>(1e-4);
  const layer = chargeToDissolve(layerMass(si<'length'>(1e-4), density * 1e3, oneCm2), perElectron);
  check('anchors', `${name}: equivalent weight ${ew} (0.05 %)`, () => {
    near(perElectron, ew, 5e-4);
  });
  check('anchors', `${name}: ${perMinute} µm/min at 0.1 A/cm² (0.1 %)`, () => {
    const mass = dissolvedMass(si<'charge'>(0.1 * 60), perElectron);
    near(meanDepth(mass, density * 1e3, oneCm2) * 1e6, perMinute, 1e-3);
  });
  check('anchors', `${name}: ${coulombs} C/cm² for 100 µm (0.1 %)`, () => {
    near(layer, coulombs, 1e-3);
  });
  check('anchors', `${name}: ${milliampHours} mA·h/cm² for 100 µm (0.1 %)`, () => {
    near(layer / 3.6, milliampHours, 1e-3);
  });
}

for (const [name, massPercent, valences, ew] of [
  ['C26000, Cu(I)', brass, { Cu: 1, Zn: 2 }, 49.52],
  ['C26000, Cu(II)', brass, { Cu: 2, Zn: 2 }, 32.04],
  ['316, Mo(III)', { Cr: 18, Ni: 10, Mo: 3, Mn: 2, Fe: 67 }, { Cr: 3, Ni: 2, Mo: 3, Mn: 2, Fe: 2 }, 25.35],
  ['316, Mo(IV)', { Cr: 18, Ni: 10, Mo: 3, Mn: 2, Fe: 67 }, { Cr: 3, Ni: 2, Mo: 4, Mn: 2, Fe: 2 }, 25.15],
  ['316, Mo(VI)', { Cr: 18, Ni: 10, Mo: 3, Mn: 2, Fe: 67 }, { Cr: 3, Ni: 2, Mo: 6, Mn: 2, Fe: 2 }, 24.76],
  ['sterling, Cu(I)', { Ag: 92.5, Cu: 7.5 }, { Ag: 1, Cu: 1 }, 102.51],
  ['nickel silver', { Cu: 65, Ni: 18, Zn: 17 }, { Cu: 2, Ni: 2, Zn: 2 }, 31.45],
] as const) {
  check('anchors', `${name} as an alloy: ${ew} (0.05 %)`, () => {
    near(equivalentWeight(massPercent, valences), ew, 5e-4);
  });
}
