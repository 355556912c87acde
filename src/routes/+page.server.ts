import { examples } from '$lib/session/examples.ts';
import { draftOf } from '$lib/session/jobs-from-plan.ts';
import { planInWords } from '$words/plan-summary.ts';

/** Planned and put into words at build time, so that the page opens without computing. */
export const load = () => ({
  examples: examples().map(({ file, job, plan }) => ({
    file,
    words: planInWords(plan),
    figureCount: Object.keys(plan.figures).length,
    draft: draftOf(job),
  })),
});
