/** How a bite was measured. Exact ways count more. */
export type Way = 'mass' | 'depth' | 'strip' | 'looks';

/** A finished job's bite rate: mass dissolved over the mass by Faraday's law. */
export interface Rate {
  readonly id: string;
  readonly rate: number;
  readonly way: Way;
  /** error of the scale or the gauge, as a share of the rate */
  readonly off: number;
}

/**
 * Possible rates, as shares of Faraday's law, and possible scatter. Anything beyond was noted wrong and is
 * ignored.
 */
export const rateLimits = { least: 0.05, most: 3, widest: 2 } as const;

/** Possible shares of the tables' current; anything beyond was noted wrong. */
export const paceLimits = { least: 0.01, most: 5 } as const;

export const canBePace = ({ rate, off }: Rate): boolean =>
  rate >= paceLimits.least && rate <= paceLimits.most && off >= 0 && Number.isFinite(off);

export const canBe = ({ rate, off }: Rate): boolean =>
  rate >= rateLimits.least && rate <= rateLimits.most && off >= 0 && Number.isFinite(off);

/** Usual scatter of one maker's jobs, as a share. */
export const USUAL = 0.1;
/** How much of a job a measurement is worth, 0 to 1: 1 if it is exact, less the larger its error. */
export const worth = ({ off }: Rate): number => USUAL ** 2 / (USUAL ** 2 + off ** 2);
