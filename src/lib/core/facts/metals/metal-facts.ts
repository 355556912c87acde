import type { Datum, Provenance } from '../datum.ts';
import type { ElementSymbol } from '../elements.ts';

/** Metals that behave alike at the anode. `nickel` is nickel silver. */
export type MetalFamily = 'silver' | 'copper' | 'brass' | 'bronze' | 'nickel' | 'iron';

export interface StatedComposition extends Provenance {
  readonly massPercent: Readonly<Partial<Record<ElementSymbol, number>>>;
}

/** Data of a metal, whether it is etched here or not. */
export interface MetalData {
  readonly composition: StatedComposition;
  readonly density: Datum;
  /** a second published density, kept for comparison */
  readonly otherDensity?: Datum;
}

/** A metal that can be etched. */
export interface MetalFacts extends MetalData {
  readonly family: MetalFamily;
}

/** Makes a composition, mass %. */
export const alloy = {
  unit: '%',
  uncertainty: { kind: 'standard', value: 0.5 },
  validFor: {},
} as const;

/** Makes a density at room temperature. */
export const dense = (
  value: number,
  relative: number | null,
): Pick<Datum, 'value' | 'unit' | 'uncertainty' | 'validFor'> => ({
  value,
  unit: 'g/cm3',
  uncertainty: relative === null ? { kind: 'notStated' } : { kind: 'relative', value: relative },
  validFor: { temperature: [15, 30, 'degC'] },
});
