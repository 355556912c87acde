import { tools } from '../../core/facts/advice.ts';
import { count, plain, significant } from './locale.ts';
import { wornMark } from './away.ts';
import { metalNames } from './materials.ts';
import { sentenceCase } from './render.ts';
import { saltWord } from './shelf.ts';
import { storedText } from './stored-text.ts';
import { amountText, datumText, unitSymbol, withUnit } from './units.ts';

/** Texts of the screens that ask for the bath and on which it is mixed. */
export const electrolyteTexts = {
  titles: {
    bath: 'A new bath, or one from the shelf?',
    salt: 'Which bath?',
    recipe: 'How much salt, and how warm',
    mix: 'Mix, in this order',
    wait: 'Let it stand',
    topUp: 'Take out the bath',
  },
  mixed: 'Mixed and labelled',
  bath: 'Bath',
  newBath: { value: 'new', label: 'Mix a new bath' },
  /** @param others number of baths for other metals */
  noneFits: (others: number): string =>
    others === 0
      ? 'The shelf is empty so far. A bath you keep today is here next time.'
      : `${count(others, 'bath')} on the shelf, none for this metal: one jar for each.`,
  theirSalt: 'The bath’s salt',
  /** A bath that is not on this shelf: it came from a sheet or a job file. */
  usedBath: (bath: string): string => (bath === '' ? 'The bath on the sheet' : bath),
  usedHint: 'It already held metal. Choose it only if you have it here.',
  keptSalt: (bath: string, salt: string): string =>
    `${electrolyteTexts.usedBath(bath)} is ${saltWord(salt)}: that cannot change. Go on.`,
  forMetal: (metal: string): string => `For ${storedText(metalNames, metal)}`,
  saltName: (salt: string): string => sentenceCase(saltWord(salt)),
  otherJar: 'Another jar, or one without a label',
  whichJar: 'What does its label say?',
  noLabel: 'Nothing: no label',
  unnamed:
    'Do not use a jar you cannot name: the wrong salt spoils the piece or gives off poison. Buy one with a label.',
  scales: [
    { value: String(tools.fineScale.value), label: datumText(tools.fineScale) },
    { value: String(tools.scale.value), label: datumText(tools.scale) },
    { value: String(tools.kitchenScale.value), label: `${datumText(tools.kitchenScale)}, a kitchen scale` },
    { value: 'none', label: 'I have no fine scale' },
  ],
  waters: [
    { value: 'deionised', label: 'Deionised' },
    { value: 'distilled', label: 'Distilled' },
    { value: 'rain', label: 'Rain water, filtered' },
    { value: 'tap', label: 'Tap water' },
  ],
  temperatures: (['degC', 'degF'] as const).map((unit) => ({ value: unit, label: unitSymbol(unit) })),
  asTheRoom: 'Without a thermometer: as warm as the room, once it has stood for some hours.',
  weigh: (grams: number, waterMl: number): string =>
    `Weigh ${amountText(grams, 'g')} into ${amountText(waterMl, 'mL')} of water.`,
  pour: (grams: number, waterMl: number, pourMl: number): string =>
    `Dissolve ${amountText(grams, 'g')} in ${amountText(waterMl, 'mL')} of water, then pour ${amountText(pourMl, 'mL')} of it into the tub. Keep and label the rest.`,
  ready: (time: string): string => `Ready from ${time}, better tomorrow.`,
  stand: (hours: number): string =>
    `Salt needs ${String(hours)} hours or more. Grains left over make the bite uneven. Close the page if you like: the job waits here.`,
  saltStays:
    'Only water leaves a bath: the salt stays. Fill it up with water to its line, and weigh nothing.',
  meanwhile: 'Mask the piece meanwhile: that is the next step.',
};

/** A bath of the shelf, described so that it can be chosen. */
export const shelvedBath = (
  { name, salt }: { readonly name: string; readonly salt: string },
  now: { readonly strength: number; readonly chargeAh: number; readonly place: string },
  isWorn: boolean,
) => ({
  value: name,
  label: `${name}: ${saltWord(salt)}, ${withUnit(plain(now.strength, 3), 'g/L')}`,
  hint: `${isWorn ? wornMark : `${withUnit(significant(now.chargeAh, 2), 'A.h')} so far`}${now.place === '' ? '' : `; ${now.place}`}`,
});
