import { error } from '@sveltejs/kit';
import { isTrouble, troubleIds } from '$words/help-ids.ts';
import { shellTexts } from '$words/shell.ts';
import type { EntryGenerator, PageLoad } from './$types';

export const entries: EntryGenerator = () => troubleIds.map((trouble) => ({ trouble }));

export const load: PageLoad = ({ params: { trouble } }) => {
  if (!isTrouble(trouble)) error(404, shellTexts.noHelp);
  return { trouble };
};
