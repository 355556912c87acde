/** Sources of current that a maker may name, and whether a job can be planned with each. */
export const supplyKinds = {
  bench: 'fit',
  adapter: 'fit',
  battery: 'fit',
  alternating: 'alternating',
  dimmer: 'alternating',
  unknown: 'unknown',
  mains: 'mains',
  'home-made': 'mains',
  'car-battery': 'unlimited',
} as const;

export type SupplyKind = keyof typeof supplyKinds;

/** The kind named by a stored answer; `unknown` when this version does not know it. */
export const supplyKindOf = (stored: string): SupplyKind =>
  Object.hasOwn(supplyKinds, stored) ? (stored as SupplyKind) : 'unknown';

/** Whether volts and amps are set by hand. An adapter or a battery gives what its label says. */
export const hasKnobs = (kind: SupplyKind): boolean => kind === 'bench';

/**
 * How a maker sees that a supply is off: its meter reads zero, its plug is out of the wall, or a lead is off
 * the battery. Only a supply with a meter can be checked by its meter.
 */
export type OffSign = 'meter' | 'unplugged' | 'lead-off';

export const offSignOf = (kind: SupplyKind, showsAmps: boolean): OffSign =>
  kind === 'battery' ? 'lead-off' : showsAmps ? 'meter' : 'unplugged';
