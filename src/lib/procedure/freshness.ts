import { practice } from '../core/facts/limits.ts';
import { checksOf, isOk } from './checks.ts';
import type { Check, CheckId, HoldId } from './checks.ts';
import type { CheckBasis } from './check-basis.ts';

/** Answers older than this are asked again at the next hold, ms. */
export const ANSWER_TTL = practice.answerHolds.value * 60_000;

export interface Answer {
  readonly value: string | number;
  /** what it rested on, as canonical JSON */
  readonly fingerprint: string;
  /** ms since 1970 */
  readonly at: number;
  /** order among all answers */
  readonly seq: number;
}

export type Answers = Readonly<Partial<Record<CheckId, Answer>>>;

/** What decides whether an answer is still fresh. */
export interface Standing {
  readonly answers: Answers;
  readonly basis: CheckBasis;
  /** answers up to this one are spent where a pause undoes them */
  readonly spent: number;
  /** answers up to this one are spent where a stop undoes them */
  readonly spentByStop: number;
}

/** A basis never changes, so what has been worked out for one is kept. */
const kept = new WeakMap<CheckBasis, Map<CheckId, string>>();

/** What an answer to this check rests on now: its inputs and figures, canonical. */
export function fingerprintOf(check: Check, basis: CheckBasis): string {
  const known = kept.get(basis) ?? new Map<CheckId, string>();
  kept.set(basis, known);
  const made = known.get(check.id) ?? fingerprint(check, basis);
  known.set(check.id, made);
  return made;
}

function fingerprint({ inputs, figures }: Check, basis: CheckBasis): string {
  const named = Object.entries(basis.inputs).filter(([path]) =>
    inputs.some((wanted) => path === wanted || path.startsWith(`${wanted}.`)),
  );
  const shown = figures.flatMap((id) => {
    const text = basis.figures[id];
    return text === undefined ? [] : [[id, text] as const];
  });
  const sorted = [...named, ...shown].sort(([a], [b]) => (a < b ? -1 : 1));
  return JSON.stringify(sorted);
}

/** How an answer stands: good, wrong, gone stale, grown old, spent by a stop, or not given. */
export type Freshness = 'fresh' | 'wrong' | 'changed' | 'old' | 'spent' | 'unanswered';

export function freshnessOf(
  check: Check,
  { answers, basis, spent, spentByStop }: Standing,
  at: number,
): Freshness {
  const answer = answers[check.id];
  if (!answer) return 'unanswered';
  if (answer.fingerprint !== fingerprintOf(check, basis)) return 'changed';
  if (!isOk(check, answer.value, basis)) return 'wrong';
  if (check.critical && answer.seq <= spent) return 'spent';
  if (check.changedByStop && answer.seq <= spentByStop) return 'spent';
  const age = at - answer.at;
  // if the clock was set back, the answer seems to come from the future: treat it as old
  return age >= 0 && age < ANSWER_TTL ? 'fresh' : 'old';
}

/** Whether every check of a hold that applies is fresh. */
export const isHoldClear = (hold: HoldId, standing: Standing, at: number): boolean =>
  checksOf(hold, standing.basis).every((check) => freshnessOf(check, standing, at) === 'fresh');

/**
 * Whether what was seen at an earlier hold still holds: every check answered well, and nothing that it
 * rested on has changed. Age does not matter: the bath is mixed.
 */
export const doesHoldStand = (hold: HoldId, standing: Standing): boolean =>
  checksOf(hold, standing.basis).every((check) =>
    ['fresh', 'spent', 'old'].includes(freshnessOf(check, standing, 0)),
  );

export interface AnswerChange {
  readonly path: string;
  readonly before: string | null;
  readonly after: string | null;
}

/** To a maker, a missing value and null are the same. */
export const NOTHING = 'null';

/** Old and new value of everything an answer rested on that has changed. */
export function changesSince(answer: Answer, check: Check, basis: CheckBasis): readonly AnswerChange[] {
  const before = new Map(JSON.parse(answer.fingerprint) as [string, string][]);
  const after = new Map(JSON.parse(fingerprintOf(check, basis)) as [string, string][]);
  return [...new Set([...before.keys(), ...after.keys()])]
    .filter((path) => (before.get(path) ?? NOTHING) !== (after.get(path) ?? NOTHING))
    .map((path) => ({ path, before: before.get(path) ?? null, after: after.get(path) ?? null }));
}
