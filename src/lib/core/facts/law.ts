import type { UnitId } from '../units/convert.ts';
import type { Datum } from './datum.ts';
import type { Backing } from './first-aid.ts';

/**
 * When these lines were last compared with their sources. Laws change, so every use adds "check your
 * country".
 */
export const lawRead = '2026-11';

export type LawTopic = 'buying' | 'selling' | 'teaching' | 'waste';
/** Where a line applies: a country, the European Union, Great Britain, Northern Ireland, or everywhere. */
export type LawPlace = 'EU' | 'GB' | 'NI' | 'DK' | 'US' | 'any';

/**
 * What a line says: closed to the public; licence needed; sales watched and losses to be reported; a limit on
 * what may be sold; a duty; or that no restriction was found.
 */
export type LawEffect = 'closed' | 'licence' | 'reported' | 'limit' | 'duty' | 'free';

/** One line of law or of good practice. Its text is in the words room under the same id. */
export interface LawLine<Id extends string = string> extends Backing {
  readonly id: Id;
  readonly topic: LawTopic;
  readonly place: LawPlace;
  readonly effect: LawEffect;
  /** ids of the salts, solvents and metals that the line is about */
  readonly about: readonly string[];
}

const line = <const Id extends string>(
  id: Id,
  topic: LawTopic,
  place: LawPlace,
  effect: LawEffect,
  about: readonly string[],
  backing: Backing,
): LawLine<Id> => ({ id, topic, place, effect, about, ...backing });

const read = (source: Backing['source'], locator: string) =>
  ({ evidence: 'regulatory', source, locator }) as const;
const recalled = (source: Backing['source'], locator: string) =>
  ({ evidence: 'fromMemory', source, locator }) as const;

const watched = ['NaNO3', 'KNO3', 'acetone'];

export const lawLines = [
  line(
    'eu-ammonium-nitrate',
    'buying',
    'EU',
    'closed',
    ['NH4NO3'],
    read('regulation2019_1148', 'Annex I: 16 % nitrogen or more'),
  ),
  line('eu-reported', 'buying', 'EU', 'reported', watched, read('regulation2019_1148', 'Annex II')),
  line(
    'gb-licence',
    'buying',
    'GB',
    'licence',
    ['NH4NO3'],
    read('poisonsActPart3', 'Part 1, as amended 2023'),
  ),
  line('gb-reported', 'buying', 'GB', 'reported', watched, read('poisonsActPart3', 'Part 3')),
  line(
    'ni-as-eu',
    'buying',
    'NI',
    'reported',
    watched,
    recalled('memory', 'follows Regulation (EU) 2019/1148'),
  ),
  line(
    'dk-nitrates',
    'buying',
    'DK',
    'closed',
    ['NaNO3', 'KNO3', 'NH4NO3'],
    read('denmarkPrecursors', 'section 1: over 90 % nitrate, buying, holding and using'),
  ),
  line(
    'us-nitrates',
    'buying',
    'US',
    'free',
    ['NaNO3', 'KNO3'],
    recalled('memory', 'no federal limit on a private buyer found'),
  ),
  line('eu-nickel', 'selling', 'EU', 'limit', ['C75200'], read('reachNickel', 'entry 27')),
  line('eu-lead', 'selling', 'EU', 'limit', ['C36000', 'unknown-yellow'], recalled('reachLead', 'entry 63')),
  line('eu-cadmium', 'selling', 'EU', 'limit', ['cadmium-solder'], recalled('reachCadmium', 'entry 23')),
  line(
    'gb-hallmark',
    'selling',
    'GB',
    'duty',
    ['sterling-925', 'fine-silver-999'],
    recalled('hallmarkLaw', 'exemption weights'),
  ),
  line(
    'never-bite-a-mark',
    'selling',
    'any',
    'duty',
    ['sterling-925', 'fine-silver-999', 'coin-900'],
    recalled('hallmarkLaw', 'altering a mark is an offence in many countries'),
  ),
  line(
    'coins',
    'selling',
    'any',
    'duty',
    ['coin-900'],
    recalled('memory', 'defacing coins is restricted in some countries'),
  ),
  line(
    'teach-adult',
    'teaching',
    'any',
    'duty',
    [],
    recalled('teachingPractice', 'an adult starts every supply'),
  ),
  line(
    'teach-expectant',
    'teaching',
    'any',
    'duty',
    ['C36000', 'C75200'],
    recalled('teachingPractice', 'lead and nickel salts'),
  ),
  line('teach-venue', 'teaching', 'any', 'duty', [], recalled('teachingPractice', 'venue and insurer')),
  line(
    'eu-household',
    'waste',
    'EU',
    'duty',
    [],
    read('householdWasteEu', 'separate collection of household hazardous waste'),
  ),
  line(
    'no-drain',
    'waste',
    'any',
    'duty',
    [],
    read('sewerLimits', 'dilution instead of treatment is forbidden'),
  ),
];

const exactly = <U extends UnitId>(
  value: number,
  unit: U,
  backing: Backing,
): Datum & { readonly unit: U } => ({
  value,
  unit,
  uncertainty: { kind: 'exact' },
  validFor: {},
  ...backing,
});

/** Amounts named in lines of law. */
export const lawAmounts = {
  precursorNitrogen: exactly(16, '%', read('regulation2019_1148', 'Annex I: ammonium nitrate')),
  licensedNitrogen: exactly(16, '%', read('poisonsActPart3', 'Part 1, as amended 2023')),
  reportWithin: exactly(24, 'h', recalled('regulation2019_1148', 'thefts and losses')),
  denmarkNitrate: exactly(90, '%', read('denmarkPrecursors', 'section 1')),
} as const;
export type LawId = (typeof lawLines)[number]['id'];

const union =
  'AT BE BG CY CZ DE DK EE ES FI FR GR HR HU IE IT LT LU LV MT NL PL PT RO SE SI SK IS LI NO'.split(' ');

/** Places whose lines apply in a country. For an unknown country all places apply, to be on the safe side. */
export function placesOf(country: string | null): readonly LawPlace[] {
  if (country === null) return ['EU', 'GB', 'NI', 'DK', 'US', 'any'];
  const own = (['GB', 'NI', 'DK', 'US'] as const).filter((place) => place === country);
  return [...(union.includes(country) ? (['EU'] as const) : []), ...own, 'any'];
}

/**
 * Lines that apply to a maker.
 * @param country ISO 3166 alpha-2 (`NI` for Northern Ireland); null: not known
 * @param about a salt, solvent or metal id; absent: all of them
 */
export function lawFor(topic: LawTopic, country: string | null, about?: string): readonly LawLine<LawId>[] {
  const places = placesOf(country);
  return lawLines.filter(
    (one) =>
      one.topic === topic &&
      places.includes(one.place) &&
      (about === undefined || one.about.length === 0 || one.about.includes(about)),
  );
}
