import { error } from '@sveltejs/kit';
import { isThing, thingIds } from '$lib/ui/wear/things.ts';
import { wearTexts } from '$words/wear.ts';
import type { EntryGenerator, PageLoad } from './$types';

export const entries: EntryGenerator = () => thingIds.map((thing) => ({ thing }));

export const load: PageLoad = ({ params: { thing } }) => {
  if (!isThing(thing)) error(404, wearTexts.unknown);
  return { thing };
};
