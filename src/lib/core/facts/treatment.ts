import type { Datum, Statement } from './datum.ts';
import type { ElementSymbol } from './elements.ts';

const minteq = { evidence: 'computed', source: 'phreeqcMinteq' } as const;

/** Table salt over what silver takes, mol/L of chloride left free. */
export const freeChloride = {
  /** near the least silver of all, with a margin for what was weighed wrong */
  wanted: {
    value: 0.01,
    unit: 'mol/L',
    uncertainty: { kind: 'band', low: 0.005, high: 0.01 },
    validFor: { temperature: [25, 25, 'degC'] },
    ...minteq,
    locator: '0.076 mg/L silver left; least, 0.055 mg/L, at 0.0024 mol/L',
  },
  /** more than this takes silver up again */
  most: {
    value: 0.1,
    unit: 'mol/L',
    uncertainty: { kind: 'notStated' },
    validFor: { temperature: [25, 25, 'degC'] },
    ...minteq,
    locator: '0.42 mg/L silver left; 5 mg/L from 0.63 mol/L',
  },
} as const satisfies Record<string, Datum>;

/** Carbonate over what the metal takes: from here it lifts copper again. */
export const freeCarbonate = {
  value: 0.01,
  unit: 'mol/L',
  uncertainty: { kind: 'notStated' },
  validFor: { temperature: [25, 25, 'degC'] },
  ...minteq,
  locator: 'copper at pH 10: 0.5 mg/L at 0.01 mol/L, 12 mg/L at 0.05',
} as const satisfies Datum;

const window = (low: number, high: number, locator: string) =>
  ({
    value: (low + high) / 2,
    unit: '1',
    uncertainty: { kind: 'band', low, high },
    validFor: { temperature: [25, 25, 'degC'] },
    ...minteq,
    locator,
  }) as const satisfies Datum;

/** pH at which a metal group leaves the liquid; nickel is handed over untreated. */
export const pHWindows = {
  copper: window(8.5, 9.5, 'least copper at 9.7'),
  brass: window(9, 9.6, 'copper and zinc together; least zinc at 9.6'),
  iron: window(8, 9, 'iron(III), least at 8.5; iron(II) needs air first'),
} as const;

/** Charge that a litre of bath is used for before it is retired, A·h/L. */
export const retireAfter = {
  /** the plate makes ammonia of nitrate, eight electrons a molecule: at worst 23 mmol in a litre by then */
  silverNitrate: {
    value: 5,
    unit: 'A.h/L',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'our own reading of "retire it by charge, not by look"',
  },
  other: {
    value: 10,
    unit: 'A.h/L',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'our own reading: some 12 g of copper in a litre by then',
  },
} as const satisfies Record<string, Datum>;

/** A line of law that tells how much is much; no limit for pouring. */
export interface MetalLine {
  /** mg/L */
  readonly limit: Datum;
  /** what a United States collector calls it */
  readonly code: Statement;
}

const line = (metal: string, code: string, evidence: 'regulatory' | 'fromMemory'): MetalLine => ({
  limit: {
    value: 5,
    unit: 'mg/L',
    uncertainty: { kind: 'exact' },
    validFor: {},
    evidence: 'regulatory',
    source: 'cfr261',
    locator: `Table 1, ${metal}`,
  },
  code: { text: code, evidence, source: evidence === 'regulatory' ? 'cfr261' : 'memory', locator: metal },
});

export const silverLine = line('silver', 'D011', 'fromMemory');

/** 40 CFR 261.24: a liquid with as much or more is toxic waste. Copper, zinc and nickel have no line there. */
export const metalLines: Readonly<Partial<Record<ElementSymbol, MetalLine>>> = {
  Ag: silverLine,
  Cr: line('chromium', 'D007', 'regulatory'),
  Pb: line('lead', 'D008', 'fromMemory'),
};

/** Combining masses, g/mol, for what settles. */
export const combining = {
  chloride: 35.453,
  hydroxide: 17.007,
} as const;
