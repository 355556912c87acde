import { isBitable, metals } from '../core/facts/metals.ts';
import { findBoughtSalt } from '../core/facts/salts.ts';
import type { Plan, Refusal } from '../core/plan/plan.ts';
import { blocks, watches } from '../core/rules/index.ts';
import { si } from '../core/units/quantity.ts';
import { pairingTexts } from '../words/pairings.ts';

/** How a salt suits a job: the rules' verdict and the chemistry in a sentence. */
export interface SaltVerdict {
  readonly verdict: 'good' | 'with care' | 'not this way';
  readonly why: string | null;
  readonly refusals: readonly Refusal[];
}

/** Rules about what the salt does, as against how much of it there is. */
const ofAmount: readonly string[] = ['above-solubility', 'outside-tables', 'too-few-volts', 'does-not-fit'];
const careful: readonly string[] = ['silver-sulfate-film', 'tap-water-clouds'];

/**
 * Judges a salt for the job at hand by asking the same rules that judge the plan.
 * @param salt id of a salt as bought, or of a refused one
 */
export function judgeSalt({ job }: Plan, salt: string): SaltVerdict {
  const situation = {
    ...job,
    bath: { ...job.bath, salt, strength: si<'massConcentration'>(50) },
    figures: {},
  };
  const refusals = blocks.flatMap(({ id, step, applies }): Refusal[] => {
    const params = step === 'metal' || ofAmount.includes(id) ? null : applies(situation);
    return params === null ? [] : [{ rule: id, step, params }];
  });
  const bought = findBoughtSalt(salt);
  const why =
    bought && isBitable(job.piece.metal)
      ? pairingTexts[metals[job.piece.metal].family][bought.facts.anion]
      : null;
  if (refusals.length > 0) return { verdict: 'not this way', why, refusals };
  const needsCare =
    watches.some(({ id, applies }) => careful.includes(id) && applies(situation) !== null) ||
    bought?.facts.anion === 'chloride';
  return { verdict: needsCare ? 'with care' : 'good', why, refusals };
}
