import { batchArea } from '../cell/setup.ts';
import type { Setup, Supply } from '../cell/setup.ts';
import { limits, practice } from '../facts/limits.ts';
import { hasKnobs } from '../facts/supplies.ts';
import { metalGroups } from '../facts/metal-groups.ts';
import type { MetalGroup } from '../facts/metal-groups.ts';
import type { MetalFamily } from '../facts/metals.ts';
import { si } from '../units/quantity.ts';
import type { Area } from '../units/quantity.ts';
import type { CellOutcome } from './cell-chain.ts';

/*
 * A plan is for one setting: that of the job's supply. What is proposed here is amps held at the trade's 10 A/dm²,
 * at most 0.7 of the film's limit, volts as a ceiling. The app plans with the supply set so; the command line keeps
 * to what its file says and tells the proposal in one line.
 */

/** Volts left over the expected display so that the amps knob keeps holding. */
const HEADROOM = 2;
/** Share of what the volts can drive that an amps setting may ask for. */
const REACH = 0.9;

/** Rounds to what a knob can be set to: one significant digit and a half. */
export function knob(value: number, round: (steps: number) => number = Math.round): number {
  const step = 10 ** Math.floor(Math.log10(value)) / 2;
  return Number((Math.max(1, round(value / step)) * step).toPrecision(3));
}

/** The trade names volts for silver, copper and brass; nickel silver and steel get the gentler of the two. */
const workVolts: Readonly<Record<MetalGroup, number>> = {
  silver: practice.silverWorkVolts.value,
  'copper and brass': practice.copperWorkVolts.value,
  nickel: practice.copperWorkVolts.value,
  iron: practice.copperWorkVolts.value,
};

/**
 * Proposes amps control whenever the supply shows amps and has a limit: the trade's gentle current
 * density over the bare metal, below the film's limit and within the supply's. Else volts as the trade
 * sets them.
 * @param evaluate the chain at the medians for a supply
 */
export function proposeSupply(
  setup: Setup,
  family: MetalFamily,
  openArea: Area,
  evaluate: (supply: Supply) => CellOutcome,
): Supply {
  const { supply, piece } = setup;
  const { kind, showsAmps, leads } = supply;
  const base = { kind, showsAmps, leads };
  // an adapter or a battery has no knob
  const fixed = supply.control === 'volts' && !hasKnobs(kind) ? supply.volts : workVolts[metalGroups[family]];
  const volts = si<'voltage'>(Math.min(fixed, limits.planVolts.value));
  const most = supply.control === 'amps' ? supply.amps : supply.maxAmps;
  // an adapter with a meter in its line shows amps, and holds none
  const holds = showsAmps && (hasKnobs(kind) || supply.control === 'amps');
  if (!holds || most === null) return { ...base, control: 'volts', volts, maxAmps: most };

  const ceiling = limits.planVolts.value;
  const free = evaluate({ ...base, control: 'volts', volts: si<'voltage'>(ceiling), maxAmps: null });
  const film = free.limiting_current_density ?? Infinity;
  const density = Math.min(practice.targetDensity.value, limits.filmWarning.value * film);
  const wanted = density * batchArea(piece, openArea) * 100;
  const drivable = REACH * free.current;
  const amps = wanted < drivable ? knob(wanted) : knob(drivable, Math.floor);
  const held = { ...base, control: 'amps', amps: si<'current'>(Math.min(most, amps)) } as const;
  const display = evaluate({ ...held, maxVolts: si<'voltage'>(ceiling) }).volts;
  const head = Math.ceil(Math.max(volts + 1, display + HEADROOM));
  return { ...held, maxVolts: si<'voltage'>(Math.min(ceiling, head)) };
}
