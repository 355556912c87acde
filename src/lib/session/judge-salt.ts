import { isBitable, metals } from '../core/facts/metals.ts';
import { findBoughtSalt } from '../core/facts/salts.ts';
import type { SaltId } from '../core/facts/salts.ts';
import type { Plan, Refusal } from '../core/plan/plan.ts';
import { judgeSituation } from '../core/rules/judge-pairing.ts';
import type { PairingVerdict } from '../core/rules/judge-pairing.ts';
import { si } from '../core/units/quantity.ts';
import { pairingTexts } from '$words/pairings.ts';

/** How well a salt suits a job: the verdict of the rules, and the chemistry in a sentence. */
export interface SaltVerdict {
  readonly verdict: PairingVerdict;
  readonly why: string | null;
  /** why it needs care, when that is the verdict */
  readonly care: 'chlorine' | 'film' | null;
  readonly refusals: readonly Refusal[];
}

/** A rule about the plate that another salt can satisfy. */
const ofPlate = 'base-plate-with-silver';
const films: readonly string[] = ['silver-sulfate-film', 'tin-skin'];
const MG_PER_G = 1e3;

/** Metal already in the bath, mg/L by element. */
type Held = Readonly<Record<string, number>>;

/**
 * Judges a salt for a job by the rules that also judge its plan.
 * @param held what the bath holds from earlier jobs; empty when it is new
 */
export function judgeSalt({ job }: Plan, salt: SaltId, held: Held = {}): SaltVerdict {
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
  const judged = judgeSituation(situation);
  const refusals: readonly Refusal[] = judged.refusals.filter(
    ({ rule, step }) => step === 'electrolyte' || rule === ofPlate,
  );
  const bought = findBoughtSalt(salt);
  const why =
    bought && isBitable(job.piece.metal)
      ? pairingTexts[metals[job.piece.metal].family][bought.facts.anion]
      : null;
  if (refusals.length > 0) return { verdict: 'refuse', why, care: null, refusals };
  const cares = judgeSituation({ ...situation, cathode: { ...job.cathode, metal: job.piece.metal } }).cares;
  const hasFilm = cares.some(({ rule }) => films.includes(rule));
  const care = hasFilm ? 'film' : bought?.facts.anion === 'chloride' ? 'chlorine' : null;
  return { verdict: care === null ? 'good' : 'with care', why, care, refusals };
}
