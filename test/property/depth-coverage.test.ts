import { describe, expect, test } from 'vitest';
import { solvedResistance } from '../../src/lib/core/cell/resistance.ts';
import { solveCell } from '../../src/lib/core/cell/solved-field.ts';
import { findBoughtSalt } from '../../src/lib/core/facts/salts.ts';
import { isBitable } from '../../src/lib/core/facts/metals.ts';
import { drawFrom, inputIds, medianDraw, pairingOf } from '../../src/lib/core/plan/budget.ts';
import { recipeOf } from '../../src/lib/core/plan/bath-chain.ts';
import { cellChain } from '../../src/lib/core/plan/cell-chain.ts';
import { planJob } from '../../src/lib/core/plan/plan-job.ts';
import { plannedBudget } from '../../src/lib/core/plan/trade-pace.ts';
import { AMPERE_HOUR } from '../../src/lib/core/units/constants.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { amount, cuff, figureOf, jobOf, patched, pendant, tokens } from '../fixtures/jobs.ts';
import type { Raw } from '../fixtures/jobs.ts';

const BENCHES = 2000;

/** Standard normal deviates of a fixed seed: Lehmer's generator, Box and Muller's way. */
function deviates(seed: number): () => number {
  let state = seed;
  const next = (): number => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  return () => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
}

/** Share of benches, drawn by chance from the stated priors, whose depth lies in the planned range. */
function covered(raw: Raw): number {
  const job = jobOf(raw);
  const plan = planJob(job, solveCell);
  const { low, high } = figureOf(plan, 'depth');
  const salt = findBoughtSalt(job.bath.salt);
  const { openArea } = job.piece;
  const field = openArea === null ? null : solveCell(job, openArea);
  if (salt === null || openArea === null || field === null || !isBitable(job.piece.metal))
    throw new Error('not a planned job');
  const pairing = pairingOf(job.piece.metal, salt);
  const recipe = recipeOf(job, salt);
  const { resistance, spread } = solvedResistance(field, job, recipe.solution.conductivity);
  const chain = cellChain(job, pairing, recipe, openArea, resistance);
  const budget = plannedBudget(job, pairing, spread, chain);
  const middle = chain(medianDraw(budget), null);
  const stopAt = {
    charge: si<'charge'>(middle['charge'] * AMPERE_HOUR),
    time: si<'time'>(middle['run_time'] * 60),
  };
  const deviate = deviates(20_261_125);
  let inside = 0;
  for (let n = 0; n < BENCHES; n += 1) {
    const depth = chain(drawFrom(budget, inputIds.map(deviate)), stopAt)['depth'];
    if (depth >= low && depth <= high) inside += 1;
  }
  return inside / BENCHES;
}

const byAmps = {
  supply: { control: 'amps', amps: amount(0.4, 'A'), maxVolts: amount(9, 'V'), showsAmps: true },
};
const byClock = { 'supply.showsAmps': false };

describe('the 90 % range of depth holds 87 to 93 % of 2000 benches drawn from the stated priors', () => {
  test.each([
    ['silver by volts, charge counted', pendant()],
    ['silver by volts, by the clock', patched(pendant(), byClock)],
    ['silver by amps', patched(pendant(), byAmps)],
    ['copper by volts, by the clock', cuff()],
    ['brass by amps', tokens()],
  ])('%s', (_name, raw) => {
    const share = covered(raw);
    expect(share).toBeGreaterThanOrEqual(0.87);
    expect(share).toBeLessThanOrEqual(0.93);
  });
});
