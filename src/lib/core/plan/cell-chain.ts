import { countedFractions, equivalentWeight, valencesIn } from '../chemistry/alloy.ts';
import { mainElement } from '../chemistry/displacement.ts';
import { chargeToDissolve, dissolvedMass, layerMass, meanDepth } from '../chemistry/faraday.ts';
import { rating } from './batch.ts';
import { recessedLimit } from '../cell/limiting-current.ts';
import { currentAt, operatingPoint } from '../cell/operating-point.ts';
import { warmGain } from '../chemistry/solution.ts';
import { batchArea } from '../cell/setup.ts';
import type { Setup, Supply } from '../cell/setup.ts';
import { runForTime, runToCharge } from '../cell/warming.ts';
import type { Ran, WarmingCell } from '../cell/warming.ts';
import { landReserve, limits } from '../facts/limits.ts';
import { filmTransport } from '../facts/electrode-facts.ts';
import type { ElementSymbol } from '../facts/elements.ts';
import { metals } from '../facts/metals.ts';
import { AMPERE_HOUR } from '../units/constants.ts';
import { si } from '../units/quantity.ts';
import type { Area, Charge, Duration, Resistance } from '../units/quantity.ts';
import { bathChain } from './bath-chain.ts';
import type { BathOutcome, Recipe } from './bath-chain.ts';
import type { Draw, Pairing } from './budget.ts';
import { gasOf, heatOf, thermalOf } from './consequences.ts';
import type { JobInput } from './job-input.ts';
import { isFigureId } from './outcome.ts';
import type { FigureId, Outcome, OutcomeWith } from './outcome.ts';
import { treatmentOf } from './treatment-chain.ts';

/** When the run ends: at a counted charge, or by the clock. */
export interface StopAt {
  readonly charge: Charge;
  readonly time: Duration;
}

/** Figures that every planned run has. */
export type CellOutcome = BathOutcome &
  OutcomeWith<
    | 'cell_resistance'
    | 'current'
    | 'volts'
    | 'current_density'
    | 'charge'
    | 'run_time'
    | 'depth'
    | 'undercut'
    | 'thinnest_line'
    | 'mass_removed'
  >;

const CEILING = si<'voltage'>(limits.planVolts.value);

/** Metal that the bath holds before the run and takes from it, by element: mg/L, and share of the mass. */
function metalIn({ bath }: Setup, shares: ReadonlyMap<ElementSymbol, number>) {
  const elements = new Set([...shares.keys(), ...(Object.keys(bath.dissolved) as ElementSymbol[])]);
  return [...elements].map((element) => ({
    element,
    before: (bath.dissolved[element] ?? 0) * 1e3,
    share: shares.get(element) ?? 0,
  }));
}

/** A metal in the bath once the run is over, mg/L. */
export interface Dissolved {
  readonly element: ElementSymbol;
  readonly perLitre: number;
}

/** Traces that have no figure of their own are left out. */
function dissolvedFigures(dissolved: readonly Dissolved[]): Outcome {
  const figures: Partial<Record<FigureId, number>> = {};
  for (const { element, perLitre } of dissolved) {
    const id = `dissolved_metal.${element}`;
    if (isFigureId(id)) figures[id] = perLitre;
  }
  return figures;
}

/** Current density, A/m², that free convection carries off the bare metal; null where no data were found. */
function filmLimit({ piece }: Setup, { metal, family, anion }: Pairing): ((draw: Draw) => number) | null {
  const film = filmTransport[family][anion];
  if (!film) return null;
  const dissolving = mainElement(metals[metal].composition.massPercent);
  const electrons = valencesIn(anion)[dissolving];
  if (electrons === undefined) throw new RangeError(`no valence for ${dissolving} found, one expected`);
  const still = {
    diffusivity: film.diffusivity.value,
    viscosity: film.viscosity.value,
    expansion: film.expansion.value,
    electrons,
  };
  return (draw) => recessedLimit({ ...still, excess: draw.saturation }, piece.height, piece.depth);
}

/** A run as the maker ends it: by the charge that the meter counts, or by the clock. */
const stopped = (
  cell: WarmingCell,
  { showsAmps }: Supply,
  { charge, time }: StopAt,
  { meterFactor }: Draw,
): Ran => (showsAmps ? runToCharge(cell, si<'charge'>(charge * meterFactor)) : runForTime(cell, time));

/**
 * Depth, current, time and what follows from them.
 * @param openArea bare metal of one piece
 * @param resistance of the bath between piece and plate
 * @returns the chain, for one draw after another; `stopAt` null evaluates the run that reaches the wanted depth
 */
export function cellChain(
  setup: Setup & Pick<JobInput, 'bench'>,
  pairing: Pairing,
  recipe: Recipe,
  openArea: Area,
  resistance: Resistance,
) {
  const { piece, supply } = setup;
  const learnt = setup.bench?.cell;
  const metal = metals[pairing.metal];
  const { massPercent } = metal.composition;
  const ew = equivalentWeight(massPercent, valencesIn(pairing.anion));
  const density = metal.density.value * 1e3;
  const bare = batchArea(piece, openArea);
  const { solution } = recipe;
  const thermal = thermalOf(setup);
  const gain = (rise: number) => warmGain(pairing.salt, setup.bath.temperature, rise);
  const inBath = metalIn(setup, new Map(countedFractions(massPercent)));
  const film = filmLimit(setup, pairing);
  const bathOf = bathChain(setup, recipe);

  return (draw: Draw, stopAt: StopAt | null): CellOutcome => {
    const mixed = bathOf(draw);
    const area = si<'area'>(bare * draw.areaFactor);
    const needed = chargeToDissolve(layerMass(piece.depth, density, area), ew, draw.currentEfficiency);

    const bathMass = si<'mass'>(mixed.bath_volume * 1e-6 * solution.density);
    const ohms = (resistance * draw.geometryFactor) / draw.conductivityFactor;
    // a steeper line than the learnt one stands on a lower offset: they turn about where the readings lie
    const tilt = learnt ? learnt.pivot * (1 / draw.slowness - learnt.slope) : 0;
    const offset = si<'voltage'>(draw.thresholdVoltage - tilt);
    const clean = (rise: number) => ohms / gain(rise) + draw.leads;
    const totalAt = (rise: number) => si<'resistance'>(clean(rise) / draw.slowness);
    const leastResistance = si<'resistance'>(clean(0) / Math.max(1, draw.slowness));
    const cell: WarmingCell = {
      ...thermal(draw, bathMass),
      pointAt: (rise) => {
        const total = totalAt(rise);
        const point = operatingPoint(supply, offset, total, CEILING);
        const meter = point.heldBy === 'amps' ? draw.meterFactor : 1;
        return { ...point, current: si<'current'>(point.current * meter) };
      },
    };
    const start = cell.pointAt(0);
    const most = rating(supply);
    const whole = runToCharge(cell, needed);
    const ran = stopAt === null ? whole : stopped(cell, supply, stopAt, draw);
    const mass = dissolvedMass(ran.charge, ew, draw.currentEfficiency);
    // the depth cannot be more than the thickness
    const depth = Math.min(meanDepth(mass, density, area), piece.thickness) * 1e6;
    const undercut = depth * draw.undercutRatio;
    const dissolved = inBath.map(({ element, before, share }) => ({
      element,
      perLitre: before + (mass * share * 1e9) / mixed.bath_volume,
    }));
    return {
      equivalent_weight: ew,
      cell_resistance: ohms,
      current: start.current,
      volts: start.volts,
      current_density: start.current / area / 100,
      charge: needed / AMPERE_HOUR,
      run_time: whole.time / 60,
      depth,
      undercut,
      thinnest_line: 2 * undercut + landReserve.value,
      mass_removed: mass * 1e3,
      ...(most === null || supply.control === 'amps'
        ? {}
        : // what a supply must stand is what clean metal would take at first
          {
            current_asked: currentAt(si<'voltage'>(Math.min(CEILING, supply.volts)), offset, leastResistance),
          }),
      ...heatOf(setup, cell, ran),
      ...gasOf(setup, pairing, draw, start, ran.charge),
      ...mixed,
      ...(film ? { limiting_current_density: film(draw) / 100 } : {}),
      ...dissolvedFigures(dissolved),
      ...treatmentOf(setup, mixed.bath_volume, dissolved),
    };
  };
}
