import { lawRead } from '../../core/facts/law.ts';
import { silverLine } from '../../core/facts/treatment.ts';
import { ampHours } from './amounts.ts';
import { plain } from './locale.ts';
import { bathLine } from './shelf.ts';
import { withUnit } from './units.ts';

/** Where a bath may go, by use and country. Laws differ and change. */
export const wasteTexts = {
  home: 'Work at home: take it to the household hazardous-waste collection, untreated, and ask before you come. An etching bath may not count as household waste: say what it holds.',
  selling:
    'Work for sale is a business: its waste is not household waste. Ask a licensed carrier or your authority before anything leaves the workshop.',
  teaching:
    'A class is not a household: the venue’s own waste service takes it. An adult answers for it, and every supply is started by an adult.',
  country: `Check your country’s rules: they change, and the collection’s word counts, not this page’s (read ${lawRead}).`,
  strictest:
    'No country was given, so the strictest rules hold: hand over untreated, and nothing down any drain but unused table salt or baking soda.',
  store:
    'Upright, in a tray, locked away from children, pets, food and frost. Apart from acids, ammonia, bleach, solvents, and from the other metal group’s jar.',
  scale: `For scale, not a pouring limit: United States rule 40 CFR 261.24 calls liquid waste toxic from ${plain(silverLine.limit.value)} mg/L silver. Copper is not listed there, but does harm in water all the same.`,
} as const;

/** Texts of the screen that asks where the bath of a job goes. */
export const storeTexts = {
  title: 'Keep the bath, or hand it over?',
  bath: 'The bath',
  ways: [
    { value: 'shelf', label: 'Keep it for the next job', hint: 'a bath lasts for years' },
    { value: 'handed-over', label: 'Hand it over', hint: 'untreated, to the hazardous-waste collection' },
  ],
  notKept: (why: string): string => `Not noted: ${why}. Write on the label by hand.`,
  noPlan: 'the plan that this job began with is missing',
  label: 'Write on the label',
  used: (salt: string, strength: number, chargeAh: number, perLitre: number): string =>
    `${bathLine(salt, strength)}. ${withUnit(ampHours(chargeAh), 'A.h')} so far, ${withUnit(ampHours(perLitre), 'A.h')} per litre.`,
  holds: (metals: string): string => `Holds ${metals}.`,
  notForDrinking: 'Not for drinking.',
  law: 'What the law asks here',
  planned: 'What the bath holds, as planned',
  locked: 'Opens when you have chosen one.',
} as const;
