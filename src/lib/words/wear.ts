import type { Verdict, Worn, GloveMaterial, ThingId } from '../core/facts/wear.ts';
import { letterMinutes } from '../core/facts/wear.ts';
import { minutes } from '../core/facts/first-aid.ts';

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
};

/** The name on the bottle, where it is another. */
export const otherNames: Readonly<Partial<Record<ThingId, string>>> = {
  'table-salt': 'sodium chloride',
  acetone: 'in most nail-varnish removers',
  'ethyl-acetate': 'ethyl acetate',
  isopropanol: 'isopropanol',
  ethanol: 'ethanol',
  lye: 'sodium hydroxide, drain cleaner, film stripper',
  'soda-ash': 'sodium carbonate',
  'silver-bath': 'nitrate bath with silver dissolved in it',
};

export const groupNames: Readonly<Record<Worn['group'], string>> = {
  salt: 'Salts, dry',
  bath: 'Baths',
  solvent: 'Solvents',
  helper: 'Other jars',
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

/** One line under the gloves. */
export const handTexts: Readonly<Record<Worn['group'], string>> = {
  salt: 'Whole and dry inside. Blow into each: a hole shows. Allergic to latex: nitrile.',
  bath: 'Change them when wet inside. Keep them off face, phone and door: the salts dry on.',
  solvent: `Look for the letter on the box: B for acetone, I for ethyl acetate. It stands for at least ${letterMinutes.value} minutes. Two pairs slow a solvent and do not stop it. Off at once when wetted.`,
  helper: 'Long cuffs. Rinse before you take them off.',
};

export const eyeTexts: Readonly<Record<Worn['eyes'], string>> = {
  goggles: 'Splash goggles with covered vents: “3” on the frame, or “D3”. Spectacles do not count.',
  'goggles-mist':
    'Splash goggles with covered vents: “3” on the frame, or “D3”. Bubbles throw a fine mist of salt.',
  'goggles-and-shield':
    'Splash goggles: “3” on the frame, or “D3”. A face shield over them from 5 % up: lye blinds.',
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
  mild: [rinse, 'Skin: rinse.', 'Swallowed: rinse the mouth.'],
};

export const pictogramWords = {
  GHS02: 'flame: it catches fire',
  GHS03: 'flame over circle: it feeds fire',
  GHS05: 'corrosion: it burns eyes or skin',
  GHS07: 'exclamation mark: harmful or irritating',
  GHS09: 'environment: it kills life in water',
} as const;

export const labelWins =
  'The label or data sheet of your own bottle wins over this page. Makers change what is inside.';
export const unclassified = 'No hazard class for the dry salt.';
export const usedBathNote =
  'Shown: the worst salt of the metal in it, as if dry. A weak bath is milder; a dried one is not.';
