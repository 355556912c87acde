import type { Misfit, Remedy } from '../../core/cell/tub.ts';
import type { MetalFamily } from '../../core/facts/metals.ts';
import type { Water } from '../../core/job/choices.ts';
import type { NeverId, SolventId, TermId } from '../../core/rules/term.ts';
import { elementNames, metalNames, saltNames, supplyNames } from './materials.ts';
import { resistNames } from './resists.ts';
import { reasons } from './reasons.ts';

const waterNames: Readonly<Record<Water, string>> = {
  deionised: 'deionised water',
  distilled: 'distilled water',
  rain: 'rain water',
  tap: 'tap water',
};

/** Solvents that remove the resist. Those used near nitrate have ids of their own, for a separate warning. */
const solventNames: Readonly<Record<SolventId, string>> = {
  'white-spirit': 'white spirit',
  'white-spirit-nitrate': 'white spirit',
  acetone: 'acetone',
  alcohol: 'alcohol',
  'acetone-nitrate': 'acetone',
  'alcohol-nitrate': 'alcohol',
};

const misfits: Readonly<Record<Misfit, string>> = {
  tooTall: 'the piece is taller than the liquid is deep',
  tooWide: 'piece or plate is wider than the tub',
  tooLong: 'piece, gap and plate are longer than the tub',
  tooMany: 'the pieces together are larger than the tub’s cross-section',
  crowded: 'the parts would push out more than half of the liquid',
};

/** What would make the parts fit; the amount follows after the text. */
const remedies: Readonly<Record<Remedy['way'], string>> = {
  'fill-to': 'fill this tub to at least',
  'tub-across': 'take a tub with an inside width of at least',
  'tub-long': 'take a tub with an inside length of at least',
  'plate-narrow': 'take a plate no wider than',
  'plate-near': 'bring the plate to within',
  'hang-most': 'pieces to hang at once, at most:',
  'tub-holds': 'fill a larger tub with at least',
};

/** Label on the jar of a metal's bath. */
export const jarNames: Readonly<Record<MetalFamily, string>> = {
  silver: 'SILVER',
  copper: 'COPPER AND BRASS',
  brass: 'COPPER AND BRASS',
  bronze: 'COPPER AND BRASS',
  nickel: 'NICKEL',
  iron: 'IRON',
};

/** What must never get into a bath. */
export const neverTexts: Readonly<Record<NeverId, string>> = {
  'never-silver':
    'Never let a silver bath meet ammonia or ammonium salts: the crust can explode. No acid, no bleach, no paper or solvent left wet with it.',
  'never-nitrate':
    'Never add acid to a nitrate bath: brown poisonous gas. No ammonia, no bleach, no paper, sugar or solvent left wet with it.',
  'never-chloride':
    'Never let a used salt-water bath meet acid, vinegar or bleach: chlorine. No ammonia either.',
  'never-sulfate': 'Never let a copper bath meet ammonia, acid or bleach. No aluminium or zinc in it.',
};

/** The same table with the kind put before each id. */
const under = <Kind extends string, Id extends string>(
  kind: Kind,
  names: Readonly<Record<Id, string>>,
): Readonly<Record<`${Kind}-${Id}`, string>> =>
  Object.fromEntries(Object.entries(names).map(([id, name]) => [`${kind}-${id}`, name])) as Record<
    `${Kind}-${Id}`,
    string
  >;

/** The word for every id that can fill a blank. */
export const terms: Readonly<Record<TermId, string>> = {
  ...metalNames,
  ...saltNames,
  ...resistNames,
  ...under('supply', supplyNames),
  ...under('element', elementNames),
  ...under('water', waterNames),
  ...under('group', jarNames),
  ...solventNames,
  ...misfits,
  ...remedies,
  ...neverTexts,
  ...reasons,
};

/** Whether an id, of any kind, has a word. */
export const isTerm = (id: string): id is TermId => Object.hasOwn(terms, id);
