import { isBitable } from '../facts/metals.ts';
import { findBoughtSalt } from '../facts/salts.ts';
import { dataVersion } from '../facts/version.ts';
import { closedFormResistance, solvedResistance } from '../cell/resistance.ts';
import type { Supply } from '../cell/setup.ts';
import type { CellSolver, SolvedField } from '../cell/solved-field.ts';
import { blocks, watches } from '../rules/index.ts';
import type { Situation } from '../rules/rule.ts';
import { AMPERE_HOUR } from '../units/constants.ts';
import type { Figure } from '../units/figure.ts';
import { si } from '../units/quantity.ts';
import type { Area, Length } from '../units/quantity.ts';
import { alternativesTo } from './alternatives.ts';
import type { Alternative } from './alternatives.ts';
import { lotFigure, piecesAtOnce, rating, spreadFigure } from './batch.ts';
import { budgetFor, medianDraw, pairingOf } from './budget.ts';
import type { Pairing } from './budget.ts';
import { cellChain } from './cell-chain.ts';
import { isNever } from './consequences.ts';
import { bathChain, recipeOf } from './bath-chain.ts';
import type { Recipe } from './bath-chain.ts';
import { instructionsFor } from './instructions.ts';
import type { JobInput } from './job-input.ts';
import { ledgerFor } from './ledger.ts';
import type { Ledger } from './ledger.ts';
import { figureUnits } from './outcome.ts';
import type { FigureId, Outcome } from './outcome.ts';
import type { Caution, Figures, Plan, Refusal } from './plan.ts';
import { rangesOf } from './ranges.ts';
import type { Ranges } from './ranges.ts';
import { influencesOf } from './influence.ts';
import type { Influence } from './influence.ts';
import { settingsFrom, withLooks } from './looks.ts';
import { proposeSupply } from './settings.ts';
import { workingOf } from './workings.ts';

/** Solves nothing: the closed form stands in, and says so. */
const unsolved: CellSolver = () => null;

/**
 * Computes everything for a job. Pure: the same job gives the same plan, to the last digit.
 * @param solve the cell's field; without it the closed form stands in
 * @returns a frozen plan; with refusals it carries no figures
 */
export function planJob(job: JobInput, solve: CellSolver = unsolved): Plan {
  const bench: Situation = { ...job, figures: {} };
  const refusals: Refusal[] = blocks.flatMap(({ id, step, applies }) => {
    const params = applies(bench);
    return params === null ? [] : [{ rule: id, step, params }];
  });
  const salt = findBoughtSalt(job.bath.salt);
  if (refusals.length > 0 || salt === null || !isBitable(job.piece.metal)) {
    return frozen({
      ...header(job),
      figures: {},
      settings: null,
      map: null,
      cautions: [],
      refusals,
      instructions: [],
    });
  }
  const pairing = pairingOf(job.piece.metal, salt);
  const { figures, settings, map } = compute(job, pairing, solve);
  const situation: Situation = { ...job, figures };
  const cautions: Caution[] = watches.flatMap(({ id, step, signal, applies }) => {
    const params = applies(situation);
    return params === null ? [] : [{ rule: id, step, signal, params }];
  });
  return frozen({
    ...header(job),
    figures,
    settings,
    map,
    cautions,
    refusals,
    instructions: instructionsFor(job, pairing, figures, settings),
  });
}

const header = (job: JobInput) => ({ etchwright: 1, dataVersion, job }) as const;

function compute(
  job: JobInput,
  pairing: Pairing,
  solve: CellSolver,
): Pick<Plan, 'figures' | 'settings' | 'map'> {
  const recipe = recipeOf(job, pairing.salt);
  const { openArea } = job.piece;
  if (openArea === null) {
    const budget = budgetFor(job, pairing, 0);
    const outcomeOf = bathChain(job, recipe);
    const middle = outcomeOf(medianDraw(budget));
    const ranges = rangesOf(budget, outcomeOf, middle);
    return {
      figures: figuresFrom(middle, ranges, ledgerFor(job, pairing, budget, middle)),
      settings: null,
      map: null,
    };
  }
  const field = solve(job, openArea);
  const evaluate = (supply: Supply) => assess({ ...job, supply }, pairing, recipe, openArea, field);
  const typed = evaluate(job.supply);
  const proposal = proposeSupply(job, pairing.family, openArea, (supply) => evaluate(supply).middle);
  const own = withLooks(job, pairing, typed.figures(), typed.ledger);
  // a proposal that is set already is not worked out twice
  const isSet = JSON.stringify(proposal) === JSON.stringify(job.supply);
  const proposed = evaluate(proposal);
  const after = isSet
    ? own
    : withLooks({ ...job, supply: proposal }, pairing, proposed.figures(), proposed.ledger);
  return {
    figures: {
      ...own,
      ...lots(job, pairing, recipe, openArea, typed),
    },
    settings: settingsFrom(proposal, after),
    map: field?.map ?? null,
  };
}

/** How many pieces hang at once, where the supply cannot carry all. */
function lots(
  job: JobInput,
  pairing: Pairing,
  recipe: Recipe,
  openArea: Area,
  { middle, ledger, resistance }: ReturnType<typeof assess>,
): Figures {
  const most = rating(job.supply);
  const { count } = job.piece;
  if (most === null || count === 1) return {};
  const fewer = (pieces: number) => ({ ...job, piece: { ...job.piece, count: pieces } });
  const closed = (pieces: number) =>
    closedFormResistance(fewer(pieces), openArea, recipe.solution.conductivity).resistance;
  const draw = medianDraw(budgetFor(job, pairing, 0));
  const atOnce = piecesAtOnce(count, most, (pieces) => {
    if (pieces === count) return middle['current_asked'] as number;
    const scaled = si<'resistance'>((resistance * closed(pieces)) / closed(count));
    return cellChain(fewer(pieces), pairing, recipe, openArea, scaled)(draw, null)['current_asked'] as number;
  });
  return atOnce < count ? { pieces_at_once: lotFigure(atOnce, ledger) } : {};
}

/** What may be bitten with what, its bath and its bare metal; null where there is no plan, or no area yet. */
function groundsOf(job: JobInput) {
  const salt = findBoughtSalt(job.bath.salt);
  const { openArea, metal } = job.piece;
  const isRefused = blocks.some(({ applies }) => applies({ ...job, figures: {} }) !== null);
  if (isRefused || salt === null || openArea === null || !isBitable(metal)) return null;
  return { pairing: pairingOf(metal, salt), recipe: recipeOf(job, salt), openArea };
}

/**
 * The knobs that the plan of a job proposes, at a small part of the plan's cost.
 * @returns null for a job that is refused, or whose bare area is still to come
 */
export function proposalFor(job: JobInput, solve: CellSolver = unsolved): Supply | null {
  const grounds = groundsOf(job);
  if (grounds === null) return null;
  const { pairing, recipe, openArea } = grounds;
  const field = solve(job, openArea);
  return proposeSupply(
    job,
    pairing.family,
    openArea,
    (supply) => assess({ ...job, supply }, pairing, recipe, openArea, field).middle,
  );
}

/**
 * Other ways to the same depth. Each gap is a cell of its own: this takes as many fields as there are gaps.
 * @returns none for a job that is refused, or whose bare area is still to come
 */
export function alternativesFor(job: JobInput, solve: CellSolver = unsolved): readonly Alternative[] {
  const grounds = groundsOf(job);
  if (grounds === null) return [];
  const { pairing, recipe, openArea } = grounds;
  const at = (supply: Supply, gap: Length) => {
    const moved = { ...job, supply, cathode: { ...job.cathode, gap } };
    const field = solve(moved, openArea);
    const { middle } = assess(moved, pairing, recipe, openArea, field);
    return { middle, evenness: field && Math.sqrt(field.evenness[0] * field.evenness[1]) };
  };
  const proposal = proposeSupply(
    job,
    pairing.family,
    openArea,
    (supply) => at(supply, job.cathode.gap).middle,
  );
  return alternativesTo(job, proposal, at);
}

/** What moves the depth of a job as it stands, greatest first; none for one that cannot be planned. */
export function influencesFor(job: JobInput, solve: CellSolver = unsolved): readonly Influence[] {
  const grounds = groundsOf(job);
  if (grounds === null) return [];
  const { pairing, recipe, openArea } = grounds;
  return assess(job, pairing, recipe, openArea, solve(job, openArea)).influences();
}

/** The chain for one supply: quickly at the medians, or with ranges and workings. */
function assess(job: JobInput, pairing: Pairing, recipe: Recipe, openArea: Area, field: SolvedField | null) {
  const { conductivity } = recipe.solution;
  const { resistance, spread } = field
    ? solvedResistance(field, job, conductivity)
    : closedFormResistance(job, openArea, conductivity);
  const budget = budgetFor(job, pairing, spread);
  const chain = cellChain(job, pairing, recipe, openArea, resistance);
  const middle = chain(medianDraw(budget), null);
  const stopAt = {
    charge: si<'charge'>((middle['charge'] as number) * AMPERE_HOUR),
    time: si<'time'>((middle['run_time'] as number) * 60),
  };
  let kept: Ledger | null = null;
  // knobs are tried at the medians alone: what they rest on is not asked then
  const ledgerOf = (): Ledger => (kept ??= ledgerFor(job, pairing, budget, middle, field));
  return {
    middle,
    get ledger() {
      return ledgerOf();
    },
    resistance,
    influences: () => influencesOf(budget, (draw) => chain(draw, stopAt)['depth'] as number),
    figures: (): Figures => {
      const ledger = ledgerOf();
      const drawn = figuresFrom(
        middle,
        rangesOf(budget, (draw) => chain(draw, stopAt), middle),
        ledger,
      );
      if (!field) return drawn;
      const even = { ...drawn, evenness: evennessFigure(field, ledger) };
      return job.piece.count > 1 ? { ...even, batch_evenness: spreadFigure(field, ledger) } : even;
    },
  };
}

/** How even the bite is, wherever the bare parts lie. */
function evennessFigure({ evenness }: SolvedField, ledger: Ledger): Figure {
  const [low, high] = [100 * Math.min(...evenness), 100 * Math.max(...evenness)];
  return {
    value: Math.sqrt(low * high),
    low,
    high,
    unit: figureUnits.evenness,
    working: workingOf('evenness', ledger),
  };
}

function figuresFrom(outcome: Outcome, ranges: Ranges, ledger: Ledger): Figures {
  const named = (Object.keys(figureUnits) as FigureId[]).filter(
    (id) => outcome[id] !== undefined && !isNever(id, outcome),
  );
  return Object.fromEntries(
    named.map((id): [FigureId, Figure] => {
      const [low, high] = ranges[id] as readonly [number, number];
      return [
        id,
        { value: outcome[id] as number, low, high, unit: figureUnits[id], working: workingOf(id, ledger) },
      ];
    }),
  );
}

/** Freezes a plan through and through, so that no reader can change what another shows. */
function frozen<T extends object>(value: T): T {
  for (const inner of Object.values(value)) {
    if (typeof inner === 'object' && inner !== null && !Object.isFrozen(inner)) frozen(inner as object);
  }
  return Object.freeze(value);
}
