import { addedBounds, usedBounds } from '../core/job/typed-bounds.ts';
import { numberWithin } from '../core/units/typed-number.ts';
import { bathNow, withEvent } from '../notebook/bath-ledger.ts';
import type { BathState } from '../notebook/bath-ledger.ts';
import type { BathEvent, BathRecord } from '../notebook/records.ts';
import { isUnreadable } from '../notebook/store.ts';
import { openNotebook } from './jobs.ts';

type WithoutTime<T> = T extends unknown ? Omit<T, 'at'> : never;

/** Events that a maker may add to a bath on the shelf. A use may only be corrected. */
export type ShelfEvent = WithoutTime<Exclude<BathEvent, { type: 'mixed' }>>;

/**
 * Adds an event to a bath. It reads the bath again first, because another tab may have changed it.
 * @returns the changed bath; null when there is no such bath
 */
export async function happened(id: string, event: ShelfEvent, at: number): Promise<BathRecord | null> {
  const book = await openNotebook();
  const { records } = await book.baths();
  const bath = records.find((one) => one.id === id);
  if (bath === undefined || isUnreadable(bath)) return null;
  const after = withEvent(bath, { ...event, at });
  await book.saveBath(after);
  return after;
}

/** Typed water in mL or salt in g to add; null when it is not a valid amount. */
export const addedIn = (typed: string): number | null =>
  numberWithin(typed, addedBounds.least, addedBounds.most);

/** Typed charge of one use, A·h; null when it is not valid. */
export const usedIn = (typed: string): number | null =>
  numberWithin(typed, usedBounds.least, usedBounds.most);

/** Salt that water needs to keep a bath's strength, g. @param strength g of salt a litre of water */
export const saltForWater = (waterMl: number, strength: number): number => (waterMl * strength) / 1000;

/** One line of the waste note for a year. */
export interface HandedOver {
  readonly at: number;
  readonly to: string;
  readonly name: string;
  readonly salt: string;
  readonly volumeMl: number;
  /** mg by element */
  readonly heldMg: BathState['heldMg'];
}

/** Baths that were handed over in a year and not taken back, the oldest first. */
export function handedOverIn(year: number, baths: readonly BathRecord[]): readonly HandedOver[] {
  return baths
    .flatMap((bath) => {
      const now = bathNow(bath);
      const last = bath.events.findLast(({ type }) => type === 'handed-over' || type === 'kept');
      if (now.where !== 'handed-over' || last?.type !== 'handed-over') return [];
      if (new Date(last.at).getFullYear() !== year) return [];
      const { name, salt } = bath;
      return [{ at: last.at, to: last.to, name, salt, volumeMl: now.volumeMl, heldMg: now.heldMg }];
    })
    .toSorted((a, b) => a.at - b.at);
}
