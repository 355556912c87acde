import type { MetalFamily } from './metals.ts';
import type { BathSalt, RefusedSalt } from './salts.ts';
import type { SourceId } from './sources.ts';
import { gases } from './substances/gases.ts';
import { liquids } from './substances/liquids.ts';
import { metalSalts } from './substances/metal-salts.ts';
import { pictogramsOf } from './substances/pictograms.ts';
import type { Pictogram } from './substances/pictograms.ts';
import { saltSubstances } from './substances/salts.ts';
import type { HazardCode } from './substances/statements.ts';
import type { Substance } from './substances/substance.ts';

export type { Pictogram } from './substances/pictograms.ts';
export { extraStatements, hazardStatements, labelStatements } from './substances/statements.ts';
export type { ExtraCode, HazardCode } from './substances/statements.ts';
export type { Substance } from './substances/substance.ts';

/** Every substance that may be in use, in the bath or in its sludge. */
export const substances = { ...saltSubstances, ...liquids, ...gases, ...metalSalts } as const;

export type SubstanceId = keyof typeof substances;

/** The substance that each salt is. */
export const substanceOfSalt = {
  NaNO3: 'sodium-nitrate',
  KNO3: 'potassium-nitrate',
  NaCl: 'sodium-chloride',
  KCl: 'potassium-chloride',
  CuSO4: 'copper-sulfate',
  Na2SO4: 'sodium-sulfate',
  K2SO4: 'potassium-sulfate',
  '(NH4)2SO4': 'ammonium-sulfate',
  NH4Cl: 'ammonium-chloride',
  NH4NO3: 'ammonium-nitrate',
  'Cu(NO3)2': 'copper-nitrate',
  ZnSO4: 'zinc-sulfate',
  AgNO3: 'silver-nitrate',
  NaHCO3: 'sodium-bicarbonate',
  Na2CO3: 'sodium-carbonate',
  citric: 'citric-acid',
  Na3cit: 'sodium-citrate',
  NaOAc: 'sodium-acetate',
  Na2S2O3: 'sodium-thiosulfate',
  MgSO4: 'magnesium-sulfate',
  FeCl3: 'iron-chloride',
} as const satisfies Record<BathSalt | RefusedSalt, SubstanceId>;

/** The part of a classification that is printed on a label. */
export interface SubstanceLabel {
  readonly signal: 'Danger' | 'Warning' | null;
  readonly hazards: readonly HazardCode[];
  readonly pictograms: readonly Pictogram[];
  readonly source: SourceId;
}

/** The label of a substance; its pictograms follow from its hazard statements. */
export function labelOf(id: SubstanceId): SubstanceLabel {
  const { signal, hazards, source }: Substance = substances[id];
  return { signal, hazards, pictograms: pictogramsOf(hazards), source };
}

/** The label of a dissolved salt, without the hazards that only the dry solid has. */
const dissolved = (id: SubstanceId, extra: readonly HazardCode[] = []): SubstanceLabel => {
  const hazards = [...labelOf(id).hazards.filter((code) => code !== 'H272'), ...extra];
  return { signal: 'Danger', hazards, pictograms: pictogramsOf(hazards), source: 'clpAnnexVI' };
};

const bathSaltLabels: Readonly<Record<BathSalt, SubstanceLabel>> = {
  NaNO3: labelOf('sodium-nitrate'),
  KNO3: labelOf('potassium-nitrate'),
  NaCl: labelOf('sodium-chloride'),
  KCl: labelOf('potassium-chloride'),
  CuSO4: labelOf('copper-sulfate'),
  Na2SO4: labelOf('sodium-sulfate'),
  K2SO4: labelOf('potassium-sulfate'),
};

const usedBathLabels: Readonly<Record<MetalFamily, SubstanceLabel>> = {
  silver: dissolved('silver-nitrate'),
  copper: dissolved('copper-sulfate'),
  brass: dissolved('copper-sulfate'),
  bronze: dissolved('copper-sulfate'),
  // the copper in nickel silver adds damage to the eyes
  nickel: dissolved('nickel-chloride', ['H318']),
  iron: dissolved('iron-chloride'),
};

/**
 * Labels of bath salts as sold, and of used baths. A used bath is labelled by the most harmful salt of the
 * metal dissolved in it.
 */
export const labels = { salts: bathSaltLabels, usedBath: usedBathLabels };

/** What leaded brass adds to the label of a used bath. */
export const leadLabel: SubstanceLabel = dissolved('lead-compounds');
