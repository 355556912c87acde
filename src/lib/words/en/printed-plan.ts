import { readingUnitsOf } from '../../core/job/reading-units.ts';
import type { Plan } from '../../core/plan/plan.ts';
import type { SignalWord, StepId } from '../../core/rules/rule.ts';
import { fill } from './render.ts';
import { workLine } from './work-line.ts';
import { cautionTexts, refusalTexts } from './rules.ts';

/** Titles of the steps. */
export const stepTitles: Readonly<Record<StepId, string>> = {
  metal: 'Metal',
  electrodes: 'Electrodes',
  electrolyte: 'Electrolyte',
  resist: 'Resist',
  settings: 'Settings',
  etch: 'Etch',
  neutralise: 'Rinse and neutralise',
  bath: 'Store or hand over',
  sheet: 'Sheet',
};

/**
 * A plan for other programs and for paper: figures as bare numbers in fixed units, texts in the maker's
 * units.
 */
export interface PrintedPlan {
  readonly etchwright: 1;
  readonly dataVersion: string;
  readonly title: string;
  readonly figures: Readonly<
    Record<string, { value: number; low: number; high: number; unit: string; sources: readonly string[] }>
  >;
  readonly settings: object | null;
  readonly cautions: readonly { rule: string; signal: SignalWord; step: StepId; text: string }[];
  readonly refusals: readonly { rule: string; step: StepId; text: string; instead: string }[];
  readonly steps: readonly { step: StepId; title: string; lines: readonly { id: string; text: string }[] }[];
}

export function printPlan(plan: Plan): PrintedPlan {
  const units = readingUnitsOf(plan.job);
  const steps = new Map<StepId, { id: string; text: string }[]>();
  for (const { id, step, params } of plan.instructions) {
    steps.set(step, [...(steps.get(step) ?? []), { id, text: workLine(id, params, units) }]);
  }
  return {
    etchwright: plan.etchwright,
    dataVersion: plan.dataVersion,
    title: plan.job.title,
    figures: Object.fromEntries(
      Object.entries(plan.figures).map(([id, { value, low, high, unit, working }]) => [
        id,
        { value, low, high, unit, sources: working.sources },
      ]),
    ),
    settings: plan.settings === null ? null : settingsJson(plan.settings),
    cautions: plan.cautions.map(({ rule, signal, step, params }) => ({
      rule,
      signal,
      step,
      text: fill(cautionTexts[rule], params, units),
    })),
    refusals: plan.refusals.map(({ rule, step, params }) => ({
      rule,
      step,
      text: fill(refusalTexts[rule].text, params, units),
      instead: fill(refusalTexts[rule].instead, params, units),
    })),
    steps: [...steps].map(([step, lines]) => ({ step, title: stepTitles[step], lines })),
  };
}

const span = ({ value, low, high, unit }: { value: number; low: number; high: number; unit: string }) => ({
  value,
  low,
  high,
  unit,
});

function settingsJson(settings: NonNullable<Plan['settings']>): object {
  if (settings.control === 'volts') {
    return {
      control: 'volts',
      volts: { value: settings.volts, unit: 'V' },
      minutes: span(settings.minutes),
      firstLook: span(settings.firstLook),
    };
  }
  return {
    control: 'amps',
    amps: { value: settings.amps, unit: 'A' },
    ceiling: { value: settings.ceiling, unit: 'V' },
    display: span(settings.display),
    minutes: span(settings.minutes),
    stopCharge: span(settings.stopCharge),
    firstLook: span(settings.firstLook),
  };
}
