import type { Datum } from './datum.ts';
import type { SourceId } from './sources.ts';

/** A published value that differs from the one in use, kept for comparison. */
export interface OtherValue {
  readonly value: number;
  readonly source: SourceId;
  readonly locator: string;
}

/**
 * An equilibrium constant or potential at 25 °C and zero ionic strength. Its band covers every published
 * value found, including those not chosen.
 */
export interface Constant extends Datum {
  readonly others: readonly OtherValue[];
}

/** Standard potentials of the metals that a bath may hold, V against the hydrogen electrode. */
export const potentials = {
  'Ag+ + e- = Ag': {
    value: 0.7996,
    unit: 'V',
    uncertainty: { kind: 'band', low: 0.799, high: 0.7996 },
    validFor: { temperature: [25, 25, 'degC'] },
    evidence: 'measured',
    source: 'standardPotentials',
    locator: 'Ag+ + e- = Ag',
    others: [
      { value: 0.799, source: 'phreeqcMinteq', locator: 'minteq.v4.dat' },
      { value: 0.7992, source: 'phreeqcThermochimie', locator: 'ThermoChimie v10a' },
    ],
  },
  'Cu++ + 2e- = Cu': {
    value: 0.337,
    unit: 'V',
    uncertainty: { kind: 'band', low: 0.3369, high: 0.3419 },
    validFor: { temperature: [25, 25, 'degC'] },
    evidence: 'measured',
    source: 'standardPotentials',
    locator: 'Cu++ + 2e- = Cu',
    others: [
      {
        value: 0.3419,
        source: 'memory',
        locator: 'recalled',
      },
      { value: 0.3386, source: 'phreeqcMinteq', locator: 'minteq.v4.dat (2.69 + 8.756)' },
      { value: 0.3369, source: 'phreeqcThermochimie', locator: 'ThermoChimie v10a' },
    ],
  },
  'Zn++ + 2e- = Zn': {
    value: -0.7618,
    unit: 'V',
    uncertainty: { kind: 'band', low: -0.7628, high: -0.7618 },
    validFor: { temperature: [25, 25, 'degC'] },
    evidence: 'measured',
    source: 'standardPotentials',
    locator: 'Zn++ + 2e- = Zn',
    others: [
      { value: -0.7628, source: 'phreeqcMinteq', locator: 'minteq.v4.dat' },
      { value: -0.7619, source: 'phreeqcWateq', locator: 'wateq4f.dat' },
    ],
  },
  'Ni++ + 2e- = Ni': {
    value: -0.257,
    unit: 'V',
    uncertainty: { kind: 'band', low: -0.257, high: -0.2372 },
    validFor: { temperature: [25, 25, 'degC'] },
    evidence: 'measured',
    source: 'standardPotentials',
    locator: 'Ni++ + 2e- = Ni',
    others: [{ value: -0.2372, source: 'phreeqcThermochimie', locator: 'ThermoChimie v10a' }],
  },
  'Fe++ + 2e- = Fe': {
    value: -0.447,
    unit: 'V',
    uncertainty: { kind: 'band', low: -0.4691, high: -0.44 },
    validFor: { temperature: [25, 25, 'degC'] },
    evidence: 'measured',
    source: 'standardPotentials',
    locator: 'Fe++ + 2e- = Fe',
    others: [
      {
        value: -0.44,
        source: 'wikipediaPotentials',
        locator: 'stored page topuch.com; WIKI-E (84 907 J/mol /2F)',
      },
      { value: -0.4691, source: 'phreeqcThermochimie', locator: 'ThermoChimie v10a' },
    ],
  },
  'Al+++ + 3e- = Al': {
    value: -1.662,
    unit: 'V',
    uncertainty: { kind: 'band', low: -1.6847, high: -1.662 },
    validFor: { temperature: [25, 25, 'degC'] },
    evidence: 'measured',
    source: 'standardPotentials',
    locator: 'Al+++ + 3e- = Al',
    others: [{ value: -1.6847, source: 'phreeqcThermochimie', locator: 'ThermoChimie v10a' }],
  },
  'Sn++ + 2e- = Sn': {
    value: -0.1375,
    unit: 'V',
    uncertainty: { kind: 'band', low: -0.142, high: -0.1375 },
    validFor: { temperature: [25, 25, 'degC'] },
    evidence: 'measured',
    source: 'standardPotentials',
    locator: 'Sn++ + 2e- = Sn',
    others: [{ value: -0.142, source: 'phreeqcThermochimie', locator: 'ThermoChimie v10a (beta)' }],
  },
  'Pb++ + 2e- = Pb': {
    value: -0.1262,
    unit: 'V',
    uncertainty: { kind: 'band', low: -0.1262, high: -0.1256 },
    validFor: { temperature: [25, 25, 'degC'] },
    evidence: 'measured',
    source: 'standardPotentials',
    locator: 'Pb++ + 2e- = Pb',
    others: [{ value: -0.1256, source: 'phreeqcMinteq', locator: 'minteq.v4.dat' }],
  },
  'Au+++ + 3e- = Au': {
    value: 1.498,
    unit: 'V',
    uncertainty: { kind: 'notStated' },
    validFor: { temperature: [25, 25, 'degC'] },
    evidence: 'measured',
    source: 'standardPotentials',
    locator: 'Au+++ + 3e- = Au',
    others: [],
  },
} as const satisfies Record<string, Constant>;
