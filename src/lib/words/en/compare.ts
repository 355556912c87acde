import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { plain } from './locale.ts';
import { amountText, withUnit } from './units.ts';

export const compareTexts = {
  page: 'Two jobs side by side',
  first: 'First job',
  second: 'Second job',
  choose: 'Choose two jobs of this notebook.',
  fewer: 'There are fewer than two jobs in this browser.',
  cannot: 'This one has no plan yet: answer its questions first.',
  differs: 'What differs',
  same: 'All answers are the same.',
  drawing: 'Amps against minutes with current on, both jobs in one picture',
  run: 'as run',
  planned: 'as planned',
  minutesAxis: 'min with current on',
  ampsAxis: 'A',
  measured: 'Depth, measured',
  minutes: 'Time with current on',
  charge: 'Amp-hours',
  mean: 'Amps, mean',
  done: 'What was done, side by side',
  job: (title: string, when: string): string => `${title}, ${when}`,
  plannedOf: (figure: string): string => `${figure}, as planned`,
} as const;

interface Held {
  readonly title: string;
  readonly hasRun: boolean;
  readonly minutes: number;
  readonly chargeAh: number;
  readonly gotUm: number | null;
  readonly plan: { readonly figures: { readonly depth?: { readonly value: number } } };
}

/** Label of a curve: the job it belongs to, and whether the job was run. */
export const curveName = ({ title, hasRun }: Pick<Held, 'title' | 'hasRun'>): string =>
  `${title}, ${hasRun ? compareTexts.run : compareTexts.planned}`;

const meanAmps = ({ minutes, chargeAh }: Held): number => (minutes > 0 ? (60 * chargeAh) / minutes : 0);

/** The measured depth, or else the planned one. */
function depthOf({ gotUm, plan }: Held): { readonly um: number; readonly isMeasured: boolean } | null {
  if (gotUm !== null) return { um: gotUm, isMeasured: true };
  const um = plan.figures.depth?.value;
  return um === undefined ? null : { um, isMeasured: false };
}

const share = (now: number, before: number): string => {
  const off = Math.round(100 * (now / before - 1));
  return off === 0 ? 'as much' : `${String(Math.abs(off))} % ${off > 0 ? 'more' : 'less'}`;
};

/** The difference in one sentence: what the second job took and gave compared with the first. */
export function differenceText(first: Held, second: Held, changed: number, units: ReadingUnits): string {
  const answers =
    changed === 0
      ? 'No answer differs'
      : changed === 1
        ? 'One answer differs'
        : `${String(changed)} answers differ`;
  const [before, now] = [depthOf(first), depthOf(second)];
  const depth =
    before && now && before.um > 0
      ? `, and ${now.isMeasured ? 'measured' : 'will come out'} ${amountText(now.um, 'um', units, 3)} deep${
          now.isMeasured === before.isMeasured ? `, ${share(now.um, before.um)}` : ''
        }, against ${amountText(before.um, 'um', units, 3)} ${before.isMeasured ? 'measured' : 'planned'}`
      : '';
  return `${answers}: “${second.title}” ${second.hasRun ? 'ran' : 'is to run'} ${withUnit(plain(second.minutes, 2), 'min')} at ${withUnit(plain(meanAmps(second), 3), 'A')}, against ${withUnit(plain(first.minutes, 2), 'min')} at ${withUnit(plain(meanAmps(first), 3), 'A')}${depth}.`;
}

/** Rows of what was done, for the first job and the second. */
export function doneRows(
  first: Held,
  second: Held,
  units: ReadingUnits,
): readonly (readonly [string, string, string])[] {
  const both = (name: string, text: (one: Held) => string): readonly [string, string, string] => [
    name,
    text(first),
    text(second),
  ];
  return [
    both(compareTexts.minutes, ({ minutes }) => withUnit(plain(minutes, 2), 'min')),
    both(compareTexts.mean, (one) => withUnit(plain(meanAmps(one), 3), 'A')),
    both(compareTexts.charge, ({ chargeAh }) => withUnit(plain(chargeAh, 3), 'A.h')),
    both(compareTexts.measured, ({ gotUm }) => (gotUm === null ? '' : amountText(gotUm, 'um', units, 3))),
  ];
}
