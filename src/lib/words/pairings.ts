import type { MetalFamily } from '../core/facts/metals.ts';
import type { Anion } from '../core/facts/salts/salt-facts.ts';

/** What the metal and the bath do to each other, in a sentence. */
export const pairingTexts: Readonly<Record<MetalFamily, Readonly<Record<Anion, string>>>> = {
  silver: {
    nitrate: 'Silver nitrate dissolves readily, so silver leaves cleanly.',
    chloride: 'Chloride seals silver under its own chloride: no bite.',
    sulfate: 'Silver sulfate dissolves poorly: the piece films over.',
  },
  copper: {
    nitrate: 'Copper leaves cleanly, two electrons an atom.',
    chloride: 'Copper leaves with one electron an atom: twice as fast for the same amp-hours.',
    sulfate: 'Copper leaves cleanly; a blue bath also plates the other side.',
  },
  brass: {
    nitrate: 'Copper and zinc leave together.',
    chloride: 'Quick; if zinc goes first the brass turns pink.',
    sulfate: 'Copper and zinc leave together, slowly.',
  },
};
