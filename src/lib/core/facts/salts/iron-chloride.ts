import type { SaltData } from './salt-facts.ts';

/** Iron(III) chloride. Mass % and solubility are for the anhydrous solute. */
export const ironChloride = {
  id: 'FeCl3',
  formula: 'FeCl3',
  cas: '7705-08-0',
  anion: 'chloride',
  cation: 'iron',
  molarMass: {
    value: 162.195,
    unit: 'g/mol',
    uncertainty: { kind: 'relative', value: 1e-4 },
    validFor: {},
    evidence: 'computed',
    source: 'iupac2021',
    locator: 'sum of abridged atomic weights',
  },
  hydrates: [
    {
      id: 'FeCl3.6H2O',
      waters: 6,
      molarMass: {
        value: 270.285,
        unit: 'g/mol',
        uncertainty: { kind: 'relative', value: 1e-4 },
        validFor: {},
        evidence: 'computed',
        source: 'iupac2021',
        locator: 'sum of abridged atomic weights',
      },
    },
  ],
  solubility: {
    xUnit: 'degC',
    unit: 'g/100g water',
    x: [0, 10, 20, 25, 30],
    y: [74.52, 81.49, 91.94, 91.2, 106.61],
    uncertainty: { kind: 'relative', value: 0.02 },
    validFor: { temperature: [0, 30, 'degC'] },
    evidence: 'measured',
    source: 'crcSolubility',
    locator: 'row FeCl3, mass % converted with 100 w/(1 − w)',
    note: 'the 40 °C row belongs to another crystal form and is left out; 25 °C lies below 20 °C in both editions',
  },
  // not in the handbook's table
  conductivity: null,
  conductivitySlope: null,
  density: {
    xUnit: 'mass %',
    unit: 'g/cm3',
    x: [0, 0.5, 1, 2, 5, 10, 12, 14, 16, 18, 20, 24, 40],
    y: [0.9982, 1.0025, 1.0068, 1.0153, 1.0408, 1.0853, 1.104, 1.1228, 1.142, 1.1615, 1.1816, 1.2234, 1.4176],
    uncertainty: { kind: 'relative', value: 0.0005 },
    validFor: { massPercent: [0, 40, '%'], temperature: [20, 20, 'degC'] },
    evidence: 'measured',
    source: 'crcConcentrative',
    locator: 'row FeCl3, 20 °C; 0 % is water',
  },
  apparentDensity: {
    c: [-14.9299417767922, 63.3168799033122, 1.15885132665007, 0.0104820838890175, 2163.05805284003],
    uncertainty: { kind: 'standard', value: 0.0015 },
    unit: 'g/cm3',
    validFor: { temperature: [0, 35, 'degC'], massPercent: [0, 50, '%'] },
    evidence: 'fitted',
    source: 'laliberte2009',
    locator: 'coefficients c0 to c4, FeCl3',
  },
} as const satisfies SaltData;
