import type { Plan } from '../core/plan/plan.ts';
import type { Target } from '../core/run/run.ts';

/** What a run goes by, from the plan as it stood; null for a plan that cannot be run. */
export function targetOf(plan: Plan | null): Target | null {
  const settings = plan?.settings;
  if (!plan || !settings) return null;
  const current = plan.figures.current?.value ?? 0;
  return {
    amps: settings.control === 'amps' ? settings.amps : current,
    chargeAh: settings.control === 'amps' ? settings.stopCharge.value : (plan.figures.charge?.value ?? 0),
    minutes: settings.minutes.value,
    countsCharge: plan.job.supply.showsAmps,
  };
}
