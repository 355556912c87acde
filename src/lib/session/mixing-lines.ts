import { readingUnitsOf } from '../core/job/reading-units.ts';
import { practice } from '../core/facts/limits.ts';
import type { Plan } from '../core/plan/plan.ts';
import { fromHours } from '../core/units/time.ts';
import { workLine } from '$words/work-line.ts';

export interface MixingLine {
  readonly id: string;
  readonly text: string;
}

/** The plan's lines of mixing. */
export const mixingLines = ({ job, instructions }: Plan): readonly MixingLine[] =>
  instructions
    .filter(({ step }) => step === 'electrolyte')
    .map(({ id, params }) => ({ id, text: workLine(id, params, readingUnitsOf(job)) }));

/** When all salt has dissolved, ms since 1970. */
export const dissolvedAt = (mixedAt: number): number => mixedAt + fromHours(practice.dissolveHours.value);
