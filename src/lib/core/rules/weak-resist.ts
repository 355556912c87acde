import { resistFacts } from '../facts/resists.ts';
import type { WarningRule } from './rule.ts';

/** The resist is the weak part of this job: etch gently and look often. */
export const weakResist = {
  id: 'weak-resist',
  kind: 'watch',
  step: 'resist',
  signal: 'NOTICE',
  sources: ['tradePractice'],
  applies: ({ resist }) => (resistFacts[resist].holds === 'weak' ? { resist } : null),
} as const satisfies WarningRule;
