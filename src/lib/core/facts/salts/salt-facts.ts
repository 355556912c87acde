import type { Datum, Provenance, Table } from '../datum.ts';

export type Anion = 'nitrate' | 'chloride' | 'sulfate';

/** A crystal form as sold, named like CuSO4.5H2O. */
export interface Hydrate {
  readonly id: string;
  readonly waters: number;
  readonly molarMass: Datum;
}

/** Laliberté's five coefficients of the apparent density of one solute. */
export interface ApparentDensity extends Provenance {
  readonly c: readonly [number, number, number, number, number];
}

/** All that is known of one bath salt. */
export interface SaltFacts {
  readonly id: string;
  readonly formula: string;
  readonly cas: string;
  readonly anion: Anion;
  readonly molarMass: Datum;
  readonly hydrates: readonly Hydrate[];
  /** g anhydrous per 100 g water against °C */
  readonly solubility: Table;
  /** mS/cm at 20 °C against mass % anhydrous */
  readonly conductivity: Table;
  /** %/K referred to 20 °C */
  readonly conductivitySlope: Datum;
  /** g/cm³ at 20 °C against mass % anhydrous */
  readonly density: Table;
  readonly apparentDensity: ApparentDensity;
}
