import type { Plan } from '../core/plan/plan.ts';
import { isBitable, metals } from '../core/facts/metals.ts';
import type { MetalFamily } from '../core/facts/metals.ts';
import { findBoughtSalt } from '../core/facts/salts.ts';
import { hazardStatements, labels } from '../core/facts/substances.ts';
import type { Pictogram, SubstanceLabel } from '../core/facts/substances.ts';

/** Hazard codes from the worst down; the label keeps this order. */
const gravity = [
  'H314',
  'H318',
  'H302',
  'H410',
  'H319',
  'H272',
] as const satisfies readonly (keyof typeof hazardStatements)[];

/** What a stronger statement already says. */
const saidBy: Readonly<Record<string, readonly string[]>> = { H319: ['H314', 'H318'], H318: ['H314'] };

/** What a label must say and show. */
export interface BathHazards {
  readonly family: MetalFamily;
  readonly signal: 'Danger' | 'Warning' | null;
  readonly statements: readonly string[];
  readonly pictograms: readonly Pictogram[];
}

/** Family of the metal that the bath bites, or null for a metal that is not planned. */
export function familyOf({ job: { piece } }: Plan): MetalFamily | null {
  return isBitable(piece.metal) ? metals[piece.metal].family : null;
}

/**
 * Words and pictograms of the used bath, ingredient by ingredient: those of the salt and those of the
 * metal's worst salt, less what a stronger one says already.
 */
export function bathHazards(plan: Plan): BathHazards | null {
  const family = familyOf(plan);
  const salt = findBoughtSalt(plan.job.bath.salt);
  if (family === null || salt === null) return null;
  const parts: readonly SubstanceLabel[] = [
    labels.salts[salt.facts.id as keyof typeof labels.salts],
    labels.usedBath[family],
  ];
  const codes = new Set(parts.flatMap(({ hazards }) => hazards));
  const kept = gravity.filter((code) => codes.has(code) && !saidBy[code]?.some((worse) => codes.has(worse)));
  // Eye irritation alone no longer asks for its mark beside the sign for corrosion (CLP Article 26).
  const drawn = new Set(parts.flatMap(({ pictograms }) => pictograms));
  if (drawn.has('GHS05') && !codes.has('H302')) drawn.delete('GHS07');
  return {
    family,
    signal: parts.some(({ signal }) => signal === 'Danger')
      ? 'Danger'
      : parts.some(({ signal }) => signal)
        ? 'Warning'
        : null,
    statements: kept.map((code) => hazardStatements[code]),
    pictograms: [...drawn].sort(),
  };
}
