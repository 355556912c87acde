import { isBitable } from '../facts/metals.ts';
import type { Block } from './rule.ts';

/** A plate is of the piece's own metal, copper, brass, silver or stainless steel. */
export const unfitPlate = {
  id: 'unfit-plate',
  kind: 'block',
  step: 'electrodes',
  sources: ['memory'],
  applies: ({ cathode }) =>
    cathode.metal === 'stainless' || isBitable(cathode.metal) ? null : { metal: cathode.metal },
} as const satisfies Block;
