import type { SaltFacts } from './salt-facts.ts';

/** Potassium nitrate. Mass % and solubility are for the anhydrous solute. */
export const potassiumNitrate = {
  id: 'KNO3',
  formula: 'KNO3',
  cas: '7757-79-1',
  anion: 'nitrate',
  molarMass: { value: 101.102, unit: 'g/mol', uncertainty: { kind: 'relative', value: 1e-4 }, validFor: {}, evidence: 'computed', source: 'iupac2021', locator: 'sum of abridged atomic weights' },
  hydrates: [

  ],
  solubility: {
    xUnit: 'degC', unit: 'g/100g water',
    x: [0, 10, 20, 25, 30, 40], y: [13.64, 21.36, 31.93, 38.31, 45.56, 62.87],
    uncertainty: { kind: 'relative', value: 0.01 }, validFor: { temperature: [0, 40, 'degC'] },
    evidence: 'measured', source: 'crcSolubility', locator: 'row KNO3, mass % converted with 100 w/(1 − w)',
  },
  conductivity: {
    xUnit: 'mass %', unit: 'mS/cm',
    x: [0.5, 1, 2, 5, 10, 15, 20, 25], y: [5.5, 10.7, 20.1, 47, 87.3, 124, 157, 182],
    uncertainty: { kind: 'relative', value: 0.04 }, validFor: { massPercent: [0.5, 25, '%'], temperature: [20, 20, 'degC'] },
    evidence: 'measured', source: 'crcConductivity', locator: 'row KNO3, 20 °C',
    note: 'oxidiser; 25 % point (182 mS/cm) is slightly above the 20 C solubility (24.2 %); CRC values 3-5 % below McCleskey 2011 and below the CRC molar-conductivity table scaled to 20 C',
  },
  conductivitySlope: {
    value: 1.94, unit: '%/K', uncertainty: { kind: 'standard', value: 0.1 },
    validFor: { temperature: [10, 40, 'degC'] }, evidence: 'measured', source: 'landoltSlopes',
    locator: 'mean of 3 rows (18 to 26 °C), referred to 20 °C',
  },
  density: {
    xUnit: 'mass %', unit: 'g/cm3',
    x: [0, 0.5, 1, 2, 5, 10, 12, 14, 16, 18, 20, 22, 24], y: [0.9982, 1.0014, 1.0045, 1.0108, 1.0298, 1.0627, 1.0762, 1.0899, 1.1039, 1.1181, 1.1326, 1.1473, 1.1623],
    uncertainty: { kind: 'relative', value: 0.0005 }, validFor: { massPercent: [0, 24, '%'], temperature: [20, 20, 'degC'] },
    evidence: 'measured', source: 'crcConcentrative', locator: 'row KNO3, 20 °C; 0 % is water',
  },
  apparentDensity: {
    c: [1.49068709973892, 6.67292354651383, 1.47150749460911, 0.0155872679453073, 2539.22687484937],
    uncertainty: { kind: 'standard', value: 0.0003 }, unit: 'g/cm3',
    validFor: { temperature: [5, 95, 'degC'], massPercent: [0, 28.4, '%'] },
    evidence: 'fitted', source: 'laliberte2009', locator: 'coefficients c0 to c4, KNO3',
  },
} as const satisfies SaltFacts;
