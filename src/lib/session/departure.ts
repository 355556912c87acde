import { departureOf } from '../core/cell/departures.ts';
import type { Departure } from '../core/cell/departures.ts';
import { cellOffset } from '../core/cell/offset.ts';
import { limits } from '../core/facts/bench-facts.ts';
import { isBitable, metals } from '../core/facts/metals.ts';
import { findBoughtSalt } from '../core/facts/salts.ts';
import type { Plan } from '../core/plan/plan.ts';
import { CELSIUS_ZERO } from '../core/units/constants.ts';
import type { Reading } from '../notebook/records.ts';
import type { Run } from '../core/run/run.ts';

const MINUTE = 60_000;

/** Whether the readings of a run leave its plan, and why; null while all is well. */
export function departureIn(
  plan: Plan | null,
  run: Run | undefined,
  readings: readonly Reading[],
): Departure | null {
  const { job, settings } = plan ?? {};
  const salt = job ? findBoughtSalt(job.bath.salt) : null;
  if (!job || !settings || !run || salt === null || !isBitable(job.piece.metal)) return null;
  const seen = readings
    .filter(({ at }) => at >= run.startedAt)
    .map(({ at, amps, volts, celsius }) => ({
      minutes: (at - run.startedAt) / MINUTE,
      amps,
      volts,
      celsius,
    }));
  return departureOf(seen, {
    offset: cellOffset(job.piece.metal, salt, job.cathode.metal).median.value,
    holds: settings.control,
    celsius: job.bath.temperature - CELSIUS_ZERO,
    slope: salt.facts.conductivitySlope.value / 100,
    warm: limits.warnTemperature.value,
    isSilver: metals[job.piece.metal].family === 'silver',
  });
}
