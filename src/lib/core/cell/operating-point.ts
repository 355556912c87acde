import { si } from '../units/quantity.ts';
import type { Current, Resistance, Voltage } from '../units/quantity.ts';
import type { Supply } from './setup.ts';

/** What the two meters show once the current is steady. */
export interface OperatingPoint {
  readonly current: Current;
  readonly volts: Voltage;
  /** what the supply keeps constant */
  readonly heldBy: 'volts' | 'amps';
}

/** Below this many volts above the offset the current fades exponentially instead of stopping at once. */
const SOFT = 0.1;

/**
 * Current at a voltage, V = V₀ + I·R. Near the offset it is smoothed, so that it fades like an electrode
 * reaction and never becomes negative.
 */
export function currentAt(volts: Voltage, offset: Voltage, resistance: Resistance): Current {
  const over = volts - offset;
  const driving = over > SOFT ? over : SOFT * Math.exp((over - SOFT) / SOFT);
  return si<'current'>(driving / resistance);
}

/**
 * The volts and amps at which supply and cell agree, within the supply's own limit.
 * @param resistance bath and leads together
 * @param ceiling volts that no plan exceeds
 */
export function operatingPoint(
  supply: Supply,
  offset: Voltage,
  resistance: Resistance,
  ceiling: Voltage,
): OperatingPoint {
  const setVolts = si<'voltage'>(
    Math.min(ceiling, supply.control === 'volts' ? supply.volts : supply.maxVolts),
  );
  const setAmps = supply.control === 'amps' ? supply.amps : (supply.maxAmps ?? Infinity);
  const free = currentAt(setVolts, offset, resistance);
  if (free <= setAmps) return { current: free, volts: setVolts, heldBy: 'volts' };
  const volts = Math.min(setVolts, offset + setAmps * resistance);
  return { current: si<'current'>(setAmps), volts: si<'voltage'>(volts), heldBy: 'amps' };
}
