import { passiveMetal } from './passive-metal.ts';
import { leadedBrass } from './leaded-brass.ts';
import { leadForSale } from './lead-for-sale.ts';
import { nickelSkin } from './nickel-skin.ts';
import { tinSkin } from './tin-skin.ts';
import { saltClosedToPublic } from './salt-closed-to-public.ts';
import { buyingIsWatched } from './buying-is-watched.ts';
import { classInCharge } from './class-in-charge.ts';
import { marksAndSale } from './marks-and-sale.ts';
import { rinseBeforePickle } from './rinse-before-pickle.ts';
import { heatAndLight } from './heat-and-light.ts';
import { weakResist } from './weak-resist.ts';
import { aboveSolubility } from './above-solubility.ts';
import { ammoniumNitrate } from './ammonium-nitrate.ts';
import { basePlateWithSilver } from './base-plate-with-silver.ts';
import { bathTooHot } from './bath-too-hot.ts';
import { bathOverheats } from './bath-overheats.ts';
import { silverBathWorn } from './silver-bath-worn.ts';
import { bathWorn } from './bath-worn.ts';
import { bathWarms } from './bath-warms.ts';
import { bathWarmsUnread } from './bath-warms-unread.ts';
import { biteSlowerInPractice } from './bite-slower-in-practice.ts';
import { chlorideOnSilver } from './chloride-on-silver.ts';
import { chlorine } from './chlorine.ts';
import { chlorineRoomUnknown } from './chlorine-room-unknown.ts';
import { chromiumBath } from './chromium-bath.ts';
import { chromiumAnode } from './chromium-anode.ts';
import { clipsDry } from './clips-dry.ts';
import { depthOverHalf } from './depth-over-half.ts';
import { doesNotFit } from './does-not-fit.ts';
import { eyesAndGloves } from './eyes-and-gloves.ts';
import { filmLimit } from './film-limit.ts';
import { hydrogenLid } from './hydrogen-lid.ts';
import { metalWithoutData } from './metal-without-data.ts';
import { neverMix } from './never-mix.ts';
import { nitrateTinder } from './nitrate-tinder.ts';
import { mixedMetals } from './mixed-metals.ts';
import { overloadsSupply } from './overloads-supply.ts';
import { noAmpsLimit } from './no-amps-limit.ts';
import { noOpening } from './no-opening.ts';
import { noAmmeter } from './no-ammeter.ts';
import { nothingDownDrain } from './nothing-down-drain.ts';
import { otherMetalInBath } from './other-metal-in-bath.ts';
import { outOfReach } from './out-of-reach.ts';
import { outsideTables } from './outside-tables.ts';
import { saltNoBath } from './salt-no-bath.ts';
import { silverBathAges } from './silver-bath-ages.ts';
import { silverSulfateFilm } from './silver-sulfate-film.ts';
import { silverWithAmmonium } from './silver-with-ammonium.ts';
import { solventVapour } from './solvent-vapour.ts';
import { stainlessPlate } from './stainless-plate.ts';
import { tapWaterClouds } from './tap-water-clouds.ts';
import { tenVolts } from './ten-volts.ts';
import { tooFewVolts } from './too-few-volts.ts';
import { unfitPlate } from './unfit-plate.ts';
import { unfitSupply } from './unfit-supply.ts';
import { unsuitableStock } from './unsuitable-stock.ts';
import { voltsCapped } from './volts-capped.ts';

/** Rules that refuse a job, the most serious first. */
export const refusalRules = [
  chromiumAnode,
  chromiumBath,
  silverWithAmmonium,
  ammoniumNitrate,
  chlorideOnSilver,
  mixedMetals,
  basePlateWithSilver,
  passiveMetal,
  unsuitableStock,
  leadForSale,
  saltClosedToPublic,
  noOpening,
  tenVolts,
  unfitSupply,
  silverBathWorn,
  bathTooHot,
  aboveSolubility,
  metalWithoutData,
  saltNoBath,
  unfitPlate,
  outsideTables,
  doesNotFit,
  tooFewVolts,
] as const;

/** Rules that warn, in the order of the steps they belong to. */
export const warningRules = [
  depthOverHalf,
  leadedBrass,
  nickelSkin,
  marksAndSale,
  stainlessPlate,
  clipsDry,
  eyesAndGloves,
  nitrateTinder,
  tapWaterClouds,
  silverSulfateFilm,
  tinSkin,
  otherMetalInBath,
  buyingIsWatched,
  heatAndLight,
  weakResist,
  classInCharge,
  bathOverheats,
  biteSlowerInPractice,
  filmLimit,
  noAmmeter,
  noAmpsLimit,
  overloadsSupply,
  voltsCapped,
  hydrogenLid,
  chlorine,
  chlorineRoomUnknown,
  bathWarms,
  bathWarmsUnread,
  bathWorn,
  rinseBeforePickle,
  solventVapour,
  silverBathAges,
  neverMix,
  outOfReach,
  nothingDownDrain,
] as const;

export type RefusalId = (typeof refusalRules)[number]['id'];
export type WarningId = (typeof warningRules)[number]['id'];
export type RuleId = RefusalId | WarningId;
