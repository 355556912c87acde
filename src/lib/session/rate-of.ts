import type { Rate } from '../core/learn/rate.ts';
import type { Plan } from '../core/plan/plan.ts';
import type { JobRecord } from '../notebook/records.ts';
import { runsIn, soFar } from './run-log.ts';
import { scaleStep } from './scale-step.ts';

/** A jeweller's scale, one standard deviation, g; a coarser one rounds to its step. */
const SCALE = 0.01;
const ROUNDED = 1 / Math.sqrt(12);
/** A depth gauge, and a tab snapped through and looked at under a glass, one standard deviation, μm. */
const GAUGE = 10;
const TAB = 30;
/** Of the wanted depth: what the eye takes for less, for enough and for more, and how far it may be off. Our own reading. */
export const looksLike: Readonly<Record<string, number>> = { shallower: 0.7, wanted: 1, deeper: 1.4 };
const EYE = 0.3;
/** Share of the charge that may be in doubt: beyond it a job teaches nothing. */
const IN_DOUBT = 0.1;

/**
 * The bite rate that a finished job tells: what came off over what its amp-hours were expected to take, times the rate
 * it was planned with. Weight lost counts before depth, and depth before looks.
 * @returns null for a job that did not run, counted no charge, or was not measured
 */
export function rateOf(record: JobRecord): Rate | null {
  const plan = record.planAtStart as Plan | null;
  const { result, id } = record;
  if (!plan || !result) return null;
  const so = soFar(record, runsIn(record), plan, record.updatedAt);
  if (!so.target?.countsCharge || so.chargeAh <= 0) return null;
  if (so.leastChargeAh < (1 - IN_DOUBT) * so.chargeAh) return null;
  const planned = plan.figures.depth?.working.inputs.find((input) => input.id === 'yield')?.value;
  const { charge, depth, mass_removed: mass } = plan.figures;
  if (planned === undefined || !charge || !depth || !mass) return null;
  const share = so.chargeAh / charge.value;
  const { depthUm, depthPointsUm, depthBy, massBeforeG, massAfterG, seen } = result;
  const step = scaleStep(record.draft['scale'], [massBeforeG, massAfterG]);
  const scale = Math.max(SCALE, step * ROUNDED);
  const lost = massBeforeG === null || massAfterG === null ? null : massBeforeG - massAfterG;
  if (lost !== null && lost > 2 * scale) {
    return {
      id,
      way: 'mass',
      rate: (planned * lost) / (mass.value * share),
      off: (Math.SQRT2 * scale) / lost,
    };
  }
  const looks = looksLike[seen?.['depth'] ?? ''];
  if (depthUm === null || depthUm <= 0) {
    if (looks === undefined) return null;
    const seemed = looks * plan.job.piece.depth * 1e6;
    return { id, way: 'looks', rate: (planned * seemed) / (depth.value * share), off: EYE };
  }
  return {
    id,
    way: 'depth',
    rate: (planned * depthUm) / (depth.value * share),
    off: (depthBy === 'tab' ? TAB : GAUGE) / depthUm / Math.sqrt(depthPointsUm?.length ?? 1),
  };
}
