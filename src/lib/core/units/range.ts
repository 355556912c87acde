import { normalQuantile } from './sample.ts';

/**
 * The ends of every range shown, as the share of cases that lie below them. To widen all ranges, change it
 * here.
 */
export const rangeEnds = { low: 0.05, high: 0.95 } as const;

/**
 * Standard deviations from the middle of a normal range to its ends, rounded to three digits as printed
 * tables are.
 */
export const RANGE_Z = Number(normalQuantile(rangeEnds.high).toFixed(3));
