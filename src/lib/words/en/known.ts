import { advice, tools } from '../../core/facts/advice.ts';
import { home } from './home.ts';
import { datumText } from './units.ts';

/** The pages of known facts: their names, and the question that each answers. */
export const knownTitle = home.known;
export const knownLead = 'Look something up before you mix, buy or sell. Nothing here needs a job.';

export const knownPages = [
  { id: 'pairings', name: 'Pairings', hint: 'Which metal goes with which salt, and why' },
  { id: 'mixing', name: 'Mixing and jars', hint: 'Grams, litres and strengths; a jar without a label' },
  { id: 'law', name: 'Selling and the law', hint: 'What may be bought, sold and taught' },
  { id: 'sources', name: 'Sources', hint: 'Where each fact comes from, and what rests on it' },
] as const;

export type KnownPageId = (typeof knownPages)[number]['id'];

export const knownNames = Object.fromEntries(knownPages.map(({ id, name }) => [id, name])) as Readonly<
  Record<KnownPageId, string>
>;

export const pairingsPage = {
  ask: 'Which metal?',
  others: 'Another metal',
  change: 'Another metal',
  take: 'Take',
  none: 'Nothing here bites it.',
  bench: 'Judged opposite a plate of the same metal, in clean water.',
  whole: 'All metals and salts',
  wholeHint: 'Tap a mark for its sentence.',
  instead: 'Instead',
  versus: 'Why silver is harder to etch than copper',
  cell: (metal: string, salt: string, verdict: string): string => `${metal}, ${salt}: ${verdict}`,
} as const;

export const mixingPage = {
  ask: 'What do you want to know?',
  ways: [
    { value: 'mix', label: 'How much salt and water', hint: 'any two amounts give the rest' },
    { value: 'top', label: 'Top up a bath that dried out', hint: 'only water was lost' },
    { value: 'change', label: 'Make a jar stronger or weaker' },
    {
      value: 'weigh',
      label: 'What a jar of unknown strength holds',
      hint: `weigh ${datumText(advice.sample)} of it`,
    },
  ],
  salt: 'Salt',
  temperature: 'Temperature',
  measured: 'Measured out',
  weighs: 'It weighs',
  full: 'Liquid when it was full',
  inJar: 'Liquid in the jar',
  left: 'Liquid now',
  wanted: 'Wanted: salt per litre of water',
  scale: 'The scale may be off by',
  scales: [
    { value: String(tools.fineScale.value), label: datumText(tools.fineScale) },
    { value: String(tools.scale.value), label: datumText(tools.scale) },
    { value: String(tools.kitchenScale.value), label: `${datumText(tools.kitchenScale)}, a kitchen scale` },
  ],
  vessel: 'The volume may be off by',
  vessels: [
    {
      value: String(tools.cylinder.value),
      label: datumText(tools.cylinder),
      hint: 'a measuring cylinder or a syringe',
    },
    { value: String(tools.jug.value), label: datumText(tools.jug), hint: 'a kitchen jug' },
  ],
  ofSalt: (amount: string): string => `${amount} of salt`,
  ofWater: (amount: string): string => `${amount} of water`,
  two: 'Fill in two: salt or water, and one more.',
  work: 'Work it out',
  result: 'That makes',
  add: 'Add',
  holds: 'It holds',
  range: 'likely',
  refused: 'It makes no bath here:',
  weighHint:
    'Set the scale to zero with the empty cup on it. One salt in clean water only: in a used bath the metal weighs too.',
  errors: 'The range takes what scale and vessel may be off as two standard deviations.',
} as const;

export const mixNames = {
  salt: 'Salt',
  water: 'Water',
  strength: 'Salt per litre of water',
  massPercent: 'Share by mass, water-free salt',
  molarity: 'Moles per litre',
  density: 'Density',
  volume: 'Liquid, in all',
} as const;

/** What a refusal is about, worded to fit into "expected a strength of 0 to 359 g/L". */
export const refusedQuantities = {
  massPercent: 'a share by mass',
  temperature: 'a temperature',
  density: 'a density',
  strength: 'a strength',
} as const;

/** What was found or expected where the mixing page asks for numbers. */
export const mixFaults = {
  number: 'a number',
  above: 'a number above 0',
  twoStrengths: 'two strengths',
  oneStrength: 'the salt or the water, and one strength',
  changes: 'a value that changes something',
  known: 'a salt whose table is known here',
  two: 'two: salt or water, and one more',
  filled: (count: number): string =>
    count === 0 ? 'no field filled in' : `${String(count)} fields filled in`,
  /** @param what name of a quantity that was not typed itself; empty for one that was */
  within: (what: string, least: string, most: string, nearest: string): string =>
    `${what === '' ? '' : `${what} of `}${least} to ${most}; the nearest is ${nearest}`,
} as const;

export const sourcesPage = {
  lead: 'Each source, how it was read, and the facts, rules and figures that name it.',
  open: 'Open it on the web',
  rules: 'Rules',
  figures: 'Figures',
} as const;

export const lawPage = {
  sell: 'Can I sell this?',
  country: 'Country',
  countryHint: 'Its name, or two letters such as NZ. Left empty, every country’s lines show.',
  countryFault: (found: string): string =>
    `Country: ${found} found; its name is expected, or two letters such as NZ.`,
  none: 'No line found for it here.',
  topics: [
    { id: 'selling', name: 'Selling' },
    { id: 'buying', name: 'Buying' },
    { id: 'teaching', name: 'Teaching' },
    { id: 'waste', name: 'Waste' },
  ],
} as const;
