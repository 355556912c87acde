import type { Setup, Supply } from '../cell/setup.ts';
import { boxOf } from '../cell/tub.ts';
import { limits } from '../facts/limits.ts';
import { hasKnobs } from '../facts/supplies.ts';
import { si } from '../units/quantity.ts';
import type { Length } from '../units/quantity.ts';
import type { CellOutcome } from './cell-chain.ts';
import { knob } from './settings.ts';

/** Another way to the same depth, at the medians: what changes, and what it brings. */
export interface Alternative {
  readonly id: 'gentler' | 'quicker';
  /** mm */
  readonly gap: number;
  /** A or V, as the plan's own settings have it */
  readonly control: 'amps' | 'volts';
  readonly setting: number;
  readonly minutes: number;
  /** %, of this and of the plan; null where the cell is not solved */
  readonly evenness: { readonly now: number; readonly then: number } | null;
}

/** The chain at the medians for a supply and a gap. */
export type Evaluate = (
  supply: Supply,
  gap: Length,
) => { readonly median: CellOutcome; readonly evenness: number | null };

/** A gap wider than this gains little, m; one narrower lets gas and heat gather. */
const GAP = { widest: 0.06, narrowest: 0.015, step: 1.5 } as const;
const MM = 1e3;
/** Amps or volts over the offset, gentler and quicker. */
const FACTOR = { gentler: 0.5, quicker: 1.5 } as const;
/** Smaller changes are not offered. */
const WORTH = 1.15;
const REACH = 0.9;

/** Room along the tub for piece, plate and gap, m. */
const longest = ({ piece, tub }: Setup): number =>
  tub.kind === 'jug' ? GAP.widest : 0.8 * (boxOf(tub).length - piece.thickness);

const rounded = (gap: number): Length => si<'length'>(Math.round(gap * MM) / MM);

/** The supply turned down or up; null where it cannot be. */
function turned(supply: Supply, factor: number, most: number): Supply | null {
  if (supply.control === 'amps') {
    const amps = knob(Math.min(most, supply.amps * factor), factor > 1 ? Math.floor : Math.round);
    return { ...supply, amps: si<'current'>(amps) };
  }
  if (supply.kind !== 'bench') return null;
  const volts = Math.min(limits.planVolts.value, factor > 1 ? supply.volts + 1.5 : supply.volts - 1.5);
  return volts >= 2 ? { ...supply, volts: si<'voltage'>(Math.round(volts * 2) / 2) } : null;
}

/**
 * Two other ways: gentler and more even, quicker and less even. Either is left out where the bench does
 * not give it.
 * @param proposal the supply as the plan sets it
 */
export function alternativesTo(setup: Setup, proposal: Supply, evaluate: Evaluate): readonly Alternative[] {
  const { gap } = setup.cathode;
  const own = evaluate(proposal, gap);
  const ownMinutes = own.median.run_time;
  const film = limits.filmWarning.value * (own.median.limiting_current_density ?? Infinity);
  const density = own.median.current_density;
  const amps = own.median.current;
  const byFilm = (amps * film) / density;
  const bySupply =
    proposal.control === 'amps' && setup.supply.control === 'amps'
      ? setup.supply.amps
      : setup.supply.control === 'volts'
        ? (setup.supply.maxAmps ?? Infinity)
        : Infinity;
  const most = Math.min(byFilm, bySupply);

  const way = (id: Alternative['id'], newGap: Length): readonly Alternative[] => {
    const supply = turned(proposal, FACTOR[id], most) ?? proposal;
    const { median, evenness } = evaluate(supply, newGap);
    const minutes = median.run_time;
    const ratio = id === 'gentler' ? minutes / ownMinutes : ownMinutes / minutes;
    const reached = supply.control === 'volts' || median.current >= REACH * supply.amps;
    const tooDense = id === 'quicker' && median.current_density > film;
    if (ratio < WORTH || !reached || tooDense) return [];
    return [
      {
        id,
        gap: newGap * MM,
        control: supply.control,
        setting: supply.control === 'amps' ? supply.amps : supply.volts,
        minutes,
        evenness:
          evenness === null || own.evenness === null
            ? null
            : { now: 100 * own.evenness, then: 100 * evenness },
      },
    ];
  };
  const wider = rounded(Math.max(gap, Math.min(gap * GAP.step, GAP.widest, longest(setup))));
  const furthest = rounded(Math.max(gap, Math.min(GAP.widest, longest(setup))));
  const narrower = rounded(Math.min(gap, Math.max(gap / GAP.step, GAP.narrowest)));
  // guides say wider is more even; for plates that face each other the field often says the opposite
  const [evenest] = [gap, wider, narrower]
    .map((each) => ({ each, evenness: evaluate(proposal, each).evenness ?? 0 }))
    .toSorted((a, b) => b.evenness - a.evenness);
  return [
    // a supply without knobs is made gentler by hanging the plate further off
    ...way('gentler', hasKnobs(proposal.kind) ? (evenest?.each ?? gap) : furthest),
    ...way('quicker', proposal.control === 'amps' ? gap : narrower),
  ];
}
