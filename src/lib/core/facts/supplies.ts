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

/** What masks the metal. */
export const resistKinds = [
  'nail-varnish',
  'paint-pen',
  'permanent-marker',
  'vinyl',
  'toner',
  'dry-film',
  'asphaltum',
] as const;
export type ResistKind = (typeof resistKinds)[number];

/** Other names for them. */
export const resistNames: Readonly<Record<string, ResistKind>> = {
  'nail-polish': 'nail-varnish',
  varnish: 'nail-varnish',
  marker: 'permanent-marker',
  sticker: 'vinyl',
  tape: 'vinyl',
  'toner-transfer': 'toner',
  photoresist: 'dry-film',
  bitumen: 'asphaltum',
};
