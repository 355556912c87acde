import type { MetalFamily } from '../core/facts/metals.ts';
import type { SaltRefusal } from '../core/facts/salts.ts';
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

/** Why a known salt makes no bath, in a sentence. */
export const refusedSaltTexts: Readonly<Record<SaltRefusal, string>> = {
  ammoniumNitrate: 'It feeds fires and explosions, and with silver it makes a crust that can explode.',
  ammonium: 'Ammonium takes up silver and copper, and with silver it makes a crust that can explode.',
  chlorideOther: 'It would act much like table salt, but nothing here is measured for it.',
  treatmentOnly: 'It changes a used bath; it does not carry a bite.',
  poorBath: 'It bites badly, or costs more than it gives.',
  etchant: 'It etches by itself, without current, so no amp-hours can be counted.',
};

/** What the care is that a salt asks for. */
export const saltCareTexts = {
  chlorine: 'Open the window: if the current falls away it can give chlorine.',
  film: 'Stop often and brush the film off.',
} as const;
