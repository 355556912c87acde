import type { SaltData } from './salt-facts.ts';

/** Ammonium nitrate. Mass % and solubility are for the anhydrous solute. */
export const ammoniumNitrate = {
  id: 'NH4NO3',
  formula: 'NH4NO3',
  cas: '6484-52-2',
  anion: 'nitrate',
  cation: 'ammonium',
  molarMass: {
    value: 80.043,
    unit: 'g/mol',
    uncertainty: { kind: 'relative', value: 1e-4 },
    validFor: {},
    evidence: 'computed',
    source: 'iupac2021',
    locator: 'sum of abridged atomic weights',
  },
  hydrates: [],
  solubility: {
    xUnit: 'degC',
    unit: 'g/100g water',
    x: [0, 10, 20, 25, 30, 40],
    y: [117.39, 150.63, 189.86, 212.5, 236.7, 289.11],
    uncertainty: { kind: 'relative', value: 0.01 },
    validFor: { temperature: [0, 40, 'degC'] },
    evidence: 'measured',
    source: 'crcSolubility',
    locator: 'row NH4NO3, mass % converted with 100 w/(1 − w)',
  },
  // not in the handbook's table
  conductivity: null,
  conductivitySlope: null,
  density: {
    xUnit: 'mass %',
    unit: 'g/cm3',
    x: [0, 0.5, 1, 2, 5, 10, 15, 20, 25, 30],
    y: [0.9982, 1.0003, 1.0023, 1.0064, 1.0188, 1.0397, 1.061, 1.0828, 1.105, 1.1278],
    uncertainty: { kind: 'relative', value: 0.0005 },
    validFor: { massPercent: [0, 30, '%'], temperature: [20, 20, 'degC'] },
    evidence: 'measured',
    source: 'crcConcentrative',
    locator: 'row NH4NO3, 20 °C; 0 % is water',
  },
  apparentDensity: {
    c: [1412.56319897369, 1214.07575155077, 0.705071278089242, 0.00117760862220194, 107.081780208688],
    uncertainty: { kind: 'standard', value: 0.002 },
    unit: 'g/cm3',
    validFor: { temperature: [25, 95, 'degC'], massPercent: [0, 78.7, '%'] },
    evidence: 'fitted',
    source: 'laliberte2009',
    locator: 'coefficients c0 to c4, NH4NO3',
  },
} as const satisfies SaltData;
