import type { RefusalRule } from './rule.ts';

/** Chromium in a bath comes from a stainless anode and may be chromate. */
export const chromiumBath = {
  id: 'chromium-bath',
  kind: 'block',
  step: 'electrolyte',
  sources: ['cr6Transpassive'],
  applies: ({ bath }) => ((bath.dissolved.Cr ?? 0) > 0 ? {} : null),
} as const satisfies RefusalRule;
