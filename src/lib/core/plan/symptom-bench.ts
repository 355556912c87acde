import { isBitable, metals } from '../facts/metals.ts';
import { findBoughtSalt } from '../facts/salts.ts';
import { hasKnobs, supplyKindOf } from '../facts/supplies.ts';
import { anyBench } from '../facts/symptoms.ts';
import type { SymptomBench } from '../facts/symptoms.ts';
import type { JobInput } from './job-input.ts';

/** The bench of a job as its symptoms are told; without a plan nothing is known, and all of it is told. */
export function symptomBenchOf(job: JobInput | null): SymptomBench {
  if (job === null) return anyBench;
  const { piece, bath, cathode, supply } = job;
  const family = isBitable(piece.metal) ? metals[piece.metal].family : null;
  const anion = findBoughtSalt(bath.salt)?.facts.anion;
  const kind = supplyKindOf(supply.kind);
  return {
    isStainless: cathode.metal === 'stainless',
    showsAmps: supply.showsAmps,
    hasKnobs: hasKnobs(kind),
    isBattery: kind === 'battery',
    family,
    holdsSilver: family === null ? null : family === 'silver' || (bath.dissolved.Ag ?? 0) > 0,
    anion: anion ?? null,
  };
}
