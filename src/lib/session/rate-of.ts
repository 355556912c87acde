import { toldRate } from '../core/learn/told-rate.ts';
import type { Rate } from '../core/learn/rate.ts';
import type { Plan } from '../core/plan/plan.ts';
import { converted } from '../core/units/convert.ts';
import { toMinutes } from '../core/units/time.ts';
import type { JobRecord } from '../notebook/records.ts';
import { runsIn, soFar } from './run-log.ts';
import { scaleStep } from './scale-step.ts';

/** Depth as a share of the wanted one, for each answer by eye. Our own estimates. */
export const looksLike: Readonly<Record<string, number>> = { shallower: 0.7, wanted: 1, deeper: 1.4 };
/** A job is not used when more than this share of its charge is uncertain. */
const IN_DOUBT = 0.1;

/** What a finished job has shown: metal over amp-hours where they were counted, else how fast it went. */
export interface Shown {
  readonly rate: Rate | null;
  /** share of the tables' current that passed, as depth and minutes tell */
  readonly pace: Rate | null;
}

const nothing: Shown = { rate: null, pace: null };

/** What a finished job has shown; nothing for one that did not run, or was not measured. */
export function shownBy(record: JobRecord): Shown {
  const plan = record.planAtStart as Plan | null;
  const { result, id } = record;
  if (!plan || !result) return nothing;
  const so = soFar(record, runsIn(record), plan, record.updatedAt);
  const { charge, current, depth, mass_removed: mass, run_time: time } = plan.figures;
  if (!so.target || !charge || !current || !depth || !mass || !time) return nothing;
  const counts = so.target.countsCharge;
  if (so.chargeAh <= 0 || so.leastChargeAh < (1 - IN_DOUBT) * so.chargeAh) return nothing;
  const planned = (counts ? depth : current).working.inputs.find(
    (input) => input.id === (counts ? 'currentEfficiency' : 'slowness'),
  )?.value;
  if (planned === undefined) return nothing;
  const share = counts ? so.chargeAh / charge.value : toMinutes(so.on) / time.value;
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
  const shown = told && { id, ...told };
  return counts ? { rate: shown, pace: null } : { rate: null, pace: shown };
}
