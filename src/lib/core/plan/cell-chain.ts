import { countedFractions, equivalentWeight, valencesIn } from '../chemistry/alloy.ts';
import { chargeToDissolve, dissolvedMass, layerMass, meanDepth } from '../chemistry/faraday.ts';
import { gasVolume, partsPerMillion, timeToFlammable } from '../chemistry/gas.ts';
import { coolingOf, heatingRate, temperatureRise } from '../chemistry/heat.ts';
import { recessedLimit } from '../cell/limiting-current.ts';
import { operatingPoint } from '../cell/operating-point.ts';
import { closedFormResistance } from '../cell/resistance.ts';
import { batchArea } from '../cell/setup.ts';
import type { Setup } from '../cell/setup.ts';
import { boxOf } from '../cell/tub.ts';
import { landReserve, limits, tubCooling } from '../facts/bench-facts.ts';
import { filmTransport } from '../facts/electrode-facts.ts';
import type { ElementSymbol } from '../facts/elements.ts';
import { metals } from '../facts/metals.ts';
import { AMPERE_HOUR, CELSIUS_ZERO } from '../units/constants.ts';
import { si } from '../units/quantity.ts';
import type { Area, Charge, Duration } from '../units/quantity.ts';
import { bathChain } from './bath-chain.ts';
import type { Recipe } from './bath-chain.ts';
import type { Draw, Pairing } from './budget.ts';
import type { Outcome } from './outcome.ts';

/** When the run ends: at a counted charge, or by the clock. */
export interface StopAt {
  readonly charge: Charge;
  readonly time: Duration;
}

/** °C; a bath gets no hotter, it boils away */
const BOILING = 100;
const LID = si<'volume'>(1e-3);
const CEILING = si<'voltage'>(limits.planVolts.value);
const FLAMMABLE = limits.hydrogenFlammable.value / 100;

/** Metal that the bath holds before the run and takes from it, by element: mg/L, and share of the mass. */
function metalIn({ bath }: Setup, shares: ReadonlyMap<ElementSymbol, number>) {
  const elements = new Set([...shares.keys(), ...(Object.keys(bath.dissolved) as ElementSymbol[])]);
  return [...elements].map((element) => ({
    id: `dissolved_metal.${element}`,
    before: (bath.dissolved[element] ?? 0) * 1e3,
    share: shares.get(element) ?? 0,
  }));
}

/** Current density, A/m², that free convection carries off the bare metal; null where no data were found. */
function filmLimit({ piece }: Setup, { family, anion }: Pairing): ((draw: Draw) => number) | null {
  const film = filmTransport[family][anion];
  if (!film) return null;
  const still = {
    diffusivity: film.diffusivity.value,
    viscosity: film.viscosity.value,
    expansion: film.expansion.value,
    electrons: family === 'silver' ? 1 : 2,
  };
  return (draw) => recessedLimit({ ...still, excess: draw.saturation }, piece.height, piece.depth);
}

/**
 * Depth, current, time and what follows from them.
 * @param openArea bare metal of one piece
 * @returns the chain, for one draw after another; `stopAt` null evaluates the run that reaches the wanted depth
 */
export function cellChain(setup: Setup, pairing: Pairing, recipe: Recipe, openArea: Area) {
  const { piece, bath, supply, place } = setup;
  const metal = metals[pairing.metal];
  const { massPercent } = metal.composition;
  const ew = equivalentWeight(massPercent, valencesIn(pairing.anion));
  const density = metal.density.value * 1e3;
  const bare = batchArea(piece, openArea);
  const { solution } = recipe;
  const { resistance } = closedFormResistance(setup, openArea, solution.conductivity);
  const box = boxOf(setup.tub);
  const { side, bottom, heatCapacity } = tubCooling;
  const cooling = coolingOf(side.value, bottom.value, box.floor, box.perimeter, box.fill);
  const heat = heatCapacity.value;
  const inBath = metalIn(setup, new Map(countedFractions(massPercent)));
  const film = filmLimit(setup, pairing);
  const bathOf = bathChain(setup, recipe);
  const celsius = bath.temperature - CELSIUS_ZERO;
  const chlorine = pairing.anion === 'chloride' && place.room !== null;

  return (draw: Draw, stopAt: StopAt | null): Outcome => {
    const mixed = bathOf(draw);
    const area = si<'area'>(bare * draw.areaFactor);
    const needed = chargeToDissolve(layerMass(piece.depth, density, area), ew, draw.yield);

    const cell = (resistance * draw.geometryFactor) / draw.conductivityFactor;
    const total = si<'resistance'>((cell + draw.leads) / draw.slowness);
    const point = operatingPoint(supply, si<'voltage'>(draw.offset), total, CEILING);
    const current = si<'current'>(point.current * (point.heldBy === 'amps' ? draw.meterFactor : 1));

    const run = stopAt ?? { charge: needed, time: si<'time'>(needed / current) };
    const charge = si<'charge'>(supply.showsAmps ? run.charge * draw.meterFactor : run.time * current);
    const duration = si<'time'>(charge / current);
    const mass = dissolvedMass(charge, ew, draw.yield);
    // a hole is no deeper than the sheet is thick
    const depth = Math.min(meanDepth(mass, density, area), piece.thickness) * 1e6;
    const undercut = depth * draw.undercutRatio;
    const bathMass = si<'mass'>(mixed.bath_volume * 1e-6 * solution.density);
    const rise = temperatureRise(
      point.volts,
      current,
      bathMass,
      heat,
      cooling * draw.coolingFactor,
      duration,
    );

    const outcome: Record<string, number> = {
      water_volume: mixed.water_volume,
      bath_volume: mixed.bath_volume,
      salt_mass: mixed.salt_mass,
      mass_percent: mixed.mass_percent,
      molarity: mixed.molarity,
      density: mixed.density,
      solubility: mixed.solubility,
      conductivity: mixed.conductivity,
      equivalent_weight: ew,
      cell_resistance: cell,
      current,
      volts: point.volts,
      current_density: current / area / 100,
      charge: needed / AMPERE_HOUR,
      run_time: needed / current / 60,
      depth,
      undercut,
      thinnest_line: 2 * undercut + landReserve.value,
      mass_removed: mass * 1e3,
      heating_rate: heatingRate(point.volts, current, bathMass, heat) * 60,
      bath_temperature_end: Math.min(celsius + rise, BOILING),
      hydrogen: gasVolume(charge) * 1e6,
      minutes_to_4_percent_in_1_L: timeToFlammable(current, LID, FLAMMABLE) / 60,
    };
    if (film) outcome['limiting_current_density'] = film(draw) / 100;
    if (chlorine) {
      const room = si<'volume'>(place.room * draw.roomFactor);
      outcome['chlorine_worst_case'] = partsPerMillion(gasVolume(charge), room);
    }
    for (const { id, before, share } of inBath) {
      outcome[id] = before + (mass * share * 1e9) / mixed.bath_volume;
    }
    return outcome;
  };
}
