import type { SourceId } from './sources.ts';
import type { MetalFamily } from './metals.ts';
import type { BathSalt } from './salts.ts';

export type Pictogram = 'GHS03' | 'GHS05' | 'GHS07' | 'GHS09';

/** Classification of a solid as bought. The original label or data sheet of the bottle in hand wins. */
export interface SubstanceLabel {
  readonly signal: 'Danger' | 'Warning' | null;
  readonly hazards: readonly string[];
  readonly pictograms: readonly Pictogram[];
  readonly source: SourceId;
}

/** Bath salts as they come in the jar. */
export const labels = {
  salts: {
    NaNO3: {
      signal: 'Warning',
      hazards: ['H272', 'H319'],
      pictograms: ['GHS03', 'GHS07'],
      source: 'sdsSodiumNitrate',
    },
    /** the German trade body adds eye irritation to the supplier's entry: the stricter is shown */
    KNO3: {
      signal: 'Warning',
      hazards: ['H272', 'H319'],
      pictograms: ['GHS03', 'GHS07'],
      source: 'sdsPotassiumNitrate',
    },
    NaCl: { signal: null, hazards: [], pictograms: [], source: 'memory' },
    CuSO4: {
      signal: 'Danger',
      hazards: ['H302', 'H318', 'H410'],
      pictograms: ['GHS05', 'GHS07', 'GHS09'],
      source: 'clpAnnexVI',
    },
    Na2SO4: { signal: null, hazards: [], pictograms: [], source: 'sdsSodiumSulfate' },
  },
  /** what a used bath holds, by the worst salt of the metal dissolved in it */
  usedBath: {
    silver: {
      signal: 'Danger',
      hazards: ['H314', 'H410'],
      pictograms: ['GHS05', 'GHS09'],
      source: 'clpAnnexVI',
    },
    copper: {
      signal: 'Danger',
      hazards: ['H302', 'H318', 'H410'],
      pictograms: ['GHS05', 'GHS07', 'GHS09'],
      source: 'clpAnnexVI',
    },
    brass: {
      signal: 'Danger',
      hazards: ['H302', 'H318', 'H410'],
      pictograms: ['GHS05', 'GHS07', 'GHS09'],
      source: 'clpAnnexVI',
    },
  },
} as const satisfies {
  salts: Record<BathSalt, SubstanceLabel>;
  usedBath: Record<MetalFamily, SubstanceLabel>;
};

/** Hazard statements used above, as the law words them (CLP Annex III). */
export const hazardStatements = {
  H272: 'May intensify fire; oxidiser',
  H302: 'Harmful if swallowed',
  H314: 'Causes severe skin burns and eye damage',
  H318: 'Causes serious eye damage',
  H319: 'Causes serious eye irritation',
  H410: 'Very toxic to aquatic life with long lasting effects',
} as const;
