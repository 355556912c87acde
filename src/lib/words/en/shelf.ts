import { addedBounds, labelCopies, usedBounds } from '../../core/job/typed-bounds.ts';
import { labelWidth } from '../../core/units/printed.ts';
import type { UnitId } from '../../core/units/convert.ts';
import { converted } from '../../core/units/convert.ts';
import { plain, significant } from './locale.ts';
import { saltNames } from './materials.ts';
import { storedText } from './stored-text.ts';
import { dayText } from './times.ts';
import { withUnit } from './units.ts';

/** Texts of the shelf, where baths are kept between jobs. */
export const shelfTexts = {
  title: 'Baths',
  lead: 'One jar for each metal group. A bath lasts for years; its label says what it holds.',
  none: 'No baths yet. A bath that you keep at the end of a job is listed here.',
  atMost: 'At most: what settled on the plate or left with the rinse is not subtracted.',
  topUp: 'Top up or strengthen',
  topUpHint: 'Lost by drying: water only. Lost by spilling: water, and salt at the bath’s own strength.',
  move: 'Where it stands',
  moveHint: 'Such as: low shelf in the shed, in a tray.',
  note: 'What you saw',
  noteHint:
    'Colour, smell, sludge. A smell of ammonia or a black crust over silver: touch nothing, call the collection.',
  handOver: 'Hand it over',
  handOverHint: 'To whom: the collection, the carrier, the venue.',
  keep: 'Put it back on the shelf',
  gone: 'Handed over',
  correct: 'Correct a use',
  correctHint:
    'The amp-hours that really passed. 0 cancels the use. What was written before stays in the history.',
  whichUse: 'Which use',
  history: 'What happened to it',
  save: 'Write it down',
  saved: (name: string): string => `${name}: written down. Write it on the label too.`,
  lost: 'That bath is gone.',
  notSaved: (why: string): string => `Not written: ${why}`,
  water: 'Water added',
  salt: 'Salt added',
  saltFor: (grams: number): string => `for the same strength: ${withUnit(plain(grams, 3), 'g')}`,
  charge: 'Amp-hours',
  yearOf: (year: number): string => `Waste note of a year: ${String(year)}`,
  yearNone: 'Nothing was handed over in this year.',
  print: 'Print',
  yearNote:
    'For your own file, and for whoever asks. It is not a waste transfer note: where the law asks for one, the carrier or the collection gives it.',
} as const;

const fault = (what: string, typed: string, expected: string): string =>
  `${what}: found ${typed.trim() === '' ? 'nothing' : typed}, expected ${expected}.`;

const within = (
  { least, most }: { readonly least: number; readonly most: number },
  unit: UnitId = '1',
): string => `${plain(least)} to ${withUnit(plain(most), unit)}`;

/** What is wrong with a typed text about a bath. */
export const shelfFaults = {
  water: (typed: string): string => fault('The water', typed, within(addedBounds, 'mL')),
  salt: (typed: string): string => fault('The salt', typed, within(addedBounds, 'g')),
  charge: (typed: string): string => fault(shelfTexts.charge, typed, within(usedBounds)),
  words: (label: string): string => fault(label, '', 'a few words'),
  copies: (typed: string): string => fault('Copies', typed, within(labelCopies)),
  use: `${shelfTexts.whichUse}: found none, expected one of these.`,
} as const;

/** Columns of the waste note of a year. */
export const yearColumns = [
  { id: 'at', label: 'Date' },
  { id: 'name', label: 'Bath', isHead: true },
  { id: 'salt', label: 'Salt' },
  { id: 'volumeMl', label: 'Volume' },
  { id: 'heldMg', label: 'Metal, at most' },
  { id: 'to', label: 'To' },
] as const;
export type YearRow = Readonly<Record<(typeof yearColumns)[number]['id'], string>>;

/** Texts for printing bath labels, on sheets of four. */
export const labelSheetTexts = {
  title: 'Bath labels',
  which: 'How many of each',
  whichHint: `As each bath stands now. A label is ${withUnit(plain(labelWidth), 'mm')} wide: less would be too small to read.`,
  paper: 'Paper',
  first: 'First free place on the sheet',
  firstHint: 'A sheet that was cut already goes in again.',
  gone: 'used',
  taken: 'label',
  free: 'free',
} as const;

/** "Ag 120 mg/L, Cu 9 mg/L"; empty for a bath without dissolved metal. */
export const heldText = (dissolved: Readonly<Record<string, number>>): string =>
  Object.entries(dissolved)
    .filter(([, held]) => held > 0)
    .map(([element, held]) => `${element} ${plain(held, 2)} mg/L`)
    .join(', ');

/** One event in the life of a bath, in a line. */
export function bathEventText(event: { readonly type: string; readonly [key: string]: unknown }): string {
  const number = (key: string, digits = 3): string => plain(event[key] as number, digits);
  const said = (key: string): string => (event[key] === '' ? '' : `: ${String(event[key])}`);
  switch (event.type) {
    case 'mixed':
      return `Mixed: ${number('waterMl')} mL of water, ${number('strength')} g/L`;
    case 'used': {
      const took = Object.entries((event['tookMg'] ?? {}) as Readonly<Record<string, number>>)
        .filter(([, mg]) => mg > 0)
        .map(([element, mg]) => `, ${element} ${plain(mg, 2)} mg`);
      return `Used: ${number('chargeAh')} A·h${took.join('')}`;
    }
    case 'topped-up':
      return `Topped up: ${number('waterMl')} mL of water, ${number('saltG')} g of salt`;
    case 'moved':
      return `Moved${said('to')}`;
    case 'noted':
      return `Noted${said('text')}`;
    case 'handed-over':
      return `Handed over${said('to')}`;
    case 'kept':
      return 'Put back on the shelf';
    default:
      return event.type;
  }
}

/** @param salt from the record of a bath */
export const saltWord = (salt: string): string => storedText(saltNames, salt);

export const bathLine = (salt: string, strength: number): string =>
  `${saltWord(salt)}, ${withUnit(plain(strength, 3), 'g/L')}`;

export const volumeText = (ml: number): string => withUnit(plain(ml, 3), 'mL');

/** "Ag 0.06 g, Cu 0.01 g", from masses in mg. */
export const massesText = (heldMg: Readonly<Record<string, number>>): string =>
  Object.entries(heldMg)
    .filter(([, mg]) => mg > 0)
    .map(([element, mg]) => `${element} ${withUnit(plain(converted(mg, 'mg', 'g'), 2), 'g')}`)
    .join(', ');

interface Standing {
  readonly where: 'shelf' | 'handed-over';
  readonly place: string;
  readonly madeAt: number;
  readonly strength: number;
  readonly volumeMl: number;
  readonly chargeAh: number;
  readonly perLitre: number;
  readonly dissolved: Readonly<Record<string, number>>;
}

/** The bath and its place: "sodium nitrate, 60 g/L, 500 mL, mixed 24 Nov 2025. Low shelf". */
export function bathSummary(salt: string, now: Standing): string {
  const place =
    now.where === 'shelf' ? now.place : `${[shelfTexts.gone, now.place].filter(Boolean).join(': ')}.`;
  return `${bathLine(salt, now.strength)}, ${volumeText(now.volumeMl)}, mixed ${dayText(now.madeAt)}. ${place}`;
}

/** The charge that has passed through it, and the metal it holds. */
export function bathUse({ chargeAh, perLitre, dissolved }: Standing): string {
  const held = heldText(dissolved);
  const ah = (value: number, unit: UnitId): string => withUnit(significant(value, 2), unit);
  return `${ah(chargeAh, 'A.h')} so far, ${ah(perLitre, 'A.h')} per litre.${held === '' ? '' : ` Holds ${held}.`}`;
}

/** One use of a bath, worded to tell it from the others. */
export const useText = (at: number, chargeAh: number): string =>
  `${dayText(at)}: ${withUnit(plain(chargeAh, 3), 'A.h')}`;

/** An event of a bath, with its day. */
export const datedEvent = (event: Parameters<typeof bathEventText>[0] & { readonly at: number }): string =>
  `${dayText(event.at)}. ${bathEventText(event)}`;
