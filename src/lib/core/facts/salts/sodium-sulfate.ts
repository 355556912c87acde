import type { SaltFacts } from './salt-facts.ts';

/** Sodium sulfate. Mass % and solubility are for the anhydrous solute. */
export const sodiumSulfate = {
  id: 'Na2SO4',
  formula: 'Na2SO4',
  cas: '7757-82-6',
  anion: 'sulfate',
  molarMass: { value: 142.036, unit: 'g/mol', uncertainty: { kind: 'relative', value: 1e-4 }, validFor: {}, evidence: 'computed', source: 'iupac2021', locator: 'sum of abridged atomic weights' },
  hydrates: [
  { id: 'Na2SO4.10H2O', waters: 10, molarMass: { value: 322.186, unit: 'g/mol', uncertainty: { kind: 'relative', value: 1e-4 }, validFor: {}, evidence: 'computed', source: 'iupac2021', locator: 'sum of abridged atomic weights' } },
  ],
  solubility: {
    xUnit: 'degC', unit: 'g/100g water',
    x: [0, 10, 20, 25, 30, 40], y: [4.9, 9.1, 19.23, 28.11, 41.28, 47.82],
    uncertainty: { kind: 'relative', value: 0.01 }, validFor: { temperature: [0, 40, 'degC'] },
    evidence: 'measured', source: 'crcSolubility', locator: 'row Na2SO4, mass % converted with 100 w/(1 − w)',
    note: '0 and 10 °C from the second source (g per 100 g or 100 mL as tabulated), the handbook has none there',
  },
  conductivity: {
    xUnit: 'mass %', unit: 'mS/cm',
    x: [0.5, 1, 2, 5, 10, 15, 20], y: [5.9, 11.2, 19.8, 42.7, 71.3, 91.1, 109],
    uncertainty: { kind: 'relative', value: 0.025 }, validFor: { massPercent: [0.5, 20, '%'], temperature: [20, 20, 'degC'] },
    evidence: 'measured', source: 'crcConductivity', locator: 'row Na2SO4, 20 °C',
    note: '20 % conductivity point exceeds the 20 C solubility (16.1 %): supersaturated or warm',
  },
  conductivitySlope: {
    value: 2.37, unit: '%/K', uncertainty: { kind: 'standard', value: 0.1 },
    validFor: { temperature: [10, 40, 'degC'] }, evidence: 'measured', source: 'landoltSlopes',
    locator: 'mean of 3 rows (18 to 26 °C), referred to 20 °C',
  },
  density: {
    xUnit: 'mass %', unit: 'g/cm3',
    x: [0, 0.5, 1, 2, 5, 10, 12, 14, 15, 16, 18, 20, 22], y: [0.9982, 1.0027, 1.0071, 1.0161, 1.0436, 1.0905, 1.1101, 1.1301, 1.1402, 1.1503, 1.1705, 1.1907, 1.2106],
    uncertainty: { kind: 'relative', value: 0.0005 }, validFor: { massPercent: [0, 22, '%'], temperature: [20, 20, 'degC'] },
    evidence: 'measured', source: 'crcConcentrative', locator: 'row Na2SO4, 20 °C; 0 % is water',
  },
  apparentDensity: {
    c: [0.00000445025449497252, 0.00000912086519621226, 0.0840358370073922, 0.00465767525381795, 4349.50513887423],
    uncertainty: { kind: 'standard', value: 0.0008 }, unit: 'g/cm3',
    validFor: { temperature: [0, 125, 'degC'], massPercent: [0, 32.5, '%'] },
    evidence: 'fitted', source: 'laliberte2009', locator: 'coefficients c0 to c4, Na2SO4',
  },
} as const satisfies SaltFacts;
