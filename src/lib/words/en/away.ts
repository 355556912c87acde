import type { Away, Held, NeverTreat } from '../../core/plan/away.ts';
import type { Use } from '../../core/cell/setup.ts';
import type { WasteStream } from '../../core/facts/waste-codes.ts';
import { advice } from '../../core/facts/advice.ts';
import { plain } from './locale.ts';
import { elementNames } from './materials.ts';
import { saltWord } from './shelf.ts';
import { storedText } from './stored-text.ts';
import { converted } from '../../core/units/convert.ts';
import { withUnit } from './units.ts';

/** @param symbol of a metal in the record of a bath */
export const elementWord = (symbol: string): string => storedText(elementNames, symbol);

/** Where a bath may go: be kept, or be handed over. */
export const awayTexts = {
  link: 'Keep it or hand it over: what to do',
  title: 'Keep it or hand it over',
  gone: 'That bath is not on the shelf of this browser.',
  holds: 'What it holds',
  of: (name: string): string => `${name}: keep it or hand it over`,
  trouble: (why: string): string => `Not read or written: ${why}`,
  law: 'What the law asks',
  holdsNone: 'Nothing was counted yet.',
  scale:
    'For scale, not a pouring limit: United States rule 40 CFR 261.24 calls liquid waste toxic from this much. Copper, zinc and nickel are not listed there, but do harm in water all the same.',
  look: 'Before you close it',
  lookHint: 'Smell with a hand, waving towards you. Dip pH paper, if you have some.',
  worn: 'How old it is',
  signs: 'Colour and smell',
  keep: 'Keep it',
  handOver: 'Hand it over, untreated',
  ask: 'Ask your local service',
  authority: 'Who takes it here',
  authorityHint: 'Saved once, for every bath. Name, phone, opening hours.',
  codes: 'Codes a collector may use',
  codesHint: 'A star means hazardous. The collector decides. Codes of the European List of Waste.',
  treat: 'Treat it first?',
  treatDefault:
    'No: hand it over as it is. Treating at home gathers the metal, and what is left is still waste. Doses show only when your authority has said that you may.',
  allow: 'My authority allows it',
  allowHint: 'Write who said so, and when.',
  allowed: 'Your authority’s word',
  withdraw: 'Take it back',
  never: 'This bath is never treated:',
  lookFirst: 'First say what you see and smell, at the top. No dose while it may hold ammonia.',
  nothingToTreat: 'No metal was counted that a dose could take out.',
  cementing:
    'Cementing: copper settles on steel wool, silver on copper, within a day. The other metal goes into the water, gram for gram. It is a job for licensed works: no dose is given here.',
  streams: 'What else holds metal',
  lost: 'Silver in it',
  price: 'Price of a gram of silver',
  priceHint: 'in your own money',
  priceUnit: 'a gram',
  change: 'Change it',
  print: 'Print this page',
} as const;

/** Columns of the table of what a bath holds. */
export const heldColumns = [
  { id: 'element', label: 'Metal', isHead: true },
  { id: 'mgPerLitre', label: 'mg/L' },
  { id: 'mg', label: 'g' },
  { id: 'line', label: 'For scale' },
] as const;
export type HeldRow = Readonly<Record<(typeof heldColumns)[number]['id'], string>>;

export const heldCaption = (volumeMl: number): string => `In ${withUnit(plain(volumeMl, 3), 'mL')}, at most`;

/** One metal of a bath, with a text for each column. */
export const heldRow = ({ element, mg, mgPerLitre, line }: Held): HeldRow => ({
  element: elementWord(element),
  mgPerLitre: plain(mgPerLitre, 2),
  mg: plain(converted(mg, 'mg', 'g'), 2),
  line: line ? withUnit(plain(line.limit.value), 'mg/L') : 'not listed',
});

/** US waste codes of metals at or above their limit: "D011 silver (from memory)". */
export const americanCodes = (held: readonly Held[]): readonly string[] =>
  held.flatMap(({ element, mgPerLitre, line }) =>
    line && mgPerLitre >= line.limit.value
      ? [
          `${line.code.text} ${elementWord(element)}${line.code.evidence === 'fromMemory' ? ' (from memory)' : ''}`,
        ]
      : [],
  );

export const americanText = (codes: readonly string[]): string =>
  `United States, businesses: ${codes.join(', ')}.`;

/** Grams of silver, what they would sell for, and where the money goes. */
export const silverText = (grams: number, worth: number | null): string =>
  `At most ${withUnit(plain(grams, 3), 'g')}${worth === null ? '' : `: ${worth.toFixed(2)}`}. A refiner pays for sludge and moss, minus a fee.`;

export const priceFault = (typed: string): string =>
  `${awayTexts.price}: found ${typed}, expected a number such as 1.20.`;

/** What can be seen and smelt over a silver nitrate bath. */
export const ammoniaLooks = {
  clear: {
    label: `No smell, no crust, pH below ${plain(advice.ammoniaPH.value)}`,
    hint: 'or no pH paper, and no smell at all',
  },
  smells: { label: `It smells of ammonia, or pH is ${plain(advice.ammoniaPH.value)} or more`, hint: '' },
  unsure: { label: 'Not sure', hint: 'blocked nose, other smells about' },
  crust: { label: 'Black crust, mirror or dark scum', hint: '' },
} as const;
export type AmmoniaLook = keyof typeof ammoniaLooks;

/** What to do after each of these observations. */
export const ammoniaActs: Readonly<
  Record<AmmoniaLook, { readonly signal: 'DANGER' | 'WARNING' | 'NOTICE'; readonly text: string }>
> = {
  clear: { signal: 'NOTICE', text: 'You may close it. Look again each time you open it.' },
  smells: {
    signal: 'WARNING',
    text: 'Do not screw it shut, dry or treat it. Lid laid on loosely, outdoors or at an open window, away from people and acids. Call the collection: say silver and ammonia.',
  },
  unsure: {
    signal: 'WARNING',
    text: 'Leave the lid loose for tonight, outdoors or at an open window. Ask somebody with a fresh nose, or get pH paper. Until then do not screw it shut, dry or treat it.',
  },
  crust: {
    signal: 'DANGER',
    text: 'It may explode at a touch. Do not close, move, dry, scrape, shake or treat it. Keep people away. Call the collection or the fire service.',
  },
};

/** Why the app never offers to treat a bath. */
export const neverTreatTexts: Readonly<Record<NeverTreat, string>> = {
  chromium: 'it holds chromium, which can be chromate: a poison that causes cancer.',
  nickel: 'it holds nickel: its sludge causes cancer as dust and sets off allergy.',
  ammonium: 'ammonium keeps the metal dissolved, and soda ash would set ammonia free.',
  citrate: 'citrate keeps the metal dissolved, whatever is added.',
  lead: 'it holds lead, which harms the unborn and the brain; sludge would hold all of it.',
  'metal-salt': 'its own salt is a metal’s: there is far more metal in it than any job put in.',
  'silver-in-chloride': 'so much chloride keeps silver dissolved, whatever is added.',
  mixed: 'it holds a metal of another group: no one dose takes both.',
  unknown: 'nobody knows what is in it.',
};

export const keepLines: readonly string[] = [
  'A jar of thick plastic with a screw lid, never one that held food or drink. A finger’s width of air on top.',
  'Upright, in a tray that holds all of it. Locked away from children, pets, food and frost.',
  'Apart from acids, ammonia, bleach and solvents, and from the other metal groups’ jars.',
  'Wipe dried salt off the rim with a damp towel; it goes with the towels below.',
];

export const handOverLines: readonly string[] = [
  'Ask first, then bring it. Do not thin it, boil it down, or mix baths.',
  'In its own jar: sealed, not full to the brim. The label says salt, metal, dates, and the hazards.',
  'In the car: upright, in a second container with towels around it, not in the seat row. No bus, no post.',
  'Say what it holds. Stay until somebody has taken it from you. Write down who.',
];

/** Questions for the waste service, filled in for this bath. */
export function askLines(salt: string, volumeMl: number, held: readonly Held[], use: Use): readonly string[] {
  const metals = held.map(({ element }) => elementWord(element)).join(', ') || 'no metal yet';
  const from = { home: 'from home', selling: 'from a small business', teaching: 'from a class' }[use];
  return [
    `“Do you take ${withUnit(plain(volumeMl, 2), 'mL')} of used etching bath ${from}: water with ${saltWord(salt)}, and dissolved ${metals}?”`,
    '“Untreated, in a plastic jar? What must be on its label?”',
    '“When and where, and what does it cost?”',
    '“Do you take towels, gloves and filters with traces of it too?”',
  ];
}

/** Other waste that holds metal. */
export const streamLines: readonly { readonly name: string; readonly text: string }[] = [
  {
    name: 'Rinse water',
    text: 'Two still tubs, then the tap. The first tub tops up the bath; the second becomes the next first. Neither is poured away.',
  },
  {
    name: 'Filters and sludge',
    text: 'Damp, in a closed jar with the bath’s label. Never dried, never scraped out.',
  },
  {
    name: 'Towels wet with nitrate',
    text: 'Rinse them in the first tub, then into a bag, wet. Dried nitrate on paper catches fire.',
  },
  { name: 'Gloves', text: 'Rinsed on the hand in the first tub, then into the bag with the towels.' },
  {
    name: 'Swabs with solvent',
    text: 'Into a metal tin with a lid, apart from all nitrate. Its own collection.',
  },
  {
    name: 'Grey moss off the plate',
    text: 'It is metal, silver from a silver bath: keep it damp in a jar, for a refiner.',
  },
];

export const streamNames: Readonly<Record<WasteStream, string>> = {
  bath: 'bath',
  rinse: 'rinse water',
  sludge: 'sludge',
  wipes: 'towels, filters, gloves',
  solvent: 'solvent, swabs',
  'dry-nitrate': 'dry nitrate salt',
};

/** How to add a dose, step by step; empty without a dose. */
export function doseSteps(dose: NonNullable<Away['dose']>): readonly string[] {
  const grams = (value: number): string => withUnit(plain(value, 3), 'g');
  const end = [
    'Leave it overnight. Pour the clear liquid through a coffee filter into a second jar.',
    'Sludge and filter stay damp, in a jar of their own with a label. The clear liquid is still waste: hand both over.',
  ];
  if (dose.reagent === 'NaCl') {
    return [
      'Goggles, gloves, window open. No ammonia, no hypo: they dissolve silver again.',
      `Dissolve ${grams(dose.grams)} of table salt in a little water. Stir it in. A white cloud falls: silver chloride, about ${grams(dose.sludge)}.`,
      `Never more than ${grams(dose.most)} in all: too much salt dissolves the silver again.`,
      'Keep it dark. Add a drop of salt water to a spoonful of the clear liquid: no cloud, done.',
      ...end,
    ];
  }
  const { uncertainty } = dose.window ?? { uncertainty: { kind: 'notStated' } as const };
  const pH = uncertainty.kind === 'band' ? `${plain(uncertainty.low)} to ${plain(uncertainty.high)}` : '';
  return [
    'Goggles, gloves, window open. A big tub: it foams. No lye, no acid.',
    `Dissolve about ${grams(dose.grams)} of soda ash in water. Add it a spoonful at a time, stirring.`,
    `Dip pH paper after each spoonful. Stop at pH ${pH}, even if soda ash is left. Never more than ${grams(dose.most)}: a clear blue liquid means too much.`,
    `Sludge settles, about ${grams(dose.sludge)} if it were dry.`,
    ...end,
  ];
}

/** What a bath looks and smells like, and what that means. */
export const signLines: readonly string[] = [
  'Blue or green: copper is in it. Usual.',
  'White cloud over silver: chloride got in, from tap water or salt. The bite slows; hand it over.',
  'Rust brown mud: iron, from clips or a steel plate. Let it settle.',
  'Yellow, clear: may be chromate from stainless steel. Do not touch it: Help, “My bath went yellow”.',
  'Black specks or grey moss in a silver bath: silver off the plate. A black crust or mirror is different: touch nothing.',
  'Pool smell: chlorine. Leave, air the room. Ammonia smell: keep silver away from it.',
];

/** Said on the shelf about a bath that is worn out. */
export const wornMark = 'Worn: retire it, hand it over.';

/** Age of a bath, measured by the charge that has passed through it. */
export function wornText({ worn }: Away, perLitre: number): string {
  const charge = (value: number): string => withUnit(plain(value, 2), worn.limit.unit);
  const [used, limit] = [charge(perLitre), charge(worn.limit.value)];
  return worn.isWorn
    ? `It has passed ${used}; the limit is ${limit}. Do not use it again: hand it over.`
    : `It has passed ${used} of ${limit}. Retire it at the limit, however it looks; sooner when the bite turns patchy, the liquid cloudy, or the smell strange. The limit is common practice, no source.`;
}
