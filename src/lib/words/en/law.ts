import { lawAmounts, lawFor, lawLines, lawRead } from '../../core/facts/law.ts';
import type { LawEffect, LawId, LawLine, LawTopic } from '../../core/facts/law.ts';
import { cadmium, hallmarkFrom, lead, nickelRelease } from '../../core/facts/selling.ts';
import { plain } from './locale.ts';
import { datumText } from './units.ts';

/** Shown with every line of law, wherever it appears. */
export const checkYourCountry = `Read ${lawRead}. Laws change and differ: check your country.`;

/** What a line of law demands of the maker. */
export const effectWords: Readonly<Record<LawEffect, string>> = {
  closed: 'Closed to the public',
  licence: 'Only with a licence',
  reported: 'Sales are watched',
  limit: 'Limit',
  duty: 'Duty',
  free: 'No limit found',
};

/** Each line of law by its id, in a sentence or two. */
export const lawTexts: Readonly<Record<LawId, string>> = {
  'eu-ammonium-nitrate': `European Union: the public may not buy or hold ammonium nitrate with ${datumText(lawAmounts.precursorNitrogen)} nitrogen or more.`,
  'eu-reported': `European Union: anyone may buy sodium nitrate, potassium nitrate and acetone. Sellers report odd sales; report a theft or a loss within ${plain(lawAmounts.reportWithin.value)} hours.`,
  'gb-licence': `Great Britain: ammonium nitrate with ${datumText(lawAmounts.licensedNitrogen)} nitrogen or more needs a licence.`,
  'gb-reported':
    'Great Britain: sodium nitrate, potassium nitrate and acetone may be bought. Sellers report odd sales, thefts and losses.',
  'ni-as-eu': 'Northern Ireland follows the rules of the European Union.',
  'dk-nitrates': `Denmark: the public may not buy, import, hold or use nitrates of more than ${datumText(lawAmounts.denmarkNitrate)}, sodium and potassium nitrate among them.`,
  'us-nitrates':
    'United States: no federal limit on a private buyer was found. States and cities may have one.',
  'eu-nickel': `European Union: a piece in long contact with skin may give off at most ${plain(nickelRelease.skin.value)} μg of nickel per cm² a week, a post in a piercing ${plain(nickelRelease.post.value)}. An etched face gives off more than a smooth one.`,
  'eu-lead': `European Union: jewellery holds less than ${datumText(lead)} of lead in any part. Leaded brass holds fifty times that. Things for children have stricter limits.`,
  'eu-cadmium': `European Union: jewellery holds less than ${datumText(cadmium)} of cadmium. Old silver solder can hold a fifth.`,
  'gb-hallmark': `United Kingdom: silver of ${datumText(hallmarkFrom.silver)} or more must be hallmarked to be sold as silver; gold from ${datumText(hallmarkFrom.gold)}. Etching takes metal off: weigh afterwards.`,
  'never-bite-a-mark': 'Mask hallmarks and makers’ marks. To alter one is an offence in many countries.',
  coins: 'Some countries forbid defacing their coins.',
  'teach-adult': 'One adult starts and stops every supply. Nobody under age mixes salts or handles solvents.',
  'teach-expectant':
    'Nobody who is or may be pregnant works with leaded brass, nickel silver or their baths.',
  'teach-venue': 'Ask the venue and the insurer first: water, a window, a hand-over for waste, first aid.',
  'eu-household':
    'European Union: your town must collect hazardous household waste separately. Hand baths over there.',
  'no-drain': 'Bath, first rinse and sludge never go down a drain, thinned or not.',
};

/** One line of law with all texts to show it. */
export interface LawText extends LawLine<LawId> {
  readonly effectWord: string;
  readonly text: string;
}

/**
 * Lines for a page or a paper, the most serious effect first.
 * @param country ISO 3166 alpha-2; null when not known: the lines of all countries, the strictest reading
 */
export function lawShown(topic: LawTopic, country: string | null, about?: string): LawText[] {
  const order = Object.keys(effectWords);
  return lawFor(topic, country, about)
    .map((line) => ({ ...line, effectWord: effectWords[line.effect], text: lawTexts[line.id] }))
    .sort((a, b) => order.indexOf(a.effect) - order.indexOf(b.effect));
}

/** Ids that must each have a text. */
export const lawIds: readonly LawId[] = lawLines.map(({ id }) => id);
