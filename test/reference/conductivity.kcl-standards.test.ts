import { readTable } from '../../src/lib/core/chemistry/curve.ts';
import { potassiumChloride } from '../../src/lib/core/facts/salts/potassium-chloride.ts';
import { conductivityLine } from '../../src/lib/core/facts/salts/salt-facts.ts';
import { check, near } from './check.ts';

/** Molality → mass %. */
const percent = (molality: number): number => {
  const grams = molality * potassiumChloride.molarMass.value;
  return (100 * grams) / (1000 + grams);
};

// 0.1 and 1 mol/kg at 20 °C, mS/cm; the table begins at 0.5 %
for (const [molality, millisiemens] of [
  [0.1, 11.6159],
  [1, 99.17],
] as const) {
  check('kclStandards', `${molality} mol/kg at 20 °C: ${millisiemens} mS/cm (4 %)`, () => {
    near(readTable(potassiumChloride.conductivity, percent(molality), 'log'), millisiemens, 4e-2);
  });
}

/** µS/cm by °C. */
const standards = {
  '0.01': { 10: 1013.95, 15: 1141.45, 20: 1273.03, 25: 1408.23, 30: 1546.63, 35: 1687.79, 40: 1831.27 },
  '0.1': { 10: 9291.72, 15: 10437.1, 20: 11615.9, 25: 12824.6, 30: 14059.2, 35: 15316, 40: 16591 },
  '1': { 10: 80844, 15: 89900, 20: 99170, 25: 108620, 30: 118240, 35: 127970, 40: 137810 },
} as const;

for (const [molality, row] of Object.entries(standards)) {
  const slope = (row[25] - row[20]) / row[20] / 5;
  for (const [celsius, micro] of Object.entries(row)) {
    check(
      'kclStandards',
      `${molality} mol/kg at ${celsius} °C on a straight line (${conductivityLine.value} %)`,
      () => {
        near(row[20] * (1 + slope * (Number(celsius) - 20)), micro, conductivityLine.value / 100);
      },
    );
  }
}
