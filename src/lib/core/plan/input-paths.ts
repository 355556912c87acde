import type { JobInput } from './job-input.ts';

/** Inputs that make no answer stale: what the bench has taught shows in the figures; units and origin change nothing. */
export const besideAnswers = ['title', 'paper', 'bench', 'units', 'untyped'] as const;

/** Every path of a tree of values, dotted; both, where a branch may be missing. */
type Leaves<T, At extends string> = T extends
  string | number | boolean | null | undefined | readonly unknown[]
  ? At
  : { [K in keyof T & string]-?: Leaves<T[K], `${At}.${K}`> }[keyof T & string];
type Answered = Omit<JobInput, (typeof besideAnswers)[number]>;

/** Every path that the answers at the bench may rest on. */
export type InputPath = { [K in keyof Answered]-?: Leaves<Answered[K], K> }[keyof Answered];
