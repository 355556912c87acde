import { examples } from '$lib/session/examples.ts';
import { figuresBySource } from '$words/figure-sources.ts';

/** Read from the workings when the site is built: the page opens without planning. */
export const load = () => ({ figures: figuresBySource(examples().map(({ plan }) => plan.job)) });
