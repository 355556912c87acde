import { defaultReadingUnits } from '../core/job/reading-units.ts';
import { besideAnswers } from '../core/plan/input-paths.ts';
import type { Plan } from '../core/plan/plan.ts';
import { figureText } from '$words/render.ts';

/** What answers rest on: inputs in SI to six digits, and figures as they are shown. Plain data. */
export interface CheckBasis {
  readonly inputs: Readonly<Record<string, string>>;
  readonly figures: Readonly<Record<string, string>>;
  /** volts that the knob may read at most; 0 when there is no plan to power */
  readonly mostVolts: number;
  /** amps that the knob may read at most; 0 where none is set */
  readonly mostAmps: number;
  /** no rule refuses the job; the bare area may still be unknown, since mixing does not need it */
  readonly mayMix: boolean;
  /** also, everything is known that is needed to switch on */
  readonly mayPower: boolean;
}

/** Before anything is planned nothing may be mixed or powered. */
export const noBasis: CheckBasis = {
  inputs: {},
  figures: {},
  mostVolts: 0,
  mostAmps: 0,
  mayMix: false,
  mayPower: false,
};

/** Rounded to six digits, so that 1 in and 25.4 mm are the same answer; no ruler reads finer. */
const sixDigits = (value: unknown): string =>
  typeof value === 'number' ? Number(value.toPrecision(6)).toString() : JSON.stringify(value);

/** Flattens nested input to dotted paths. */
function flatten(value: unknown, path: string, into: Record<string, string>): void {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
    for (const [key, inner] of Object.entries(value))
      flatten(inner, path === '' ? key : `${path}.${key}`, into);
  } else {
    into[path] = sixDigits(value);
  }
}

/** The basis of a plan. The data version is left out: better tables do not undo what was seen. */
export function checkBasisOf(plan: Plan): CheckBasis {
  const inputs: Record<string, string> = {};
  const answers = Object.entries(plan.job).filter(([key]) => !besideAnswers.some((beside) => beside === key));
  flatten(Object.fromEntries(answers), '', inputs);
  const { settings } = plan;
  return {
    inputs,
    figures: Object.fromEntries(
      Object.entries(plan.figures).map(([id, figure]) => [id, figureText(figure, defaultReadingUnits)]),
    ),
    mostVolts: settings === null ? 0 : settings.control === 'amps' ? settings.ceiling : settings.volts,
    mostAmps: settings?.control === 'amps' ? settings.amps : 0,
    mayMix: plan.refusals.length === 0,
    mayPower: plan.refusals.length === 0 && settings !== null,
  };
}
