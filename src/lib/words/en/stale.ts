import { faultText } from './faults.ts';
import { supplyNames } from './materials.ts';
import { storedText } from './stored-text.ts';
import type { FieldId } from '../../core/job/fields.ts';
import type { Fault } from '../../core/plan/fault.ts';

/** Why an answer no longer fits, and what to do. */
export const staleTexts = {
  misfit: 'No longer fits',
  moved: 'Not as it was then',
  some: 'Something of this no longer fits: it is marked.',
  'bath-gone': 'This bath is not on your shelf any more: choose another, or mix a new one.',
  'bath-of-others': 'This bath is for another metal: choose one for this metal, or mix a new one.',
  'bath-changed': 'This bath has been used or topped up since: choose it again, and the plan follows.',
  'rate-changed':
    'Your bench has taught another rate since: take time and first look from this plan, not from the last sheet.',
  other: (supply: string): string =>
    `Your workshop has another supply now, a ${supply}: say here which one gives the current.`,
} as const;

/** A finding that is shown beside an answer. */
export type StaleToTell =
  | { readonly why: 'fault'; readonly field: FieldId; readonly fault: Fault }
  | { readonly why: 'bath-gone' | 'bath-of-others' | 'bath-changed' | 'rate-changed' }
  | { readonly why: 'supply-other'; readonly kind: string };

/**
 * The word before it. A changed rate is no misfit: the plan follows it by itself and need only be read again.
 */
export const staleMark = ({ why }: StaleToTell): string =>
  why === 'rate-changed' ? staleTexts.moved : staleTexts.misfit;

export function staleText(stale: StaleToTell): string {
  if (stale.why === 'fault') return faultText(stale.fault, stale.field);
  return stale.why === 'supply-other'
    ? staleTexts.other(storedText(supplyNames, stale.kind))
    : staleTexts[stale.why];
}
