import { countedFractions, equivalentWeight, valencesIn } from '../chemistry/alloy.ts';
import type { Composition } from '../chemistry/alloy.ts';
import { chargeToDissolve, dissolvedMass, layerMass, meanDepth } from '../chemistry/faraday.ts';
import { gasVolume, partsPerMillion, timeToFlammable } from '../chemistry/gas.ts';
import { coolingOf, heatingRate, temperatureRise } from '../chemistry/heat.ts';
import { bathFrom, dissolve, saltFor, solubility, waterFor } from '../chemistry/solution.ts';
import type { Solution } from '../chemistry/solution.ts';
import { recessedLimit } from '../cell/limiting-current.ts';
import { operatingPoint } from '../cell/operating-point.ts';
import { closedFormResistance } from '../cell/resistance.ts';
import { batchArea } from '../cell/setup.ts';
import type { Setup } from '../cell/setup.ts';
import { boxOf, displaced } from '../cell/tub.ts';
import { landReserve, limits, tubCooling } from '../facts/bench-facts.ts';
import { filmTransport } from '../facts/electrode-facts.ts';
import type { ElementSymbol } from '../facts/elements.ts';
import { metals } from '../facts/metals.ts';
import type { BoughtSalt } from '../facts/salts.ts';
import { AMPERE_HOUR, CELSIUS_ZERO } from '../units/constants.ts';
import { si } from '../units/quantity.ts';
import type { Area, Charge, Duration, Mass, MassConcentration } from '../units/quantity.ts';
import type { Draw, Pairing } from './budget.ts';
import type { Outcome } from './outcome.ts';

/** What the recipe alone decides; the same in every draw. */
export interface Recipe {
  readonly solution: Solution;
  readonly solubility: MassConcentration;
}

export const recipeOf = ({ bath }: Setup, salt: BoughtSalt): Recipe => ({
  solution: dissolve(salt, bath.strength, bath.temperature),
  solubility: solubility(salt, bath.temperature),
});

/** Bath figures: known as soon as tub, salt and strength are. */
export function bathOutcome(setup: Setup, recipe: Recipe, draw: Draw): Outcome {
  const { bath, tub, piece, cathode } = setup;
  const { solution } = recipe;
  const box = boxOf(tub);
  const wanted = si<'volume'>(box.floor * box.fill - displaced(piece, cathode, tub));
  const water = si<'volume'>(
    (tub.kind === 'jug' ? tub.water : waterFor(wanted, solution, bath.strength, bath.temperature)) *
      draw.volumeFactor,
  );
  return {
    water_volume: water * 1e6,
    bath_volume: bathFrom(water, solution, bath.strength, bath.temperature) * 1e6,
    salt_mass: saltFor(water, bath.strength) * 1e3,
    mass_percent: solution.massPercent,
    molarity: solution.molarity,
    density: solution.density / 1e3,
    solubility: recipe.solubility,
    conductivity: solution.conductivity * 10 * draw.conductivityFactor,
  };
}

/** When the run ends: at a counted charge, or by the clock. */
export interface StopAt {
  readonly charge: Charge;
  readonly time: Duration;
}

/**
 * Metal in the bath after the run, mg/L by element: what was there, and all that came off. None of it
 * is taken to plate out.
 */
function dissolvedMetal({ bath }: Setup, massPercent: Composition, mass: Mass, litres: number): Outcome {
  const added = new Map(countedFractions(massPercent));
  const elements = new Set([...added.keys(), ...(Object.keys(bath.dissolved) as ElementSymbol[])]);
  return Object.fromEntries(
    [...elements].map((element) => [
      `dissolved_metal.${element}`,
      (bath.dissolved[element] ?? 0) * 1e3 + (mass * (added.get(element) ?? 0) * 1e6) / litres,
    ]),
  );
}

/** Depth, current, time and what follows from them, for one draw. */
export function cellOutcome(
  setup: Setup,
  pairing: Pairing,
  recipe: Recipe,
  openArea: Area,
  draw: Draw,
  stopAt: StopAt | null,
): Outcome {
  const { piece, bath, supply, place } = setup;
  const { solution } = recipe;
  const inBath = bathOutcome(setup, recipe, draw);
  const metal = metals[pairing.metal];
  const ew = equivalentWeight(metal.composition.massPercent, valencesIn(pairing.anion));
  const density = metal.density.value * 1e3;
  const area = si<'area'>(batchArea(piece, openArea) * draw.areaFactor);

  const layer = layerMass(piece.depth, density, area);
  const neededCharge = chargeToDissolve(layer, ew, draw.yield);

  const kappa = si<'conductivity'>(solution.conductivity * draw.conductivityFactor);
  const cell = closedFormResistance(setup, openArea, kappa).resistance * draw.geometryFactor;
  const point = operatingPoint(
    supply,
    si<'voltage'>(draw.offset),
    si<'resistance'>((cell + draw.leads) / draw.slowness),
    si<'voltage'>(limits.planVolts.value),
  );
  const current = si<'current'>(point.current * (point.heldBy === 'amps' ? draw.meterFactor : 1));
  const time = si<'time'>(neededCharge / current);

  const passed = stopAt === null ? neededCharge : supply.showsAmps ? stopAt.charge : stopAt.time * current;
  const charge = si<'charge'>(supply.showsAmps ? passed * draw.meterFactor : passed);
  const duration = si<'time'>(charge / current);
  const mass = dissolvedMass(charge, ew, draw.yield);
  const depth = meanDepth(mass, density, area);

  const box = boxOf(setup.tub);
  const bathMass = si<'mass'>((inBath.bath_volume as number) * 1e-6 * solution.density);
  const cooling =
    coolingOf(tubCooling.side.value, tubCooling.bottom.value, box.floor, box.perimeter, box.fill) *
    draw.coolingFactor;
  const heat = tubCooling.heatCapacity.value;
  const bathLitres = (inBath.bath_volume as number) * 1e-3;

  const film = filmTransport[pairing.family][pairing.anion];
  const filmLimit =
    film &&
    recessedLimit(
      {
        diffusivity: film.diffusivity.value,
        viscosity: film.viscosity.value,
        expansion: film.expansion.value,
        excess: draw.saturation,
        electrons: pairing.family === 'silver' ? 1 : 2,
      },
      piece.height,
      piece.depth,
    );

  return {
    ...inBath,
    equivalent_weight: ew,
    metal_density: metal.density.value,
    cell_resistance: cell,
    current,
    volts: point.volts,
    current_density: current / area / 100,
    ...(filmLimit === undefined ? {} : { limiting_current_density: filmLimit / 100 }),
    charge: neededCharge / AMPERE_HOUR,
    run_time: time / 60,
    depth: depth * 1e6,
    undercut: depth * 1e6 * draw.undercutRatio,
    thinnest_line: 2 * depth * 1e6 * draw.undercutRatio + landReserve.value,
    mass_removed: mass * 1e3,
    heating_rate: heatingRate(point.volts, current, bathMass, heat) * 60,
    bath_temperature_end:
      bath.temperature -
      CELSIUS_ZERO +
      temperatureRise(point.volts, current, bathMass, heat, cooling, duration),
    hydrogen: gasVolume(charge) * 1e6,
    minutes_to_4_percent_in_1_L:
      timeToFlammable(current, si<'volume'>(1e-3), limits.hydrogenFlammable.value / 100) / 60,
    ...(pairing.anion === 'chloride' && place.room !== null
      ? {
          chlorine_worst_case: partsPerMillion(gasVolume(charge), si<'volume'>(place.room * draw.roomFactor)),
        }
      : {}),
    ...dissolvedMetal(setup, metal.composition.massPercent, mass, bathLitres),
  };
}
