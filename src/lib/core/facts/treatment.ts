import type { Datum, Statement } from './datum.ts';
import type { ElementSymbol } from './elements.ts';

const minteq = { evidence: 'computed', source: 'phreeqcMinteq' } as const;

/** Chloride left free after table salt has settled the silver, mol/L. */
export const freeChloride = {
  /** near the point where least silver stays dissolved, with a margin for weighing errors */
  wanted: {
    value: 0.01,
    unit: 'mol/L',
    uncertainty: { kind: 'band', low: 0.005, high: 0.01 },
    validFor: { temperature: [25, 25, 'degC'] },
    ...minteq,
    locator: '0.076 mg/L silver left; least, 0.055 mg/L, at 0.0024 mol/L',
  },
  /** more than this dissolves silver again */
  most: {
    value: 0.1,
    unit: 'mol/L',
    uncertainty: { kind: 'notStated' },
    validFor: { temperature: [25, 25, 'degC'] },
    ...minteq,
    locator: '0.42 mg/L silver left; 5 mg/L from 0.63 mol/L',
  },
} as const satisfies Record<string, Datum>;

/** Carbonate beyond what the metal needs; from here on it dissolves copper again. */
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

/** pH at which the metals of a group settle. Nickel has none because its baths are handed over untreated. */
export const pHWindows = {
  copper: window(8.5, 9.5, 'least copper at 9.7'),
  brass: window(9, 9.6, 'copper and zinc together; least zinc at 9.6'),
  iron: window(8, 9, 'iron(III), least at 8.5; iron(II) needs air first'),
} as const;

/** Charge that may pass through a litre of bath before it is retired, A·h/L. */
export const retireAfter = {
  /** nitrate becomes ammonia at the plate, eight electrons a molecule: at worst 23 mmol in a litre by then */
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

/** The amount from which a law calls a liquid toxic waste. It does not allow pouring less away. */
export interface MetalLine {
  /** mg/L */
  readonly limit: Datum;
  /** the waste code in the United States */
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

/**
 * 40 CFR 261.24: a liquid with this much or more is toxic waste. Copper, zinc and nickel are not listed
 * there.
 */
export const metalLines: Readonly<Partial<Record<ElementSymbol, MetalLine>>> = {
  Ag: silverLine,
  Cr: line('chromium', 'D007', 'regulatory'),
  Pb: line('lead', 'D008', 'fromMemory'),
};

/** Molar masses for working out how much settles, g/mol. */
export const combining = {
  chloride: 35.453,
  hydroxide: 17.007,
} as const;
