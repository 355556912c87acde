import type { Statement } from '../../../src/lib/core/facts/datum.ts';
import type { ElementSymbol } from '../../../src/lib/core/facts/elements.ts';

/**
 * A hydroxide and what its metal does in water, at 25 °C and no ionic strength:
 * M(OH)n + nH⁺ = Mⁿ⁺ + nH₂O, and Mⁿ⁺ + iH₂O = M(OH)i + iH⁺.
 */
export interface Hydroxide extends Omit<Statement, 'text'> {
  readonly element: ElementSymbol;
  /** log10 of the first constant */
  readonly logK: number;
  /** n */
  readonly protons: number;
  /** log10 of the second, i = 1, 2, … */
  readonly hydrolysis: readonly number[];
}

const minteq = (locator: string) => ({ evidence: 'measured', source: 'phreeqcMinteq', locator }) as const;

/** Solids that a fresh precipitate is counted as. */
export const hydroxides = {
  'Cu(OH)2': {
    element: 'Cu',
    logK: 8.674,
    protons: 2,
    hydrolysis: [-7.497, -16.194, -26.879, -39.98],
    ...minteq('Cu(OH)2, fresh'),
  },
  CuO: {
    element: 'Cu',
    logK: 7.644,
    protons: 2,
    hydrolysis: [-7.497, -16.194, -26.879, -39.98],
    ...minteq('tenorite, aged'),
  },
  'Zn(OH)2': {
    element: 'Zn',
    logK: 12.474,
    protons: 2,
    hydrolysis: [-8.997, -17.794, -28.091, -40.488],
    ...minteq('Zn(OH)2, amorphous'),
  },
  'Ni(OH)2': {
    element: 'Ni',
    logK: 12.794,
    protons: 2,
    hydrolysis: [-9.897, -18.994, -29.991],
    ...minteq('Ni(OH)2'),
  },
  'Fe(OH)3': {
    element: 'Fe',
    logK: 3.191,
    protons: 3,
    hydrolysis: [-2.187, -4.594, -12.56, -21.588],
    ...minteq('ferrihydrite'),
  },
  'Fe(OH)2': {
    element: 'Fe',
    logK: 13.564,
    protons: 2,
    hydrolysis: [-9.397, -20.494, -28.991],
    ...minteq('Fe(OH)2'),
  },
  'Al(OH)3': {
    element: 'Al',
    logK: 10.8,
    protons: 3,
    hydrolysis: [-4.997, -10.094, -16.791, -22.688],
    ...minteq('Al(OH)3, amorphous'),
  },
  // printed about Cr(OH)2+: turned round to Cr+++ by its 9.5688
  'Cr(OH)3': {
    element: 'Cr',
    logK: 8.8188,
    protons: 3,
    hydrolysis: [-3.657, -9.5688, -17.991, -27.388],
    ...minteq('Cr(OH)3, amorphous'),
  },
} as const satisfies Record<string, Hydroxide>;

/** log10 of cumulative constants with copper(II): one and two ligands. */
export const copperLigands = {
  carbonate: { logBeta: [6.77, 10.2], ...minteq('CuCO3, Cu(CO3)2--') },
  citrate: { logBeta: [7.57, 8.9], ...minteq('Cu citrate 1:1, 1:2') },
} as const;
