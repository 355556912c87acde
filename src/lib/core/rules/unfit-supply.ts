import { supplyKinds } from '../facts/supplies.ts';
import type { RefusalRule } from './rule.ts';

/** Jobs are not planned with alternating, unknown, mains-fed or unlimited sources. */
export const unfitSupply = {
  id: 'unfit-supply',
  kind: 'block',
  step: 'settings',
  sources: ['selv', 'tradePractice'],
  applies: ({ supply }) => {
    const fitness = supplyKinds[supply.kind];
    return fitness === 'fit' ? null : { supply: `supply-${supply.kind}` };
  },
} as const satisfies RefusalRule;
