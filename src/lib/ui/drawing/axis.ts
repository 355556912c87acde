/** The two ends of an axis, in any unit. */
export type Ends = readonly [from: number, to: number];

/** The least and the greatest of some values. */
export const extent = (values: readonly number[]): Ends => [Math.min(...values), Math.max(...values)];

/** Position of a value between two ends: 0 at the first, 1 at the second. */
export const along = ([from, to]: Ends, value: number): number => (value - from) / Math.max(1e-9, to - from);

/** Width of the narrowest bar that can still be seen, % of its axis. */
const NARROWEST = 0.8;

/** A bar from low to high on an axis of length 100. */
export function barOn(axis: Ends, { low, high }: { readonly low: number; readonly high: number }) {
  const [x, end] = [100 * along(axis, low), 100 * along(axis, high)];
  return { x, width: Math.max(NARROWEST, end - x) };
}

/**
 * CSS defines 96 px an inch, which on a phone is near enough to compare a line with.
 * @param um width in μm
 */
export const cssPixels = (um: number): number => (um * 96) / 25_400;
