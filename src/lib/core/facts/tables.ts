import { advice, purposeDepths, tools } from './advice.ts';
import { airLimits } from './air-limits.ts';
import {
  bankCard,
  landReserve,
  leadResistance,
  limits,
  practice,
  tubCooling,
  undercutRatio,
  ventilation,
} from './limits.ts';
import { plateMetals, plateRefusals } from './cathodes.ts';
import { classFacts } from './class-facts.ts';
import { copperSulfateOffset, filmTransport, offsets, valences, yieldPriors } from './electrode-facts.ts';
import { atomicWeights } from './elements.ts';
import { potentials } from './potentials.ts';
import { firstAid, minutes } from './first-aid.ts';
import { lawAmounts, lawLines, lawRead } from './law.ts';
import { metals, refusedMetals, refusedStock } from './metals.ts';
import { cationDoes, passiveIn, skinIn } from './pairing-facts.ts';
import { practicePaces } from './practice-pace.ts';
import { resistFacts } from './resists.ts';
import { allSalts, refusedSalts } from './salts.ts';
import { conductivityLine } from './salts/salt-facts.ts';
import { cadmium, hallmarkFrom, lead, nickelRelease } from './selling.ts';
import { sources } from './sources.ts';
import { extraStatements, hazardStatements, labels, substances } from './substances.ts';
import { resistKinds } from './resists.ts';
import { supplyKinds } from './supplies.ts';
import { symptomFacts } from './symptoms.ts';
import { combining, freeCarbonate, freeChloride, metalLines, pHWindows, retireAfter } from './treatment.ts';
import { undercutTable } from './undercut.ts';
import { wasteCodes } from './waste-codes.ts';
import { gloveLayers, goggleMarks, letterMinutes, wearAdvice, worn } from './wear.ts';

/** All tables that plans use. The fingerprint and the search for what uses a source need them together. */
export const tables = {
  atomicWeights,
  metals,
  refusedMetals,
  refusedStock,
  allSalts,
  conductivityLine,
  refusedSalts,
  valences,
  yieldPriors,
  offsets,
  copperSulfateOffset,
  filmTransport,
  passiveIn,
  skinIn,
  cationDoes,
  potentials,
  plateMetals,
  plateRefusals,
  limits,
  airLimits,
  practice,
  practicePaces,
  advice,
  purposeDepths,
  tools,
  bankCard,
  classFacts,
  undercutTable,
  undercutRatio,
  landReserve,
  leadResistance,
  tubCooling,
  ventilation,
  freeChloride,
  freeCarbonate,
  pHWindows,
  retireAfter,
  metalLines,
  combining,
  wasteCodes,
  supplyKinds,
  resistKinds,
  resistFacts,
  symptomFacts,
  substances,
  labels,
  hazardStatements,
  extraStatements,
  firstAid,
  minutes,
  worn,
  letterMinutes,
  goggleMarks,
  gloveLayers,
  wearAdvice,
  lead,
  cadmium,
  nickelRelease,
  hallmarkFrom,
  lawAmounts,
  lawLines,
  lawRead,
  sources,
};
