import type { MetalFamily } from '../../core/facts/metals.ts';
import type { ByTheClock } from '../../core/plan/run-by-plan.ts';
import type { ReadingUnits } from '../../core/job/reading-units.ts';
import type { LearntCell } from '../../core/learn/cell-line.ts';
import { count, plain } from './locale.ts';
import { spanText } from './times.ts';
import { amountText, readIn, symbolRead, withUnit } from './units.ts';

export const benchTexts = {
  without: 'Show the plan without it',
  with: 'Plan with it again',
  first: 'Nothing measured yet: the plan uses the tables.',
  byTrade: ({ tables, trade }: ByTheClock): string => {
    const clean = `the tables, ${withUnit(plain(tables, 2), 'min')} for clean metal`;
    return trade === null
      ? `Without an ammeter the time is longer than ${clean}: by how much is our own guess. Your first jobs replace it.`
      : `Without an ammeter the time stands between ${clean}, and what the trade takes, ${withUnit(plain(trade, 2), 'min')}. Your first jobs replace it.`;
  },
  doubted: 'One of them is far from the others. Look at it again: was its depth or its weight noted right?',
  repeatable:
    'It assumes that your jobs vary as most do. With fewer than eight jobs the range may be too narrow.',
} as const;

interface TaughtRate {
  readonly jobs: number;
  /** Jobs with other metals and salts. */
  readonly lent: number;
  readonly median: number;
  readonly low: number;
  readonly high: number;
}

/** "From 4 of your jobs: ..." */
export function benchText({ jobs, lent, median, low, high }: TaughtRate, isWithStrip = false): string {
  const percent = (share: number): string => plain(100 * share, 2);
  const whose =
    jobs === 0 ? `${count(lent, 'job')} with other metals or salts` : `${String(jobs)} of your jobs`;
  return `From ${whose}${isWithStrip ? ', one of them a test strip' : ''}: the current takes ${withUnit(percent(median), '%')} of what the amp-hours could (${percent(low)} to ${percent(high)}).`;
}

/** "From 3 of your jobs: they take 2.9 times as long as the tables say." */
export const paceText = ({ jobs, median, low, high }: TaughtRate): string =>
  `From ${String(jobs)} of your jobs: they take ${plain(1 / median, 2)} times as long as the tables say (${plain(1 / high, 2)} to ${plain(1 / low, 2)}).`;

/** What volts and amps have shown, compared with a clean cell. */
export function cellText({ over, pivot, slope, points }: LearntCell): string {
  const more = over - pivot * slope;
  const offset =
    Math.abs(more) < 0.05
      ? 'starts where the tables say'
      : `starts ${withUnit(plain(Math.abs(more), 2), 'V')} ${more > 0 ? 'later' : 'sooner'} than the tables say`;
  return `Volts and amps, noted at ${count(points, 'setting')}: the current ${offset}, and the cell’s resistance is ${plain(slope, 2)} times what was worked out.`;
}

export const lookBackTexts = {
  title: 'What your jobs have shown',
  lead: 'Each finished job that was weighed or measured, with its amp-hours counted, shows its bite rate: the metal its current took, of what it could take.',
  none: 'No job has shown anything yet. Note the amps while it bites, and weigh or measure the piece after.',
  drawing: 'Bite rates of your jobs, oldest first, over the range of the tables and the range learnt',
  band: 'Hatched: what the tables expect. Between the lines: where your next job is expected. Dots: your jobs.',
  jobs: 'The jobs behind it',
  order: 'jobs, oldest first',
  job: 'Job',
  when: 'When',
  rate: 'Bite rate',
  by: 'By',
  mass: 'weight',
  depth: 'depth',
  strip: 'test strip',
  looks: 'eye',
  doubted: 'far from the others: noted right?',
} as const;

/** One lesson in a sentence. */
export const lessonText = (metal: string, salt: string, jobs: number, low: number, high: number): string =>
  `${metal} with ${salt}, ${count(jobs, 'job')}: the next one is expected at ${plain(100 * low, 2)} to ${withUnit(plain(100 * high, 2), '%')}.`;

export const rateText = (rate: number): string => withUnit(plain(100 * rate, 2), '%');

/** Names of salts by what they bring to the bath. */
export const anionNames = { nitrate: 'a nitrate', chloride: 'a chloride', sulfate: 'a sulfate' } as const;
export const familyNames: Readonly<Record<MetalFamily, string>> = {
  silver: 'Silver',
  copper: 'Copper',
  brass: 'Brass',
  bronze: 'Bronze',
  nickel: 'Nickel silver',
  iron: 'Steel',
};

/**
 * A depth in the unit of `depthAxis`, for the axis of the chart.
 * @param um depth, or depth a minute
 */
export const depthOnAxis = (um: number, units: ReadingUnits): number => readIn(um, 'um', units).value;

export const depthAxis = (units: ReadingUnits): string => `Depth, ${symbolRead('um', units)}`;

export const stripTexts = {
  title: 'New bath or new metal: a test strip first',
  lead: 'Take a scrap of the same metal. Mask it, except for four windows of one size. Bite it at these settings in this bath. When a window’s time is up, it is stopped out, and the others go on with fewer amps. Measure the four depths.',
  scrapWidth: 'Scrap, wide',
  scrapHeight: 'Scrap, high',
  /** @param least side of a scrap, mm */
  small: (
    { width, height }: { readonly width: number; readonly height: number },
    units: ReadingUnits,
  ): string =>
    `Too small for four windows: ${amountText(width, 'mm', units)} wide and ${amountText(height, 'mm', units)} high is the least.`,
  /** @param width,height mm */
  windowSize: (width: number, height: number, units: ReadingUnits): string => {
    const wide = readIn(width, 'mm', units);
    return `Each window ${plain(wide.value, 2, wide.finest)} by ${amountText(height, 'mm', units, 2)}, all alike.`;
  },
  scrap: 'The scrap with its four windows, the clip above',
  bite: 'Bite the strip',
  again: 'Bite another strip',
  holds: 'Every look before power comes first, and again before each window.',
  number: 'Window',
  after: 'Stop out after',
  amps: 'Amps until then',
  expected: 'Expected',
  depthOf: (n: number): string => `Depth of window ${String(n)}`,
  two: 'Two depths or more give your bite rate, and the plan then uses it.',
  told: (low: string, high: string): string =>
    `This strip counts as one job: your next one is expected at ${low} to ${high} of what the amp-hours could take.`,
  drawing: 'Depths of the windows against their minutes, with the line through them and the range expected',
  timeAxis: 'Minutes with current on',
  table: 'The four windows',
  band: 'Hatched: the plan’s range. Line: through your windows. Dots: your windows.',
  odd: (windows: string): string =>
    `Window ${windows} does not fit the others. Measure it again; was it stopped out in time, and was its resist whole?`,
  forStrip: 'This bite is for the test strip: the strip hangs on the clip, not the piece.',
  runningTitle: 'The test strip bites',
  betweenTitle: 'Stop a window out',
  biting: (n: number, of: number, on: number): string =>
    `Window ${String(n)} of ${String(of)} is next. ${spanText(on)} with current on.`,
  set: (amps: string): string => `Set the supply to ${amps}, then switch on.`,
  stopNow: 'Time for this window. Stop, then switch off at the supply.',
  stopOut: (n: number): string =>
    `Lift the strip with tongs. Rinse, dry, and cover window ${String(n)} with varnish. Let it dry.`,
  early: (n: number, span: string): string =>
    `Window ${String(n)} is not done: it has ${span} to go. Leave all windows as they are.`,
  nextAmps: (amps: string): string =>
    `Then the others go on with ${amps}. Look at everything before power again.`,
  done: 'All four have had their time. Take the mask off, measure the depths, and type them in.',
  goOn: 'Look before power',
  measure: 'Type the depths in',
  giveUp: 'Give up the strip',
} as const;
