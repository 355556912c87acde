import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { fromTo, plain } from './locale.ts';
import { readIn, withUnit } from './units.ts';

const UM = 1e3;
/** In mm: finer than any gauge at a bench. */
const FINEST = 1e-3;

/**
 * A depth as makers write it: "0.08 to 0.12 mm".
 * @param low,high um
 */
export function depthText(
  { low, high }: { readonly low: number; readonly high: number },
  units: ReadingUnits,
): string {
  const [a, b] = [low, high].map((um) => {
    const { value, finest } = readIn(um / UM, 'mm', units);
    return plain(value, 2, finest || FINEST);
  }) as [string, string];
  return withUnit(fromTo(a, b), readIn(high / UM, 'mm', units).unit);
}

/** Amp-hours, with digits as fine as a small piece needs. */
export const ampHours = (charge: number): string => {
  const step = charge < 0.01 ? 1e-4 : 1e-3;
  return plain(Math.round(charge / step) * step, 3);
};
