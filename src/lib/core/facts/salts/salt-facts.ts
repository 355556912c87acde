import type { Datum, Provenance, Table } from '../datum.ts';

/** Anions of the salts that make a bath. */
export type Anion = 'nitrate' | 'chloride' | 'sulfate';
/** Anions of every salt in the tables. */
export type ShelfAnion = Anion | 'carbonate' | 'citrate' | 'acetate' | 'thiosulfate';
export type Cation =
  'sodium' | 'potassium' | 'ammonium' | 'copper' | 'silver' | 'zinc' | 'magnesium' | 'iron' | 'hydrogen';

/** A crystal form as it is sold, with an id such as CuSO4.5H2O. */
export interface Hydrate {
  readonly id: string;
  readonly waters: number;
  readonly molarMass: Datum;
}

/** Laliberté's five coefficients of the apparent density of one solute. */
export interface ApparentDensity extends Provenance {
  readonly c: readonly [number, number, number, number, number];
}

/** Data of one salt. A table is null when nobody has measured it; whatever needs it is then refused. */
export interface SaltData {
  readonly id: string;
  readonly formula: string;
  readonly cas: string;
  readonly anion: ShelfAnion;
  readonly cation: Cation;
  readonly molarMass: Datum;
  readonly hydrates: readonly Hydrate[];
  /** g anhydrous per 100 g water against °C */
  readonly solubility: Table | null;
  /** a second published table that disagrees, kept for comparison */
  readonly otherSolubility?: Table;
  /** mS/cm at 20 °C against mass % anhydrous */
  readonly conductivity: Table | null;
  /** %/K referred to 20 °C */
  readonly conductivitySlope: Datum | null;
  /** g/cm³ at 20 °C against mass % anhydrous */
  readonly density: Table;
  readonly apparentDensity: ApparentDensity | null;
}

/** A salt that a bath can be planned with: it has every table. */
export interface SaltFacts extends SaltData {
  readonly anion: Anion;
  readonly solubility: Table;
  readonly conductivity: Table;
  readonly conductivitySlope: Datum;
  readonly apparentDensity: ApparentDensity;
}

/**
 * How far a straight line in temperature may deviate from the measured conductivity between 10 and 40 °C. The
 * standard potassium chloride solutions deviate by 3 %, saturated table salt by 2 %.
 */
export const conductivityLine = {
  value: 5,
  unit: '%',
  uncertainty: { kind: 'exact' },
  validFor: { temperature: [10, 40, 'degC'] },
  evidence: 'computed',
  source: 'kclStandards',
  locator: '0.01, 0.1 and 1 mol/kg between 10 and 40 °C, against a line through 20 °C',
} as const satisfies Datum;
