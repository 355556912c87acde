import { coveredStrengths, coveredTemperatures, solubility } from '../chemistry/solution.ts';
import type { BoughtSalt } from '../facts/salts.ts';
import { CELSIUS_ZERO } from '../units/constants.ts';
import { celsiusOf, si } from '../units/quantity.ts';
import type { InputId } from './budget.ts';
import type { JobInput } from './job-input.ts';

/*
 * How far a hand misses (3 mm of gap, 5 % of a knob, 10 % of strength, 3 K, one minute) is our own reading,
 * to set beside what the tables do not know.
 */

/** What a maker sets by hand, not exactly; another value can be tried for each. */
export const triedIds = ['gap', 'knob', 'strength', 'temperature', 'time'] as const;
export type TriedId = (typeof triedIds)[number];

/** A value that may be tried, and between which it may lie when nobody means to change it. */
export interface Span {
  readonly planned: number;
  readonly low: number;
  readonly high: number;
  readonly unit: 'mm' | 'A' | 'V' | 'g/L' | 'degC' | 'min' | 'cm2' | '%';
}

/** One value to be tried, in the unit of its span. */
export interface Trying {
  readonly id: TriedId | InputId;
  readonly value: number;
}

/** What the job would come to with that value. */
export interface Trial {
  /** um, when it is stopped as planned */
  readonly depth: number;
  /** min with current on, to the wanted depth */
  readonly minutes: number;
  /** A, at the start */
  readonly amps: number;
  /** as tried: no nearer, stronger or warmer than can be reckoned with */
  readonly value: number;
}

/** How far a hand misses what it sets, our own reading: mm, shares, K and min. */
export const misses = { gap: 3, knob: 0.05, strength: 0.1, temperature: 3, minutes: 1 } as const;
/** The smallest gap at which a plate is hung, mm. */
const NEAREST = 5;

const within = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** What the maker sets, each with how far it may be off. @param minutes of the planned run */
export function spansOf(
  { cathode, supply, bath }: JobInput,
  salt: BoughtSalt,
  minutes: number,
): Readonly<Record<TriedId, Span>> {
  const about = (
    planned: number,
    miss: number,
    unit: Span['unit'],
    limits: readonly [number, number] = [0, Infinity],
  ): Span => ({
    planned,
    low: within(planned - miss, limits[0], limits[1]),
    high: within(planned + miss, limits[0], limits[1]),
    unit,
  });
  const [weakest, strongest] = coveredStrengths(salt, bath.temperature);
  const dissolves = Math.min(strongest, solubility(salt, bath.temperature));
  const knob = supply.control === 'amps' ? supply.amps : supply.volts;
  const celsius = celsiusOf(bath.temperature);
  return {
    gap: about(cathode.gap * 1e3, misses.gap, 'mm', [NEAREST, Infinity]),
    knob: about(knob, misses.knob * knob, supply.control === 'amps' ? 'A' : 'V'),
    strength: about(bath.strength, misses.strength * bath.strength, 'g/L', [weakest, dissolves]),
    temperature: about(celsius, misses.temperature, 'degC', coveredTemperatures(salt)),
    time: about(minutes, misses.minutes, 'min'),
  };
}

/** The job with one of its answers otherwise; the time is not the job's but the run's. */
export function withTried(job: JobInput, id: TriedId, value: number): JobInput {
  const { supply, cathode, bath } = job;
  switch (id) {
    case 'gap':
      return { ...job, cathode: { ...cathode, gap: si<'length'>(value / 1e3) } };
    case 'knob':
      return supply.control === 'amps'
        ? { ...job, supply: { ...supply, amps: si<'current'>(value) } }
        : { ...job, supply: { ...supply, volts: si<'voltage'>(value) } };
    case 'strength':
      return { ...job, bath: { ...bath, strength: si<'massConcentration'>(value) } };
    case 'temperature':
      return { ...job, bath: { ...bath, temperature: si<'temperature'>(value + CELSIUS_ZERO) } };
    case 'time':
      return job;
  }
}
