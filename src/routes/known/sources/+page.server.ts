import { examples } from '$lib/session/examples.ts';
import { figuresBySource } from '$words/figure-sources.ts';

/** Read from the workings at build time, so that the page opens without planning. */
export const load = () => ({ figures: figuresBySource(examples().map(({ job }) => job)) });
