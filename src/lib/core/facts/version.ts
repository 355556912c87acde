import { atomicWeights } from './elements.ts';
import { landReserve, leadResistance, limits, practice, tubCooling, undercutRatio } from './bench-facts.ts';
import { copperSulfateOffset, filmTransport, offsets, valences, yieldPriors } from './electrode-facts.ts';
import { metals, refusedMetals } from './metals.ts';
import { bathSalts, refusedSalts } from './salts.ts';
import { sources } from './sources.ts';
import { labels } from './substances.ts';
import { removers, resistKinds, supplyKinds } from './supplies.ts';

/**
 * 64-bit FNV-1a of a text, as 16 hex digits (Fowler, Noll, Vo; draft-eastlake-fnv).
 */
function fingerprint(text: string): string {
  let hash = 0xcbf29ce484222325n;
  for (let i = 0; i < text.length; i += 1) {
    hash = BigInt.asUintN(64, (hash ^ BigInt(text.charCodeAt(i))) * 0x100000001b3n);
  }
  return hash.toString(16).padStart(16, '0');
}

/** All tables that plans rest on, in one place for the fingerprint. */
const tables = {
  atomicWeights,
  metals,
  refusedMetals,
  bathSalts,
  refusedSalts,
  valences,
  yieldPriors,
  offsets,
  copperSulfateOffset,
  filmTransport,
  limits,
  practice,
  undercutRatio,
  landReserve,
  leadResistance,
  tubCooling,
  supplyKinds,
  resistKinds,
  removers,
  labels,
  sources,
};

/** Names the data a plan was made with: release date of the tables and their fingerprint. */
export const dataVersion = `2026-11-25.${fingerprint(JSON.stringify(tables)).slice(0, 8)}`;
