import { advice } from '../../core/facts/advice.ts';
import { atomicWeights } from '../../core/facts/elements.ts';
import { combining } from '../../core/facts/treatment.ts';
import type { MetalFamily } from '../../core/facts/metals.ts';
import type { SaltRefusal } from '../../core/facts/salts.ts';
import { plain } from './locale.ts';
import type { WhyId } from '../../core/rules/judge-pairing.ts';
import { reasons } from './reasons.ts';
import { withUnit } from './units.ts';
import type { Anion } from '../../core/facts/salts/salt-facts.ts';

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
  bronze: {
    nitrate: 'Copper leaves, tin stays behind as a grey skin.',
    chloride: 'Copper and tin leave together, about twice as fast for the same amp-hours.',
    sulfate: 'Copper leaves cleanly, tin more slowly.',
  },
  nickel: {
    nitrate: 'Nickel covers itself in nitrate: gas instead of a bite.',
    chloride: 'Chloride breaks nickel’s cover: it bites like brass, and nickel goes into the bath.',
    sulfate: 'Nickel covers itself in sulfate: gas instead of a bite.',
  },
  iron: {
    nitrate: 'Steel covers itself in nitrate: gas instead of a bite.',
    chloride: 'Iron leaves cleanly, two electrons an atom; the bath turns to rust.',
    sulfate: 'Steel covers itself in sulfate: gas instead of a bite.',
  },
};

/** Marks that say whether a salt or pairing may be used. */
export const verdictNames = { good: 'Good', 'with care': 'With care', refuse: 'Not this way' } as const;

const isPairing = (why: WhyId): why is `${MetalFamily}-${Anion}` => !Object.hasOwn(reasons, why);

/**
 * The sentence for the `why` of a judgement, about a pairing of metal and bath, or a refused salt or metal.
 */
export function whyText(why: WhyId): string {
  if (isPairing(why)) {
    const [family, anion] = why.split('-') as [MetalFamily, Anion];
    return pairingTexts[family][anion];
  }
  const reason = reasons[why];
  return reason.charAt(0).toUpperCase() + reason.slice(1);
}

const tapChloride = advice.tapChloride.value;

/** Explains why silver etches worse than copper, for makers who wonder at their first silver piece. */
export const silverVersusCopper: readonly { readonly title: string; readonly text: string }[] = [
  {
    title: 'A film',
    text: 'Copper’s salts all dissolve. Of silver’s only the nitrate does: its chloride and sulfate stay on the piece as a film that stops the bite.',
  },
  {
    title: 'Tap water',
    text: `A tap brings chloride. ${withUnit(plain(tapChloride), 'mg')} of it in a litre takes out ${withUnit(plain((tapChloride * atomicWeights.Ag.value) / combining.chloride, 3), 'mg')} of silver as a white cloud that films the piece. Copper does not mind.`,
  },
  {
    title: 'Speed',
    text: 'In table salt copper leaves with one electron an atom, so the same amp-hours take twice as much as in nitrate. Silver has no such short cut: it always takes one electron, and only in nitrate.',
  },
  {
    title: 'The black crust',
    text: 'Old silver baths make ammonia at the plate, and silver with ammonia can explode. Copper baths do not.',
  },
];

/** Why a known salt is not used for a bath, in a sentence. */
export const refusedSaltTexts: Readonly<Record<SaltRefusal, string>> = {
  ammoniumNitrate: 'It feeds fires and explosions, and with silver it makes a crust that can explode.',
  ammonium: 'Ammonium dissolves silver and copper, and with silver it makes a crust that can explode.',
  treatmentOnly: 'It is for treating a used bath, not for etching.',
  poorBath: 'It bites badly, or costs more than it gives.',
  etchant: 'It etches by itself, without current, so no amp-hours can be counted.',
};

/** The care that a salt needs. */
export const saltCareTexts = {
  chlorine: 'Open the window: if the current falls away it can give chlorine.',
  film: 'Stop often and brush the film off.',
} as const;
