import { si } from '../units/quantity.ts';
import type { Current, Resistance, Voltage } from '../units/quantity.ts';
import type { Supply } from './setup.ts';

/** What the two meters read once the bench has settled. */
export interface OperatingPoint {
  readonly current: Current;
  readonly volts: Voltage;
  /** which knob holds the supply */
  readonly heldBy: 'volts' | 'amps';
}

/** Below this much over the offset the current dies away exponentially instead of ending dead. */
const SOFT = 0.1;

/**
 * Current that a voltage drives through the cell, V = V₀ + I·R, softened near the offset so that it
 * falls off like an electrode reaction and never turns negative.
 */
export function currentAt(volts: Voltage, offset: Voltage, resistance: Resistance): Current {
  const over = volts - offset;
  const driving = over > SOFT ? over : SOFT * Math.exp((over - SOFT) / SOFT);
  return si<'current'>(driving / resistance);
}

/**
 * Where supply and cell meet, after the supply's own limit.
 * @param resistance bath and leads together
 * @param ceiling volts that no plan goes over
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
