import type { SaltFacts } from './salt-facts.ts';

/** Sodium chloride. Mass % and solubility are for the anhydrous solute. */
export const sodiumChloride = {
  id: 'NaCl',
  formula: 'NaCl',
  cas: '7647-14-5',
  anion: 'chloride',
  molarMass: { value: 58.44, unit: 'g/mol', uncertainty: { kind: 'relative', value: 1e-4 }, validFor: {}, evidence: 'computed', source: 'iupac2021', locator: 'sum of abridged atomic weights' },
  hydrates: [

  ],
  solubility: {
    xUnit: 'degC', unit: 'g/100g water',
    x: [0, 10, 20, 25, 30, 40], y: [35.65, 35.72, 35.89, 35.96, 36.09, 36.37],
    uncertainty: { kind: 'relative', value: 0.01 }, validFor: { temperature: [0, 40, 'degC'] },
    evidence: 'measured', source: 'crcSolubility', locator: 'row NaCl, mass % converted with 100 w/(1 − w)',
  },
  conductivity: {
    xUnit: 'mass %', unit: 'mS/cm',
    x: [0.5, 1, 2, 5, 10, 15, 20, 25], y: [8.2, 16, 30.2, 70.1, 126, 171, 204, 222],
    uncertainty: { kind: 'relative', value: 0.015 }, validFor: { massPercent: [0.5, 25, '%'], temperature: [20, 20, 'degC'] },
    evidence: 'measured', source: 'crcConductivity', locator: 'row NaCl, 20 °C',
  },
  conductivitySlope: {
    value: 2.13, unit: '%/K', uncertainty: { kind: 'standard', value: 0.1 },
    validFor: { temperature: [10, 40, 'degC'] }, evidence: 'measured', source: 'landoltSlopes',
    locator: 'mean of 3 rows (18 to 26 °C), referred to 20 °C',
  },
  density: {
    xUnit: 'mass %', unit: 'g/cm3',
    x: [0, 0.5, 1, 2, 5, 10, 12, 14, 15, 16, 18, 20, 22, 24, 25, 26], y: [0.9982, 1.0018, 1.0053, 1.0125, 1.034, 1.0707, 1.0857, 1.1008, 1.1085, 1.1162, 1.1319, 1.1478, 1.164, 1.1804, 1.1887, 1.1972],
    uncertainty: { kind: 'relative', value: 0.0005 }, validFor: { massPercent: [0, 26, '%'], temperature: [20, 20, 'degC'] },
    evidence: 'measured', source: 'crcConcentrative', locator: 'row NaCl, 20 °C; 0 % is water',
  },
  apparentDensity: {
    c: [-0.00324112223655149, 0.0636354335906616, 1.01371399467365, 0.0145951015210159, 3317.34854426537],
    uncertainty: { kind: 'standard', value: 0.0005 }, unit: 'g/cm3',
    validFor: { temperature: [0, 140, 'degC'], massPercent: [0, 26.6, '%'] },
    evidence: 'fitted', source: 'laliberte2009', locator: 'coefficients c0 to c4, NaCl',
  },
} as const satisfies SaltFacts;
