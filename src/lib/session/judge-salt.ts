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
  /** what asks for care, when that is the verdict */
  readonly care: 'chlorine' | 'film' | null;
  readonly refusals: readonly Refusal[];
}

/** Rules about how much of it there is, or how warm: not about the salt. */
const ofAmount: readonly string[] = ['above-solubility', 'outside-tables', 'bath-too-hot'];
/** A rule of the electrodes that a change of salt can lift. */
const ofPlate = 'base-plate-with-silver';
const MG_PER_G = 1e3;

/** Metal held already, mg/L by element. */
type Held = Readonly<Record<string, number>>;

/**
 * Judges a salt for the job at hand by asking the same rules that judge the plan.
 * @param salt id of a salt as bought, or of a refused one
 * @param held what the bath holds from earlier jobs; nothing when it is new
 */
export function judgeSalt({ job }: Plan, salt: string, held: Held = {}): SaltVerdict {
  const dissolved = Object.fromEntries(
    Object.entries(held).map(([element, value]) => [element, si<'massConcentration'>(value / MG_PER_G)]),
  );
  const situation = {
    ...job,
    bath: {
      ...job.bath,
      salt,
      strength: si<'massConcentration'>(50),
      water: 'deionised' as const,
      dissolved,
    },
    figures: {},
  };
  const refusals = blocks.flatMap(({ id, step, applies }): Refusal[] => {
    const isAsked = (step === 'electrolyte' && !ofAmount.includes(id)) || id === ofPlate;
    const params = isAsked ? applies(situation) : null;
    return params === null ? [] : [{ rule: id, step, params }];
  });
  const bought = findBoughtSalt(salt);
  const why =
    bought && isBitable(job.piece.metal)
      ? pairingTexts[metals[job.piece.metal].family][bought.facts.anion]
      : null;
  if (refusals.length > 0) return { verdict: 'not this way', why, care: null, refusals };
  const films = watches.some(
    ({ id, applies }) => id === 'silver-sulfate-film' && applies(situation) !== null,
  );
  const care = films ? 'film' : bought?.facts.anion === 'chloride' ? 'chlorine' : null;
  return { verdict: care === null ? 'good' : 'with care', why, care, refusals };
}
