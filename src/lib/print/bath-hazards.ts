import type { Plan } from '../core/plan/plan.ts';
import { isBitable, metals } from '../core/facts/metals.ts';
import type { MetalFamily } from '../core/facts/metals.ts';
import { findBoughtSalt } from '../core/facts/salts.ts';
import { hazardStatements, labels, labelStatements, leadLabel } from '../core/facts/substances.ts';
import type { Pictogram, SubstanceLabel } from '../core/facts/substances.ts';
import { pictogramsOf } from '../core/facts/substances/pictograms.ts';

/** Highest number of statements on a label. The most serious are kept. */
const ROOM = 6;

/** Words and pictograms that a label must have. */
export interface BathHazards {
  readonly family: MetalFamily;
  readonly signal: 'Danger' | 'Warning' | null;
  readonly statements: readonly string[];
  readonly pictograms: readonly Pictogram[];
}

/** Family of the metal that the bath etches; null for a metal that is not planned. */
export function familyOf({ job: { piece } }: Plan): MetalFamily | null {
  return isBitable(piece.metal) ? metals[piece.metal].family : null;
}

/**
 * Words and pictograms of a used bath: those of its salt and of the metal's most harmful salt, without those
 * that a stronger one covers.
 * @param salt id as bought
 */
export function hazardsOf(family: MetalFamily | null, salt: string, hasLead: boolean): BathHazards | null {
  const bought = findBoughtSalt(salt);
  if (family === null || bought === null) return null;
  const parts: readonly SubstanceLabel[] = [
    labels.salts[bought.facts.id as keyof typeof labels.salts],
    labels.usedBath[family],
    ...(hasLead ? [leadLabel] : []),
  ];
  const codes = parts.flatMap(({ hazards }) => hazards);
  return {
    family,
    signal: parts.some(({ signal }) => signal === 'Danger')
      ? 'Danger'
      : parts.some(({ signal }) => signal)
        ? 'Warning'
        : null,
    statements: labelStatements(codes)
      .slice(0, ROOM)
      .map((code) => hazardStatements[code]),
    pictograms: pictogramsOf(codes),
  };
}

/** Whether the piece gives off lead into its bath. */
export const hasLead = ({ job: { piece } }: Plan): boolean =>
  isBitable(piece.metal) && 'Pb' in metals[piece.metal].composition.massPercent;

/** Those of a plan's bath. */
export const bathHazards = (plan: Plan): BathHazards | null =>
  hazardsOf(familyOf(plan), plan.job.bath.salt, hasLead(plan));
