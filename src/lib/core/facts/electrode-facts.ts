import type { UnitId } from '../units/convert.ts';
import type { Datum } from './datum.ts';
import type { ElementSymbol } from './elements.ts';
import type { BitableMetal, MetalFamily } from './metals.ts';
import type { Anion } from './salts/salt-facts.ts';

/** Families of the metal that faces the piece. `stainless` occurs only as a plate. */
export type CathodeFamily = MetalFamily | 'stainless';

export const cathodeNames: Readonly<Record<string, BitableMetal | 'stainless'>> = {
  stainless: 'stainless',
  'stainless-steel': 'stainless',
  '304': 'stainless',
  '316': 'stainless',
  'stainless-304': 'stainless',
  'stainless-316': 'stainless',
};

/**
 * Electrons per dissolved atom, by the anion of the bath. Metals that passivate in a bath also have a number
 * here, but their jobs are refused before it is used.
 */
export const valences = {
  Ag: { nitrate: 1, chloride: 1, sulfate: 1 },
  Cu: { nitrate: 2, chloride: 1, sulfate: 2 },
  Zn: { nitrate: 2, chloride: 2, sulfate: 2 },
  /** in nitrate, tin stays on the piece as an oxide */
  Sn: { nitrate: 4, chloride: 2, sulfate: 2 },
  Ni: { nitrate: 2, chloride: 2, sulfate: 2 },
  Fe: { nitrate: 3, chloride: 2, sulfate: 2 },
  Pb: { nitrate: 2, chloride: 2, sulfate: 2 },
  Ge: { nitrate: 4, chloride: 4, sulfate: 4 },
} as const satisfies Partial<Record<ElementSymbol, Record<Anion, number>>>;

export const valenceSource = {
  value: 2,
  unit: '1',
  uncertainty: { kind: 'band', low: 1, high: 2 },
  validFor: { currentDensity: [0, 30, 'A/dm2'] },
  evidence: 'measured',
  source: 'kinoshita1970',
  locator: 'abstract: two in sulfate and nitrate, one in chloride, active dissolution',
} as const satisfies Datum;

/** Yield to expect from a first job: median, and standard deviation of its logarithm. */
interface YieldPrior {
  readonly median: Datum;
  readonly spread: number;
}

const yieldOf = (value: number, spread: number, note?: string): YieldPrior => ({
  median: {
    value,
    unit: '1',
    uncertainty: { kind: 'relative', value: spread },
    validFor: { currentDensity: [0, 30, 'A/dm2'] },
    evidence: 'commonPractice',
    source: 'budgetEstimate',
    locator: 'first job, no log',
    ...(note === undefined ? {} : { note }),
  },
  spread,
});

/** Dissolved mass over the mass by Faraday's law. Used until the maker has logged jobs. */
export const yieldPriors: Readonly<Record<MetalFamily, Readonly<Record<Anion, YieldPrior>>>> = {
  silver: {
    nitrate: yieldOf(0.95, 0.07),
    chloride: yieldOf(0.3, 0.6, 'films over: refused before this is used'),
    sulfate: yieldOf(0.7, 0.35, 'silver sulfate films above a modest current'),
  },
  copper: {
    nitrate: yieldOf(0.95, 0.07),
    chloride: yieldOf(0.87, 0.12, 'one electron an atom at best, up to 1.3 in a still bath'),
    sulfate: yieldOf(0.95, 0.07),
  },
  brass: {
    nitrate: yieldOf(0.85, 0.25),
    chloride: yieldOf(0.8, 0.25, 'zinc may go first: pink copper bloom'),
    sulfate: yieldOf(0.85, 0.25),
  },
  bronze: {
    nitrate: yieldOf(0.7, 0.35, 'tin stays behind as a grey skin'),
    chloride: yieldOf(0.85, 0.2, 'as copper, tin counted'),
    sulfate: yieldOf(0.8, 0.3, 'as copper, tin counted'),
  },
  nickel: {
    nitrate: yieldOf(0.3, 0.6, 'goes passive: refused before this is used'),
    chloride: yieldOf(0.8, 0.3, 'as brass'),
    sulfate: yieldOf(0.3, 0.6, 'goes passive: refused before this is used'),
  },
  iron: {
    nitrate: yieldOf(0.1, 0.8, 'goes passive: refused before this is used'),
    chloride: yieldOf(0.8, 0.2),
    sulfate: yieldOf(0.3, 0.6, 'goes passive: refused before this is used'),
  },
};

/** The part of the voltage that the chemistry takes before any current flows, V. */
interface Offset {
  readonly median: Datum;
  readonly spread: number;
}

const offset = (value: number, spread: number, note?: string): Offset => ({
  median: {
    value,
    unit: 'V',
    uncertainty: { kind: 'standard', value: spread },
    validFor: { currentDensity: [1, 30, 'A/dm2'] },
    evidence: 'computed',
    source: 'cellOffsets',
    locator: 'anode potential less hydrogen at pH 12 to 13, overpotentials included',
    ...(note === undefined ? {} : { note }),
  },
  spread,
});

/**
 * Offset of a fresh bath. Hydrogen forms (or nitrate reacts) at the plate, whatever its metal, because no
 * metal ions have reached it yet.
 */
export const offsets: Readonly<Record<MetalFamily, Readonly<Record<Anion, Offset>>>> = {
  silver: {
    nitrate: offset(2.0, 0.35),
    chloride: offset(1.6, 0.5),
    sulfate: offset(2.0, 0.5, 'as nitrate, film not counted'),
  },
  copper: {
    nitrate: offset(1.6, 0.35),
    chloride: offset(1.3, 0.3),
    sulfate: offset(1.6, 0.4, 'as nitrate: same electrodes'),
  },
  brass: {
    nitrate: offset(1.5, 0.45, 'copper’s, lowered for zinc'),
    chloride: offset(1.2, 0.4, 'copper’s, lowered for zinc'),
    sulfate: offset(1.5, 0.45, 'as nitrate'),
  },
  bronze: {
    nitrate: offset(1.6, 0.45, 'as copper'),
    chloride: offset(1.3, 0.4, 'as copper'),
    sulfate: offset(1.6, 0.45, 'as copper'),
  },
  nickel: {
    nitrate: offset(2.2, 0.6, 'passive: not used'),
    chloride: offset(1.3, 0.5, 'as copper, wider for nickel'),
    sulfate: offset(2.2, 0.6, 'passive: not used'),
  },
  iron: {
    nitrate: offset(2.2, 0.6, 'passive: not used'),
    chloride: offset(0.9, 0.3),
    sulfate: offset(2.2, 0.6, 'passive: not used'),
  },
};

/**
 * A copper sulfate bath already holds copper ions, so copper plates out at once and no hydrogen is needed.
 */
export const copperSulfateOffset = offset(0.2, 0.15, 'copper goes on as it comes off');

/** Free convection at the piece: how fast the film of liquid at the anode carries dissolved metal away. */
interface FilmTransport {
  /** m²/s */
  readonly diffusivity: Datum;
  /** m²/s */
  readonly viscosity: Datum;
  /** m³/mol */
  readonly expansion: Datum;
  /** mol/m³, at saturation beside the metal */
  readonly saturation: Datum;
  readonly saturationSpread: number;
}

const film = (value: number, unit: UnitId, locator: string): Datum => ({
  value,
  unit,
  uncertainty: { kind: 'relative', value: 0.25 },
  validFor: { temperature: [15, 40, 'degC'] },
  evidence: 'fromMemory',
  source: 'wagner1949',
  locator,
});

const copperFilm = (saturation: number, spread: number): FilmTransport => ({
  diffusivity: film(6e-10, 'm2/s', 'copper ions'),
  viscosity: film(1.5e-6, 'm2/s', 'film liquid'),
  expansion: film(1.5e-4, 'm3/mol', 'density per mole of copper salt'),
  saturation: film(saturation, 'mol/m3', 'copper salt at the metal'),
  saturationSpread: spread,
});

/**
 * A bath is missing where no data were found. In chloride the film of copper and brass is limited by a
 * complex, not by the salt.
 */
export const filmTransport: Readonly<Record<MetalFamily, Partial<Readonly<Record<Anion, FilmTransport>>>>> = {
  silver: {
    nitrate: {
      diffusivity: film(1e-9, 'm2/s', 'silver ions'),
      viscosity: film(1.5e-6, 'm2/s', 'film liquid'),
      expansion: film(1.3e-4, 'm3/mol', 'density per mole of silver nitrate'),
      saturation: film(5000, 'mol/m3', 'silver nitrate at the metal'),
      saturationSpread: 0.3,
    },
  },
  copper: { nitrate: copperFilm(1700, 0.35), sulfate: copperFilm(1000, 0.25) },
  brass: { nitrate: copperFilm(1700, 0.4), sulfate: copperFilm(1000, 0.3) },
  bronze: { sulfate: copperFilm(1000, 0.35) },
  nickel: {},
  iron: {
    chloride: {
      diffusivity: film(6e-10, 'm2/s', 'iron ions'),
      viscosity: film(2e-6, 'm2/s', 'film liquid'),
      expansion: film(1.1e-4, 'm3/mol', 'density per mole of iron chloride'),
      saturation: film(3000, 'mol/m3', 'iron chloride at the metal'),
      saturationSpread: 0.35,
    },
  },
};
