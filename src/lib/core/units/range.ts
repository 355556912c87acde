import { normalQuantile } from './sample.ts';

/** Share of cases below the low and below the high end of every range that is told: change it here. */
export const rangeEnds = { low: 0.05, high: 0.95 } as const;

/** How many standard deviations the ends of a range lie from its middle, to three digits as tables print it. */
export const RANGE_Z = Number(normalQuantile(rangeEnds.high).toFixed(3));
