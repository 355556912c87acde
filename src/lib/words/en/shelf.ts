import { plain } from './locale.ts';
import { terms } from './terms.ts';

/** The shelf: baths that are kept between jobs. */
export const shelfTexts = {
  title: 'Baths',
  lead: 'One jar for each metal group. A bath lasts for years; its label says what it holds.',
  none: 'The shelf is empty. A bath that you keep at the end of a job stands here.',
  atMost: 'At most: what settled on the plate or left with the rinse is not taken off.',
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
    'The amp-hours that really passed. 0 takes the use back. What was written stays in its history.',
  whichUse: 'Which use',
  history: 'What happened to it',
  write: 'Write on its label too.',
  year: 'Waste note of a year',
  yearNone: 'Nothing was handed over in this year.',
  yearNote:
    'For your own file, and for whoever asks. It is no waste transfer note: where the law asks for one, the carrier or the collection gives it.',
} as const;

/** Labels of baths, on sheets of four. */
export const labelSheetTexts = {
  title: 'Bath labels',
  which: 'How many of each',
  whichHint: 'As each bath stands now. A label is 105 mm wide: less would be too small to read.',
  paper: 'Paper',
  first: 'First free place on the sheet',
  firstHint: 'A sheet that was cut already goes in again.',
  gone: 'used',
  taken: 'label',
  free: 'free',
} as const;

/** "Ag 120 mg/L, Cu 9 mg/L"; empty when it holds nothing. */
export const heldText = (dissolved: Readonly<Record<string, number>>): string =>
  Object.entries(dissolved)
    .filter(([, held]) => held > 0)
    .map(([element, held]) => `${element} ${plain(held, 2)} mg/L`)
    .join(', ');

/** One event of a bath in a line. */
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

export const bathLine = (salt: string, strength: number): string =>
  `${terms[salt] ?? salt}, ${plain(strength, 3)} g/L`;
