/** Sources of current a maker may name, and whether one can be planned with. */
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

/** The kind that a stored answer names; one that this version does not know is a supply nobody can tell. */
export const supplyKindOf = (stored: string): SupplyKind =>
  Object.hasOwn(supplyKinds, stored) ? (stored as SupplyKind) : 'unknown';

/** Whether its volts and amps are set by hand; an adapter or a battery gives what its label says. */
export const hasKnobs = (kind: SupplyKind): boolean => kind === 'bench';

/**
 * How a maker sees that a supply is off: its meter reads zero, its plug is out of the wall, or a lead is off the
 * battery. Only a meter that is there can be read.
 */
export type OffSign = 'meter' | 'unplugged' | 'lead-off';

export const offSignOf = (kind: SupplyKind, showsAmps: boolean): OffSign =>
  kind === 'battery' ? 'lead-off' : showsAmps ? 'meter' : 'unplugged';
