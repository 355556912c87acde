import { atomicWeights } from './elements.ts';
import { firstAid, minutes } from './first-aid.ts';
import { landReserve, leadResistance, limits, practice, tubCooling, undercutRatio } from './bench-facts.ts';
import { copperSulfateOffset, filmTransport, offsets, valences, yieldPriors } from './electrode-facts.ts';
import { metals, refusedMetals } from './metals.ts';
import { bathSalts, refusedSalts } from './salts.ts';
import { sources } from './sources.ts';
import { labels } from './substances.ts';
import { removers, resistKinds, supplyKinds } from './supplies.ts';
import { gloveLayers, goggleMarks, letterMinutes, moreHazardStatements, wearAdvice, worn } from './wear.ts';

/** 32-bit FNV-1a of a text's UTF-16 units, as 8 hex digits (Fowler, Noll, Vo). */
function fingerprint(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, '0');
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
  firstAid,
  minutes,
  worn,
  letterMinutes,
  goggleMarks,
  gloveLayers,
  wearAdvice,
  moreHazardStatements,
  sources,
};

/** Names the data a plan was made with: release date of the tables and their fingerprint. */
export const dataVersion = `2026-11-25.${fingerprint(JSON.stringify(tables))}`;
