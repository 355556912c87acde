import type { StepId } from '$lib/core/rules/rule.ts';
import type { HoldId } from '$lib/procedure/checks.ts';

/** The step in which each hold stands. */
export const stepOfHold: Readonly<Record<HoldId, StepId>> = {
  mixing: 'electrolyte',
  power: 'etch',
  lifting: 'etch',
  storing: 'bath',
};
