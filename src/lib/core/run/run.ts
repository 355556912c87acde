/** What happened at the bench, as the core needs it. Times in ms since 1970. */

/** One stretch with current on. */
export interface Run {
  readonly startedAt: number;
  /** when stop was pressed; null while current may flow */
  readonly stoppedAt: number | null;
  /** when the supply was seen to be off */
  readonly offAt: number | null;
}

/** What the meters showed at one time; null where it was not read. */
export interface Reading {
  readonly at: number;
  readonly volts: number | null;
  readonly amps: number | null;
  readonly celsius: number | null;
}

/** What a run aims for. */
export interface Target {
  /** planned amps, used until there is a reading */
  readonly amps: number;
  /** A·h at which the wanted depth is reached */
  readonly chargeAh: number;
  /** minutes with current on, used when charge cannot be counted */
  readonly minutes: number;
  readonly countsCharge: boolean;
}
