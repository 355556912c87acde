import { openNotebook } from './jobs.ts';
import { changePreferences, keptPreferences } from './preferences.ts';
import { withoutSupply } from './supplies.ts';
import type { Supplies } from './supplies.ts';

/** Every supply that earlier jobs have named. */
export const suppliesHere = async (): Promise<Supplies> =>
  (await keptPreferences(await openNotebook()))?.supplies ?? {};

/** Forgets a supply that is no longer there; jobs made with it keep what they were made with. */
export async function forgetSupply(id: string): Promise<Supplies> {
  const { supplies } = await changePreferences(await openNotebook(), {
    supplies: withoutSupply(await suppliesHere(), id),
  });
  return supplies ?? {};
}
