import type { Setup } from '../cell/setup.ts';
import { metalGroupOf } from '../facts/metal-groups.ts';
import { awayFor } from './away.ts';
import type { Dissolved } from './cell-chain.ts';
import type { Outcome } from './outcome.ts';

/**
 * What would drive the metal out of the whole bath once this run is over: only where the maker's authority
 * allows it, and never for a bath that must be handed over.
 */
export function treatmentOf(
  { piece, bath, place }: Setup,
  volumeMl: number,
  dissolved: readonly Dissolved[],
): Outcome {
  if (!place.mayTreat) return {};
  const heldMg = Object.fromEntries(
    dissolved.map(({ element, perLitre }) => [element, (perLitre * volumeMl) / 1e3]),
  );
  const group = metalGroupOf(piece.metal) ?? 'unknown';
  const { dose } = awayFor(
    { salt: bath.salt, group, strength: bath.strength, volumeMl, heldMg, perLitre: 0 },
    place,
  );
  return dose === null ? {} : { [`treatment_dose.${dose.reagent}`]: dose.grams, sludge_mass: dose.sludge };
}
