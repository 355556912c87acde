import { toSi } from '../units/convert.ts';
import { celsiusOf, si } from '../units/quantity.ts';
import type { Charge, Mass } from '../units/quantity.ts';
import {
  airOpening,
  freshAir,
  gasVolume,
  hydrogenAir,
  partsPerMillion,
  timeToReach,
} from '../chemistry/gas.ts';
import { coolingOf, heatingRate } from '../chemistry/heat.ts';
import type { OperatingPoint } from '../cell/operating-point.ts';
import type { Setup } from '../cell/setup.ts';
import { boxOf } from '../cell/tub.ts';
import { timeToWarm } from '../cell/warming.ts';
import type { Ran, WarmingCell } from '../cell/warming.ts';
import { limits, practice, tubCooling, ventilation } from '../facts/limits.ts';
import type { Draw, Pairing } from './budget.ts';
import type { FigureId, Outcome } from './outcome.ts';

/** °C; warming ends here, because the bath boils */
const BOILING = 100;
const LID = toSi(ventilation.lid.value, ventilation.lid.unit, 'volume');
const FLAMMABLE = limits.hydrogenFlammable.value / 100;
const CHLORINE = limits.chlorineShort.value * 1e-6;
/** A day's work, min: nothing that would take longer is reported. */
const DAY = 60 * practice.dayOfWork.value;

/** Whether a time lies beyond the day's work, so that it is not reported. */
export const isNever = (id: FigureId, outcome: Outcome): boolean =>
  (id === 'minutes_to_warn_temperature' || id === 'minutes_to_stop_temperature') && outcome[id] === DAY;

/**
 * What the bath stores and loses.
 * @returns for one draw and its bath, J/K and W/K
 */
export function thermalOf({ tub }: Setup) {
  const { side, bottom, heatCapacity } = tubCooling;
  const { floor, perimeter, fill } = boxOf(tub);
  const cooling = coolingOf(side.value, bottom.value, floor, perimeter, fill);
  return (draw: Draw, bath: Mass) => ({
    stored: bath * heatCapacity.value,
    cooling: cooling * draw.coolingFactor,
  });
}

/** How warm the bath gets, and when. */
export function heatOf({ bath }: Setup, cell: WarmingCell, { rise }: Ran): Outcome {
  const celsius = celsiusOf(bath.temperature);
  const { volts, current } = cell.pointAt(0);
  const minutesTo = (degrees: number) => Math.min(DAY, timeToWarm(cell, degrees - celsius) / 60);
  return {
    heating_rate: heatingRate(volts, current, si<'mass'>(cell.stored), 1) * 60,
    bath_temperature_end: Math.min(celsius + rise, BOILING),
    minutes_to_warn_temperature: minutesTo(limits.warnTemperature.value),
    minutes_to_stop_temperature: minutesTo(limits.stopTemperature.value),
  };
}

/** What rises from the plate, and what a fault could set free at the piece. */
export function gasOf(
  { place }: Setup,
  { anion }: Pairing,
  draw: Draw,
  { current }: OperatingPoint,
  charge: Charge,
): Outcome {
  const always = {
    hydrogen: gasVolume(charge) * 1e6,
    minutes_to_4_percent_in_1_L: timeToReach(current, LID, FLAMMABLE) / 60,
    hydrogen_air: hydrogenAir(current) * 3600,
    hydrogen_opening: airOpening(hydrogenAir(current)) * 1e4,
  };
  if (anion !== 'chloride') return always;
  const share = ventilation.chlorineShare.value / 100;
  const gas = gasVolume(si<'charge'>(current));
  const inSaltWater = {
    ...always,
    chlorine_air: freshAir(share * gas, CHLORINE, ventilation.mixing.value) * 3600,
  };
  if (place.room === null) return inSaltWater;
  const room = si<'volume'>(place.room * draw.roomFactor);
  const worst = partsPerMillion(gasVolume(charge), room);
  return {
    ...inSaltWater,
    chlorine_worst_case: worst,
    chlorine_likely: share * worst,
    minutes_to_chlorine_limit: timeToReach(current, room, CHLORINE) / 60,
  };
}
