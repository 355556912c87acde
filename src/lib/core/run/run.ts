/** What happened at the bench, as core sees it. Times in ms since 1970. */

/** One stretch with current on. */
export interface Run {
  readonly startedAt: number;
  /** when stop was pressed; null while current may flow */
  readonly stoppedAt: number | null;
  /** when the meter was seen at zero */
  readonly offAt: number | null;
}

/** What the meters showed at a moment; null where nobody looked. */
export interface Reading {
  readonly at: number;
  readonly volts: number | null;
  readonly amps: number | null;
  readonly celsius: number | null;
}

/** What a run goes by. */
export interface Target {
  /** amps that the plan expects until a reading says otherwise */
  readonly amps: number;
  /** A·h at which the wanted depth is reached */
  readonly chargeAh: number;
  /** minutes with current on, for those who cannot count charge */
  readonly minutes: number;
  readonly countsCharge: boolean;
}
