import { error } from '@sveltejs/kit';
import { isTrouble, troubleIds } from '$words/help-ids.ts';
import type { EntryGenerator, PageLoad } from './$types';

export const entries: EntryGenerator = () => troubleIds.map((trouble) => ({ trouble }));

export const load: PageLoad = ({ params: { trouble } }) => {
  if (!isTrouble(trouble)) error(404, 'There is no such help.');
  return { trouble };
};
