/** In a file of its own, so that a page which does not show this list need not load the planner. */
export { figureSources as figuresBySource } from '../../core/plan/figure-sources.ts';
