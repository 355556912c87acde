import type { Setup } from '../cell/setup.ts';
import { metalGroupOf } from '../facts/metal-groups.ts';
import { awayFor } from './away.ts';
import type { Outcome } from './outcome.ts';

const DISSOLVED = 'dissolved_metal.';

/**
 * What would drive the metal out of the whole bath once this run is over: only where the maker's authority
 * allows it, and never for a bath that must be handed over.
 * @param outcome metal in the bath, mg/L, and its volume, mL
 */
export function treatmentOf({ piece, bath, place }: Setup, outcome: Outcome): Outcome {
  if (!place.mayTreat) return {};
  const volumeMl = outcome['bath_volume'] as number;
  const heldMg = Object.fromEntries(
    Object.entries(outcome)
      .filter(([id]) => id.startsWith(DISSOLVED))
      .map(([id, perLitre]) => [id.slice(DISSOLVED.length), (perLitre * volumeMl) / 1e3]),
  );
  const group = metalGroupOf(piece.metal) ?? 'unknown';
  const { dose } = awayFor(
    { salt: bath.salt, group, strength: bath.strength, volumeMl, heldMg, perLitre: 0 },
    place,
  );
  return dose === null ? {} : { [`treatment_dose.${dose.reagent}`]: dose.grams, sludge_mass: dose.sludge };
}
