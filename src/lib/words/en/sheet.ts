import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { count, plain, significant } from './locale.ts';
import { depthText } from './amounts.ts';
import { clockTime, spanText } from './times.ts';
import { amountText, readIn, symbolRead, withUnit } from './units.ts';

interface Spread {
  readonly low: number;
  readonly high: number;
}

/** Texts of the last screen of a job: what was planned, what was done, and what comes next. */
export const sheetTexts = {
  title: 'What was done',
  jobTitle: 'Title',
  table: 'Planned and done',
  columns: { name: 'What', planned: 'planned', done: 'done' },
  on: 'Current on',
  charge: 'Amp-hours',
  depth: 'Depth',
  mass: 'Metal gone',
  minutes: (minutes: number): string => withUnit(plain(minutes, 2), 'min'),
  grams: (grams: number): string => withUnit(significant(grams, 2), 'g'),
  /** @param mm mean depth, mm @param range um */
  plannedDepth: (mm: number, range: Spread, units: ReadingUnits): string =>
    `${amountText(mm, 'mm', units, 3)} (${depthText(range, units)})`,
  measuredDepth: (mm: number, units: ReadingUnits): string => amountText(mm, 'mm', units, 3),
  notMeasured: (byCount: Spread | null, units: ReadingUnits): string =>
    byCount ? `not measured; ${depthText(byCount, units)} by the count` : 'not measured',
  seen: 'What you saw',
  pictures: 'Pictures',
  runs: 'Runs',
  papers: 'Papers',
  next: 'Next',
  again: 'Start again from this',
  againHint: 'A new job with the same answers. You go through every check again.',
  keep: 'Browsers can lose what they store. Save the notebook file now and then.',
  notebook: 'To the notebook file',
} as const;

/** The runs of a job, and what its meters showed. */
export const runsTexts = {
  span: (from: number, to: number): string => `${clockTime(from)} to ${clockTime(to)}`,
  ended: (span: number, why: string): string => (why === '' ? spanText(span) : `${spanText(span)}, ${why}`),
  whys: {
    done: 'stopped',
    look: 'stopped for a look',
    wrong: 'stopped: something looked wrong',
    'page-went': 'the page was closed at the end',
  },
  symptom: (label: string): string => `stopped: ${label.toLowerCase()}`,
  readings: 'Readings',
  columns: (units: ReadingUnits) => ({
    at: 'time',
    amps: 'A',
    volts: 'V',
    celsius: symbolRead('degC', units),
  }),
  /** Temperature in whole degrees. */
  celsius: (celsius: number | null, units: ReadingUnits): string =>
    celsius === null ? '' : plain(Math.round(readIn(celsius, 'degC', units).value)),
  noReadings: 'No readings were noted. Amps every five minutes tell the depth better than the clock.',
  drawing: 'Amps against time with current on',
  summary: (readings: number, minutes: number, runs: number): string =>
    `${String(readings)} readings in ${withUnit(plain(minutes, 2), 'min')}, ${count(runs, 'run')}. The readings are in the table below.`,
  caption: 'Hatched: the amp-hours. Broken line: amps planned. Dots: your readings.',
  amps: 'Amps',
  minutes: 'Minutes with current on',
  planned: 'planned',
} as const;
