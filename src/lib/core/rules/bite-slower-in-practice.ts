import type { WarningRule } from './rule.ts';

/** The plan warns when the trade's time is longer than the model's by this factor. */
const WORTH_SAYING = 3;

/** The model's time is far shorter than the trade's: trust the trade's time until the first look. */
export const biteSlowerInPractice = {
  id: 'bite-slower-in-practice',
  kind: 'watch',
  step: 'settings',
  signal: 'NOTICE',
  sources: ['tradePractice', 'budgetEstimate'],
  applies: ({ figures, supply }) => {
    // by the clock the plan has the trade's pace in it already
    if (!supply.showsAmps) return null;
    const { practice_over_model: ratio } = figures;
    return ratio && ratio.value > WORTH_SAYING ? { ratio } : null;
  },
} as const satisfies WarningRule;
