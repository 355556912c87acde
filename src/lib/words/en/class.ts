import type { UnitId } from '../../core/units/convert.ts';
import { count, plain, significant } from './locale.ts';
import { readingUnitsOf } from '../../core/job/reading-units.ts';
import type { ReadingUnits } from '../../core/job/reading-units.ts';
import type { ClassPack, ClassPart, ClassStop } from '../../core/plan/class-pack.ts';
import type { Plan } from '../../core/plan/plan.ts';
import { termText } from './render.ts';
import { readIn, withUnit } from './units.ts';

export const classTexts = {
  title: 'Evening class',
  lead: 'Every station does the same job: one metal, one salt, one bath each, mixed by an adult beforehand. You get a sheet for whoever leads, and a card for each station.',
  which: 'The job of every station',
  example: 'Example: twelve brass tokens',
  stations: 'Stations',
  learners: 'Learners at each',
  adults: 'Adults at the supplies',
  minutes: 'Time there is',
  bounds: (least: number, most: number): string => `A whole number from ${String(least)} to ${String(most)}.`,
  planning: 'Planning the job for a class.',
  cannot: 'This job has no plan yet: answer its questions first.',
  print: 'The pack',
  fileName: 'evening-class.pdf',
  leader: 'For whoever leads the class',
  bring: 'What has to be there',
  before: 'Before the class, by an adult',
  evening: 'The evening',
  after: 'Afterwards',
  begins: 'Begins',
  takes: 'Takes',
  part: 'What',
  rules: [
    'One adult starts and stops each supply, with a hand on it.',
    'Nobody under age mixes salts. Nobody pregnant near lead or nickel.',
    'One metal in each bath, and the same in all: nothing else goes in.',
    'Two sets of initials stand under the marked checks before the clock starts.',
    'Ask the venue and the insurer before the day. Their rules, and the label of the jar in hand, come first.',
  ],
  station: (n: number, of: number): string => `Station ${String(n)} of ${String(of)}`,
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

/** Two digits: it is taken in by eye. */
function roughly(value: number, unit: UnitId, units: ReadingUnits): string {
  const read = readIn(value, unit, units);
  return withUnit(significant(read.value, 2, read.finest), read.unit);
}

/** What has to be there, a line each. */
export function bringLines(pack: ClassPack): readonly string[] {
  const { asked, gloves, goggles, supplies, pieces, salt, bathEach } = pack;
  return [
    `${count(goggles, 'pair')} of splash goggles: one for everybody in the room, and spare ones`,
    `${count(gloves, 'pair')} of whole nitrile gloves, in the sizes of the hands: two for everybody`,
    `${count(supplies, 'supply', 'supplies')} with leads, and ${count(asked.stations, 'tub')} in trays`,
    `${count(pieces, 'piece')}, cleaned beforehand`,
    `${withUnit(significant(salt, 3), 'g')} of salt for ${count(asked.stations, 'bath')} of ${withUnit(significant(bathEach.volume, 3), 'mL')}`,
    `${count(2 * asked.stations, 'rinse tub')}; their water is kept as waste`,
    'Eye wash or running water within reach, a first-aid box, a telephone',
  ];
}

export const beforeLines = (plan: Plan, pack: ClassPack): readonly string[] => [
  `Mix ${count(pack.asked.stations, 'bath')}: ${withUnit(significant(pack.bathEach.salt, 3), 'g')} of ${termText(plan.job.bath.salt)} in ${withUnit(significant(pack.bathEach.water, 3), 'mL')} of water each. Goggles and gloves on.`,
  'Label every tub, also while it stands for one evening.',
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

/** Whether the evening is long enough, in a sentence. */
export function timeText({ asked, parts, over, fittingDepth }: ClassPack, units: ReadingUnits): string {
  const whole = parts.reduce((sum, { minutes }) => sum + minutes, 0);
  if (over === 0) {
    return `It takes ${withUnit(plain(whole, 3), 'min')} of ${withUnit(plain(asked.minutes, 3), 'min')}.`;
  }
  const way =
    fittingDepth === null
      ? 'Even without biting it would not fit: mask beforehand, or take two evenings.'
      : `A depth of ${roughly(fittingDepth / 1e3, 'mm', units)} would fit; or mask beforehand, or let another adult start supplies.`;
  return `Too long by ${withUnit(plain(over, 2), 'min')}: it takes ${withUnit(plain(whole, 3), 'min')}, and there are ${withUnit(plain(asked.minutes, 3), 'min')}. ${way}`;
}

/** "0:50" */
export const clockOf = (minutes: number): string =>
  `${String(Math.floor(minutes / 60))}:${String(Math.round(minutes) % 60).padStart(2, '0')}`;
