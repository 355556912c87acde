import type { UnitId } from '../../core/units/convert.ts';
import { fromHours, toMinutes } from '../../core/units/time.ts';
import { count, plain, significant } from './locale.ts';
import { readingUnitsOf } from '../../core/job/reading-units.ts';
import type { ReadingUnits } from '../../core/job/reading-units.ts';
import type { ClassPack, ClassPart, ClassStop } from '../../core/plan/class-pack.ts';
import type { Plan } from '../../core/plan/plan.ts';
import { termText } from './render.ts';
import { amountText, readIn, withUnit } from './units.ts';

export const classTexts = {
  title: 'Evening class',
  lead: 'Every station does the same job: one metal, one salt, one bath each, mixed by an adult beforehand. You get a sheet for whoever leads, a list of what to buy, a card for each station, papers to hang up and labels for the baths.',
  which: 'The job of every station',
  example: 'Example: twelve brass tokens',
  stations: 'Stations',
  learners: 'Learners at each',
  adults: 'Adults at the supplies',
  minutes: 'Time there is',
  bounds: (least: number, most: number): string => `A whole number from ${String(least)} to ${String(most)}.`,
  planning: 'Planning the job for a class.',
  cannot: 'This job has no plan yet: answer its questions first, the supply among them.',
  print: 'The pack',
  fileName: 'evening-class.pdf',
  leader: 'For whoever leads the class',
  bring: 'What to buy and lay out, for all stations',
  before: 'Before the class, by an adult',
  evening: 'The evening',
  after: 'Afterwards',
  begins: 'Begins',
  takes: 'Takes',
  atLeast: (time: string): string => `${time} at least`,
  standing: 'Baths mixed beforehand stand until all is dissolved and clear',
  ownDepth: (depth: string): string => `Back to ${depth}, the job’s own depth`,
  takeDepth: (depth: string): string => `Bite ${depth} this evening`,
  depthTaken: (depth: string, own: string): string =>
    `Cards, minutes and waste are for ${depth}, which fits the evening; the job itself says ${own}.`,
  noFit: 'No depth was found that fits: give the class more time, or let another adult start supplies.',
  packHolds:
    'A sheet for whoever leads, the shopping list, a card for each station, first aid and what to wear to hang up, and a label for each bath.',
  names: 'Whose piece is which',
  namesLead:
    'First names, initials or numbers, one a line. They stay in this browser and stand on the cards; a line left out is printed blank.',
  namesOf: (n: number, pieces: string): string => `Station ${String(n)}: ${pieces}`,
  number: 'Number the pieces',
  forget: 'Clear the names',
  tooMany: (pieces: string): string => `One a line: this station has ${pieces}.`,
  tooLong: (most: number): string => `At most ${String(most)} letters in a line.`,
  part: 'What',
  rules: [
    'One adult starts and stops each supply, with a hand on it.',
    'Nobody under age mixes salts. Nobody pregnant near lead or nickel.',
    'One metal in each bath, and the same in all: nothing else goes in.',
    'Two sets of initials stand under the marked checks before the clock starts.',
    'Ask the venue and the insurer before the day. Their rules, and the label of the jar in hand, come first.',
  ],
  station: (n: number, of: number): string => `Station ${String(n)} of ${String(of)}`,
  pieces: 'Whose piece',
  readings: 'Readings',
  minute: 'minute',
  wanted: '{count} of {metal}, {depth} deep',
  adultStarts: 'An adult starts and stops the supply.',
  adult: 'Adult',
  other: 'Looked too',
  blank: 'Date and place',
  own: 'How many gloves and goggles, and how long each part takes, is our own reading: nobody has published it. The bite’s minutes are the plan’s.',
} as const;

export const partNames: Readonly<Record<ClassPart, string>> = {
  welcome: 'Rules, exits, goggles and gloves',
  masking: 'Draw and mask',
  starting: 'Look and start, one station after another',
  biting: 'Bite, with one look-in each',
  rinsing: 'Rinse, strip, dry, look',
  clearing: 'Close and label the baths, wash hands',
};

export const stopTexts: Readonly<Record<ClassStop, string>> = {
  refused: 'A class cannot do this job: the plan refuses it. Open the job to read why.',
  'nothing-planned': 'The bare area is not known yet: answer it in the job first.',
  'room-unknown':
    'This bath can give off chlorine, and the job does not say how large the room is: answer it there first.',
  chlorine:
    'Not in this room: if one station’s current turns to chlorine, everybody is in danger. Take a nitrate bath, a larger room, or fewer stations.',
};

const hoursOf = (minutes: number): number => minutes / toMinutes(fromHours(1));

/** Two digits, since it is measured by eye. */
function roughly(value: number, unit: UnitId, units: ReadingUnits): string {
  const read = readIn(value, unit, units);
  return withUnit(significant(read.value, 2, read.finest), read.unit);
}

export const beforeLines = (plan: Plan, pack: ClassPack): readonly string[] => [
  `Mix ${count(pack.asked.stations, 'bath')}: ${withUnit(significant(pack.bathEach.salt, 3), 'g')} of ${termText(plan.job.bath.salt)} in ${withUnit(significant(pack.bathEach.water, 3), 'mL')} of water each. Goggles and gloves on.`,
  `Let them stand ${withUnit(plain(hoursOf(pack.standing), 2), 'h')} at least, better overnight: all salt dissolved, nothing cloudy.`,
  'Label every tub, also while it stands for one evening: a label for each is in this pack.',
  'Hang up the first-aid page and the card of what to wear, both in this pack.',
  'Bite one piece yourself at these settings, from beginning to end.',
  ...(pack.air === null
    ? []
    : [
        `Open windows: all plates together need ${withUnit(significant(pack.air.flow, 2), 'm3/h')} of fresh air, or openings of ${roughly(pack.air.opening, 'cm2', readingUnitsOf(plan.job))} high up. No lid on any tub. No flame.`,
      ]),
  ...(pack.chlorine === null
    ? []
    : [
        `Smell of a swimming pool at any station: all supplies off, everybody out, air the room. Up to ${withUnit(significant(pack.chlorine, 2), 'ppm')} of chlorine could stand in it.`,
      ]),
];

export function afterLines({ waste, dissolved, asked }: ClassPack): readonly string[] {
  const metals = Object.entries(dissolved).map(
    ([element, held]) => `${element} ${withUnit(significant(held, 2), 'mg/L')}`,
  );
  return [
    `${count(asked.stations, 'bath')} and ${count(2 * asked.stations, 'rinse tub')}: keep them, closed and labelled, or hand over up to ${withUnit(significant(waste, 2), 'L')}.`,
    ...(metals.length > 0 ? [`Each bath then holds up to ${metals.join(', ')} more than before.`] : []),
    'Nothing that held metal goes down a drain, not the rinse water either. A class is not a household: the venue’s own waste service takes it.',
  ];
}

/** "12 pieces" */
export const pieceCount = (pieces: number): string => count(pieces, 'piece');

/** A depth in um, to two digits, as it was rounded. */
export const depthText = (um: number, units: ReadingUnits): string => amountText(um / 1e3, 'mm', units, 2);

/** One line of the evening's timetable. */
export interface EveningRow {
  readonly id: ClassPart | 'standing';
  readonly begins: string;
  readonly takes: string;
  readonly what: string;
  /** Start and length in minutes; null for what is done before the evening. */
  readonly bar: { readonly from: number; readonly minutes: number } | null;
}

/** The timetable in rows, with what must be done before the evening. */
export const eveningRows = ({ standing, parts }: ClassPack): readonly EveningRow[] => [
  {
    id: 'standing',
    begins: `−${clockOf(standing)}`,
    takes: classTexts.atLeast(withUnit(plain(hoursOf(standing), 2), 'h')),
    what: classTexts.standing,
    bar: null,
  },
  ...parts.map(({ id, from, minutes }): EveningRow => ({
    id,
    begins: clockOf(from),
    takes: withUnit(String(minutes), 'min'),
    what: partNames[id],
    bar: { from, minutes },
  })),
];

/** Whether the evening is long enough, in a sentence. */
export function timeText({ asked, parts, over, fittingDepth }: ClassPack, units: ReadingUnits): string {
  const whole = parts.reduce((sum, { minutes }) => sum + minutes, 0);
  if (over === 0) {
    return `It takes ${withUnit(plain(whole, 3), 'min')} of ${withUnit(plain(asked.minutes, 3), 'min')}.`;
  }
  const way =
    fittingDepth === null
      ? 'Even without biting it would not fit: mask beforehand, or take two evenings.'
      : `A depth of ${depthText(fittingDepth, units)} would fit; or mask beforehand, or let another adult start supplies.`;
  return `Too long by ${withUnit(plain(over, 2), 'min')}: it takes ${withUnit(plain(whole, 3), 'min')}, and there are ${withUnit(plain(asked.minutes, 3), 'min')}. ${way}`;
}

/** "0:50" */
export const clockOf = (minutes: number): string =>
  `${String(Math.floor(minutes / 60))}:${String(Math.round(minutes) % 60).padStart(2, '0')}`;
