import { closedFormResistance, solvedResistance } from '../cell/resistance.ts';
import type { SolvedField } from '../cell/solved-field.ts';
import { findBoughtSalt } from '../facts/salts.ts';
import { isBitable } from '../facts/metals.ts';
import { refusalRules } from '../rules/index.ts';
import { AMPERE_HOUR } from '../units/constants.ts';
import type { Figure } from '../units/figure.ts';
import { si } from '../units/quantity.ts';
import type { Area } from '../units/quantity.ts';
import { recipeOf } from './bath-chain.ts';
import type { Recipe } from './bath-chain.ts';
import { spreadFigure } from './batch.ts';
import { medianDraw, pairingOf } from './budget.ts';
import type { Pairing } from './budget.ts';
import { cellChain } from './cell-chain.ts';
import { isNever } from './consequences.ts';
import type { JobInput } from './job-input.ts';
import { workingInputsFor } from './working-inputs.ts';
import type { WorkingInputs } from './working-inputs.ts';
import { figureIds, figureUnits } from './outcome.ts';
import type { FigureId, Outcome } from './outcome.ts';
import type { Figures } from './plan.ts';
import { rangesOf } from './ranges.ts';
import type { Ranges } from './ranges.ts';
import { plannedBudget } from './trade-pace.ts';
import { workingOf } from './workings.ts';

/** What a plan rests on. */
export interface Grounds {
  readonly pairing: Pairing;
  readonly recipe: Recipe;
  readonly openArea: Area;
}

/** What may be bitten with what, its bath and its bare metal; null where there is no plan, or no area yet. */
export function groundsOf(job: JobInput): Grounds | null {
  const salt = findBoughtSalt(job.bath.salt);
  const { openArea, metal } = job.piece;
  const isRefused = refusalRules.some(({ applies }) => applies({ ...job, figures: {} }) !== null);
  if (isRefused || salt === null || openArea === null || !isBitable(metal)) return null;
  return { pairing: pairingOf(metal, salt), recipe: recipeOf(job, salt), openArea };
}

/** The chain for one supply: quickly at the medians, or with ranges and workings. */
export function assess(
  job: JobInput,
  pairing: Pairing,
  recipe: Recipe,
  openArea: Area,
  field: SolvedField | null,
) {
  const { conductivity } = recipe.solution;
  const { resistance, spread } = field
    ? solvedResistance(field, job, conductivity)
    : closedFormResistance(job, openArea, conductivity);
  const chain = cellChain(job, pairing, recipe, openArea, resistance);
  const budget = plannedBudget(job, pairing, spread, chain);
  const median = chain(medianDraw(budget), null);
  const stopAt = {
    charge: si<'charge'>(median.charge * AMPERE_HOUR),
    time: si<'time'>(median.run_time * 60),
  };
  let kept: WorkingInputs | null = null;
  // while knobs are tried, only medians are computed: sources are not needed yet
  const workingInputsNow = (): WorkingInputs =>
    (kept ??= workingInputsFor(job, pairing, budget, median, field));
  return {
    median,
    get workingInputs() {
      return workingInputsNow();
    },
    resistance,
    budget,
    stopAt,
    chain,
    figures: (): Figures => {
      const workingInputs = workingInputsNow();
      const drawn = figuresFrom(
        median,
        rangesOf(budget, (draw) => chain(draw, stopAt), median),
        workingInputs,
      );
      if (!field) return drawn;
      const even = { ...drawn, evenness: evennessFigure(field, workingInputs) };
      return job.piece.count > 1 ? { ...even, batch_evenness: spreadFigure(field, workingInputs) } : even;
    },
  };
}

/** How even the bite is, wherever the bare parts lie. */
function evennessFigure({ evenness }: SolvedField, workingInputs: WorkingInputs): Figure {
  const [low, high] = [100 * Math.min(...evenness), 100 * Math.max(...evenness)];
  return {
    value: Math.sqrt(low * high),
    low,
    high,
    unit: figureUnits.evenness,
    working: workingOf('evenness', workingInputs),
  };
}

export const figuresFrom = (outcome: Outcome, ranges: Ranges, workingInputs: WorkingInputs): Figures =>
  Object.fromEntries(
    figureIds.flatMap((id): [FigureId, Figure][] => {
      const [value, range] = [outcome[id], ranges[id]];
      if (value === undefined || range === undefined || isNever(id, outcome)) return [];
      const [low, high] = range;
      return [[id, { value, low, high, unit: figureUnits[id], working: workingOf(id, workingInputs) }]];
    }),
  );
