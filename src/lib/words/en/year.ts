import { count, plain, significant } from './locale.ts';
import { withUnit } from './units.ts';

export const yearTexts = {
  title: 'A year at the bench',
  which: 'Year',
  none: 'No job has been bitten yet.',
  drawing: 'Each measured job in its month: its depth over the depth wanted',
  band: 'Between the lines: within a fifth of the wanted depth. A dot for each job that was measured.',
  month: 'Month',
  metal: 'Metal',
  jobs: 'Jobs',
  pieces: 'Pieces',
  on: 'Current on',
  charge: 'Amp-hours',
  near: 'As wanted',
  share: 'of the depth wanted',
  print: 'Print this page',
  all: 'The year',
} as const;

/** Months by the reader's own calendar, in English. */
export const monthNames = [
  'Jan',
  'Feb',
  'Mar',
  'Apr',
  'May',
  'Jun',
  'Jul',
  'Aug',
  'Sep',
  'Oct',
  'Nov',
  'Dec',
];

/** @param month 0 for January @throws RangeError for a number that is no month */
export function monthName(month: number): string {
  const name = monthNames[month];
  if (name === undefined) throw new RangeError(`month ${month} found, 0 to 11 expected`);
  return name;
}

export const onText = (minutes: number): string =>
  minutes < 90 ? withUnit(plain(minutes, 2), 'min') : withUnit(significant(minutes / 60, 2), 'h');

export const chargeText = (chargeAh: number): string => withUnit(significant(chargeAh, 2), 'A.h');

/** Writes a fraction of one in per cent. */
export const shareText = (share: number): string => withUnit(plain(100 * share, 3), '%');

/** "3/4": short, to fit on a phone. */
export const nearText = (near: number, measured: number): string =>
  measured === 0 ? 'not measured' : `${String(near)}/${String(measured)}`;

export function yearText(
  year: number,
  { jobs, pieces, near, measured }: Readonly<Record<'jobs' | 'pieces' | 'near' | 'measured', number>>,
): string {
  const what = `${String(year)}: ${count(jobs, 'job')}, ${count(pieces, 'piece')}.`;
  return measured === 0
    ? `${what} None was measured.`
    : `${what} Of ${String(measured)} measured, ${String(near)} came within a fifth of the wanted depth.`;
}
