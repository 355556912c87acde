import { plain } from '../core/units/format.ts';
import { withUnit } from './units.ts';

export const benchTexts = {
  without: 'Show the plan without it',
  with: 'Plan with it again',
  first:
    'No job of yours with this metal and salt has been weighed or measured yet: the plan goes by the tables.',
  doubted:
    'One of them stands far from the others. Look at it again: was its depth or its weight noted right?',
  repeatable: 'It takes you to be as repeatable as most; until eight jobs are in, it may promise too much.',
} as const;

/** "Your bench, 4 jobs: ..." */
export function benchText({
  jobs,
  median,
  low,
  high,
}: {
  readonly jobs: number;
  readonly median: number;
  readonly low: number;
  readonly high: number;
}): string {
  const percent = (share: number): string => plain(100 * share, 2);
  return `Your bench, ${String(jobs)} ${jobs === 1 ? 'job' : 'jobs'}: it takes ${withUnit(percent(median), '%')} of what the amp-hours could (${percent(low)} to ${percent(high)}).`;
}
