import type { SaltFacts } from './salt-facts.ts';

/** Sodium nitrate. Mass % and solubility are for the anhydrous solute. */
export const sodiumNitrate = {
  id: 'NaNO3',
  formula: 'NaNO3',
  cas: '7631-99-4',
  anion: 'nitrate',
  molarMass: { value: 84.994, unit: 'g/mol', uncertainty: { kind: 'relative', value: 1e-4 }, validFor: {}, evidence: 'computed', source: 'iupac2021', locator: 'sum of abridged atomic weights' },
  hydrates: [

  ],
  solubility: {
    xUnit: 'degC', unit: 'g/100g water',
    x: [0, 10, 20, 25, 30, 40], y: [73.01, 79.86, 87.27, 91.2, 95.31, 104.08],
    uncertainty: { kind: 'relative', value: 0.01 }, validFor: { temperature: [0, 40, 'degC'] },
    evidence: 'measured', source: 'crcSolubility', locator: 'row NaNO3, mass % converted with 100 w/(1 − w)',
  },
  conductivity: {
    xUnit: 'mass %', unit: 'mS/cm',
    x: [0.5, 1, 2, 5, 10, 15, 20, 25, 30, 40], y: [5.4, 10.6, 20.4, 46.2, 82.6, 111, 134, 152, 165, 178],
    uncertainty: { kind: 'relative', value: 0.02 }, validFor: { massPercent: [0.5, 40, '%'], temperature: [20, 20, 'degC'] },
    evidence: 'measured', source: 'crcConductivity', locator: 'row NaNO3, 20 °C',
  },
  conductivitySlope: {
    value: 2.09, unit: '%/K', uncertainty: { kind: 'standard', value: 0.1 },
    validFor: { temperature: [10, 40, 'degC'] }, evidence: 'measured', source: 'landoltSlopes',
    locator: 'mean of 3 rows (18 to 26 °C), referred to 20 °C',
  },
  density: {
    xUnit: 'mass %', unit: 'g/cm3',
    x: [0, 0.5, 1, 2, 5, 10, 12, 14, 18, 20, 24, 30, 40], y: [0.9982, 1.0016, 1.005, 1.0117, 1.0322, 1.0674, 1.0819, 1.0967, 1.1272, 1.1429, 1.1752, 1.2256, 1.3175],
    uncertainty: { kind: 'relative', value: 0.0005 }, validFor: { massPercent: [0, 40, '%'], temperature: [20, 20, 'degC'] },
    evidence: 'measured', source: 'crcConcentrative', locator: 'row NaNO3, 20 °C; 0 % is water',
  },
  apparentDensity: {
    c: [22.3499264791804, 66.4478689005725, 0.989888301509443, 0.00947165097909636, 1971.5514625204],
    uncertainty: { kind: 'standard', value: 0.0014 }, unit: 'g/cm3',
    validFor: { temperature: [0, 100, 'degC'], massPercent: [0, 48.9, '%'] },
    evidence: 'fitted', source: 'laliberte2009', locator: 'coefficients c0 to c4, NaNO3',
  },
} as const satisfies SaltFacts;
