import { plain } from '../../core/units/format.ts';

const UM = 1e3;
/** mm: finer than any gauge at a bench */
const FINEST = 1e-3;

const millimetres = (um: number): string => plain(Math.round(um / UM / FINEST) * FINEST, 2);

/** A depth as makers speak of it: "0.08 to 0.12 mm". */
export function depthText({ low, high }: { readonly low: number; readonly high: number }): string {
  const [a, b] = [millimetres(low), millimetres(high)];
  return `${a === b ? a : `${a} to ${b}`} mm`;
}

/** Amp-hours, as fine as a small piece needs and no finer. */
export const ampHours = (charge: number): string => {
  const step = charge < 0.01 ? 1e-4 : 1e-3;
  return plain(Math.round(charge / step) * step, 3);
};
