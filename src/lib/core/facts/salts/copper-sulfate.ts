import type { SaltFacts } from './salt-facts.ts';

/** Copper(II) sulfate. Mass % and solubility are for the anhydrous solute. */
export const copperSulfate = {
  id: 'CuSO4',
  formula: 'CuSO4',
  cas: '7758-98-7',
  anion: 'sulfate',
  molarMass: { value: 159.602, unit: 'g/mol', uncertainty: { kind: 'relative', value: 1e-4 }, validFor: {}, evidence: 'computed', source: 'iupac2021', locator: 'sum of abridged atomic weights' },
  hydrates: [
  { id: 'CuSO4.5H2O', waters: 5, molarMass: { value: 249.677, unit: 'g/mol', uncertainty: { kind: 'relative', value: 1e-4 }, validFor: {}, evidence: 'computed', source: 'iupac2021', locator: 'sum of abridged atomic weights' } },
  ],
  solubility: {
    xUnit: 'degC', unit: 'g/100g water',
    x: [0, 10, 20, 25, 30, 40], y: [14.16, 16.82, 20.05, 21.95, 23.92, 28.53],
    uncertainty: { kind: 'relative', value: 0.01 }, validFor: { temperature: [0, 40, 'degC'] },
    evidence: 'measured', source: 'crcSolubility', locator: 'row CuSO4, mass % converted with 100 w/(1 − w)',
  },
  conductivity: {
    xUnit: 'mass %', unit: 'mS/cm',
    x: [0.5, 1, 2, 5, 10, 15], y: [2.9, 5.4, 9.3, 19, 32.2, 42.3],
    uncertainty: { kind: 'relative', value: 0.03 }, validFor: { massPercent: [0.5, 15, '%'], temperature: [20, 20, 'degC'] },
    evidence: 'measured', source: 'crcConductivity', locator: 'row CuSO4, 20 °C',
  },
  conductivitySlope: {
    value: 2.35, unit: '%/K', uncertainty: { kind: 'standard', value: 0.3 },
    validFor: { temperature: [10, 40, 'degC'] }, evidence: 'fromMemory', source: 'memory',
    locator: 'recalled, ±0.3',
  },
  density: {
    xUnit: 'mass %', unit: 'g/cm3',
    x: [0, 0.5, 1, 2, 5, 10, 12, 14, 15, 16, 18], y: [0.9982, 1.0033, 1.0085, 1.019, 1.0511, 1.107, 1.1304, 1.1545, 1.1669, 1.1796, 1.2059],
    uncertainty: { kind: 'relative', value: 0.0005 }, validFor: { massPercent: [0, 18, '%'], temperature: [20, 20, 'degC'] },
    evidence: 'measured', source: 'crcConcentrative', locator: 'row CuSO4, 20 °C; 0 % is water',
  },
  apparentDensity: {
    c: [-0.00000112078294150285, 6.06850590612117e-7, -0.118863232463814, 0.00378050075860551, 4763.96073964247],
    uncertainty: { kind: 'standard', value: 0.0017 }, unit: 'g/cm3',
    validFor: { temperature: [10, 60, 'degC'], massPercent: [0, 28.4, '%'] },
    evidence: 'fitted', source: 'laliberte2009', locator: 'coefficients c0 to c4, CuSO4',
  },
} as const satisfies SaltFacts;
