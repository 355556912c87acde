import { toldRate } from '../core/learn/told-rate.ts';
import type { Rate } from '../core/learn/rate.ts';
import type { Plan } from '../core/plan/plan.ts';
import { converted } from '../core/units/convert.ts';
import type { JobRecord } from '../notebook/records.ts';
import { runsIn, soFar } from './run-log.ts';
import { scaleStep } from './scale-step.ts';

/** Depth as a share of the wanted one, for each answer by eye. Our own estimates. */
export const looksLike: Readonly<Record<string, number>> = { shallower: 0.7, wanted: 1, deeper: 1.4 };
/** A job is not used when more than this share of its charge is uncertain. */
const IN_DOUBT = 0.1;

/**
 * The bite rate shown by a finished job.
 * @returns null for a job that did not run, counted no charge, or was not measured
 */
export function rateOf(record: JobRecord): Rate | null {
  const plan = record.planAtStart as Plan | null;
  const { result, id } = record;
  if (!plan || !result) return null;
  const so = soFar(record, runsIn(record), plan, record.updatedAt);
  if (!so.target?.countsCharge || so.chargeAh <= 0) return null;
  if (so.leastChargeAh < (1 - IN_DOUBT) * so.chargeAh) return null;
  const planned = plan.figures.depth?.working.inputs.find((input) => input.id === 'currentEfficiency')?.value;
  const { charge, depth, mass_removed: mass } = plan.figures;
  if (planned === undefined || !charge || !depth || !mass) return null;
  const share = so.chargeAh / charge.value;
  const { depthUm, depthPointsUm, depthBy, massBeforeG, massAfterG, seen } = result;
  const told = toldRate(
    {
      lost: massBeforeG === null || massAfterG === null ? null : massBeforeG - massAfterG,
      step: scaleStep(record.draft['scale'], [massBeforeG, massAfterG]),
      depth: depthUm,
      points: depthPointsUm?.length ?? 1,
      by: depthBy === 'tab' ? 'tab' : 'gauge',
      looks: looksLike[seen?.['depth'] ?? ''] ?? null,
    },
    {
      rate: planned,
      lost: mass.value * share,
      depth: depth.value * share,
      wanted: converted(plan.job.piece.depth, 'm', 'um'),
    },
  );
  return told && { id, ...told };
}
