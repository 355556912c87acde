import { nickelRelease } from '../../core/facts/selling.ts';
import type { ReasonId } from '../../core/rules/term.ts';
import { plain } from './locale.ts';

/**
 * Clauses that fill blanks in the texts of rules: why a metal, salt or plate is refused, and what to do
 * instead.
 */
export const reasons: Readonly<Record<ReasonId, string>> = {
  'stock-gold': 'these salts do not dissolve gold, and losing any is costly.',
  'stock-chromiumBearing': 'on the + side its chromium leaves as chromate, a poison that causes cancer.',
  'stock-noData': 'there are no tables for it, and a guess would be worse than no plan.',
  'stock-plated': 'the bite goes through a thin skin into an unknown metal.',
  'stock-galvanised': 'its zinc fizzes off first, and old coats hold chromate or cadmium.',
  'stock-unknownStock': 'what comes off it cannot be known, and may be poison.',
  'stock-unknownYellow': 'yellow metal can be plated steel, or brass with lead.',
  'stock-unknownWhite':
    'white metal can be stainless steel, whose bath turns poisonous, nickel, aluminium or plate.',
  'stock-cadmium': 'old silver solder can hold cadmium, whose fumes and salts are deadly.',
  'stock-oxide': 'its own oxide stops the current before it bites.',
  'stock-pits': 'salt water pits it deep and uneven, and it goes on giving off gas when the current is off.',
  'way-gold': 'Etch silver, copper or brass, and gild after.',
  'way-plated': 'Use bare sheet whose alloy you know.',
  'way-galvanised': 'Use bare sheet: copper, brass, or plain steel without a coat.',
  'way-unknownStock': 'Find its name on the bill or the sheet’s edge, or take sheet whose alloy you know.',
  'way-unknownYellow':
    'Hold a magnet to it: if it sticks, do not etch it. Scratch it deep on the back: white, grey or red below is plated, do not etch it. Yellow all through: plan it as leaded brass C360, with lead’s cautions, and do not sell it.',
  'way-unknownWhite':
    'Hold a magnet to it: if it sticks, it is steel or nickel. Look for a stamp of its fineness, as on the tiles: silver has one. Scratch it deep on the back: yellow or red below is plated. Without a stamp have a jeweller or an assay office test it.',
  'film-knobs': 'use fewer amps.',
  'film-fixed': 'a wider gap, or a supply of fewer volts, bites gentler.',
  'way-cadmium': 'Cut the seam away, or take a piece soldered with solder you know is free of cadmium.',
  'way-oxide': 'It takes colour from current instead of a bite. For etching take silver, copper or brass.',
  'way-pits': 'Etch silver, copper or brass; stamp or engrave aluminium.',
  'salt-ammonium': 'Ammonium dissolves silver and copper, and with silver it makes a crust that can explode.',
  'salt-ammoniumNitrate': 'It feeds fires and explosions.',
  'salt-treatmentOnly': 'It is for treating a used bath, not for etching.',
  'salt-poorBath': 'It bites badly, or costs more than it gives.',
  'salt-etchant': 'It etches by itself, without current, so no amp-hours can be counted.',
  'plate-alkali': 'the plate makes lye, and lye dissolves it with hydrogen.',
  'plate-chromiumSkin': 'its chromium can reach the bath when clips are swapped.',
  'plate-foreign': 'with the current off it gives off its own metal into the bath.',
  'plate-unknown': 'nobody knows what it gives off.',
  'nickel-home': 'Wear it over cloth, not on skin.',
  'nickel-selling': `For sale it must be tested: at most ${plain(nickelRelease.skin.value)} μg/cm² a week on skin, ${plain(nickelRelease.post.value)} in a piercing (EU). Check your country.`,
  'nickel-teaching': 'Ask who has a nickel rash before the class.',
  'sale-silver':
    'For sale: never bite a hallmark or a coin, and weigh after etching: the finished weight decides whether it needs a hallmark. Check your country.',
  'sale-other': 'For sale: name the metal as it is, and check your country for lead, nickel and cadmium.',
  'pickle-nitrate':
    'Rinse off every trace of bath before any pickle: nitrate in hot acid gives brown poison gas. No liver of sulphur near acid.',
  'pickle-chloride':
    'Rinse off every trace of bath before any pickle or vinegar: used salt water with acid gives chlorine. No liver of sulphur near acid.',
  'resist-hot':
    'A hot iron or plate burns: gloves for heat, a stand for the iron, nothing wet near, least of all with solvent.',
  'resist-light': 'Light that hardens the film hurts eyes and skin: lamp under a cover, do not look in.',
};
