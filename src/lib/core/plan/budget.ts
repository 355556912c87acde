import type { UnitId } from '../units/convert.ts';
import { cellOffset } from '../cell/offset.ts';
import type { Setup } from '../cell/setup.ts';
import { leadResistance, tubCooling, undercutRatio } from '../facts/limits.ts';
import { filmTransport, yieldPriors } from '../facts/electrode-facts.ts';
import type { BitableMetal, MetalFamily } from '../facts/metals.ts';
import { metals } from '../facts/metals.ts';
import type { Anion } from '../facts/salts/salt-facts.ts';
import type { BoughtSalt } from '../facts/salts.ts';
import { conductivityLine } from '../facts/salts/salt-facts.ts';
import type { JobInput } from './job-input.ts';
import { USUAL } from '../learn/rate.ts';
import { practicePace } from '../facts/practice-pace.ts';
import type { LearntCell } from '../learn/cell-line.ts';
import { RANGE_Z } from '../units/range.ts';
import type { Evidence } from '../units/figure.ts';

/*
 * Makers report bites several times slower than clean-metal models, and no published figure exists. The
 * budget stretches the cell's resistance upwards (5 % of benches pass a third of the current), and the plan
 * prints trade over model; above 3 it says so. Logged jobs replace it.
 */

/**
 * Everything a first job does not know for sure. Each entry is drawn independently; the plan's ranges
 * take their ends from the draws.
 */
export const inputIds = [
  'conductivityFactor',
  'geometryFactor',
  'thresholdVoltage',
  'leads',
  'currentEfficiency',
  'slowness',
  'areaFactor',
  'volumeFactor',
  'undercutRatio',
  'coolingFactor',
  'saturation',
  'meterFactor',
  'roomFactor',
] as const;
export type InputId = (typeof inputIds)[number];

/** Shape of a spread: of the logarithm, of the value itself, or stretched to one side only. */
export type Spread =
  | { readonly kind: 'log'; readonly sd: number }
  | { readonly kind: 'normal'; readonly sd: number; readonly floor: number }
  /** real benches are slower than the model far more often than faster */
  | { readonly kind: 'slowSide'; readonly slow: number; readonly fast: number };

export interface UncertainInput {
  readonly median: number;
  readonly unit: UnitId;
  readonly spread: Spread;
  readonly evidence: Evidence;
  readonly sources: readonly string[];
}

export type Budget = Readonly<Record<InputId, UncertainInput>>;

/** One set of values, one for each uncertain input. */
export type Draw = Readonly<Record<InputId, number>>;

/** How the metal and the salt behave together. */
export interface Pairing {
  readonly metal: BitableMetal;
  readonly family: MetalFamily;
  readonly anion: Anion;
  readonly salt: BoughtSalt;
}

/** ln(0.3/0.05)/(2·1.645): the band of leads as a log spread. */
const LEAD_SPREAD = 0.54;
const UNDERCUT_SPREAD = 0.25;
/**
 * Real benches pass less current than clean metal in a clean bath would: taped wires, films, sludge, a
 * weaker bath than the label says. Nobody has published by how much; 5 % are taken to pass a third.
 */
const SLOW_SIDE = 0.68;
const FAST_SIDE = 0.1;

/** V over the table's offset where no current flows, on the line that the bench has shown. */
const offsetOf = ({ over, pivot, slope }: LearntCell): number => over - pivot * slope;

const own = (sd: number): UncertainInput => ({
  median: 1,
  unit: '1',
  spread: { kind: 'log', sd },
  evidence: 'computed',
  sources: ['budgetEstimate'],
});

/** Share of the tables' current that a bench without an ammeter passes: by its own jobs, else by the trade's minutes. */
function byTheClock({ family, anion }: Pairing, bench: JobInput['bench']): Omit<UncertainInput, 'unit'> {
  if (bench?.pace)
    return {
      median: bench.pace.median,
      spread: { kind: 'log', sd: bench.pace.spread },
      evidence: 'yourLog',
      sources: [],
    };
  const { median, slow } = practicePace(family, anion);
  return {
    median: 1 / median.value,
    // 5 % of benches are as fast as clean metal: what a fast one would heat and overload stays within the range
    spread: { kind: 'slowSide', slow, fast: Math.max(FAST_SIDE, Math.log(median.value) / RANGE_Z) },
    evidence: median.evidence,
    sources: [median.source],
  };
}

/**
 * The uncertainty budget of a job: the tables', but for what this bench has taught.
 * @param pathSpread standard deviation of the logarithm of the bath's resistance
 */
export function budgetFor(
  setup: Setup & Pick<JobInput, 'bench'>,
  pairing: Pairing,
  pathSpread: number,
): Budget {
  const { piece, supply, bench } = setup;
  const { conductivity } = pairing.salt.facts;
  const tableSpread = conductivity.uncertainty.kind === 'relative' ? conductivity.uncertainty.value : 0.03;
  const offset = cellOffset(pairing.metal, pairing.salt, setup.cathode.metal);
  const prior = yieldPriors[pairing.family][pairing.anion];
  const film = filmTransport[pairing.family][pairing.anion];
  return {
    conductivityFactor: {
      ...own(Math.hypot(conductivityLine.value / 100, tableSpread)),
      sources: [conductivityLine.source, 'crcConductivity'],
    },
    geometryFactor: own(pathSpread),
    thresholdVoltage: {
      unit: offset.median.unit,
      ...(bench?.cell
        ? {
            median: offset.median.value + offsetOf(bench.cell),
            spread: { kind: 'normal', sd: bench.cell.overSpread, floor: 0 },
            evidence: 'yourLog',
            sources: [],
          }
        : {
            median: offset.median.value,
            spread: { kind: 'normal', sd: offset.spread, floor: 0 },
            evidence: offset.median.evidence,
            sources: [offset.median.source],
          }),
    },
    leads: {
      median: supply.leads ?? leadResistance.value,
      unit: 'ohm',
      spread: { kind: 'log', sd: supply.leads === null ? LEAD_SPREAD : 0.1 },
      evidence: supply.leads === null ? leadResistance.evidence : 'yourInput',
      sources: supply.leads === null ? [leadResistance.source] : [],
    },
    currentEfficiency: {
      unit: '1',
      ...(bench?.biteRate
        ? {
            median: bench.biteRate.median,
            spread: { kind: 'log', sd: bench.biteRate.spread },
            evidence: 'yourLog',
            sources: [],
          }
        : {
            median: prior.median.value,
            // jobs of one bench differ too: without that the first job would look surer than the second
            spread: { kind: 'log', sd: Math.hypot(prior.spread, USUAL) },
            evidence: prior.median.evidence,
            sources: [prior.median.source],
          }),
    },
    slowness: {
      unit: '1',
      ...(bench?.cell
        ? {
            median: 1 / bench.cell.slope,
            spread: { kind: 'log', sd: bench.cell.slopeSpread / bench.cell.slope },
            evidence: 'yourLog',
            sources: [],
          }
        : supply.showsAmps
          ? {
              median: 1,
              spread: { kind: 'slowSide', slow: SLOW_SIDE, fast: FAST_SIDE },
              evidence: 'commonPractice',
              sources: ['tradePractice', 'budgetEstimate'],
            }
          : byTheClock(pairing, bench)),
    },
    areaFactor: own(piece.openAreaFrom === 'share' ? 0.08 : 0.04),
    volumeFactor: own(0.03),
    undercutRatio: {
      median: undercutRatio.value,
      unit: '1',
      spread: { kind: 'log', sd: UNDERCUT_SPREAD },
      evidence: undercutRatio.evidence,
      sources: [undercutRatio.source, 'allen1982'],
    },
    coolingFactor: { ...own(0.25), sources: [tubCooling.side.source] },
    saturation: {
      median: film?.saturation.value ?? 1,
      unit: 'mol/m3',
      spread: { kind: 'log', sd: film?.saturationSpread ?? 0 },
      evidence: 'fromMemory',
      sources: ['wagner1949'],
    },
    meterFactor: own(0.02),
    roomFactor: own(0.1),
  };
}

/** The draw in which every input stands at its median: the plan's values. */
export const medianDraw = (budget: Budget): Draw =>
  Object.fromEntries(inputIds.map((id): [InputId, number] => [id, budget[id].median])) as Draw;

/** A standard normal deviate stretched to a spread. */
function stretch({ median, spread }: UncertainInput, deviate: number): number {
  if (spread.kind === 'log') return median * Math.exp(spread.sd * deviate);
  if (spread.kind === 'normal') return Math.max(spread.floor, median + spread.sd * deviate);
  return median * Math.exp(-(deviate > 0 ? spread.slow : spread.fast) * deviate);
}

/**
 * One draw from standard normal deviates.
 * @param deviates one for each input, in the order of `inputIds`
 */
export function drawFrom(budget: Budget, deviates: ArrayLike<number>): Draw {
  const draw: Partial<Record<InputId, number>> = {};
  inputIds.forEach((id, k) => {
    const deviate = deviates[k];
    if (deviate === undefined) throw new RangeError(`deviate for ${id} expected, none found`);
    draw[id] = stretch(budget[id], deviate);
  });
  return draw as Draw;
}

export const pairingOf = (metal: BitableMetal, salt: BoughtSalt): Pairing => ({
  metal,
  family: metals[metal].family,
  anion: salt.facts.anion,
  salt,
});
