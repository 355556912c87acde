import { awayFor } from '../core/plan/away.ts';
import type { Away } from '../core/plan/away.ts';
import { uses } from '../core/job/choices.ts';
import type { Use } from '../core/cell/setup.ts';
import type { MetalGroup } from '../core/facts/metal-groups.ts';
import type { Preferences } from '../notebook/records.ts';
import { countryCode } from './country.ts';
import { openNotebook } from './jobs.ts';
import { changePreferences, keptPreferences } from './preferences.ts';
import { allBaths } from './shelf.ts';
import type { Shelved } from './shelf.ts';

/** Where the maker lives, who takes the waste, and what they allowed. */
export interface Keeper {
  readonly use: Use;
  /** ISO 3166 alpha-2; null: not known */
  readonly country: string | null;
  readonly authority: string;
  /** who allowed treatment, and when; empty: nobody */
  readonly mayTreat: string;
  readonly silverPrice: string;
}

const groups: readonly string[] = ['silver', 'copper and brass', 'nickel', 'iron'] satisfies MetalGroup[];

const keeperOf = (kept: Preferences | null): Keeper => ({
  use: uses.find((use) => use === kept?.use) ?? 'home',
  country: countryCode(kept?.country ?? ''),
  authority: kept?.authority?.name ?? '',
  mayTreat: kept?.authority?.mayTreat ?? '',
  silverPrice: kept?.silverPrice ?? '',
});

/** A bath on the shelf and its keeper; null when there is no such bath. */
export async function bathAndKeeper(id: string): Promise<{ shelved: Shelved; keeper: Keeper } | null> {
  const shelved = (await allBaths()).find(({ bath }) => bath.id === id);
  if (!shelved) return null;
  return { shelved, keeper: keeperOf(await keptPreferences(await openNotebook())) };
}

/** Saves what was changed about the keeper. */
export async function keepKeeper({ authority, mayTreat, silverPrice }: Keeper): Promise<Keeper> {
  const change = { authority: { name: authority, mayTreat }, silverPrice };
  return keeperOf(await changePreferences(await openNotebook(), change));
}

/** Whether a bath has passed all the charge that it may be used for. */
export const isWornOut = (shelved: Shelved): boolean => awayOf(shelved, keeperOf(null)).worn.isWorn;

/** Where this bath may go in its present state. */
export const awayOf = ({ bath, now }: Shelved, { use, mayTreat }: Keeper): Away =>
  awayFor(
    {
      salt: bath.salt,
      group: groups.includes(bath.metalGroup) ? (bath.metalGroup as MetalGroup) : 'unknown',
      strength: now.strength,
      volumeMl: now.volumeMl,
      heldMg: now.heldMg,
      perLitre: now.perLitre,
    },
    { use, mayTreat: mayTreat !== '' },
  );
