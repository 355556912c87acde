/** Apart from the list that shows them, so that the page does not carry the planner. */
export { figureSources as figuresBySource } from '../../core/plan/figure-sources.ts';
