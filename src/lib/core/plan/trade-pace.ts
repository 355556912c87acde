import { metalGroups } from '../facts/metal-groups.ts';
import { practice } from '../facts/limits.ts';
import { RANGE_Z } from '../units/range.ts';
import { budgetFor, medianDraw } from './budget.ts';
import type { Budget, Draw, Pairing } from './budget.ts';
import type { JobInput } from './job-input.ts';

/** Room that the slow end of a range leaves beyond the trade's own minutes: our judgement, as is half way. */
const BEYOND = 1.3;

/** What the trade takes for a shallow visible bite, min: shortest and longest; null where it says nothing. */
export function tradeMinutes({ family, anion }: Pairing): readonly [number, number] | null {
  if (family === 'silver' && anion === 'nitrate') {
    const { low, high } = practice.plannedMinutes.uncertainty;
    return [low, high];
  }
  const { value } = practice.saltWaterMinutes;
  const isCopperOrBrass = metalGroups[family] === 'copper and brass';
  return isCopperOrBrass && anion === 'chloride' ? [value, value] : null;
}

/**
 * The budget of a bite by the clock, drawn half way to the trade's minutes: the trade sets no volts and sizes down, the
 * tables know nothing of films, and neither alone has held. Never faster than the tables; its range holds both.
 * @param byTables min, of clean metal in a clean bath
 */
function withTradePace(budget: Budget, job: JobInput, pairing: Pairing, byTables: number): Budget {
  const trade = tradeMinutes(pairing);
  const { slowness } = budget;
  const isOwn = slowness.evidence === 'yourLog';
  if (job.supply.showsAmps || isOwn || trade === null || slowness.spread.kind !== 'slowSide') return budget;
  const [short, long] = trade;
  const told = (Math.sqrt(short * long) * job.piece.depth * 1e6) / practice.practiceDepth.value;
  const median = Math.min(1, byTables / Math.sqrt((byTables / slowness.median) * told));
  const slow = Math.max(slowness.spread.slow, Math.log((BEYOND * told * median) / byTables) / RANGE_Z);
  const fast = Math.max(0.1, Math.log(1 / median) / RANGE_Z);
  return { ...budget, slowness: { ...slowness, median, spread: { kind: 'slowSide', slow, fast } } };
}

/**
 * The budget that a job is planned with: the tables' and the bench's, and by the clock the trade's.
 * @param pathSpread standard deviation of the logarithm of the bath's resistance
 * @param chain the job's chain, asked once for the minutes of clean metal
 */
export function plannedBudget(
  job: JobInput,
  pairing: Pairing,
  pathSpread: number,
  chain: (draw: Draw, stopAt: null) => { readonly run_time: number },
): Budget {
  const budget = budgetFor(job, pairing, pathSpread);
  const byTables = chain({ ...medianDraw(budget), slowness: 1 }, null).run_time;
  return withTradePace(budget, job, pairing, byTables);
}
