import { advice } from '../../core/facts/advice.ts';
import type { Glove, Verdict, Worn, GloveMaterial, ThingId } from '../../core/facts/wear.ts';
import { letterMinutes } from '../../core/facts/wear.ts';
import { minutes } from '../../core/facts/first-aid.ts';
import { datumText, withUnit } from './units.ts';

/** Names of what may be open at the bench. */
export const thingNames: Readonly<Record<ThingId, string>> = {
  'sodium-nitrate': 'Sodium nitrate',
  'potassium-nitrate': 'Potassium nitrate',
  'table-salt': 'Table salt',
  'copper-sulfate': 'Copper sulfate, blue',
  'sodium-sulfate': 'Sodium sulfate',
  'silver-bath': 'Silver bath, used',
  'copper-bath': 'Copper or brass bath, used',
  'salt-water-bath': 'Salt-water bath, running',
  acetone: 'Acetone',
  'ethyl-acetate': 'Acetone-free remover',
  isopropanol: 'Rubbing alcohol',
  ethanol: 'Spirit, denatured alcohol',
  lye: 'Lye',
  'soda-ash': 'Soda ash',
  'potassium-chloride': 'Potassium chloride',
  'potassium-sulfate': 'Potassium sulfate',
  'ammonium-nitrate': 'Ammonium nitrate',
  'ammonium-chloride': 'Ammonium chloride',
  'ammonium-sulfate': 'Ammonium sulfate',
  'copper-nitrate': 'Copper nitrate',
  'zinc-sulfate': 'Zinc sulfate',
  'silver-nitrate': 'Silver nitrate',
  'iron-chloride': 'Iron(III) chloride',
  'baking-soda': 'Baking soda',
  'citric-acid': 'Citric acid',
  'sodium-citrate': 'Sodium citrate',
  'sodium-acetate': 'Sodium acetate',
  thiosulfate: 'Sodium thiosulfate',
  'epsom-salt': 'Epsom salt',
  'leaded-brass-bath': 'Leaded brass bath, used',
  'nickel-bath': 'Nickel silver bath, used',
  'iron-bath': 'Steel bath, used',
  'yellow-bath': 'Yellow bath',
  'white-spirit': 'White spirit',
  chlorine: 'Chlorine',
  hydrogen: 'Hydrogen',
  ammonia: 'Ammonia',
  'brown-gas': 'Brown gas',
  hypochlorite: 'Bleach in an old salt-water bath',
  chlorate: 'Crust of an old salt-water bath',
  nitrite: 'Crust of an old nitrate bath',
  'silver-chloride': 'White sludge from silver',
  'copper-sludge': 'Blue sludge',
  'green-sludge': 'Green sludge',
  'white-film': 'White film on copper',
  'nickel-sludge': 'Sludge from nickel silver',
};

/** The name on the bottle, where it differs. */
export const otherNames: Readonly<Partial<Record<ThingId, string>>> = {
  'table-salt': 'sodium chloride',
  acetone: 'in most nail-varnish removers',
  'ethyl-acetate': 'ethyl acetate',
  isopropanol: 'isopropanol',
  ethanol: 'ethanol',
  lye: 'sodium hydroxide, drain cleaner, film stripper',
  'soda-ash': 'sodium carbonate',
  'silver-bath': 'nitrate bath with silver dissolved in it',
  'baking-soda': 'sodium hydrogen carbonate',
  thiosulfate: 'hypo, photo fixer',
  'epsom-salt': 'magnesium sulfate',
  'iron-chloride': 'ferric chloride',
  'yellow-bath': 'may hold chromate from stainless steel',
  'white-spirit': 'mineral spirit, turpentine substitute',
  chlorine: 'swimming-pool smell',
  'brown-gas': 'nitrogen dioxide: nitrate with acid, or a nitrate fire',
  hypochlorite: 'sodium hypochlorite',
  chlorate: 'sodium chlorate',
  nitrite: 'sodium nitrite',
  'silver-chloride': 'silver chloride, turns violet in light',
  'copper-sludge': 'copper hydroxide',
  'green-sludge': 'copper carbonate',
  'white-film': 'copper(I) chloride',
  'nickel-sludge': 'nickel hydroxide',
};

export const groupNames: Readonly<Record<Worn['group'], string>> = {
  salt: 'Salts, dry',
  bath: 'Baths',
  solvent: 'Solvents',
  helper: 'Other jars',
  product: 'What a bath makes',
};

export const materialNames: Readonly<Record<GloveMaterial, string>> = {
  'nitrile-thin': 'Thin nitrile, disposable',
  'nitrile-thick': 'Thick nitrile, reusable',
  'natural-rubber': 'Natural rubber, latex',
  neoprene: 'Neoprene',
  pvc: 'PVC, vinyl',
  butyl: 'Butyl rubber',
  laminate: 'Laminate, PE/EVOH',
  pva: 'PVA',
};

export const verdictWords: Readonly<Record<Verdict, string>> = {
  wear: 'Wear',
  splash: 'Only for a splash, then off',
  never: 'Not this',
};

/** A line shown below the gloves. */
export const handTexts: Readonly<Record<Worn['group'], string>> = {
  salt: 'Whole and dry inside. Blow into each: a hole shows. Allergic to latex: nitrile.',
  bath: 'Change them when wet inside. Keep them off face, phone and door: the salts dry on.',
  solvent: `Look for the letter on the box: B for acetone, I for ethyl acetate. It stands for at least ${letterMinutes.value} minutes. Two pairs slow a solvent and do not stop it. Off at once when wetted.`,
  helper: 'Long cuffs. Rinse before you take them off.',
  product: 'Whole gloves, off as soon as you are done. Wash hands after.',
};

export const eyeTexts: Readonly<Record<Worn['eyes'], string>> = {
  goggles: 'Splash goggles with covered vents: “3” on the frame, or “D3”. Spectacles do not count.',
  'goggles-mist':
    'Splash goggles with covered vents: “3” on the frame, or “D3”. Bubbles throw a fine mist of salt.',
  'goggles-and-shield': `Splash goggles: “3” on the frame, or “D3”. A face shield over them from ${datumText(advice.shieldFrom)} up: lye blinds.`,
};

export const bodyTexts: Readonly<Record<Worn['body'], string>> = {
  apron: 'Apron, long sleeves, closed shoes. Rings and watch off.',
  cotton: 'Cotton apron, closed shoes. No fleece: it sparks and melts.',
  waterproof: 'Waterproof apron, sleeves over the cuffs, closed shoes.',
};

export const airTexts: Readonly<Record<Worn['air'], string>> = {
  'no-dust': 'Usual room air. Pour slowly, raise no dust.',
  'open-bath': 'Tub open, window open, no flame above: the bath gives hydrogen.',
  chlorine:
    'Outdoors, or a hood that blows out. You smell a swimming pool: current off, leave, air the room. No mask makes up for it.',
  vapour:
    'Outdoors or at an open window. No flame, no spark, no bath running: the vapour burns and creeps along the floor. A dust mask stops no vapour.',
  leave: 'Current off, leave, air the room from outside. No mask makes up for it; a dust mask stops no gas.',
  damp: 'Usual room air while it is wet. Keep it damp: its dust is worse than the mud.',
  'handed-over': 'Do not use, treat or smell it. Close the jar, label it, hand it over.',
  still: 'Usual room air. Keep aluminium and zinc away: they give hydrogen.',
};

const rinse = `Eye: rinse ${minutes.rinseEye.value} minutes.`;
export const aidTexts: Readonly<Record<Worn['aid'], readonly string[]>> = {
  irritant: [rinse, 'Skin: rinse.', 'Swallowed: rinse the mouth, call the poison centre.'],
  oxidiser: [
    rinse,
    'Skin: rinse. Soak clothes wet with it: dry, they burn like tinder.',
    'Swallowed: rinse the mouth, poison centre. Blue lips: emergency number.',
  ],
  metal: [
    `${rinse} Then an eye doctor.`,
    `Skin: rinse ${minutes.rinseSkin.value} minutes.`,
    'Swallowed: rinse the mouth, poison centre.',
  ],
  silver: [
    `${rinse} Then an eye doctor.`,
    `Skin: rinse ${minutes.rinseSkin.value} minutes. The black stain wears off.`,
    'Swallowed: rinse the mouth, poison centre.',
  ],
  solvent: [
    rinse,
    'Skin: soap and water.',
    'Breathed in, dizzy: fresh air.',
    'Swallowed: no vomiting, poison centre.',
  ],
  lye: [
    `Eye: rinse ${minutes.rinseEyeLye.value} minutes, emergency number.`,
    `Skin: wet clothes off, rinse until it no longer feels like soap, then ${minutes.rinseSkin.value} minutes more.`,
    'Swallowed: no vomiting, emergency number.',
  ],
  gas: [
    'Breathed in: fresh air, sit upright, keep still. Blue lips or short breath: emergency number.',
    'Cough that comes later: a doctor the same day.',
    rinse,
  ],
  nickel: [
    `${rinse} Then an eye doctor.`,
    'Skin: wash at once. A rash: stop, show it to a doctor, say “nickel”.',
    'Swallowed: emergency number.',
  ],
  poison: [
    `${rinse} Then an eye doctor.`,
    `Skin: clothes off, rinse ${minutes.rinseSkin.value} minutes.`,
    'Swallowed: emergency number. Blue lips: say “nitrite”.',
  ],
  mild: [rinse, 'Skin: rinse.', 'Swallowed: rinse the mouth.'],
};

export const pictogramWords = {
  GHS02: 'flame: it catches fire',
  GHS03: 'flame over circle: it feeds fire',
  GHS05: 'corrosion: it burns eyes or skin',
  GHS06: 'skull: it can kill in small amounts',
  GHS07: 'exclamation mark: harmful or irritating',
  GHS08: 'person with a star: it harms over time, or brings on allergy of the airways',
  GHS09: 'environment: it kills life in water',
} as const;

export const labelWins =
  'The label or data sheet of your own bottle wins over this page. Makers change what is inside.';
export const unclassified = 'No hazard class for the dry salt.';
export const usedBathNote =
  'Shown: the worst salt of the metal in it, as if dry. A weak bath is milder; a dried one is not.';

/** Texts of the pages about what to wear. */
export const wearTexts = {
  title: 'What to wear',
  ask: 'What is in front of you?',
  hands: 'Hands',
  eyes: 'Eyes',
  body: 'Body',
  air: 'Air',
  aid: 'First aid',
  label: 'On its label',
  from: 'Where this comes from',
  inACopy: ', read in a copy',
  other: 'Something else',
  unknown: 'Nothing is known of that here.',
} as const;

/** "through in about 10 min" or "holds 480 min and more"; null where nobody has measured it. */
export function gloveTime({ breakthrough, verdict }: Glove): string | null {
  if (breakthrough === null) return null;
  const { value, uncertainty } = breakthrough;
  const time = withUnit(String(value), 'min');
  if (uncertainty.kind === 'band' && uncertainty.low === 0) return `through in under ${time}`;
  return verdict === 'wear' ? `holds ${time} and more` : `through in about ${time}`;
}
