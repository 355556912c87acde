import { examples } from '$lib/session/examples.ts';

/** Planned when the site is built: the page opens without computing. */
export const load = () => ({ examples: examples() });
