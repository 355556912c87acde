import type { Datum } from './datum.ts';

const weight = (value: number, uncertainty: number) =>
  ({
    value,
    unit: 'g/mol',
    uncertainty: { kind: 'standard', value: uncertainty },
    validFor: {},
    evidence: 'measured',
    source: 'iupac2021',
    locator: 'abridged table',
  }) as const satisfies Datum;

/** Standard atomic weights of the elements in sheet metals. */
export const atomicWeights = {
  Ag: weight(107.8682, 0.0002),
  Cu: weight(63.546, 0.003),
  Zn: weight(65.38, 0.02),
  Sn: weight(118.71, 0.07),
  Ni: weight(58.6934, 0.0004),
  Fe: weight(55.845, 0.002),
  Cr: weight(51.9961, 0.0006),
  Al: weight(26.9815384, 3e-7),
  Au: weight(196.96657, 4e-6),
  Pb: weight(207.2, 1.1),
  Mn: weight(54.938043, 2e-6),
  Mo: weight(95.95, 0.01),
  Ge: weight(72.63, 0.008),
  Si: weight(28.085, 0.001),
  Mg: weight(24.305, 0.002),
  P: { ...weight(30.97376, 5e-6), evidence: 'fromMemory', source: 'memory', locator: 'recalled' },
} as const;

export type ElementSymbol = keyof typeof atomicWeights;
