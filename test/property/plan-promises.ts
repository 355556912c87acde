import { parseJob } from '../../src/lib/core/plan/job-input.ts';
import { planJob } from '../../src/lib/core/plan/plan-job.ts';
import type { Plan } from '../../src/lib/core/plan/plan.ts';
import { printPlan } from '../../src/lib/words/en/printed-plan.ts';
import type { PrintedPlan } from '../../src/lib/words/en/printed-plan.ts';

export type Ending = 'faults' | 'refused' | 'planned';

/** What a job came to, and every promise it broke. */
export interface Verdict {
  readonly outcome: Ending;
  readonly broken: readonly string[];
}

/** Highest volts of any plan. */
const CEILING = 9.5;
const mayBeBelowZero: readonly string[] = ['bath_temperature_end'];

/** Everything that JSON cannot carry unchanged, by path. */
function lostInJson(value: unknown, path: string): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value === 'string' || typeof value === 'boolean' || value === null) return [];
  if (typeof value !== 'object') return [`${path} is ${typeof value}`];
  return Object.entries(value).flatMap(([key, inner]) => lostInJson(inner, `${path}.${key}`));
}

function brokenFigures({ figures }: Plan): string[] {
  return Object.entries(figures).flatMap(([id, { value, low, high }]) => {
    const faults: string[] = [];
    if (![value, low, high].every(Number.isFinite))
      faults.push(`${id} is not finite: ${low} ${value} ${high}`);
    if (!(low <= value && value <= high)) faults.push(`${id} is out of order: ${low} ${value} ${high}`);
    if (low < 0 && !mayBeBelowZero.includes(id)) faults.push(`${id} is negative: ${low}`);
    return faults;
  });
}

function brokenVolts({ figures, settings }: Plan): string[] {
  const volts = [
    ['the volts figure', figures.volts?.high],
    ...(settings === null
      ? []
      : settings.control === 'volts'
        ? [['the volts setting', settings.volts] as const]
        : ([
            ['the ceiling', settings.ceiling],
            ['the display', settings.display.high],
          ] as const)),
  ] as const;
  return volts.flatMap(([what, value]) =>
    value !== undefined && value > CEILING ? [`${what} reaches ${value} V`] : [],
  );
}

function brokenTexts({ steps, cautions, refusals }: PrintedPlan): string[] {
  const texts = [
    ...steps.flatMap(({ lines }) => lines.map(({ text }) => text)),
    ...cautions.map(({ text }) => text),
    ...refusals.flatMap(({ text, instead }) => [text, instead]),
  ];
  return texts.filter((text) => text.trim() === '' || /undefined|NaN|Infinity|\[object|[{}]/.test(text));
}

/** Plans a job and holds the plan to its promises. */
export function judge(raw: unknown): Verdict {
  const parsed = parseJob(raw);
  if ('faults' in parsed) {
    const wordless = parsed.faults.filter(({ found, expected }) => found === '' || expected === '');
    const broken = wordless.map(({ path }) => `a fault at ${path} says nothing`);
    return { outcome: 'faults', broken: parsed.faults.length === 0 ? ['faults without a fault'] : broken };
  }
  const plan = planJob(parsed.job);
  const printed = printPlan(plan);
  const broken = [
    ...brokenFigures(plan),
    ...brokenVolts(plan),
    ...brokenTexts(printed),
    ...lostInJson(printed, 'plan'),
  ];
  const text = JSON.stringify(printed);
  if (JSON.stringify(JSON.parse(text)) !== text) broken.push('the JSON does not come back the same');
  if (plan.refusals.length === 0) {
    for (const id of ['current', 'volts', 'charge', 'run_time', 'depth', 'water_volume'] as const) {
      if (plan.figures[id] === undefined) broken.push(`a plan without ${id}`);
    }
    if (plan.settings === null) broken.push('a plan without settings');
    return { outcome: 'planned', broken };
  }
  if (Object.keys(plan.figures).length > 0) broken.push('figures beside a refusal');
  if (plan.settings !== null) broken.push('settings beside a refusal');
  if (plan.instructions.length > 0) broken.push('steps beside a refusal');
  return { outcome: 'refused', broken };
}
