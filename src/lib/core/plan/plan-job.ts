import { isBitable } from '../facts/metals.ts';
import { findBoughtSalt } from '../facts/salts.ts';
import { dataVersion } from '../facts/version.ts';
import { closedFormResistance } from '../cell/resistance.ts';
import type { Supply } from '../cell/setup.ts';
import type { CellSolver } from '../cell/solved-field.ts';
import { refusalRules, warningRules } from '../rules/index.ts';
import type { Situation } from '../rules/rule.ts';
import { si } from '../units/quantity.ts';
import type { Area } from '../units/quantity.ts';
import { assess, figuresFrom, groundsOf } from './assess.ts';
import { lotFigure, piecesAtOnce, rackOf, rating } from './batch.ts';
import { budgetFor, medianDraw, pairingOf } from './budget.ts';
import type { Pairing } from './budget.ts';
import { cellChain } from './cell-chain.ts';
import { bathChain, recipeOf } from './bath-chain.ts';
import type { Recipe } from './bath-chain.ts';
import { instructionsFor } from './instructions.ts';
import type { JobInput } from './job-input.ts';
import { figureIn } from './outcome.ts';
import { workingInputsFor } from './working-inputs.ts';
import type { Caution, Figures, Plan, Refusal } from './plan.ts';
import { rangesOf } from './ranges.ts';
import { settingsFrom, withLooks } from './looks.ts';
import { proposeSupply } from './settings.ts';

/** Does not solve the cell: the plan then uses the closed form, and says so. */
const unsolved: CellSolver = () => null;

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
    (supply) => assess({ ...job, supply }, pairing, recipe, openArea, field).median,
  );
}

/** What a proposal sets. */
const knobs = ['supply.volts', 'supply.maxVolts', 'supply.maxAmps', 'supply.amps'] as const;

/** Plans a job with its supply set as the plan proposes, for whoever has not set it already. */
export function planAsProposed(job: JobInput, solve: CellSolver = unsolved): Plan {
  const supply = proposalFor(job, solve);
  if (supply === null || JSON.stringify(supply) === JSON.stringify(job.supply)) return planJob(job, solve);
  return planJob({ ...job, supply, untyped: [...(job.untyped ?? []), ...knobs] }, solve);
}

/**
 * Computes everything for a job, its supply set as the job says: every figure, range and caution is for that one
 * setting, and what the plan would set instead is a line of work. Pure: the same job gives the same plan, to the last
 * digit.
 * @param solve the cell's field; without it the closed form stands in
 * @returns a frozen plan; with refusals it carries no figures
 */
export function planJob(job: JobInput, solve: CellSolver = unsolved): Plan {
  const bench: Situation = { ...job, figures: {} };
  const refusals: Refusal[] = refusalRules.flatMap(({ id, step, applies }) => {
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
      rack: null,
      cautions: [],
      refusals,
      instructions: [],
    });
  }
  const pairing = pairingOf(job.piece.metal, salt);
  const { figures, settings, instead, map, rack } = compute(job, pairing, solve);
  const situation: Situation = { ...job, figures };
  const cautions: Caution[] = warningRules.flatMap(({ id, step, signal, applies }) => {
    const params = applies(situation);
    return params === null ? [] : [{ rule: id, step, signal, params }];
  });
  return frozen({
    ...header(job),
    figures,
    settings,
    map,
    rack,
    cautions,
    refusals,
    instructions: instructionsFor(job, pairing, figures, settings, instead),
  });
}

const header = (job: JobInput) => ({ etchwright: 1, dataVersion, job }) as const;

function compute(
  job: JobInput,
  pairing: Pairing,
  solve: CellSolver,
): Pick<Plan, 'figures' | 'settings' | 'map' | 'rack'> & { readonly instead: Supply | null } {
  const recipe = recipeOf(job, pairing.salt);
  const { openArea } = job.piece;
  if (openArea === null) {
    const budget = budgetFor(job, pairing, 0);
    const outcomeOf = bathChain(job, recipe);
    const median = outcomeOf(medianDraw(budget));
    const ranges = rangesOf(budget, outcomeOf, median);
    return {
      figures: figuresFrom(median, ranges, workingInputsFor(job, pairing, budget, median)),
      settings: null,
      instead: null,
      map: null,
      rack: null,
    };
  }
  const field = solve(job, openArea);
  const evaluate = (supply: Supply) => assess({ ...job, supply }, pairing, recipe, openArea, field);
  const own = evaluate(job.supply);
  const figures = withLooks(job, pairing, own.figures(), own.workingInputs);
  const proposal = proposeSupply(job, pairing.family, openArea, (supply) => evaluate(supply).median);
  return {
    figures: { ...figures, ...lots(job, pairing, recipe, openArea, own) },
    settings: settingsFrom(job.supply, figures),
    instead: JSON.stringify(proposal) === JSON.stringify(job.supply) ? null : proposal,
    map: field?.map ?? null,
    rack: field && rackOf(job, field, own.median.current),
  };
}

/** How many pieces hang at once, where the supply cannot carry all. */
function lots(
  job: JobInput,
  pairing: Pairing,
  recipe: Recipe,
  openArea: Area,
  { median, workingInputs, resistance }: ReturnType<typeof assess>,
): Figures {
  const most = rating(job.supply);
  const { count } = job.piece;
  if (most === null || count === 1) return {};
  const fewer = (pieces: number) => ({ ...job, piece: { ...job.piece, count: pieces } });
  const closed = (pieces: number) =>
    closedFormResistance(fewer(pieces), openArea, recipe.solution.conductivity).resistance;
  const draw = medianDraw(budgetFor(job, pairing, 0));
  const atOnce = piecesAtOnce(count, most, (pieces) => {
    if (pieces === count) return figureIn(median, 'current_asked');
    const scaled = si<'resistance'>((resistance * closed(pieces)) / closed(count));
    const asked = cellChain(fewer(pieces), pairing, recipe, openArea, scaled)(draw, null);
    return figureIn(asked, 'current_asked');
  });
  return atOnce < count ? { pieces_at_once: lotFigure(atOnce, workingInputs) } : {};
}

/** Freezes a plan at every depth, so that no screen can change what another shows. */
function frozen<T extends object>(value: T): T {
  for (const inner of Object.values(value)) {
    if (typeof inner === 'object' && inner !== null && !Object.isFrozen(inner)) frozen(inner as object);
  }
  return Object.freeze(value);
}
