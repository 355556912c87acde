/** How a bite was measured: the surer, the more it counts. */
export type Way = 'mass' | 'depth' | 'strip' | 'looks';

/** A finished job's bite rate: what came off over what Faraday's law gives. */
export interface Rate {
  readonly id: string;
  readonly rate: number;
  readonly way: Way;
  /** of the rate, as a share: what the scale or the gauge may be off */
  readonly off: number;
}

/** Rates, as shares of Faraday's law, and scatters that can be: what lies beyond was noted wrong, and teaches nothing. */
export const rateLimits = { least: 0.05, most: 3, widest: 2 } as const;

export const canBe = ({ rate, off }: Rate): boolean =>
  rate >= rateLimits.least && rate <= rateLimits.most && off >= 0 && Number.isFinite(off);

/** Scatter of one maker's jobs that is usual, as a share. */
const USUAL = 0.1;
/** How much of a job a measurement is worth: what a sure one would tell, less what its gauge hides. */
export const worth = ({ off }: Rate): number => USUAL ** 2 / (USUAL ** 2 + off ** 2);
