import { advice } from '../facts/advice.ts';
import type { Supply } from '../cell/setup.ts';
import type { CellSolver } from '../cell/solved-field.ts';
import type { Figure } from '../units/figure.ts';
import { si } from '../units/quantity.ts';
import type { Area, Length } from '../units/quantity.ts';
import { alternativesTo } from './alternatives.ts';
import type { Alternative } from './alternatives.ts';
import { assess, groundsOf } from './assess.ts';
import type { Grounds } from './assess.ts';
import { medianDraw } from './budget.ts';
import type { InputId } from './budget.ts';
import type { CellOutcome } from './cell-chain.ts';
import { influencesOf, inputsMoved } from './influence.ts';
import type { Influence, Moved } from './influence.ts';
import type { JobInput } from './job-input.ts';
import { planJob, proposalFor } from './plan-job.ts';
import { proposeSupply } from './settings.ts';
import { triedIds, spansOf, withTried } from './what-if.ts';
import type { TriedId, Span, Trial, Trying } from './what-if.ts';

/** Does not solve the cell: answers then use the closed form, and say so. */
const unsolved: CellSolver = () => null;

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
    const { median } = assess(moved, pairing, recipe, openArea, field);
    return { median, evenness: field && Math.sqrt(field.evenness[0] * field.evenness[1]) };
  };
  const proposal = proposeSupply(
    job,
    pairing.family,
    openArea,
    (supply) => at(supply, job.cathode.gap).median,
  );
  return alternativesTo(job, proposal, at);
}

/** Minutes to the wanted depth by the clock alone, and with the same job on a supply that holds and shows amps. */
export interface AmmeterGain {
  readonly without: Figure;
  readonly with: Figure;
}

/**
 * What a supply that shows and limits amps would change.
 * @returns null where there is one, or the job cannot be planned
 */
export function ammeterGainFor(job: JobInput, solve: CellSolver = unsolved): AmmeterGain | null {
  const { supply } = job;
  if (supply.showsAmps || supply.control === 'amps') return null;
  const minutesWith = (tried: Supply): Figure | null => {
    const proposal = proposalFor({ ...job, supply: tried }, solve);
    return proposal && (planJob({ ...job, supply: proposal }, solve).settings?.minutes ?? null);
  };
  const metered = minutesWith({
    ...supply,
    kind: 'bench',
    showsAmps: true,
    maxAmps: si<'current'>(advice.smallSupplyMost.value),
  });
  const timed = minutesWith(supply);
  return metered && timed && { without: timed, with: metered };
}

/** Inputs of the budget that a maker can try another value of, and in what. */
const tried: Partial<Record<InputId, Span['unit']>> = {
  areaFactor: 'cm2',
  currentEfficiency: '%',
  slowness: '%',
};

/**
 * What moves the depth of a job as it stands, when it is stopped as planned; greatest first. Two gaps more are solved.
 * @returns none for a job that cannot be planned
 */
export function influencesFor(job: JobInput, solve: CellSolver = unsolved): readonly Influence[] {
  const grounds = groundsOf(job);
  if (grounds === null) return [];
  const { pairing, openArea } = grounds;
  const { budget, stopAt, chain, median } = assessed(job, grounds, solve);
  const scaleOf = scales(openArea);
  const inputs = inputsMoved(
    budget,
    (draw) => chain(draw, stopAt).depth,
    (id, [low, high]) => {
      const unit = tried[id];
      const scale = scaleOf(id);
      if (!unit) return null;
      const ends = [scale * low[id], scale * high[id]];
      return { planned: scale * budget[id].median, low: Math.min(...ends), high: Math.max(...ends), unit };
    },
  );
  const planned = median.depth;
  const spans = spansOf(job, pairing.salt, median.run_time);
  const answers = triedIds.map((id): Moved => {
    const span = spans[id];
    const depthAt = (value: number): number => trialFor(job, { id, value }, solve)?.depth ?? planned;
    return { id, span, ends: [depthAt(span.low), depthAt(span.high)] };
  });
  return influencesOf([...inputs, ...answers], planned);
}

/** What a value of the budget is shown as: bare area in cm², the others in per cent. */
const scales =
  (openArea: Area) =>
  (id: InputId): number =>
    id === 'areaFactor' ? openArea * 1e4 : 100;

const assessed = (job: JobInput, { pairing, recipe, openArea }: Grounds, solve: CellSolver) =>
  assess(job, pairing, recipe, openArea, solve(job, openArea));

/**
 * What becomes of a job when one of its values is tried otherwise, all else and the stop as planned.
 * @returns null for a job that cannot be planned, as it is or so
 */
export function trialFor(job: JobInput, { id, value }: Trying, solve: CellSolver = unsolved): Trial | null {
  const grounds = groundsOf(job);
  if (grounds === null) return null;
  const planned = assessed(job, grounds, solve);
  const draw = medianDraw(planned.budget);
  const shown = (outcome: CellOutcome, whole: CellOutcome): Trial => ({
    depth: outcome.depth,
    minutes: whole.run_time,
    amps: outcome.current,
    value,
  });
  if (id === 'time') {
    const { charge, time } = planned.stopAt;
    const longer = (value * 60) / time;
    const stopAt = { charge: si<'charge'>(charge * longer), time: si<'time'>(time * longer) };
    return shown(planned.chain(draw, stopAt), planned.median);
  }
  if (isTried(id)) {
    const other = withTried(job, id, value);
    const own = groundsOf(other);
    if (own === null) return null;
    const { chain, budget, median } = assessed(other, own, solve);
    return shown(chain(medianDraw(budget), planned.stopAt), median);
  }
  const moved = { ...draw, [id]: value / scales(grounds.openArea)(id) };
  return shown(planned.chain(moved, planned.stopAt), planned.chain(moved, null));
}

const isTried = (id: Trying['id']): id is TriedId => (triedIds as readonly string[]).includes(id);
