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
