import type { StepId } from '$lib/core/rules/rule.ts';
import type { HoldId } from '$lib/procedure/checks.ts';

/** The step to which each hold belongs. */
export const stepOfHold: Readonly<Record<HoldId, StepId>> = {
  mixing: 'electrolyte',
  power: 'etch',
  lifting: 'etch',
  storing: 'bath',
};
