import { hasKnobs, supplyKindOf } from '../core/facts/supplies.ts';
import type { Fault } from '../core/plan/fault.ts';
import type { Plan } from '../core/plan/plan.ts';
import type { AnswerLineId } from '$words/from-sheet.ts';
import type { Preferences } from '../notebook/records.ts';
import type { Notebook } from '../notebook/store.ts';
import type { Draft, FieldId } from './draft.ts';
import { fieldOf } from './job-file.ts';
import { keptPreferences } from './preferences.ts';
import { allBaths, answersFor, bathsFor } from './shelf.ts';
import type { Shelved } from './shelf.ts';

/*
 * A copy stands on answers of another day: its bath may be gone since, the workshop may have another supply, the bench may
 * have taught another rate. What no longer fits is told beside its answer, before anything is mixed.
 */

/** Why an answer no longer fits. */
export type Stale =
  | { readonly why: 'fault'; readonly line: AnswerLineId; readonly field: FieldId; readonly fault: Fault }
  | { readonly why: 'bath-gone' | 'bath-of-others' | 'bath-changed'; readonly line: 'bath' }
  | { readonly why: 'supply-other'; readonly line: 'supply'; readonly kind: string }
  | { readonly why: 'rate-changed'; readonly line: 'depth' };

/** Whether the maker has something to choose anew; a plan follows a taught rate by itself. */
export const isMisfit = ({ why }: Stale): boolean => why !== 'rate-changed';

/** The line that a field stands in, by the beginning of its id; the first that fits. */
const lines: readonly (readonly [string, AnswerLineId])[] = [
  ['piece.depth', 'depth'],
  ['piece.purpose', 'depth'],
  ['piece.polish', 'depth'],
  ['piece.area', 'depth'],
  ['piece.open', 'depth'],
  ['piece.', 'piece'],
  ['cathode.', 'plate'],
  ['tub.', 'plate'],
  ['bath.', 'bath'],
  ['resist.', 'resist'],
  ['hanger', 'resist'],
  // the workshop's screen asks for supply and place
  ['supply.', 'supply'],
  ['place.', 'supply'],
];

/** @returns what is asked on no screen of its own stands with the piece */
export const lineOf = (field: FieldId): AnswerLineId =>
  lines.find(([beginning]) => field.startsWith(beginning))?.[1] ?? 'piece';

const faulty = (faults: readonly Fault[], draft: Draft): readonly Stale[] =>
  faults.flatMap((fault): Stale[] => {
    const field = fieldOf(fault, draft);
    return field === null ? [] : [{ why: 'fault', line: lineOf(field), field, fault }];
  });

/** Whether a bath of the shelf is no more what the job was planned with. */
function hasChanged(draft: Draft, shelved: Shelved): boolean {
  const now = Object.entries(answersFor(shelved)) as [FieldId, string][];
  return now.some(([field, value]) => draft[field] !== value);
}

/** @param baths all that this notebook knows, and those that this metal may go into */
export function staleBath(
  draft: Draft,
  baths: { readonly all: readonly Shelved[]; readonly suitable: readonly Shelved[] },
): readonly Stale[] {
  const name = draft['bath.record'];
  // one that came with a sheet has no name here
  if (draft['bath.from'] !== 'shelf' || name === '') return [];
  const found = baths.suitable.find(({ bath }) => bath.name === name);
  if (found) return hasChanged(draft, found) ? [{ why: 'bath-changed', line: 'bath' }] : [];
  const stands = baths.all.some(({ bath, now }) => bath.name === name && now.where === 'shelf');
  return [{ why: stands ? 'bath-of-others' : 'bath-gone', line: 'bath' }];
}

const supplyFields = ['supply.kind', 'supply.amps', 'supply.volts', 'supply.maxAmps'] as const;

/** Whether the workshop has another supply now than the job was planned with. */
export function staleSupply(draft: Draft, kept: Preferences | null): readonly Stale[] {
  const workshop: Readonly<Record<string, string>> = kept?.workshop ?? {};
  const kind = workshop['supply.kind'] ?? '';
  // nothing chosen yet is a fault of its own
  if (kind === '' || draft['supply.kind'] === '') return [];
  const asked = supplyFields.filter(
    (field) => field !== 'supply.volts' || !hasKnobs(supplyKindOf(draft['supply.kind'])),
  );
  const isOther = asked.some((field) => (workshop[field] ?? '') !== draft[field]);
  return isOther ? [{ why: 'supply-other', line: 'supply', kind }] : [];
}

/** Whether the bench has taught since the earlier job began. */
export function staleRate(earlier: Plan | null, now: Plan | null): readonly Stale[] {
  if (earlier === null || now === null) return [];
  // a plan from an older version knows of no bench
  const rateOf = (plan: Plan): string =>
    JSON.stringify((plan.job as Partial<Plan['job']>).bench?.biteRate ?? null);
  return rateOf(earlier) === rateOf(now) ? [] : [{ why: 'rate-changed', line: 'depth' }];
}

/** Everything of a job that no longer fits, before it has begun. */
export async function staleIn(
  book: Notebook,
  draft: Draft,
  faults: readonly Fault[],
  plans: { readonly earlier: Plan | null; readonly now: Plan | null },
): Promise<readonly Stale[]> {
  const [all, { suitable }, kept] = await Promise.all([
    allBaths(),
    bathsFor(draft['piece.metal']),
    keptPreferences(book),
  ]);
  return [
    ...faulty(faults, draft),
    ...staleBath(draft, { all, suitable }),
    ...staleSupply(draft, kept),
    ...staleRate(plans.earlier, plans.now),
  ];
}
