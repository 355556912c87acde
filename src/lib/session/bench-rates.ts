import { canBe, learnt } from '../core/learn/bite-rate.ts';
import type { Learnt, Rate } from '../core/learn/bite-rate.ts';
import { yieldPriors } from '../core/facts/electrode-facts.ts';
import { isBitable, metals } from '../core/facts/metals.ts';
import type { MetalFamily } from '../core/facts/metals.ts';
import type { Anion } from '../core/facts/salts/salt-facts.ts';
import { findBoughtSalt } from '../core/facts/salts.ts';
import type { Plan } from '../core/plan/plan.ts';
import type { JobRecord } from '../notebook/records.ts';
import { runsIn, soFar } from './run-log.ts';

/** A jeweller's scale and a depth gauge, one standard deviation: g and μm. */
const SCALE = 0.01;
const GAUGE = 10;
/** Share of the charge that may be in doubt: beyond it a job teaches nothing. */
const IN_DOUBT = 0.1;

/** Metal family and salt's anion: what a bite rate belongs to. */
const pairOf = (metal: string, salt: string) => {
  const found = findBoughtSalt(salt);
  return found !== null && isBitable(metal)
    ? ({ family: metals[metal].family, anion: found.facts.anion } as const)
    : null;
};

/**
 * The bite rate that a finished job tells: what came off over what its amp-hours were expected to take, times the rate
 * it was planned with. Weight lost counts before depth.
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
  const { depthUm, depthPointsUm, massBeforeG, massAfterG } = result;
  const lost = massBeforeG === null || massAfterG === null ? null : massBeforeG - massAfterG;
  if (lost !== null && lost > 2 * SCALE) {
    return {
      id,
      way: 'mass',
      rate: (planned * lost) / (mass.value * share),
      off: (Math.SQRT2 * SCALE) / lost,
    };
  }
  if (depthUm === null || depthUm <= 0) return null;
  return {
    id,
    way: 'depth',
    rate: (planned * depthUm) / (depth.value * share),
    off: GAUGE / depthUm / Math.sqrt(depthPointsUm?.length ?? 1),
  };
}

/** The rates of one metal and salt. */
export interface PairRates {
  readonly family: MetalFamily;
  readonly anion: Anion;
  readonly rates: readonly Rate[];
}

/** Every rate that a notebook tells, by what it belongs to. */
export type BenchRates = ReadonlyMap<string, PairRates>;

const keyOf = ({ family, anion }: Pick<PairRates, 'family' | 'anion'>): string => `${family} ${anion}`;

/** What one record tells. Its plan may be of another version, or from any hand: what cannot be read tells nothing. */
function toldBy(record: JobRecord) {
  try {
    const plan = record.planAtStart as Plan | null;
    const pair = plan && pairOf(plan.job.piece.metal, plan.job.bath.salt);
    const rate = pair && rateOf(record);
    return rate && canBe(rate) ? { pair, rate } : null;
  } catch {
    return null;
  }
}

/** @param except the job that is being planned: it does not teach itself */
export function ratesIn(records: readonly JobRecord[], except: string): BenchRates {
  const pairs = new Map<string, PairRates>();
  for (const record of records) {
    if (record.id === except) continue;
    const told = toldBy(record);
    if (!told) continue;
    const { pair, rate } = told;
    const key = keyOf(pair);
    pairs.set(key, { ...pair, rates: [...(pairs.get(key)?.rates ?? []), rate] });
  }
  return pairs;
}

/** What this bench has taught of a metal and a salt; null before the first job. */
export function learntFor(
  rates: BenchRates,
  metal: string,
  salt: string,
  strip: Rate | null = null,
): Learnt | null {
  const pair = pairOf(metal, salt);
  if (!pair) return null;
  const table = yieldPriors[pair.family][pair.anion].median.value;
  return learnt(table, [...(rates.get(keyOf(pair))?.rates ?? []), ...(strip ? [strip] : [])]);
}
