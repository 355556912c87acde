import { hasIn } from '../cell/setup.ts';
import { cellOffset } from '../cell/offset.ts';
import { limits } from '../facts/limits.ts';
import { isBitable, metals } from '../facts/metals.ts';
import { findBoughtSalt } from '../facts/salts.ts';
import { hasKnobs } from '../facts/supplies.ts';
import { depthByLoss } from '../run/depth.ts';
import type { DepthSpread } from '../run/depth.ts';
import type { Expected } from '../run/level.ts';
import type { Reading, Run, Target } from '../run/run.ts';
import { watchOf } from '../run/watch.ts';
import type { Watch } from '../run/watch.ts';
import { converted } from '../units/convert.ts';
import type { JobInput } from './job-input.ts';
import type { Plan } from './plan.ts';

/** A run held against the plan it was started with. */

/** What can be read at this bench while it bites, in the order asked. */
export const readableIn = (job: JobInput): readonly Quantity[] => [
  ...(job.supply.showsAmps ? (['amps'] as const) : []),
  ...(hasKnobs(job.supply.kind) || hasIn(job, 'multimeter') ? (['volts'] as const) : []),
  ...(hasIn(job, 'thermometer') ? (['celsius'] as const) : []),
];
type Quantity = 'amps' | 'volts' | 'celsius';

/** What a run goes by; null for a plan that cannot be run. */
export function targetOf(plan: Plan | null): Target | null {
  const settings = plan?.settings;
  if (!plan || !settings) return null;
  const { charge, current } = plan.figures;
  const isHeld = settings.control === 'amps';
  return {
    amps: isHeld ? settings.amps : (current?.value ?? 0),
    chargeAh: isHeld ? settings.stopCharge.value : (charge?.value ?? 0),
    minutes: settings.minutes.value,
    countsCharge: plan.job.supply.showsAmps,
  };
}

/** What its readings are measured against; null for a plan that cannot be run. */
function expectedOf(plan: Plan): Expected | null {
  const target = targetOf(plan);
  const { job, settings } = plan;
  if (!target || !settings) return null;
  const { metal } = job.piece;
  const salt = findBoughtSalt(job.bath.salt);
  const isKnown = salt !== null && isBitable(metal);
  return {
    amps: target.amps,
    // a plan of another version may name a metal or salt that is no longer known; alarms must still sound
    offset: isKnown ? cellOffset(metal, salt, job.cathode.metal).median.value : 0,
    holds: settings.control,
    celsius: converted(job.bath.temperature, 'K', 'degC'),
    slope: converted(salt?.facts.conductivitySlope.value ?? 0, '%', '1'),
    isSilver: isKnown && metals[metal].family === 'silver',
    limits: {
      warn: limits.warnTemperature.value,
      stop: limits.stopTemperature.value,
      volts: limits.refusedVolts.value,
    },
  };
}

/** What the readings of a run call for; nothing while all is well. @param readings of the whole job, oldest first */
export function watchRun(plan: Plan | null, run: Run | undefined, readings: readonly Reading[]): Watch {
  const expected = plan && expectedOf(plan);
  if (!expected || !run) return { departure: null, alarms: [] };
  return watchOf(
    readings.filter(({ at }) => at >= run.startedAt),
    expected,
  );
}

/**
 * Mean depth that a loss of weight stands for, μm; null without a loss, or without the plan's figures.
 * @param loss g, of the whole batch
 * @param step smallest step of the scale, g
 */
export function depthByWeight(plan: Plan, loss: number, step: number): DepthSpread | null {
  const { depth, mass_removed: mass } = plan.figures;
  if (!depth || !mass) return null;
  const { thickness, openAreaFrom } = plan.job.piece;
  const expected = {
    depth: depth.value,
    mass: mass.value,
    thickness: converted(thickness, 'm', 'um'),
    areaFrom: openAreaFrom,
  };
  return depthByLoss(expected, loss, step);
}

/** Between which minutes a bite by the clock is planned. */
export interface ByTheClock {
  /** clean metal in a clean bath */
  readonly tables: number;
  /** the trade's for this depth; null where it says none */
  readonly trade: number | null;
}

/** What a bite by the clock is planned between; null where amps are counted: then the plan is the tables'. */
export function byTheClock({ job, figures }: Plan): ByTheClock | null {
  const { run_time: time, current, practice_over_model: ratio } = figures;
  const share = current?.working.inputs.find(({ id }) => id === 'slowness')?.value;
  if (job.supply.showsAmps || !time || share === undefined) return null;
  return { tables: time.value * share, trade: ratio ? ratio.value * time.value : null };
}
