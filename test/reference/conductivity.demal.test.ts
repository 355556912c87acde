import { readTable } from '../../src/lib/core/chemistry/curve.ts';
import { potassiumChloride } from '../../src/lib/core/facts/salts/potassium-chloride.ts';
import { check, near } from './check.ts';

// OIML R 56 compositions, g of KCl in a kg of solution, and conductivities at 20 °C, mS/cm
for (const [name, gramsPerKilogram, millisiemens] of [
  ['0.1 D', 7.41913, 11.644],
  ['1 D', 71.1352, 101.7],
] as const) {
  check('demal', `${name} at 20 °C: ${millisiemens} mS/cm (4 %)`, () => {
    near(readTable(potassiumChloride.conductivity, gramsPerKilogram / 10, 'log'), millisiemens, 4e-2);
  });
}

const slope = potassiumChloride.conductivitySlope.value / 100;
for (const [celsius, millisiemens] of [
  [15, 92.12],
  [18, 97.8],
  [25, 111.31],
  [35, 131.1],
] as const) {
  check('demal', `1 D at ${celsius} °C: ${millisiemens} mS/cm (5 %)`, () => {
    const at20 = readTable(potassiumChloride.conductivity, 7.11352, 'log');
    near(at20 * (1 + slope * (celsius - 20)), millisiemens, 5e-2);
  });
}
